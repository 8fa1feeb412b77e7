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
 * @param effect what a slip of that size that nobody notices does to the outline
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
        double detectable,
        Effect effect) {
    /** Checks that nothing is missing. */
    public AdjustedReading {
        Objects.requireNonNull(of, "of");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(effect, "effect");
    }

    /**
     * What a slip does to the outline, to first order; the largest change, without sign. Infinite where the slip is, 0
     * where the outline does not follow the reading; NaN for readings that have no outline of their own.
     *
     * @param widthMm of the head or of the foot, in mm
     * @param lengthMm of the left or of the right side, in mm
     * @param angleRad of a corner's angle, in rad
     */
    public record Effect(double widthMm, double lengthMm, double angleRad) {
        static final Effect NONE = new Effect(Double.NaN, Double.NaN, Double.NaN);
    }
}
