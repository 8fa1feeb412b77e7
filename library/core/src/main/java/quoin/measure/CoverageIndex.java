package quoin.measure;

/**
 * Which of M sorted trials are the ends of an interval that holds p of them (JCGM 101:2008, 7.7).
 *
 * @param inside q, how many steps from the lower end to the upper one
 * @param outside M − q
 */
record CoverageIndex(int inside, int outside) {
    static CoverageIndex of(int trials, double probability) {
        int q = (int) StrictMath.min(trials - 1.0, StrictMath.floor(probability * trials + 0.5));
        return new CoverageIndex(q, trials - q);
    }

    /** The position of the lower end, from 0. */
    int start(MonteCarlo.Interval interval, double[] sorted) {
        return interval == MonteCarlo.Interval.SYMMETRIC ? symmetricStart() : shortestStart(sorted, sorted, 0);
    }

    /** ⌊(M − q + 1) / 2⌋ counted from 1. */
    int symmetricStart() {
        return (outside + 1) / 2 - 1;
    }

    /** The first position with the least width; the upper ends stand shifted down by so many places. */
    int shortestStart(double[] lower, double[] upper, int shift) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int r = 0; r < outside; r++) {
            double width = upper[r + inside - shift] - lower[r];
            if (width < least) {
                least = width;
                best = r;
            }
        }
        return best;
    }
}
