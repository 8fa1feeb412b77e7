package quoin.opening;

import java.util.AbstractList;
import java.util.RandomAccess;

/**
 * What an adjustment says about each of its readings, put together when one is asked for: who wants one number of each
 * keeps nothing. Immutable and safe for use by many threads.
 */
final class AdjustedReadings extends AbstractList<AdjustedReading> implements RandomAccess {
    private final Tests tests;
    private final Observations observations;
    private final double[] rest;
    private final Reach reach;

    /** @param rest observed less computed; not to be written to */
    AdjustedReadings(Tests tests, Observations observations, double[] rest, Reach reach) {
        this.tests = tests;
        this.observations = observations;
        this.rest = rest;
        this.reach = reach;
    }

    @Override
    public AdjustedReading get(int i) {
        return tests.reading(i, observations, -rest[i], reach);
    }

    @Override
    public int size() {
        return rest.length;
    }
}
