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
 *     would decide it at the present estimate, or where it was not computed
 * @param settles the probability that the finding is decided afterwards; NaN where it was not computed
 */
public record Retake(List<String> readings, String by, int times, double u, double settles) {
    /**
     * The least probability of settling that is worth a reading: a reading costs minutes, a second visit half a day. Our
     * own choice.
     */
    public static final double WORTH = 0.1;

    /** What taking up another instrument costs, in readings. */
    private static final double OTHER = 0.5;

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
        if (u < 0 || Double.isInfinite(u)) {
            throw new IllegalArgumentException("u must be 0 or more and finite, or NaN, got " + u);
        }
        if (settles < 0 || settles > 1) {
            throw new IllegalArgumentException("settles must be from 0 to 1, or NaN, got " + settles);
        }
    }

    /**
     * The same request with what it is worth.
     *
     * @param probability the probability that the finding is decided afterwards
     * @return the changed copy
     */
    public Retake withSettles(double probability) {
        return new Retake(readings, by, times, u, probability);
    }

    /** {@return whether it settles the finding likely enough to stay for it; false where that was not computed} */
    public boolean isWorthTaking() {
        return settles >= WORTH;
    }

    /** How many readings it asks for, all in all; an instrument that is still to be found counts as half of one. */
    double effort() {
        return (double) readings.size() * times + (by.isEmpty() ? OTHER : 0);
    }
}
