package quoin.opening;

/**
 * The algebra of five unknowns written out, for speed: an outline with straight sides has as many. The same as by the loops
 * of {@link Cholesky} and {@link LeastSquares}, in the same order.
 */
final class Five {
    static final int SIZE = 5;

    private Five() {}

    /** Adds weight times row times row, row by row, to the rows of the lower triangle. */
    static void addSquares(double[] a, double[] rows, double[] weight) {
        double a0 = a[0];
        double a1 = a[1];
        double a2 = a[2];
        double a3 = a[3];
        double a4 = a[4];
        double a5 = a[5];
        double a6 = a[6];
        double a7 = a[7];
        double a8 = a[8];
        double a9 = a[9];
        double a10 = a[10];
        double a11 = a[11];
        double a12 = a[12];
        double a13 = a[13];
        double a14 = a[14];
        for (int i = 0; i < weight.length; i++) {
            int at = SIZE * i;
            double r0 = rows[at];
            double r1 = rows[at + 1];
            double r2 = rows[at + 2];
            double r3 = rows[at + 3];
            double r4 = rows[at + 4];
            double w0 = weight[i] * r0;
            double w1 = weight[i] * r1;
            double w2 = weight[i] * r2;
            double w3 = weight[i] * r3;
            double w4 = weight[i] * r4;
            a0 += w0 * r0;
            a1 += w1 * r0;
            a2 += w1 * r1;
            a3 += w2 * r0;
            a4 += w2 * r1;
            a5 += w2 * r2;
            a6 += w3 * r0;
            a7 += w3 * r1;
            a8 += w3 * r2;
            a9 += w3 * r3;
            a10 += w4 * r0;
            a11 += w4 * r1;
            a12 += w4 * r2;
            a13 += w4 * r3;
            a14 += w4 * r4;
        }
        a[0] = a0;
        a[1] = a1;
        a[2] = a2;
        a[3] = a3;
        a[4] = a4;
        a[5] = a5;
        a[6] = a6;
        a[7] = a7;
        a[8] = a8;
        a[9] = a9;
        a[10] = a10;
        a[11] = a11;
        a[12] = a12;
        a[13] = a13;
        a[14] = a14;
    }

    /** Adds weight times number times row, row by row, to a right-hand side. */
    static void addProducts(double[] b, double[] rows, double[] weight, double[] number) {
        double b0 = b[0];
        double b1 = b[1];
        double b2 = b[2];
        double b3 = b[3];
        double b4 = b[4];
        for (int i = 0; i < weight.length; i++) {
            int at = SIZE * i;
            double weighted = weight[i] * number[i];
            b0 += rows[at] * weighted;
            b1 += rows[at + 1] * weighted;
            b2 += rows[at + 2] * weighted;
            b3 += rows[at + 3] * weighted;
            b4 += rows[at + 4] * weighted;
        }
        b[0] = b0;
        b[1] = b1;
        b[2] = b2;
        b[3] = b3;
        b[4] = b4;
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

    /** How much is left, at worst, of a diagonal element once the unknowns before it are eliminated. */
    static double leastPivot(double[] l) {
        double p0 = 1 / l[0];
        double p1 = 1 / l[2];
        double p2 = 1 / l[5];
        double p3 = 1 / l[9];
        double of1 = l[1] * l[1] * p0 * l[2];
        double of2 = (l[3] * l[3] * p0 + l[4] * l[4] * p1) * l[5];
        double of3 = (l[6] * l[6] * p0 + l[7] * l[7] * p1 + l[8] * l[8] * p2) * l[9];
        double of4 = (l[10] * l[10] * p0 + l[11] * l[11] * p1 + l[12] * l[12] * p2 + l[13] * l[13] * p3) * l[14];
        return 1 / (1 + Math.max(Math.max(of1, of2), Math.max(of3, of4)));
    }

    /** For each of some right-hand sides the solution for the lower factor and the root of D. */
    static double[] halves(double[] l, double[] rows) {
        double l10 = l[1];
        double l20 = l[3];
        double l21 = l[4];
        double l30 = l[6];
        double l31 = l[7];
        double l32 = l[8];
        double l40 = l[10];
        double l41 = l[11];
        double l42 = l[12];
        double l43 = l[13];
        double r0 = Math.sqrt(l[0]);
        double r1 = Math.sqrt(l[2]);
        double r2 = Math.sqrt(l[5]);
        double r3 = Math.sqrt(l[9]);
        double r4 = Math.sqrt(l[14]);
        double[] halves = new double[rows.length];
        for (int at = 0; at <= rows.length - SIZE; at += SIZE) {
            double x0 = rows[at];
            double x1 = rows[at + 1] - l10 * x0;
            double x2 = rows[at + 2] - l20 * x0 - l21 * x1;
            double x3 = rows[at + 3] - l30 * x0 - l31 * x1 - l32 * x2;
            double x4 = rows[at + 4] - l40 * x0 - l41 * x1 - l42 * x2 - l43 * x3;
            halves[at] = x0 * r0;
            halves[at + 1] = x1 * r1;
            halves[at + 2] = x2 * r2;
            halves[at + 3] = x3 * r3;
            halves[at + 4] = x4 * r4;
        }
        return halves;
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

    /** The product of two rows. */
    static double product(double[] a, int i, double[] b, int j) {
        return a[i] * b[j] + a[i + 1] * b[j + 1] + a[i + 2] * b[j + 2] + a[i + 3] * b[j + 3] + a[i + 4] * b[j + 4];
    }

    /** The inverse of the matrix: that of L, and then its square with 1 / D between. */
    static double[][] inverse(double[] l) {
        double m10 = -l[1];
        double m20 = -l[3] - l[4] * m10;
        double m21 = -l[4];
        double m30 = -l[6] - l[7] * m10 - l[8] * m20;
        double m31 = -l[7] - l[8] * m21;
        double m32 = -l[8];
        double m40 = -l[10] - l[11] * m10 - l[12] * m20 - l[13] * m30;
        double m41 = -l[11] - l[12] * m21 - l[13] * m31;
        double m42 = -l[12] - l[13] * m32;
        double m43 = -l[13];
        double d1 = l[2];
        double d2 = l[5];
        double d3 = l[9];
        double d4 = l[14];
        double n40 = m40 * d4;
        double n41 = m41 * d4;
        double n42 = m42 * d4;
        double n43 = m43 * d4;
        double n30 = m30 * d3;
        double n31 = m31 * d3;
        double n32 = m32 * d3;
        double n20 = m20 * d2;
        double n21 = m21 * d2;
        double n10 = m10 * d1;
        double q00 = l[0] + m10 * n10 + m20 * n20 + m30 * n30 + m40 * n40;
        double q10 = n10 + m21 * n20 + m31 * n30 + m41 * n40;
        double q11 = d1 + m21 * n21 + m31 * n31 + m41 * n41;
        double q20 = n20 + m32 * n30 + m42 * n40;
        double q21 = n21 + m32 * n31 + m42 * n41;
        double q22 = d2 + m32 * n32 + m42 * n42;
        double q30 = n30 + m43 * n40;
        double q31 = n31 + m43 * n41;
        double q32 = n32 + m43 * n42;
        double q33 = d3 + m43 * n43;
        return new double[][] {
            {q00, q10, q20, q30, n40},
            {q10, q11, q21, q31, n41},
            {q20, q21, q22, q32, n42},
            {q30, q31, q32, q33, n43},
            {n40, n41, n42, n43, d4}
        };
    }
}
