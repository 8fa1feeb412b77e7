package quoin.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import quoin.measure.Dimension;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;

/** Laws of the odds. Where the lattice is used they hold up to the error that the odds state. */
class ConformityProperties {
    private static final int TRIES = 40;
    private static final double ROUNDING = 1e-12;

    @Provide
    Arbitrary<Uncertain> values() {
        Arbitrary<double[]> contributions =
                Arbitraries.doubles().between(-2, 2).array(double[].class).ofSize(3);
        return Combinators.combine(Arbitraries.doubles().between(-3, 3), contributions)
                .as(Values::row);
    }

    @Provide
    Arbitrary<List<Uncertain>> several() {
        return values().list().ofMinSize(1).ofMaxSize(5);
    }

    private static Extreme extreme(Extreme.Kind kind, List<Uncertain> values) {
        return new Extreme(kind, Values.parts(values.toArray(new Uncertain[0])));
    }

    @Property(tries = TRIES)
    void aWiderBoundNeverLowersTheOdds(
            @ForAll("values") Uncertain value,
            @ForAll @DoubleRange(min = -3, max = 3) double from,
            @ForAll @DoubleRange(min = 0, max = 3) double width,
            @ForAll @DoubleRange(min = 0, max = 2) double more) {
        double narrow =
                Conformity.odds(value, Bound.between(from, from + width)).value();
        double wide = Conformity.odds(value, Bound.between(from - more, from + width + more))
                .value();
        double open = Conformity.odds(value, Bound.atLeast(from - more)).value();
        assertThat(wide).isGreaterThanOrEqualTo(narrow - ROUNDING);
        assertThat(open).isGreaterThanOrEqualTo(wide - ROUNDING);
    }

    @Property(tries = TRIES)
    void aWiderBoundNeverLowersTheOddsOfAnExtreme(
            @ForAll Extreme.Kind kind,
            @ForAll("several") List<Uncertain> values,
            @ForAll @DoubleRange(min = -3, max = 3) double from,
            @ForAll @DoubleRange(min = 0, max = 3) double width,
            @ForAll @DoubleRange(min = 0, max = 2) double more) {
        Extreme extreme = extreme(kind, values);
        Odds narrow = Conformity.odds(extreme, Bound.between(from, from + width));
        Odds wide = Conformity.odds(extreme, Bound.between(from - more, from + width + more));
        assertThat(wide.upper()).isGreaterThanOrEqualTo(narrow.lower() - ROUNDING);
        assertThat(narrow.value()).isBetween(0.0, 1.0);
    }

    /** Near the threshold of the rule, where bounds alone do not settle it. */
    @Property(tries = 200)
    void oddsForARuleGiveTheVerdictOfTheOddsThemselves(
            @ForAll Extreme.Kind kind,
            @ForAll("several") List<Uncertain> values,
            @ForAll @DoubleRange(min = -3, max = 1) double from,
            @ForAll @DoubleRange(min = 2, max = 9) double width,
            @ForAll @DoubleRange(min = -0.05, max = 0.05) double off) {
        List<Constraint> both = List.of(new Constraint(extreme(kind, values), Bound.between(from, from + width)));
        Odds close = Conformity.jointOdds(both);
        double near = Math.max(close.value(), 1 - close.value()) + off;
        DecisionRule rule = near > 0.5 && near < 1 ? DecisionRule.guarded(near) : DecisionRule.simple();
        Odds enough = Conformity.jointOdds(both, rule);
        assertThat(Conformity.check("c", both, enough, Dimension.LENGTH, rule, Source.UNSTATED)
                        .verdict())
                .isEqualTo(Conformity.check("c", both, close, Dimension.LENGTH, rule, Source.UNSTATED)
                        .verdict());
        assertThat(close.lower()).isLessThanOrEqualTo(enough.upper() + ROUNDING);
        assertThat(close.upper()).isGreaterThanOrEqualTo(enough.lower() - ROUNDING);
    }

