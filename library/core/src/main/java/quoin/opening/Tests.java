package quoin.opening;

import org.jspecify.annotations.Nullable;
import quoin.measure.Uncertain;

/** What the readings say against each other, at the outline that fits them best. Not safe for use by many threads. */
final class Tests {
    static final Tests NONE = new Tests(new double[0], new double[0][], Double.NaN);
    static final double LEAST_CHECK = 1e-6;

    private final double[] weighted;
    private final double[][] between;
    private final double statistic;

    private Tests(double[] weighted, double[][] between, double statistic) {
        this.weighted = weighted;
        this.between = between;
        this.statistic = statistic;
    }

    /** From observed less computed, and where the unknowns are. */
    static Tests of(LeastSquares test, double[] rest, double[] at) {
        double[] step = test.step(rest, at);
        return new Tests(test.weightedResiduals(rest, step), test.between(), test.sumOfSquares(rest, at, step));
    }

    /** Whether there is anything to say: the observations determine the unknowns. */
    boolean areThere() {
        return weighted.length > 0;
    }

    /** −eᵢᵀPv: the weighted residual of one reading, observed minus adjusted. */
    double weighted(int i) {
        return weighted[i];
    }

    /** An element of PQᵥᵥP. */
    double between(int i, int j) {
        return between[i][j];
    }

    /** The least sum of squares, priors included. */
    double statistic() {
        return statistic;
    }

    /** The correlation of the tests of two readings; 0 where nothing checks one of them. */
    double correlation(int i, int j) {
        double both = Math.sqrt(between[i][i] * between[j][j]);
        return both > 0 ? between[i][j] / both : 0;
    }

    /** Whether anything checks a reading of that variance. */
    boolean isChecked(int i, double variance) {
        return between[i][i] * variance > LEAST_CHECK;
    }

    /**
     * What the tests say of one reading.
     *
     * @param observed what was read
     * @param residual adjusted minus observed
     * @param reach what an unnoticed slip does; null where there is no outline that could follow
     */
    AdjustedReading reading(
            int i, String of, String name, int entry, Uncertain observed, double residual, @Nullable Reach reach) {
        boolean checked = isChecked(i, observed.variance());
        double q = between[i][i];
        double root = Math.sqrt(q);
        double detectable = checked ? GlobalTest.DELTA / root : Double.POSITIVE_INFINITY;
        return new AdjustedReading(
                of,
                name,
                entry,
                observed.value(),
                residual + 0.0,
                checked ? weighted[i] / root : Double.NaN,
                checked ? weighted[i] / q : Double.NaN,
                checked ? 1 / root : Double.POSITIVE_INFINITY,
                detectable,
                reach == null ? AdjustedReading.Effect.NONE : reach.of(i, detectable));
    }
}
