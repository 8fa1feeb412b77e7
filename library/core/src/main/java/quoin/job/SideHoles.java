package quoin.job;

import java.util.List;
import java.util.Objects;
import quoin.fixing.SetOut;
import quoin.opening.Side;

/**
 * The holes of one side of the frame, and where they come to lie in the opening.
 *
 * <p>Immutable and safe for use by many threads.
 *
 * @param side the side
 * @param holes the holes, running from the left or head end of that side of the frame, in mm
 * @param inOpeningMm the same holes, running along the side of the opening from its corner, the frame placed balanced
 * @param edgeMm how far from the edge of the material, in mm
 * @param fastener the fastener's name in the parts list
 */
public record SideHoles(Side side, SetOut.Holes holes, List<Double> inOpeningMm, double edgeMm, String fastener) {
    /** Copies the list. */
    public SideHoles {
        Objects.requireNonNull(side, "side");
        Objects.requireNonNull(holes, "holes");
        inOpeningMm = List.copyOf(inOpeningMm);
        Objects.requireNonNull(fastener, "fastener");
    }
}
