package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Six readings of a rectangle with equal doubt: what the adjustment must say, in closed form from its one condition
 * a(AB + CD) + b(BC + DA) = d(AC + BD). Mark: standard (least squares); tolerance: the ridge of 1e-8 and rounding.
 */
class ClosedFormTest {
    private static final double CLOSE = 1e-6;

    @ParameterizedTest
    @CsvSource({"2400, 1500, 1", "1000, 1000, 2", "50000, 50000, 3", "600, 4000, 0.4"})
    void checksAndSlips(double a, double b, double u) {
        double d = Math.sqrt(a * a + b * b);
        Adjustment net = Surveys.adjust(Surveys.six(u, a, b, a, b, d, d));
        double[] side = {a, b, a, b, d, d};
        for (int i = 0; i < 6; i++) {
            AdjustedReading reading = net.readings().get(i);
            double r = Math.pow(side[i] / (2 * d), 2);
            assertThat(reading.slipU()).isCloseTo(u / Math.sqrt(r), within(CLOSE * u / Math.sqrt(r)));
            // 4.1321: two-sided 0.1 %, power 0.8
            assertThat(reading.detectable())
                    .isCloseTo(4.1321 * 2 * u * d / side[i], within(2e-5 * reading.detectable()));
        }
        Opening opening = Opening.of(Surveys.straight(Surveys.six(u, a, b, a, b, d, d)));
        for (Corner corner : Corner.values()) {
            double angle = OpeningFigures.cornerAngle(opening, corner).standardUncertainty();
            assertThat(angle).isCloseTo(u * d / (a * b), within(CLOSE * u * d / (a * b)));
        }
    }

    /** A closure e in one diagonal gives w = e / 2u; second order in e / d. */
    @Test
    void aClosure() {
        double d = Math.sqrt(2400.0 * 2400 + 1500 * 1500);
        Adjustment net = Surveys.adjust(Surveys.six(1, 2400, 1500, 2400, 1500, d + 6, d));
        net.readings().forEach(reading -> assertThat(Math.abs(reading.w())).isCloseTo(3, within(0.01)));
        assertThat(Surveys.of(net, "diagonal@head-left").slip()).isCloseTo(6, within(0.02));
        assertThat(Surveys.of(net, "diagonal@head-left").w()).isPositive();
    }

    /**
     * A reading that is 10 mm off answers with w = 10 · side/(2 d u): 4.24 for a long side of 2400 × 1500, 2.65 for a short
     * one, 5.00 for a diagonal; second order in 10/d.
     */
    @ParameterizedTest
    @CsvSource({"0, 4.24", "1, 2.65", "2, 4.24", "3, 2.65", "4, 5.00", "5, 5.00"})
    void aReadingThatIsTenMillimetresOff(int reading, double w) {
        double d = Math.sqrt(2400.0 * 2400 + 1500 * 1500);
        double[] read = {2400, 1500, 2400, 1500, d, d};
        read[reading] += 10;
        AdjustedReading off = Surveys.adjust(Surveys.six(1, read)).readings().get(reading);
        assertThat(off.w()).isCloseTo(w, within(0.02));
        assertThat(off.slip()).isCloseTo(10, within(0.05));
    }

    /** One additive error in all six is nearly invisible: w = c (a + b - d) / (d u), 0.378 c here. */
    @Test
    void aBentHookIsNotSeen() {
        double d = Math.sqrt(2400.0 * 2400 + 1500 * 1500);
        Adjustment net = Surveys.adjust(Surveys.six(1, 2402, 1502, 2402, 1502, d + 2, d + 2));
        net.readings().forEach(reading -> assertThat(Math.abs(reading.w())).isCloseTo(2 * 0.378, within(0.002)));
        assertThat(net.isAccepted()).isTrue();
    }

    /** A wrong scale is not seen at all. */
    @Test
    void aWrongScaleIsNotSeen() {
        double k = 1.01;
        double d = Math.sqrt(2400.0 * 2400 + 1500 * 1500);
        Adjustment net = Surveys.adjust(Surveys.six(1, k * 2400, k * 1500, k * 2400, k * 1500, k * d, k * d));
        assertThat(net.statistic()).isCloseTo(0, within(1e-9));
    }

    /** Without a check nothing is tested, and nothing would be noticed. */
    @Test
    void fiveReadingsCheckNothing() {
        Adjustment net = Surveys.adjust(
                Surveys.six(1, 2400, 1503, 2411, 1498, 2838, 2833).subList(0, 5));
        assertThat(net.isSolved()).isTrue();
        assertThat(net.redundancy()).isZero();
        assertThat(net.isAccepted()).isTrue();
        assertThat(net.suspects()).isEmpty();
        assertThat(net.critical()).isEqualTo(Double.POSITIVE_INFINITY);
        for (AdjustedReading reading : net.readings()) {
            assertThat(reading.w()).isNaN();
            assertThat(reading.slip()).isNaN();
            assertThat(reading.slipU()).isInfinite();
            assertThat(reading.detectable()).isInfinite();
            assertThat(reading.residual()).isCloseTo(0, within(1e-9));
        }
    }

    /** Two readings of a list count as two, and agree or not by themselves. */
    @Test
    void aListIsReadTwice() {
        Adjustment net = Surveys.adjust(List.of(
                Surveys.read("width@head", 1, 2400, 2402),
                Surveys.read("width@foot", 1, 2400),
                Surveys.read("length@left", 1, 1500),
                Surveys.read("length@right", 1, 1500),
                Surveys.read("diagonal@head-left", 1, Math.sqrt(2400.0 * 2400 + 1500 * 1500))));
        assertThat(net.redundancy()).isOne();
        assertThat(net.statistic()).isCloseTo(2, within(1e-6)); // (2402 - 2400)² / (1 + 1)
        assertThat(net.readings()).extracting(AdjustedReading::entry).containsExactly(0, 0, 1, 2, 3, 4);
    }
}
