package quoin.judge;

import java.util.Locale;
import java.util.Objects;

/**
 * A probability with how it was found and how far off it may be. Immutable and safe for use by many threads.
 *
 * @param value the probability, 0 to 1
 * @param lower a bound that the probability is not below
 * @param upper a bound that it is not above
 * @param method how it was found
 */
public record Odds(double value, double lower, double upper, Method method) {
    /** How a probability was found. */
    public enum Method {
        /** One marginal of a first-order propagation, in closed form. */
        FIRST_ORDER,
        /** Only bounded: sums of marginals from below, the least marginal from above. */
        BOUNDS,
        /** Integrated over the joint normal distribution of the parts on a fixed lattice. */
        LATTICE;

        /** {@return the method as documents write it} */
        public String text() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** Checks order and range; a NaN is refused. */
    public Odds {
        Objects.requireNonNull(method, "method");
        if (!(lower >= 0 && lower <= value && value <= upper && upper <= 1)) {
            throw new IllegalArgumentException(
                    "odds must be 0 <= lower <= value <= upper <= 1, got " + lower + ", " + value + ", " + upper);
        }
    }

    /**
     * A probability known in closed form.
     *
     * @param value the probability, 0 to 1
     * @return the odds
     */
    public static Odds firstOrder(double value) {
        return new Odds(value, value, value, Method.FIRST_ORDER);
    }
}
