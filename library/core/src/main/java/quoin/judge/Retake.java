package quoin.judge;

import java.util.List;
import java.util.Objects;

/**
 * A request to read again, and what that is worth. Immutable and safe for use by many threads.
 *
 * @param readings the places to read, as documents write them
 * @param by the instrument to use; empty where any will do
 * @param times how many fresh readings of each
 * @param u the standard uncertainty each reading needs, all its values together, in mm or rad; NaN where none
 *     would decide it at the present estimate
 * @param settles the probability that the finding is decided afterwards; NaN where it was not computed
 */
public record Retake(List<String> readings, String by, int times, double u, double settles) {
    /** Copies the list. */
    public Retake {
        readings = List.copyOf(readings);
        Objects.requireNonNull(by, "by");
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("retake must name 1 reading or more, got none");
        }
        if (times < 1) {
            throw new IllegalArgumentException("times must be 1 or more, got " + times);
        }
    }
}
