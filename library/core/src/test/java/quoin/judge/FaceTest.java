package quoin.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FaceTest {
    private static Face face(double h, double... c) {
        return new Face(h, c);
    }

    // Brute force: P(X > a, Y <= b) is the integral of density(x) * below((b - rho x) / sqrt(1 - rho^2)) from a on; by
    // the midpoint rule in steps of 1e-4 up to 9, error below 1e-12. Eight points leave a few per cent of so small a
    // number.
    @ParameterizedTest
    @CsvSource({
        "2, 1.9, 0.9999",
        "2, 2, 0.99999",
        "2, 1.5, 0.99",
        "1, 1, 0.9999999",
        "0.5, 0.2, 0.999",
        "-0.5, -0.8, 0.999",
        "3, 1, 0.9",
        "2, 2.01, 0.999999"
    })
    void oneFailsAndItsNeighbourHolds(double a, double b, double rho) {
        double across = StrictMath.sqrt((1 - rho) * (1 + rho));
        double brute = 0;
        double step = 1e-4;
        for (double x = a + step / 2; x < 9; x += step) {
            brute += Gauss.density(x) * Gauss.below((b - rho * x) / across) * step;
        }
        double found = face(a, 1, 0).failsAlone(face(b, rho, across));
        if (rho * a - b >= 2 * across) {
            assertThat(found).isCloseTo(brute, within(0.05 * brute + 1e-11));
        } else {
            assertThat(found).isEqualTo(1);
        }
    }

    @Test
    void theSameFaceNeverFailsAlone() {
        assertThat(face(1.5, 0.6, 0.8).failsAlone(face(1.5, 0.6, 0.8))).isZero();
        assertThat(face(1.5, 0.6, 0.8).failsAlone(face(1.4, 0.6, 0.8))).isZero();
    }

    @Test
    void aParallelOneThatIsLooserFailsLater() {
        assertThat(face(1.5, 1, 0).failsAlone(face(1.6, 1, 0))).isCloseTo(1, within(0.0));
        assertThat(face(1.5, 1, 0).failsAlone(face(-2, -1, 0))).isEqualTo(1);
    }
}
