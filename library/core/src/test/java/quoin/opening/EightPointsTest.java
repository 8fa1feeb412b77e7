package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Höpke 1980, example 35.5, in Krumm, Geodetic Network Adjustment Examples, rev. 3.5 (2020): 8 points, 27 distances, free,
 * 14 redundant; the book's list has one distance 5 cm too long, and the tests name it. Mark: handbook. By the same least
 * squares, tests and suspects as an outline; two points hold the net in place, which changes no residual and no test.
 */
class EightPointsTest {
    private static final double[][] POINTS = {
        {3579041.416, 5707194.412},
        {3575403.277, 5707682.612},
        {3575322.061, 5708700.952},
        {3576581.778, 5709938.106},
        {3578284.289, 5708758.641},
        {3577052.332, 5708103.204},
        {3576852.894, 5706633.642},
        {3576213.699, 5709199.889}
    };
    private static final List<Integer> NAMES = List.of(20, 75, 86, 87, 1006, 1011, 1059, 1087);
    private static final double U = 0.001;

    private static final double[][] DISTANCES = {
        {86, 1006, 2962.832},
        {86, 87, 1765.657},
        {86, 1087, 1021.768},
        {86, 75, 1021.536},
        {86, 1011, 1830.646},
        {86, 20, 4012.921},
        {86, 1059, 2572.516},
        {1087, 87, 824.863},
        {1087, 20, 3466.722},
        {1087, 1059, 2644.789},
        {1087, 75, 1720.130},
        {1087, 1006, 2117.134},
        {1087, 1011, 1380.633},
        {1006, 75, 3075.373},
        {1006, 20, 1737.824},
        {1006, 1059, 2562.134},
        {1006, 1011, 1395.459},
        {1006, 87, 2071.154},
        {1011, 87, 1894.263},
        {1011, 75, 1701.824},
        {1011, 1059, 1483.088},
        {1011, 20, 2186.853},
        {1059, 20, 2259.167},
        {1059, 75, 1789.449},
        {1059, 87, 3315.630},
        {20, 87, 3684.782},
        {20, 75, 3670.735}
    };
    private static final int CULPRIT = 23;

    /** Places relative to the first point, less what is lost of 7 digits in front. */
    private final double[] x = new double[16];

    private final double[][] design = new double[27][13];
    private final double[] rest = new double[27];
    private Tests tests = Tests.NONE;

    private void adjust(double culprit) {
        for (int i = 0; i < 8; i++) {
            x[2 * i] = POINTS[i][0] - POINTS[0][0];
            x[2 * i + 1] = POINTS[i][1] - POINTS[0][1];
        }
        double[] variance = new double[27];
        Arrays.fill(variance, U * U);
        LeastSquares test = new LeastSquares(variance, new double[0][], new double[0]);
        for (int step = 0; step < 8; step++) {
            evaluate(culprit);
            assertThat(test.isDetermined(design)).isTrue();
            double[] move = test.step(rest, x);
            for (int k = 0; k < 13; k++) {
                x[unknown(k)] += move[k];
            }
        }
        evaluate(culprit);
        assertThat(test.isDetermined(design)).isTrue();
        tests = Tests.of(test, rest, x);
    }

    /** The first point stays where it is, the second on its parallel. */
    private static int unknown(int k) {
        return k == 0 ? 2 : k + 3;
    }

    private void evaluate(double culprit) {
        for (int i = 0; i < 27; i++) {
            int p = NAMES.indexOf((int) DISTANCES[i][0]);
            int q = NAMES.indexOf((int) DISTANCES[i][1]);
            double dx = x[2 * q] - x[2 * p];
            double dy = x[2 * q + 1] - x[2 * p + 1];
            double d = Math.sqrt(dx * dx + dy * dy);
            double[] row = new double[16];
            row[2 * q] = dx / d;
            row[2 * q + 1] = dy / d;
            row[2 * p] = -dx / d;
            row[2 * p + 1] = -dy / d;
            for (int k = 0; k < 13; k++) {
                design[i][k] = row[unknown(k)];
            }
            rest[i] = (i == CULPRIT ? culprit : DISTANCES[i][2]) - d;
        }
    }

