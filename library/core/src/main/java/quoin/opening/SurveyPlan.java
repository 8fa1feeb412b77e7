package quoin.opening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import quoin.measure.Dimension;
import quoin.measure.Instrument;

/**
 * Which readings to take, and in which order, so that no slip above a wanted size stays unnoticed.
 *
 * <p>The question is put about a rectangle of roughly that size. Readings of every kind count: sides, widths and lengths,
 * diagonals, crosses, corner checks, angles and bows tie the outline and check one another; depths and falls are checked by
 * a second reading of the same place, or by the middle together with all four corners. Distances are read by one instrument;
 * angles by a square, depths, falls and bows by a rule, where one is given. A reading that stands twice in the
 * list of easy ones may be read twice. What is read of the back plane stands apart and is no part of it. Immutable and safe
 * for use by many threads.
 */
public final class SurveyPlan {
    private static final int MOST_EASY = 40;
    private static final double LEAST_MM = 100;
    private static final double GREATEST_MM = 50_000;
    private static final int MOST_SETS = 10_000;
    private static final int SOME_SETS = 200;
    private static final double CLOSE = 1e-9;

    private final double widthMm;
    private final double lengthMm;
    private final double straightWithinMm;
    private final Tools tools;
    private final Optional<List<Span>> easy;
    private final List<Span> needs;
    private final List<PlanPool.Candidate> taken;
    private final List<Span> cannot;

    /** By what each kind of reading is taken; angles by none where there is no square. */
    private record Tools(Instrument lengths, Instrument offsets, Optional<Instrument> angles) {
        boolean canRead(Span span) {
            return span.dimension() != Dimension.ANGLE || angles.isPresent();
        }

        PlanPool.Candidate candidate(Span span) {
            if (span.dimension() == Dimension.ANGLE) {
                return new PlanPool.Candidate(span, angles.orElseThrow());
            }
            boolean offset = span instanceof Span.Bow || PlanPool.isOfDepth(span);
            return new PlanPool.Candidate(span, offset ? offsets : lengths);
        }
    }

    private SurveyPlan(
            double widthMm,
            double lengthMm,
            double straightWithinMm,
            Tools tools,
            Optional<List<Span>> easy,
            List<Span> needs,
            List<PlanPool.Candidate> taken,
            List<Span> cannot) {
        this.widthMm = widthMm;
        this.lengthMm = lengthMm;
        this.straightWithinMm = straightWithinMm;
        this.tools = tools;
        this.easy = easy.map(List::copyOf);
        this.needs = List.copyOf(needs);
        this.taken = List.copyOf(taken);
        this.cannot = List.copyOf(cannot);
    }

    /**
     * A plan for an opening where everything usual is easy: sides and diagonals, each twice, widths and lengths at the
     * quarters and in the middle, and from each corner to the middles of the far sides; of depths and falls a second reading
     * of each that is needed or was taken, and the depth in the middle.
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
        requireDimension(by, Dimension.LENGTH, "lengths");
        return new SurveyPlan(
                widthMm,
                lengthMm,
                straightWithinMm,
                new Tools(by, by, Optional.empty()),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of());
    }

    /**
     * A plan for an opening that is being read: as large as the readings so far have it, or 1500 by 2400 mm where they do not
     * say, and with these readings taken.
     *
     * @param survey what was read so far
     * @param by the instrument, one that reads lengths
     * @return the plan
     * @throws IllegalArgumentException if the instrument does not read lengths
     */
    public static SurveyPlan of(Survey survey, Instrument by) {
        Model model = Model.of(survey.outline(Plane.FRONT), false);
        Observations observations = Observations.of(survey, Plane.FRONT, model);
        double[] size = new Solver(model, observations).rectangleOfMeans();
        boolean isRead = observations.size() > 0;
        return of(about(isRead, size[0], 1500), about(isRead, size[2], 2400), survey.straightWithinMm(), by)
                .withTaken(survey);
    }

    private static double about(boolean isRead, double mm, double otherwise) {
        return isRead ? Math.min(GREATEST_MM, Math.max(LEAST_MM, mm)) : otherwise;
    }

    private static void requireSize(String name, double mm) {
        if (!(mm >= LEAST_MM && mm <= GREATEST_MM)) {
            throw new IllegalArgumentException(name + " must be 100 mm to 50000 mm, got " + mm + " mm");
        }
    }

