package quoin.opening;

import java.util.Arrays;

/**
 * Least squares of observations that may share errors, and what the observations say against each other.
 *
 * <p>The covariance of the observations is C = V + SSᵀ, V diagonal and one column of S for each shared error. A shared
 * error is carried as one more unknown, of prior 0 and variance 1: with B = [A S] and M = BᵀV⁻¹B + prior weights the
 * estimate and PQᵥᵥP = V⁻¹ − V⁻¹BM⁻¹BᵀV⁻¹ are those of the full covariance, and C is never inverted. The last unknowns
 * may have a prior 0 of their own. Rows lie one after the other in one array. Not safe for use by many threads until the
 * rows are set for good.
 */
final class LeastSquares {
    static final LeastSquares NONE = new LeastSquares(new double[0], new double[0][], new double[0]);

    private final double[] weight;
    private final double[][] shared;
    private final double[] priors;
    private final int n;
    private double[] rows = {};
    private double[] triangle = {};
    private Cholesky normal = new Cholesky(rows, 0, 0);
    private int unknowns;
    private int width;

    /**
     * @param variance the variance of what is fresh in each observation, above 0; its array is taken for the weights
     * @param shared for each shared error its effect on each observation
     * @param priors the weights of the prior 0 of the last unknowns
     */
    LeastSquares(double[] variance, double[][] shared, double[] priors) {
        this.n = variance.length;
        this.shared = shared;
        this.priors = priors;
        this.weight = variance;
        for (int i = 0; i < n; i++) {
            weight[i] = 1 / variance[i];
        }
    }

    /** Sets how each observation follows the unknowns; whether that and the priors determine them all. */
    boolean isDetermined(double[][] design) {
        int m = design[0].length;
        double[] flat = new double[n * m];
        for (int i = 0; i < n; i++) {
            System.arraycopy(design[i], 0, flat, i * m, m);
        }
        return isDetermined(flat, m);
    }

    /** The same for rows one after the other, which must not change as long as the answers are asked for. */
    boolean isDetermined(double[] design, int ofUnknowns) {
        unknowns = ofUnknowns;
        width = unknowns + shared.length;
        rows = shared.length == 0 ? design : withShared(design);
        empty(Cholesky.sizeOf(width));
        for (int k = 0; k < priors.length; k++) {
            int at = unknowns - priors.length + k;
            triangle[Cholesky.row(at) + at] = priors[k];
        }
        for (int k = unknowns; k < width; k++) {
            triangle[Cholesky.row(k) + k] = 1;
        }
        addSquares(triangle, rows, width, weight);
        normal = new Cholesky(triangle, width, 0);
        return normal.isDefinite();
    }

    private void empty(int size) {
        if (triangle.length == size) {
            Arrays.fill(triangle, 0);
        } else {
            triangle = new double[size];
        }
    }

    private double[] withShared(double[] design) {
        double[] wide = new double[n * width];
        for (int i = 0; i < n; i++) {
            System.arraycopy(design, i * unknowns, wide, i * width, unknowns);
            for (int k = 0; k < shared.length; k++) {
                wide[i * width + unknowns + k] = shared[k][i];
            }
        }
        return wide;
    }

    /** Adds weight times row times row, row by row, to the rows of a lower triangle. */
    static void addSquares(double[] triangle, double[] rows, int width, double[] weight) {
        if (width == Five.SIZE) {
            Five.addSquares(triangle, rows, weight);
            return;
        }
        for (int i = 0; i < weight.length; i++) {
            int at = i * width;
            for (int k = 0; k < width; k++) {
                double a = weight[i] * rows[at + k];
                if (a != 0) {
                    int into = Cholesky.row(k);
                    for (int l = 0; l <= k; l++) {
                        triangle[into + l] += a * rows[at + l];
                    }
                }
            }
        }
    }

    /** Adds weight times number times row, row by row, to a right-hand side. */
    private void addProducts(double[] b, double[] number) {
        if (width == Five.SIZE) {
            Five.addProducts(b, rows, weight, number);
            return;
        }
        for (int i = 0; i < n; i++) {
            double weighted = weight[i] * number[i];
            for (int k = 0; k < width; k++) {
                b[k] += rows[i * width + k] * weighted;
            }
        }
    }

