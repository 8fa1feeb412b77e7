package quoin.judge;

/**
 * Limits on a figure, in base units; an absent side is an infinity. Immutable and safe for use by many threads.
 *
 * @param atLeast the least value that conforms; minus infinity for none
 * @param atMost the greatest value that conforms; plus infinity for none
 */
public record Bound(double atLeast, double atMost) {
    /** Refuses NaN, a bound without a side, and limits that cross. */
    public Bound {
        if (!(atLeast <= atMost) || atLeast == Double.POSITIVE_INFINITY || atMost == Double.NEGATIVE_INFINITY) {
            throw new IllegalArgumentException("atLeast must not exceed atMost, got " + atLeast + " and " + atMost);
        }
        if (Double.isInfinite(atLeast) && Double.isInfinite(atMost)) {
            throw new IllegalArgumentException("bound must have atLeast or atMost, got neither");
        }
        atLeast = atLeast + 0.0;
        atMost = atMost + 0.0;
    }

    /**
     * Not below a limit.
     *
     * @param limit the least value that conforms
     * @return the bound
     */
    public static Bound atLeast(double limit) {
        return new Bound(limit, Double.POSITIVE_INFINITY);
    }

    /**
     * Not above a limit.
     *
     * @param limit the greatest value that conforms
     * @return the bound
     */
    public static Bound atMost(double limit) {
        return new Bound(Double.NEGATIVE_INFINITY, limit);
    }

    /**
     * Between two limits, both included.
     *
     * @param least the least value that conforms
     * @param greatest the greatest value that conforms
     * @return the bound
     */
    public static Bound between(double least, double greatest) {
        return new Bound(least, greatest);
    }

    /**
     * From minus to plus a limit.
     *
     * @param limit the greatest size that conforms, 0 or more
     * @return the bound
     */
    public static Bound within(double limit) {
        if (!(limit >= 0)) {
            throw new IllegalArgumentException("within must be 0 or more, got " + limit);
        }
        return new Bound(-limit, limit);
    }

    /** {@return whether there is a limit below} */
    public boolean hasAtLeast() {
        return atLeast != Double.NEGATIVE_INFINITY;
    }

    /** {@return whether there is a limit above} */
    public boolean hasAtMost() {
        return atMost != Double.POSITIVE_INFINITY;
    }

    /**
     * Whether a value conforms; NaN never does.
     *
     * @param value the value, in base units
     * @return whether both limits hold
     */
    public boolean contains(double value) {
        return value >= atLeast && value <= atMost;
    }
}
