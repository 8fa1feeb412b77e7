package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Test;

/**
 * Networks of four points and distances from textbooks, collected in Krumm, Geodetic Network Adjustment Examples, rev. 3.5
 * (2020). Mark: handbook. Two fixed points are the side between them read a ten-thousandth as doubtful as the others; what
 * that changes is below 1e-8 of any figure. Lengths are numbers in metres here.
 */
class PublishedNetworkTest {
    /** Half a micrometre, to which residuals are printed. */
    private static final double PRINTED = 0.6e-6;

    private static final double U = 0.010;

    /**
     * Strang and Borre 1997, example 12.4: one point inside the triangle of the others. An outline has no such corner,
     * so the general solution is checked, from the approximate places of the book.
     */
    @Test
    void strangAndBorre() {
        List<Reading> readings = Surveys.six(U, 141.440, 100.030, 100.010, 184.785, 100.020, 184.805);
        double[] start = {141.42, 70.71, 70.71, 70.71, 170.71};
        Adjustment net = Adjustment.from(start, Surveys.straight(readings), Plane.FRONT);
        double[] v = {2.108e-3, -5.090e-3, -7.197e-3, 3.895e-3, -5.088e-3, 3.896e-3};
        double[] r = {0.03210, 0.18720, 0.37433, 0.10961, 0.18709, 0.10967};
        for (int i = 0; i < 6; i++) {
            AdjustedReading reading = net.readings().get(i);
            assertThat(reading.residual()).isCloseTo(v[i], within(PRINTED));
            assertThat(Math.abs(reading.w())).isCloseTo(1.17636, within(1e-5));
            // r = (u / u of the slip) squared where readings are not correlated; printed to 5 digits
            assertThat(Math.pow(U / reading.slipU(), 2)).isCloseTo(r[i], within(1e-5));
        }
        assertThat(net.statistic()).isCloseTo(1.3838288, within(1e-6));
        assertThat(net.redundancy()).isOne();
        // Distances between the adjusted places, printed to 0.1 mm: 2 (99.9912, 99.9971), 3 (241.4333, 99.9830),
        // P (170.7123, 170.7185), 1 (170.7032, 270.7213). No datum in them.
        double[][] places = {{99.9912, 99.9971}, {241.4333, 99.9830}, {170.7123, 170.7185}, {170.7032, 270.7213}};
        double[] x = net.values();
        double[][] ours = {{0, 0}, {x[0], 0}, {x[1], x[2]}, {x[3], x[4]}};
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < i; j++) {
                assertThat(Surveys.far(ours[i], ours[j])).isCloseTo(Surveys.far(places[i], places[j]), within(2e-4));
            }
        }
    }

    /** The same readings asked for as an opening: no outline runs through a corner that lies inside. */
    @Test
    void aCornerInsideIsNoOpening() {
        List<Reading> readings = Surveys.six(U, 141.440, 100.030, 100.010, 184.785, 100.020, 184.805);
        assertThat(Surveys.adjust(readings).isSolved()).isFalse();
    }

    /** Benning 2011, example 8-2: a braced square of 1000 m; points 1, 2 fixed; adjusted 3 is foot-left, 4 foot-right. */
    @Test
    void benning() {
        List<Reading> readings = List.of(
                Surveys.read("width@head", 1e-6, 1000),
                Surveys.read("length@left", U, 1000.02),
                Surveys.read("diagonal@head-left", U, 1414.20),
                Surveys.read("diagonal@head-right", U, 1414.24),
                Surveys.read("length@right", U, 999.98),
                Surveys.read("width@foot", U, 1000.00));
        Adjustment net = Surveys.adjust(readings);
        double[] v = {2.60e-3, -3.68e-3, -3.68e-3, 2.60e-3, 2.60e-3};
        double[] r = {1 / 7.0, 2 / 7.0, 2 / 7.0, 1 / 7.0, 1 / 7.0};
        for (int i = 0; i < 5; i++) {
            AdjustedReading reading = net.readings().get(i + 1);
            assertThat(reading.residual()).isCloseTo(v[i], within(0.006e-3)); // printed to 0.01 mm
            assertThat(Math.pow(U / reading.slipU(), 2)).isCloseTo(r[i], within(1e-4)); // exact for a true square
        }
        assertThat(net.statistic() * 100).isCloseTo(47.3676, within(1e-4)); // sigma 10 mm
        double[] x = net.values();
        assertThat(x[3]).isCloseTo(-0.00958, within(6e-6));
        assertThat(x[4]).isCloseTo(1000 + 0.02260, within(6e-6));
        assertThat(x[1]).isCloseTo(999.99302, within(6e-6));
        assertThat(x[2]).isCloseTo(1000 - 0.01740, within(6e-6));
        assertThat(net.isAccepted()).isTrue();
    }

    /** Ghilani 2010, examples 14.5 and 19.3: Badger and Bucky fixed; with a wrong reading and without. */
    @Test
    void ghilani() {
        Adjustment wrong = ghilani(5870.302);
        assertThat(wrong.statistic() * 100).isCloseTo(18470.3, within(0.1));
        assertThat(wrong.isAccepted()).isFalse();
        double[][] adjusted = {{2415776.9044, 391043.2945}, {2416892.6955, 387603.2551}};
        double[] badger = {2410000.000, 390000.000};
        double[] bucky = {2411820.000, 386881.222};
        double[] x = wrong.values();
        double[][] ours = {{x[3], x[4]}, {x[1], x[2]}};
        for (int i = 0; i < 2; i++) {
            // Distances to the fixed points, printed to 0.1 mm, and so the places.
            assertThat(Surveys.far(ours[i], new double[] {0, 0}))
                    .isCloseTo(Surveys.far(adjusted[i], badger), within(1e-4));
            assertThat(Surveys.far(ours[i], new double[] {x[0], 0}))
                    .isCloseTo(Surveys.far(adjusted[i], bucky), within(1e-4));
        }
        Adjustment right = ghilani(5870.640);
        // The distances have 1 mm steps and 0.000085 is left of six squares, so the figure keeps 4 digits.
        assertThat(right.statistic() * 100).isCloseTo(0.008468, within(1e-6));
        assertThat(right.isAccepted()).isTrue();
    }

    private static Adjustment ghilani(double badgerWisconsin) {
        double fixed = Math.sqrt(1820.0 * 1820 + 3118.778 * 3118.778);
        return Surveys.adjust(List.of(
                Surveys.read("width@head", 1e-6, fixed),
                Surveys.read("length@left", U, badgerWisconsin),
                Surveys.read("diagonal@head-left", U, 7297.588),
                Surveys.read("width@foot", U, 3616.434),
                Surveys.read("diagonal@head-right", U, 5742.878),
                Surveys.read("length@right", U, 5123.760)));
    }

    /** Data of Laurila in Zaki, El Kady and Ahmed, ISPRS 1992 B3; corrections by an independent program, 10 mm each. */
    @Test
    void bracedQuadrilateral() {
        Adjustment net = Surveys.adjust(Surveys.six(U, 1341.785, 1937.887, 1511.014, 2167.437, 2775.364, 2173.715));
        double[] v = {-3.513e-3, -4.925e-3, -2.794e-3, -4.129e-3, 6.183e-3, 4.724e-3};
        double[] r = {.10117, .19882, .06399, .13974, .31340, .18289};
        for (int i = 0; i < 6; i++) {
            assertThat(net.readings().get(i).residual()).isCloseTo(v[i], within(PRINTED));
            assertThat(Math.pow(U / net.readings().get(i).slipU(), 2)).isCloseTo(r[i], within(1e-5));
        }
    }

    /** One condition binds the six: the determinant of Cayley and Menger is 0 for the adjusted lengths, not the read ones. */
    @Test
    void theAdjustedLengthsObeyTheirOneCondition() {
        Adjustment net = Surveys.adjust(Surveys.six(U, 1341.785, 1937.887, 1511.014, 2167.437, 2775.364, 2173.715));
        double[] read = new double[6];
        double[] adjusted = new double[6];
        for (int i = 0; i < 6; i++) {
            read[i] = net.readings().get(i).observed();
            adjusted[i] = read[i] + net.readings().get(i).residual();
        }
        // The lengths are known to 1e-12 of themselves, the squares in the determinant to as much.
        assertThat(Math.abs(cayleyMenger(adjusted))).isLessThan(1e-5 * Math.abs(cayleyMenger(read)));
    }

    private static double cayleyMenger(double[] of) {
        double ab = of[0] * of[0];
        double bc = of[1] * of[1];
        double cd = of[2] * of[2];
        double da = of[3] * of[3];
        double ac = of[4] * of[4];
        double bd = of[5] * of[5];
        double[][] m = {{0, 1, 1, 1, 1}, {1, 0, ab, ac, da}, {1, ab, 0, bc, bd}, {1, ac, bc, 0, cd}, {1, da, bd, cd, 0}
        };
        return new LUDecomposition(new Array2DRowRealMatrix(m)).getDeterminant();
    }

    /**
     * Ghilani 2010, example 14.2, in feet: a point from three fixed ones, here a net of six lengths of which three are
     * known. Figures by an independent program, of equal weights: v, r, and standard deviations by the s₀ of the residuals.
     */
    @Test
    void aPointFromThreeFixedOnes() {
        double[][] fixed = {{865.40, 4527.15}, {2432.55, 2047.25}, {2865.22, 27.15}};
        List<Reading> readings = Surveys.six(
                0.1,
                Surveys.far(fixed[0], fixed[1]),
                Surveys.far(fixed[1], fixed[2]),
                5446.49,
                6049.00,
                Surveys.far(fixed[0], fixed[2]),
                4736.83);
        List<Reading> known = new ArrayList<>(readings);
        for (int i : new int[] {0, 1, 4}) {
            Reading reading = readings.get(i);
            known.set(
                    i, Surveys.read(reading.of().text(), 1e-5, reading.values().get(0)));
        }
        // Roughly, with A in the origin and B on the axis: C a little off it, U well to one side.
        double[] u = local(new double[] {6861, 3728}, fixed[0], fixed[1]);
        double[] c = local(fixed[2], fixed[0], fixed[1]);
        double[] start = {Surveys.far(fixed[0], fixed[1]), c[0], c[1], u[0], u[1]};
        Adjustment net = Adjustment.from(start, Surveys.straight(known), Plane.FRONT);
        int[] of = {3, 5, 2};
        double[] v = {-0.03737, 0.07679, -0.04737};
        double[] r = {0.14645, 0.61832, 0.23523};
        double square = 0;
        for (int i = 0; i < 3; i++) {
            AdjustedReading reading = net.readings().get(of[i]);
            assertThat(reading.residual()).isCloseTo(v[i], within(0.6e-5));
            assertThat(Math.pow(0.1 / reading.slipU(), 2)).isCloseTo(r[i], within(1e-5));
            square += reading.residual() * reading.residual();
        }
        double s0 = Math.sqrt(square / net.redundancy());
        assertThat(s0).isCloseTo(0.09766, within(0.6e-5));
        double[] x = net.values();
        double[] place = {x[3], x[4]};
        double[] expected = local(new double[] {6861.31679, 3727.81857}, fixed[0], fixed[1]);
        assertThat(place).containsExactly(expected, within(2e-5));
        // Two standard deviations, whatever the axes: 0.0775² + 0.1543².
        double variance =
                (net.unknowns().get(3).variance() + net.unknowns().get(4).variance()) * s0 * s0 / 0.01;
        assertThat(variance).isCloseTo(0.0775 * 0.0775 + 0.1543 * 0.1543, within(2 * 0.5e-4 * (0.0775 + 0.1543)));
    }

    private static double[] local(double[] p, double[] origin, double[] on) {
        double d = Surveys.far(origin, on);
        double ex = (on[0] - origin[0]) / d;
        double ey = (on[1] - origin[1]) / d;
        double x = p[0] - origin[0];
        double y = p[1] - origin[1];
        return new double[] {ex * x + ey * y, -ey * x + ex * y};
    }
}
