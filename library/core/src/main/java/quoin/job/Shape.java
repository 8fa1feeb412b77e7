package quoin.job;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import quoin.opening.Corner;

/**
 * The adjusted opening in its own frame of reference: head-left is the origin, x runs along the head, y towards the foot.
 * Immutable and safe for use by many threads.
 *
 * @param corners where the corners lie
 * @param placed where the balanced frame lies; none where there is no frame
 */
public record Shape(Map<Corner, Point> corners, Optional<Placed> placed) {
    /** Copies the map. */
    public Shape {
        corners = Collections.unmodifiableMap(new EnumMap<>(corners));
    }

    /**
     * A place in mm.
     *
     * @param x along the head
     * @param y towards the foot
     */
    public record Point(double x, double y) {}

    /**
     * Where a frame lies.
     *
     * @param at its head-left corner, in mm
     * @param turnedRad how far it is turned from the head, in rad
     */
    public record Placed(Point at, double turnedRad) {}
}
