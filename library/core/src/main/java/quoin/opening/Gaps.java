package quoin.opening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quoin.measure.Extreme;
import quoin.measure.Influences;
import quoin.measure.Uncertain;

/**
 * The gaps round a frame of a given size in an opening, the frame held parallel to a side or turned freely, and free to
 * move.
 *
 * <p>A gap is a distance along the normal of a frame side; negative means that the frame does not go in. Immutable and
 * safe for use by many threads.
 */
public final class Gaps {
    /** What tells pushes apart counts when it is this many standard uncertainties of a slope. */
    private static final double FIRM = 3;

    /** A part that lies this many standard uncertainties above the least cannot become the least. */
    private static final double OUT_OF_REACH = 9;

    /** How many gaps can hold a frame between them: three unknowns and one. */
    private static final int MOST_HOLDING = 4;

    /** In mm for a turn by 1 rad: weighted sums that lose and gain no more by a turn do not depend on it. */
    private static final double NO_TURN = 1e-6;

    private final List<SideGap> gaps;
    private final List<Uncertain> unplaced;
    private final double[] value;
    private final double[][] push;
    /** The standard uncertainty of the slope of each. */
    private final double[] lean;

    private final Turn turn;
    /** Where along its side each is. */
    private final double[] along;

    /**
     * How the frame is turned, and how it may be.
     *
     * @param held how it lies
     * @param rad the angle
     * @param scale what makes a turn a length, in mm
     * @param by the change of each gap for a turn, over the scale
     * @param at where the frame's head-left corner lies in the opening
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared, never handed out
    private record Turn(Held held, double rad, double scale, double[] by, double[] at) {
        /** How far it may still turn, on or (below 0) back. */
        double left(boolean on) {
            return (on ? held.withinRad() : -held.withinRad()) - rad;
        }
    }

    private Gaps(List<SideGap> gaps, List<Uncertain> unplaced, Turn turn, double[] along) {
        this.along = along;
        this.gaps = gaps;
        this.unplaced = unplaced;
        this.turn = turn;
        int n = gaps.size();
        this.value = new double[n];
        this.push = new double[n][];
        this.lean = new double[n];
        for (int i = 0; i < n; i++) {
            value[i] = unplaced.get(i).value();
            double[] own = gaps.get(i).push();
            double x = own[0] + own[1];
            double y = own[2] + own[3];
            push[i] = turn.held.isFree() ? new double[] {x, y, turn.by[i]} : new double[] {x, y};
        }
        for (int i = 0; i < n; i++) {
            lean[i] = gaps.get(i).slope().standardUncertainty();
        }
    }

    /**
     * The gaps round a frame that is held parallel to the head.
     *
     * @param opening the opening
     * @param width the frame's width in mm, a decided size with its cutting tolerance
     * @param length the frame's length in mm, a decided size with its cutting tolerance
     * @return the gaps, or empty where the readings determine no shape
     * @throws IllegalArgumentException if a size is not above 0 mm
     */
    public static Optional<Gaps> of(Opening opening, Uncertain width, Uncertain length) {
        return of(opening, Held.TO_HEAD, width, length);
    }

    /**
     * The gaps round a frame: one that may turn is turned as suits it best.
     *
     * @param opening the opening
     * @param held how it lies
     * @param width the frame's width in mm, a decided size with its cutting tolerance
     * @param length the frame's length in mm, a decided size with its cutting tolerance
     * @return the gaps, or empty where the readings determine no shape
     * @throws IllegalArgumentException if a size is not above 0 mm
     */
    public static Optional<Gaps> of(Opening opening, Held held, Uncertain width, Uncertain length) {
        requireSize("width", width.value());
        requireSize("length", length.value());
        if (!opening.hasShape()) {
            return Optional.empty();
        }
        Contacts contacts = Contacts.of(opening.outlines());
        Squeeze squeeze = Squeeze.clearance(contacts, width.value(), length.value());
        Squeeze.@Nullable Tight best = Fit.best(contacts, held, opening, squeeze);
        return best == null ? Optional.empty() : Optional.of(at(opening, contacts, held, width, length, best.angle()));
    }

    /** The gaps round a frame that is turned by an angle. */
    static Gaps at(Opening opening, Contacts contacts, Held held, Uncertain width, Uncertain length, double angle) {
        contacts.turnTo(angle);
        List<SideGap> gaps = opening.gaps(contacts, held, angle);
        Influences basis =
                gaps.get(0).constant().influences().union(width.influences()).union(length.influences());
        Uncertain w = width.onto(basis);
        Uncertain l = length.onto(basis);
        double[] z = balance(gaps, w.value(), l.value());
        List<Uncertain> values = new ArrayList<>(gaps.size());
        for (SideGap gap : gaps) {
            values.add(around(gap, z, w, l));
        }
        double[] by = new double[gaps.size()];
        double[] along = new double[gaps.size()];
        for (int i = 0; i < by.length; i++) {
            by[i] = contacts.turn(i, z) / contacts.reach();
            along[i] = contacts.along(i, z);
        }
        Turn turn = new Turn(held, angle, contacts.reach(), by, contacts.inOpening(z[0], z[2]));
        return new Gaps(gaps, values, turn, along);
    }

    private static void requireSize(String name, double mm) {
        if (!(mm > 0)) {
            throw new IllegalArgumentException("frame " + name + " must be above 0 mm, got " + mm + " mm");
        }
    }

    /** The gap at that place, with the doubt of the outline and of the frame's size. */
    private static Uncertain around(SideGap gap, double[] z, Uncertain w, Uncertain l) {
        double[] own = gap.push();
        double[] partials = {1, gap.along(z), own[1], own[3]};
        return Uncertain.combine(gap.value(z), partials, gap.constant(), gap.slope(), w, l);
    }

    /** Moves the frame until left and right least gaps are equal, and head and foot least gaps. */
    private static double[] balance(List<SideGap> gaps, double w, double l) {
        SideGap[] all = gaps.toArray(SideGap[]::new);
        double[] z = {-w / 2, w / 2, -l / 2, l / 2};
        for (int round = 0; round < 100; round++) {
            double dx = (least(all, Side.RIGHT, z) - least(all, Side.LEFT, z)) / 2;
            z[0] += dx;
            z[1] = z[0] + w;
            double dy = (least(all, Side.FOOT, z) - least(all, Side.HEAD, z)) / 2;
            z[2] += dy;
            z[3] = z[2] + l;
            if (Math.abs(dx) + Math.abs(dy) < 1e-11) {
                break;
            }
        }
        return z;
    }

    private static double least(SideGap[] gaps, Side side, double[] z) {
        double least = Double.POSITIVE_INFINITY;
        for (SideGap gap : gaps) {
            if (gap.side() == side) {
                least = Math.min(least, gap.value(z));
            }
        }
        return least;
    }

    /** {@return where the balanced frame's head-left corner is along the head from head-left, in mm} */
    public double placedX() {
        return turn.at[0];
    }

    /** {@return where the balanced frame's head-left corner is towards the foot, in mm} */
    public double placedY() {
        return turn.at[1];
    }

    /** {@return how far the frame is turned from the head, in rad; positive when its right end is nearer the foot} */
    public double turnedRad() {
        return turn.rad;
    }

    /**
     * The largest least gap that any placement gives, held as the gaps are.
     *
     * @param gaps the gaps
     * @return a least whose parts are weighted sums of opposite gaps whose pushes cancel, and whose turns do, too, where
     *     the frame may turn
     * @figure gap.least
     * @formula min over all λ of Σλᵢ·gapᵢ, with λ ≥ 0, Σλᵢ = 1, Σλᵢ·pushᵢ = 0 (the dual of: lift the least gap as high as
     *     moving the frame can); for one that may turn, Σλᵢ·turnᵢ = 0 as well, or what is left of it times the turn to
     *     the end of the range is added
     * @unit mm
     * @edge negative: it does not go in; parts more than nine standard uncertainties above the least are left out
     * @source standard: duality of linear programmes (any textbook on linear optimisation)
     */
    public static Extreme least(Gaps gaps) {
        double far = OUT_OF_REACH * gaps.largestDoubt();
        List<Combination> all = gaps.combinations(far, true);
        double least = Double.POSITIVE_INFINITY;
        for (Combination c : all) {
            least = Math.min(least, c.value);
        }
        Terms terms = Terms.none();
        List<Extreme.Part> parts = new ArrayList<>(all.size());
        for (Combination c : all) {
            if (c.value <= least + far) {
                parts.add(gaps.part(c, far, terms));
            }
        }
        return Extreme.least(parts);
    }

    /**
     * What holds a frame that would grow.
     *
     * @param sum the weighted sum of the gaps that hold it
     * @param lost what growing by one takes from that sum
     */
    record Tightest(Uncertain sum, double lost) {}

    /** The sum that allows the least growth by those amounts of width and length. */
    Tightest tightest(double[] grow) {
        double[] loss = new double[gaps.size()];
        for (int i = 0; i < loss.length; i++) {
            double[] own = gaps.get(i).push();
            loss[i] = -own[1] * grow[0] - own[3] * grow[1];
        }
        double far = OUT_OF_REACH * largestDoubt();
        Combination best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Combination c : combinations(far, false)) {
            double lost = c.set.sum(loss);
            double grows = lost > NO_TURN ? c.value / lost : Double.POSITIVE_INFINITY;
            if (best == null || grows < least) {
                best = c;
                least = grows;
            }
        }
        Combination found = java.util.Objects.requireNonNull(best, "best");
        return new Tightest(part(found, far, Terms.none()).value(), found.set.sum(loss));
    }

    /**
     * Gaps with their weights, along how many axes they can be made equal (the third is a turn), how far the frame
     * turns on (or back) to the end of its range where that widens them, and what they allow there.
     */
    private record Combination(Cancelling.Set set, int axes, double turned, double value) {}

    /**
     * The sums that hold the frame: of those whose turns cancel, none that is further above the least.
     *
     * @param far how far above the least
     * @param nearOnly whether the others are left out where they are further above it, too
     */
    private List<Combination> combinations(double far, boolean nearOnly) {
        List<Combination> all = new ArrayList<>();
        if (!turn.held.isFree()) {
            for (Cancelling.Set set : Cancelling.inPlace(push)) {
                all.add(new Combination(set, 2, 0, set.sum(value)));
            }
            return all;
        }
        double least = Double.POSITIVE_INFINITY;
        for (Cancelling.Set set : Cancelling.turning(push, value, far)) {
            Combination c = new Combination(set, 3, 0, set.sum(value));
            all.add(c);
            least = Math.min(least, c.value);
        }
        double most = nearOnly ? least + far : Double.POSITIVE_INFINITY;
        for (Cancelling.Set set : Cancelling.inPlace(push, (i, j, k, wi, wj, wk) -> {
            double turns = wi * turn.by[i] + wj * turn.by[j] + (k < 0 ? 0 : wk * turn.by[k]);
            double sum = wi * value[i] + wj * value[j] + (k < 0 ? 0 : wk * value[k]);
            return Math.abs(turns * turn.scale) > NO_TURN && sum + turn.left(turns > 0) * turn.scale * turns <= most;
        })) {
            double turns = set.sum(turn.by);
            double turned = turn.left(turns > 0);
            all.add(new Combination(set, 2, turned, set.sum(value) + turned * turn.scale * turns));
        }
        return all;
    }

    private double largestDoubt() {
        double largest = 0;
        for (Uncertain gap : unplaced) {
            largest = Math.max(largest, gap.variance());
        }
        return Math.sqrt(largest);
    }

    /** What a part is a sum of, two for each gap that can hold the frame: itself and its slope. */
    @SuppressWarnings("ArrayRecordComponent") // never compared, never handed out
    private record Terms(double[] partials, Uncertain[] inputs) {
        static Terms none() {
            Uncertain[] inputs = new Uncertain[2 * MOST_HOLDING];
            Arrays.fill(inputs, Uncertain.exact(0));
            return new Terms(new double[2 * MOST_HOLDING], inputs);
        }

        void set(int at, double partial, Uncertain input) {
            partials[at] = partial;
            inputs[at] = input;
        }
    }

    private Extreme.Part part(Combination c, double far, Terms terms) {
        int[] of = c.set.of();
        double[] weight = c.set.weight();
        double[] move = evening(c);
        boolean takenAsTheyAre = isAlongOneAxis(of) && !isInHole(move, c.value - far);
        Arrays.fill(terms.partials, 0);
        for (int k = 0; k < of.length; k++) {
            SideGap gap = gaps.get(of[k]);
            terms.set(2 * k, weight[k], unplaced.get(of[k]));
            if (!takenAsTheyAre) {
                terms.set(2 * k + 1, weight[k] * (gap.slopeOf() < 2 ? move[0] : move[1]), gap.slope());
            }
        }
        return new Extreme.Part(names(of), Uncertain.combine(c.value, terms.partials, terms.inputs));
    }

    private List<String> names(int[] of) {
        String first = gaps.get(of[0]).name();
        String second = gaps.get(of[1]).name();
        if (of.length == 2) {
            return List.of(first, second);
        }
        String third = gaps.get(of[2]).name();
        return of.length == 3
                ? List.of(first, second, third)
                : List.of(first, second, third, gaps.get(of[3]).name());
    }

    /**
     * The move of the frame that makes those gaps equal, the least there is: there their weights, which follow the slopes
     * of the sides, do not change their sum to first order. None for gaps that push along nearly one line: where the doubt
     * of the slopes is as large as what tells them apart, first order says nothing, and the weights are taken as they are.
     * So they are where all are of two opposite sides and the move leads out of the hole.
     */
    private double[] evening(Combination c) {
        int[] of = c.set.of();
        double turned = c.turned * turn.scale;
        double[] move = {0, 0, turned};
        double doubt = 0;
        for (int index : of) {
            doubt = Math.max(doubt, lean[index]);
        }
        Apart apart = new Apart(push, of, c.axes);
        if (of.length <= c.axes || apart.volume() > FIRM * doubt) {
            apart.addMove(wider(of, 1, turned), wider(of, 2, turned), wider(of, 3, turned), move);
        }
        return move;
    }

    /** How much wider than the first of some gaps another is once the frame is turned on; 0 where there are not as many. */
    private double wider(int[] of, int other, double turned) {
        if (other >= of.length) {
            return 0;
        }
        int i = of[other];
        return value[i] - value[of[0]] + turned * (turn.by[i] - turn.by[of[0]]);
    }

    /** Whether all those gaps are of left and right, or all of head and foot. */
    private boolean isAlongOneAxis(int[] of) {
        int upright = 0;
        for (int index : of) {
            Side side = gaps.get(index).side();
            upright += side == Side.LEFT || side == Side.RIGHT ? 1 : 0;
        }
        return upright == 0 || upright == of.length;
    }

    /**
     * Whether a frame that is moved so still has every gap above a floor. A frame cannot go where it does not fit: gaps of
     * left and right sides alone may be equal only far beyond the head or the foot, and the slopes there say nothing.
     */
    private boolean isInHole(double[] move, double floor) {
        for (int i = 0; i < gaps.size(); i++) {
            if (!(valueOf(i) + pushed(i, move) >= floor)) {
                return false;
            }
        }
        return true;
    }

    private double pushed(int index, double[] move) {
        double turned = turn.held.isFree() ? turn.by[index] * move[2] : 0;
        return push[index][0] * move[0] + push[index][1] * move[1] + turned;
    }

    private double valueOf(int index) {
        return value[index];
    }

    /**
     * The widest gap round the balanced frame, as seen in the room.
     *
     * @param gaps the gaps
     * @return a greatest of the gaps of the front plane
     * @figure gap.greatest
     * @formula max of gap.SIDE@PLACE, left and right least gaps equal, head and foot least gaps equal
     * @unit mm
     * @edge negative: no gap anywhere
     * @source practice: a frame is centred in its hole before it is fixed
     */
    public static Extreme greatest(Gaps gaps) {
        List<Uncertain> placed = gaps.placed();
        List<Extreme.Part> parts = new ArrayList<>();
        for (int i = 0; i < gaps.gaps.size(); i++) {
            SideGap gap = gaps.gaps.get(i);
            if (gap.plane() == Plane.FRONT) {
                parts.add(new Extreme.Part(List.of(gap.name()), placed.get(i)));
            }
        }
        return Extreme.greatest(parts);
    }

    /**
     * Each gap round the balanced frame: eight at its corners, and one at each touched point of a side that is nearer the
     * frame than both corners of that side.
     *
     * @param gaps the gaps
     * @return the gaps by their figure names
     */
    public static Map<String, Uncertain> single(Gaps gaps) {
        List<Uncertain> placed = gaps.placed();
        Map<String, Uncertain> single = new LinkedHashMap<>();
        for (int i = 0; i < gaps.gaps.size(); i++) {
            SideGap gap = gaps.gaps.get(i);
            if (gap.plane() == Plane.FRONT && (gap.atCorner() || gaps.isNearerThanCorners(i))) {
                single.put(gap.name(), placed.get(i));
            }
        }
        return single;
    }

    /**
     * The gaps along one side of the balanced frame, in front: at both its ends and at each touched point between them. Between
     * two neighbours the side is straight.
     *
     * @param gaps the gaps
     * @param side the side
     * @return the gaps in order along that side of the frame, from its left or head end, in mm; touched points beyond the ends of
     *     the frame are left out
     */
    public static List<LineFit.Station> beside(Gaps gaps, Side side) {
        List<Uncertain> placed = gaps.placed();
        List<LineFit.Station> beside = new ArrayList<>();
        double end = 0;
        for (int i = 0; i < gaps.gaps.size(); i++) {
            SideGap gap = gaps.gaps.get(i);
            if (gap.plane() == Plane.FRONT && gap.side() == side) {
                beside.add(new LineFit.Station(gaps.along[i], placed.get(i)));
                end = gap.atCorner() ? Math.max(end, gaps.along[i]) : end;
            }
        }
        double last = end;
        beside.removeIf(station -> station.alongMm() < 0 || station.alongMm() > last);
        beside.sort((a, b) -> Double.compare(a.alongMm(), b.alongMm()));
        return List.copyOf(beside);
    }

    private boolean isNearerThanCorners(int index) {
        SideGap own = gaps.get(index);
        for (int i = 0; i < gaps.size(); i++) {
            SideGap other = gaps.get(i);
            boolean corner = other.atCorner() && other.side() == own.side() && other.plane() == own.plane();
            if (corner && !(valueOf(index) < valueOf(i))) {
                return false;
            }
        }
        return true;
    }

    /** The gaps as they are once a frame that may turn has followed the opening with its angle. */
    private List<Uncertain> turnedAlong() {
        if (!turn.held.isFree()) {
            return unplaced;
        }
        Combination best = null;
        for (Combination c : combinations(0, true)) {
            best = best == null || c.value < best.value ? c : best;
        }
        if (best == null || best.axes < 3 || best.set.of().length < 4) {
            return unplaced;
        }
        int[] of = best.set.of();
        double[] follow = new double[4];
        Apart apart = new Apart(push, of, 3);
        for (int k = 1; k < 4; k++) {
            double[] move = new double[3];
            apart.addMove(k == 1 ? 1 : 0, k == 2 ? 1 : 0, k == 3 ? 1 : 0, move);
            follow[k] = move[2];
            follow[0] -= follow[k];
        }
        List<Uncertain> terms = new ArrayList<>();
        for (int index : of) {
            terms.add(unplaced.get(index));
        }
        Uncertain along = Uncertain.combine(0, follow, terms);
        List<Uncertain> turned = new ArrayList<>();
        for (int i = 0; i < gaps.size(); i++) {
            turned.add(Uncertain.combine(value[i], new double[] {1, turn.by[i]}, unplaced.get(i), along));
        }
        return turned;
    }

    /** The gaps of the balanced frame; its place follows the opening, so that two gaps stay equal each way. */
    private List<Uncertain> placed() {
        List<Uncertain> unplaced = turnedAlong();
        int left = leastOf(Side.LEFT);
        int right = leastOf(Side.RIGHT);
        int head = leastOf(Side.HEAD);
        int foot = leastOf(Side.FOOT);
        double a = push[left][0] - push[right][0];
        double b = push[left][1] - push[right][1];
        double c = push[head][0] - push[foot][0];
        double d = push[head][1] - push[foot][1];
        double det = a * d - b * c;
        Uncertain across = unplaced.get(right).minus(unplaced.get(left));
        Uncertain along = unplaced.get(foot).minus(unplaced.get(head));
        List<Uncertain> result = new ArrayList<>();
        for (int i = 0; i < gaps.size(); i++) {
            double byAcross = (push[i][0] * d - push[i][1] * c) / det;
            double byAlong = (push[i][1] * a - push[i][0] * b) / det;
            result.add(
                    Uncertain.combine(valueOf(i), new double[] {1, byAcross, byAlong}, unplaced.get(i), across, along));
        }
        return List.copyOf(result);
    }

    private int leastOf(Side side) {
        int best = -1;
        for (int i = 0; i < gaps.size(); i++) {
            boolean nearer =
                    best < 0 || unplaced.get(i).value() < unplaced.get(best).value();
            if (gaps.get(i).side() == side && nearer) {
                best = i;
            }
        }
        return best;
    }
}
