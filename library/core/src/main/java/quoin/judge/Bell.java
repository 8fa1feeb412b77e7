package quoin.judge;

/**
 * The standard normal distribution for the inner loop: cubic pieces between exact values, absolute error below 1e-8.
 *
 * <p>The lattice needs 1e-4; whoever needs the digits of a tail asks {@link Gauss}.
 */
final class Bell {
    private static final int STEPS = 32;
    private static final int REACH = 9;
    private static final int BUCKETS = 1024;
    /** Beyond this the cubic pieces say too little of z. */
    private static final double TAIL = 1e-4;

    private static final int LAST = 2 * REACH * STEPS;
    private static final double[] VALUE = new double[LAST + 1];
    private static final double[] SLOPE = new double[LAST + 1];

    /** For each bucket of probabilities the last step that begins below all of it. */
    private static final int[] START = new int[BUCKETS + 1];

    static {
        for (int i = 0; i <= LAST; i++) {
            double z = (double) i / STEPS - REACH;
            VALUE[i] = Gauss.below(z);
            SLOPE[i] = Gauss.density(z) / STEPS;
        }
        int step = 0;
        for (int k = 0; k <= BUCKETS; k++) {
            while (step + 1 < LAST && VALUE[step + 1] <= (double) k / BUCKETS) {
                step++;
            }
            START[k] = step;
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

    /**
     * The z with P(Z &le; z) = p, held within &plusmn;8.2: the inverse of {@link #below} where that is good, within 3e-5 of
     * the exact one.
     */
    static double quantile(double p) {
        if (p >= TAIL && p <= 1 - TAIL) {
            return between(p);
        }
        if (!(p > 1e-16)) {
            return -8.2;
        }
        return p < 1 - 1e-16 ? Gauss.quantile(p) : 8.2;
    }

    private static double between(double p) {
        int i = START[(int) (p * BUCKETS)];
        while (VALUE[i + 1] <= p) {
            i++;
        }
        double rise = VALUE[i + 1] - VALUE[i];
        double wanted = p - VALUE[i];
        double t = wanted / rise;
        for (int newton = 0; newton < 2; newton++) {
            double bend = (1 - t) * (SLOPE[i] - rise) + t * (rise - SLOPE[i + 1]);
            double slope = SLOPE[i] * (1 - t) * (1 - 3 * t) + SLOPE[i + 1] * t * (3 * t - 2) + 6 * rise * t * (1 - t);
            t -= (t * (rise + (1 - t) * bend) - wanted) / slope;
        }
        return (i + t) / STEPS - REACH;
    }
}
