package quoin.rulebook;

/**
 * Where a line is cut, and the points next to a cut.
 *
 * <p>A cut lies just before or just after an exact value v: 2v or 2v + 1, so that cuts compare as numbers. A point is a
 * value, or what lies infinitely little below or above it: 4v, 4v &minus; 1, 4v + 1.
 */
final class Cut {
    /** The end of the line below, and above. */
    static final long BELOW_ALL = Long.MIN_VALUE;

    static final long ABOVE_ALL = Long.MAX_VALUE;

    private Cut() {}

    static long before(long value) {
        return 2 * value;
    }

    static long after(long value) {
        return 2 * value + 1;
    }

    /** The value at a cut. */
    static long value(long cut) {
        return StrictMath.floorDiv(cut, 2L);
    }

    /** Whether the value itself lies above the cut. */
    static boolean isBefore(long cut) {
        return StrictMath.floorMod(cut, 2L) == 0;
    }

    static boolean isEnd(long cut) {
        return cut == BELOW_ALL || cut == ABOVE_ALL;
    }

    /** The first point above a cut. */
    static long firstAbove(long cut) {
        return isBefore(cut) ? 2 * cut : 2 * cut - 1;
    }

    /** The last point below a cut. */
    static long lastBelow(long cut) {
        return isBefore(cut) ? 2 * cut - 1 : 2 * cut - 2;
    }

    static long point(long value) {
        return 4 * value;
    }

    /** The value that a point is, or is next to. */
    static long valueOf(long point) {
        return StrictMath.floorDiv(point + 1, 4L);
    }

    /** &minus;1, 0 or 1: below the value, at it, above it. */
    static int sideOf(long point) {
        return (int) (point - 4 * valueOf(point));
    }

    /** How many of the cuts, which ascend, lie at or below one. */
    static int countUpTo(long[] cuts, long cut) {
        int low = 0;
        int high = cuts.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (cuts[middle] <= cut) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** How many of the cuts, which ascend, lie below a value. */
    static int countBelow(long[] cuts, long value) {
        return countUpTo(cuts, before(value));
    }
}
