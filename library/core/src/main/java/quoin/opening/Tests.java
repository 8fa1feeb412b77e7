package quoin.opening;

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
}
