package quoin.measure;

import java.util.Objects;

/**
 * A finite value of a kind of quantity, in the unit inside the library. Immutable and safe for use by many threads.
 *
 * @param value the value in the unit inside the library
 * @param dimension the kind of quantity
 */
public record Amount(double value, Dimension dimension) {
    /** Refuses what is not finite; minus zero becomes zero. */
    public Amount {
        Objects.requireNonNull(dimension, "dimension");
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("amount must be a finite number, got " + value);
        }
        value = value + 0.0;
    }

    /**
     * A length.
     *
     * @param mm the length in mm
     * @return the amount
     */
    public static Amount ofMm(double mm) {
        return new Amount(mm, Dimension.LENGTH);
    }

    /** {@return the value in the unit of answers} */
    public double inAnswerUnit() {
        return dimension.toAnswer(value);
    }
}
