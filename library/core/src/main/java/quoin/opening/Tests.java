package quoin.opening;

import org.jspecify.annotations.Nullable;

/** What the readings say against each other, at the outline that fits them best. Immutable and safe for use by many threads. */
final class Tests {
    private static final double[] NOTHING = {};
    static final Tests NONE = new Tests(NOTHING, NOTHING, NOTHING, NOTHING, NOTHING, Double.NaN);
    static final double LEAST_CHECK = 1e-6;

    private final double[] weighted;

    /** Rows whose products with each other, times a number for each of the two, are minus the correlations. */
    private final double[] halves;

    /** That number; 0 where nothing checks a reading. */
    private final double[] scales;

    /** The roots of the diagonal of PQᵥᵥP; 0 where nothing checks a reading. */
    private final double[] roots;

    private final double[] checks;
    private final double statistic;

    private Tests(
            double[] weighted, double[] halves, double[] scales, double[] roots, double[] checks, double statistic) {
        this.weighted = weighted;
        this.halves = halves;
        this.scales = scales;
        this.roots = roots;
        this.checks = checks;
        this.statistic = statistic;
    }

    /** From observed less computed, and where the unknowns are. */
    static Tests of(LeastSquares test, double[] rest, double[] at) {
        int n = rest.length;
        double[] step = test.step(rest, at);
        double[] halves = test.halves();
        double[] weighted = new double[n];
        double[] scales = new double[n];
        double[] roots = new double[n];
        double[] checks = new double[n];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double w = test.weight(i);
            double left = test.left(i, rest, step);
            weighted[i] = w * left;
            sum += w * left * left;
            double check = w - w * test.product(halves, i, halves, i) * w;
            checks[i] = check;
            roots[i] = check > 0 ? Math.sqrt(check) : 0;
            scales[i] = check > 0 ? w / roots[i] : 0;
        }
        return new Tests(weighted, halves, scales, roots, checks, sum + test.priorSquares(at, step));
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
        return i == j ? checks[i] : correlation(i, j) * roots[i] * roots[j];
    }

    /** The least sum of squares, priors included. */
    double statistic() {
        return statistic;
    }

    /** The correlation of the tests of two readings; 0 where nothing checks one of them. */
    double correlation(int i, int j) {
        if (i == j) {
            return roots[i] > 0 ? 1 : 0;
        }
        return 0 - LeastSquares.product(halves.length / roots.length, halves, i, halves, j) * scales[i] * scales[j];
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
        double root = roots[i];
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
                reach == null ? AdjustedReading.Effect.NONE : new AdjustedReading.Effect(reach, i, detectable));
    }
}
