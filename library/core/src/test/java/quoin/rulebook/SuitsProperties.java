package quoin.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Estimate;
import quoin.measure.Uncertain;

/** Inverse then forward holds: what suits a size gives it, and nothing else does. */
class SuitsProperties {
    /** Ends are those of exact arithmetic; deciding takes what is within 1e-6 of a step as a multiple. */
    private static final double NEAR = 1e-4;

    private static final double[] STEPS = {1, 0.5, 25.4 / 16, 25.4 / 32, 10};

    private static Sizes forward(Rulebook book, double width, double length) {
        Map<String, Estimate> figures =
                Map.of("fit.width", Uncertain.exact(width), "fit.length", Uncertain.exact(length));
        return Sizing.decide(
                book, Sample.CATALOGUE, f -> Optional.ofNullable(figures.get(f)), Sample.CHOICES, Map.of());
    }

    private static boolean isNear(Suits suits, String figure, double value) {
        return suits.boxes().stream().anyMatch(box -> {
            Interval ends = box.figures().getOrDefault(figure, Interval.ALL);
            return Math.abs(value - ends.least()) < NEAR || Math.abs(value - ends.most()) < NEAR;
        });
    }

    private static boolean has(Suits suits, double width, double length) {
        return suits.boxes().stream()
                .anyMatch(box ->
                        box.figures().getOrDefault("fit.width", Interval.ALL).has(width)
                                && box.figures()
                                        .getOrDefault("fit.length", Interval.ALL)
                                        .has(length));
    }

    /** A width by two roundings and two tables, one of them by the length, one by a size: it may step down. */
    private static Rulebook book(int seed) {
        double step = STEPS[seed % STEPS.length];
        Rounding.Mode mode = Rounding.Mode.values()[seed / 5 % 3];
        Rounding last = seed % 7 == 0
                ? new Rounding.DownTo(List.of(Sample.mm(900), Sample.mm(1200), Sample.mm(1000)))
                : new Rounding.Step(mode, Sample.mm(STEPS[seed / 3 % STEPS.length]));
        SizeClause bar = Sample.size("bar", "fit.width")
                .withLess(new Item(Sample.fixed(seed % 11), 2, "", Source.UNSTATED))
                .withRound(new Rounding.Step(mode, Sample.mm(step)));
        SizeClause width = Sample.size("frame.width", "bar")
                .withLess(
                        new Item(Sample.bands("fit.length", 1000, 3, 2000, 5 + seed % 3), 2, "", Source.UNSTATED),
                        Sample.item(Sample.bands("bar", 900, 4, 1100, 9, 3000, 2)))
                .withMore(Sample.item(Sample.endPlates()))
                .withRound(last);
        return Sample.empty().withSizes(List.of(bar, width, Sample.frame("frame.length", "fit.length")));
    }

    @Property(tries = 300)
    void whatSuitsGivesTheSizeAndNothingElseDoes(
            @ForAll @IntRange(max = 10_000) int seed,
            @ForAll @IntRange(min = 7_000, max = 14_000) int tenths,
            @ForAll @IntRange(min = 5_000, max = 21_000) int others) {
        Rulebook book = book(seed);
        double x = tenths / 10.0 + 0.013;
        double y = others / 10.0 + 0.017;
        Optional<Size> size = forward(book, x, y).find("frame.width");
        if (size.isEmpty()) {
            return;
        }
        double made = size.get().value();
        Suits suits = Suits.of(book, Sample.CATALOGUE, Map.of("frame.width", Sample.mm(made)), Sample.CHOICES);
        assertThat(has(suits, x, y) || isNear(suits, "fit.width", x) || isNear(suits, "fit.length", y))
                .isTrue();
        for (Suits.Box box : suits.boxes()) {
            double inside =
                    box.figures().getOrDefault("fit.width", Interval.ALL).some();
            double beside =
                    box.figures().getOrDefault("fit.length", Interval.ALL).some();
            assertThat(forward(book, inside, beside)
                            .find("frame.width")
                            .orElseThrow()
                            .value())
                    .as(book + " " + box)
                    .isEqualTo(made, org.assertj.core.data.Offset.offset(1e-9));
        }
        for (int i = -60; i <= 60; i++) {
            double other = x + i * 0.37;
            boolean same = forward(book, other, y)
                    .find("frame.width")
                    .filter(one -> Math.abs(one.value() - made) < 1e-9)
                    .isPresent();
            if (!isNear(suits, "fit.width", other)) {
                assertThat(has(suits, other, y)).as(seed + " at " + other).isEqualTo(same);
            }
        }
    }

