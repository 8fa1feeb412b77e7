package quoin.fixing;

import java.util.List;
import quoin.measure.Uncertain;

/**
 * What fills the gap behind a frame at one place.
 *
 * <p>Immutable and safe for use by many threads.
 *
 * @param alongMm how far along the side, in mm
 * @param pieces the pieces of the stack in mm, thickest first; none where nothing fits or is needed
 * @param left what is left of the gap, in mm; a screw driven home bends the frame by it; negative where there was no gap but
 *     too little room
 */
public record Packer(double alongMm, List<Double> pieces, Uncertain left) {
    /** Copies the pieces. */
    public Packer {
        pieces = List.copyOf(pieces);
    }

    /**
     * How thick the stack is.
     *
     * @return the sum of its pieces, in mm
     */
    public double thicknessMm() {
        double sum = 0;
        for (double piece : pieces) {
            sum += piece;
        }
        return sum;
    }
}
