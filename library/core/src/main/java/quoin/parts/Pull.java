package quoin.parts;

import java.util.Objects;
import quoin.measure.Dimension;

/**
 * What one fastener holds against being pulled out. Immutable and safe for use by many threads.
 *
 * @param value the pull, in N
 * @param in what it was established in
 * @param depth how deep the thread sat, in mm
 */
public record Pull(Declared value, Substrate.Kind in, Declared depth) {
    /** Refuses numbers of the wrong kind. */
    public Pull {
        value.require("value", Dimension.FORCE);
        Objects.requireNonNull(in, "in");
        depth.require("depth", Dimension.LENGTH);
    }
}
