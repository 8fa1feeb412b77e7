package quoin.opening;

import java.util.Objects;

/**
 * A fixed thing in the recess. Lengths in mm; NaN where not stated. Immutable and safe for use by many threads.
 *
 * @param name what it is
 * @param on the side it sits on
 * @param fromMm where it starts along the side
 * @param toMm where it ends along the side
 * @param outMm how far it stands out from the side
 * @param depthFromMm where it starts, from the room face
 * @param depthToMm where it ends, from the room face
 */
public record Obstacle(
        String name, Side on, double fromMm, double toMm, double outMm, double depthFromMm, double depthToMm) {
    /** Checks that nothing is missing. */
    public Obstacle {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(on, "on");
    }
}
