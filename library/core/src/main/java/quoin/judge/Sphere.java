package quoin.judge;

/**
 * Integrates a standard normal over a polyhedron, direction by direction.
 *
 * <p>P = E over directions u on the sphere of the chi probability of the radii at which every face holds. The set is
 * convex, so the radii form one interval, which need not begin at 0. Directions come from a Richtmyer lattice mapped
 * through the inverse normal, each used with its opposite; fixed shifts of the lattice give the error, three standard
 * errors of their mean. The lattice grows until the error is below 1e-4 or the work reaches its cap; the error then
 * stands as it is. Nothing is drawn at random: the same faces give the same digits everywhere.
 */
final class Sphere {
    private static final int SHIFTS = 8;
    private static final int FIRST = 64;
    private static final int MOST_POINTS = 1 << 15;
    private static final double MOST_WORK = 4e7;
    private static final double WANTED = 1e-4;

    private final double[][] plus;
    private final double[][] minus;
    private final int rank;
    private final Radii radii;

    private Sphere(double[] h, double[][] c) {
        rank = c[0].length;
        radii = new Radii(rank);
        int inside = 0;
        for (double x : h) {
            inside += x > 0 ? 1 : 0;
        }
        plus = new double[inside][];
        minus = new double[h.length - inside][];
        int p = 0;
        int m = 0;
        for (int i = 0; i < h.length; i++) {
            double[] row = new double[rank];
            for (int k = 0; k < rank; k++) {
                row[k] = c[i][k] / Math.abs(h[i]);
            }
            if (h[i] > 0) {
                plus[p++] = row;
            } else {
                minus[m++] = row;
            }
        }
    }

    /** A probability and three standard errors of it. */
    record Result(double value, double error) {}

    /** P(c&middot;z &ge; &minus;h for every face); no h may be 0. */
    static Result integrate(double[] h, double[][] c) {
        return new Sphere(h, c).grow();
    }

    private Result grow() {
        double[] sums = new double[SHIFTS];
        Lattice lattice = new Lattice(rank, SHIFTS);
        double[] u = new double[rank];
        double work = (double) (plus.length + minus.length) * rank * SHIFTS;
        int done = 0;
        int next = FIRST;
        Result result;
        do {
            for (int k = done; k < next; k++) {
                for (int s = 0; s < SHIFTS; s++) {
                    lattice.direction(k, s, u);
                    sums[s] += pair(u);
                }
            }
            done = next;
            next = 2 * done;
            result = mean(sums, done);
        } while (result.error() > WANTED && next <= MOST_POINTS && next * work <= MOST_WORK);
        return result;
    }

    private static Result mean(double[] sums, int points) {
        double mean = 0;
        for (double sum : sums) {
            mean += sum / points / SHIFTS;
        }
        double squares = 0;
        for (double sum : sums) {
            double d = sum / points - mean;
            squares += d * d;
        }
        double error = 3 * StrictMath.sqrt(squares / (SHIFTS - 1) / SHIFTS);
        return new Result(mean, error);
    }

    /** The mean of one direction and its opposite. */
    private double pair(double[] u) {
        double most = 0;
        double least = 0;
        for (double[] row : plus) {
            double along = dot(row, u);
            most = Math.max(most, along);
            least = Math.min(least, along);
        }
        double nearest = Double.POSITIVE_INFINITY;
        double farthest = Double.NEGATIVE_INFINITY;
        for (double[] row : minus) {
            double along = dot(row, u);
            nearest = Math.min(nearest, along);
            farthest = Math.max(farthest, along);
        }
        return 0.5 * (radii.between(nearest, -least) + radii.between(-farthest, most));
    }

    private double dot(double[] row, double[] u) {
        double sum = 0;
        for (int k = 0; k < rank; k++) {
            sum += row[k] * u[k];
        }
        return sum;
    }
}
