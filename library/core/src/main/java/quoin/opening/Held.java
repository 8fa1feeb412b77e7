package quoin.opening;

import java.util.Objects;

/**
 * How a rectangle lies in the opening: parallel to one side, or turned freely within an angle of the head.
 *
 * <p>Immutable and safe for use by many threads.
 */
public final class Held {
    private static final double TWO_DEGREES = Math.PI / 90;
    private static final double HALF_RIGHT = Math.PI / 4;

    /** Parallel to the head. */
    public static final Held TO_HEAD = new Held(Side.HEAD, 0);

    /** Turned freely, at most 2 degrees from the head. */
    public static final Held FREELY = new Held(Side.HEAD, TWO_DEGREES);

    private final Side side;
    private final double withinRad;

    private Held(Side side, double withinRad) {
        this.side = Objects.requireNonNull(side, "side");
        this.withinRad = withinRad;
    }

    /**
     * Parallel to the line between the two corners of a side.
     *
     * @param side the side
     * @return that way of holding
     */
    public static Held to(Side side) {
        return new Held(side, 0);
    }

    /**
     * Turned freely.
     *
     * @param rad how far from the head at most, either way; at most π/4, beyond which width and length change places
     * @return that way of holding
     * @throws IllegalArgumentException if the angle is not above 0 and at most π/4 rad
     */
    public static Held freelyWithin(double rad) {
        if (!(rad > 0 && rad <= HALF_RIGHT)) {
            throw new IllegalArgumentException("angle must be above 0 rad and at most pi/4 rad, got " + rad + " rad");
        }
        return new Held(Side.HEAD, rad);
    }

    /** {@return whether it may turn} */
    public boolean isFree() {
        return withinRad > 0;
    }

    /** {@return the side it is parallel to, or from which it may turn} */
    public Side side() {
        return side;
    }

    /** {@return how far it may turn, in rad; 0 where it may not} */
    public double withinRad() {
        return withinRad;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Held held
                && side == held.side
                && Double.doubleToLongBits(withinRad) == Double.doubleToLongBits(held.withinRad);
    }

    @Override
    public int hashCode() {
        return 31 * side.hashCode() + Double.hashCode(withinRad);
    }

    @Override
    public String toString() {
        return isFree() ? "freely within " + withinRad + " rad" : "to the " + side.text();
    }
}
