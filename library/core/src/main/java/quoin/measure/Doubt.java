package quoin.measure;

import java.util.Objects;

/**
 * A doubt as somebody stated it. The meaning is part of the statement and never guessed. Immutable.
 *
 * @param statement what was stated
 * @param amount the stated amount in base units, 0 or more; growing with length: for each mm of the reading
 * @param coverageFactor k of an expanded uncertainty, above 0; 1 for other statements
 * @param growth whether it grows with the length read
 * @param dimension the dimension of the reading it belongs to
 */
public record Doubt(Statement statement, double amount, double coverageFactor, Growth growth, Dimension dimension) {
    private static final double MM_IN_A_METRE = 1000;

    /** What was stated. */
    public enum Statement {
        /** A standard uncertainty. */
        STANDARD,
        /** Limits ± the amount, equally likely within. */
        LIMITS,
        /** An expanded uncertainty with its coverage factor. */
        EXPANDED
    }

    /** Whether a doubt grows with the length read. */
    public enum Growth {
        /** The same for every reading. */
        FIXED,
        /** In proportion to the length read. */
        PER_LENGTH
    }

    /** Checks every part. */
    public Doubt {
        Objects.requireNonNull(statement, "statement");
        Objects.requireNonNull(growth, "growth");
        Objects.requireNonNull(dimension, "dimension");
        amount = Require.atLeastZero("doubt", amount, unit(dimension));
        Require.aboveZero("coverage factor", coverageFactor, "");
        if (growth == Growth.PER_LENGTH && dimension != Dimension.LENGTH) {
            throw new IllegalArgumentException(
                    "a doubt that grows per length must be one of length, got " + dimension.label());
        }
    }

    /**
     * A standard uncertainty.
     *
     * @param u the standard uncertainty in base units, 0 or more
     * @param dimension the dimension of the reading
     * @return the doubt, the same for every reading
     */
    public static Doubt standard(double u, Dimension dimension) {
        return new Doubt(Statement.STANDARD, u, 1, Growth.FIXED, dimension);
    }

    /**
     * Limits ± a, equally likely within.
     *
     * @param a the half-width in base units, 0 or more
     * @param dimension the dimension of the reading
     * @return the doubt, the same for every reading
     */
    public static Doubt limits(double a, Dimension dimension) {
        return new Doubt(Statement.LIMITS, a, 1, Growth.FIXED, dimension);
    }

    /**
     * An expanded uncertainty with its coverage factor.
     *
     * @param expanded the expanded uncertainty in base units, 0 or more
     * @param k its coverage factor, above 0
     * @param dimension the dimension of the reading
     * @return the doubt, the same for every reading
     */
    public static Doubt expanded(double expanded, double k, Dimension dimension) {
        return new Doubt(Statement.EXPANDED, expanded, k, Growth.FIXED, dimension);
    }

    /**
     * The same statement, meant for each metre of the reading. Kept per mm.
     *
     * @return the doubt whose amount is a thousandth for each mm read; this, if it grows already
     */
    public Doubt perLength() {
        return growth == Growth.PER_LENGTH
                ? this
                : new Doubt(statement, amount / MM_IN_A_METRE, coverageFactor, Growth.PER_LENGTH, dimension);
    }

    /**
     * The standard uncertainty for a reading: the amount itself, limits / √3, or expanded / k (GUM 4.3.3 and 4.3.7,
     * from memory); times the size of the reading where it grows.
     *
     * @param reading the reading in base units
     * @return the standard uncertainty in base units
     * @throws IllegalArgumentException if the reading is not finite
     */
    public double standardUncertainty(double reading) {
        Require.finite("reading", reading, unit(dimension));
        double fixed = switch (statement) {
            case STANDARD -> amount;
            case LIMITS -> amount / StrictMath.sqrt(3);
            case EXPANDED -> amount / coverageFactor;
        };
        return growth == Growth.FIXED ? fixed : fixed * StrictMath.abs(reading);
    }

    /**
     * The shape of the density: rectangular for limits, normal otherwise.
     *
     * @return the shape
     */
    public Shape shape() {
        return statement == Statement.LIMITS ? Shape.RECTANGULAR : Shape.NORMAL;
    }

    private static String unit(Dimension dimension) {
        return dimension.baseUnit();
    }
}
