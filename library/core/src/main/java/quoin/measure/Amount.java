package quoin.measure;

import java.util.Objects;

/**
 * A number with its dimension, in base units. Immutable.
 *
 * @param value the number in the base unit of the dimension, finite
 * @param dimension what it is a number of
 */
public record Amount(double value, Dimension dimension) {
    /** Checks that the value is finite; {@code -0.0} becomes {@code 0.0}. */
    public Amount {
        Objects.requireNonNull(dimension, "dimension");
        value = Require.finite("value", value, dimension.baseUnit());
    }

    /**
     * The value in the answer unit of its dimension.
     *
     * @return the value in {@link Dimension#answerUnit()}
     */
    public double toAnswer() {
        return dimension.toAnswer(value);
    }
}
