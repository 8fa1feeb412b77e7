package quoin.opening;

import java.util.ArrayList;
import java.util.List;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;

/**
 * How flat a surface of depths is. Immutable and safe for use by many threads.
 *
 * @param intercept the depth of the fitted plane at the origin
 * @param slopeX how much deeper in each mm along the head
 * @param slopeY how much deeper in each mm towards the foot
 * @param departures how much deeper each point is than the fitted plane
 */
public record PlaneFit(Uncertain intercept, Uncertain slopeX, Uncertain slopeY, List<Uncertain> departures) {
    private static final double FLAT = 1e-9;

    /** Copies the list. */
    public PlaneFit {
        departures = List.copyOf(departures);
    }

    /**
     * A depth at a place of the opening.
     *
     * @param xMm along the head, in mm
     * @param yMm towards the foot, in mm
     * @param depth the depth there, in mm
     */
    public record Point(double xMm, double yMm, Uncertain depth) {
        /** Checks the place. */
        public Point {
            if (!Double.isFinite(xMm) || !Double.isFinite(yMm)) {
                throw new IllegalArgumentException("point must be finite, got " + xMm + " mm and " + yMm + " mm");
            }
        }
    }

    /**
     * The plane that fits best by least squares, every depth alike.
     *
     * @param points three or more, not all on one line
     * @return the plane, its doubt that of the depths
     * @formula (AᵀA)⁻¹Aᵀz with rows 1, x, y of A
     * @unit mm and mm in each mm
     * @edge through all where there are three
     * @source handbook: plane by least squares
     * @throws IllegalArgumentException if there are fewer than three points or all lie on a line
     */
    public static PlaneFit leastSquares(List<Point> points) {
        int n = points.size();
        double scale = scale(points);
        double[][] rows = new double[n][];
        double[][] normal = new double[3][3];
        List<Uncertain> depths = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Point point = points.get(i);
            rows[i] = new double[] {1, point.xMm() / scale, point.yMm() / scale};
            depths.add(point.depth());
            for (int k = 0; k < 3; k++) {
                for (int l = 0; l < 3; l++) {
                    normal[k][l] += rows[i][k] * rows[i][l];
                }
            }
        }
        Cholesky solver = new Cholesky(normal, FLAT);
        if (n < 3 || !solver.isDefinite()) {
            throw new IllegalArgumentException("points must be 3 or more, not all on a line, got " + n);
        }
        double[][] weights = new double[3][n];
        for (int i = 0; i < n; i++) {
            double[] column = rows[i].clone();
            solver.solveInPlace(column);
            for (int k = 0; k < 3; k++) {
                weights[k][i] = column[k];
            }
        }
        List<Uncertain> departures = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double[] rest = new double[n];
            for (int j = 0; j < n; j++) {
                rest[j] = i == j ? 1 : 0;
                for (int k = 0; k < 3; k++) {
                    rest[j] -= rows[i][k] * weights[k][j];
                }
            }
            departures.add(Weighted.sum(rest, depths));
        }
        return new PlaneFit(
                Weighted.sum(weights[0], depths),
                Weighted.sum(weights[1], depths).dividedBy(scale),
                Weighted.sum(weights[2], depths).dividedBy(scale),
                departures);
    }

    /**
     * How flat: the distance of the two closest parallel planes that hold all depths between them, along the depth.
     *
     * <p>Any four points, no three on a line, split in one way into two groups whose plane places meet: a point inside
     * three, or two lines that cross. The distance is the greatest difference of depth at such a meeting place; the
     * parts stand for these, so that the odds of a limit count all of them.
     *
     * @param points four or more
     * @return the signed difference largest in size; a single one where there are four points
     * @formula max over fours of |Σ λᵢzᵢ|, Σ λᵢ = Σ λᵢxᵢ = Σ λᵢyᵢ = 0, Σ of positive λᵢ = 1
     * @unit mm
     * @edge half the twist for the corners of a rectangle; 0 where all lie in a plane
     * @source standard: minimum zone flatness as ISO 1101 defines it (from memory); by the dual of its linear program
     * @throws IllegalArgumentException if there are fewer than four points or all lie on a line
     */
    public static Estimate minimumZone(List<Point> points) {
        int n = points.size();
        double area = scale(points) * scale(points) * FLAT;
        List<Extreme.Part> parts = new ArrayList<>();
        for (int a = 0; a < n; a++) {
            for (int b = a + 1; b < n; b++) {
                for (int c = b + 1; c < n; c++) {
                    for (int d = c + 1; d < n; d++) {
                        add(parts, area, points, a, b, c, d);
                    }
                }
            }
        }
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("points must be 4 or more, not all on a line, got " + n);
        }
        return parts.size() == 1 ? parts.get(0).value() : Extreme.largestInSize(parts);
    }

    private static void add(List<Extreme.Part> parts, double least, List<Point> points, int... four) {
        double[] weights = new double[4];
        double positive = 0;
        List<Uncertain> depths = new ArrayList<>();
        StringBuilder name = new StringBuilder();
        for (int i = 0; i < 4; i++) {
            Point p = points.get(four[(i + 1) % 4]);
            Point q = points.get(four[(i + 2) % 4]);
            Point r = points.get(four[(i + 3) % 4]);
            double twice = (q.xMm() - p.xMm()) * (r.yMm() - p.yMm()) - (r.xMm() - p.xMm()) * (q.yMm() - p.yMm());
            weights[i] = i % 2 == 0 ? twice : -twice;
            positive += Math.max(0, weights[i]);
            depths.add(points.get(four[i]).depth());
            name.append(i == 0 ? "" : "-").append(four[i]);
        }
        if (positive > least) {
            for (int i = 0; i < 4; i++) {
                weights[i] /= positive;
            }
            parts.add(new Extreme.Part(List.of(name.toString()), Weighted.sum(weights, depths)));
        }
    }

    private static double scale(List<Point> points) {
        double scale = 1;
        for (Point point : points) {
            scale = Math.max(scale, Math.max(Math.abs(point.xMm()), Math.abs(point.yMm())));
        }
        return scale;
    }
}
