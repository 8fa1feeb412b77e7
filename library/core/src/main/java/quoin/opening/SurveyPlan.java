package quoin.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.measure.Instrument;

/**
 * Which readings to take, and in which order, so that no slip above a wanted size stays unnoticed.
 *
 * <p>The question is put about a rectangle of roughly that size, read by one instrument. A reading that stands twice in the
 * list of easy ones may be read twice. Immutable and safe for use by many threads.
 */
public final class SurveyPlan {
    private static final int MOST_EASY = 40;
    private static final double LEAST_MM = 100;
    private static final double GREATEST_MM = 50_000;

    private final double widthMm;
    private final double lengthMm;
    private final double straightWithinMm;
    private final Instrument by;
    private final List<Span> easy;
    private final List<Span> needs;
    private final List<Span> taken;
    private final List<Span> cannot;

    private SurveyPlan(
            double widthMm,
            double lengthMm,
            double straightWithinMm,
            Instrument by,
            List<Span> easy,
            List<Span> needs,
            List<Span> taken,
            List<Span> cannot) {
        this.widthMm = widthMm;
        this.lengthMm = lengthMm;
        this.straightWithinMm = straightWithinMm;
        this.by = by;
        this.easy = List.copyOf(easy);
        this.needs = List.copyOf(needs);
        this.taken = List.copyOf(taken);
        this.cannot = List.copyOf(cannot);
        if (easy.size() > MOST_EASY) {
            throw new IllegalArgumentException("easy must have 40 readings or fewer, got " + easy.size());
        }
    }

    /**
     * A plan for an opening where everything usual is easy: sides and diagonals, each twice, widths and lengths at the
     * quarters and in the middle, and from each corner to the middles of the far sides.
     *
     * @param widthMm roughly how wide it is, in mm, 100 to 50 000
     * @param lengthMm roughly how long it is, in mm, 100 to 50 000
     * @param straightWithinMm its sides are straight within plus or minus this, in mm; NaN where they are taken as straight
     * @param by the instrument, one that reads lengths
     * @return the plan
     * @throws IllegalArgumentException if a size is out of range or the instrument does not read lengths
     */
    public static SurveyPlan of(double widthMm, double lengthMm, double straightWithinMm, Instrument by) {
        requireSize("width", widthMm);
        requireSize("length", lengthMm);
        if (straightWithinMm < 0 || Double.isInfinite(straightWithinMm)) {
            throw new IllegalArgumentException(
                    "straightWithin must be 0 mm or more and finite, got " + straightWithinMm + " mm");
        }
        if (by.dimension() != new Span.Edge(Side.HEAD).dimension()) {
            throw new IllegalArgumentException("instrument must read lengths, got " + by.id() + " that reads "
                    + by.dimension().label());
        }
        return new SurveyPlan(widthMm, lengthMm, straightWithinMm, by, usual(), List.of(), List.of(), List.of());
    }

    private static void requireSize(String name, double mm) {
        if (!(mm >= LEAST_MM && mm <= GREATEST_MM)) {
            throw new IllegalArgumentException(name + " must be 100 mm to 50000 mm, got " + mm + " mm");
        }
    }

    private static List<Span> usual() {
        List<Span> six = new ArrayList<>();
        for (Side side : List.of(Side.HEAD, Side.FOOT, Side.LEFT, Side.RIGHT)) {
            six.add(new Span.Edge(side));
        }
        six.add(new Span.Diagonal(Corner.HEAD_LEFT));
        six.add(new Span.Diagonal(Corner.HEAD_RIGHT));
        List<Span> all = new ArrayList<>(six);
        for (String at : List.of("1/4", "3/4", "1/2")) {
            all.add(new Span.Across(Side.LEFT, At.parse(at)));
            all.add(new Span.Across(Side.HEAD, At.parse(at)));
        }
        for (Corner corner : Corner.values()) {
            for (Side side : Side.values()) {
                if (!side.touches(corner)) {
                    all.add(new Span.Cross(corner, side, At.parse("1/2")));
                }
            }
        }
        all.addAll(six);
        return all;
    }

    /**
     * A copy with other easy readings.
     *
     * @param spans what is easy to read here, lengths, 40 at most; the first are preferred among equals
     * @return the changed copy
     * @throws IllegalArgumentException if there are more, or one is no length in the plane of the opening
     */
    public SurveyPlan withEasy(List<Span> spans) {
        spans.forEach(SurveyPlan::requireLength);
        return new SurveyPlan(widthMm, lengthMm, straightWithinMm, by, spans, needs, taken, cannot);
    }

