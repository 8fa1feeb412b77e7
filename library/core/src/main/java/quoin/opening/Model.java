package quoin.opening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The unknowns of one outline and the equations that tie readings to them.
 *
 * <p>Unknowns: x of head-right; x and y of foot-right; x and y of foot-left; then one offset for each touched point,
 * positive into the opening. Head-left is the origin and head-right lies on the x axis. Immutable and safe for use by
 * many threads.
 */
final class Model {
    private static final int CORNERS = 5;
    private static final Model STRAIGHT = new Model(List.of());
    private static final double[] NO_MEANS = {};
    private static final double[] ALONG_HEAD = join(Corner.HEAD_LEFT, Corner.HEAD_RIGHT);
    private static final double[] ALONG_RIGHT = join(Corner.HEAD_RIGHT, Corner.FOOT_RIGHT);
    private static final double[] ALONG_FOOT = join(Corner.FOOT_LEFT, Corner.FOOT_RIGHT);
    private static final double[] ALONG_LEFT = join(Corner.HEAD_LEFT, Corner.FOOT_LEFT);
    private static final double[] FROM_HEAD_LEFT = join(Corner.HEAD_LEFT, Corner.FOOT_RIGHT);
    private static final double[] FROM_HEAD_RIGHT = join(Corner.HEAD_RIGHT, Corner.FOOT_LEFT);

    private final List<TouchedPoint> touched;
    private final int size;

    private Model(List<TouchedPoint> touched) {
        this.touched = List.copyOf(touched);
        this.size = CORNERS + touched.size();
    }

    /** The model for what a survey read of a plane; without offsets where sides are taken as straight. */
    static Model of(Survey survey, Plane plane) {
        return survey.straightWithinMm() > 0 ? of(survey.outline(plane), true) : STRAIGHT;
    }

    /** The model for those readings; without offsets where sides are taken as straight. */
    static Model of(List<Reading> readings, boolean sidesMayBulge) {
        if (!sidesMayBulge) {
            return STRAIGHT;
        }
        List<TouchedPoint> points = new ArrayList<>();
        for (Reading reading : readings) {
            for (TouchedPoint point : touchedBy(reading.of())) {
                if (points.stream().noneMatch(point::samePlaceAs)) {
                    points.add(point);
                }
            }
        }
        for (Side side : Side.values()) {
            if (points.stream().noneMatch(point -> point.side() == side)) {
                points.add(new TouchedPoint(side, new At(0.5, Double.NaN, "1/2"), false, false));
            }
        }
        points.sort(Comparator.comparing(TouchedPoint::side).thenComparingDouble(p -> p.on(2000)));
        return new Model(points);
    }

    /** Whether a place is a distance, which may be longer than its side. */
    static boolean isAtDistance(Span span) {
        return span instanceof Span.Check
                || (span instanceof Span.Across across
                        && !Double.isNaN(across.at().mm()))
                || (span instanceof Span.Cross cross && !Double.isNaN(cross.at().mm()))
                || (span instanceof Span.Bow bow && !Double.isNaN(bow.at().mm()));
    }

    static List<TouchedPoint> touchedBy(Span span) {
        if (span instanceof Span.Across across) {
            return List.of(
                    new TouchedPoint(across.start(), across.at(), false, true),
                    new TouchedPoint(across.end(), across.at(), false, true));
        }
        if (span instanceof Span.Cross cross) {
            return List.of(new TouchedPoint(cross.side(), cross.at(), false, true));
        }
        if (span instanceof Span.Bow bow) {
            return List.of(new TouchedPoint(bow.side(), bow.at(), false, true));
        }
        if (span instanceof Span.Check check) {
            Side width = check.corner().isHead() ? Side.HEAD : Side.FOOT;
            Side length = check.corner().isLeft() ? Side.LEFT : Side.RIGHT;
            return List.of(
                    new TouchedPoint(width, check.alongWidth(), width.to() == check.corner(), true),
                    new TouchedPoint(length, check.alongLength(), length.to() == check.corner(), true));
        }
        return List.of();
    }

    int size() {
        return size;
    }

    List<TouchedPoint> touched() {
        return touched;
    }

    int offsetIndex(TouchedPoint point) {
        for (int i = 0; i < touched.size(); i++) {
            if (touched.get(i).samePlaceAs(point)) {
                return CORNERS + i;
            }
        }
        return -1;
    }

    /** A rectangle of that size with straight sides. */
    double[] rectangle(double width, double length) {
        double[] x = new double[size];
        x[0] = width;
        x[1] = width;
        x[2] = length;
        x[4] = length;
        return x;
    }

    /** A point with the derivatives of its coordinates by the unknowns. */
    static final class Point {
        final double[] dx;
        final double[] dy;
        double x;
        double y;