    /**
     * What to add to the unknowns, then the shared errors.
     *
     * @param rest observed less computed
     * @param at the unknowns, for those that have a prior
     */
    double[] step(double[] rest, double[] at) {
        double[] b = new double[width];
        addProducts(b, rest);
        int first = unknowns - priors.length;
        for (int k = 0; k < priors.length; k++) {
            b[first + k] -= priors[k] * at[first + k];
        }
        normal.solveInPlace(b);
        return b;
    }

    /**
     * How much of the pivot of an unknown is left, at worst, where each observation and each prior counts as often as its
     * row is long: a lower bound, without another factor.
     */
    double leastPivot() {
        double most = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            double square = weight[i] * (width == unknowns ? product(rows, i, rows, i) : square(i));
            most = Math.max(most, square);
            least = square > 0 ? Math.min(least, square) : least;
        }
        for (double prior : priors) {
            most = Math.max(most, prior);
            least = Math.min(least, prior);
        }
        return normal.leastPivot(unknowns) * least / most;
    }

    private double square(int i) {
        double square = 0;
        for (int k = 0; k < unknowns; k++) {
            square += rows[i * width + k] * rows[i * width + k];
        }
        return square;
    }

    /** How the unknowns follow each observation, then each prior: one row for each. */
    double[][] gain() {
        int first = unknowns - priors.length;
        double[][] gain = new double[n + priors.length][];
        for (int i = 0; i < n; i++) {
            gain[i] = gain(i);
        }
        for (int k = 0; k < priors.length; k++) {
            double[] unit = new double[width];
            unit[first + k] = priors[k];
            normal.solveInPlace(unit);
            gain[n + k] = unit;
        }
        return gain;
    }

    /** How the unknowns, then the shared errors follow one observation. */
    double[] gain(int i) {
        double[] b = new double[width];
        for (int k = 0; k < width; k++) {
            b[k] = rows[i * width + k] * weight[i];
        }
        normal.solveInPlace(b);
        return b;
    }

    /** The inverse of the normal matrix: the covariance of the unknowns, then of the shared errors. */
    double[][] inverse() {
        return normal.inverse();
    }

    /** How many unknowns and shared errors there are. */
    int width() {
        return width;
    }

    /** What is left of an observation after that step. */
    double left(int i, double[] rest, double[] step) {
        return rest[i] - product(rows, i, step, 0);
    }

    double weight(int i) {
        return weight[i];
    }

    /** The part of the sum of squares that priors and shared errors add, after that step. */
    double priorSquares(double[] at, double[] step) {
        double sum = 0;
        int first = unknowns - priors.length;
        for (int k = 0; k < priors.length; k++) {
            double offset = at[first + k] + step[first + k];
            sum += priors[k] * offset * offset;
        }
        for (int k = unknowns; k < width; k++) {
            sum += step[k] * step[k];
        }
        return sum;
    }

    /** The diagonal of PQᵥᵥP. */
    double[] checks() {
        double[] checks = new double[n];
        double[] halves = halves();
        for (int i = 0; i < n; i++) {
            checks[i] = weight[i] - weight[i] * product(halves, i, halves, i) * weight[i];
        }
        return checks;
    }

    /** Rows whose products with each other are those of BM⁻¹Bᵀ, one after the other. */
    double[] halves() {
        return normal.halves(rows);
    }

    /** Multiplies one of some rows. */
    void scale(double[] some, int i, double by) {
        for (int k = i * width; k < (i + 1) * width; k++) {
            some[k] *= by;
        }
    }

    /** The product of two of some rows. */
    double product(double[] a, int i, double[] b, int j) {
        return product(width, a, i, b, j);
    }

    static double product(int width, double[] a, int i, double[] b, int j) {
        if (width == Five.SIZE) {
            return Five.product(a, i * width, b, j * width);
        }
        double sum = 0;
        for (int k = 0; k < width; k++) {
            sum += a[i * width + k] * b[j * width + k];
        }
        return sum;
    }
}
