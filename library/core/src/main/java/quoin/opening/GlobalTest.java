package quoin.opening;

import org.apache.commons.math3.special.Gamma;

/**
 * Critical values of the test of all readings together, tuned to see what the test of one reading sees: the shift that
 * a test of one reading at 0.1 % sees four times in five is seen four times in five by this one too (Baarda's
 * B-method).
 */
final class GlobalTest {
    private static final double POWER = 0.8;
    private static final double[] CRITICAL = computed(40);

    private GlobalTest() {}

    static double critical(int redundancy) {
        return redundancy <= CRITICAL.length ? CRITICAL[redundancy - 1] : compute(redundancy);
    }

    private static double[] computed(int most) {
        double[] table = new double[most];
        for (int i = 0; i < most; i++) {
            table[i] = compute(i + 1);
        }
        return table;
    }

    /** The value that a noncentral chi-square exceeds with that power, by bisection. */
    private static double compute(int redundancy) {
        double noncentrality = Adjustment.DELTA * Adjustment.DELTA;
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
