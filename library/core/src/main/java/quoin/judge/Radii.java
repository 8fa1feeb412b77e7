package quoin.judge;

/** The chi distribution of the radius in so many dimensions, tabled once and read by cubic pieces (error below 1e-8). */
final class Radii {
    private static final int STEPS = 32;

    private final double[] value;
    private final double[] slope;

    Radii(int dimensions) {
        int size = (int) (STEPS * (StrictMath.sqrt(dimensions) + 7)) + 2;
        value = new double[size];
        slope = new double[size];
        double rise = 1.0 / STEPS;
        for (int i = 1; i < size; i++) {
            double r = i * rise;
            value[i] = Gauss.ball(dimensions, r);
            slope[i] = rise * Gauss.shell(dimensions, r);
        }
    }

    /** P(1/from &le; radius &le; 1/to); {@code to} 0 is no upper end, {@code from} not above 0 is none at all. */
    double between(double from, double to) {
        if (!(from > to)) {
            return 0;
        }
        double upper = to > 0 ? below(1 / to) : 1;
        return Math.max(0, upper - (from == Double.POSITIVE_INFINITY ? 0 : below(1 / from)));
    }

    private double below(double r) {
        double x = r * STEPS;
        int i = (int) x;
        if (i >= value.length - 1) {
            return 1;
        }
        double t = x - i;
        double rise = value[i + 1] - value[i];
        double a = slope[i] - rise;
        double b = rise - slope[i + 1];
        return value[i] + t * (rise + (1 - t) * ((1 - t) * a + t * b));
    }
}
