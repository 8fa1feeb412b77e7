package quoin.opening;

import java.util.Objects;

/**
 * What the adjustment says about one reading. Lengths in mm, angles in rad. Immutable and safe for use by many threads.
 *
 * @param of what was read, as documents write it
 * @param name the entry's own name, or what it is of
 * @param entry the index of the entry in the survey
 * @param observed what was read
 * @param residual adjusted minus observed
 * @param w the residual in units of its own standard deviation; NaN where nothing checks the reading
 * @param slip the slip that would explain the residual, observed minus true; NaN where nothing checks it
 * @param slipU the standard uncertainty of that; infinite where nothing checks the reading
 * @param detectable the smallest slip that would have been noticed four times in five; infinite where none would
 */
public record AdjustedReading(
        String of,
        String name,
        int entry,
        double observed,
        double residual,
        double w,
        double slip,
        double slipU,
        double detectable) {
    /** Checks that nothing is missing. */
    public AdjustedReading {
        Objects.requireNonNull(of, "of");
        Objects.requireNonNull(name, "name");
    }
}
