package quoin.measure;

import java.util.Objects;
import java.util.Optional;

/**
 * An interval about a value, symmetric, that holds the quantity with a stated probability. Immutable.
 *
 * @param probability p, between 0 and 1
 * @param degreesOfFreedom of the standard uncertainty; infinite is a value
 * @param factor k, the half-width over the standard uncertainty
 * @param expanded U = k · u, in the unit of the value
 * @param method what shape was taken for the number
 */
public record Coverage(double probability, double degreesOfFreedom, double factor, double expanded, Method method) {
    /** EA-4/02 counts one or two rectangles as dominant if the rest is at most this part of them (from memory). */
    private static final double DOMINATED = 0.3;

    /** What shape was taken for the number. */
    public enum Method {
        /** Student's t, normal for infinite degrees of freedom. */
        STUDENT,
        /** The trapezoid of the two largest rectangular influences. */
        RECTANGLES
    }

    /** Checks every part. */
    public Coverage {
        Require.probability("probability", probability);
        Require.degreesOfFreedom("degrees of freedom", degreesOfFreedom);
        factor = Require.atLeastZero("coverage factor", factor, "");
        expanded = Require.atLeastZero("expanded uncertainty", expanded, "");
        Objects.requireNonNull(method, "method");
    }

    /**
     * The coverage by Student's t: k = t at (1 + p) / 2. Degrees of freedom are never cut to a whole number.
     *
     * @param number the number
     * @param probability p, between 0 and 1
     * @return the coverage, or empty where the degrees of freedom have no answer; see {@link DegreesOfFreedom}
     */
    public static Optional<Coverage> symmetric(Uncertain number, double probability) {
        Require.probability("probability", probability);
        var nu = DegreesOfFreedom.of(number);
        if (nu.isEmpty()) {
            return Optional.empty();
        }
        double k = factor(nu.getAsDouble(), probability);
        double u = number.standardUncertainty();
        return Optional.of(new Coverage(probability, nu.getAsDouble(), k, k * u, Method.STUDENT));
    }

    /**
     * The coverage of a number of which one or two rectangular influences make up nearly all the doubt: that of their
     * trapezoid, k below that of a normal number.
     *
     * <p>With half-widths a ≥ b of the two, A = a + b, B = a − b: k u = p (A + B) / 2 on the flat part, else A − √((1 − p)
     * (A² − B²)); u = √((A² + B²) / 6) (EA-4/02, S9.14 and S10, from memory).
     *
     * @param number the number
     * @param probability p, between 0 and 1
     * @return the coverage, or empty if the rest of the doubt is more than 0.3 of these two
     */
    public static Optional<Coverage> ofRectangles(Uncertain number, double probability) {
        Require.probability("probability", probability);
        double first = 0;
        double second = 0;
        for (int i = 0; i < number.influences().size(); i++) {
            boolean rectangular = number.influences().get(i).shape() == Shape.RECTANGULAR;
            double c = rectangular ? StrictMath.abs(number.contribution(i)) : 0;
            second = StrictMath.max(second, StrictMath.min(first, c));
            first = StrictMath.max(first, c);
        }
        double both = first * first + second * second;
        double rest = StrictMath.max(0, number.variance() - both);
        if (first == 0 || rest > DOMINATED * DOMINATED * both) {
            return Optional.empty();
        }
        double k = trapezoidFactor(first, second, probability);
        double expanded = k * number.standardUncertainty();
        return Optional.of(new Coverage(probability, Double.POSITIVE_INFINITY, k, expanded, Method.RECTANGLES));
    }

    /**
     * The two-sided coverage factor of Student's t.
     *
     * @param degreesOfFreedom above 0; infinite is a value and gives the normal factor
     * @param probability between 0 and 1
     * @return k, such as 1.960 for infinite degrees and 0.95
     */
    public static double factor(double degreesOfFreedom, double probability) {
        Require.degreesOfFreedom("degrees of freedom", degreesOfFreedom);
        Require.probability("probability", probability);
        return Distributions.studentQuantile(degreesOfFreedom, (1 + probability) / 2);
    }

    /**
     * The one-sided factor of Student's t: what the quantity stays below, or above, with the probability.
     *
     * @param degreesOfFreedom above 0; infinite is a value and gives the normal factor
     * @param probability between 0 and 1
     * @return k, such as 1.645 for infinite degrees and 0.95; negative below 0.5
     */
    public static double oneSidedFactor(double degreesOfFreedom, double probability) {
        Require.degreesOfFreedom("degrees of freedom", degreesOfFreedom);
        Require.probability("probability", probability);
        return Distributions.studentQuantile(degreesOfFreedom, probability);
    }

    private static double trapezoidFactor(double first, double second, double probability) {
        double base = first + second;
        double top = first - second;
        double flat = 2 * top / (base + top);
        double half = probability <= flat
                ? probability * (base + top) / 2
                : base - StrictMath.sqrt((1 - probability) * (base * base - top * top));
        // first and second are standard uncertainties, a factor of √3 below the half-widths
        return StrictMath.sqrt(3) * half / StrictMath.sqrt(first * first + second * second);
    }
}
