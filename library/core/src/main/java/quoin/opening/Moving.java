package quoin.opening;

import java.util.Objects;

/**
 * A sash or flap that swings. Immutable and safe for use by many threads.
 *
 * @param name what it is
 * @param hinge the side its hinge is on
 * @param opens {@code in} or {@code out}
 * @param swingRad how far it swings, in rad; NaN where not stated
 * @param reachMm how far it reaches into the room, in mm; NaN where not stated
 * @param mustWork when it must be free: {@code open}, {@code closed} or {@code both}
 */
@SuppressWarnings("InvalidParam") // the value "open" is no misspelt parameter
public record Moving(String name, Side hinge, String opens, double swingRad, double reachMm, String mustWork) {
    /** Checks that nothing is missing. */
    public Moving {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(hinge, "hinge");
        Objects.requireNonNull(opens, "opens");
        Objects.requireNonNull(mustWork, "mustWork");
    }
}
