package quoin.job;

import java.util.Objects;
import quoin.measure.Dimension;
import quoin.measure.Estimate;

/**
 * A figure's value with its kind of quantity. Immutable and safe for use by many threads.
 *
 * @param estimate the value with its doubt, in base units
 * @param dimension the kind of quantity
 */
public record FigureValue(Estimate estimate, Dimension dimension) {
    /** Checks that nothing is missing. */
    public FigureValue {
        Objects.requireNonNull(estimate, "estimate");
        Objects.requireNonNull(dimension, "dimension");
    }
}
