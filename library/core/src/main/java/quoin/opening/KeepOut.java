package quoin.opening;

import java.util.Objects;

/**
 * A stretch of a side where nothing may be drilled. Immutable and safe for use by many threads.
 *
 * @param side the side
 * @param fromMm where it starts along the side, in mm
 * @param toMm where it ends, in mm
 * @param because why
 */
public record KeepOut(Side side, double fromMm, double toMm, String because) {
    /** Refuses a stretch that ends before it starts. */
    public KeepOut {
        Objects.requireNonNull(side, "side");
        Objects.requireNonNull(because, "because");
        if (!(fromMm <= toMm)) {
            throw new IllegalArgumentException(
                    "keep-out must start before it ends, got " + fromMm + " mm to " + toMm + " mm");
        }
    }
}
