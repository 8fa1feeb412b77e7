package quoin.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Brute force for what goes turned into four straight sides: a dense grid of angles, and at each angle all corners of the
 * linear programme. Plain numbers; shares no code with the library.
 */
final class TurnedShapes {
    private final double[][] corners;

    /** The corners head-left, head-right, foot-right, foot-left. */
    TurnedShapes(double[]... corners) {
        this.corners = corners;
    }

    /** A condition c + x·place + y·place + s·size ≥ 0. */
    private record Row(double c, double x, double y, double s) {}

    /** The eight gaps of a frame with its head-left corner at (x, y) in its own axes. */
    private static double[] gaps(double[][] q, double x, double y, double w, double l) {
        return new double[] {
            x - across(q[0], q[3], y),
            x - across(q[0], q[3], y + l),
            across(q[1], q[2], y) - x - w,
            across(q[1], q[2], y + l) - x - w,
            y - down(q[0], q[1], x),
            y - down(q[0], q[1], x + w),
            down(q[3], q[2], x) - y - l,
            down(q[3], q[2], x + w) - y - l
        };
    }

    private static double across(double[] p, double[] q, double y) {
        return p[0] + (q[0] - p[0]) * (y - p[1]) / (q[1] - p[1]);
    }

    private static double down(double[] p, double[] q, double x) {
        return p[1] + (q[1] - p[1]) * (x - p[0]) / (q[0] - p[0]);
    }

    private double[][] seenFrom(double angle) {
        double[][] seen = new double[4][2];
        for (int i = 0; i < 4; i++) {
            seen[i][0] = Math.cos(angle) * corners[i][0] + Math.sin(angle) * corners[i][1];
            seen[i][1] = Math.cos(angle) * corners[i][1] - Math.sin(angle) * corners[i][0];
        }
        return seen;
    }

    /** The least gap of a frame at a place of the opening. */
    double gapAt(double w, double l, double x, double y, double angle) {
        double own = Math.cos(angle) * x + Math.sin(angle) * y;
        double other = Math.cos(angle) * y - Math.sin(angle) * x;
        double least = Double.POSITIVE_INFINITY;
        for (double gap : gaps(seenFrom(angle), own, other, w, l)) {
            least = Math.min(least, gap);
        }
        return least;
    }

    /** The conditions at an angle; what a unit of size takes is found by trying. */
    private List<Row> rows(double angle, double w, double l, double dw, double dl, double lost) {
        double[][] q = seenFrom(angle);
        double x = q[0][0];
        double y = q[0][1];
        double[] at = gaps(q, x, y, w, l);
        double[] right = gaps(q, x + 1, y, w, l);
        double[] lower = gaps(q, x, y + 1, w, l);
        double[] larger = gaps(q, x, y, w + dw, l + dl);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            rows.add(new Row(at[i], right[i] - at[i], lower[i] - at[i], larger[i] - at[i] - lost));
        }
        return rows;
    }

    /** The greatest size at any corner of the conditions that keeps all of them. */
    private static double greatest(List<Row> rows) {
        double best = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < 8; i++) {
            for (int j = i + 1; j < 8; j++) {
                for (int k = j + 1; k < 8; k++) {
                    best = Math.max(best, size(rows, rows.get(i), rows.get(j), rows.get(k), best));
                }
            }
        }
        return best;
    }

    private static double size(List<Row> rows, Row a, Row b, Row c, double best) {
        double det = det(a.x, a.y, a.s, b.x, b.y, b.s, c.x, c.y, c.s);
        if (Math.abs(det) < 1e-13) {
            return best;
        }
        double x = -det(a.c, a.y, a.s, b.c, b.y, b.s, c.c, c.y, c.s) / det;
        double y = -det(a.x, a.c, a.s, b.x, b.c, b.s, c.x, c.c, c.s) / det;
        double s = -det(a.x, a.y, a.c, b.x, b.y, b.c, c.x, c.y, c.c) / det;
        if (s <= best) {
            return best;
        }
        for (Row row : rows) {
            if (!(row.c + row.x * x + row.y * y + row.s * s >= -1e-8)) {
                return best;
            }
        }
        return s;
    }

    private static double det(
            double a, double b, double c, double d, double e, double f, double g, double h, double i) {
        return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
    }

    /** The largest least gap at one angle. */
    double clearance(double angle, double w, double l) {
        return greatest(rows(angle, w, l, 0, 0, 1));
    }

    /** The widest of that length at one angle. */
    double widest(double angle, double l) {
        return greatest(rows(angle, 0, l, 1, 0, 0));
    }

    /** The longest of a proportion at one angle. */
    double longest(double angle, double proportion) {
        return greatest(rows(angle, 0, 0, proportion, 1, 0));
    }

    private double longestOf(double angle, double w) {
        return greatest(rows(angle, w, 0, 0, 1, 0));
    }

    /** The largest area at one angle. */
    double area(double angle) {
        double widest = widest(angle, 1);
        return Math.exp(highest(1, widest, 1e-10, w -> Math.log(w) + Math.log(Math.max(1e-300, longestOf(angle, w)))));
    }

    /**
     * The best of all angles within a range: a grid, and a close look between any two angles of it where the lines from
     * either side cross higher than the best so far, less what the function may bend.
     */
    static double best(double within, int steps, double bend, DoubleUnaryOperator at) {
        double step = within / steps;
        double[] found = new double[2 * steps + 5];
        double best = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < found.length; i++) {
            found[i] = at.applyAsDouble((i - steps - 2) * step);
            best = i < 2 || i > 2 * steps + 2 ? best : Math.max(best, found[i]);
        }
        for (int i = 2; i < 2 * steps + 2; i++) {
            double rise = found[i] - found[i - 1];
            double fall = found[i + 1] - found[i + 2];
            double t = Math.min(1, Math.max(0, (found[i + 1] - found[i] + fall) / (rise + fall)));
            double high = rise + fall > 0 ? found[i] + rise * t : Math.max(found[i], found[i + 1]);
            if (high > best - bend * step * step) {
                best = Math.max(best, highest((i - steps - 2) * step, (i - steps - 1) * step, 1e-10, at));
            }
        }
        return best;
    }

    /** Golden section on a function with one hill. */
    private static double highest(double from, double to, double narrow, DoubleUnaryOperator height) {
        double g = (Math.sqrt(5) - 1) / 2;
        double a = from;
        double b = to;
        double p = b - g * (b - a);
        double q = a + g * (b - a);
        double fp = height.applyAsDouble(p);
        double fq = height.applyAsDouble(q);
        double best = Math.max(fp, fq);
        while (b - a > narrow) {
            if (fp > fq) {
                b = q;
                q = p;
                fq = fp;
                p = b - g * (b - a);
                fp = height.applyAsDouble(p);
                best = Math.max(best, fp);
            } else {
                a = p;
                p = q;
                fp = fq;
                q = a + g * (b - a);
                fq = height.applyAsDouble(q);
                best = Math.max(best, fq);
            }
        }
        return best;
    }
}
