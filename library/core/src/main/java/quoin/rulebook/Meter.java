package quoin.rulebook;

/**
 * How many boxes may still be looked at. The work of a rulebook is bounded before it is done; a stranger's document
 * costs a message. Counts down; for use by one thread.
 */
final class Meter {
    /** So many boxes for one size or limit. */
    static final long MOST_OF_ONE = 20_000;

    /** So many boxes for a whole rulebook. */
    private static final long MOST_OF_ALL = 2_000_000;

    private long left = MOST_OF_ALL;

    /** Whether so many more may be looked at. */
    boolean take(long boxes) {
        if (boxes > MOST_OF_ONE || boxes > left) {
            return false;
        }
        left -= boxes;
        return true;
    }
}
