package quoin.measure;

import java.util.Objects;

/**
 * One thing that makes a value doubtful, with its own name: two values that share it vary together.
 *
 * <p>Immutable and safe for use by many threads.
 *
 * @param id its name, one for the whole of a computation
 * @param shape the shape of its distribution
 * @param standardUncertainty its standard deviation, 0 or more
 * @param degreesOfFreedom how well that is known; infinite where it is taken as known
 * @param group the set it was determined with; empty where it is independent of all others
 */
public record Influence(
        String id, Shape shape, double standardUncertainty, double degreesOfFreedom, String group) {
    private static final double ROOT_THREE = Math.sqrt(3);

    /** Refuses a negative or unbounded doubt, and degrees of freedom of zero. */
    public Influence {
        if (id.isEmpty()) {
            throw new IllegalArgumentException("influence must have an id, got an empty text");
        }
        Objects.requireNonNull(shape, "shape");
        Objects.requireNonNull(group, "group");
        if (!(standardUncertainty >= 0 && standardUncertainty < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "standard uncertainty must be 0 or more and finite, got " + standardUncertainty);
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("degrees of freedom must be above 0, got " + degreesOfFreedom);
        }
        standardUncertainty = standardUncertainty + 0.0;
    }

    /**
     * A normal influence.
     *
     * @param id its name
     * @param u its standard uncertainty
     * @return the influence
     */
    public static Influence normal(String id, double u) {
        return new Influence(id, Shape.NORMAL, u, Double.POSITIVE_INFINITY, "");
    }

    /**
     * A rectangular influence: anywhere within limits alike.
     *
     * @param id its name
     * @param halfWidth the limits, plus or minus
     * @return the influence, u = half width / √3
     */
    public static Influence rectangular(String id, double halfWidth) {
        return new Influence(id, Shape.RECTANGULAR, halfWidth / ROOT_THREE, Double.POSITIVE_INFINITY, "");
    }

    /**
     * The same influence, known less well.
     *
     * @param degrees the degrees of freedom, above 0
     * @return the changed copy
     */
    public Influence withDegreesOfFreedom(double degrees) {
        return new Influence(id, shape, standardUncertainty, degrees, group);
    }
}
