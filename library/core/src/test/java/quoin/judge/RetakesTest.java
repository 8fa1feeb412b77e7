package quoin.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.measure.Dimension;
import quoin.measure.Extreme;
import quoin.measure.Influence;
import quoin.measure.Influences;
import quoin.measure.Shape;
import quoin.measure.Uncertain;

class RetakesTest {
    private static final DecisionRule RULE = DecisionRule.guarded(0.95);

    // One-sided 95 % of the standard normal; JCGM 106:2012, Table 1 (memory), recomputed to twelve digits.
    private static final double Z = 1.644853626951;

    /** A figure of readings a and b, one shared tape scale, and a deduction. */
    private static final class Example {
        private final Influence a;
        private final Influence b;
        private final Influence scale = Influence.normal("tape/scale", 1);
        private final Influence deduction = Influence.normal("deduction", 0.2);
        private final double scaleEffect;

        Example(double ua, double ub, double scaleEffect) {
            a = Influence.normal("a#1/each1", ua);
            b = Influence.normal("b#1/each1", ub);
            this.scaleEffect = scaleEffect;
        }

        Uncertain figure(double value) {
            return Uncertain.of(
                    value, Influences.of(List.of(a, b, scale, deduction)), new double[] {1, -1, scaleEffect, 1});
        }

        List<ReadingDoubt> readings() {
            return List.of(
                    new ReadingDoubt("b", "tape", 1, List.of(b), List.of(scale)),
                    new ReadingDoubt("a", "tape", 1, List.of(a), List.of(scale)));
        }
    }

    private static List<Retake> suggest(Uncertain figure, Bound bound, List<ReadingDoubt> readings) {
        return Retakes.suggest(figure, bound, RULE, readings);
    }

    @Test
    void theLargestShareComesFirstWithTheDoubtThatDecides() {
        Example example = new Example(1.2, 0.5, 0);
        List<Retake> retakes = suggest(example.figure(2), Bound.atLeast(0), example.readings());
        Retake first = retakes.get(0);
        assertThat(first.readings()).containsExactly("a");
        assertThat(first.by()).isEqualTo("tape");
        // (2/z)^2 must be left in all: 0.5^2 + 0.2^2 are there, the rest is for a.
        double left = (2 / Z) * (2 / Z) - 0.25 - 0.04;
        assertThat(first.u()).isEqualTo(StrictMath.sqrt(left), within(1e-9));
        assertThat(first.times()).isEqualTo(1);
        // b alone: 1.2^2 + 0.2^2 leave (2/z)^2 - 1.48 below zero: not enough, so a is the only one.
        assertThat(retakes).hasSize(1);
    }

    @Test
    void readingAsAskedDecidesAtThePresentEstimate() {
        Example example = new Example(1.2, 0.5, 0.1);
        Retake first =
                suggest(example.figure(2), Bound.atLeast(0), example.readings()).get(0);
        Example better = new Example(first.u() * (1 - 1e-9), 0.5, 0.1);
        Example worse = new Example(first.u() * (1 + 1e-6), 0.5, 0.1);
        assertThat(verdict(better.figure(2), Bound.atLeast(0))).isEqualTo(Verdict.PASS);
        assertThat(verdict(worse.figure(2), Bound.atLeast(0))).isEqualTo(Verdict.UNDECIDED);
    }

    private static Verdict verdict(Uncertain figure, Bound bound) {
        return Conformity.check("clause", figure, Dimension.LENGTH, bound, RULE).verdict();
    }

    // Brute force: the new estimate is normal with the variance that goes away; each one is judged by itself.
    // Midpoint rule in 4000 steps over +-8: two jumps of at most one step of 0.004 with density .4: 2e-3.
    @Test
    void settlesIsTheChanceThatTheNewEstimateIsDecided() {
        for (Bound bound : List.of(Bound.atLeast(0), Bound.atMost(4.1), Bound.between(0, 6))) {
            Example example = new Example(1.2, 0.5, 0);
            Retake first = suggest(example.figure(2), bound, example.readings()).get(0);
            double removed = 1.2 * 1.2 * first.times() / (first.times() + 1.0);
            double after = StrictMath.sqrt(1.2 * 1.2 + 0.25 + 0.04 - removed);
            double sum = 0;
            for (int i = 0; i < 4000; i++) {
                double z = -8 + (i + 0.5) * 0.004;
                Uncertain then = Values.value(2 + z * StrictMath.sqrt(removed), after);
                sum += verdict(then, bound) == Verdict.UNDECIDED ? 0 : Gauss.density(z) * 0.004;
            }
            assertThat(first.settles()).isEqualTo(sum, within(2e-3));
            assertThat(first.settles()).isBetween(0.2, 0.95);
        }
    }

    @Test
    void aWidthThatIsTooNarrowIsSettledByADoubtThatFits() {
        Influence a = Influence.normal("a", 1);
        List<ReadingDoubt> readings = List.of(new ReadingDoubt("a", "tape", 1, List.of(a), List.of()));
        Retake retake =
                suggest(Uncertain.of(1.5, a), Bound.between(0, 3), readings).get(0);
        // Two-sided 95 % needs a width of 3.92 u (recomputed: 2 x 1.959964).
        assertThat(retake.u()).isEqualTo(3 / 3.919928, within(1e-6));
        assertThat(retake.times()).isEqualTo(1);
    }

