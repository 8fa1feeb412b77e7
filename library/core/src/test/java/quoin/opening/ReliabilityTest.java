package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.DiagonalMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;

/**
 * What is said of each reading against the textbook: r = diag(QᵥᵥP), w = v / (u √r), slip = −v/r, detectable = δ₀ u / √r
 * for readings that share nothing; the general forms over the inverse of the full covariance for those that do. By matrices
 * of another library. Mark: handbook (Baarda 1968; Ghilani, Adjustment Computations, chapter 21; from memory).
 */
class ReliabilityTest {
    private static final Surveys.Quad QUAD = Surveys.Quad.level(1503, 1511, 2404, -6, 2397);

    private static List<Reading> readings(double[] u) {
        double[] exact = QUAD.exact();
        double[] off = {0.6, -1.1, 0.3, 1.4, -0.8, 0.9};
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            readings.add(Surveys.read(Surveys.SIX.get(i), u[i], exact[i] + off[i]));
        }
        readings.add(Surveys.read("width@1/4", u[6], QUAD.across(Side.LEFT, 0.25) - 0.7));
        readings.add(Surveys.read("length@2/3", u[7], QUAD.across(Side.HEAD, 2.0 / 3) + 0.2));
        return readings;
    }

    private static RealMatrix design(Adjustment net) {
        double[][] a = new double[net.readings().size()][5];
        for (int i = 0; i < a.length; i++) {
            net.model().observe(Span.parse(net.readings().get(i).of()), net.values(), a[i]);
        }
        return new Array2DRowRealMatrix(a);
    }

    private static RealMatrix inverse(RealMatrix m) {
        return new LUDecomposition(m).getSolver().getInverse();
    }

    /** Qᵥᵥ = C − A (AᵀPA)⁻¹ Aᵀ. */
    private static RealMatrix residuals(RealMatrix a, RealMatrix c) {
        RealMatrix normal = inverse(a.transpose().multiply(inverse(c)).multiply(a));
        return c.subtract(a.multiply(normal).multiply(a.transpose()));
    }

    @Test
    void textbookFormsWhereNothingIsShared() {
        double[] u = {0.5, 1, 0.7, 1.2, 0.9, 1.5, 0.6, 1.1};
        Adjustment net = Surveys.adjust(readings(u));
        double[] variance = new double[8];
        for (int i = 0; i < 8; i++) {
            variance[i] = u[i] * u[i];
        }
        RealMatrix qvv = residuals(design(net), new Array2DRowRealMatrix(new DiagonalMatrix(variance).getData()));
        double sum = 0;
        double statistic = 0;
        for (int i = 0; i < 8; i++) {
            AdjustedReading reading = net.readings().get(i);
            double r = qvv.getEntry(i, i) / variance[i];
            double v = reading.residual();
            sum += r;
            statistic += v * v / variance[i];
            assertThat(reading.w()).isCloseTo(-v / (u[i] * Math.sqrt(r)), within(1e-6));
            assertThat(reading.slip()).isCloseTo(-v / r, within(1e-6));
            assertThat(reading.slipU()).isCloseTo(u[i] / Math.sqrt(r), within(1e-6 * reading.slipU()));
            assertThat(reading.detectable()).isCloseTo(4.1321480 * u[i] / Math.sqrt(r), within(1e-5));
            for (int j = 0; j < 8; j++) {
                double rho = qvv.getEntry(i, j) / Math.sqrt(qvv.getEntry(i, i) * qvv.getEntry(j, j));
                assertThat(net.correlation(i, j)).isCloseTo(rho, within(1e-6));
            }
        }
        assertThat(sum).isCloseTo(3, within(1e-9));
        assertThat(net.redundancy()).isEqualTo(3);
        assertThat(net.statistic()).isCloseTo(statistic, within(1e-6));
    }

    /** One scale and one hook common to all readings, and one rounding common to two of an entry. */
    @Test
    void generalFormsWhereErrorsAreShared() {
        Instrument tape = Instrument.of("tape", Instrument.Kind.STATED)
                .withEach(List.of(Doubt.standard(0.3, Dimension.LENGTH)))
                .withAll(List.of(
                        Doubt.standard(0.8, Dimension.LENGTH),
                        Doubt.standard(0.4, Dimension.LENGTH).perLength()))
                .withStep(2);
        List<Reading> readings = new ArrayList<>();
        for (Reading reading : readings(new double[] {1, 1, 1, 1, 1, 1, 1, 1})) {
            double value = reading.values().get(0);
            List<Double> values = readings.isEmpty() ? List.of(value, value + 0.4) : List.of(value);
            readings.add(new Reading("", reading.of(), reading.in(), values, tape));
        }
        Adjustment net = Surveys.adjust(readings);
        int n = net.readings().size();
        assertThat(n).isEqualTo(9);
        RealMatrix c = new Array2DRowRealMatrix(n, n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double one = net.readings().get(i).observed();
                double two = net.readings().get(j).observed();
                double shared = 0.8 * 0.8 + 0.4e-3 * one * 0.4e-3 * two;
                boolean sameEntry =
                        net.readings().get(i).entry() == net.readings().get(j).entry();
                double rounding = sameEntry ? 1.0 / 3 : 0;
                c.setEntry(i, j, shared + rounding + (i == j ? 0.09 : 0));
            }
        }
        RealMatrix p = inverse(c);
        RealMatrix g = p.multiply(residuals(design(net), c)).multiply(p);
        double[] rest = new double[n];
        for (int i = 0; i < n; i++) {
            rest[i] = -net.readings().get(i).residual();
        }
        double[] weighted = g.operate(rest);
        double statistic = 0;
        for (int i = 0; i < n; i++) {
            AdjustedReading reading = net.readings().get(i);
            double q = g.getEntry(i, i);
            statistic += rest[i] * weighted[i];
            assertThat(reading.w()).isCloseTo(weighted[i] / Math.sqrt(q), within(1e-5));
            assertThat(reading.slip()).isCloseTo(weighted[i] / q, within(1e-5));
            assertThat(reading.slipU()).isCloseTo(1 / Math.sqrt(q), within(1e-5));
            for (int j = 0; j < n; j++) {
                double rho = g.getEntry(i, j) / Math.sqrt(q * g.getEntry(j, j));
                assertThat(net.correlation(i, j)).isCloseTo(rho, within(1e-5));
            }
        }
        assertThat(net.statistic()).isCloseTo(statistic, within(1e-5));
    }

    /**
     * Six readings of a rectangle: of a slip in a side its own adjusted length keeps 1 − r, the other three sides take
     * products of the coefficients of the one condition, (a/2d)(b/2d).
     */
    @Test
    void whatASlipDoesInClosedForm() {
        double a = 2400;
        double b = 1500;
        double d = Math.hypot(a, b);
        Adjustment net = Surveys.adjust(Surveys.six(1, a, b, a, b, d, d));
        AdjustedReading head = Surveys.of(net, "width@head");
        double r = a * a / (4 * d * d);
        assertThat(head.effect().widthMm()).isCloseTo((1 - r) * head.detectable(), within(1e-5));
        assertThat(head.effect().lengthMm()).isCloseTo(a * b / (4 * d * d) * head.detectable(), within(1e-5));
        AdjustedReading diagonal = Surveys.of(net, "diagonal@head-left");
        assertThat(diagonal.effect().widthMm()).isCloseTo(a / (4 * d) * diagonal.detectable(), within(1e-5));
        assertThat(diagonal.effect().lengthMm()).isCloseTo(b / (4 * d) * diagonal.detectable(), within(1e-5));
    }

    /** The slip itself, made: what changes is what was said, to second order (10 mm squared over 1500). */
    @Test
    void whatASlipDoesWhenItIsMade() {
        double[] u = {1, 1, 1, 1, 1, 1, 1, 1};
        List<Reading> readings = readings(u);
        Opening before = Opening.of(Surveys.straight(readings));
        for (int i = 0; i < readings.size(); i++) {
            AdjustedReading said = before.adjustment().readings().get(i);
            List<Reading> wrong = new ArrayList<>(readings);
            wrong.set(i, Surveys.read(said.of(), 1, said.observed() + said.detectable()));
            Opening after = Opening.of(Surveys.straight(wrong));
            double width = Math.max(change(before, after, Corner.HEAD_LEFT), change(before, after, Corner.FOOT_RIGHT));
            double length = Math.max(change(before, after, Corner.HEAD_RIGHT), change(before, after, Corner.FOOT_LEFT));
            double angle = 0;
            for (Corner corner : Corner.values()) {
                double one = OpeningFigures.cornerAngle(before, corner).value();
                double two = OpeningFigures.cornerAngle(after, corner).value();
                angle = Math.max(angle, Math.abs(one - two));
            }
            assertThat(said.effect().widthMm()).as(said.of()).isCloseTo(width, within(0.15));
            assertThat(said.effect().lengthMm()).as(said.of()).isCloseTo(length, within(0.15));
            assertThat(said.effect().angleRad()).as(said.of()).isCloseTo(angle, within(1e-4));
        }
    }

    private static double change(Opening before, Opening after, Corner from) {
        return Math.abs(side(after, from) - side(before, from));
    }

    private static double side(Opening opening, Corner from) {
        double x = opening.corner(from.next()).get(0).value()
                - opening.corner(from).get(0).value();
        double y = opening.corner(from.next()).get(1).value()
                - opening.corner(from).get(1).value();
        return Math.hypot(x, y);
    }

    /** Without a check a slip of any size may hide, and its effect has no bound; an unused reading has none. */
    @Test
    void withoutACheckTheEffectHasNoBound() {
        Adjustment net = Surveys.adjust(Surveys.six(1, QUAD.exact()).subList(0, 5));
        for (AdjustedReading reading : net.readings()) {
            assertThat(reading.detectable()).isInfinite();
            assertThat(reading.effect().angleRad()).isInfinite();
        }
        assertThat(Surveys.of(net, "width@head").effect().widthMm()).isInfinite();
        assertThat(Surveys.of(net, "width@head").effect().lengthMm()).isZero();
    }
}