    /**
     * A copy with readings that must be among them, as a rulebook's survey asks.
     *
     * @param spans what must be read; depths and falls, which tie no outline, are left out
     * @return the changed copy
     */
    public SurveyPlan withNeeds(List<Span> spans) {
        List<Span> lengths = spans.stream().filter(SurveyPlan::isLength).toList();
        return new SurveyPlan(widthMm, lengthMm, straightWithinMm, by, easy, lengths, taken, cannot);
    }

    /**
     * A copy with readings that were taken already.
     *
     * @param spans what was read; what ties no outline by a length is left out
     * @return the changed copy
     */
    public SurveyPlan withTaken(List<Span> spans) {
        List<Span> lengths = spans.stream().filter(SurveyPlan::isLength).toList();
        return new SurveyPlan(widthMm, lengthMm, straightWithinMm, by, easy, needs, lengths, cannot);
    }

    /**
     * A copy with readings that cannot be taken.
     *
     * @param spans what cannot be read here
     * @return the changed copy
     */
    public SurveyPlan withCannot(List<Span> spans) {
        return new SurveyPlan(widthMm, lengthMm, straightWithinMm, by, easy, needs, taken, spans);
    }

    private static boolean isLength(Span span) {
        return !(span instanceof Span.Angle || span instanceof Span.Depth || span instanceof Span.Fall);
    }

    private static void requireLength(Span span) {
        if (!isLength(span)) {
            throw new IllegalArgumentException("easy must be lengths in the plane of the opening, got " + span.text());
        }
    }

    /**
     * What to read.
     *
     * @param readings what is still to be read, in the order to take it: first what determines the outline, then what
     *     checks most
     * @param detectableMm of all readings, taken and to take, the largest slip that may stay unnoticed, in mm; infinite
     *     where nothing checks one of them
     * @param isReached whether that is what was wanted, or less
     * @param isSmallest whether it is proven that no fewer readings do
     */
    public record Chosen(List<Span> readings, double detectableMm, boolean isReached, boolean isSmallest) {
        /** Copies the list. */
        public Chosen {
            readings = List.copyOf(readings);
        }
    }

    /**
     * The fewest more readings after which every slip of that size, in any one reading, would be noticed four times in
     * five by a test at 0.1 %.
     *
     * <p>Readings are left out of all that are easy for as long as the rest does; then one more is left out and the others
     * are exchanged, one for one, until that does; then every smaller set is tried. A set is dropped unseen where even everything else together does not check what is in it, which
     * is a proof since one more reading never makes another less checked. That the answer is the smallest is proven where
     * this comes to its end, or where the sum of the redundancy numbers leaves no room for fewer; after 10 000 sets it is
     * given up, and the answer says so. Where all that is easy does not reach it, all of it is the answer.
     *
     * @param detectableMm the slip to be noticed, in mm, above 0
     * @return what to read
     * @throws IllegalArgumentException if the slip is not above 0 mm
     */
    public Chosen smallest(double detectableMm) {
        if (!(detectableMm > 0)) {
            throw new IllegalArgumentException("slip must be above 0 mm, got " + detectableMm + " mm");
        }
        return new PlanSearch(pool(), taken.size(), fixed(), detectableMm).find();
    }

    /**
     * The best one to take next.
     *
     * @param detectableMm the slip to be noticed, in mm, above 0
     * @return the first of {@link #smallest}; empty where nothing is left to take
     */
    public Optional<Span> next(double detectableMm) {
        return smallest(detectableMm).readings().stream().findFirst();
    }

    /** What was taken, what must be and can be, then what is easy and not among these. */
    private PlanPool pool() {
        List<Span> spans = new ArrayList<>(taken);
        spans.addAll(missing());
        List<Span> had = new ArrayList<>(spans);
        for (Span span : easy) {
            if (!had.remove(span) && !cannot.contains(span)) {
                spans.add(span);
            }
        }
        return new PlanPool(spans, widthMm, lengthMm, straightWithinMm, by);
    }

    private List<Span> missing() {
        return needs.stream()
                .filter(span -> !taken.contains(span) && !cannot.contains(span))
                .distinct()
                .toList();
    }

    private int fixed() {
        return taken.size() + missing().size();
    }

    @Override
    public String toString() {
        return "plan for " + widthMm + " by " + lengthMm + " mm by " + by.id();
    }
}
