package quoin.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import quoin.judge.Catalogue;
import quoin.judge.Figure;
import quoin.judge.Source;
import quoin.measure.Dimension;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;

/**
 * Whether there is a way in: the longest box that passes the lips of a recess, lifted straight or one end first.
 *
 * <p>Seen along the box: a recess of a clear length behind two lips and a depth from the lips to its back, and a box of some
 * thickness. Lifted straight the box must pass between both lips. One end first, it is pushed fully under one lip and then
 * swings past the other. Immutable and safe for use by many threads.
 *
 * @param longest the longest box, in mm: a least whose parts are what limits it
 * @param tiltRad the steepest angle at which the box is held against the recess on its way, in rad; 0 where it is lifted straight
 * @param first which end goes in first; {@code NEITHER} where it is lifted straight
 */
public record WayIn(Extreme longest, double tiltRad, First first) {
    private static final Source SOURCE =
            Source.of(Source.Kind.ASSUMPTION, "plane geometry of a bar and two lips, derived here");
    private static final int HALVINGS = 200;

    /** The figure that this class computes. */
    public static final Catalogue CATALOGUE = Catalogue.of(List.of(Figure.order(
            "wayin.longest",
            Dimension.LENGTH,
            "longest box that goes in past the lips, straight or one end first",
            SOURCE)));

    /** Which end goes in first. */
    public enum First {
        /** The box is lifted straight. */
        NEITHER,
        /** Its left end. */
        LEFT,
        /** Its right end. */
        RIGHT
    }

    /** Checks that nothing is missing. */
    public WayIn {
        Objects.requireNonNull(longest, "longest");
        Objects.requireNonNull(first, "first");
    }

    /**
     * A recess, seen along the box.
     *
     * @param length its clear length behind the lips, in mm, above 0
     * @param depth from the face of the lips to its back, in mm, 0 or more
     * @param leftLip how far a lip stands out at the left end, in mm, 0 or more
     * @param rightLip how far a lip stands out at the right end, in mm, 0 or more
     */
    public record Recess(Uncertain length, Uncertain depth, Uncertain leftLip, Uncertain rightLip) {
        /** Refuses what is no recess. */
        public Recess {
            if (!(length.value() > 0)) {
                throw new IllegalArgumentException("length must be above 0 mm, got " + length.value() + " mm");
            }
            requireAtLeastZero("depth", depth);
            requireAtLeastZero("left lip", leftLip);
            requireAtLeastZero("right lip", rightLip);
        }
    }

