package quoin.opening;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quoin.measure.Uncertain;

/** What true rectangle goes in, held parallel to a side or turned freely. */
public final class Fit {
    /** In mm: how much better the true best angle may be. */
    private static final double CLOSE = 1e-9;

    private static final int MOST_ROUNDS = 50;

    private Fit() {}

    /**
     * A rectangle with its place. Lengths in mm. Immutable and safe for use by many threads.
     *
     * @param width its size along its own head
     * @param length its size from its head to its foot
     * @param x its head-left corner, along the opening's head from head-left
     * @param y its head-left corner, towards the foot
     * @param turnedRad how far it is turned from the opening's head; positive when its right end is nearer the foot
     */
    public record Rectangle(Uncertain width, Uncertain length, double x, double y, double turnedRad) {}

    /**
     * Where a given rectangle goes best. Immutable and safe for use by many threads.
     *
     * @param clearanceMm the least gap all round in mm; negative where it does not go in
     * @param x its head-left corner in mm, along the opening's head from head-left
     * @param y its head-left corner in mm, towards the foot
     * @param turnedRad how far it is turned from the opening's head; positive when its right end is nearer the foot
     */
    public record Placement(double clearanceMm, double x, double y, double turnedRad) {
        /** {@return whether it goes in} */
        public boolean goesIn() {
            return clearanceMm >= 0;
        }
    }

    /**
     * Whether a given rectangle goes in, and where with the largest clearance all round.
     *
     * @param opening the opening
     * @param held how it lies
     * @param widthMm its width in mm
     * @param lengthMm its length in mm
     * @return its best placement, or empty where there is no shape
     * @throws IllegalArgumentException if a size is not above 0 mm
     * @formula max over place and angle of the least gap; at each angle a linear programme; sides are prolonged past the
     *     corners; touched points count as facing the frame; gaps along the frame's normals
     * @unit mm
     * @edge no shape: empty; a rectangle that does not go in: the clearance is negative
     * @source handbook: containment of a rectangle as linear programmes at fixed angles, searched over the angle
     */
    public static Optional<Placement> place(Opening opening, Held held, double widthMm, double lengthMm) {
        requireSize("width", widthMm);
        requireSize("length", lengthMm);
        if (!opening.hasShape()) {
            return Optional.empty();
        }
        Contacts contacts = Contacts.of(opening.outlines());
        Squeeze.@Nullable Tight best = best(contacts, held, opening, Squeeze.clearance(contacts, widthMm, lengthMm));
        if (best == null) {
            return Optional.empty();
        }
        double[] corner = corner(contacts, best, widthMm, lengthMm);
        return Optional.of(new Placement(best.value(), corner[0], corner[1], best.angle()));
    }

    private static void requireSize(String name, double mm) {
        if (!(mm > 0) || !Double.isFinite(mm)) {
            throw new IllegalArgumentException(name + " must be above 0 mm, got " + mm + " mm");
        }
    }

    private static double[] corner(Contacts contacts, Squeeze.Tight best, double width, double length) {
        contacts.turnTo(best.angle());
        return contacts.inOpening(best.x() - width / 2, best.y() - length / 2);
    }

    /** The best there is at the angles that a way of holding allows. */
    static Squeeze.@Nullable Tight best(Contacts contacts, Held held, Opening opening, Squeeze squeeze) {
        if (!held.isFree()) {
            return squeeze.at(angle(opening.front(), held.side()).value());
        }
        double within = held.withinRad();
        return AngleSearch.best(within, contacts.parallels(within), CLOSE, squeeze::at);
    }

    /** How far a frame that is parallel to a side is turned from the head. */
    static Uncertain angle(Outline front, Side side) {
        if (side == Side.HEAD) {
            return Uncertain.exact(0);
        }
        Outline.Vertex from = front.corner(side.from());
        Outline.Vertex to = front.corner(side.to());
        Uncertain dx = to.x().minus(from.x());
        Uncertain dy = to.y().minus(from.y());
        return side == Side.FOOT ? Uncertain.atan2(dy, dx) : Uncertain.atan2(dx.negated(), dy);
    }

    /**
     * The rectangle of largest area that goes through every plane that was read, parallel to the head: the most central
     * among equals.
     *
     * @param opening the opening
     * @return the rectangle, or empty where there is no shape or not even a small one goes in
     * @formula max w·l such that no point of an outline lies inside; sides are prolonged past the corners; touched
     *     points count as facing the frame
     * @unit mm
     * @edge no shape: empty; where several gaps hold a side alike, the doubt is that of their mean
     * @source standard: linear constraints and a concave aim have one optimum (convex optimisation)
     */
    public static Optional<Rectangle> largest(Opening opening) {
        return largest(opening, Held.TO_HEAD);
    }

