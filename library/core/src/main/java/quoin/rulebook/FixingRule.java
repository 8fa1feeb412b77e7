package quoin.rulebook;

import java.util.Objects;
import quoin.judge.Source;
import quoin.measure.Amount;

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
        Source source) {
    /** Checks that nothing is missing. */
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
    }
}
