package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumericalToleranceTest {
    /** Standard: JCGM 101:2008, 7.9.2: u = c · 10^l, δ = ½ · 10^l; the exact powers of ten and the ones that round up. */
    @ParameterizedTest
    @CsvSource({
        "0.00035, 2, 0.000005",
        "0.00035, 1, 0.00005",
        "2, 1, 0.5",
        "2, 2, 0.05",
        "1, 2, 0.05",
        "10, 2, 0.5",
        "100, 2, 5",
        "0.1, 2, 0.005",
        "0.001, 2, 0.00005",
        "0.0995, 2, 0.005",
        "0.0994, 2, 0.0005",
        "9.96, 2, 0.5",
        "9.5, 1, 5",
        "32, 2, 0.5",
        "0, 2, 0"
    })
    void halfAUnitInTheLastDigit(double u, int digits, double tolerance) {
        assertThat(NumericalTolerance.of(u, digits)).isEqualTo(tolerance);
    }

    @Test
    void badArgumentsAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> NumericalTolerance.of(-1, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> NumericalTolerance.of(Double.NaN, 2));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NumericalTolerance.of(1, 0))
                .withMessage("significant digits must be from 1 to 9, got 0");
    }
}
