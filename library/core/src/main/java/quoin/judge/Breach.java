package quoin.judge;

/**
 * The probability that at least one of several conditions c&middot;z &ge; &minus;h fails, all h above 0.
 *
 * <p>A face is picked with its share of the sum of the single probabilities, a point is placed beyond it, and the
 * direction of the point is weighed: the sum of the singles times the chance that a point of that direction fails at
 * all, over the sum of the chances that it fails each face. The radius is in closed form. This is the sampling of a
 * union of half-spaces by Owen, Maximov and Chertkov (2019) with the radius integrated; the weight never exceeds the
 * sum of the singles, so a rare failure is found as surely as a common one.
 */
final class Breach implements Integrand {
    private static final double LEAST_TAIL = 1e-300;
    private static final double INSIDE = 1 - 0x1.0p-50;

    private final double[] h;
    private final double[][] c;
    private final double[] single;
    private final double total;
    private final Radius radius;
    private final double[] z;

    Breach(double[] h, double[][] c) {
        this.h = h;
        this.c = c;
        single = new double[h.length];
        double sum = 0;
        for (int i = 0; i < h.length; i++) {
            single[i] = Gauss.below(-h[i]);
            sum += single[i];
        }
        total = sum;
        z = new double[c[0].length];
        radius = new Radius(z.length);
    }

    @Override
    public int dimensions() {
        return z.length + 1;
    }

    @Override
    public double work() {
        return 60.0 * z.length + (0.6 * z.length + 12) * h.length;
    }

    @Override
    public double at(double[] point) {
        int face = pick(point[0]);
        z[0] = -Gauss.quantile(Math.max(LEAST_TAIL, point[1] * single[face]));
        for (int q = 1; q < z.length; q++) {
            z[q] = Bell.quantile(INSIDE * point[q + 1]);
        }
        reflect(c[face]);
        return weight(1 / StrictMath.sqrt(dot(z, z)));
    }

    private int pick(double share) {
        double rest = share * total;
        int face = 0;
        while (face < h.length - 1 && rest > single[face]) {
            rest -= single[face];
            face++;
        }
        return face;
    }

    /** Turns the first axis into the direction in which the face fails. */
    private void reflect(double[] face) {
        double size = 2 + 2 * face[0];
        if (!(size > 0)) {
            return;
        }
        double along = 2 * (z[0] + dot(face, z)) / size;
        for (int q = 0; q < z.length; q++) {
            z[q] -= along * (face[q] + (q == 0 ? 1 : 0));
        }
    }

    private double weight(double scale) {
        double sum = 0;
        double most = 0;
        for (int i = 0; i < h.length; i++) {
            double out = -dot(c[i], z) * scale;
            if (out > 0) {
                double beyond = radius.beyond(h[i] / out);
                sum += beyond;
                most = Math.max(most, beyond);
            }
        }
        return sum > 0 ? total * most / sum : total;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** The upper tail of the distance from the origin, by cubic pieces between exact values. */
    private static final class Radius {
        private static final int STEPS = 32;
        private static final double REACH = 8;

        private final double[] value;
        private final double[] slope;

        Radius(int dimensions) {
            int size = (int) (STEPS * (StrictMath.sqrt(dimensions) + REACH)) + 2;
            value = new double[size];
            slope = new double[size];
            for (int i = 0; i < size; i++) {
                double r = (double) i / STEPS;
                value[i] = Gauss.beyond(dimensions, r);
                slope[i] = -Gauss.shell(dimensions, r) / STEPS;
            }
        }

        double beyond(double r) {
            double x = r * STEPS;
            if (!(x < value.length - 1)) {
                return 0;
            }
            int i = (int) x;
            double t = x - i;
            double rise = value[i + 1] - value[i];
            double bend = (1 - t) * (slope[i] - rise) + t * (rise - slope[i + 1]);
            return value[i] + t * (rise + (1 - t) * bend);
        }
    }
}