    private static void requireDimension(Instrument by, Dimension dimension, String what) {
        if (by.dimension() != dimension) {
            throw new IllegalArgumentException("instrument must read " + what + ", got " + by.id() + " that reads "
                    + by.dimension().label());
        }
    }

    /** The sides, then the diagonals. */
    static List<Span> six() {
        List<Span> six = new ArrayList<>();
        for (Side side : List.of(Side.HEAD, Side.FOOT, Side.LEFT, Side.RIGHT)) {
            six.add(new Span.Edge(side));
        }
        six.add(new Span.Diagonal(Corner.HEAD_LEFT));
        six.add(new Span.Diagonal(Corner.HEAD_RIGHT));
        return six;
    }

    List<Span> usual() {
        List<Span> all = new ArrayList<>(six());
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
        all.addAll(six());
        Set<Span> deep = new LinkedHashSet<>();
        taken.forEach(one -> deep.add(one.span()));
        deep.addAll(needs);
        deep.removeIf(span -> !PlanPool.isOfDepth(span));
        if (deep.stream().anyMatch(Span.Depth.class::isInstance)) {
            deep.add(new Span.Depth("middle"));
        }
        for (Span span : deep) {
            all.add(span);
            all.add(span);
        }
        return all;
    }

    /**
     * A copy with a rule or a depth gauge: depths, falls and bows are read by it.
     *
     * @param rule the instrument, one that reads lengths
     * @return the changed copy
     * @throws IllegalArgumentException if it does not read lengths
     */
    public SurveyPlan withRule(Instrument rule) {
        requireDimension(rule, Dimension.LENGTH, "lengths");
        return with(new Tools(tools.lengths(), rule, tools.angles()));
    }

    /**
     * A copy with a square or a bevel: angles are read by it.
     *
     * @param square the instrument, one that reads angles
     * @return the changed copy
     * @throws IllegalArgumentException if it does not read angles
     */
    public SurveyPlan withSquare(Instrument square) {
        requireDimension(square, Dimension.ANGLE, "angles");
        return with(new Tools(tools.lengths(), tools.offsets(), Optional.of(square)));
    }

    private SurveyPlan with(Tools other) {
        return new SurveyPlan(widthMm, lengthMm, straightWithinMm, other, easy, needs, taken, cannot);
    }

    /**
     * A copy with other easy readings.
     *
     * @param spans what is easy to read here, 40 at most; the first are preferred among equals
     * @return the changed copy
     * @throws IllegalArgumentException if there are more, or an angle is among them and there is no square
     */
    public SurveyPlan withEasy(List<Span> spans) {
        if (spans.size() > MOST_EASY) {
            throw new IllegalArgumentException("easy must have 40 readings or fewer, got " + spans.size());
        }
        requireReadable(spans);
        return new SurveyPlan(widthMm, lengthMm, straightWithinMm, tools, Optional.of(spans), needs, taken, cannot);
    }

    /**
     * A copy with readings that must be among them, as a rulebook's survey asks.
     *
     * @param spans what must be read
     * @return the changed copy
     * @throws IllegalArgumentException if an angle is among them and there is no square
     */
    public SurveyPlan withNeeds(List<Span> spans) {
        requireReadable(spans);
        return new SurveyPlan(widthMm, lengthMm, straightWithinMm, tools, easy, spans, taken, cannot);
    }

    private void requireReadable(List<Span> spans) {
        for (Span span : spans) {
            if (!tools.canRead(span)) {
                throw new IllegalArgumentException(
                        "readings must have no angle where there is no square, got " + span.text());
            }
        }
    }

    /**
     * A copy with readings that were taken already, by the instruments of the plan.
     *
     * @param spans what was read; what was read twice stands twice
     * @return the changed copy
     * @throws IllegalArgumentException if an angle is among them and there is no square
     */
    public SurveyPlan withTaken(List<Span> spans) {
        requireReadable(spans);
        List<PlanPool.Candidate> had = spans.stream().map(tools::candidate).toList();
        return new SurveyPlan(widthMm, lengthMm, straightWithinMm, tools, easy, needs, had, cannot);
    }

