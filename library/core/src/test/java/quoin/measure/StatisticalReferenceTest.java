package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Standard: NIST StRD, univariate summary statistics: certified mean and standard deviation. The tolerances are what the
 * data themselves leave open: a reading such as 10000000.1 is no double, and is off by up to half its last place.
 *
 * <p>The certified autocorrelations are left out: nothing of the library computes one.
 */
class StatisticalReferenceTest {
    record Set(String name, double[] readings, double mean, double deviation, double tolerance) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Set> sets() {
        return Stream.of(
                new Set("NumAcc1", new double[] {10000001, 10000003, 10000002}, 10000002, 1, 0),
                new Set("NumAcc2", swinging(1.2, 1.1, 1.3), 1.2, 0.1, 1e-14),
                new Set("NumAcc3", swinging(1000000.2, 1000000.1, 1000000.3), 1000000.2, 0.1, 1e-9),
                new Set("NumAcc4", swinging(10000000.2, 10000000.1, 10000000.3), 10000000.2, 0.1, 1e-8),
                // printed to fifteen digits
                new Set("Lew", LEW, -177.435, 277.332168044316, 1e-11));
    }

    @ParameterizedTest
    @MethodSource("sets")
    void meanAndScatterOfRepeats(Set set) {
        Repeats repeats = Repeats.of(set.readings(), 1);
        assertThat(repeats.count()).isEqualTo(set.readings().length);
        assertThat(repeats.mean()).isCloseTo(set.mean(), within(set.tolerance()));
        assertThat(repeats.standardDeviation()).isCloseTo(set.deviation(), within(set.tolerance()));
    }

    @ParameterizedTest
    @MethodSource("sets")
    void doubtOfTheMean(Set set) {
        int n = set.readings().length;
        double u = set.deviation() / StrictMath.sqrt(n);
        Influence mean = Influence.repeated("mean", set.readings());
        assertThat(mean.standardUncertainty()).isCloseTo(u, within(set.tolerance()));
        assertThat(mean.degreesOfFreedom()).isEqualTo(n - 1);
    }

    @ParameterizedTest
    @MethodSource("sets")
    void rowsReadTogether(Set set) {
        int n = set.readings().length;
        double[][] rows = new double[n][];
        for (int i = 0; i < n; i++) {
            rows[i] = new double[] {set.readings()[i], -2 * set.readings()[i]};
        }
        var means = CorrelatedInputs.ofRows("rows", rows);
        double u = set.deviation() / StrictMath.sqrt(n);
        // one rounding in the square root more
        double tolerance = set.tolerance() + 1e-15 * u;
        assertThat(means.get(0).value()).isCloseTo(set.mean(), within(tolerance));
        assertThat(means.get(0).standardUncertainty()).isCloseTo(u, within(tolerance));
        assertThat(means.get(1).standardUncertainty()).isCloseTo(2 * u, within(2 * tolerance));
        assertThat(means.get(0).correlation(means.get(1))).isCloseTo(-1, within(1e-12));
    }

    /** 1001 readings: the first, then the other two in turns. */
    private static double[] swinging(double first, double low, double high) {
        double[] readings = new double[1001];
        readings[0] = first;
        for (int i = 1; i < readings.length; i++) {
            readings[i] = i % 2 == 1 ? low : high;
        }
        return readings;
    }

    private static final double[] LEW = {
        -213, -564, -35, -15, 141, 115, -420, -360, 203, -338, -431, 194, -220, -513, 154, -125, -559, 92, -21, -579,
        -52, 99, -543, -175, 162, -457, -346, 204, -300, -474, 164, -107, -572, -8, 83, -541, -224, 180, -420, -374,
        201, -236, -531, 83, 27, -564, -112, 131, -507, -254, 199, -311, -495, 143, -46, -579, -90, 136, -472, -338,
        202, -287, -477, 169, -124, -568, 17, 48, -568, -135, 162, -430, -422, 172, -74, -577, -13, 92, -534, -243, 194,
        -355, -465, 156, -81, -578, -64, 139, -449, -384, 193, -198, -538, 110, -44, -577, -6, 66, -552, -164, 161,
        -460, -344, 205, -281, -504, 134, -28, -576, -118, 156, -437, -381, 200, -220, -540, 83, 11, -568, -160, 172,
        -414, -408, 188, -125, -572, -32, 139, -492, -321, 205, -262, -504, 142, -83, -574, 0, 48, -571, -106, 137,
        -501, -266, 190, -391, -406, 194, -186, -553, 83, -13, -577, -49, 103, -515, -280, 201, 300, -506, 131, -45,
        -578, -80, 138, -462, -361, 201, -211, -554, 32, 74, -533, -235, 187, -372, -442, 182, -147, -566, 25, 68, -535,
        -244, 194, -351, -463, 174, -125, -570, 15, 72, -550, -190, 172, -424, -385, 198, -218, -536, 96
    };
}
