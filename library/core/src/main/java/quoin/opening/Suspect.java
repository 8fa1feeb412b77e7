package quoin.opening;

import java.util.List;
import java.util.Objects;

/**
 * A group of readings of which one is likely wrong, and which cannot be told apart. Immutable and safe for use by many
 * threads.
 *
 * @param readings the names of the readings, most suspect first
 * @param slips the slips that would explain the disagreement, likeliest first
 * @param askFor the one reading that would tell most: one of these again, or one that was not taken yet
 */
public record Suspect(List<String> readings, List<Slip> slips, String askFor) {
    /** Copies the lists. */
    public Suspect {
        readings = List.copyOf(readings);
        slips = List.copyOf(slips);
        Objects.requireNonNull(askFor, "askFor");
    }

    /**
     * One slip that would explain the disagreement.
     *
     * @param reading the reading it is of
     * @param by how far off, observed minus true, in mm (rad for an angle)
     * @param looksLike the common slip that this looks like; empty where none does
     * @param corrected what should have been read, in mm (rad for an angle): by the common slip, else by the others
     */
    public record Slip(String reading, double by, String looksLike, double corrected) {
        /** Checks that nothing is missing. */
        public Slip {
            Objects.requireNonNull(reading, "reading");
            Objects.requireNonNull(looksLike, "looksLike");
        }
    }
}