    @Test
    void outsideTheLimitsItIsTheFailureThatGetsDecided() {
        Example example = new Example(1.2, 0.5, 0);
        Retake first = suggest(example.figure(-2), Bound.atLeast(0), example.readings())
                .get(0);
        Retake mirrored =
                suggest(example.figure(2), Bound.atLeast(0), example.readings()).get(0);
        assertThat(first.u()).isEqualTo(mirrored.u(), within(1e-12));
    }

    @Test
    void repetitionsCountTheValuesThatAreThere() {
        // Three values of u 1.2 each: the mean has .6928; a doubt of .4 needs 1.44/.16 = 9 values, six more.
        List<Influence> fresh = new ArrayList<>();
        for (int i = 1; i <= 3; i++) {
            fresh.add(Influence.normal("a#" + i, 1.2));
        }
        double third = 1.0 / 3;
        Uncertain figure = Uncertain.of(0.4 * Z, Influences.of(fresh), new double[] {third, third, third});
        Retake retake = suggest(figure, Bound.atLeast(0), List.of(new ReadingDoubt("a", "laser", 3, fresh, List.of())))
                .get(0);
        assertThat(retake.u()).isEqualTo(0.4, within(1e-9));
        assertThat(retake.times()).isEqualTo(6);
        assertThat(retake.by()).isEqualTo("laser");
    }

    @Test
    void severalReadingsWhereNoneIsEnough() {
        Example example = new Example(0.9, 0.9, 0);
        // Left (1.45/z)^2 = .777, one reading and the deduction have .85: both must be read again.
        List<Retake> retakes = suggest(example.figure(1.45), Bound.atLeast(0), example.readings());
        assertThat(retakes).hasSize(1);
        assertThat(retakes.get(0).readings()).containsExactlyInAnyOrder("a", "b");
        double u = StrictMath.sqrt(((1.45 / Z) * (1.45 / Z) - 0.04) / 2);
        assertThat(retakes.get(0).u()).isEqualTo(u, within(1e-9));
        assertThat(retakes.get(0).times()).isEqualTo(2);
    }

    @Test
    void theSameTapeAgainDoesNotHelpAgainstItsOwnScale() {
        Example example = new Example(0.1, 0.1, 1.2);
        List<Retake> retakes = suggest(example.figure(1), Bound.atLeast(0), example.readings());
        assertThat(retakes).hasSize(1);
        assertThat(retakes.get(0).by()).isEmpty();
        assertThat(retakes.get(0).readings()).containsExactly("b", "a");
        double u = StrictMath.sqrt(((1 / Z) * (1 / Z) - 0.04) / 2);
        assertThat(retakes.get(0).u()).isEqualTo(u, within(1e-9));
        assertThat(retakes.get(0).settles()).isBetween(0.3, 1.0);
    }

    @Test
    void theInstrumentWhoseReplacementLeavesMostIsReplaced() {
        Influence a = Influence.normal("a", 0.1);
        Influence b = Influence.normal("b", 0.1);
        Influence tape = Influence.normal("tape", 0.3);
        Influence laser = Influence.normal("laser", 1.2);
        Uncertain figure = Uncertain.of(1, Influences.of(List.of(a, b, tape, laser)), new double[] {1, 1, 1, 1});
        List<Retake> retakes = suggest(
                figure,
                Bound.atLeast(0),
                List.of(
                        new ReadingDoubt("x", "tape", 1, List.of(a), List.of(tape)),
                        new ReadingDoubt("y", "laser", 1, List.of(b), List.of(laser))));
        assertThat(retakes).hasSize(1);
        assertThat(retakes.get(0).readings()).containsExactly("y");
    }

    @Test
    void onTheLimitNoDoubtDecidesButTheEstimateMayMove() {
        Example example = new Example(1.2, 0.5, 0);
        List<Retake> retakes = suggest(example.figure(0), Bound.atLeast(0), example.readings());
        assertThat(retakes).hasSize(1);
        assertThat(retakes.get(0).readings()).containsExactly("a");
        assertThat(retakes.get(0).u()).isNaN();
        assertThat(retakes.get(0).settles()).isBetween(0.001, 0.2);
    }

    @Test
    void whatIsDecidedNeedsNoRetake() {
        Example example = new Example(1.2, 0.5, 0);
        assertThat(suggest(example.figure(3), Bound.atLeast(0), example.readings()))
                .isEmpty();
        assertThat(suggest(example.figure(-3), Bound.atLeast(0), example.readings()))
                .isEmpty();
        assertThat(Retakes.suggest(example.figure(0.1), Bound.atLeast(0), DecisionRule.simple(), example.readings()))
                .isEmpty();
    }

