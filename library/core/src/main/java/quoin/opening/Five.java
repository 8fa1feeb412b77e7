package quoin.opening;

/**
 * The algebra of five unknowns written out, for speed: an outline with straight sides has as many. The same as by the loops
 * of {@link Cholesky} and {@link LeastSquares}, in the same order.
 */
final class Five {
    static final int SIZE = 5;

    private Five() {}

    /** Adds weight times row times row to the rows of the lower triangle. */
    static void addSquare(double[] a, double[] rows, int at, double weight) {
        double r0 = rows[at];
        double r1 = rows[at + 1];
        double r2 = rows[at + 2];
        double r3 = rows[at + 3];
        double r4 = rows[at + 4];
        double w = weight * r0;
        a[0] += w * r0;
        w = weight * r1;
        a[1] += w * r0;
        a[2] += w * r1;
        w = weight * r2;
        a[3] += w * r0;
        a[4] += w * r1;
        a[5] += w * r2;
        w = weight * r3;
        a[6] += w * r0;
        a[7] += w * r1;
        a[8] += w * r2;
        a[9] += w * r3;
        w = weight * r4;
        a[10] += w * r0;
        a[11] += w * r1;
        a[12] += w * r2;
        a[13] += w * r3;
        a[14] += w * r4;
    }

    /** Adds a multiple of a row to a right-hand side. */
    static void add(double[] b, double[] rows, int at, double times) {
        b[0] += rows[at] * times;
        b[1] += rows[at + 1] * times;
        b[2] += rows[at + 2] * times;
        b[3] += rows[at + 3] * times;
        b[4] += rows[at + 4] * times;
    }

    /** The product of a row and a vector. */
    static double product(double[] rows, int at, double[] b) {
        return rows[at] * b[0] + rows[at + 1] * b[1] + rows[at + 2] * b[2] + rows[at + 3] * b[3] + rows[at + 4] * b[4];
    }

    /** L below the diagonal and 1 / D on it, in place of the lower triangle; whether every pivot is above 0. */
    static boolean factor(double[] a, double tolerance) {
        double d0 = a[0];
        double i0 = 1 / d0;
        double s10 = a[1];
        double l10 = s10 * i0;
        double d1 = a[2] - s10 * l10;
        double i1 = 1 / d1;
        double s20 = a[3];
        double s21 = a[4] - s20 * l10;
        double l20 = s20 * i0;
        double l21 = s21 * i1;
        double d2 = a[5] - s20 * l20 - s21 * l21;
        double i2 = 1 / d2;
        double s30 = a[6];
        double s31 = a[7] - s30 * l10;
        double s32 = a[8] - s30 * l20 - s31 * l21;
        double l30 = s30 * i0;
        double l31 = s31 * i1;
        double l32 = s32 * i2;
        double d3 = a[9] - s30 * l30 - s31 * l31 - s32 * l32;
        double i3 = 1 / d3;
        double s40 = a[10];
        double s41 = a[11] - s40 * l10;
        double s42 = a[12] - s40 * l20 - s41 * l21;
        double s43 = a[13] - s40 * l30 - s41 * l31 - s42 * l32;
        double l40 = s40 * i0;
        double l41 = s41 * i1;
        double l42 = s42 * i2;
        double l43 = s43 * i3;
        double d4 = a[14] - s40 * l40 - s41 * l41 - s42 * l42 - s43 * l43;
        boolean definite = d0 > tolerance * a[0]
                && d1 > tolerance * a[2]
                && d2 > tolerance * a[5]
                && d3 > tolerance * a[9]
                && d4 > tolerance * a[14];
        a[0] = i0;
        a[1] = l10;
        a[2] = i1;
        a[3] = l20;
        a[4] = l21;
        a[5] = i2;
        a[6] = l30;
        a[7] = l31;
        a[8] = l32;
        a[9] = i3;
        a[10] = l40;
        a[11] = l41;
        a[12] = l42;
        a[13] = l43;
        a[14] = 1 / d4;
        return definite;
    }

    /** Replaces a right-hand side by the solution. */
    static void solve(double[] l, double[] b, int at) {
        double x0 = b[at];
        double x1 = b[at + 1] - l[1] * x0;
        double x2 = b[at + 2] - l[3] * x0 - l[4] * x1;
        double x3 = b[at + 3] - l[6] * x0 - l[7] * x1 - l[8] * x2;
        double x4 = b[at + 4] - l[10] * x0 - l[11] * x1 - l[12] * x2 - l[13] * x3;
        x4 = x4 * l[14];
        x3 = x3 * l[9] - l[13] * x4;
        x2 = x2 * l[5] - l[12] * x4 - l[8] * x3;
        x1 = x1 * l[2] - l[11] * x4 - l[7] * x3 - l[4] * x2;
        x0 = x0 * l[0] - l[10] * x4 - l[6] * x3 - l[3] * x2 - l[1] * x1;
        b[at] = x0;
        b[at + 1] = x1;
        b[at + 2] = x2;
        b[at + 3] = x3;
        b[at + 4] = x4;
    }
}