    /**
     * A copy with readings that were taken already, each by its own instrument.
     *
     * @param survey what was read; of the front plane, and depths and falls
     * @return the changed copy
     */
    public SurveyPlan withTaken(Survey survey) {
        List<PlanPool.Candidate> had = new ArrayList<>();
        for (Reading reading : survey.readings()) {
            boolean counts = reading.in() == Plane.FRONT || PlanPool.isOfDepth(reading.of());
            for (int k = 0; counts && k < reading.values().size(); k++) {
                had.add(new PlanPool.Candidate(reading.of(), reading.by()));
            }
        }
        return new SurveyPlan(widthMm, lengthMm, straightWithinMm, tools, easy, needs, had, cannot);
    }

    /**
     * A copy with readings that cannot be taken.
     *
     * @param spans what cannot be read here
     * @return the changed copy
     */
    public SurveyPlan withCannot(List<Span> spans) {
        return new SurveyPlan(widthMm, lengthMm, straightWithinMm, tools, easy, needs, taken, spans);
    }

    /**
     * What to read.
     *
     * @param readings what is still to be read, in the order to take it: first what determines the outline, then what
     *     checks most; {@link Survey#walk} gives the order of a round
     * @param detectableMm of all readings, taken and to take, the largest slip that may stay unnoticed, in mm, an angle's as
     *     an offset over the longer side; infinite where nothing checks one of them
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
        return search(detectableMm, MOST_SETS);
    }

    /**
     * A small set of more readings that does, found in a fraction of the time: as {@link #smallest}, but 200 sets are tried.
     *
     * @param detectableMm the slip to be noticed, in mm, above 0
     * @return what to read; often the smallest set, rarely one or two readings more
     * @throws IllegalArgumentException if the slip is not above 0 mm
     */
    public Chosen small(double detectableMm) {
        return search(detectableMm, SOME_SETS);
    }