    @Test
    void whatHangsOnNoReadingHasNoRetake() {
        Example example = new Example(1.2, 0.5, 0);
        Uncertain declared = Values.value(1, 1, "declared");
        assertThat(suggest(declared, Bound.atLeast(0), example.readings())).isEmpty();
    }

    @Test
    void guardBands() {
        Example example = new Example(1.2, 0.5, 0);
        // A fixed band does not shrink: only a new estimate can decide.
        Retake fixed = Retakes.suggest(
                        example.figure(0.5), Bound.atLeast(0), DecisionRule.guardBand(1), example.readings())
                .get(0);
        assertThat(fixed.u()).isNaN();
        assertThat(fixed.settles()).isBetween(0.2, 0.8);
        // A band of one U at k = 2: 2 u must not exceed the margin.
        Retake factor = Retakes.suggest(
                        example.figure(2), Bound.atLeast(0), DecisionRule.guardFactor(1, 2), example.readings())
                .get(0);
        assertThat(factor.u()).isEqualTo(StrictMath.sqrt(1 - 0.25 - 0.04), within(1e-9));
    }

    @Test
    void aLeastAsksMoreOfItsGoverningPart() {
        Influence a = Influence.normal("a", 1);
        Influence b = Influence.normal("b", 1);
        Extreme least = Extreme.least(Values.parts(Uncertain.of(1.7, a), Uncertain.of(1.8, b)));
        List<ReadingDoubt> readings = List.of(
                new ReadingDoubt("a", "tape", 1, List.of(a), List.of()),
                new ReadingDoubt("b", "tape", 1, List.of(b), List.of()));
        // The governing part by itself passes at .9554; the two together have .921.
        Retake retake = Retakes.suggest(least, Bound.atLeast(0), RULE, readings).get(0);
        assertThat(retake.readings()).containsExactly("a");
        double part = 1 - Gauss.below(1.7);
        double whole = 1 - Gauss.below(1.7) * Gauss.below(1.8);
        double z = Gauss.quantile(1 - 0.05 * part / whole);
        assertThat(retake.u()).isEqualTo(1.7 / z, within(1e-4));
    }

    @Test
    void aLeastThatFailsAsksForNoMoreThanItsPart() {
        Influence a = Influence.normal("a", 1);
        Extreme one = Extreme.least(Values.parts(Uncertain.of(1, a)));
        List<ReadingDoubt> readings = List.of(new ReadingDoubt("a", "tape", 1, List.of(a), List.of()));
        assertThat(Retakes.suggest(one, Bound.atLeast(0), RULE, readings))
                .isEqualTo(suggest(Uncertain.of(1, a), Bound.atLeast(0), readings));
    }

    @Test
    void fewDegreesOfFreedomAskForMore() {
        // 1.9 u: the normal has .971 and would be decided; Student's t with 4 degrees of freedom has .935.
        Influence few = new Influence("a", Shape.NORMAL, 1, 4, "");
        List<ReadingDoubt> readings = List.of(new ReadingDoubt("a", "tape", 1, List.of(few), List.of()));
        for (double value : new double[] {1.9, -1.9}) {
            List<Retake> retakes = suggest(Uncertain.of(value, few), Bound.atLeast(0), readings);
            assertThat(retakes).hasSize(1);
            double share = Gauss.below(-1.9) / Gauss.below(-1.9, 4);
            assertThat(retakes.get(0).u()).isEqualTo(1.9 / Gauss.quantile(1 - 0.05 * share), within(1e-6));
        }
    }

    @Test
    void oddsThatTheNormalCannotTellFromOneAreBounded() {
        Influence one = new Influence("a", Shape.NORMAL, 1, 1, "");
        List<ReadingDoubt> readings = List.of(new ReadingDoubt("a", "tape", 1, List.of(one), List.of()));
        List<Retake> retakes =
                Retakes.suggest(Uncertain.of(20, one), Bound.atLeast(0), DecisionRule.guarded(0.99), readings);
        // One degree of freedom at 20 u: P = .984; the normal has no digits left to ask for more than once again.
        assertThat(Conformity.odds(Uncertain.of(20, one), Bound.atLeast(0)).value())
                .isLessThan(0.985);
        assertThat(retakes).hasSize(1);
        assertThat(retakes.get(0).times()).isEqualTo(1);
        assertThat(retakes.get(0).u()).isEqualTo(1, within(1e-6));
    }

    @Test
    void aReadingHasANameAndAValue() {
        assertThatThrownBy(() -> new ReadingDoubt("a", "tape", 0, List.of(), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("values must be 1 or more, got 0");
        assertThatThrownBy(() -> new ReadingDoubt("", "tape", 1, List.of(), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void zonesWithoutDoubtAreTheLimitsThemselves() {
        Zones zones = Zones.of(RULE, Bound.between(1, 3), 0);
        assertThat(zones).isEqualTo(new Zones(1, 3, 1, 3));
        assertThat(zones.decides(2)).isTrue();
        assertThat(zones.decides(2, 0)).isEqualTo(1);
        assertThat(Zones.of(RULE, Bound.between(1, 3), 2).decides(2, 0)).isZero();
    }
}
