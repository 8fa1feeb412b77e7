package quoin.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;

/** How far an opening is from square, as a fitter sees it: the offset at the end of a leg. */
public final class Squareness {
    private static final double PLAIN = 2;

    private Squareness() {}

    /**
     * How far a corner is out of square, as an offset at the end of its longer leg.
     *
     * @param opening an opening with a shape
     * @param corner the corner
     * @return the offset, signed: positive where the corner is open
     * @figure opening.corner.CORNER.offset
     * @formula longer leg · sin(departure)
     * @unit mm
     * @edge 0 for a right angle
     * @source standard: plane geometry
     */
    public static Uncertain offset(Opening opening, Corner corner) {
        Uncertain after = leg(opening, corner, corner.next());
        Uncertain before = leg(opening, corner, corner.previous());
        Uncertain longer = after.value() >= before.value() ? after : before;
        return longer.times(OpeningFigures.departure(opening, corner).sin());
    }

    /**
     * The offset that is largest in size of all four corners.
     *
     * @param opening an opening with a shape
     * @return all four offsets; its value is the one largest in size, with its sign
     * @figure opening.square.offset
     * @formula the offset of largest absolute value
     * @unit mm
     * @edge its odds are those of all four corners together
     * @source standard: plane geometry
     */
    public static Extreme worstOffset(Opening opening) {
        List<Extreme.Part> parts = new ArrayList<>();
        for (Corner corner : Corner.values()) {
            parts.add(
                    new Extreme.Part(List.of("opening.corner." + corner.text() + ".offset"), offset(opening, corner)));
        }
        return Extreme.largestInSize(parts);
    }

    /**
     * How much wider the opening is at the head than at the foot.
     *
     * @param opening an opening with a shape
     * @return the difference, signed
     * @figure opening.taper.width
     * @formula |HL−HR| − |FL−FR|
     * @unit mm
     * @edge 0 does not prove a rectangle: a racked opening has it too
     * @source standard: plane geometry
     */
    public static Uncertain taperOfWidth(Opening opening) {
        return leg(opening, Corner.HEAD_LEFT, Corner.HEAD_RIGHT)
                .minus(leg(opening, Corner.FOOT_LEFT, Corner.FOOT_RIGHT));
    }

    /**
     * How much longer the opening is on the left than on the right.
     *
     * @param opening an opening with a shape
     * @return the difference, signed
     * @figure opening.taper.length
     * @formula |HL−FL| − |HR−FR|
     * @unit mm
     * @edge 0 does not prove a rectangle: a racked opening has it too
     * @source standard: plane geometry
     */
    public static Uncertain taperOfLength(Opening opening) {
        return leg(opening, Corner.HEAD_LEFT, Corner.FOOT_LEFT)
                .minus(leg(opening, Corner.HEAD_RIGHT, Corner.FOOT_RIGHT));
    }

    /**
     * The corner that is plainly out of square though the diagonals do not tell: a taper has equal diagonals.
     *
     * @param opening the opening
     * @return the corner furthest out, if its offset is more than twice its standard uncertainty while the difference
     *     of the diagonals is not; empty otherwise, and without a shape
     */
    public static Optional<Corner> hiddenByEqualDiagonals(Opening opening) {
        if (!opening.hasShape() || isPlain(OpeningFigures.diagonalDifference(opening))) {
            return Optional.empty();
        }
        Optional<Corner> worst = Optional.empty();
        double most = 0;
        for (Corner corner : Corner.values()) {
            Uncertain offset = offset(opening, corner);
            if (isPlain(offset) && Math.abs(offset.value()) > most) {
                most = Math.abs(offset.value());
                worst = Optional.of(corner);
            }
        }
        return worst;
    }

    private static boolean isPlain(Uncertain value) {
        return Math.abs(value.value()) > PLAIN * value.standardUncertainty();
    }

    private static Uncertain leg(Opening opening, Corner from, Corner to) {
        return opening.front().corner(from).distanceTo(opening.front().corner(to));
    }
}
