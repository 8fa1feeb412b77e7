package quoin.judge;

/**
 * The standard normal distribution for the inner loop: cubic pieces between exact values, absolute error below 1e-8.
 *
 * <p>The lattice needs 1e-4; whoever needs the digits of a tail asks {@link Gauss}.
 */
final class Bell {
    private static final int STEPS = 32;
    private static final int REACH = 9;
    private static final int LAST = 2 * REACH * STEPS;
    private static final double[] VALUE = new double[LAST + 1];
    private static final double[] SLOPE = new double[LAST + 1];

    static {
        for (int i = 0; i <= LAST; i++) {
            double z = (double) i / STEPS - REACH;
            VALUE[i] = Gauss.below(z);
            SLOPE[i] = Gauss.density(z) / STEPS;
        }
    }

    private Bell() {}

    /** P(Z &le; z), not NaN. */
    static double below(double z) {
        double x = (z + REACH) * STEPS;
        if (!(x > 0)) {
            return 0;
        }
        if (x >= LAST) {
            return 1;
        }
        int i = (int) x;
        double t = x - i;
        double rise = VALUE[i + 1] - VALUE[i];
        double bend = (1 - t) * (SLOPE[i] - rise) + t * (rise - SLOPE[i + 1]);
        return VALUE[i] + t * (rise + (1 - t) * bend);
    }

    /** The z with P(Z &le; z) = p, held within &plusmn;8.2. */
    static double quantile(double p) {
        if (!(p > 1e-16)) {
            return -8.2;
        }
        return p < 1 - 1e-16 ? Gauss.quantile(p) : 8.2;
    }
}
