package quoin.opening;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import org.jspecify.annotations.Nullable;

/**
 * The best angle of a range: a search in one dimension that splits the range at its break points and gives up a piece only
 * when it cannot hold anything better.
 *
 * <p>What holds the frame at one angle bounds what can be had at any other of its piece: the aim lies below a curve through
 * each point found, whose slope there is known and whose second derivative each {@link Peak} bounds. Where two such curves
 * cross is the highest that a piece can hold, and there it is split. Pieces are given up at 1e-11 rad, and the search after
 * 2000 angles (the most seen in long thin bulging openings is about 400); a piece at whose end nothing can be had, since a side
 * no longer faces the frame, is not looked into. Not safe for use by many threads.
 *
 * @param <P> what is found at an angle
 */
final class AngleSearch<P extends AngleSearch.Peak> {
    private static final double NARROWEST = 1e-11;
    private static final double COARSE = Math.PI / 180;
    private static final int MOST = 2000;

    /** In mm: what differs by less is as good, and the angle nearer to 0 is taken. */
    private static final double AS_GOOD = 1e-8;

    /** In rad: angles nearer to each other than this belong to one peak. */
    private static final double ONE_PEAK = 1e-5;

    /** What can be had at an angle. */
    interface Peak {
        double angle();

        double value();

        /** The change of the value for a turn, per rad. */
        double slope();

        /** Whether the same gaps hold the frame, so that the curve is the same, and it turns at most once in a piece. */
        boolean isHeldAs(Peak other);

        /** What the second derivative of its curve is at most, per rad², so far from its angle; may be infinite. */
        double bend(double within);
    }

    /** Finds what can be had at an angle; null where nothing. */
    interface Aim<P extends Peak> {
        @Nullable
        P at(double angle);
    }

    private record Piece<P>(P from, P to) {}

    private final Aim<P> aim;
    private final double close;
    private final Deque<Piece<P>> pieces = new ArrayDeque<>();
    private @Nullable P best;
    private int count;

    private AngleSearch(Aim<P> aim, double close) {
        this.aim = aim;
        this.close = close;
    }

    /**
     * The best there is.
     *
     * @param within how far from 0, either way, in rad
     * @param breaks angles where the aim has an edge: between them what holds the frame at one angle could do so at all
     * @param close how much better the true best may be
     */
    static <P extends Peak> @Nullable P best(double within, double[] breaks, double close, Aim<P> aim) {
        return new AngleSearch<>(aim, close).run(within, breaks);
    }

    private @Nullable P run(double within, double[] breaks) {
        if (!cut(within, breaks)) {
            pieces.clear();
            cutFinely(within, breaks);
        }
        while (!pieces.isEmpty() && count < MOST) {
            split(pieces.removeLast());
        }
        return best;
    }

    /** Cuts the range at its break points and at 0, and takes in its ends where they may be better; false where nothing can be had. */
    private boolean cut(double within, double[] breaks) {
        double[] angles = Arrays.copyOf(breaks, breaks.length + 1);
        Arrays.sort(angles);
        P first = null;
        P last = null;
        for (double angle : angles) {
            if (last == null || angle != last.angle()) {
                P next = look(angle);
                if (next == null) {
                    return false;
                }
                if (last != null) {
                    pieces.add(new Piece<>(last, next));
                }
                first = first == null ? next : first;
                last = next;
            }
        }
        return first != null && last != null && addEnd(first, -within) && addEnd(last, within);
    }

    private boolean addEnd(P at, double end) {
        double turn = end - at.angle();
        double bend = at.bend(Math.abs(turn));
        double highest = at.value() + at.slope() * turn + bend * turn * turn / 2;
        if (best != null && highest <= best.value()) {
            return true;
        }
        P other = look(end);
        if (other == null) {
            return false;
        }
        pieces.add(turn < 0 ? new Piece<>(other, at) : new Piece<>(at, other));
        return true;
    }

    /** Cuts the range into pieces of a degree or so, and at its break points; those where nothing can be had are left out. */
    private void cutFinely(double within, double[] breaks) {
        int half = (int) Math.ceil(within / COARSE);
        double[] angles = Arrays.copyOf(breaks, breaks.length + 2 * half + 1);
        for (int i = -half; i <= half; i++) {
            angles[breaks.length + half + i] = within * i / half + 0.0;
        }
        Arrays.sort(angles);
        P last = null;
        for (int i = 0; i < angles.length; i++) {
            if (i > 0 && angles[i] == angles[i - 1]) {
                continue;
            }
            P next = look(angles[i]);
            if (last != null && next != null) {
                pieces.add(new Piece<>(last, next));
            }
            last = next;
        }
    }

    private @Nullable P look(double angle) {
        count++;
        P found = aim.at(angle);
        if (found != null && (best == null || isBetter(found, best))) {
            best = found;
        }
        return found;
    }

    /** Of two peaks that are as good the one that is turned less, so that no rounding decides between them. */
    private static boolean isBetter(Peak one, Peak other) {
        double more = one.value() - other.value();
        if (Math.abs(more) > AS_GOOD || Math.abs(one.angle() - other.angle()) <= ONE_PEAK) {
            return more > 0;
        }
        double less = Math.abs(other.angle()) - Math.abs(one.angle());
        return Math.abs(less) > ONE_PEAK ? less > 0 : one.angle() < other.angle();
    }

    private void split(Piece<P> piece) {
        P a = piece.from;
        P b = piece.to;
        double wide = b.angle() - a.angle();
        if (wide < NARROWEST || best == null) {
            return;
        }
        boolean same = a.isHeldAs(b);
        if (same && !(a.slope() > 0 && b.slope() < 0)) {
            return;
        }
        double bendA = a.bend(wide);
        double bendB = b.bend(wide);
        double bend = Math.max(bendA, bendB);
        double at = a.angle() + wide / 2;
        double highest;
        if (bend < Double.POSITIVE_INFINITY) {
            double steeper = a.slope() - b.slope() + bend * wide;
            double fall = b.value() - a.value() - b.slope() * wide + bend * wide * wide / 2;
            double step = steeper > 0 ? Math.min(Math.max(fall / steeper, 0), wide) : wide / 2;
            highest = a.value() + a.slope() * step + bend * step * step / 2;
            at = same ? a.angle() + wide * a.slope() / (a.slope() - b.slope()) : a.angle() + step;
        } else {
            highest = Math.min(
                    bendA < bend ? a.value() + a.slope() * wide + bendA * wide * wide / 2 : bend,
                    bendB < bend ? b.value() - b.slope() * wide + bendB * wide * wide / 2 : bend);
        }
        if (!(highest > best.value() + close)) {
            return;
        }
        boolean inside = at > a.angle() + NARROWEST && at < b.angle() - NARROWEST;
        P next = look(inside ? at : a.angle() + wide / 2);
        if (next != null) {
            pieces.add(new Piece<>(a, next));
            pieces.add(new Piece<>(next, b));
        }
    }
}
