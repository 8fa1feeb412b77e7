package quoin.opening;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.measure.Extreme;
import quoin.measure.Influences;
import quoin.measure.Uncertain;

/**
 * The gaps round a frame of a given size in an opening, the frame held parallel to the head and free to move.
 *
 * <p>A gap is a distance along the normal of a frame side; negative means that the frame does not go in. Immutable and
 * safe for use by many threads.
 */
public final class Gaps {
    /** Two pushes are one direction below this. */
    private static final double PARALLEL = 1e-12;

    /** What tells three pushes apart counts when it is this many standard uncertainties of a slope. */
    private static final double FIRM = 3;

    /** A part that lies this many standard uncertainties above the least cannot become the least. */
    private static final double OUT_OF_REACH = 9;

    private final List<SideGap> gaps;
    private final List<Uncertain> unplaced;
    private final double[][] push;
    private final List<Uncertain> placed;
    private final double x;
    private final double y;

    private Gaps(List<SideGap> gaps, List<Uncertain> unplaced, double[][] push, double[] place) {
        this.gaps = gaps;
        this.unplaced = unplaced;
        this.push = push;
        this.placed = placed();
        this.x = place[0];
        this.y = place[1];
    }

    /**
     * The gaps round a frame.
     *
     * @param opening the opening
     * @param width the frame's width in mm, a decided size with its cutting tolerance
     * @param length the frame's length in mm, a decided size with its cutting tolerance
     * @return the gaps, or empty where the readings determine no shape
     * @throws IllegalArgumentException if a size is not above 0 mm
     */
    public static Optional<Gaps> of(Opening opening, Uncertain width, Uncertain length) {
        requireSize("width", width.value());
        requireSize("length", length.value());
        if (!opening.hasShape()) {
            return Optional.empty();
        }
        List<SideGap> gaps = opening.gaps();
        Influences basis =
                gaps.get(0).constant().influences().union(width.influences()).union(length.influences());
        Uncertain w = width.onto(basis);
        Uncertain l = length.onto(basis);
        int n = gaps.size();
        double[][] push = new double[n][2];
        for (int i = 0; i < n; i++) {
            double[] own = gaps.get(i).push();
            push[i][0] = own[0] + own[1];
            push[i][1] = own[2] + own[3];
        }
        double[] place = balance(gaps, w.value(), l.value());
        List<Uncertain> values = new ArrayList<>();
        for (SideGap gap : gaps) {
            values.add(around(gap, place, w, l));
        }
        return Optional.of(new Gaps(gaps, values, push, place));
    }

    private static void requireSize(String name, double mm) {
        if (!(mm > 0)) {
            throw new IllegalArgumentException("frame " + name + " must be above 0 mm, got " + mm + " mm");
        }
    }

    /** The gap at that place, with the doubt of the outline and of the frame's size. */
    private static Uncertain around(SideGap gap, double[] place, Uncertain w, Uncertain l) {
        double[] z = {place[0], place[0] + w.value(), place[1], place[1] + l.value()};
        double[] own = gap.push();
        return Uncertain.combine(gap.value(z), new double[] {1, own[1], own[3]}, gap.at(z), w, l);
    }

    /** Moves the frame until left and right least gaps are equal, and head and foot least gaps. */
    private static double[] balance(List<SideGap> gaps, double w, double l) {
        double[] place = {0, 0};
        for (int round = 0; round < 100; round++) {
            double[] z = {place[0], place[0] + w, place[1], place[1] + l};
            double dx = (least(gaps, Side.RIGHT, z) - least(gaps, Side.LEFT, z)) / 2;
            place[0] += dx;
            z = new double[] {place[0], place[0] + w, place[1], place[1] + l};
            double dy = (least(gaps, Side.FOOT, z) - least(gaps, Side.HEAD, z)) / 2;
            place[1] += dy;
            if (Math.abs(dx) + Math.abs(dy) < 1e-11) {
                break;
            }
        }
        return place;
    }

    private static double least(List<SideGap> gaps, Side side, double[] z) {
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
        return x;
    }

    /** {@return where the balanced frame's head-left corner is towards the foot, in mm} */
    public double placedY() {
        return y;
    }

    /**
     * The largest least gap that any placement gives, held parallel to the head.
     *
     * @param gaps the gaps
     * @return a least whose parts are weighted sums of opposite gaps whose pushes cancel
     * @figure gap.least
     * @formula min over all λ of Σλᵢ·gapᵢ, with λ ≥ 0, Σλᵢ = 1, Σλᵢ·pushᵢ = 0 (the dual of: lift the least gap as high as
     *     moving the frame can)
     * @unit mm
     * @edge negative: the frame does not go in; first order in the readings; parts that cannot become the least are left
     *     out
     * @source standard: duality of linear programmes (any textbook on linear optimisation)
     */
    public static Extreme least(Gaps gaps) {
        List<Combination> all = gaps.combinations();
        double least = Double.POSITIVE_INFINITY;
        for (Combination c : all) {
            double value = gaps.value(c);
            least = Math.min(least, value);
        }
        double far = OUT_OF_REACH * gaps.largestDoubt();
        List<Extreme.Part> parts = new ArrayList<>();
        for (Combination c : all) {
            if (gaps.value(c) <= least + far) {
                parts.add(gaps.part(c, far));
            }
        }
        return Extreme.least(parts);
    }

