package quoin.opening;

import org.jspecify.annotations.Nullable;

/** What the readings say against each other, at the outline that fits them best. Immutable and safe for use by many threads. */
final class Tests {
    private static final double[] NOTHING = {};
    static final Tests NONE = new Tests(NOTHING, NOTHING, NOTHING, Double.NaN);
    static final double LEAST_CHECK = 1e-6;

    private final double[] weighted;

    /** Rows whose products with each other are minus the correlations; 0 where nothing checks a reading. */
    private final double[] halves;

    /** The roots of the diagonal of PQᵥᵥP; 0 where nothing checks a reading. */
    private final double[] roots;

    private final double statistic;

    private Tests(double[] weighted, double[] halves, double[] roots, double statistic) {
        this.weighted = weighted;
        this.halves = halves;
        this.roots = roots;
        this.statistic = statistic;
    }

    /** From observed less computed, and where the unknowns are. */
    static Tests of(LeastSquares test, double[] rest, double[] at) {
        int n = rest.length;
        double[] step = test.step(rest, at);
        double[] halves = test.halves();
        double[] weighted = new double[n];
        double[] roots = new double[n];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double w = test.weight(i);
            double left = test.left(i, rest, step);
            weighted[i] = w * left;
            sum += w * left * left;
            double check = w - w * test.product(halves, i, halves, i) * w;
            roots[i] = check > 0 ? Math.sqrt(check) : 0;
            test.scale(halves, i, check > 0 ? w / roots[i] : 0);
        }
        return new Tests(weighted, halves, roots, sum + test.priorSquares(at, step));
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
        return correlation(i, j) * roots[i] * roots[j];
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
        return 0 - LeastSquares.product(halves.length / roots.length, halves, i, halves, j);
    }

    /** Whether anything checks a reading of that variance. */
    boolean isChecked(int i, double variance) {
        return roots[i] * roots[i] * variance > LEAST_CHECK;
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
        double slipU = checked ? 1 / roots[i] : Double.POSITIVE_INFINITY;
        double w = checked ? weighted[i] * slipU : Double.NaN;
        double detectable = GlobalTest.DELTA * slipU;
        return new AdjustedReading(
                of,
                name,
                entry,
                observed,
                residual + 0.0,
                w,
                w * slipU,
                slipU,
                detectable,
                reach == null ? AdjustedReading.Effect.NONE : new AdjustedReading.Effect(reach, i, detectable));
    }
}
