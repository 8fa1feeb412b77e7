package quoin.opening;

import java.util.Arrays;

/**
 * Least squares of observations that may share errors, and what the observations say against each other.
 *
 * <p>The covariance of the observations is C = V + SSᵀ, V diagonal and one column of S for each shared error. A shared
 * error is carried as one more unknown, of prior 0 and variance 1: with B = [A S] and M = BᵀV⁻¹B + prior weights the
 * estimate and PQᵥᵥP = V⁻¹ − V⁻¹BM⁻¹BᵀV⁻¹ are those of the full covariance, and C is never inverted. The last unknowns
 * may have a prior 0 of their own. Not safe for use by many threads.
 */
final class LeastSquares {
    private final double[] weight;
    private final double[][] shared;
    private final double[] priors;
    private final int n;
    private double[][] rows = {};
    private Cholesky normal = new Cholesky(rows, 0);
    private int unknowns;

    /**
     * @param variance the variance of what is fresh in each observation, above 0
     * @param shared for each shared error its effect on each observation
     * @param priors the weights of the prior 0 of the last unknowns
     */
    LeastSquares(double[] variance, double[][] shared, double[] priors) {
        this.n = variance.length;
        this.shared = shared;
        this.priors = priors;
        this.weight = new double[n];
        for (int i = 0; i < n; i++) {
            weight[i] = 1 / variance[i];
        }
    }

    /** Sets how each observation follows the unknowns; whether that and the priors determine them all. */
    boolean isDetermined(double[][] design) {
        unknowns = design[0].length;
        int p = unknowns + shared.length;
        rows = design;
        if (shared.length > 0) {
            rows = new double[n][];
            for (int i = 0; i < n; i++) {
                rows[i] = Arrays.copyOf(design[i], p);
                for (int k = 0; k < shared.length; k++) {
                    rows[i][unknowns + k] = shared[k][i];
                }
            }
        }
        double[][] matrix = new double[p][p];
        for (int k = 0; k < priors.length; k++) {
            matrix[unknowns - priors.length + k][unknowns - priors.length + k] = priors[k];
        }
        for (int k = unknowns; k < p; k++) {
            matrix[k][k] = 1;
        }
        for (int i = 0; i < n; i++) {
            addSquare(matrix, rows[i], weight[i]);
        }
        normal = new Cholesky(matrix, 0);
        return normal.isDefinite();
    }

    /** Adds weight times row times row to the lower triangle, which is all that Cholesky's method reads. */
    static void addSquare(double[][] matrix, double[] row, double weight) {
        for (int k = 0; k < row.length; k++) {
            double a = weight * row[k];
            if (a != 0) {
                double[] into = matrix[k];
                for (int l = 0; l <= k; l++) {
                    into[l] += a * row[l];
                }
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
        double[] b = new double[unknowns + shared.length];
        for (int i = 0; i < n; i++) {
            double weighted = weight[i] * rest[i];
            double[] row = rows[i];
            for (int k = 0; k < b.length; k++) {
                b[k] += row[k] * weighted;
            }
        }
        int first = unknowns - priors.length;
        for (int k = 0; k < priors.length; k++) {
            b[first + k] -= priors[k] * at[first + k];
        }
        normal.solveInPlace(b);
        return b;
    }

    /** How the unknowns follow each observation, then each prior: one row for each. */
    double[][] gain() {
        int first = unknowns - priors.length;
        double[][] gain = new double[n + priors.length][];
        for (int i = 0; i < n; i++) {
            gain[i] = solved(rows[i], weight[i]);
        }
        for (int k = 0; k < priors.length; k++) {
            double[] unit = new double[unknowns + shared.length];
            unit[first + k] = 1;
            gain[n + k] = solved(unit, priors[k]);
        }
        return gain;
    }

    private double[] solved(double[] row, double by) {
        double[] b = row.clone();
        for (int k = 0; k < b.length; k++) {
            b[k] *= by;
        }
        normal.solveInPlace(b);
        return b;
    }

    /** Observed less adjusted times weight, −Pv, after that step. */
    double[] weightedResiduals(double[] rest, double[] step) {
        double[] weighted = new double[n];
        for (int i = 0; i < n; i++) {
            weighted[i] = weight[i] * left(i, rest, step);
        }
        return weighted;
    }

    private double left(int i, double[] rest, double[] step) {
        double left = rest[i];
        for (int k = 0; k < step.length; k++) {
            left -= rows[i][k] * step[k];
        }
        return left;
    }

    /** The sum of squares after that step, priors included. */
    double sumOfSquares(double[] rest, double[] at, double[] step) {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double left = left(i, rest, step);
            sum += weight[i] * left * left;
        }
        int first = unknowns - priors.length;
        for (int k = 0; k < priors.length; k++) {
            double offset = at[first + k] + step[first + k];
            sum += priors[k] * offset * offset;
        }
        for (int k = unknowns; k < step.length; k++) {
            sum += step[k] * step[k];
        }
        return sum;
    }

    /** The diagonal of PQᵥᵥP. */
    double[] checks() {
        double[] checks = new double[n];
        for (int i = 0; i < n; i++) {
            double[] half = rows[i].clone();
            normal.forwardInPlace(half);
            double sum = 0;
            for (double h : half) {
                sum += h * h;
            }
            checks[i] = weight[i] - weight[i] * sum * weight[i];
        }
        return checks;
    }

    /** PQᵥᵥP: what the observations say against each other, free of the unknowns. */
    double[][] between() {
        double[][] half = new double[n][];
        for (int i = 0; i < n; i++) {
            half[i] = rows[i].clone();
            normal.forwardInPlace(half[i]);
        }
        double[][] between = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = 0;
                for (int k = 0; k < half[i].length; k++) {
                    sum += half[i][k] * half[j][k];
                }
                double g = -weight[i] * sum * weight[j];
                between[i][j] = i == j ? weight[i] + g : g;
                between[j][i] = between[i][j];
            }
        }
        return between;
    }
}
