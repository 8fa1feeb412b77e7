package quoin.opening;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import quoin.measure.Doubt;

/**
 * Whether the opening is as it will be, or what is still to come on each side. Immutable and safe for use by many
 * threads.
 *
 * @param state what was said about it
 * @param still what is still to come, by side; sides without an entry get nothing
 */
public record Finish(State state, Map<Side, Still> still) {
    /** What was said about the finish. */
    public enum State {
        /** Nobody said: taken as finished, and said so. */
        UNSTATED,
        /** As it will be. */
        FINISHED,
        /** Linings, boards or plaster are still to come. */
        BARE
    }

    /**
     * What is still to come on one side.
     *
     * @param mm its thickness in mm, 0 or more
     * @param doubt how good that is
     */
    public record Still(double mm, Doubt doubt) {
        /** Refuses a negative thickness. */
        public Still {
            if (!(mm >= 0 && mm < 1000)) {
                throw new IllegalArgumentException("still must be 0 mm or more and below 1000 mm, got " + mm + " mm");
            }
            Objects.requireNonNull(doubt, "doubt");
        }
    }

    /** Nobody said anything about the finish. */
    public static final Finish UNSTATED = new Finish(State.UNSTATED, Map.of());

    /** The opening is as it will be. */
    public static final Finish FINISHED = new Finish(State.FINISHED, Map.of());

    /** Copies the map, in the order of the sides. */
    public Finish {
        Objects.requireNonNull(state, "state");
        Map<Side, Still> ordered = new LinkedHashMap<>();
        for (Side side : Side.values()) {
            Still value = still.get(side);
            if (value != null) {
                ordered.put(side, value);
            }
        }
        still = Collections.unmodifiableMap(ordered);
    }
}
