package quoin.opening;

import java.util.ArrayList;
import java.util.List;
import quoin.measure.Uncertain;

/**
 * The gap between one place of an outline and the frame side that faces it, for a frame parallel to the head.
 *
 * <p>The frame is z = (left x, right x, head y, foot y). gap = constant + push · z, where one of the pushes is the slope
 * of the side and has its doubt too. Immutable and safe for use by many threads.
 *
 * @param name the figure it is, such as {@code gap.left@head-left}
 * @param plane the plane of the outline
 * @param side the side
 * @param atCorner whether it is at a corner of the frame, and so on the side prolonged
 * @param push the change of the gap for a move of each side of the frame
 * @param constant the gap for z = 0
 * @param slope the slope of the side with its doubt, with the sign it has in the push
 * @param slopeOf which of z it multiplies; -1 for none
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record SideGap(
        String name,
        Plane plane,
        Side side,
        boolean atCorner,
        double[] push,
        Uncertain constant,
        Uncertain slope,
        int slopeOf) {
    private static final int X0 = 0;
    private static final int X1 = 1;
    private static final int Y0 = 2;
    private static final int Y1 = 3;
    private static final double[] LOW = {-1, -1};

    /** The gap for a frame, with the doubt of the outline. */
    Uncertain at(double[] z) {
        return Uncertain.combine(value(z), new double[] {1, along(z)}, constant, slope);
    }

    /** How the gap follows its slope, for a frame. */
    double along(double[] z) {
        return slopeOf < 0 ? 0 : z[slopeOf];
    }

    double value(double[] z) {
        return constant.value() + push[0] * z[0] + push[1] * z[1] + push[2] * z[2] + push[3] * z[3];
    }

    /** All gaps of one outline: two at the frame's corners for each side, one at each touched point between. */
    static List<SideGap> of(Outline outline, Plane plane) {
        List<SideGap> gaps = new ArrayList<>();
        for (Side side : Side.values()) {
            List<Outline.Vertex> chain = outline.side(side);
            int last = chain.size() - 1;
            if (last < 1) {
                continue;
            }
            Uncertain slope = slope(side, chain.get(0), chain.get(1));
            gaps.add(onLine(side, side.from(), chain.get(0), slope, plane));
            for (int i = 1; i < last; i++) {
                gaps.add(atPoint(side, chain.get(i), plane));
            }
            Uncertain other = last == 1 ? slope : slope(side, chain.get(last), chain.get(last - 1));
            gaps.add(onLine(side, side.to(), chain.get(last), other, plane));
        }
        return gaps;
    }

    /** How fast the gap grows along the side; the same from either end. */
    private static Uncertain slope(Side side, Outline.Vertex a, Outline.Vertex b) {
        Uncertain dx = b.x().minus(a.x());
        Uncertain dy = b.y().minus(a.y());
        return switch (side) {
            case LEFT -> dx.dividedBy(dy).negated();
            case RIGHT -> dx.dividedBy(dy);
            case HEAD -> dy.dividedBy(dx).negated();
            case FOOT -> dy.dividedBy(dx);
        };
    }

    private static SideGap onLine(Side side, Corner corner, Outline.Vertex on, Uncertain slope, Plane plane) {
        boolean upright = side == Side.LEFT || side == Side.RIGHT;
        boolean low = side == Side.LEFT || side == Side.HEAD;
        Uncertain across = upright ? on.x() : on.y();
        Uncertain rise = slope.times(upright ? on.y() : on.x());
        Uncertain line =
                low ? Uncertain.combine(-across.value() - rise.value(), LOW, across, rise) : across.minus(rise);
        double[] push = push(side);
        int slopeOf = upright ? (corner.isHead() ? Y0 : Y1) : (corner.isLeft() ? X0 : X1);
        push[slopeOf] += slope.value();
        return new SideGap(side.gapAt(corner).concat(suffix(plane)), plane, side, true, push, line, slope, slopeOf);
    }

    private static SideGap atPoint(Side side, Outline.Vertex point, Plane plane) {
        boolean upright = side == Side.LEFT || side == Side.RIGHT;
        boolean low = side == Side.LEFT || side == Side.HEAD;
        Uncertain across = upright ? point.x() : point.y();
        String name = "gap." + side.text() + "@" + point.at() + suffix(plane);
        return new SideGap(
                name, plane, side, false, push(side), low ? across.negated() : across, Uncertain.exact(0), -1);
    }

    private static String suffix(Plane plane) {
        return plane == Plane.BACK ? "/back" : "";
    }

    private static double[] push(Side side) {
        double[] push = new double[4];
        switch (side) {
            case LEFT -> push[X0] = 1;
            case RIGHT -> push[X1] = -1;
            case HEAD -> push[Y0] = 1;
            case FOOT -> push[Y1] = -1;
        }
        return push;
    }
}
