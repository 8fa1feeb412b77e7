package quoin.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static quoin.judge.Values.greatest;
import static quoin.judge.Values.largestInSize;
import static quoin.judge.Values.least;
import static quoin.judge.Values.row;
import static quoin.judge.Values.value;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.measure.Dimension;
import quoin.measure.Influence;
import quoin.measure.Influences;
import quoin.measure.Shape;
import quoin.measure.Uncertain;

class ConformityTest {
    private static final DecisionRule NINETY_FIVE = DecisionRule.guarded(0.95);

    private static Finding check(Uncertain value, Bound bound, DecisionRule rule) {
        return Conformity.check("clause", value, Dimension.LENGTH, bound, rule);
    }

    private static double p(Uncertain value, Bound bound) {
        return Conformity.odds(value, bound).value();
    }

    // memory: JCGM 106:2012, 7.3.3, examples 1 and 2: printed .92 and .99; five digits recomputed from the tables.
    @Test
    void oneSidedExamplesOfTheGuide() {
        assertThat(p(value(-5.47, 0.05), Bound.atMost(-5.40))).isEqualTo(0.91924, within(5e-6));
        assertThat(p(value(509.7, 8.6), Bound.atLeast(490))).isEqualTo(0.98901, within(5e-6));
    }

    // standard: JCGM 106:2012, 7.4, two-sided: printed .66; .93319 - .27056 = .662630.
    @Test
    void twoSidedExampleOfTheGuide() {
        Odds odds = Conformity.odds(value(13.6, 1.8), Bound.between(12.5, 16.3));
        assertThat(odds.value()).isEqualTo(0.662630, within(5e-7));
        assertThat(odds.method()).isEqualTo(Odds.Method.FIRST_ORDER);
    }

    // memory: JCGM 106:2012, 8.3.3.2: 100 km/h, u 2 % of the reading, 99.9 %: act above 106.588, "about 107".
    @Test
    void speedLimitOfTheGuide() {
        assertThat(p(value(106.588, 0.02 * 106.588), Bound.atLeast(100))).isEqualTo(0.999, within(2e-6));
    }

    // Recomputed in metrology notes: guard band for two-sided 95 % at a width of 4, 5 and 6 u, four digits.
    // Half a unit of the last digit moves P by 0.00005 times the density at 1.65, 0.1: 5e-6, at 4 u twice (1e-3
    // digits).
    @ParameterizedTest
    @CsvSource({"4, 1.796, 6e-5", "5, 1.6488, 6e-6", "6, 1.6449, 6e-6"})
    void narrowTolerances(double width, double guard, double tolerance) {
        assertThat(p(value(guard, 1), Bound.between(0, width))).isEqualTo(0.95, within(tolerance));
    }

