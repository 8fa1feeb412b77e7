package quoin.opening;

/** Solutions of small symmetric positive definite systems by Cholesky's method. Not safe for use by many threads. */
final class Cholesky {
    private final int n;
    private final double[][] lower;
    private final boolean definite;

    /** Factors a symmetric matrix given by its lower triangle; pivots below {@code tolerance} times its diagonal are 0. */
    Cholesky(double[][] matrix, double tolerance) {
        n = matrix.length;
        lower = new double[n][n];
        boolean ok = true;
        for (int j = 0; j < n && ok; j++) {
            double pivot = matrix[j][j];
            for (int k = 0; k < j; k++) {
                pivot -= lower[j][k] * lower[j][k];
            }
            ok = pivot > tolerance * matrix[j][j];
            double root = Math.sqrt(pivot);
            lower[j][j] = root;
            for (int i = j + 1; i < n && ok; i++) {
                double sum = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= lower[i][k] * lower[j][k];
                }
                lower[i][j] = sum / root;
            }
        }
        definite = ok;
    }

    boolean isDefinite() {
        return definite;
    }

    /** The square root of the determinant; 0 where the matrix is not definite. */
    double rootOfDeterminant() {
        double root = definite ? 1 : 0;
        for (int i = 0; i < n && definite; i++) {
            root *= lower[i][i];
        }
        return root;
    }

    /** Replaces a right-hand side by the solution for the lower factor alone. */
    void forwardInPlace(double[] b) {
        for (int i = 0; i < n; i++) {
            double sum = b[i];
            for (int k = 0; k < i; k++) {
                sum -= lower[i][k] * b[k];
            }
            b[i] = sum / lower[i][i];
        }
    }

    /** Replaces a right-hand side by the solution. */
    void solveInPlace(double[] b) {
        forwardInPlace(b);
        for (int i = n - 1; i >= 0; i--) {
            double sum = b[i];
            for (int k = i + 1; k < n; k++) {
                sum -= lower[k][i] * b[k];
            }
            b[i] = sum / lower[i][i];
        }
    }

    /** The inverse of the matrix. */
    double[][] inverse() {
        double[][] result = new double[n][n];
        for (int j = 0; j < n; j++) {
            double[] unit = new double[n];
            unit[j] = 1;
            solveInPlace(unit);
            result[j] = unit;
        }
        return result;
    }
}