    @Property(tries = TRIES)
    void onePartMoreNeverRaisesTheOddsOfALeast(
            @ForAll("several") List<Uncertain> values, @ForAll("values") Uncertain another) {
        List<Uncertain> more = new ArrayList<>(values);
        more.add(another);
        Odds before = Conformity.odds(extreme(Extreme.Kind.LEAST, values), Bound.atLeast(-1));
        Odds after = Conformity.odds(extreme(Extreme.Kind.LEAST, more), Bound.atLeast(-1));
        assertThat(after.lower()).isLessThanOrEqualTo(before.upper() + ROUNDING);
        assertThat(after.upper())
                .isLessThanOrEqualTo(Conformity.odds(another, Bound.atLeast(-1)).value() + ROUNDING);
    }

    @Property(tries = TRIES)
    void aMirroredProblemHasTheSameOdds(
            @ForAll("several") List<Uncertain> values,
            @ForAll @DoubleRange(min = -3, max = 3) double from,
            @ForAll @DoubleRange(min = 0, max = 3) double width) {
        List<Uncertain> mirrored = values.stream().map(Uncertain::negated).toList();
        Bound bound = Bound.between(from, from + width);
        Bound turned = Bound.between(-from - width, -from);
        Odds least = Conformity.odds(extreme(Extreme.Kind.LEAST, values), bound);
        Odds greatest = Conformity.odds(extreme(Extreme.Kind.GREATEST, mirrored), turned);
        double room = least.upper() - least.lower() + greatest.upper() - greatest.lower();
        assertThat(greatest.value()).isEqualTo(least.value(), within(room + ROUNDING));
        double one = Conformity.odds(values.get(0), bound).value();
        assertThat(Conformity.odds(mirrored.get(0), turned).value()).isEqualTo(one, within(ROUNDING));
    }

    @Property(tries = TRIES)
    void anExtremeOfOnePartIsThatPart(
            @ForAll Extreme.Kind kind,
            @ForAll("values") Uncertain value,
            @ForAll @DoubleRange(min = -3, max = 3) double from,
            @ForAll @DoubleRange(min = 0, max = 3) double width) {
        Bound bound = Bound.between(from, from + width);
        double whole = Conformity.odds(extreme(kind, List.of(value)), bound).value();
        // Conditions that fail with less than 1e-7 may be left out.
        assertThat(whole).isEqualTo(Conformity.odds(value, bound).value(), within(2e-7));
    }

    @Property(tries = TRIES)
    void jointOddsLieBetweenTheSumOfTheRisksAndTheLeastOdds(@ForAll("several") List<Uncertain> values) {
        Bound bound = Bound.within(2.5);
        List<Constraint> constraints = new ArrayList<>();
        double risks = 0;
        double least = 1;
        for (Uncertain value : values) {
            constraints.add(new Constraint(value, bound));
            double p = Conformity.odds(value, bound).value();
            risks += 1 - p;
            least = Math.min(least, p);
        }
        Odds joint = Conformity.jointOdds(constraints);
        assertThat(joint.value()).isGreaterThanOrEqualTo(1 - risks - ROUNDING);
        assertThat(joint.lower()).isLessThanOrEqualTo(least + ROUNDING);
    }

    @Property(tries = TRIES)
    void theVerdictFollowsTheOdds(
            @ForAll Extreme.Kind kind,
            @ForAll("several") List<Uncertain> values,
            @ForAll @DoubleRange(min = 0.51, max = 0.99) double probability) {
        Extreme extreme = extreme(kind, values);
        Finding finding = Conformity.check(
                "clause", extreme, Dimension.LENGTH, Bound.within(2), DecisionRule.guarded(probability));
        double p = finding.odds().orElseThrow().value();
        switch (finding.verdict()) {
            case PASS -> assertThat(p).isGreaterThanOrEqualTo(probability);
            case FAIL -> assertThat(p).isLessThanOrEqualTo(1 - probability);
            case UNDECIDED -> assertThat(finding.reason()).isPresent();
        }
    }
}
