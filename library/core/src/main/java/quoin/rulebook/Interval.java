package quoin.rulebook;

/**
 * All values between two ends. Immutable and safe for use by many threads.
 *
 * @param least the end below, in base units; minus infinity for none
 * @param withLeast whether that end belongs to it
 * @param most the end above; plus infinity for none
 * @param withMost whether that end belongs to it
 */
public record Interval(double least, boolean withLeast, double most, boolean withMost) {
    /** Every value. */
    public static final Interval ALL = new Interval(Double.NEGATIVE_INFINITY, false, Double.POSITIVE_INFINITY, false);

    private static final double SLIVER = 1e-6;

    /** Above zero. */
    static final Interval POSITIVE = new Interval(0, false, Double.POSITIVE_INFINITY, false);

    /** Refuses NaN. */
    public Interval {
        if (Double.isNaN(least) || Double.isNaN(most)) {
            throw new IllegalArgumentException("ends must be numbers, got " + least + " and " + most);
        }
        least = least + 0.0;
        most = most + 0.0;
    }

    /** One value. */
    static Interval of(double value) {
        return new Interval(value, true, value, true);
    }

    /** From a value that belongs to it to one that does not. */
    static Interval from(double least, double most) {
        return new Interval(least, true, most, false);
    }

    /** From above a value up to one that belongs to it. */
    static Interval above(double least, double most) {
        return new Interval(least, false, most, true);
    }

    /**
     * Whether a value lies in it.
     *
     * @param value the value
     * @return whether it does; NaN never does
     */
    public boolean has(double value) {
        return (value > least || (withLeast && value == least)) && (value < most || (withMost && value == most));
    }

    /** {@return whether no value lies in it} */
    public boolean isEmpty() {
        return least > most || (least == most && !(withLeast && withMost));
    }

    /** Whether nothing lies in it but what the last digits of sums leave: an open end within a millionth of a mm of the other. */
    boolean isSliver() {
        return isEmpty() || (!(withLeast && withMost) && most - least < SLIVER);
    }

    /** {@return a value inside, the middle where both ends are finite} */
    double some() {
        if (Double.isInfinite(least)) {
            return Double.isInfinite(most) ? 0 : withMost ? most : most - 1;
        }
        return Double.isInfinite(most) ? least + 1 : 0.5 * (least + most);
    }

    Interval plus(double by) {
        return new Interval(least + by, withLeast, most + by, withMost);
    }

    /** What lies in both. */
    Interval and(Interval other) {
        boolean fromHere = least > other.least || (least == other.least && !withLeast);
        boolean toHere = most < other.most || (most == other.most && !withMost);
        return new Interval(
                fromHere ? least : other.least,
                fromHere ? withLeast : other.withLeast,
                toHere ? most : other.most,
                toHere ? withMost : other.withMost);
    }
}
