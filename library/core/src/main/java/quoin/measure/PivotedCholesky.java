package quoin.measure;

/** The factor of a positive semidefinite correlation matrix, R = F Fᵀ, rank deficient or not. */
final class PivotedCholesky {
    /** What rounding may leave of a zero, relative to a diagonal of ones. */
    private static final double NOTHING = 1e-10;

    private PivotedCholesky() {}

    /** A factor with as many columns as the rank. The matrix is overwritten. */
    static double[][] factor(double[][] r) {
        int n = r.length;
        double[][] columns = new double[n][];
        int rank = 0;
        while (rank < n) {
            int pivot = largest(r);
            if (r[pivot][pivot] <= NOTHING) {
                break;
            }
            columns[rank++] = eliminate(r, pivot);
        }
        requireNothingLeft(r);
        double[][] factor = new double[n][rank];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < rank; k++) {
                factor[i][k] = columns[k][i];
            }
        }
        return factor;
    }

    private static int largest(double[][] r) {
        int pivot = 0;
        for (int i = 1; i < r.length; i++) {
            pivot = r[i][i] > r[pivot][pivot] ? i : pivot;
        }
        return pivot;
    }

    private static double[] eliminate(double[][] r, int pivot) {
        double root = StrictMath.sqrt(r[pivot][pivot]);
        double[] column = new double[r.length];
        for (int i = 0; i < r.length; i++) {
            column[i] = r[i][pivot] / root;
        }
        for (int i = 0; i < r.length; i++) {
            for (int j = 0; j < r.length; j++) {
                r[i][j] = i == pivot || j == pivot ? 0 : r[i][j] - column[i] * column[j];
            }
        }
        return column;
    }

    private static void requireNothingLeft(double[][] r) {
        for (double[] row : r) {
            for (double left : row) {
                if (!(StrictMath.abs(left) <= NOTHING)) {
                    throw new IllegalArgumentException("covariance must be positive semidefinite, got one with " + left
                            + " left after elimination");
                }
            }
        }
    }
}
