package quoin.rulebook;

import java.util.List;
import java.util.Objects;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;

/**
 * Where the frame is fixed.
 *
 * <p>Immutable and safe for use by many threads.
 *
 * @clause fixings
 * @formula nominal positions are multiples of {@code mark}, between {@code atLeast} and {@code atMost} from each end and
 *     between {@code pitchAtLeast} and {@code pitchAtMost} apart
 * @unit mm
 * @edge all limits belong to what is allowed
 * @source practice: positions that can be marked with a rule
 * @param fromEndAim how far from an end of the frame to aim for
 * @param atLeast the least distance from an end
 * @param atMost the greatest distance from an end
 * @param fromEdge how far from the edge of the material
 * @param pitchAtLeast the least distance between two fixings
 * @param pitchAtMost the greatest distance between two fixings
 * @param mark the step that positions are multiples of
 * @param into what they go into, such as {@code reveal}
 * @param fastener the fastener's name in the parts list
 * @param source where the rule comes from
 * @param packers how thick the packers are that fill the gaps; none where no packers are asked for
 */
public record FixingRule(
        Amount fromEndAim,
        Amount atLeast,
        Amount atMost,
        Amount fromEdge,
        Amount pitchAtLeast,
        Amount pitchAtMost,
        Amount mark,
        String into,
        String fastener,
        Source source,
        List<Amount> packers) {
    private static final int MOST_PACKERS = 20;
    private static final double THINNEST_MM = 0.001;
    private static final double THICKEST_MM = 100;

    /** Checks that nothing is missing and that packers can be had. */
    public FixingRule {
        Objects.requireNonNull(fromEndAim, "fromEndAim");
        Objects.requireNonNull(atLeast, "atLeast");
        Objects.requireNonNull(atMost, "atMost");
        Objects.requireNonNull(fromEdge, "fromEdge");
        Objects.requireNonNull(pitchAtLeast, "pitchAtLeast");
        Objects.requireNonNull(pitchAtMost, "pitchAtMost");
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(into, "into");
        Objects.requireNonNull(fastener, "fastener");
        Objects.requireNonNull(source, "source");
        packers = List.copyOf(packers);
        if (packers.size() > MOST_PACKERS) {
            throw new IllegalArgumentException(
                    "number of packers must be " + MOST_PACKERS + " or less, got " + packers.size());
        }
        for (Amount packer : packers) {
            boolean length = packer.dimension() == Dimension.LENGTH;
            if (!length || !(packer.value() >= THINNEST_MM && packer.value() <= THICKEST_MM)) {
                throw new IllegalArgumentException("packer must be from " + THINNEST_MM + " mm to " + THICKEST_MM
                        + " mm, got " + packer.value() + (length ? " mm" : " of another kind"));
            }
        }
    }

    /**
     * A rule that asks for no packers.
     *
     * @param fromEndAim how far from an end of the frame to aim for
     * @param atLeast the least distance from an end
     * @param atMost the greatest distance from an end
     * @param fromEdge how far from the edge of the material
     * @param pitchAtLeast the least distance between two fixings
     * @param pitchAtMost the greatest distance between two fixings
     * @param mark the step that positions are multiples of
     * @param into what they go into, such as {@code reveal}
     * @param fastener the fastener's name in the parts list
     * @param source where the rule comes from
     */
    public FixingRule(
            Amount fromEndAim,
            Amount atLeast,
            Amount atMost,
            Amount fromEdge,
            Amount pitchAtLeast,
            Amount pitchAtMost,
            Amount mark,
            String into,
            String fastener,
            Source source) {
        this(fromEndAim, atLeast, atMost, fromEdge, pitchAtLeast, pitchAtMost, mark, into, fastener, source, List.of());
    }

    /**
     * A copy with packers.
     *
     * @param thicknesses how thick they are
     * @return the changed copy
     */
    public FixingRule withPackers(List<Amount> thicknesses) {
        return new FixingRule(
                fromEndAim,
                atLeast,
                atMost,
                fromEdge,
                pitchAtLeast,
                pitchAtMost,
                mark,
                into,
                fastener,
                source,
                thicknesses);
    }
}