        Point(int size) {
            dx = new double[size];
            dy = new double[size];
        }
    }

    Point corner(Corner corner, double[] unknown) {
        Point p = new Point(size);
        int ix = switch (corner) {
            case HEAD_LEFT -> -1;
            case HEAD_RIGHT -> 0;
            case FOOT_RIGHT -> 1;
            case FOOT_LEFT -> 3;
        };
        if (ix >= 0) {
            p.x = unknown[ix];
            p.dx[ix] = 1;
        }
        if (ix > 0) {
            p.y = unknown[ix + 1];
            p.dy[ix + 1] = 1;
        }
        return p;
    }

    /** A touched point: along the chord of its side, then off it into the opening. */
    Point point(TouchedPoint touched, double[] unknown) {
        Side side = touched.side();
        Point a = corner(side.from(), unknown);
        Point b = corner(side.to(), unknown);
        double ex = b.x - a.x;
        double ey = b.y - a.y;
        double length = StrictMath.hypot(ex, ey);
        double t = touched.on(length);
        boolean byDistance = !Double.isNaN(touched.at().mm());
        int offset = offsetIndex(touched);
        double o = offset < 0 ? 0 : unknown[offset];
        double sign = inward(side);
        double nx = -sign * ey / length;
        double ny = sign * ex / length;
        Point p = new Point(size);
        p.x = a.x + t * ex + o * nx;
        p.y = a.y + t * ey + o * ny;
        for (int k = 0; k < size; k++) {
            double dex = b.dx[k] - a.dx[k];
            double dey = b.dy[k] - a.dy[k];
            double dLength = (ex * dex + ey * dey) / length;
            double dt = byDistance ? distanceSlope(touched, length) * dLength : 0;
            double dnx = -sign * (dey / length - ey * dLength / (length * length));
            double dny = sign * (dex / length - ex * dLength / (length * length));
            p.dx[k] = a.dx[k] + t * dex + dt * ex + o * dnx;
            p.dy[k] = a.dy[k] + t * dey + dt * ey + o * dny;
        }
        if (offset >= 0) {
            p.dx[offset] += nx;
            p.dy[offset] += ny;
        }
        return p;
    }

    private static double distanceSlope(TouchedPoint touched, double length) {
        double slope = -touched.at().mm() / (length * length);
        return touched.fromEnd() ? -slope : slope;
    }

    /** +1 where turning the chord from x towards y points into the opening, -1 where it points out. */
    private static double inward(Side side) {
        return side == Side.HEAD || side == Side.RIGHT ? 1 : -1;
    }

    /** What a span should read for those unknowns; its derivatives go into {@code row}. */
    double observe(Span span, double[] unknown, double[] row) {
        if (span instanceof Span.Edge edge) {
            return between(edge.side().from(), edge.side().to(), unknown, row);
        }
        if (span instanceof Span.Diagonal diagonal) {
            return between(diagonal.from(), diagonal.from().opposite(), unknown, row);
        }
        if (span instanceof Span.Cross cross) {
            return distance(corner(cross.from(), unknown), point(touchedBy(span).get(0), unknown), row);
        }
        if (span instanceof Span.Angle angle) {
            return angle(angle.corner(), unknown, row);
        }
        if (span instanceof Span.Bow) {
            return bow(touchedBy(span).get(0), unknown, row);
        }
        List<TouchedPoint> two = touchedBy(span);
        return distance(point(two.get(0), unknown), point(two.get(1), unknown), row);
    }

    /**
     * The weights of head-right, foot-right and foot-left in the vector between the two points that a span joins.
     *
     * @return the weights, not to be written to; empty where the points are no means of corners, whatever the unknowns are
     */
    double[] means(Span span) {
        if (span instanceof Span.Edge edge) {
            return along(edge.side());
        }
        if (span instanceof Span.Diagonal diagonal) {
            return diagonal.from().isLeft() ? FROM_HEAD_LEFT : FROM_HEAD_RIGHT;
        }
        if (!touched.isEmpty() || isAtDistance(span)) {
            return NO_MEANS;
        }
        if (span instanceof Span.Across across) {
            return across.means();
        }
        if (span instanceof Span.Cross cross) {
            double[] weights = join(cross.from(), cross.side().from());
            add(weights, cross.side().from(), -cross.at().fraction());
            add(weights, cross.side().to(), cross.at().fraction());
            return weights;
        }
        return NO_MEANS;
    }

    /** The weights of head-right, foot-right and foot-left in the vector along a side; not to be written to. */
    static double[] along(Side side) {
        return switch (side) {
            case HEAD -> ALONG_HEAD;
            case RIGHT -> ALONG_RIGHT;
            case FOOT -> ALONG_FOOT;
            case LEFT -> ALONG_LEFT;
        };
    }

