package quoin.opening;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

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
     * What a slip does to the outline, to first order; the largest change, without sign; computed when asked for. Infinite
     * where the slip is, 0 where the outline does not follow the reading; NaN for readings that have no outline of their
     * own. Immutable and safe for use by many threads.
     */
    public static final class Effect {
        static final Effect NONE = new Effect(null, 0, Double.NaN);

        private final @Nullable Reach reach;
        private final int reading;
        private final double slip;

        Effect(@Nullable Reach reach, int reading, double slip) {
            this.reach = reach;
            this.reading = reading;
            this.slip = slip;
        }

        /** {@return the change of the width of the head or of the foot, in mm} */
        public double widthMm() {
            return reach == null ? Double.NaN : reach.ofWidths(reading, slip);
        }

        /** {@return the change of the length of the left or of the right side, in mm} */
        public double lengthMm() {
            return reach == null ? Double.NaN : reach.ofLengths(reading, slip);
        }

        /** {@return the change of a corner's angle, in rad} */
        public double angleRad() {
            return reach == null ? Double.NaN : reach.ofAngles(reading, slip);
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Effect that
                    && Double.compare(widthMm(), that.widthMm()) == 0
                    && Double.compare(lengthMm(), that.lengthMm()) == 0
                    && Double.compare(angleRad(), that.angleRad()) == 0;
        }

        @Override
        public int hashCode() {
            return Objects.hash(widthMm(), lengthMm(), angleRad());
        }

        @Override
        public String toString() {
            return "Effect[widthMm=" + widthMm() + ", lengthMm=" + lengthMm() + ", angleRad=" + angleRad() + "]";
        }
    }
}
