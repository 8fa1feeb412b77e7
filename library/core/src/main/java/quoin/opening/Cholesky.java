package quoin.opening;

/**
 * Solutions of small symmetric positive definite systems by Cholesky's method without roots, LDLᵀ. Not safe for use by
 * many threads while it is made; afterwards nothing in it changes.
 */
final class Cholesky {
    private final int n;

    /** The rows of the unit lower factor, one after the other, each up to its diagonal, where 1 / D stands. */
    private final double[] lower;

    private final boolean definite;

    /** Factors a symmetric matrix given by its lower triangle; pivots below {@code tolerance} times its diagonal are 0. */
    Cholesky(double[][] matrix, double tolerance) {
        this(packed(matrix), matrix.length, tolerance);
    }

    /** The same for the rows of the lower triangle one after the other; they are overwritten. */
    Cholesky(double[] triangle, int size, double tolerance) {
        n = size;
        lower = triangle;
        definite = size == Five.SIZE ? Five.factor(triangle, tolerance) : factor(triangle, size, tolerance);
    }

    private static double[] packed(double[][] matrix) {
        double[] triangle = new double[sizeOf(matrix.length)];
        for (int i = 0; i < matrix.length; i++) {
            System.arraycopy(matrix[i], 0, triangle, row(i), i + 1);
        }
        return triangle;
    }

    /** How many elements the lower triangle has. */
    static int sizeOf(int n) {
        return row(n);
    }

    /** Where a row of the lower triangle starts. */
    static int row(int i) {
        return i * (i + 1) / 2;
    }

    /** Row by row: L·D in place of the row, then L. */
    private static boolean factor(double[] a, int n, double tolerance) {
        for (int i = 0; i < n; i++) {
            int ri = row(i);
            double diagonal = a[ri + i];
            double pivot = diagonal;
            for (int j = 0; j < i; j++) {
                int rj = row(j);
                double sum = a[ri + j];
                for (int k = 0; k < j; k++) {
                    sum -= a[ri + k] * a[rj + k];
                }
                a[ri + j] = sum;
            }
            for (int j = 0; j < i; j++) {
                double scaled = a[ri + j];
                double unit = scaled * a[row(j) + j];
                pivot -= scaled * unit;
                a[ri + j] = unit;
            }
            if (!(pivot > tolerance * diagonal)) {
                return false;
            }
            a[ri + i] = 1 / pivot;
        }
        return true;
    }

    boolean isDefinite() {
        return definite;
    }

    /** How much is left, at worst, of the diagonal element of one of the first unknowns once those before it are eliminated. */
    double leastPivot(int unknowns) {
        if (n == Five.SIZE && unknowns == n) {
            return Five.leastPivot(lower);
        }
        double[] pivots = new double[unknowns];
        double most = 0;
        for (int i = 0; i < unknowns; i++) {
            int ri = row(i);
            double inverse = lower[ri + i];
            double eliminated = 0;
            for (int k = 0; k < i; k++) {
                eliminated += lower[ri + k] * lower[ri + k] * pivots[k];
            }
            pivots[i] = 1 / inverse;
            most = Math.max(most, eliminated * inverse);
        }
        return 1 / (1 + most);
    }

    /** The square root of the determinant; 0 where the matrix is not definite. */
    double rootOfDeterminant() {
        double inverse = definite ? 1 : Double.POSITIVE_INFINITY;
        for (int i = 0; i < n && definite; i++) {
            inverse *= lower[row(i) + i];
        }
        return 1 / Math.sqrt(inverse);
    }

    /**
     * For each of some right-hand sides, one after the other, the solution for the lower factor and the root of D: their
     * products with each other are those of bᵀA⁻¹b.
     */
    double[] halves(double[] rows) {
        if (n == Five.SIZE) {
            return Five.halves(lower, rows);
        }
        double[] b = rows.clone();
        double[] root = new double[n];
        for (int i = 0; i < n; i++) {
            root[i] = Math.sqrt(lower[row(i) + i]);
        }
        for (int at = 0; at < b.length; at += n) {
            forward(b, at);
            for (int i = 0; i < n; i++) {
                b[at + i] *= root[i];
            }
        }
        return b;
    }

    private void forward(double[] b, int at) {
        for (int i = 1; i < n; i++) {
            int ri = row(i);
            double sum = b[at + i];
            for (int k = 0; k < i; k++) {
                sum -= lower[ri + k] * b[at + k];
            }
            b[at + i] = sum;
        }
    }

    /** Replaces a right-hand side by the solution. */
    void solveInPlace(double[] b) {
        solveInPlace(b, 0);
    }

    /** The same for one that starts at a place of an array. */
    void solveInPlace(double[] b, int at) {
        if (n == Five.SIZE) {
            Five.solve(lower, b, at);
            return;
        }
        forward(b, at);
        for (int i = 0; i < n; i++) {
            b[at + i] *= lower[row(i) + i];
        }
        for (int i = n - 1; i > 0; i--) {
            int ri = row(i);
            double known = b[at + i];
            for (int k = 0; k < i; k++) {
                b[at + k] -= lower[ri + k] * known;
            }
        }
    }

    /** The inverse of the matrix. */
    double[][] inverse() {
        if (n == Five.SIZE) {
            return Five.inverse(lower);
        }
        double[][] result = new double[n][n];
        for (int j = 0; j < n; j++) {
            result[j][j] = 1;
            solveInPlace(result[j], 0);
        }
        return result;
    }
}
