package quoin.judge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The probability that several linear functions of the same standard normal numbers all keep their limits.
 *
 * <p>Each {@link Row} asks slack + row&middot;z &ge; 0, z independent standard normals. No row, rows without doubt and
 * rows of rank 1 are exact. Otherwise the probability is bounded by the sum of the marginals from below and by the
 * least marginal from above, and integrated over directions of the space that the rows span, the radius in closed form
 * ({@link Sphere}). Rows that fail with less than 1e-7 all together are left out and widen the lower bound instead.
 */
final class JointNormal {
    private static final double LEFT_OUT = 1e-7;
    private static final double CLOSE = 1e-6;
    private static final double SAME_SPAN = 1e-8;
    private static final double LEAST_SIZE = 1e-10;

    private JointNormal() {}

    /** One condition: slack + row&middot;z &ge; 0. */
    record Row(double slack, double[] contributions) {
        double norm() {
            double sum = 0;
            for (double c : contributions) {
                sum += c * c;
            }
            return StrictMath.sqrt(sum);
        }
    }

    /** One condition in units of its own standard uncertainty: c&middot;z &ge; &minus;h, |c| = 1. */
    private record Face(double h, double[] c) {
        double fails() {
            return Gauss.below(-h);
        }
    }

    /** P(all rows hold). Rows share one basis; a NaN slack never holds. */
    static Odds allHold(List<Row> rows) {
        List<Face> faces = new ArrayList<>();
        for (Row row : rows) {
            double norm = row.norm();
            if (norm > 0) {
                faces.add(new Face(row.slack() / norm, scaled(row.contributions(), 1 / norm)));
            } else if (!(row.slack() >= 0)) {
                return Odds.firstOrder(0);
            }
        }
        if (faces.isEmpty()) {
            return Odds.firstOrder(1);
        }
        if (faces.size() == 1) {
            return Odds.firstOrder(Gauss.below(faces.get(0).h()));
        }
        return joint(faces);
    }

    private static Odds joint(List<Face> faces) {
        double least = 1;
        double fails = 0;
        for (Face face : faces) {
            least = Math.min(least, Gauss.below(face.h()));
            fails += face.fails();
        }
        double sum = Math.max(0, 1 - fails);
        List<Face> kept = new ArrayList<>(faces);
        double leftOut = leaveOut(kept);
        if (kept.isEmpty()) {
            return bounds(sum, least);
        }
        double[][] reduced = span(kept);
        int rank = reduced[0].length;
        if (rank == 1) {
            double exact = Math.min(interval(kept, reduced), least);
            return new Odds(exact, Math.max(0, exact - leftOut), exact, Odds.Method.FIRST_ORDER);
        }
        if (least - sum <= CLOSE) {
            return bounds(sum, least);
        }
        double[] h = new double[kept.size()];
        for (int i = 0; i < h.length; i++) {
            h[i] = kept.get(i).h();
            if (Math.abs(h[i]) < LEAST_SIZE) {
                h[i] = LEAST_SIZE;
            }
        }
        Sphere.Result result = Sphere.integrate(h, reduced);
        return within(result.value(), result.error() + leftOut, sum, least);
    }

    private static Odds within(double value, double error, double lower, double upper) {
        double clipped = Math.min(Math.max(value, lower), upper);
        return new Odds(
                clipped,
                Math.min(clipped, Math.max(value - error, lower)),
                Math.max(clipped, Math.min(value + error, upper)),
                Odds.Method.LATTICE);
    }

    private static Odds bounds(double lower, double upper) {
        double low = Math.min(lower, upper);
        return new Odds(low + 0.5 * (upper - low), low, upper, Odds.Method.BOUNDS);
    }

    /** Removes the faces that hardly ever fail; returns the probability that one of them does, at most. */
    private static double leaveOut(List<Face> faces) {
        faces.sort(Comparator.comparingDouble(Face::h));
        double sum = 0;
        for (int i = faces.size() - 1; i >= 0; i--) {
            double fails = faces.get(i).fails();
            if (!(sum + fails <= LEFT_OUT)) {
                break;
            }
            sum += fails;
            faces.remove(i);
        }
        return sum;
    }

    /** P of the interval that faces along one line leave open. */
    private static double interval(List<Face> faces, double[][] reduced) {
        double lo = Double.NEGATIVE_INFINITY;
        double hi = Double.POSITIVE_INFINITY;
        for (int i = 0; i < reduced.length; i++) {
            double h = faces.get(i).h();
            if (reduced[i][0] > 0) {
                lo = Math.max(lo, -h);
            } else {
                hi = Math.min(hi, h);
            }
        }
        return Gauss.between(lo, hi);
    }

    /** The faces in coordinates of an orthonormal basis of their span, by Gram-Schmidt with the largest rest first. */
    private static double[][] span(List<Face> faces) {
        int n = faces.size();
        double[][] rest = new double[n][];
        for (int i = 0; i < n; i++) {
            rest[i] = faces.get(i).c().clone();
        }
        int most = Math.min(n, rest[0].length);
        double[][] coordinates = new double[n][most];
        int rank = 0;
        while (rank < most) {
            int pivot = largest(rest);
            double norm = StrictMath.sqrt(dot(rest[pivot], rest[pivot]));
            if (!(norm > SAME_SPAN)) {
                break;
            }
            double[] axis = scaled(rest[pivot], 1 / norm);
            for (int i = 0; i < n; i++) {
                double along = dot(rest[i], axis);
                coordinates[i][rank] = along;
                for (int k = 0; k < axis.length; k++) {
                    rest[i][k] -= along * axis[k];
                }
            }
            rank++;
        }
        for (int i = 0; i < n; i++) {
            coordinates[i] = java.util.Arrays.copyOf(coordinates[i], rank);
        }
        return coordinates;
    }

    private static int largest(double[][] rest) {
        int best = 0;
        double size = -1;
        for (int i = 0; i < rest.length; i++) {
            double d = dot(rest[i], rest[i]);
            if (d > size) {
                size = d;
                best = i;
            }
        }
        return best;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double[] scaled(double[] a, double factor) {
        double[] result = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            result[i] = a[i] * factor;
        }
        return result;
    }
}
