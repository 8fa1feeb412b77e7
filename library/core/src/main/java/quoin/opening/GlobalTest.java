package quoin.opening;

import org.apache.commons.math3.special.Erf;
import org.apache.commons.math3.special.Gamma;

/**
 * Critical values of the test of all readings together, tuned to see what the test of one reading sees: the shift that
 * a test of one reading at 0.1 % sees four times in five is seen four times in five by this one too (Baarda's
 * B-method).
 */
final class GlobalTest {
    /** The smallest shift that a test of 0.1 % sees four times in five, in standard deviations: 3.2905267 + 0.8416212. */
    static final double DELTA = 4.1321480;

    private static final double POWER = 0.8;

    /** For redundancy 1 to 40, as {@link #compute} gives them: start-up computes nothing. */
    private static final double[] CRITICAL = {
        10.8275662, 11.7299769, 12.6334777, 13.5380572, 14.4436997, 15.3503866, 16.2580972, 17.1668093,
        18.0765003, 18.9871469, 19.8987258, 20.8112137, 21.7245880, 22.6388259, 23.5539057, 24.4698059,
        25.3865056, 26.3039846, 27.2222234, 28.1412030, 29.0609051, 29.9813119, 30.9024064, 31.8241720,
        32.7465927, 33.6696532, 34.5933385, 35.5176343, 36.4425268, 37.3680025, 38.2940485, 39.2206524,
        40.1478020, 41.0754857, 42.0036922, 42.9324105, 43.8616303, 44.7913411, 45.7215333, 46.6521971
    };

    private GlobalTest() {}

    static double critical(int redundancy) {
        return redundancy <= CRITICAL.length ? CRITICAL[redundancy - 1] : compute(redundancy);
    }

    /** The value that a noncentral chi-square exceeds with that power, by bisection. */
    static double compute(int redundancy) {
        double noncentrality = DELTA * DELTA;
        double low = 0;
        double high = redundancy + noncentrality;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (below(middle, redundancy, noncentrality) < 1 - POWER) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** The odds that readings of that redundancy are accepted, their statistic shifted by so much; normal approximation. */
    static double accepted(int redundancy, double shift) {
        if (redundancy < 1) {
            return 1;
        }
        double spread = Math.sqrt(2 * (redundancy + 2 * shift));
        return Erf.erfc((redundancy + shift - critical(redundancy)) / spread / Math.sqrt(2)) / 2;
    }

    /** The noncentral chi-square distribution as a mixture of central ones. */
    static double below(double x, int degrees, double noncentrality) {
        double weight = StrictMath.exp(-noncentrality / 2);
        double sum = 0;
        for (int j = 0; j < 120; j++) {
            sum += weight * Gamma.regularizedGammaP(degrees / 2.0 + j, x / 2);
            weight *= noncentrality / 2 / (j + 1);
        }
        return sum;
    }
}