    /**
     * The longest box of a thickness that goes in.
     *
     * @param recess the recess
     * @param thickness how thick the box is, square to its length and to the recess, in mm, above 0
     * @param playMm how much longer than the box the place must be to let it be fixed, in mm, 0 or more
     * @return the longest box and how it goes in; the straight way where it is as long
     * @formula straight: W &minus; c&#8321; &minus; c&#8322;; one end first: the L with L&sup2; = (W &minus; c &minus; D R / L)&sup2; + R&sup2;, c the lip passed last, provided that D &le; R and,
     *     at sin &theta; = R / L, R cos &theta; &minus; (c&#8321; &minus; D sin &theta;) sin &theta; &ge; D under the first lip; never more than W &minus; play
     * @unit mm, rad
     * @edge the whole W &minus; play where there is no lip; a box thicker than the recess is deep goes in straight only
     * @source assumption: plane geometry of a bar and two lips, derived here, held against a search over all places and angles
     * @throws IllegalArgumentException if the thickness is not above 0 or the play below 0
     */
    public static WayIn of(Recess recess, Uncertain thickness, double playMm) {
        if (!(thickness.value() > 0)) {
            throw new IllegalArgumentException("thickness must be above 0 mm, got " + thickness.value() + " mm");
        }
        if (!(playMm >= 0 && playMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("play must be 0 mm or more and finite, got " + playMm + " mm");
        }
        Uncertain room = recess.length().minus(playMm);
        WayIn best =
                way(room, "lips", recess.length().minus(recess.leftLip()).minus(recess.rightLip()), 0, First.NEITHER);
        if (thickness.value() <= recess.depth().value()) {
            best = better(best, tilted(recess, thickness, room, First.LEFT));
            best = better(best, tilted(recess, thickness, room, First.RIGHT));
        }
        return best;
    }

    /**
     * The same for a box that goes in as two parts put together inside: each must pass on its own.
     *
     * @param recess the recess
     * @param thickness how thick the box is, in mm, above 0
     * @param playMm how much longer than the box the place must be, in mm, 0 or more
     * @param share how much of the box the longer part is, from 0.5 to 1
     * @return the longest box, its longer part going in alone
     * @formula min(longest / share, W &minus; play)
     * @unit mm
     * @edge that of one part at a share of 1
     * @source assumption: the second part goes in where the first leaves room for it
     * @throws IllegalArgumentException if a number is out of range
     */
    public static WayIn inTwoParts(Recess recess, Uncertain thickness, double playMm, double share) {
        if (!(share >= 0.5 && share <= 1)) {
            throw new IllegalArgumentException("share must be from 0.5 to 1, got " + share);
        }
        WayIn one = of(recess, thickness, 0);
        List<Extreme.Part> parts = new ArrayList<>();
        for (Extreme.Part part : one.longest().parts()) {
            parts.add(new Extreme.Part(part.names(), part.value().times(1 / share)));
        }
        parts.add(new Extreme.Part(List.of("room"), recess.length().minus(playMm)));
        return new WayIn(Extreme.least(parts), one.tiltRad(), one.first());
    }

    private static WayIn better(WayIn one, WayIn other) {
        return other.longest().value() > one.longest().value() ? other : one;
    }

    private static WayIn way(Uncertain room, String limit, Uncertain length, double tilt, First first) {
        List<Extreme.Part> parts =
                List.of(new Extreme.Part(List.of("room"), room), new Extreme.Part(List.of(limit), length));
        return new WayIn(Extreme.least(parts), tilt, first);
    }

    private static WayIn tilted(Recess recess, Uncertain thickness, Uncertain room, First first) {
        Uncertain under = first == First.LEFT ? recess.leftLip() : recess.rightLip();
        Uncertain past = first == First.LEFT ? recess.rightLip() : recess.leftLip();
        double r = recess.depth().value();
        double d = thickness.value();
        double span = recess.length().value() - past.value();
        double length = longest(span, r, d);
        double sin = StrictMath.min(1, r / length);
        double cos = StrictMath.sqrt((1 - sin) * (1 + sin));
        boolean passes = r * cos - (under.value() - d * sin) * sin >= d;
        if (!(length > 0) || !passes) {
            return way(room, "lips", Uncertain.exact(0), 0, first);
        }
        double a = span - d * r / length;
        double slope = 2 * a * d * r / (length * length) - 2 * length;
        double[] partials = {
            -2 * a / slope, 2 * a / slope, 2 * a * r / length / slope, (2 * a * d / length - 2 * r) / slope
        };
        Uncertain swung = Uncertain.combine(length, partials, recess.length(), past, thickness, recess.depth());
        return way(room, "swing", swung, StrictMath.asin(sin), first);
    }

    /** The L with L² = (span − D R / L)² + R²: the greatest, found by halving; 0 where there is none. */
    private static double longest(double span, double r, double d) {
        double low = StrictMath.max(r, d);
        double high = StrictMath.hypot(StrictMath.max(span, 0), r);
        if (!(excess(high, span, r, d) <= 0)) {
            return high;
        }
        if (excess(low, span, r, d) < 0) {
            return 0;
        }
        for (int i = 0; i < HALVINGS && low < high; i++) {
            double middle = low + (high - low) / 2;
            if (excess(middle, span, r, d) >= 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double excess(double length, double span, double r, double d) {
        double a = span - d * r / length;
        return a <= 0 ? -1 : StrictMath.sqrt(a * a + r * r) - length;
    }

    /** {@return the longest box as an estimate} */
    public Estimate estimate() {
        return longest;
    }

    private static void requireAtLeastZero(String name, Uncertain value) {
        if (!(value.value() >= 0)) {
            throw new IllegalArgumentException(name + " must be 0 mm or more, got " + value.value() + " mm");
        }
    }
}
