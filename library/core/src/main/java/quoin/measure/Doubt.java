package quoin.measure;

import java.util.Objects;

/**
 * One stated doubt: how much, in which meaning, and whether it grows with the reading. Immutable and safe for use by many
 * threads.
 *
 * @param statement what the amount means
 * @param amount the amount in the unit inside the library; per mm of the reading where it grows
 * @param coverageFactor the k of an expanded uncertainty; 1 otherwise
 * @param growth whether it grows with the reading
 * @param dimension the kind of quantity it belongs to
 */
public record Doubt(Statement statement, double amount, double coverageFactor, Growth growth, Dimension dimension) {
    /** What an amount of doubt means. */
    public enum Statement {
        /** A standard uncertainty. */
        STANDARD,
        /** Limits, plus or minus, anywhere between alike. */
        LIMITS,
        /** An expanded uncertainty with its coverage factor. */
        EXPANDED
    }

    /** Whether a doubt grows with the reading. */
    public enum Growth {
        /** The same for every reading. */
        FIXED,
        /** In proportion to the reading. */
        PER_LENGTH
    }

    private static final double ROOT_THREE = Math.sqrt(3);

    /** Refuses a negative amount and a coverage factor of zero. */
    public Doubt {
        Objects.requireNonNull(statement, "statement");
        Objects.requireNonNull(growth, "growth");
        Objects.requireNonNull(dimension, "dimension");
        if (!(amount >= 0 && amount < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("doubt must be 0 or more and finite, got " + amount);
        }
        if (!(coverageFactor > 0 && coverageFactor < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("coverage factor k must be above 0, got " + coverageFactor);
        }
    }

    /**
     * A standard uncertainty.
     *
     * @param u the standard uncertainty
     * @param dimension the kind of quantity
     * @return the doubt
     */
    public static Doubt standard(double u, Dimension dimension) {
        return new Doubt(Statement.STANDARD, u, 1, Growth.FIXED, dimension);
    }

    /**
     * Limits, plus or minus.
     *
     * @param halfWidth the limits
     * @param dimension the kind of quantity
     * @return the doubt
     */
    public static Doubt limits(double halfWidth, Dimension dimension) {
        return new Doubt(Statement.LIMITS, halfWidth, 1, Growth.FIXED, dimension);
    }

    /**
     * An expanded uncertainty.
     *
     * @param expanded the expanded uncertainty U
     * @param k its coverage factor
     * @param dimension the kind of quantity
     * @return the doubt
     */
    public static Doubt expanded(double expanded, double k, Dimension dimension) {
        return new Doubt(Statement.EXPANDED, expanded, k, Growth.FIXED, dimension);
    }

    /** {@return the same doubt, its amount given for each metre of the reading} */
    public Doubt perMetre() {
        return new Doubt(statement, amount / 1000, coverageFactor, Growth.PER_LENGTH, dimension);
    }

    /**
     * The standard uncertainty of a reading.
     *
     * @param reading the reading
     * @return u, limits / √3 or U / k; times the reading where it grows
     */
    public double standardUncertainty(double reading) {
        double u =
                switch (statement) {
                    case STANDARD -> amount;
                    case LIMITS -> amount / ROOT_THREE;
                    case EXPANDED -> amount / coverageFactor;
                };
        return growth == Growth.FIXED ? u : u * Math.abs(reading);
    }

    /** {@return the shape that goes with the statement: rectangular for limits, else normal} */
    public Shape shape() {
        return statement == Statement.LIMITS ? Shape.RECTANGULAR : Shape.NORMAL;
    }
}
