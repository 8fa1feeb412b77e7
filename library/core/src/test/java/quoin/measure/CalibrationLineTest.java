package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Standard: JCGM 100:2008, H.3, calibration of a thermometer: b = y1 + y2 (t − 20 °C) by least squares, here in the
 * arithmetic of the library, so that the correlation of intercept and slope comes out by itself.
 */
class CalibrationLineTest {
    private static final double[] T = {
        21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
    };
    private static final double[] B = {
        -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
    };
    private static final double REFERENCE = 20;

    @Test
    void theLineAsPrinted() {
        Line line = Line.through(observations(residualDeviation()));
        assertThat(line.intercept.value()).isCloseTo(-0.1712, within(5e-5));
        assertThat(line.intercept.standardUncertainty()).isCloseTo(0.0029, within(5e-5));
        assertThat(line.slope.value()).isCloseTo(0.00218, within(5e-6));
        assertThat(line.slope.standardUncertainty()).isCloseTo(0.00067, within(5e-6));
        assertThat(line.intercept.correlation(line.slope)).isCloseTo(-0.930, within(5e-4));
        assertThat(residualDeviation()).isCloseTo(0.0035, within(5e-5));
        assertThat(line.at(30).value()).isCloseTo(-0.1494, within(5e-5));
        assertThat(line.at(30).standardUncertainty()).isCloseTo(0.0041, within(5e-5));
    }

    @Test
    void theLineWithAllItsDigits() {
        // recomputed independently from the readings; half a unit of the last digit given
        Line line = Line.through(observations(residualDeviation()));
        assertThat(line.intercept.value()).isCloseTo(-0.17120379, within(5e-9));
        assertThat(line.intercept.standardUncertainty()).isCloseTo(0.0028776, within(5e-8));
        assertThat(line.slope.value()).isCloseTo(0.0021827, within(5e-8));
        assertThat(line.slope.standardUncertainty()).isCloseTo(0.00066794, within(5e-9));
        assertThat(line.intercept.correlation(line.slope)).isCloseTo(-0.93043, within(5e-6));
        assertThat(residualDeviation()).isCloseTo(0.00349756, within(5e-9));
        assertThat(line.at(30).value()).isCloseTo(-0.14937681, within(5e-9));
        assertThat(line.at(30).standardUncertainty()).isCloseTo(0.00413860, within(5e-9));
    }

    @Test
    void allThatComesFromTheLineHasItsNineDegrees() {
        // the standard: nu 9 for b(30 °C); as if intercept and slope were independent it would come out otherwise
        Line line = Line.through(observations(residualDeviation()));
        assertThat(DegreesOfFreedom.of(line.intercept)).hasValue(9);
        assertThat(DegreesOfFreedom.of(line.at(30))).hasValue(9);
        Coverage coverage = Coverage.symmetric(line.at(30), 0.95).orElseThrow();
        // GUM Table G.2 between nu 8 (2.31) and nu 10 (2.23)
        assertThat(coverage.factor()).isCloseTo(2.262, within(5e-4));
    }

    @Test
    void withoutTheCorrelationTheCorrectionIsWrong() {
        Line line = Line.through(observations(residualDeviation()));
        double apart = StrictMath.hypot(line.intercept.standardUncertainty(), 10 * line.slope.standardUncertainty());
        // 0.0073 instead of 0.0041: recomputed from the printed digits
        assertThat(apart).isCloseTo(0.0073, within(5e-5));
        assertThat(line.at(30).standardUncertainty()).isLessThan(0.6 * apart);
    }

    @Test
    void anErrorOfAllReadingsMovesTheInterceptOnly() {
        // practice: documentation of an open uncertainty library: a common 0.005 °C gives u(intercept) 0.00577 with nu
        // 145.4 and leaves the slope alone
        Uncertain common = Uncertain.of(0, Influence.normal("thermometer", 0.005));
        Line plain = Line.through(observations(residualDeviation()));
        List<Uncertain> shifted = new ArrayList<>();
        for (Uncertain b : observations(residualDeviation())) {
            shifted.add(b.plus(common));
        }
        Line line = Line.through(shifted);
        assertThat(line.intercept.standardUncertainty()).isCloseTo(0.00577, within(5e-6));
        assertThat(line.slope.standardUncertainty()).isCloseTo(plain.slope.standardUncertainty(), within(1e-12));
        // the group of the line is not independent within itself, so the formula is refused for the mixture; with the
        // whole line as one influence it is allowed
        assertThat(DegreesOfFreedom.of(line.intercept)).isEmpty();
        Uncertain whole = Uncertain.of(0, Influence.tByScale("line", plain.intercept.standardUncertainty(), 9))
                .plus(common);
        assertThat(DegreesOfFreedom.of(whole).orElseThrow()).isCloseTo(145.4, within(0.05));
    }

    /** The readings with the deviation of their residuals, n − 2 degrees of freedom for all together. */
    private static List<Uncertain> observations(double deviation) {
        List<Uncertain> list = new ArrayList<>();
        for (int k = 0; k < B.length; k++) {
            String id = "b".concat(Integer.toString(k));
            list.add(Uncertain.of(
                    B[k], Influence.tByScale(id, deviation, B.length - 2).withGroup("line")));
        }
        return list;
    }

    private static double residualDeviation() {
        Line line = Line.through(observations(1));
        double squares = 0;
        for (int k = 0; k < B.length; k++) {
            double residual = B[k] - line.at(T[k]).value();
            squares += residual * residual;
        }
        // recomputed: 1.10096583e-4
        assertThat(squares).isCloseTo(1.10096583e-4, within(5e-13));
        return StrictMath.sqrt(squares / (B.length - 2));
    }

    private record Line(Uncertain intercept, Uncertain slope) {
        static Line through(List<Uncertain> b) {
            double mean = 0;
            for (double t : T) {
                mean += (t - REFERENCE) / T.length;
            }
            double squares = 0;
            for (double t : T) {
                squares += (t - REFERENCE - mean) * (t - REFERENCE - mean);
            }
            Uncertain level = Uncertain.exact(0);
            Uncertain slope = Uncertain.exact(0);
            for (int k = 0; k < T.length; k++) {
                level = level.plus(b.get(k).dividedBy(T.length));
                slope = slope.plus(b.get(k).times((T[k] - REFERENCE - mean) / squares));
            }
            return new Line(level.minus(slope.times(mean)), slope);
        }

        Uncertain at(double t) {
            return intercept.plus(slope.times(t - REFERENCE));
        }
    }
}