    /**
     * The rectangle of largest area that goes through every plane that was read: the most central among equals.
     *
     * @param opening the opening
     * @param held how it lies
     * @return the rectangle, or empty where there is no shape or not even a small one goes in
     * @formula max w·l such that no point of an outline lies inside; at each angle a concave programme; sides are prolonged
     *     past the corners; touched points count as facing the frame
     * @unit mm
     * @edge no shape: empty; where several gaps hold a side alike, the doubt is that of their mean, while the truth is their
     *     least: smaller by up to 1.3 of that doubt in the mean, and spread by up to a quarter more; how the area curves with the
     *     angle is left out of the doubt, at most 2 per cent of it
     * @source standard: linear constraints and a concave aim have one optimum at each angle (convex optimisation)
     */
    public static Optional<Rectangle> largest(Opening opening, Held held) {
        return opening.hasShape()
                ? Optional.ofNullable(new LargestTurned(opening, held).rectangle())
                : Optional.empty();
    }

    /**
     * The widest rectangle of a given length that goes in.
     *
     * @param opening the opening
     * @param held how it lies
     * @param lengthMm its length in mm
     * @return the rectangle, or empty where there is no shape or that length does not go in
     * @throws IllegalArgumentException if the length is not above 0 mm
     * @formula max w such that no point of an outline lies inside a rectangle w by that length
     * @unit mm
     * @edge no shape, or too long for any width: empty; the doubt is that of the gaps that hold it
     * @source handbook: linear programmes at fixed angles, searched over the angle
     */
    public static Optional<Rectangle> widest(Opening opening, Held held, double lengthMm) {
        requireSize("length", lengthMm);
        return grown(opening, held, new double[] {0, lengthMm}, new double[] {1, 0});
    }

    /**
     * The largest rectangle of a given proportion that goes in.
     *
     * @param opening the opening
     * @param held how it lies
     * @param proportion its width divided by its length
     * @return the rectangle, or empty where there is no shape or nothing of that proportion goes in
     * @throws IllegalArgumentException if the proportion is not above 0
     * @formula max l such that no point of an outline lies inside a rectangle proportion·l by l
     * @unit mm
     * @edge no shape: empty; the doubt is that of the gaps that hold it
     * @source handbook: linear programmes at fixed angles, searched over the angle
     */
    public static Optional<Rectangle> ofProportion(Opening opening, Held held, double proportion) {
        if (!(proportion > 0) || !Double.isFinite(proportion)) {
            throw new IllegalArgumentException("proportion must be above 0, got " + proportion);
        }
        return grown(opening, held, new double[] {0, 0}, new double[] {proportion, 1});
    }

    private static Optional<Rectangle> grown(Opening opening, Held held, double[] start, double[] grow) {
        if (!opening.hasShape()) {
            return Optional.empty();
        }
        Contacts contacts = Contacts.of(opening.outlines());
        Squeeze.@Nullable Tight best = grown(contacts, held, opening, start, grow);
        if (best == null || !(best.value() > 0)) {
            return Optional.empty();
        }
        double width = start[0] + best.value() * grow[0];
        double length = start[1] + best.value() * grow[1];
        double[] corner = corner(contacts, best, width, length);
        Uncertain times = doubt(
                Gaps.at(opening, contacts, held, Uncertain.exact(width), Uncertain.exact(length), best.angle()),
                best,
                grow);
        return Optional.of(new Rectangle(
                times.times(grow[0]).plus(start[0]),
                times.times(grow[1]).plus(start[1]),
                corner[0],
                corner[1],
                best.angle()));
    }

    /**
     * The largest growth at any angle: grown as far as it goes at one angle, the rectangle is turned to where its clearance
     * is largest, and grown again, until it has none.
     */
    private static Squeeze.@Nullable Tight grown(
            Contacts contacts, Held held, Opening opening, double[] start, double[] grow) {
        Squeeze growth = Squeeze.growth(contacts, start[0], start[1], grow[0], grow[1]);
        double times = 0;
        Squeeze.@Nullable Tight best = null;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Squeeze clearance = Squeeze.clearance(contacts, start[0] + times * grow[0], start[1] + times * grow[1]);
            Squeeze.@Nullable Tight loosest = best(contacts, held, opening, clearance);
            if (loosest == null || !(loosest.value() > CLOSE)) {
                break;
            }
            Squeeze.@Nullable Tight next = growth.at(loosest.angle());
            if (next == null || !(next.value() > times)) {
                break;
            }
            best = next;
            times = next.value();
        }
        return best;
    }

    /** What holds the rectangle where its gaps are nought, over what growing by one takes from that. */
    private static Uncertain doubt(Gaps gaps, Squeeze.Tight best, double[] grow) {
        Gaps.Tightest tightest = gaps.tightest(grow);
        return Uncertain.combine(best.value(), new double[] {1 / tightest.lost()}, tightest.sum());
    }
}
