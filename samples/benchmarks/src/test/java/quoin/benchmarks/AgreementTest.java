package quoin.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quoin.judge.Finding;
import quoin.measure.SimulatedOutput;
import quoin.measure.Uncertain;
import quoin.opening.AdjustedReading;
import quoin.opening.Adjustment;
import quoin.opening.Corner;
import quoin.opening.Fit;
import quoin.opening.Held;
import quoin.opening.Opening;
import quoin.rulebook.Rulebook;
import quoin.rulebook.Size;

/** Every way computes the same numbers: a fast wrong answer is no answer. */
class AgreementTest {
    /** First-order propagation of one model, four times coded; tolerance 1e-12 relative for the order of additions. */
    @Test
    void allWaysAgree() {
        ByHand hand = new ByHand();
        ByNumbers numbers = new ByNumbers();
        ByEvaluator evaluator = new ByEvaluator();
        ByDerivatives derivatives = new ByDerivatives();
        for (int time : new int[] {0, 1, 1000}) {
            double sum = hand.once(time);
            assertThat(numbers.once(time)).isCloseTo(sum, within(1e-9));
            Uncertain[] outputs = numbers.outputs(time);
            assertThat(evaluator.once(time)).isCloseTo(sum, within(1e-9));
            assertThat(derivatives.once(time)).isCloseTo(sum, within(1e-9));
            for (int i = 0; i < Room.OUTPUTS; i++) {
                double y = hand.y[i];
                double u = hand.u[i];
                assertThat(outputs[i].value()).as("y %s", i).isCloseTo(y, within(1e-12 * Math.abs(y)));
                assertThat(outputs[i].standardUncertainty()).as("u %s", i).isCloseTo(u, within(1e-12 * u));
                assertThat(evaluator.rows.number(evaluator.at[i]))
                        .as("row %s", i)
                        .isEqualTo(outputs[i]);
                assertThat(evaluator.rows.standardUncertainty(evaluator.at[i])).isCloseTo(u, within(1e-12 * u));
                assertThat(derivatives.y[i].getValue()).isCloseTo(y, within(1e-12 * Math.abs(y)));
                assertThat(ByDerivatives.standardUncertainty(derivatives.y[i])).isCloseTo(u, within(1e-12 * u));
            }
        }
    }

    /** Two independent sets of a million trials: means and u agree within five of their standard errors. */
    @Test
    void bothSimulationsAgree() {
        double[] hand = Trials.byHand(3);
        List<SimulatedOutput> library = Trials.byLibrary(4).outputs();
        for (int j = 0; j < Room.OUTPUTS; j++) {
            SimulatedOutput output = library.get(j);
            double u = hand[4 * j + 1];
            double error = u / Math.sqrt(Trials.COUNT);
            assertThat(output.value()).isCloseTo(hand[4 * j], within(7 * error));
            assertThat(output.standardUncertainty()).isCloseTo(u, within(7 * error));
            assertThat(output.low()).isCloseTo(hand[4 * j + 2], within(7 * 2.7 * error));
            assertThat(output.high()).isCloseTo(hand[4 * j + 3], within(7 * 2.7 * error));
        }
    }

    /**
     * Corners within 1e-9 mm, covariances within 1e-8: what the convergence of either leaves. Redundancy numbers add up to
     * readings less unknowns, but for the floor of 1e-8 that the library adds to every variance.
     */
    @ParameterizedTest
    @ValueSource(ints = {Net.SIX, Net.TWELVE})
    void bothAdjustmentsAgree(int count) {
        AdjustByHand hand = new AdjustByHand(count);
        AdjustByLibrary library = new AdjustByLibrary(Net.straight(count), true);
        for (int time : new int[] {0, 1, 63}) {
            hand.once(time);
            Opening opening = Opening.of(Net.straight(count).get(time));
            List<Uncertain> unknowns = List.of(
                    opening.corner(Corner.HEAD_RIGHT).get(0),
                    opening.corner(Corner.FOOT_RIGHT).get(0),
                    opening.corner(Corner.FOOT_RIGHT).get(1),
                    opening.corner(Corner.FOOT_LEFT).get(0),
                    opening.corner(Corner.FOOT_LEFT).get(1));
            for (int k = 0; k < AdjustByHand.UNKNOWNS; k++) {
                assertThat(unknowns.get(k).value()).isCloseTo(hand.x[k], within(1e-9));
                for (int l = 0; l < AdjustByHand.UNKNOWNS; l++) {
                    assertThat(unknowns.get(k).covariance(unknowns.get(l)))
                            .isCloseTo(hand.covariance[k][l], within(1e-8));
                }
            }
            Adjustment adjustment = library.adjust(time);
            double[][] covariance = adjustment.covariance();
            for (int k = 0; k < AdjustByHand.UNKNOWNS; k++) {
                assertThat(covariance[k]).containsExactly(hand.covariance[k], within(1e-7));
            }
            double redundancy = 0;
            for (AdjustedReading reading : adjustment.readings()) {
                redundancy += Net.U * Net.U / (reading.slipU() * reading.slipU());
            }
            assertThat(redundancy).isCloseTo(count - AdjustByHand.UNKNOWNS, within(2e-8 * count));
            assertThat(library.once(time)).isFinite();
        }
    }

    /** The clearance of the frame where the search leaves it is the least of the sums that hold it. */
    @Test
    void theTurnedFrameHasThatClearance() {
        Turned turned = new Turned(Net.straight(Net.SIX));
        Opening opening = Opening.of(Net.straight(Net.SIX).get(5));
        double clearance = Fit.place(opening, Held.FREELY, Turned.WIDTH.value(), Turned.LENGTH.value())
                .orElseThrow()
                .clearanceMm();
        assertThat(turned.least(5).value()).isCloseTo(clearance, within(1e-7));
    }

    /** Rules typed out by hand and rules as data: the same sizes, odds, margins and verdicts; 1e-9 for two ways to Φ. */
    @Test
    void rulesByHandAgree() {
        ApplyByHand hand = new ApplyByHand();
        ApplyByRules rules = new ApplyByRules();
        for (int time = 0; time < 2000; time += 7) {
            assertThat(rules.once(time)).isCloseTo(hand.once(time), within(1e-6));
            for (ApplyByHand.Made made : hand.sizes) {
                Size size = rules.sizes.find(made.id()).orElseThrow();
                assertThat(size.value()).as(made.id()).isEqualTo(made.value());
                assertThat(size.steps()).hasSameSizeAs(made.said());
            }
            for (int i = 0; i < hand.findings.size(); i++) {
                ApplyByHand.Found found = hand.findings.get(i);
                Finding finding = rules.findings.get(i);
                assertThat(finding.clause() + " " + finding.verdict().text())
                        .isEqualTo(found.clause() + " " + found.verdict());
                assertThat(finding.odds().orElseThrow().value()).isCloseTo(found.odds(), within(1e-9));
                assertThat(finding.margin().orElseThrow().value()).isCloseTo(found.margin(), within(1e-9));
                assertThat(finding.margin().orElseThrow().u()).isCloseTo(found.u(), within(1e-9));
            }
        }
        byte[] text = Rules.large(Rules.CLAUSES).getBytes(StandardCharsets.UTF_8);
        Rulebook large = new LoadRules(text).load();
        assertThat(large.sizes().size() + large.bounds().size()).isEqualTo(Rules.CLAUSES);
    }
}
