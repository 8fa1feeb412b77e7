package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StepsTest {
    @ParameterizedTest
    @CsvSource({
        "1499.9999999997, 1, 1500, 1500, 1500",
        "1499.6, 1, 1499, 1500, 1500",
        "1499.4, 1, 1499, 1500, 1499",
        "1499.5, 1, 1499, 1500, 1500",
        "-1499.5, 1, -1500, -1499, -1500",
        "-0.4, 1, -1, 0, 0",
        "0, 1, 0, 0, 0",
        "1.24, 0.5, 1, 1.5, 1",
        "1.25, 0.5, 1, 1.5, 1.5",
        "2.0000009, 1, 2, 2, 2",
        "2.0000011, 1, 2, 3, 2",
        "0.49999999999999994, 1, 0, 1, 0"
    })
    void roundsDownUpAndNearest(double value, double step, double down, double up, double nearest) {
        assertThat(Steps.down(value, step)).isEqualTo(down);
        assertThat(Steps.up(value, step)).isEqualTo(up);
        assertThat(Steps.nearest(value, step)).isEqualTo(nearest);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 0.5, 25.4 / 16, 25.4 / 32})
    void aRoundedValueIsAFixedPointForEveryMultiple(double step) {
        for (int k = -1000; k <= 1_000_000; k++) {
            double value = k * step + 0.0;
            if (Steps.down(value, step) != value
                    || Steps.up(value, step) != value
                    || Steps.nearest(value, step) != value) {
                assertThat(value).as("multiple %d of %s", k, step).isEqualTo(Steps.down(value, step));
            }
        }
    }

    @Test
    void resultsAreRoundedAsTheGuideDoes() {
        // standard: JCGM 100:2008, 7.2.6: u 10.47 may go up to 11; 28.05 is 28; 10.05762 with u 27 mΩ is 10.058
        assertThat(Steps.up(10.47, 2 * NumericalTolerance.of(10.47, 2))).isEqualTo(11);
        assertThat(Steps.nearest(28.05, 2 * NumericalTolerance.of(28.05, 2))).isEqualTo(28);
        double step = 2 * NumericalTolerance.of(0.027, 2);
        assertThat(Steps.nearest(10.05762, step)).isCloseTo(10.058, within(1e-12));
    }

    @Test
    void badArgumentsAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Steps.down(1, 0))
                .withMessage("step must be more than 0 and finite, got 0");
        assertThatIllegalArgumentException().isThrownBy(() -> Steps.up(1, Double.NaN));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Steps.nearest(Double.NaN, 1))
                .withMessage("value must be finite, got NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Steps.nearest(1e300, 1))
                .withMessage("value must be at most 2^53 steps, got 1.0E300");
    }
}