    private static double[] join(Corner from, Corner to) {
        double[] weights = new double[3];
        add(weights, to, 1);
        add(weights, from, -1);
        return weights;
    }

    private static void add(double[] weights, Corner corner, double weight) {
        switch (corner) {
            case HEAD_LEFT -> {}
            case HEAD_RIGHT -> weights[0] += weight;
            case FOOT_RIGHT -> weights[1] += weight;
            case FOOT_LEFT -> weights[2] += weight;
        }
    }

    private static double x(Corner corner, double[] unknown) {
        return switch (corner) {
            case HEAD_LEFT -> 0;
            case HEAD_RIGHT -> unknown[0];
            case FOOT_RIGHT -> unknown[1];
            case FOOT_LEFT -> unknown[3];
        };
    }

    private static double y(Corner corner, double[] unknown) {
        return switch (corner) {
            case HEAD_LEFT, HEAD_RIGHT -> 0;
            case FOOT_RIGHT -> unknown[2];
            case FOOT_LEFT -> unknown[4];
        };
    }

    /** From corner to corner, without points: most readings are of this kind. */
    static double between(Corner p, Corner q, double[] unknown, double[] row) {
        double ex = x(q, unknown) - x(p, unknown);
        double ey = y(q, unknown) - y(p, unknown);
        double d = Math.sqrt(ex * ex + ey * ey);
        Arrays.fill(row, 0);
        follow(row, q, ex / d, ey / d);
        follow(row, p, -ex / d, -ey / d);
        return d;
    }

    private static void follow(double[] row, Corner corner, double byX, double byY) {
        switch (corner) {
            case HEAD_LEFT -> {}
            case HEAD_RIGHT -> row[0] = byX;
            case FOOT_RIGHT -> {
                row[1] = byX;
                row[2] = byY;
            }
            case FOOT_LEFT -> {
                row[3] = byX;
                row[4] = byY;
            }
        }
    }

    /** The least sine of an angle inside a corner. */
    static double leastSine(double[] x) {
        double head = x[0];
        double rightX = x[1] - x[0];
        double rightY = x[2];
        double footX = x[3] - x[1];
        double footY = x[4] - x[2];
        double leftX = -x[3];
        double leftY = -x[4];
        double right = Math.sqrt(rightX * rightX + rightY * rightY);
        double foot = Math.sqrt(footX * footX + footY * footY);
        double left = Math.sqrt(leftX * leftX + leftY * leftY);
        double atHead = Math.min(-head * leftY / left, head * rightY / right) / Math.abs(head);
        double atFootRight = (rightX * footY - rightY * footX) / (right * foot);
        double atFootLeft = (footX * leftY - footY * leftX) / (foot * left);
        return Math.min(atHead, Math.min(atFootRight, atFootLeft));
    }

    private double bow(TouchedPoint point, double[] unknown, double[] row) {
        Arrays.fill(row, 0);
        int offset = offsetIndex(point);
        if (offset < 0) {
            return 0;
        }
        row[offset] = 1;
        return unknown[offset];
    }

    static double distance(Point p, Point q, double[] row) {
        double ex = q.x - p.x;
        double ey = q.y - p.y;
        double d = StrictMath.hypot(ex, ey);
        for (int k = 0; k < row.length; k++) {
            row[k] = (ex * (q.dx[k] - p.dx[k]) + ey * (q.dy[k] - p.dy[k])) / d;
        }
        return d;
    }

    /** The angle inside a corner, between its two chords. */
    double angle(Corner corner, double[] unknown, double[] row) {
        double px = x(corner.next(), unknown) - x(corner, unknown);
        double py = y(corner.next(), unknown) - y(corner, unknown);
        double qx = x(corner.previous(), unknown) - x(corner, unknown);
        double qy = y(corner.previous(), unknown) - y(corner, unknown);
        turns(corner, unknown, row);
        return StrictMath.atan2(px * qy - py * qx, px * qx + py * qy);
    }

    /** How the angle inside a corner follows the unknowns. */
    static void turns(Corner corner, double[] unknown, double[] row) {
        double px = x(corner.next(), unknown) - x(corner, unknown);
        double py = y(corner.next(), unknown) - y(corner, unknown);
        double qx = x(corner.previous(), unknown) - x(corner, unknown);
        double qy = y(corner.previous(), unknown) - y(corner, unknown);
        double pp = px * px + py * py;
        double qq = qx * qx + qy * qy;
        Arrays.fill(row, 0);
        follow(row, corner.previous(), -qy / qq, qx / qq);
        follow(row, corner.next(), py / pp, -px / pp);
        follow(row, corner, qy / qq - py / pp, px / pp - qx / qq);
    }
}
