package quoin.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import quoin.measure.Influence;
import quoin.measure.Uncertain;

class SizingProperties {
    private static Map<String, Size> byId(Sizes sizes) {
        return sizes.all().stream().collect(Collectors.toMap(Size::id, size -> size));
    }

    @Property
    void theOrderOfClausesDoesNotMatter(
            @ForAll Random random,
            @ForAll @DoubleRange(min = 100, max = 3200) double width,
            @ForAll @DoubleRange(min = 100, max = 3200) double length) {
        FigureSource survey = Sample.survey(width, length);
        List<SizeClause> clauses = new ArrayList<>(Sample.sizes());
        Sizes before = Sample.decide(Sample.empty().withSizes(clauses), survey);
        Collections.shuffle(clauses, random);
        Sizes after = Sample.decide(Sample.empty().withSizes(clauses), survey);
        assertThat(byId(after)).isEqualTo(byId(before));
        assertThat(after.refused()).containsExactlyInAnyOrderElementsOf(before.refused());
    }

    /** Steps of 1 mm, 0.5 mm, 1/16 in and 1/32 in; exact. */
    @Property
    void aRoundedSizeIsAFixedPoint(
            @ForAll @IntRange(min = 1, max = 100_000) int count,
            @ForAll @IntRange(min = 0, max = 3) int which,
            @ForAll Rounding.Mode mode) {
        double step = new double[] {1, 0.5, 25.4 / 16, 25.4 / 32}[which];
        SizeClause clause =
                Sample.size("a", Sample.fixed(count * step)).withRound(new Rounding.Step(mode, Sample.mm(step)));
        Sizes sizes = Sample.decide(Sample.with(clause), Sample.survey(1500, 2400));
        assertThat(Sample.mm(sizes, "a")).isEqualTo(count * step);
    }

    @Property
    void aWiderOpeningNeverMakesANarrowerFrame(
            @ForAll @DoubleRange(min = 100, max = 3000) double width,
            @ForAll @DoubleRange(min = 0, max = 10) double wider) {
        double narrow = Sample.mm(Sample.decide(Sample.rulebook(), Sample.survey(width, 2400)), "frame.width");
        double wide = Sample.mm(Sample.decide(Sample.rulebook(), Sample.survey(width + wider, 2400)), "frame.width");
        assertThat(wide).isGreaterThanOrEqualTo(narrow);
    }

    @Property
    void aSizeCarriesNothingOfTheReadings(@ForAll @DoubleRange(min = 100, max = 3000) double width) {
        Sizes sizes = Sample.decide(Sample.rulebook(), Sample.survey(width, 2400));
        for (Size size : sizes.all()) {
            assertThat(size.asUncertain().influences().asList())
                    .extracting(Influence::id)
                    .allMatch(id -> id.equals("cut/" + size.id()));
        }
        Uncertain gap = Sample.width(width)
                .minus(sizes.find("frame.width").orElseThrow().asUncertain());
        assertThat(gap.standardUncertainty()).isGreaterThan(0.8);
    }

    /** A chain of any length is decided in one go, and none is too long. */
    @Example
    void aChainOfSizesIsDecided() {
        int length = 20_000;
        List<SizeClause> clauses = new ArrayList<>();
        for (int i = length; i > 0; i--) {
            clauses.add(Sample.size("s" + i, "s" + (i - 1)).withLess(Sample.item(1, 1)));
        }
        clauses.add(Sample.size("s0", Sample.fixed(length + 1)));
        Sizes sizes = Sample.decide(Sample.empty().withSizes(clauses), Sample.survey(1, 1));
        assertThat(Sample.mm(sizes, "s" + length)).isEqualTo(1);
    }
}
