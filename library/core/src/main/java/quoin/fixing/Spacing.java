package quoin.fixing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The rules for a row of holes along one side, and the row that follows from them.
 *
 * <p>The fewest holes come first; then ends near their aim; then the least largest and the greatest smallest pitch; then
 * symmetry. All places are whole marking steps from the start of the side. Pitch and ends hold for these nominal places;
 * the half width of a fixing, the error of marking and the doubt of where things lie count against what is barred and
 * against timbers only: see {@link #withMarginMm}. Immutable and safe for use by many threads; every {@code with…} returns a
 * changed copy.
 */
public final class Spacing {
    private static final double CLOSE = 1e-6;
    private static final double MOST_STEPS = 1e6;
    /** One fixing that lets go must leave another. */
    private static final int FEWEST = 2;

    /** What a {@link SetOut.Blocked} names where no timber can be found. */
    public static final String TIMBERS = "timbers";

    /**
     * How far the first and the last hole are from their ends.
     *
     * @param aimMm where they are wanted, in mm
     * @param atLeastMm not nearer, in mm, 0 or more
     * @param atMostMm not farther, in mm
     */
    public record Ends(double aimMm, double atLeastMm, double atMostMm) {
        /** Refuses a range that is none. */
        public Ends {
            if (!(atLeastMm >= 0 && atLeastMm <= aimMm && aimMm <= atMostMm && atMostMm < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("ends must have 0 <= atLeast <= aim <= atMost, got " + atLeastMm
                        + " mm, " + aimMm + " mm and " + atMostMm + " mm");
            }
        }
    }

    /**
     * How far neighbours are apart.
     *
     * @param atLeastMm not nearer, in mm, above 0
     * @param atMostMm not farther, in mm
     */
    public record Pitch(double atLeastMm, double atMostMm) {
        /** Refuses a range that is none. */
        public Pitch {
            if (!(atLeastMm > 0 && atLeastMm <= atMostMm && atMostMm < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        "pitch must have 0 < atLeast <= atMost, got " + atLeastMm + " mm and " + atMostMm + " mm");
            }
        }
    }

    /**
     * A stretch of the side.
     *
     * @param fromMm where it begins, in mm from the start of the side
     * @param toMm where it ends, in mm, not before
     * @param because what it is
     */
    public record Stretch(double fromMm, double toMm, String because) {
        /** Refuses a stretch that is none. */
        public Stretch {
            if (!(fromMm <= toMm) || Double.isInfinite(fromMm) || Double.isInfinite(toMm)) {
                throw new IllegalArgumentException(
                        "stretch must run from not after to, got " + fromMm + " mm and " + toMm + " mm");
            }
            Objects.requireNonNull(because, "because");
        }
    }

    private final double length;
    private final Ends ends;
    private final Pitch pitch;
    private final double mark;
    private final List<Stretch> barred;
    private final List<Stretch> timbers;
    private final List<Double> used;
    private final double margin;

    private Spacing(
            double length,
            Ends ends,
            Pitch pitch,
            double mark,
            List<Stretch> barred,
            List<Stretch> timbers,
            List<Double> used,
            double margin) {
        this.length = length;
        this.ends = ends;
        this.pitch = pitch;
        this.mark = mark;
        this.barred = List.copyOf(barred);
        this.timbers = List.copyOf(timbers);
        this.used = used.stream().sorted().distinct().toList();
        this.margin = margin;
    }

    /**
     * Rules without anything in the way.
     *
     * @param lengthMm how long the side is, in mm, above 0
     * @param ends how far from the ends
     * @param pitch how far apart
     * @param markMm the marking step, in mm, above 0; the side at most a million of them
     * @return the rules
     * @throws IllegalArgumentException if a number is out of range
     */
    public static Spacing of(double lengthMm, Ends ends, Pitch pitch, double markMm) {
        if (!(lengthMm > 0 && lengthMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("length must be above 0 mm and finite, got " + lengthMm + " mm");
        }
        if (!(markMm > 0 && lengthMm / markMm <= MOST_STEPS)) {
            throw new IllegalArgumentException(
                    "mark must be above 0 mm and at least a millionth of the length, got " + markMm + " mm");
        }
        Objects.requireNonNull(ends, "ends");
        Objects.requireNonNull(pitch, "pitch");
        return new Spacing(lengthMm, ends, pitch, markMm, List.of(), List.of(), List.of(), 0);
    }

    /**
     * With stretches where no hole goes: joints, cables, old holes. A hole may lie just at the edge of one.
     *
     * @param stretches the stretches, in any order
     * @return the changed copy
     */
    public Spacing withBarred(List<Stretch> stretches) {
        return new Spacing(length, ends, pitch, mark, stretches, timbers, used, margin);
    }

    /**
     * With timbers, outside of which no hole goes.
     *
     * @param stretches the timbers; none means that holes may go anywhere
     * @return the changed copy
     */
    public Spacing withTimbers(List<Stretch> stretches) {
        return new Spacing(length, ends, pitch, mark, barred, stretches, used, margin);
    }

    /**
     * With places that must have a hole: a bracket, a hole already there.
     *
     * @param atMm the places in mm, whole marking steps on the side
     * @return the changed copy
     * @throws IllegalArgumentException if one is no whole step or not on the side
     */
    public Spacing withUsed(List<Double> atMm) {
        for (double at : atMm) {
            if (!(at >= 0 && at <= length && Math.abs(at / mark - Math.rint(at / mark)) <= CLOSE)) {
                throw new IllegalArgumentException("places to use must be whole steps of " + mark + " mm on a side of "
                        + length + " mm, got " + at + " mm");
            }
        }
        return new Spacing(length, ends, pitch, mark, barred, timbers, atMm, margin);
    }

    /**
     * With a margin by which what is barred is wider and what holds is narrower: the half width of the fixing and whatever is
     * allowed for marking and for the doubt of where things lie.
     *
     * @param marginMm the margin in mm, 0 or more
     * @return the changed copy
     * @throws IllegalArgumentException if it is below 0 or not finite
     */
    public Spacing withMarginMm(double marginMm) {
        if (!(marginMm >= 0 && marginMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("margin must be 0 mm or more and finite, got " + marginMm + " mm");
        }
        return new Spacing(length, ends, pitch, mark, barred, timbers, used, marginMm);
    }

    /**
     * The row of the fewest holes.
     *
     * @return the holes, or what blocks them
     * @formula R&#8321; = allowed places in the first range; R_k+1 = allowed places a pitch from least to most beyond one of R_k; the
     *     first R_n that meets the last range has the fewest holes, an empty one proves that there is no row
     * @unit mm
     * @edge two holes at least, unless one place that must be used serves both ends; a hole at the very edge of a barred stretch is
     *     allowed; a stretch of no length bars nothing without a margin
     * @source assumption: derived here; exact on the whole marking steps
     */
    public SetOut setOut() {
        Zones allowed = allowed(true);
        int least = (int) Math.max(1, Math.ceil(pitch.atLeastMm() / mark - CLOSE));
        int most = (int) Math.min(MOST_STEPS, Math.floor(pitch.atMostMm() / mark + CLOSE));
        Zones first = window(ends.atLeastMm() / mark, ends.atMostMm() / mark);
        Zones last = window((length - ends.atMostMm()) / mark, (length - ends.atLeastMm()) / mark);
        if (least > most) {
            return new SetOut.Blocked(pitch.atLeastMm(), pitch.atMostMm(), List.of());
        }
        if (used.isEmpty()) {
            return new Row(allowed, first, last, least, most).whole();
        }
        List<Double> at = new ArrayList<>();
        List<Double> farthest = new ArrayList<>();
        for (int i = 0; i <= used.size(); i++) {
            Zones from = i == 0 ? first : place(used.get(i - 1));
            Zones to = i == used.size() ? last : place(used.get(i));
            Row row = new Row(allowed, from, to, least, most);
            SetOut part = row.part(i == 0, i == used.size());
            if (!(part instanceof SetOut.Holes holes)) {
                return part;
            }
            at.addAll(
                    i == 0 ? holes.atMm() : holes.atMm().subList(1, holes.atMm().size()));
            farthest.addAll(holes.farthestMm());
        }
        return new SetOut.Holes(at, farthest, false);
    }

    private Zones place(double atMm) {
        int at = (int) Math.rint(atMm / mark);
        return Zones.of(at, at);
    }

    private static Zones window(double least, double greatest) {
        return Zones.of((int) Math.ceil(least - CLOSE), (int) Math.floor(greatest + CLOSE));
    }

    private Zones allowed(boolean timbersToo) {
        Zones allowed = Zones.of(0, (int) Math.floor(length / mark + CLOSE));
        for (Stretch stretch : barred) {
            allowed = allowed.without(
                    (stretch.fromMm() - margin) / mark + CLOSE, (stretch.toMm() + margin) / mark - CLOSE);
        }
        if (timbersToo && !timbers.isEmpty()) {
            Zones inTimber = Zones.NONE;
            for (Stretch timber : timbers) {
                inTimber = inTimber.or(window((timber.fromMm() + margin) / mark, (timber.toMm() - margin) / mark));
            }
            allowed = allowed.and(inTimber);
        }
        return allowed;
    }

    /** One row between two sets of places. */
    private final class Row {
        private final Zones allowed;
        private final Zones first;
        private final Zones last;
        private final int least;
        private final int most;
        private final double firstAim = ends.aimMm() / mark;
        private final double lastAim = (length - ends.aimMm()) / mark;

        Row(Zones allowed, Zones first, Zones last, int least, int most) {
            this.allowed = allowed;
            this.first = first;
            this.last = last;
            this.least = least;
            this.most = most;
        }

        SetOut whole() {
            Chain chain = new Chain(allowed, first, last);
            List<Zones> reaches = chain.shortest(least, most);
            if (blocked(reaches, chain)) {
                return why(reaches);
            }
            int holes = Math.max(FEWEST, reaches.size());
            int bound = allowed.greatest() / least + 1;
            while (holes <= bound && chain.of(holes, least, most).isEmpty()) {
                holes++;
            }
            if (holes > bound) {
                return why(reaches);
            }
            return even(holes, farthest(chain.of(holes, least, most)), true, true);
        }

        SetOut part(boolean atFirst, boolean atLast) {
            Chain chain = new Chain(allowed, first, last);
            List<Zones> reaches = chain.shortest(least, most);
            return blocked(reaches, chain) ? why(reaches) : even(reaches.size(), farthest(reaches), atFirst, atLast);
        }

        private boolean blocked(List<Zones> reaches, Chain chain) {
            return chain.isEmpty() || reaches.get(reaches.size() - 1).isEmpty();
        }

        /** Ends as near their aims as so many holes allow, then the most even row, symmetric if one is. */
        private SetOut even(int holes, List<Double> farthest, boolean aimFirst, boolean aimLast) {
            int off = nearest(holes, aimFirst, aimLast);
            Zones from = aimFirst ? first.and(near(firstAim, off)) : first;
            Zones to = aimLast ? last.and(near(lastAim, off)) : last;
            Chain chain = new Chain(allowed, from, to);
            int greatest = holes == 1 ? most : chain.leastMost(holes, least, most);
            int smallest = holes == 1 ? least : chain.greatestLeast(holes, least, greatest);
            int[] symmetric = aimFirst && aimLast ? symmetric(holes, smallest, greatest, from, to) : new int[0];
            int[] row = symmetric.length > 0
                    ? symmetric
                    : chain.row(
                            holes,
                            smallest,
                            greatest,
                            aimFirst ? firstAim : first.least(),
                            aimLast ? lastAim : last.least());
            List<Double> at = new ArrayList<>();
            for (int place : row) {
                at.add(place * mark);
            }
            return new SetOut.Holes(at, farthest, symmetric.length > 0);
        }

        private Zones near(double aim, int off) {
            return window(aim - off, aim + off);
        }

        private int nearest(int holes, boolean aimFirst, boolean aimLast) {
            int low = 0;
            if (isPossible(holes, 0, aimFirst, aimLast)) {
                return 0;
            }
            int high = (int) Math.ceil(Math.max(ends.atMostMm() - ends.aimMm(), ends.aimMm() - ends.atLeastMm()) / mark)
                    + 1;
            while (low < high) {
                int middle = (low + high) >>> 1;
                boolean possible = isPossible(holes, middle, aimFirst, aimLast);
                low = possible ? low : middle + 1;
                high = possible ? middle : high;
            }
            return high;
        }

        private boolean isPossible(int holes, int off, boolean aimFirst, boolean aimLast) {
            Zones from = aimFirst ? first.and(near(firstAim, off)) : first;
            Zones to = aimLast ? last.and(near(lastAim, off)) : last;
            return !new Chain(allowed, from, to).of(holes, least, most).isEmpty();
        }

        /** A row that is its own mirror image; empty where there is none as even, or the side is no whole number of steps. */
        private int[] symmetric(int holes, int smallest, int greatest, Zones from, Zones to) {
            double steps = length / mark;
            int sum = (int) Math.rint(steps);
            if (holes < 2 || Math.abs(steps - sum) > CLOSE) {
                return new int[0];
            }
            boolean odd = holes % 2 == 1;
            Zones middle = odd
                    ? sum % 2 == 0 ? Zones.of(sum / 2, sum / 2) : Zones.NONE
                    : window((sum - greatest) / 2.0, (sum - smallest) / 2.0);
            Zones both = allowed.and(allowed.mirrored(sum));
            Chain half = new Chain(both, from.and(to.mirrored(sum)), middle);
            int count = (holes + 1) / 2;
            if (half.isEmpty() || half.of(count, smallest, greatest).isEmpty()) {
                return new int[0];
            }
            double even = (sum - 2 * firstAim) / (holes - 1);
            int[] left = half.row(count, smallest, greatest, firstAim, firstAim + even * (count - 1));
            int[] row = new int[holes];
            for (int i = 0; i < count; i++) {
                row[i] = left[i];
                row[holes - 1 - i] = sum - left[i];
            }
            return row;
        }

        private List<Double> farthest(List<Zones> reaches) {
            List<Double> far = new ArrayList<>();
            for (int k = 0; k < reaches.size() - 1; k++) {
                far.add(reaches.get(k).greatest() * mark);
            }
            return far;
        }

        private SetOut why(List<Zones> reaches) {
            Zones reached = Zones.NONE;
            for (Zones reach : reaches) {
                reached = reach.isEmpty() ? reached : reach;
            }
            Zones next = last.and(allowed).isEmpty() ? last : reached.isEmpty() ? first : reached.stepped(least, most);
            if (next.isEmpty()) {
                return new SetOut.Blocked(0, length, List.of());
            }
            double from = next.least() * mark;
            double to = Math.min(next.greatest() * mark, length);
            List<String> because = new ArrayList<>();
            for (Stretch stretch : barred) {
                if (stretch.fromMm() - margin < to + CLOSE && stretch.toMm() + margin > from - CLOSE) {
                    because.add(stretch.because());
                }
            }
            if (!timbers.isEmpty() && !next.and(allowed(false)).isEmpty()) {
                because.add(TIMBERS);
            }
            return new SetOut.Blocked(from, to, because);
        }
    }
}
