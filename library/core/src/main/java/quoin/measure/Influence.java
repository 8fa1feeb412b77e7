package quoin.measure;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One cause of doubt, independent of all others unless it belongs to a group.
 *
 * <p>Two numbers that depend on an influence of the same id depend on the same unknown error. Immutable.
 *
 * @param id what it is called, the same wherever the same error acts
 * @param shape the shape of its probability density
 * @param standardUncertainty its standard uncertainty u, in its own unit, 0 or more
 * @param degreesOfFreedom how well u itself is known, above 0; infinite is a value
 * @param group the correlated group it belongs to; empty if it is independent of all others
 * @param ratio the parameter of the shape: top over base of a trapezoid, inexactness of the limits over the half-width
 *     of a curved trapezoid, scale over u of a scaled t; 0 for every other shape
 */
public record Influence(
        String id, Shape shape, double standardUncertainty, double degreesOfFreedom, String group, double ratio) {

    /** Checks every part. */
    public Influence {
        Require.id("id", id);
        Objects.requireNonNull(shape, "shape");
        Objects.requireNonNull(group, "group");
        standardUncertainty = Require.atLeastZero("standard uncertainty", standardUncertainty, "");
        Require.degreesOfFreedom("degrees of freedom", degreesOfFreedom);
        boolean shaped = shape == Shape.TRAPEZOID || shape == Shape.CURVED_TRAPEZOID || shape == Shape.SCALED_T;
        ratio = Require.between("ratio", ratio, 0, shaped ? 1 : 0, "");
    }

    /**
     * An influence whose shape needs no parameter (a scaled t: u is its scale).
     *
     * @param id what it is called
     * @param shape the shape of its probability density
     * @param standardUncertainty its standard uncertainty
     * @param degreesOfFreedom its degrees of freedom
     * @param group its correlated group, or empty
     */
    public Influence(String id, Shape shape, double standardUncertainty, double degreesOfFreedom, String group) {
        this(id, shape, standardUncertainty, degreesOfFreedom, group, shape == Shape.SCALED_T ? 1 : 0);
    }

    /**
     * A normal influence.
     *
     * @param id what it is called
     * @param u its standard uncertainty
     * @return the influence, with infinite degrees of freedom
     */
    public static Influence normal(String id, double u) {
        return new Influence(id, Shape.NORMAL, u, Double.POSITIVE_INFINITY, "");
    }

    /**
     * An influence equally likely within limits: u = a / √3.
     *
     * @param id what it is called
     * @param halfWidth the limits are ± this
     * @return the influence, with infinite degrees of freedom
     */
    public static Influence rectangular(String id, double halfWidth) {
        double a = Require.atLeastZero("half-width", halfWidth, "");
        return new Influence(id, Shape.RECTANGULAR, a / StrictMath.sqrt(3), Double.POSITIVE_INFINITY, "");
    }

    /**
     * The same influence with other degrees of freedom.
     *
     * @param nu degrees of freedom, above 0; infinite is a value
     * @return the changed copy
     */
    public Influence withDegreesOfFreedom(double nu) {
        return new Influence(id, shape, standardUncertainty, nu, group, ratio);
    }

    /** Exact. Written out, since the generated one costs a fresh program tens of milliseconds at its first use. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Influence that
                && (isSame(that)
                        || (id.equals(that.id)
                                && shape == that.shape
                                && standardUncertainty == that.standardUncertainty
                                && degreesOfFreedom == that.degreesOfFreedom
                                && ratio == that.ratio
                                && group.equals(that.group)));
    }

    @Override
    public int hashCode() {
        return 31 * id.hashCode() + Double.hashCode(standardUncertainty);
    }

    @SuppressWarnings("ReferenceEquality")
    private boolean isSame(Influence that) {
        return this == that;
    }
}
