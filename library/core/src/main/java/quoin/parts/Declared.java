package quoin.parts;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;

/**
 * A number that somebody declared for a part, or the fact that nobody did.
 *
 * <p>Immutable and safe for use by many threads.
 *
 * @param value the number, in base units; NaN where nobody declared it
 * @param dimension the kind of quantity
 * @param basis what the number states
 * @param source where it comes from
 */
public record Declared(double value, Dimension dimension, Basis basis, Source source) {
    /** What a declared number states. */
    public enum Basis {
        /** The maker's figure, without more. */
        DECLARED,
        /** The load at which test pieces failed. */
        ULTIMATE,
        /** The value that nineteen of twenty test pieces exceed. */
        CHARACTERISTIC,
        /** A resistance with its partial factor already taken off. */
        DESIGN,
        /** A load the maker recommends not to exceed in use. */
        RECOMMENDED;

        private final String text = name().toLowerCase(Locale.ROOT);

        /** {@return the basis as documents write it} */
        public String text() {
            return text;
        }

        /**
         * The basis of that name.
         *
         * @param text the name as documents write it
         * @return the basis, or empty where there is none of that name
         */
        public static Optional<Basis> find(String text) {
            for (Basis basis : values()) {
                if (basis.text.equals(text)) {
                    return Optional.of(basis);
                }
            }
            return Optional.empty();
        }
    }

    /** Refuses infinities; NaN means that the number is not known. */
    public Declared {
        if (Double.isInfinite(value)) {
            throw new IllegalArgumentException("declared value must be finite, got " + value);
        }
        Objects.requireNonNull(dimension, "dimension");
        Objects.requireNonNull(basis, "basis");
        Objects.requireNonNull(source, "source");
        value = value + 0.0;
    }

    /**
     * The maker's figure, without a source of its own.
     *
     * @param amount the amount
     * @return the declared number
     */
    public static Declared of(Amount amount) {
        return new Declared(amount.value(), amount.dimension(), Basis.DECLARED, Source.UNSTATED);
    }

    /**
     * A number that nobody declared.
     *
     * @param dimension the kind of quantity it would be
     * @return the unknown number
     */
    public static Declared unknown(Dimension dimension) {
        return new Declared(Double.NaN, dimension, Basis.DECLARED, Source.UNSTATED);
    }

    /**
     * The same number on another basis.
     *
     * @param other what the number states
     * @return the changed copy
     */
    public Declared withBasis(Basis other) {
        return new Declared(value, dimension, other, source);
    }

    /**
     * The same number from another source.
     *
     * @param other where it comes from
     * @return the changed copy
     */
    public Declared withSource(Source other) {
        return new Declared(value, dimension, basis, other);
    }

    /** {@return whether somebody declared the number} */
    public boolean isKnown() {
        return !Double.isNaN(value);
    }

    /**
     * Checks the dimension of a number at the door of the part it belongs to.
     *
     * @param name the field it is for
     * @param expected the kind of quantity that field holds
     * @return this number
     * @throws IllegalArgumentException if it is of another kind
     */
    Declared require(String name, Dimension expected) {
        if (dimension != expected) {
            throw new IllegalArgumentException(
                    name + " must be of the kind " + expected.label() + ", got " + dimension.label());
        }
        return this;
    }
}