    /** Sums of sixteenths leave a last digit; the box of 1e-13 mm that it would make is none (found by the property above). */
    @Example
    void lastDigitsMakeNoBox() {
        for (int seed = 0; seed < 210; seed++) {
            for (double made = 880; made < 905; made += 0.5) {
                Map<String, Amount> size = Map.of("frame.width", Sample.mm(made));
                for (Suits.Box box : Suits.of(book(seed), Sample.CATALOGUE, size, Sample.CHOICES)
                        .boxes()) {
                    double x = box.figures()
                            .getOrDefault("fit.width", Interval.ALL)
                            .some();
                    double y = box.figures()
                            .getOrDefault("fit.length", Interval.ALL)
                            .some();
                    assertThat(forward(book(seed), x, y)
                                    .find("frame.width")
                                    .orElseThrow()
                                    .value())
                            .as(seed + " " + box)
                            .isEqualTo(made, org.assertj.core.data.Offset.offset(1e-9));
                }
            }
        }
    }

    /** By hand: 1495 = down(x − 8, 1 mm) for 1503 ≤ x < 1504. */
    @Example
    void theOpeningsOfAFrame() {
        Rulebook book = Sample.rulebook()
                .withBounds(List.of(
                        BoundClause.of("wide", "frame.width").withAtMost(Sample.fixed(3000)),
                        BoundClause.of("box", "headbox.length").withAtLeast(Sample.fixed(1492)),
                        BoundClause.of("narrow", "fit.width").withAtMost(Sample.fixed(1503.5)),
                        BoundClause.of("gap", "gap.least").withAtLeast(Sample.fixed(1))));
        Map<String, Amount> made = Map.of("frame.width", Sample.mm(1495), "frame.length", Sample.mm(2391));
        Suits suits = Suits.of(book, Sample.CATALOGUE, made, Sample.CHOICES);
        assertThat(suits.boxes())
                .containsExactly(new Suits.Box(Map.of(
                        "fit.width", new Interval(1503, true, 1503.5, true), "fit.length", Interval.from(2399, 2400))));
        assertThat(suits.kept()).containsExactly("wide", "narrow");
        assertThat(suits.broken()).containsExactly("box");
        assertThat(suits.open()).containsExactly("gap");
    }

    @Example
    void whatNoOpeningGives() {
        Rulebook book = Sample.rulebook();
        assertThat(Suits.of(book, Sample.CATALOGUE, Map.of("frame.width", Sample.mm(1495.5)), Map.of())
                        .boxes())
                .isEmpty();
        assertThat(Suits.of(book, Sample.CATALOGUE, Map.of("tube.diameter", Sample.mm(55)), Map.of())
                        .boxes())
                .isEmpty();
        assertThat(Suits.of(book, Sample.CATALOGUE, Map.of("tube.diameter", Sample.mm(63)), Map.of())
                        .boxes())
                .as("a frame above 1800 up to 3000")
                .containsExactly(new Suits.Box(Map.of("fit.width", Interval.from(1809, 3009))));
        assertThatThrownBy(() -> Suits.of(book, Sample.CATALOGUE, Map.of("x", Sample.mm(1)), Map.of()))
                .hasMessage("size must be one of the rulebook, got x");
    }
}
