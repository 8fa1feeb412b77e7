package quoin.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.judge.DecisionRule;
import quoin.judge.Problem;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;

/** Faults that were put in on purpose: each is found, and the witness is one that can be tried out. */
class ProofsTest {
    private static final Quota.Banded WIDER = Sample.bands("fit.width", 1000, 3, 4000, 5);

    private static Map<String, Object> only(Rulebook rulebook, String code, String pointer) {
        List<Problem> problems = Lint.problems(rulebook, Sample.CATALOGUE, List.of());
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).code()).isEqualTo(code);
        assertThat(problems.get(0).pointer()).isEqualTo(pointer);
        return problems.get(0).args().asMap();
    }

    private static double decided(Rulebook rulebook, String size, double width) {
        return Sample.mm(
                Sample.decide(rulebook, RandomRules.known(Map.of("fit.width", width, "fit.length", 2400.0))), size);
    }

    private static BoundClause bound(String id, String figure) {
        return BoundClause.of(id, figure).withBecause("b", Sample.ASSUMED);
    }

    private static Item less(Quota quota, double times) {
        return new Item(quota, times, "", Source.UNSTATED);
    }

    @Test
    void aGapIsFound() {
        SizeClause tube = Sample.size("tube", Sample.bands("frame.width", 1800, 50, 2900, 63));
        Rulebook rulebook = Sample.with(tube)
                .withBounds(List.of(bound("most", "frame.width").withAtMost(Sample.fixed(3000))));
        assertThat(only(rulebook, "band-gap", "/sizes/2/of/bands/amounts"))
                .isEqualTo(Map.of("by", "frame.width", "witness", 3000.0, "above", 2900.0, "unit", "mm"));
        // the witness is inside the limit, and there is no tube for it: 3008 mm less 2 x 4 mm is 3000 mm
        assertThat(Sample.decide(rulebook, Sample.survey(3008, 2400)).find("tube"))
                .isEmpty();
    }

    /** The bands are by another figure than the limit, and a rounding lies between them. */
    @Test
    void aGapBehindASizeIsFound() {
        SizeClause tube = Sample.size("tube", Sample.bands("fit.width", 1800, 50, 3000, 63));
        Rulebook rulebook = Sample.with(tube)
                .withBounds(List.of(bound("most", "frame.width").withAtMost(Sample.fixed(3000))));
        // the frame is 3000 mm up to, and not at, 3009 mm
        assertThat(only(rulebook, "band-gap", "/sizes/2/of/bands/amounts"))
                .isEqualTo(Map.of("by", "fit.width", "witness", 3009.0, "above", 3000.0, "unit", "mm"));
    }

    @Test
    void anOverlapIsFound() {
        SizeClause tube = Sample.size("tube", Sample.bands("frame.width", 1800, 50, 1800, 63));
        assertThat(only(Sample.with(tube), "band-overlap", "/sizes/2/of/bands/amounts/1/upTo"))
                .isEqualTo(
                        Map.of("by", "frame.width", "witness", 1800.0, "before", 1800.0, "above", 0.0, "unit", "mm"));
    }

    /** Half of what is taken off is not seen by the clause that takes it off twice: the edge acts through the chain. */
    @Test
    void anEdgeThatIsNotMonotoneIsFoundThroughSizesAndRounding() {
        SizeClause frame =
                Sample.size("frame.width", "fit.width").withLess(less(WIDER, 2)).withRound(Sample.down(5));
        SizeClause box = Sample.size("box", "frame.width").withRound(Sample.down(1));
        Rulebook rulebook =
                Sample.empty().withSizes(List.of(frame, Sample.frame().get(1), box));
        // 1000 - 6 is 994, down to 990; just above, 1000 - 10 is 990, which is no step down: 5 mm swallow the 4 mm
        assertThat(Lint.problems(rulebook, Sample.CATALOGUE, List.of())).isEmpty();

        SizeClause fine = frame.withRound(Sample.down(2));
        Map<String, Object> witness =
                only(Sample.empty().withSizes(List.of(fine, Sample.frame().get(1), box)), "steps-down", "/sizes/0");
        assertThat(witness)
                .containsEntry("at", 1000.0)
                .containsEntry("before", 994.0)
                .containsEntry("after", 990.0)
                .containsEntry("down", 4.0);
        Rulebook faulty = Sample.empty().withSizes(List.of(fine, Sample.frame().get(1), box));
        assertThat(decided(faulty, "frame.width", 1000)).isEqualTo(994);
        assertThat(decided(faulty, "frame.width", 1000.001)).isEqualTo(990);
    }

    /** The band is picked by a size; its edge is one value of the figure that the size is made from. */
    @Test
    void aStepDownBySizeIsFoundAtTheFigure() {
        Quota bySize = Sample.bands("frame.width", 1000, 1, 4000, 3);
        SizeClause box = Sample.size("box", "frame.width").withLess(less(bySize, 1));
        Map<String, Object> witness = only(Sample.with(box), "steps-down", "/sizes/2");
        // frame.width is fit.width less 8 mm, down to 1 mm: it passes 1000 mm where fit.width reaches 1009 mm
        assertThat(witness)
                .containsEntry("by", "fit.width")
                .containsEntry("at", 1009.0)
                .containsEntry("before", 999.0)
                .containsEntry("after", 998.0);
        assertThat(decided(Sample.with(box), "box", 1008.999)).isEqualTo(999);
        assertThat(decided(Sample.with(box), "box", 1009)).isEqualTo(998);
    }

    @Test
    void aStepDownAlongTheOtherWayIsFound() {
        Quota byLength = Sample.bands("fit.length", 2000, 1, 4000, 3);
        SizeClause frame = Sample.frame("frame.width", "fit.width").withLess(less(byLength, 1));
        Rulebook rulebook =
                Sample.empty().withSizes(List.of(frame, Sample.frame().get(1)));
        assertThat(only(rulebook, "steps-down", "/sizes/0"))
                .containsEntry("by", "fit.length")
                .containsEntry("at", 2000.0)
                .containsEntry("down", 2.0);
    }

    @Test
    void aStepDownForOnePartNamesThePart() {
        Map<String, Amount> amounts = new LinkedHashMap<>();
        amounts.put("drive-a", Sample.mm(1));
        amounts.put("drive-b", Sample.mm(2));
        SizeClause by = Sample.size("by", "fit.width").withLess(less(Quota.byChoice("drive", amounts), 1));
        SizeClause box = Sample.size("box", "by")
                .withMore(less(Sample.bands("by", 998.5, 1, 4000, 2), 1))
                .withLess(less(Sample.bands("fit.width", 1000, 1, 4000, 2), 1));
        List<Problem> problems = Lint.problems(Sample.with(by, box), Sample.CATALOGUE, List.of());
        assertThat(problems).extracting(Problem::code).containsOnly("steps-down");
        assertThat(problems)
                .allSatisfy(problem -> assertThat(problem.args().asMap())
                        .containsEntry("at", 1000.0)
                        .containsKey("choices"));
    }

    @Test
    void aBoundThatNeverFailsIsFound() {
        SizeClause box =
                Sample.size("box", "frame.width").withLess(Sample.item(4, 1)).withRound(Sample.down(5));
        List<BoundClause> bounds = List.of(
                bound("frame", "frame.width").withAtLeast(Sample.fixed(400)).withAtMost(Sample.fixed(3000)),
                bound("box", "box").withAtMost(Sample.fixed(2995)));
        // 3000 - 4 is 2996, down to 2995; 400 - 4 is 396, down to 395
        assertThat(only(Sample.with(box).withBounds(bounds), "never-fails", "/bounds/1"))
                .isEqualTo(Map.of("clause", "box", "figure", "box", "unit", "mm", "from", 395.0, "to", 2995.0));
        assertThat(Lint.problems(
                        Sample.with(box)
                                .withBounds(List.of(bounds.get(0), bounds.get(1).withAtMost(Sample.fixed(2994)))),
                        Sample.CATALOGUE,
                        List.of()))
                .isEmpty();
    }

    @Test
    void aBoundThatAnotherMakesNeedlessIsFound() {
        BoundClause narrow = bound("narrow", "gap.least").withAtLeast(Sample.fixed(2));
        BoundClause wide = bound("wide", "gap.least").withAtLeast(Sample.fixed(1));
        assertThat(only(Sample.with().withBounds(List.of(wide, narrow)), "never-matters", "/bounds/0"))
                .isEqualTo(Map.of("clause", "wide", "other", "narrow", "figure", "gap.least"));
        BoundClause surer = wide.withDecide(DecisionRule.guarded(0.99));
        assertThat(Lint.problems(Sample.with().withBounds(List.of(surer, narrow)), Sample.CATALOGUE, List.of()))
                .isEmpty();
        BoundClause banded = bound("banded", "gap.least").withAtLeast(Sample.bands("fit.width", 1000, 1, 4000, 2));
        assertThat(Lint.problems(Sample.with().withBounds(List.of(banded, narrow)), Sample.CATALOGUE, List.of()))
                .as("above 4000 mm the banded one is not stated, so it matters")
                .isEmpty();
    }

    @Test
    void aBandThatNothingComesToIsFound() {
        SizeClause tube = Sample.size("tube", Sample.bands("frame.width", 300, 40, 1800, 50, 3000, 63));
        Rulebook rulebook = Sample.with(tube)
                .withBounds(List.of(bound("frame", "frame.width")
                        .withAtLeast(Sample.fixed(400))
                        .withAtMost(Sample.fixed(3000))));
        assertThat(only(rulebook, "band-never-used", "/sizes/2/of/bands/amounts/0"))
                .isEqualTo(Map.of(
                        "by", "frame.width", "above", 0.0, "upTo", 300.0, "unit", "mm", "from", 400.0, "to", 3000.0));
    }

    @Test
    void aWrongUnitIsFound() {
        SizeClause box =
                Sample.size("box", "frame.width").withLess(Sample.item(Quota.fixed(new Amount(4, Dimension.MASS))));
        assertThat(only(Sample.with(box), "wrong-dimension", "/sizes/2/less/0/amount"))
                .isEqualTo(Map.of("expected", "length", "got", "mass", "unit", "mm"));
    }

    @Test
    void aCycleIsFound() {
        Rulebook rulebook = Sample.with(Sample.size("a", "b"), Sample.size("b", "a"));
        List<Problem> problems = Lint.problems(rulebook, Sample.CATALOGUE, List.of());
        assertThat(problems).extracting(Problem::code).containsExactly("cycle", "cycle");
        assertThat(problems.get(0).args().get("sizes")).contains(List.of("a", "b", "a"));
    }

    /** 12 bands by each of six figures make 13^6, nearly five million boxes; that is said, not computed. */
    @Test
    void whatWouldTakeTooLongIsNamed() {
        SizeClause box = Sample.size("box", "frame.width");
        List<Item> items = new ArrayList<>();
        for (String by : List.of("fit.width", "fit.length", "opening.diagonal.difference", "own.a", "own.b", "own.c")) {
            double[] pairs = new double[24];
            for (int i = 0; i < pairs.length; i += 2) {
                pairs[i] = 100.0 * (i + 1);
                pairs[i + 1] = 5.0 - i / 8.0;
            }
            items.add(Sample.item(Sample.bands(by, pairs)));
        }
        Rulebook rulebook = Sample.with(box.withLess(items.toArray(Item[]::new)));
        assertThat(only(rulebook, "not-proved", "/sizes/2"))
                .isEqualTo(Map.of("size", "box", "got", "too-many-regions"));
    }

    @Test
    void whatIsNoWholeNumberIsNamed() {
        SizeClause box = Sample.size("box", "frame.width").withLess(Sample.item(1.0 / 3, 1));
        assertThat(only(Sample.with(box), "not-proved", "/sizes/2"))
                .isEqualTo(Map.of("size", "box", "got", "not-exact"));
    }
}
