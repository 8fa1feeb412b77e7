package quoin.judge;

import java.util.Objects;
import quoin.measure.Estimate;

/**
 * An estimate and the bound it is held against. Immutable and safe for use by many threads.
 *
 * @param estimate the value with its doubt
 * @param bound the limits, in the same base unit
 */
public record Constraint(Estimate estimate, Bound bound) {
    /** Checks that nothing is missing. */
    public Constraint {
        Objects.requireNonNull(estimate, "estimate");
        Objects.requireNonNull(bound, "bound");
    }
}
