package quoin.opening;

import org.jspecify.annotations.Nullable;

/** What the readings say against each other, at the outline that fits them best. Immutable and safe for use by many threads. */
final class Tests {
    static final Tests NONE = new Tests(new double[0], new double[0], new double[0], new double[0], Double.NaN);
    static final double LEAST_CHECK = 1e-6;

    private final double[] weighted;
    private final double[] weight;
    private final double[] halves;
    private final double[] checks;
    private final double statistic;

    private Tests(double[] weighted, double[] weight, double[] halves, double[] checks, double statistic) {
        this.weighted = weighted;
        this.weight = weight;
        this.halves = halves;
        this.checks = checks;
        this.statistic = statistic;
    }

    /** From observed less computed, and where the unknowns are. */
    static Tests of(LeastSquares test, double[] rest, double[] at) {
        int n = rest.length;
        double[] step = test.step(rest, at);
        double[] halves = test.halves();
        double[] weighted = new double[n];
        double[] weight = new double[n];
        double[] checks = new double[n];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double w = test.weight(i);
            double left = test.left(i, rest, step);
            weight[i] = w;
            weighted[i] = w * left;
            sum += w * left * left;
            checks[i] = w - w * product(halves, i, i, step.length) * w;
        }
        return new Tests(weighted, weight, halves, checks, sum + test.priorSquares(at, step));
    }

    /** The product of two rows of an array. */
    static double product(double[] halves, int i, int j, int width) {
        double sum = 0;
        for (int k = 0; k < width; k++) {
            sum += halves[i * width + k] * halves[j * width + k];
        }
        return sum;
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
        int one = Math.max(i, j);
        int other = Math.min(i, j);
        return one == other
                ? checks[one]
                : -weight[one] * product(halves, one, other, halves.length / weight.length) * weight[other];
    }

    /** The least sum of squares, priors included. */
    double statistic() {
        return statistic;
    }

    /** The correlation of the tests of two readings; 0 where nothing checks one of them. */
    double correlation(int i, int j) {
        double both = Math.sqrt(checks[i] * checks[j]);
        return both > 0 ? between(i, j) / both : 0;
    }

    /** Whether anything checks a reading of that variance. */
    boolean isChecked(int i, double variance) {
        return checks[i] * variance > LEAST_CHECK;
    }

    /** What the tests say of one reading of an outline. */
    AdjustedReading reading(int i, Observations of, double residual, Reach reach) {
        String text = of.text(i);
        String id = of.reading(i).id();
        String name = id.isEmpty() ? text : id;
        return reading(i, text, name, of.entry(i), of.read(i), of.variance(i), residual, reach);
    }

    /**
     * What the tests say of one reading.
     *
     * @param observed what was read
     * @param variance its variance
     * @param residual adjusted minus observed
     * @param reach what an unnoticed slip does; null where there is no outline that could follow
     */
    AdjustedReading reading(
            int i,
            String of,
            String name,
            int entry,
            double observed,
            double variance,
            double residual,
            @Nullable Reach reach) {
        boolean checked = isChecked(i, variance);
        double root = Math.sqrt(checks[i]);
        double detectable = checked ? GlobalTest.DELTA / root : Double.POSITIVE_INFINITY;
        return new AdjustedReading(
                of,
                name,
                entry,
                observed,
                residual + 0.0,
                checked ? weighted[i] / root : Double.NaN,
                checked ? weighted[i] / checks[i] : Double.NaN,
                checked ? 1 / root : Double.POSITIVE_INFINITY,
                detectable,
                reach == null ? AdjustedReading.Effect.NONE : reach.of(i, detectable));
    }
}
