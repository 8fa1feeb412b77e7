package quoin.job;

import java.util.Objects;
import quoin.fixing.Packer;
import quoin.opening.Side;

/**
 * What fills the gap at one hole of a side. Immutable and safe for use by many threads.
 *
 * @param side the side
 * @param packer the packer, along the frame from the left or head end of that side
 */
public record SidePacker(Side side, Packer packer) {
    /** Checks that nothing is missing. */
    public SidePacker {
        Objects.requireNonNull(side, "side");
        Objects.requireNonNull(packer, "packer");
    }
}