    /** Weights of two or three gaps whose pushes cancel. */
    @SuppressWarnings("ArrayRecordComponent") // never compared, never handed out
    private record Combination(int[] of, double[] weight) {}

    private List<Combination> combinations() {
        List<Combination> all = new ArrayList<>();
        int n = gaps.size();
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                double across = cross(i, j);
                if (Math.abs(across) < PARALLEL && push[i][0] * push[j][0] + push[i][1] * push[j][1] < 0) {
                    all.add(pair(i, j));
                }
                for (int k = j + 1; k < n && Math.abs(across) >= PARALLEL; k++) {
                    triple(i, j, k, across, all);
                }
            }
        }
        return all;
    }

    private Combination pair(int i, int j) {
        double a = StrictMath.hypot(push[j][0], push[j][1]);
        double b = StrictMath.hypot(push[i][0], push[i][1]);
        return new Combination(new int[] {i, j}, new double[] {a / (a + b), b / (a + b)});
    }

    private void triple(int i, int j, int k, double ij, List<Combination> all) {
        double jk = cross(j, k);
        double ki = cross(k, i);
        boolean positive = ij > PARALLEL && jk > PARALLEL && ki > PARALLEL;
        boolean negative = ij < -PARALLEL && jk < -PARALLEL && ki < -PARALLEL;
        if (positive || negative) {
            double sum = ij + jk + ki;
            all.add(new Combination(new int[] {i, j, k}, new double[] {jk / sum, ki / sum, ij / sum}));
        }
    }

    private double cross(int i, int j) {
        return push[i][0] * push[j][1] - push[i][1] * push[j][0];
    }

    private double value(Combination c) {
        double sum = 0;
        for (int k = 0; k < c.of.length; k++) {
            sum += c.weight[k] * unplaced.get(c.of[k]).value();
        }
        return sum;
    }

    private double largestDoubt() {
        double largest = 0;
        for (Uncertain gap : unplaced) {
            largest = Math.max(largest, gap.standardUncertainty());
        }
        return largest;
    }

    private Extreme.Part part(Combination c, double far) {
        double[] evening = evening(c.of);
        boolean takenAsTheyAre = isAlongOneAxis(c.of) && !isInHole(evening, value(c) - far);
        double[] move = takenAsTheyAre ? new double[] {0, 0} : evening;
        List<String> names = new ArrayList<>();
        List<Uncertain> terms = new ArrayList<>();
        for (int index : c.of) {
            names.add(gaps.get(index).name());
            terms.add(moved(index, move));
        }
        return new Extreme.Part(names, Uncertain.combine(value(c), c.weight, terms));
    }

    /**
     * The move of the frame that makes those gaps equal: there their weights, which follow the slopes of the sides, do
     * not change their sum to first order. None for three gaps that push along nearly one line: where the doubt of the
     * slopes is as large as what tells them apart, first order says nothing, and the weights are taken as they are. So they
     * are where all three are of two opposite sides and the move leads out of the hole.
     */
    private double[] evening(int[] of) {
        int i = of[0];
        int j = of[1];
        double ij = valueOf(j) - valueOf(i);
        double ax = push[i][0] - push[j][0];
        double ay = push[i][1] - push[j][1];
        if (of.length == 2) {
            double square = ax * ax + ay * ay;
            return new double[] {ij * ax / square, ij * ay / square};
        }
        int k = of[2];
        double ik = valueOf(k) - valueOf(i);
        double bx = push[i][0] - push[k][0];
        double by = push[i][1] - push[k][1];
        double det = ax * by - ay * bx;
        double doubt = 0;
        for (int index : of) {
            doubt = Math.max(doubt, gaps.get(index).slope().standardUncertainty());
        }
        if (!(Math.abs(det) > FIRM * doubt)) {
            return new double[] {0, 0};
        }
        return new double[] {(ij * by - ik * ay) / det, (ik * ax - ij * bx) / det};
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
            if (!(valueOf(i) + push[i][0] * move[0] + push[i][1] * move[1] >= floor)) {
                return false;
            }
        }
        return true;
    }

    private double valueOf(int index) {
        return unplaced.get(index).value();
    }

    private Uncertain moved(int index, double[] move) {
        SideGap gap = gaps.get(index);
        double value = valueOf(index) + push[index][0] * move[0] + push[index][1] * move[1];
        double[] partials = {1, gap.slopeOf() < 2 ? move[0] : move[1]};
        return Uncertain.combine(value, partials, unplaced.get(index), gap.slope());
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
        List<Extreme.Part> parts = new ArrayList<>();
        for (int i = 0; i < gaps.gaps.size(); i++) {
            SideGap gap = gaps.gaps.get(i);
            if (gap.plane() == Plane.FRONT) {
                parts.add(new Extreme.Part(List.of(gap.name()), gaps.placed.get(i)));
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
        Map<String, Uncertain> single = new LinkedHashMap<>();
        for (int i = 0; i < gaps.gaps.size(); i++) {
            SideGap gap = gaps.gaps.get(i);
            if (gap.plane() == Plane.FRONT && (gap.atCorner() || gaps.isNearerThanCorners(i))) {
                single.put(gap.name(), gaps.placed.get(i));
            }
        }
        return single;
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

    /** The gaps of the balanced frame; its place follows the opening, so that two gaps stay equal each way. */
    private List<Uncertain> placed() {
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
