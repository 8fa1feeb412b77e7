package quoin.fixing;

import java.util.Arrays;

/**
 * A set of whole numbers as closed intervals in rising order, none touching the next. Immutable.
 */
final class Zones {
    static final Zones NONE = new Zones(new int[0]);

    /** First and last of each interval, one after the other. */
    private final int[] ends;

    private Zones(int[] ends) {
        this.ends = ends;
    }

    /** Whole numbers from a first to a last; none where the last lies before the first. */
    static Zones of(int first, int last) {
        return first > last ? NONE : new Zones(new int[] {first, last});
    }

    boolean isEmpty() {
        return ends.length == 0;
    }

    int least() {
        return ends[0];
    }

    int greatest() {
        return ends[ends.length - 1];
    }

    /** What is in both. */
    Zones and(Zones other) {
        int[] r = new int[ends.length + other.ends.length];
        int n = 0;
        for (int i = 0, j = 0; i < ends.length && j < other.ends.length; ) {
            int first = Math.max(ends[i], other.ends[j]);
            int last = Math.min(ends[i + 1], other.ends[j + 1]);
            if (first <= last) {
                r[n++] = first;
                r[n++] = last;
            }
            if (ends[i + 1] < other.ends[j + 1]) {
                i += 2;
            } else {
                j += 2;
            }
        }
        return n == 0 ? NONE : new Zones(Arrays.copyOf(r, n));
    }

    /** What is in either. */
    Zones or(Zones other) {
        int[] r = new int[ends.length + other.ends.length];
        int n = 0;
        int i = 0;
        int j = 0;
        while (i < ends.length || j < other.ends.length) {
            boolean mine = j >= other.ends.length || (i < ends.length && ends[i] <= other.ends[j]);
            int first = mine ? ends[i] : other.ends[j];
            int last = mine ? ends[i + 1] : other.ends[j + 1];
            i += mine ? 2 : 0;
            j += mine ? 0 : 2;
            if (n > 0 && (long) first <= (long) r[n - 1] + 1) {
                r[n - 1] = Math.max(r[n - 1], last);
            } else {
                r[n++] = first;
                r[n++] = last;
            }
        }
        return n == 0 ? NONE : new Zones(Arrays.copyOf(r, n));
    }

    /** This without what lies strictly between two numbers. */
    Zones without(double above, double below) {
        int last = (int) Math.min(Integer.MAX_VALUE, Math.floor(above));
        int first = (int) Math.max(Integer.MIN_VALUE, Math.ceil(below));
        return isEmpty() || !(above < below) ? this : and(of(least(), last).or(of(first, greatest())));
    }

    /** All sums of one of these and a step from the least to the most, one or more. */
    Zones stepped(int least, int most) {
        int[] r = new int[ends.length];
        int n = 0;
        for (int i = 0; i < ends.length; i += 2) {
            int first = ends[i] + least;
            int last = ends[i + 1] + most;
            if (n > 0 && first <= r[n - 1] + 1) {
                r[n - 1] = Math.max(r[n - 1], last);
            } else {
                r[n++] = first;
                r[n++] = last;
            }
        }
        return n == 0 ? NONE : new Zones(Arrays.copyOf(r, n));
    }

    /** All differences from a sum. */
    Zones mirrored(int sum) {
        int[] r = new int[ends.length];
        for (int i = 0; i < ends.length; i++) {
            r[r.length - 1 - i] = sum - ends[i];
        }
        return new Zones(r);
    }

    /** The member nearest to a number, the lower one of two as near; there must be one. */
    int nearest(double wanted) {
        int best = ends[0];
        double distance = Double.POSITIVE_INFINITY;
        for (int i = 0; i < ends.length; i += 2) {
            double inside = Math.min(Math.max(wanted, ends[i]), ends[i + 1]);
            int down = (int) Math.floor(inside);
            int candidate = inside - down <= 0.5 ? down : down + 1;
            if (Math.abs(candidate - wanted) < distance) {
                distance = Math.abs(candidate - wanted);
                best = candidate;
            }
        }
        return best;
    }
}
