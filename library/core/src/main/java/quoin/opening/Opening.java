package quoin.opening;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quoin.measure.Influence;
import quoin.measure.Uncertain;

/**
 * The shape of an opening as its readings give it, every point with its doubt, in every plane that was read.
 *
 * <p>Where something is still to come on the sides, the outline is the one that will be. Immutable and safe for use by
 * many threads.
 */
public final class Opening {
    private final Survey survey;
    private final Adjustment adjustment;
    /** All its points on one list of influences. */
    private final @Nullable Outline front;

    private final @Nullable BackPlane back;
    private final List<PlaneTest> planes;

    private Opening(Survey survey, Adjustment adjustment, @Nullable Outline front, @Nullable BackPlane back) {
        this.survey = survey;
        this.adjustment = adjustment;
        this.front = front;
        this.back = back;
        List<PlaneTest> tests = new ArrayList<>();
        back().ifPresent(plane -> tests.add(plane.test()));
        DepthPlane.of(survey).ifPresent(tests::add);
        this.planes = List.copyOf(tests);
    }

    /**
     * The shape that fits the readings best.
     *
     * @param survey what was read
     * @return the opening; without a shape where the readings do not determine one or cannot close
     */
    public static Opening of(Survey survey) {
        Adjustment adjustment = Adjustment.of(survey, Plane.FRONT);
        if (!adjustment.isSolved()) {
            return new Opening(survey, adjustment, null, null);
        }
        Outline asRead = Outline.of(adjustment);
        BackPlane back = BackPlane.of(survey, asRead).orElse(null);
        Map<Side, Uncertain> still = still(survey.finish());
        if (still.isEmpty()) {
            return new Opening(survey, adjustment, asRead, back);
        }
        Outline lined = asRead.inset(still);
        Outline.Vertex origin = lined.corner(Corner.HEAD_LEFT);
        Uncertain dx = origin.x().negated();
        Uncertain dy = origin.y().negated();
        BackPlane behind = back == null
                ? null
                : new BackPlane(back.outline().inset(still).moved(dx, dy), back.test(), back.unused());
        Outline placed = lined.moved(dx, dy);
        return new Opening(survey, adjustment, placed.onto(placed.influences()), behind);
    }

    private static Map<Side, Uncertain> still(Finish finish) {
        Map<Side, Uncertain> still = new EnumMap<>(Side.class);
        finish.still().forEach((side, value) -> {
            double u = value.doubt().standardUncertainty(value.mm());
            Influence influence =
                    new Influence("still/" + side.text(), value.doubt().shape(), u, Double.POSITIVE_INFINITY, "");
            still.put(side, Uncertain.of(value.mm(), influence));
        });
        return still;
    }

    /** {@return what was read} */
    public Survey survey() {
        return survey;
    }

    /** {@return the adjustment of the front plane} */
    public Adjustment adjustment() {
        return adjustment;
    }

    /** {@return whether the readings determine a shape} */
    public boolean hasShape() {
        return front != null;
    }

    /**
     * Where a corner of the front plane lies.
     *
     * @param corner the corner
     * @return x along the head and y towards the foot, in mm, from head-left
     * @throws IllegalStateException if there is no shape
     */
    public List<Uncertain> corner(Corner corner) {
        Outline.Vertex vertex = front().corner(corner);
        return List.of(vertex.x(), vertex.y());
    }

    /**
     * Whether the readings of the other planes can be right together: the back of the recess, and the depths with falls.
     *
     * @return one test for each plane that was read, the back first
     */
    public List<PlaneTest> planes() {
        return planes;
    }

    /** {@return readings of the back plane that could not be used, as they do not determine it} */
    public List<String> unusedBehind() {
        return back == null ? List.of() : back.unused();
    }

    Outline front() {
        if (front == null) {
            throw new IllegalStateException("opening must be determined by its readings, got " + adjustment.state());
        }
        return front;
    }

    Optional<BackPlane> back() {
        return Optional.ofNullable(back);
    }

    /** The outlines of every plane that was read, the front first. */
    List<Outline> outlines() {
        List<Outline> all = new ArrayList<>();
        all.add(front());
        back().ifPresent(plane -> all.add(plane.outline()));
        return all;
    }

    /** All gaps of every plane round a frame that is held so and turned by that angle, on one list of influences. */
    List<SideGap> gaps(Contacts contacts, Held held, double angle) {
        Outline ahead = front();
        if (back != null) {
            ahead = ahead.onto(ahead.influences().union(back.outline().influences()));
        }
        boolean follows = !held.isFree() && held.side() != Side.HEAD;
        Uncertain by = follows ? Fit.angle(ahead, held.side()) : Uncertain.exact(angle);
        List<SideGap> gaps =
                new ArrayList<>(SideGap.of(ahead.turned(by, contacts.pivotX(), contacts.pivotY()), Plane.FRONT));
        if (back != null) {
            Outline behind = back.outline().onto(ahead.influences());
            gaps.addAll(SideGap.of(behind.turned(by, contacts.pivotX(), contacts.pivotY()), Plane.BACK));
        }
        return gaps;
    }
}
