package quoin.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.measure.SimulatedOutput;

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
            assertThat(evaluator.once(time)).isCloseTo(sum, within(1e-9));
            assertThat(derivatives.once(time)).isCloseTo(sum, within(1e-9));
            for (int i = 0; i < Room.OUTPUTS; i++) {
                double y = hand.y[i];
                double u = hand.u[i];
                assertThat(numbers.y[i].value()).as("y %s", i).isCloseTo(y, within(1e-12 * Math.abs(y)));
                assertThat(numbers.y[i].standardUncertainty()).as("u %s", i).isCloseTo(u, within(1e-12 * u));
                assertThat(evaluator.rows.number(ByEvaluator.Y + i))
                        .as("row %s", i)
                        .isEqualTo(numbers.y[i]);
                assertThat(evaluator.rows.standardUncertainty(ByEvaluator.Y + i))
                        .isCloseTo(u, within(1e-12 * u));
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
}
