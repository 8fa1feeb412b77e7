package quoin.judge;

import java.util.Objects;
import quoin.measure.Dimension;

/**
 * What a figure has to spare against the nearer limit. Immutable and safe for use by many threads.
 *
 * @param value how far inside the limit, in base units; negative is outside
 * @param u its standard uncertainty, in base units
 * @param dimension the kind of quantity
 * @param against which limit: {@code atLeast} or {@code atMost}
 */
public record Margin(double value, double u, Dimension dimension, String against) {
    /** Checks the numbers and that nothing is missing. */
    public Margin {
        value = Args.requireFinite(value, "margin") + 0.0;
        u = Args.requireFinite(u, "u") + 0.0;
        if (!(u >= 0)) {
            throw new IllegalArgumentException("u must be 0 or more, got " + u);
        }
        Objects.requireNonNull(dimension, "dimension");
        Objects.requireNonNull(against, "against");
    }
}
