package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BlockFigureTest {
    @Test
    void twiceTheStandardErrorOfTheMeanMustKeepTheTolerance() {
        // standard: JCGM 101:2008, 7.9.4 e and f: s² = Σ (figure − mean)² / (h (h − 1)); 2 s must not exceed the
        // tolerance. By hand for 10, 12, 14, 16: Σ = 20, s² = 20 / 12
        BlockFigure figure = new BlockFigure();
        for (double each : new double[] {10, 12, 14, 16}) {
            figure.add(each);
        }
        double s = StrictMath.sqrt(20.0 / 12);
        assertThat(figure.error()).isCloseTo(s, within(1e-15));
        assertThat(figure.isWithin(2 * s * (1 + 1e-12))).isTrue();
        assertThat(figure.isWithin(2 * s * (1 - 1e-12))).isFalse();
    }

    @Test
    void aLargeFigureDoesNotEatTheScatter() {
        // standard: NIST StRD NumAcc4: 10000000.2 and 500 pairs of .1 and .3, standard deviation 0.1; the readings
        // themselves are off by up to 1e-9
        BlockFigure figure = new BlockFigure();
        figure.add(10000000.2);
        for (int i = 0; i < 1000; i++) {
            figure.add(i % 2 == 0 ? 10000000.1 : 10000000.3);
        }
        assertThat(figure.deviation()).isCloseTo(0.1, within(1e-8));
    }
}
