package quoin.json;

import quoin.measure.Amount;
import quoin.measure.Dimension;

/**
 * What a quantity may be, in the unit that answers are in.
 *
 * @param least the least it may be
 * @param open whether it must be above that
 * @param most the most it may be
 */
record Range(double least, boolean open, double most) {
    /** Nothing that is measured here is longer: 1 km. */
    private static final double LONGEST = 1e6;

    private static final double LARGEST = 1e9;
    private static final double FULL_TURN = 360;
    private static final double ABSOLUTE_ZERO = -273.15;

    /** Every number, where a narrower limit is checked by hand. */
    static final Range EVERY = new Range(Double.NEGATIVE_INFINITY, false, Double.POSITIVE_INFINITY);

    /** No nonsense. */
    static Range any(Dimension dimension) {
        double most = most(dimension);
        return new Range(dimension == Dimension.TEMPERATURE ? ABSOLUTE_ZERO : -most, false, most);
    }

    /** Nothing below zero; a temperature as cold as can be. */
    static Range fromZero(Dimension dimension) {
        return dimension == Dimension.TEMPERATURE ? any(dimension) : new Range(0, false, most(dimension));
    }

    /** Above zero. */
    static Range aboveZero(Dimension dimension) {
        return new Range(0, true, most(dimension));
    }

    /** Above zero, and no longer than that. */
    static Range longerThanZero(double most) {
        return new Range(0, true, most);
    }

    static Range of(double least, double most) {
        return new Range(least, false, most);
    }

    private static double most(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> LONGEST;
            case ANGLE -> FULL_TURN;
            default -> LARGEST;
        };
    }

    boolean has(Amount amount) {
        double value = amount.toAnswer();
        return (open ? value > least : value >= least) && value <= most;
    }

    String words(Dimension dimension) {
        String unit = dimension == Dimension.RATIO ? "" : " " + dimension.answerUnit();
        String top = Fields.plain(most) + unit;
        return open
                ? "above " + Fields.plain(least) + unit + ", " + top + " at most"
                : Fields.plain(least) + unit + " to " + top;
    }
}
