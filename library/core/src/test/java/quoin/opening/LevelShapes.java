package quoin.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Brute force for what goes level into an outline: nested searches over places and sizes, on the points of the outline
 * alone. Shares no code with the library.
 */
final class LevelShapes {
    private static final double WORST = -1e9;

    /** One condition: along a line, or at a point where slope is 0 and the place does not count. */
    private record Line(double at, double slope, boolean near, boolean far) {
        double on(double along) {
            return at + slope * along;
        }
    }

    private final List<Line> left = new ArrayList<>();
    private final List<Line> right = new ArrayList<>();
    private final List<Line> head = new ArrayList<>();
    private final List<Line> foot = new ArrayList<>();
    private final double[] box = {0, 0, 0, 0};

    LevelShapes(Opening opening) {
        for (Outline outline : opening.outlines()) {
            add(outline, Side.LEFT, left);
            add(outline, Side.RIGHT, right);
            add(outline, Side.HEAD, head);
            add(outline, Side.FOOT, foot);
        }
        for (Corner corner : Corner.values()) {
            double x = opening.corner(corner).get(0).value();
            double y = opening.corner(corner).get(1).value();
            box[0] = Math.min(box[0], x);
            box[1] = Math.max(box[1], x);
            box[2] = Math.min(box[2], y);
            box[3] = Math.max(box[3], y);
        }
    }

    private static void add(Outline outline, Side side, List<Line> lines) {
        boolean upright = side == Side.LEFT || side == Side.RIGHT;
        List<double[]> points = new ArrayList<>();
        for (Outline.Vertex v : outline.side(side)) {
            double x = v.x().value();
            double y = v.y().value();
            points.add(upright ? new double[] {y, x} : new double[] {x, y});
        }
        int last = points.size() - 1;
        lines.add(through(points.get(0), points.get(1), true));
        lines.add(through(points.get(last), points.get(last - 1), false));
        for (int i = 1; i < last; i++) {
            lines.add(new Line(points.get(i)[1], 0, true, true));
        }
    }

    private static Line through(double[] p, double[] q, boolean near) {
        double slope = (q[1] - p[1]) / (q[0] - p[0]);
        return new Line(p[1] - slope * p[0], slope, near, !near);
    }

    /** The largest of all lines where the frame runs from near to far. */
    private static double greatest(List<Line> lines, double near, double far) {
        double most = Double.NEGATIVE_INFINITY;
        for (Line line : lines) {
            most = line.near ? Math.max(most, line.on(near)) : most;
            most = line.far ? Math.max(most, line.on(far)) : most;
        }
        return most;
    }

    private static double least(List<Line> lines, double near, double far) {
        double least = Double.POSITIVE_INFINITY;
        for (Line line : lines) {
            least = line.near ? Math.min(least, line.on(near)) : least;
            least = line.far ? Math.min(least, line.on(far)) : least;
        }
        return least;
    }

    /** The least gap of a frame of that size with its head-left corner there. */
    double gap(double w, double l, double x, double y) {
        double across = Math.min(x - greatest(left, y, y + l), least(right, y, y + l) - x - w);
        double along = Math.min(y - greatest(head, x, x + w), least(foot, x, x + w) - y - l);
        return Math.min(across, along);
    }

    /** The largest least gap of any placement. */
    double leastGap(double w, double l) {
        double reach = 400;
        double cx = (box[0] + box[1] - w) / 2;
        double cy = (box[2] + box[3] - l) / 2;
        return highest(cx - reach, cx + reach, x -> highest(cy - reach, cy + reach, y -> gap(w, l, x, y)));
    }

    /** The largest area of any level rectangle. */
    double largestArea() {
        double mx = (box[0] + box[1]) / 2;
        return Math.exp(highest(box[0], mx, x0 -> highest(mx, box[1], x1 -> logArea(x0, x1))));
    }

    /** For those two uprights: how high, or by how much not at all. */
    private double logArea(double x0, double x1) {
        double[] near = {greatest(head, x0, x1), Double.POSITIVE_INFINITY};
        double[] far = {Double.NEGATIVE_INFINITY, least(foot, x0, x1)};
        double out = 0;
        for (Line line : left) {
            out = Math.max(out, keep(line, x0, 1, near, far));
        }
        for (Line line : right) {
            out = Math.max(out, keep(line, x1, -1, near, far));
        }
        out = Math.max(out, Math.max(near[0] - near[1], far[0] - far[1]));
        double length = far[1] - near[0];
        out = Math.max(out, 1 - length);
        return out > 0 ? WORST - out : Math.log(x1 - x0) + Math.log(length);
    }

    /** Narrows where head and foot of the rectangle may be so that sign * (x - line) stays at 0 or more. */
    private static double keep(Line line, double x, int sign, double[] near, double[] far) {
        double slope = sign * line.slope;
        double room = sign * (x - line.at);
        if (Math.abs(slope) < 1e-13) {
            return -room;
        }
        double bound = room / slope;
        for (double[] range : new double[][] {line.near ? near : null, line.far ? far : null}) {
            if (range != null) {
                range[0] = slope < 0 ? Math.max(range[0], bound) : range[0];
                range[1] = slope > 0 ? Math.min(range[1], bound) : range[1];
            }
        }
        return 0;
    }

    /** Golden section on a function with one hill. */
    private static double highest(double from, double to, DoubleUnaryOperator height) {
        double g = (Math.sqrt(5) - 1) / 2;
        double a = from;
        double b = to;
        double p = b - g * (b - a);
        double q = a + g * (b - a);
        double fp = height.applyAsDouble(p);
        double fq = height.applyAsDouble(q);
        double best = Math.max(fp, fq);
        while (b - a > 1e-7) {
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