    @Test
    void belowThreePointNineTwoNothingCanPass() {
        assertThat(p(value(1.5, 1), Bound.between(0, 3))).isEqualTo(0.866, within(5e-4));
        Finding narrow = check(value(1.5, 1), Bound.between(0, 3), NINETY_FIVE);
        assertThat(narrow.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(narrow.reason()).contains(Reason.TOO_NARROW);
        assertThat(check(value(1.9, 1), Bound.between(0, 3.91), NINETY_FIVE).reason())
                .contains(Reason.TOO_NARROW);
        assertThat(check(value(1.5, 1), Bound.between(0, 3.93), NINETY_FIVE).reason())
                .contains(Reason.DOUBT);
        assertThat(check(value(1.965, 1), Bound.between(0, 3.93), NINETY_FIVE).verdict())
                .isEqualTo(Verdict.PASS);
    }

    // Trap: with the one-sided table (1.645) a value 1.65 u inside both limits of a width of 3.3 u would pass.
    @Test
    void bothTailsCount() {
        assertThat(check(value(1.65, 1), Bound.between(0, 3.3), NINETY_FIVE).verdict())
                .isEqualTo(Verdict.UNDECIDED);
        assertThat(check(value(1.65, 1), Bound.atLeast(0), NINETY_FIVE).verdict())
                .isEqualTo(Verdict.PASS);
    }

    // handbook: Student's t, 4 degrees of freedom: tail beyond 4.5 is 5.4e-3 (normal 3.4e-6); one-sided 95 % at 2.132.
    @Test
    void fewDegreesOfFreedomHaveHeavyTails() {
        Uncertain five = Uncertain.of(4.5, new Influence("five readings", Shape.NORMAL, 1, 4, ""));
        assertThat(1 - p(five, Bound.atLeast(0))).isEqualTo(5.4e-3, within(5e-5));
        assertThat(1 - p(value(4.5, 1), Bound.atLeast(0))).isEqualTo(3.4e-6, within(5e-8));
        assertThat(p(five, Bound.atLeast(4.5 - 2.132))).isEqualTo(0.95, within(5e-5));
    }

    // The same numbers as above, by the parts of a least: few degrees of freedom keep their tails there, too. A normal
    // table would leave 3.4e-6 instead of 5.4e-3.
    @Test
    void fewDegreesOfFreedomHaveHeavyTailsInALeast() {
        Uncertain five = Uncertain.of(4.5, Influence.tByScale("five readings", 1, 4));
        Uncertain sure = value(9, 1, "another");
        Odds odds = Conformity.odds(least(five, sure), Bound.atLeast(0));
        assertThat(1 - odds.value()).isEqualTo(5.4e-3, within(5e-5));
        assertThat(odds.value()).isEqualTo(p(five, Bound.atLeast(0)), within(1e-6));
        // independent parts multiply whatever their tails
        Uncertain four = Uncertain.of(1.2, Influence.tByScale("four more", 1, 3));
        Odds joint = Conformity.jointOdds(
                List.of(new Constraint(five, Bound.atLeast(2)), new Constraint(four, Bound.between(-0.5, 3))));
        double product = Gauss.below(2.5, 4) * Gauss.between(-1.7, 1.8, 3);
        assertThat(joint.value()).isEqualTo(product, within(1e-4));
        assertThat(product).isBetween(joint.lower(), joint.upper());
        // one part is that part, on either side of the limit
        for (double limit : new double[] {-2, 1.2, 4}) {
            assertThat(Conformity.odds(greatest(four), Bound.atMost(limit)).value())
                    .isEqualTo(p(four, Bound.atMost(limit)), within(1e-12));
        }
        // 3 u inside passes 99.5 % for normal parts, not for two readings
        Uncertain two = Uncertain.of(3, Influence.tByScale("two readings", 1, 1));
        assertThat(verdict(least(two, sure), Bound.atLeast(0), DecisionRule.guarded(0.95)))
                .isEqualTo(Verdict.UNDECIDED);
    }

    // Trap: the square of a number that is 0 ± 1 has no doubt to first order. That is no certainty.
    @Test
    void whatFirstOrderDoesNotSeeIsNoCertainty() {
        Uncertain zero = value(0, 1);
        Uncertain square = zero.times(zero);
        Odds odds = Conformity.odds(square, Bound.atMost(0.5));
        assertThat(odds).isEqualTo(new Odds(1, 0, 1, Odds.Method.BOUNDS));
        Finding finding = check(square, Bound.atMost(0.5), NINETY_FIVE);
        assertThat(finding.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(finding.reason()).contains(Reason.NUMERICAL);
        Finding fails = check(square.plus(1), Bound.atMost(0.5), NINETY_FIVE);
        assertThat(fails.reason()).contains(Reason.NUMERICAL);
        // as a part, and together with other bounds
        Odds part = Conformity.odds(least(square, value(9, 1, "other")), Bound.atLeast(-1));
        assertThat(part.lower()).isZero();
        assertThat(part.upper()).isEqualTo(1);
        assertThat(Conformity.jointOdds(List.of(
                                new Constraint(square, Bound.atMost(0.5)), new Constraint(zero, Bound.atMost(3))))
                        .lower())
                .isZero();
        assertThat(Conformity.jointOdds(List.of(new Constraint(square, Bound.atMost(0.5))))
                        .lower())
                .isZero();
        // with a doubt of its own it has odds: the part that is missed is of second order
        assertThat(Conformity.odds(square.plus(value(0, 1, "own")), Bound.atMost(0))
                        .method())
                .isEqualTo(Odds.Method.FIRST_ORDER);
        // a number that is exact is certain
        assertThat(p(Uncertain.exact(0).times(zero), Bound.atMost(0.5))).isEqualTo(1);
    }

    // standard: JCGM 100:2008, H.1.6: parts of 25 nm (18), 9.7 nm (25.6), 2.9 nm (50) and 16.6 nm (2) have 16.7
    // effective degrees of freedom, printed to one decimal from rounded parts.
    @Test
    void degreesOfFreedomCombineOnceAtTheEnd() {
        Influences basis = Influences.of(List.of(
                new Influence("ls", Shape.NORMAL, 25, 18, ""),
                new Influence("d", Shape.NORMAL, 9.7, 25.6, ""),
                new Influence("alpha", Shape.RECTANGULAR, 2.9, 50, ""),
                new Influence("theta", Shape.RECTANGULAR, 16.6, 2, "")));
        Uncertain length = Uncertain.of(838, basis, new double[] {1, 1, 1, 1});
        assertThat(Marginal.degreesOfFreedom(length)).isEqualTo(16.7, within(0.1));
        assertThat(Marginal.degreesOfFreedom(value(1, 1))).isEqualTo(Double.POSITIVE_INFINITY);
    }

    // Trap: Welch-Satterthwaite on rows read together (JCGM 100 H.2) gives less than one degree of freedom.
    @Test
    void rowsReadTogetherTakeTheLeastDegreesOfFreedom() {
        Influences basis = Influences.of(List.of(
                new Influence("V", Shape.NORMAL, 1, 4, "rows"),
                new Influence("I", Shape.NORMAL, 1, 4, "rows"),
                new Influence("phi", Shape.NORMAL, 1, 9, "")));
        assertThat(Marginal.degreesOfFreedom(Uncertain.of(1, basis, new double[] {1, -1, 1})))
                .isEqualTo(4);
    }

    @Test
    void aValueWithoutDoubtConformsOrNot() {
        assertThat(p(Uncertain.exact(1), Bound.atLeast(1))).isEqualTo(1);
        assertThat(p(Uncertain.exact(1), Bound.atMost(1))).isEqualTo(1);
        assertThat(p(Uncertain.exact(1), Bound.atLeast(1.0000001))).isZero();
        assertThat(check(Uncertain.exact(1), Bound.atLeast(1), NINETY_FIVE).verdict())
                .isEqualTo(Verdict.PASS);
    }

    @Test
    void passFailAndBetween() {
        assertThat(check(value(1.65, 1), Bound.atLeast(0), NINETY_FIVE).verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(check(value(1.64, 1), Bound.atLeast(0), NINETY_FIVE).reason())
                .contains(Reason.DOUBT);
        assertThat(check(value(-1.64, 1), Bound.atLeast(0), NINETY_FIVE).reason())
                .contains(Reason.DOUBT);
        assertThat(check(value(-1.65, 1), Bound.atLeast(0), NINETY_FIVE).verdict())
                .isEqualTo(Verdict.FAIL);
    }

    @Test
    void theSimpleRuleLetsTheEstimateDecide() {
        DecisionRule simple = DecisionRule.simple();
        assertThat(check(value(0, 1), Bound.atLeast(0), simple).verdict()).isEqualTo(Verdict.PASS);
        assertThat(check(value(-0.001, 1), Bound.atLeast(0), simple).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(check(value(0, 1), Bound.atLeast(0), simple)
                        .odds()
                        .orElseThrow()
                        .value())
                .isEqualTo(0.5);
    }

    @Test
    void aGuardBandOfALength() {
        DecisionRule rule = DecisionRule.guardBand(0.5);
        Bound bound = Bound.between(0, 3);
        assertThat(check(value(0.5, 1), bound, rule).verdict()).isEqualTo(Verdict.PASS);
        assertThat(check(value(2.6, 1), bound, rule).reason()).contains(Reason.DOUBT);
        assertThat(check(value(3.4, 1), bound, rule).reason()).contains(Reason.DOUBT);
        assertThat(check(value(3.6, 1), bound, rule).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(check(value(0.2, 1), Bound.between(0, 0.5), rule).reason()).contains(Reason.TOO_NARROW);
    }

    // Recomputed at k = 2 from z = w/u for the guard bands of ILAC-G8:09/2019, Table 1 (memory): 1.5 U .135 %, U 2.275
    // %,
    // .83 U 4.846 % risk at the acceptance limit.
    @ParameterizedTest
    @CsvSource({"1.5, 0.00135", "1, 0.02275", "0.83, 0.04846"})
    void aGuardBandOfAMultipleOfTheExpandedUncertainty(double factor, double risk) {
        DecisionRule rule = DecisionRule.guardFactor(factor, 2);
        double limit = factor * 2 * 0.7;
        Finding accepted = check(value(limit, 0.7), Bound.atLeast(0), rule);
        assertThat(accepted.verdict()).isEqualTo(Verdict.PASS);
        assertThat(1 - accepted.odds().orElseThrow().value()).isEqualTo(risk, within(5e-6));
        assertThat(check(value(limit - 1e-9, 0.7), Bound.atLeast(0), rule).reason())
                .contains(Reason.DOUBT);
        assertThat(check(value(-limit - 1e-9, 0.7), Bound.atLeast(0), rule).verdict())
                .isEqualTo(Verdict.FAIL);
    }

    @Test
    void theMarginIsAgainstTheNearerLimit() {
        Finding finding = check(value(3, 0.9), Bound.within(6), NINETY_FIVE);
        assertThat(finding.margin()).contains(new Margin(3, 0.9, Dimension.LENGTH, "atMost"));
        assertThat(finding.steps().get(0).args().asMap())
                .containsEntry("limit", 6.0)
                .containsEntry("unit", "mm")
                .containsEntry("atLeast", -6.0)
                .containsEntry("atMost", 6.0);
        Finding below = check(value(-7, 0.9), Bound.within(6), NINETY_FIVE);
        assertThat(below.margin()).contains(new Margin(-1, 0.9, Dimension.LENGTH, "atLeast"));
    }

    @Test
    void theStepGivesTheLimitInAnswerUnitsAndItsSource() {
        Source source = Source.of(Source.Kind.STANDARD, "a standard, 1.2");
        Finding finding = Conformity.check(
                "slope",
                value(0.3, 0.01),
                Dimension.ANGLE,
                Bound.atLeast(StrictMath.toRadians(15)),
                NINETY_FIVE,
                source);
        Step step = finding.steps().get(0);
        assertThat(step.code()).isEqualTo("bound");
        assertThat(step.source()).isEqualTo(source);
        assertThat((Double) step.args().get("limit").orElseThrow()).isEqualTo(15, within(1e-12));
        assertThat(step.args().get("unit")).contains("deg");
        assertThat(step.args().asMap()).hasSize(2);
        assertThat(finding.clause()).isEqualTo("slope");
    }

    // Four independent parts at the same margin: first order on the least would claim one marginal.
    @Test
    void aLeastIsJudgedByAllItsParts() {
        Uncertain[] parts = {row(2, 1, 0, 0, 0), row(2, 0, 1, 0, 0), row(2, 0, 0, 1, 0), row(2, 0, 0, 0, 1)};
        double one = Gauss.below(2);
        Odds odds = Conformity.odds(least(parts), Bound.atLeast(0));
        assertThat(odds.value()).isEqualTo(StrictMath.pow(one, 4), within(1e-7));
        assertThat(Conformity.check("gap", least(parts), Dimension.LENGTH, Bound.atLeast(0), NINETY_FIVE)
                        .verdict())
                .isEqualTo(Verdict.UNDECIDED);
        assertThat(Conformity.check("gap", least(parts[0]), Dimension.LENGTH, Bound.atLeast(0), NINETY_FIVE)
                        .verdict())
                .isEqualTo(Verdict.PASS);
    }

    @Test
    void aLeastBetweenLimits() {
        // Independent parts: P(least >= a) - P(least >= b) by products.
        Odds odds = Conformity.odds(least(row(2, 1, 0), row(3, 0, 2)), Bound.between(0.5, 2.5));
        double exact = Gauss.below(1.5) * Gauss.below(1.25) - Gauss.below(-0.5) * Gauss.below(0.25);
        assertThat(odds.value()).isEqualTo(exact, within(1e-7));
    }

    @Test
    void aGreatestBetweenLimits() {
        Odds odds = Conformity.odds(greatest(row(2, 1, 0), row(3, 0, 2)), Bound.between(2.5, 5));
        double exact = Gauss.below(3) * Gauss.below(1) - Gauss.below(0.5) * Gauss.below(-0.25);
        assertThat(odds.value()).isEqualTo(exact, within(1e-7));
    }

    @Test
    void aLargestInSizeWantsAllPartsInside() {
        Odds odds = Conformity.odds(largestInSize(row(2, 1, 0), row(-3, 0, 2)), Bound.within(5));
        double exact = Gauss.between(-7, 3) * Gauss.between(-1, 4);
        assertThat(odds.value()).isEqualTo(exact, within(1e-4));
        assertThat(exact).isBetween(odds.lower(), odds.upper());
        Finding narrow = Conformity.check(
                "square",
                largestInSize(row(0.5, 0.1, 0), row(0.1, 0, 2)),
                Dimension.LENGTH,
                Bound.within(2),
                NINETY_FIVE);
        assertThat(narrow.reason()).contains(Reason.TOO_NARROW);
        assertThat(narrow.margin().orElseThrow().value()).isEqualTo(1.5);
    }

    @Test
    void extremesWithoutDoubtAreExactAtTheLimit() {
        Uncertain one = Uncertain.exact(1);
        Uncertain two = Uncertain.exact(2);
        assertThat(Conformity.odds(least(one, two), Bound.between(1, 1)).value())
                .isEqualTo(1);
        assertThat(Conformity.odds(least(one, two), Bound.atMost(1)).value()).isEqualTo(1);
        assertThat(Conformity.odds(least(one, two), Bound.atMost(0.999)).value())
                .isZero();
        assertThat(Conformity.odds(greatest(one, two), Bound.atLeast(2)).value())
                .isEqualTo(1);
        assertThat(Conformity.odds(greatest(one, two), Bound.atLeast(2.001)).value())
                .isZero();
    }

    @Test
    void theRulesOfTheEstimateTakeEveryPart() {
        DecisionRule simple = DecisionRule.simple();
        assertThat(verdict(least(row(1, 1), row(2, 1)), Bound.atMost(1.5), simple))
                .isEqualTo(Verdict.PASS);
        assertThat(verdict(least(row(1, 1), row(2, 1)), Bound.atLeast(1.5), simple))
                .isEqualTo(Verdict.FAIL);
        assertThat(verdict(greatest(row(1, 1), row(2, 1)), Bound.atLeast(1.5), simple))
                .isEqualTo(Verdict.PASS);
        assertThat(verdict(greatest(row(1, 1), row(2, 1)), Bound.atMost(1.5), simple))
                .isEqualTo(Verdict.FAIL);
        assertThat(verdict(largestInSize(row(-3, 1), row(2, 1)), Bound.within(3), simple))
                .isEqualTo(Verdict.PASS);
        assertThat(verdict(largestInSize(row(-3, 1), row(2, 1)), Bound.atMost(1), simple))
                .isEqualTo(Verdict.FAIL);
        // The second part needs the wider band, though it does not govern.
        assertThat(verdict(least(row(1, 0.5), row(2, 1.5)), Bound.atLeast(0), DecisionRule.guardFactor(1, 2)))
                .isEqualTo(Verdict.UNDECIDED);
    }

    private static Verdict verdict(quoin.measure.Estimate estimate, Bound bound, DecisionRule rule) {
        return Conformity.check("clause", estimate, Dimension.LENGTH, bound, rule)
                .verdict();
    }

    @Test
    void oddsWithinTheirOwnErrorOfTheThresholdAreNumerical() {
        Uncertain[] parts = {row(2, 1, 0.3, 0), row(2, 0.3, 1, 0.3), row(2.2, 0, 0.3, 1)};
        Odds odds = Conformity.odds(least(parts), Bound.atLeast(0));
        assertThat(odds.method()).isEqualTo(Odds.Method.LATTICE);
        assertThat(odds.lower()).isLessThan(odds.value());
        Finding pass = Conformity.check(
                "c", least(parts), Dimension.LENGTH, Bound.atLeast(0), DecisionRule.guarded(odds.value()));
        assertThat(pass.reason()).contains(Reason.NUMERICAL);
        Odds low = Conformity.odds(least(parts), Bound.atLeast(3.5));
        assertThat(low.upper()).isGreaterThan(low.value());
        Finding fail = Conformity.check(
                "c", least(parts), Dimension.LENGTH, Bound.atLeast(3.5), DecisionRule.guarded(1 - low.value()));
        assertThat(fail.reason()).contains(Reason.NUMERICAL);
    }

    @Test
    void allBoundsOfAJobTogether() {
        Uncertain a = row(2, 1, 0);
        Uncertain b = row(1.5, 0, 1);
        Odds independent =
                Conformity.jointOdds(List.of(new Constraint(a, Bound.atLeast(0)), new Constraint(b, Bound.within(3))));
        assertThat(independent.value()).isEqualTo(Gauss.below(2) * Gauss.between(-4.5, 1.5), within(1e-4));
        // One shared influence: the product rule would give .954, the truth is the lesser of the two.
        Odds shared = Conformity.jointOdds(
                List.of(new Constraint(a, Bound.atLeast(0)), new Constraint(row(4, 2, 0), Bound.atLeast(0))));
        assertThat(shared.value()).isEqualTo(Gauss.below(2), within(1e-12));
        assertThat(Conformity.jointOdds(List.of())).isEqualTo(Odds.firstOrder(1));
        assertThat(Conformity.jointOdds(List.of(new Constraint(a, Bound.atLeast(0)))))
                .isEqualTo(Conformity.odds(a, Bound.atLeast(0)));
    }

    @Test
    void aLeastThatMustNotBeTooLargeJoinsTheOthers() {
        // P(x >= 0 and min(y, z) <= 1) = P(x >= 0) (1 - P(y > 1) P(z > 1)), independent.
        Odds odds = Conformity.jointOdds(List.of(
                new Constraint(row(1, 1, 0, 0), Bound.atLeast(0)),
                new Constraint(least(row(1.5, 0, 1, 0), row(2, 0, 0, 1)), Bound.atMost(1))));
        assertThat(odds.value()).isEqualTo(Gauss.below(1) * (1 - Gauss.below(0.5) * Gauss.below(1)), within(1e-4));
    }

    @Test
    void manyLeastsThatMustNotBeTooLargeAreOnlyBounded() {
        List<Constraint> constraints = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            double[] y = new double[10];
            double[] z = new double[10];
            y[2 * i] = 1;
            z[2 * i + 1] = 1;
            constraints.add(new Constraint(least(row(-1, y), row(-1.5, z)), Bound.atMost(0)));
        }
        double one = 1 - Gauss.below(-1) * Gauss.below(-1.5);
        Odds odds = Conformity.jointOdds(constraints);
        assertThat(odds.method()).isEqualTo(Odds.Method.BOUNDS);
        assertThat(StrictMath.pow(one, 5)).isBetween(odds.lower(), odds.upper());
        assertThat(odds.value()).isEqualTo(odds.lower());
    }

    @Test
    void nanNeverComesIn() {
        assertThatThrownBy(() -> Uncertain.exact(Double.NaN)).isInstanceOf(RuntimeException.class);
        assertThatThrownBy(() -> Bound.atLeast(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> DecisionRule.guarded(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> DecisionRule.guardBand(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Odds.firstOrder(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