    private Chosen search(double detectableMm, int mostSets) {
        if (!(detectableMm > 0)) {
            throw new IllegalArgumentException("slip must be above 0 mm, got " + detectableMm + " mm");
        }
        List<Span> open = open();
        PlanPool pool = pool(open, easy.orElseGet(this::usual));
        return new PlanSearch(pool, taken.size(), taken.size() + open.size(), detectableMm, mostSets).find();
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

    /**
     * What must still be read before the survey holds what it needs: the needed readings that were not taken; what it takes
     * to determine the outline; and where a needed reading of the outline cannot be taken, another in its place, so that there
     * are as many checks as if it could. In its place comes the easy reading (then a corner check, then an angle) by which what
     * cannot be read is known best. A need that nothing can replace stays missing.
     *
     * @return the readings, needed ones first
     */
    public List<Span> missing() {
        boolean barred = needs.stream().anyMatch(span -> !isTaken(span) && cannot.contains(span));
        List<Span> open = open();
        if (!barred) {
            PlanPool plain = pool(open, List.of());
            if (plain.isDetermined(IntStream.range(0, plain.size()).toArray())) {
                return open;
            }
        }
        return new Substitutes().missing();
    }

    /** What was taken, what must be and can be, then what is easy and not among these. */
    private PlanPool pool(List<Span> open, List<Span> more) {
        List<PlanPool.Candidate> pool = new ArrayList<>(taken);
        List<Span> had = new ArrayList<>();
        taken.forEach(one -> had.add(one.span()));
        had.addAll(open);
        open.forEach(span -> pool.add(tools.candidate(span)));
        for (Span span : more) {
            if (!had.remove(span) && !cannot.contains(span)) {
                pool.add(tools.candidate(span));
            }
        }
        return new PlanPool(pool, widthMm, lengthMm, straightWithinMm);
    }

    /** The needs that can be read and were not. */
    private List<Span> open() {
        return needs.stream()
                .filter(span -> !isTaken(span) && !cannot.contains(span))
                .distinct()
                .toList();
    }

    private boolean isTaken(Span span) {
        return taken.stream().anyMatch(one -> one.span().equals(span));
    }

    /** Looks for what can be read in place of what cannot; not safe for use by many threads. */
    private final class Substitutes {
        private final List<Span> open = open();
        private final List<Span> barred = needs.stream()
                .filter(span -> !isTaken(span) && cannot.contains(span))
                .distinct()
                .toList();
        private final PlanPool pool = pool(open, candidates());
        private final Set<Span> unknown = unknown();
        private int[] had = distinct();

        private List<Span> candidates() {
            List<Span> candidates = new ArrayList<>(easy.orElseGet(SurveyPlan.this::usual));
            for (Corner corner : Corner.values()) {
                candidates.addAll(NextReading.check(corner, widthMm, lengthMm));
            }
            if (tools.angles().isPresent()) {
                for (Corner corner : Corner.values()) {
                    candidates.add(new Span.Angle(corner));
                }
            }
            candidates.removeIf(PlanPool::isOfDepth);
            return candidates;
        }

        /** What cannot be read and would tell of the outline. */
        private Set<Span> unknown() {
            Set<Span> unknown = new LinkedHashSet<>(six());
            unknown.retainAll(cannot);
            unknown.addAll(barred);
            unknown.removeIf(PlanPool::isOfDepth);
            return unknown;
        }

        /** What was taken or must be, each place once: a second reading determines nothing. */
        private int[] distinct() {
            List<Span> seen = new ArrayList<>();
            return IntStream.range(0, taken.size() + open.size())
                    .filter(i -> !PlanPool.isOfDepth(pool.span(i)) && isNew(seen, pool.span(i)))
                    .toArray();
        }

        private static boolean isNew(List<Span> seen, Span span) {
            return !seen.contains(span) && seen.add(span);
        }

        List<Span> missing() {
            List<Span> missing = new ArrayList<>(open);
            while (!pool.isDetermined(had)) {
                int next = bestOf(true);
                if (next < 0) {
                    break;
                }
                add(next, missing);
            }
            List<Span> replaced =
                    barred.stream().filter(span -> !PlanPool.isOfDepth(span)).toList();
            int wanted = replaced.isEmpty() ? 0 : checksWanted();
            while (pool.checks(had) < wanted) {
                int next = bestOf(false);
                if (next < 0) {
                    break;
                }
                add(next, missing);
            }
            boolean isReplaced = pool.isDetermined(had) && pool.checks(had) >= wanted;
            for (Span span : barred) {
                if (!isReplaced || PlanPool.isOfDepth(span)) {
                    missing.add(span);
                }
            }
            if (!pool.isDetermined(had)) {
                six().stream()
                        .filter(span -> cannot.contains(span) && !missing.contains(span))
                        .forEach(missing::add);
            }
            return missing;
        }

        private void add(int next, List<Span> missing) {
            missing.add(pool.span(next));
            had = Arrays.copyOf(had, had.length + 1);
            had[had.length - 1] = next;
        }

        /** How many checks the needs would hold if all could be read. */
        private int checksWanted() {
            List<Span> all = needs.stream()
                    .filter(span -> !PlanPool.isOfDepth(span))
                    .distinct()
                    .toList();
            PlanPool whole =
                    new PlanPool(all.stream().map(tools::candidate).toList(), widthMm, lengthMm, straightWithinMm);
            int[] each = new int[all.size()];
            Arrays.setAll(each, i -> i);
            return whole.checks(each);
        }

        /**
         * The candidate after which what cannot be read is known best; of those that leave it open, and of equals, the first.
         *
         * @param holdsMore whether it must hold the outline one way more
         */
        private int bestOf(boolean holdsMore) {
            int rank = pool.rank(had);
            int best = -1;
            double least = Double.POSITIVE_INFINITY;
            for (int i = taken.size() + open.size(); i < pool.size(); i++) {
                int[] with = Arrays.copyOf(had, had.length + 1);
                with[had.length] = i;
                if (isHad(pool.span(i)) || (holdsMore && pool.rank(with) == rank)) {
                    continue;
                }
                double sum = 0;
                for (Span span : unknown) {
                    sum += pool.variance(with, span);
                }
                if (best < 0 || sum < least - CLOSE) {
                    best = i;
                    least = sum;
                }
            }
            return best;
        }

        private boolean isHad(Span span) {
            return Arrays.stream(had).anyMatch(i -> pool.span(i).equals(span));
        }
    }

    @Override
    public String toString() {
        return "plan for " + widthMm + " by " + lengthMm + " mm by "
                + tools.lengths().id();
    }
}
