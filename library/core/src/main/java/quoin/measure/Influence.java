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
     * A triangular influence: within limits, likelier towards their middle. u = a / √6 (GUM 4.3.9, from memory).
     *
     * @param id what it is called
     * @param halfWidth the limits are ± this
     * @return the influence, with infinite degrees of freedom
     */
    public static Influence triangular(String id, double halfWidth) {
        double a = Require.atLeastZero("half-width", halfWidth, "");
        return new Influence(id, Shape.TRIANGULAR, a / StrictMath.sqrt(6), Double.POSITIVE_INFINITY, "");
    }

    /**
     * A trapezoid: within limits, flat in the middle. u = a √((1 + β²) / 6) (GUM 4.3.9, from memory).
     *
     * @param id what it is called
     * @param halfWidth the limits are ± this
     * @param topOverBase β, the width of the flat part over the whole width, 0 (triangle) to 1 (rectangle)
     * @return the influence, with infinite degrees of freedom
     */
    public static Influence trapezoid(String id, double halfWidth, double topOverBase) {
        double a = Require.atLeastZero("half-width", halfWidth, "");
        double beta = Require.between("top over base", topOverBase, 0, 1, "");
        double u = a * StrictMath.sqrt((1 + beta * beta) / 6);
        return new Influence(id, Shape.TRAPEZOID, u, Double.POSITIVE_INFINITY, "", beta);
    }

    /**
     * A rectangle whose limits are not well known themselves: ± a, each limit good to ± d. u = √(a² / 3 + d² / 9)
     * (JCGM 101:2008, 6.4.3).
     *
     * @param id what it is called
     * @param halfWidth a, the limits are ± this
     * @param inexactness d, from 0 to a
     * @return the influence, with infinite degrees of freedom
     */
    public static Influence curvedTrapezoid(String id, double halfWidth, double inexactness) {
        double a = Require.aboveZero("half-width", halfWidth, "");
        double d = Require.between("inexactness of the limits", inexactness, 0, a, "");
        double u = StrictMath.sqrt(a * a / 3 + d * d / 9);
        return new Influence(id, Shape.CURVED_TRAPEZOID, u, Double.POSITIVE_INFINITY, "", d / a);
    }

    /**
     * A sine swing of unknown phase between limits: u = a / √2 (JCGM 101:2008, 6.4.6).
     *
     * @param id what it is called
     * @param halfWidth the limits are ± this
     * @return the influence, with infinite degrees of freedom
     */
    public static Influence arcsine(String id, double halfWidth) {
        double a = Require.atLeastZero("half-width", halfWidth, "");
        return new Influence(id, Shape.ARCSINE, a / StrictMath.sqrt(2), Double.POSITIVE_INFINITY, "");
    }

    /**
     * A resolution: the reading is rounded to a multiple of a step. u = r / √12 (GUM F.2.2.1, from memory).
     *
     * @param id what it is called
     * @param step r, the step of the display or the distance of the marks
     * @return the influence, rectangular, with infinite degrees of freedom
     */
    public static Influence resolution(String id, double step) {
        return rectangular(id, Require.atLeastZero("step", step, "") / 2);
    }

    /**
     * An expanded uncertainty with its coverage factor: u = U / k (GUM 4.3.3).
     *
     * @param id what it is called
     * @param expanded U, 0 or more
     * @param k the coverage factor, above 0
     * @return the influence, normal, with infinite degrees of freedom
     */
    public static Influence expanded(String id, double expanded, double k) {
        double half = Require.atLeastZero("expanded uncertainty", expanded, "");
        return normal(id, half / Require.aboveZero("coverage factor", k, ""));
    }

    /**
     * An expanded uncertainty with its coverage probability, normal: u = U / Φ⁻¹((1 + p) / 2) (GUM 4.3.4).
     *
     * @param id what it is called
     * @param expanded U, 0 or more
     * @param probability p, between 0 and 1; 0.95 gives U / 1.960
     * @return the influence, normal, with infinite degrees of freedom
     */
    public static Influence expandedWithProbability(String id, double expanded, double probability) {
        return expandedWithProbability(id, expanded, probability, Double.POSITIVE_INFINITY);
    }

    /**
     * An expanded uncertainty with its coverage probability and degrees of freedom: u = U / t with t the two-sided
     * quantile of Student's t.
     *
     * @param id what it is called
     * @param expanded U, 0 or more
     * @param probability p, between 0 and 1
     * @param nu the degrees of freedom, above 0; infinite is a value
     * @return the influence; a scaled t of scale u, or normal where nu is infinite
     */
    public static Influence expandedWithProbability(String id, double expanded, double probability, double nu) {
        double half = Require.atLeastZero("expanded uncertainty", expanded, "");
        double u = half / Coverage.factor(nu, probability);
        return nu == Double.POSITIVE_INFINITY ? normal(id, u) : tByScale(id, u, nu);
    }

    /**
     * Student's t, stated by its scale, as for the mean of n readings: scale s / √n, nu = n − 1.
     *
     * <p>To first order u is the scale (GUM 4.2.3); the standard deviation of the density is larger, scale · √(nu / (nu −
     * 2)), and what Monte Carlo draws from (JCGM 101:2008, 6.4.9).
     *
     * @param id what it is called
     * @param scale the scale, 0 or more
     * @param nu the degrees of freedom, above 0
     * @return the influence
     */
    public static Influence tByScale(String id, double scale, double nu) {
        if (nu == Double.POSITIVE_INFINITY) {
            return normal(id, scale);
        }
        return new Influence(id, Shape.SCALED_T, scale, nu, "", 1);
    }

    /**
     * Student's t, stated by the standard deviation of the density: scale = sd · √((nu − 2) / nu).
     *
     * @param id what it is called
     * @param standardDeviation the standard deviation, 0 or more; u to first order
     * @param nu the degrees of freedom, above 2: below there is no standard deviation
     * @return the influence
     */
    public static Influence tByStandardDeviation(String id, double standardDeviation, double nu) {
        if (!(nu > 2)) {
            throw Require.refused("degrees of freedom", "more than 2", nu, "");
        }
        if (nu == Double.POSITIVE_INFINITY) {
            return normal(id, standardDeviation);
        }
        double ratio = StrictMath.sqrt((nu - 2) / nu);
        return new Influence(id, Shape.SCALED_T, standardDeviation, nu, "", ratio);
    }

    /**
     * The mean of repeated readings: u = s / √n, nu = n − 1 (GUM 4.2.3).
     *
     * @param id what it is called
     * @param readings independent readings of the same thing, 2 or more
     * @return the influence of their mean, a scaled t
     */
    public static Influence repeated(String id, double... readings) {
        Scatter scatter = Scatter.of(readings);
        return tByScale(id, scatter.standardDeviation() / StrictMath.sqrt(readings.length), readings.length - 1.0);
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

    /**
     * The same influence with its u known to some per cent only: nu = 1 / (2 r²), r = per cent / 100 (GUM G.4.2); 10 %
     * gives 50, 25 % gives 8, 50 % gives 2.
     *
     * @param percent the relative doubt of u in per cent, above 0
     * @return the changed copy
     */
    public Influence withReliability(double percent) {
        double relative = Require.aboveZero("reliability", percent, "%") / 100;
        return withDegreesOfFreedom(1 / (2 * relative * relative));
    }

    /**
     * The same influence as a member of a correlated group.
     *
     * @param name the group, empty for none
     * @return the changed copy
     */
    public Influence withGroup(String name) {
        return new Influence(id, shape, standardUncertainty, degreesOfFreedom, name, ratio);
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
