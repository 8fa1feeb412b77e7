package quoin.benchmarks;

/**
 * Five unknowns and their covariance from distances, as a careful engineer would type it: Gauss and Newton from the
 * rectangle of means, Cholesky's method, arrays that are used again. No tests.
 */
final class AdjustByHand implements Work {
    static final int UNKNOWNS = 5;
    private static final double CLOSE_ENOUGH = 1e-9;
    private static final int MOST_STEPS = 20;

    private final int n;
    private final double[][] corners;
    private final double[] read;
    private final double[] weight;
    private final double[] row = new double[UNKNOWNS];
    private final double[] move = new double[UNKNOWNS];
    private final double[][] lower = new double[UNKNOWNS][UNKNOWNS];
    private final double[][] inverse = new double[UNKNOWNS][UNKNOWNS];

    /** Head-right x, foot-right x and y, foot-left x and y. */
    final double[] x = new double[UNKNOWNS];

    final double[][] covariance = new double[UNKNOWNS][UNKNOWNS];

    AdjustByHand(int count) {
        n = count;
        corners = Net.corners(count);
        read = new double[count];
        weight = new double[count];
        for (int i = 0; i < count; i++) {
            weight[i] = 1 / (Net.U * Net.U);
        }
    }

    @Override
    public double once(int time) {
        Net.read(read, time);
        adjust();
        double sum = 0;
        for (int k = 0; k < UNKNOWNS; k++) {
            sum += x[k];
            for (int l = 0; l < UNKNOWNS; l++) {
                sum += covariance[k][l];
            }
        }
        return sum;
    }

    private void adjust() {
        start();
        for (int step = 0; step < MOST_STEPS; step++) {
            normal();
            factor();
            solve();
            double largest = 0;
            for (int k = 0; k < UNKNOWNS; k++) {
                x[k] += move[k];
                largest = Math.max(largest, Math.abs(move[k]));
            }
            if (largest < CLOSE_ENOUGH * x[0]) {
                invert();
                return;
            }
        }
        throw new ArithmeticException("no outline");
    }

    /** Readings 0 and 2 are head and foot, 1 and 3 right and left; from 6 on three widths, then three lengths. */
    private void start() {
        double width = read[0] + read[2];
        double length = read[1] + read[3];
        int each = (n - 6) / 2;
        for (int i = 0; i < each; i++) {
            width += read[6 + i];
            length += read[6 + each + i];
        }
        width /= 2 + each;
        length /= 2 + each;
        x[0] = width;
        x[1] = width;
        x[2] = length;
        x[3] = 0;
        x[4] = length;
    }

    private void normal() {
        for (int k = 0; k < UNKNOWNS; k++) {
            move[k] = 0;
            for (int l = 0; l <= k; l++) {
                lower[k][l] = 0;
            }
        }
        for (int i = 0; i < n; i++) {
            double[] c = corners[i];
            double ex = c[0] * x[0] + c[1] * x[1] + c[2] * x[3];
            double ey = c[1] * x[2] + c[2] * x[4];
            double d = Math.sqrt(ex * ex + ey * ey);
            double ux = ex / d;
            double uy = ey / d;
            row[0] = c[0] * ux;
            row[1] = c[1] * ux;
            row[2] = c[1] * uy;
            row[3] = c[2] * ux;
            row[4] = c[2] * uy;
            double rest = read[i] - d;
            for (int k = 0; k < UNKNOWNS; k++) {
                double weighted = weight[i] * row[k];
                move[k] += weighted * rest;
                for (int l = 0; l <= k; l++) {
                    lower[k][l] += weighted * row[l];
                }
            }
        }
    }

    /** The factor takes the place of the matrix. */
    private void factor() {
        for (int j = 0; j < UNKNOWNS; j++) {
            double pivot = lower[j][j];
            for (int k = 0; k < j; k++) {
                pivot -= lower[j][k] * lower[j][k];
            }
            if (!(pivot > 0)) {
                throw new ArithmeticException("not determined");
            }
            double root = Math.sqrt(pivot);
            lower[j][j] = root;
            for (int i = j + 1; i < UNKNOWNS; i++) {
                double sum = lower[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= lower[i][k] * lower[j][k];
                }
                lower[i][j] = sum / root;
            }
        }
    }

    private void solve() {
        for (int i = 0; i < UNKNOWNS; i++) {
            double sum = move[i];
            for (int k = 0; k < i; k++) {
                sum -= lower[i][k] * move[k];
            }
            move[i] = sum / lower[i][i];
        }
        for (int i = UNKNOWNS - 1; i >= 0; i--) {
            double sum = move[i];
            for (int k = i + 1; k < UNKNOWNS; k++) {
                sum -= lower[k][i] * move[k];
            }
            move[i] = sum / lower[i][i];
        }
    }

    /** The inverse of the factor, then its square. */
    private void invert() {
        for (int j = 0; j < UNKNOWNS; j++) {
            inverse[j][j] = 1 / lower[j][j];
            for (int i = j + 1; i < UNKNOWNS; i++) {
                double sum = 0;
                for (int k = j; k < i; k++) {
                    sum -= lower[i][k] * inverse[k][j];
                }
                inverse[i][j] = sum / lower[i][i];
            }
        }
        for (int i = 0; i < UNKNOWNS; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = 0;
                for (int k = i; k < UNKNOWNS; k++) {
                    sum += inverse[k][i] * inverse[k][j];
                }
                covariance[i][j] = sum;
                covariance[j][i] = sum;
            }
        }
    }
}