    private List<AdjustedReading> readings() {
        List<AdjustedReading> readings = new ArrayList<>();
        for (int i = 0; i < 27; i++) {
            String name = (int) DISTANCES[i][0] + "-" + (int) DISTANCES[i][1];
            double q = tests.between(i, i);
            double g = tests.weighted(i);
            double root = Math.sqrt(q);
            readings.add(new AdjustedReading(
                    name, name, i, 0, -rest[i], g / root, g / q, 1 / root, 4 / root, AdjustedReading.Effect.NONE));
        }
        return readings;
    }

    /** As the list should read: adjusted places (to 0.1 mm, by their distances), [pvv] in mm², s₀. */
    @Test
    void theCleanNet() {
        adjust(1789.449);
        assertThat(tests.statistic()).isCloseTo(343.644, within(6e-4));
        assertThat(Math.sqrt(tests.statistic() / 14)).isCloseTo(4.954, within(6e-4));
        double[][] places = {
            {3579041.4042, 5707194.4039},
            {3575403.2853, 5707682.6565},
            {3575322.0203, 5708700.9554},
            {3576581.7857, 5709938.0995},
            {3578284.2920, 5708758.6275},
            {3577052.3287, 5708103.2070},
            {3576852.9606, 5706633.5764},
            {3576213.6691, 5709199.9319}
        };
        for (int i = 0; i < 8; i++) {
            for (int j = 0; j < i; j++) {
                double ours = Math.hypot(x[2 * i] - x[2 * j], x[2 * i + 1] - x[2 * j + 1]);
                assertThat(ours).isCloseTo(Surveys.far(places[i], places[j]), within(2e-4));
            }
        }
        // The largest studentised residual is that of 1087-20, 2.53; 1 mm is too good a doubt for these distances.
        assertThat(largest()).isEqualTo(8);
        assertThat(tau(8)).isCloseTo(2.53, within(0.006));
        assertThat(-rest[8] * 1000).isCloseTo(9.617, within(6e-4));
    }

    /** As the list reads: the one is named, alone and first, and its slip of 50 mm told to a millimetre. */
    @Test
    void theOneFiveCentimetresTooLongIsNamed() {
        adjust(1789.499);
        assertThat(tests.statistic()).isCloseTo(1517.34, within(6e-3));
        assertThat(Math.sqrt(tests.statistic() / 14)).isCloseTo(10.411, within(6e-4));
        assertThat(-rest[CULPRIT] * 1000).isCloseTo(-23.416, within(6e-4));
        assertThat(tau(CULPRIT)).isCloseTo(3.29, within(0.006));
        List<AdjustedReading> readings = readings();
        List<List<Integer>> named = Suspects.named(readings, tests, 14);
        assertThat(named.get(0)).containsExactly(CULPRIT);
        assertThat(readings.get(CULPRIT).name()).isEqualTo("1059-75");
        assertThat(readings.get(CULPRIT).slip() * 1000).isCloseTo(50.1, within(0.06));
        // f, how much of a slip the residual does not show: 1 - √(1 - r) of r in the source, 27.0 %.
        double r = tests.between(CULPRIT, CULPRIT) * U * U;
        assertThat(100 * (1 - Math.sqrt(1 - r))).isCloseTo(27.0, within(0.06));
        // The second largest is 1059-20, 2.3.
        assertThat(tau(22)).isCloseTo(2.3, within(0.06));
        assertThat(named.get(1)).contains(22);
    }

    /** With a doubt as large as the clean net shows, the slip alone explains the disagreement, and only one is named. */
    @ParameterizedTest
    @CsvSource({"1789.499, true", "1789.449, false"})
    void withAHonestDoubt(double culprit, boolean suspected) {
        adjust(culprit);
        double honest = 5;
        assertThat(tests.statistic() / honest / honest > GlobalTest.critical(14))
                .isEqualTo(suspected);
    }

    private double tau(int i) {
        double s0 = Math.sqrt(tests.statistic() / 14);
        return Math.abs(tests.weighted(i)) / Math.sqrt(tests.between(i, i)) / s0;
    }

    private int largest() {
        int most = 0;
        for (int i = 1; i < 27; i++) {
            most = tau(i) > tau(most) ? i : most;
        }
        return most;
    }
}
