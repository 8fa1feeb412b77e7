package quoin.opening;

import org.jspecify.annotations.Nullable;

/**
 * The rectangle of largest area, at a given angle, that keeps every gap at zero or more: the most central one among
 * equals.
 *
 * <p>log width + log length is concave and every gap is linear in the four sides of the rectangle (and in a small turn,
 * where it may follow one), so a path of interior points (a logarithmic barrier, Newton steps) leads to the one optimum.
 * Not safe for use by many threads.
 */
final class LargestRectangle {
    private static final double LAST_BARRIER = 1e-11;
    private static final double ENOUGH = 1e-10;

    /**
     * Where it is asked how the optimum follows the gaps: early enough that gaps within about 1e-5 mm of each other share
     * what they do, and no rounding of the readings decides between them.
     */
    private static final double FOLLOWED_TO = 0.5e-8;

    /** A rectangle that may slide is held by the barrier alone; below this share of the rest rounding hides that. */
    private static final double HELD = 1e-14;

    private static final int MOST_STEPS = 40;

    private final double[] constant;
    private final double[][] push;
    private final int n;
    private final int m;
    private final double[] slack;
    private final double[] z;
    private double barrier = 1;

    private LargestRectangle(double[] constant, double[][] push, double[] start) {
        this.constant = constant;
        this.push = push;
        this.n = constant.length;
        this.m = start.length;
        this.slack = new double[n];
        this.z = start;
    }

    /**
     * The optimum and how it follows the gaps.
     *
     * @param z left x, right x, head y, foot y, and the turn if there is one
     * @param follow the change of each of z for a change of each gap
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Solution(double[] z, double[][] follow) {}

    /**
     * The largest rectangle, or null where not even a small one goes in.
     *
     * @param constant each gap where all of z is 0
     * @param push its change for a change of each of z; four of them, or five with a turn
     * @param centreX a place inside, along the head
     * @param centreY a place inside, towards the foot
     * @param reach half the size of the first square to try there
     */
    static @Nullable Solution solve(double[] constant, double[][] push, double centreX, double centreY, double reach) {
        for (double size = reach; size > reach * 1e-3; size /= 2) {
            double[] start = new double[push[0].length];
            start[0] = centreX - size;
            start[1] = centreX + size;
            start[2] = centreY - size;
            start[3] = centreY + size;
            LargestRectangle search = new LargestRectangle(constant, push, start);
            if (search.isInside(start)) {
                return search.run();
            }
        }
        return null;
    }

    private boolean isInside(double[] at) {
        boolean inside = at[1] > at[0] && at[3] > at[2];
        for (int i = 0; i < n && inside; i++) {
            slack[i] = constant[i];
            for (int k = 0; k < m; k++) {
                slack[i] += push[i][k] * at[k];
            }
            inside = slack[i] > 0;
        }
        return inside;
    }

    private Solution run() {
        double[][] follow = new double[m][n];
        while (barrier > LAST_BARRIER) {
            barrier /= 10;
            for (int step = 0; step < MOST_STEPS; step++) {
                if (!newton()) {
                    break;
                }
            }
            if (barrier > FOLLOWED_TO) {
                isInside(z);
                Cholesky h = new Cholesky(curvature(), HELD);
                follow = h.isDefinite() ? follow(h) : follow;
            }
        }
        isInside(z);
        return new Solution(polished(), follow);
    }

    private double[][] curvature() {
        double[][] h = new double[m][m];
        double w = z[1] - z[0];
        double l = z[3] - z[2];
        addSize(h, 0, 1 / (w * w));
        addSize(h, 2, 1 / (l * l));
        for (int i = 0; i < n; i++) {
            add(h, push[i], barrier / (slack[i] * slack[i]));
        }
        return h;
    }

    private static void addSize(double[][] h, int k, double weight) {
        h[k][k] += weight;
        h[k + 1][k + 1] += weight;
        h[k][k + 1] -= weight;
        h[k + 1][k] -= weight;
    }

    private void add(double[][] h, double[] a, double weight) {
        for (int r = 0; r < m; r++) {
            for (int c = 0; c < m; c++) {
                h[r][c] += weight * a[r] * a[c];
            }
        }
    }

    /** One Newton step, kept inside; false once it no longer moves. */
    private boolean newton() {
        isInside(z);
        double w = z[1] - z[0];
        double l = z[3] - z[2];
        double[] step = new double[m];
        step[0] = -1 / w;
        step[1] = 1 / w;
        step[2] = -1 / l;
        step[3] = 1 / l;
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < m; k++) {
                step[k] += barrier * push[i][k] / slack[i];
            }
        }
        Cholesky h = new Cholesky(curvature(), 0);
        if (!h.isDefinite()) {
            return false;
        }
        double[] gradient = step.clone();
        h.solveInPlace(step);
        double decrement = 0;
        for (int k = 0; k < m; k++) {
            decrement += gradient[k] * step[k];
        }
        double length = Math.min(1, 0.95 * reach(step, w, l));
        for (int k = 0; k < m; k++) {
            z[k] += length * step[k];
        }
        return decrement > ENOUGH * barrier;
    }

    /** How many steps it would take to the first gap that closes. */
    private double reach(double[] step, double w, double l) {
        double reach = Double.POSITIVE_INFINITY;
        double narrows = step[0] - step[1];
        double shortens = step[2] - step[3];
        reach = narrows > 0 ? Math.min(reach, w / narrows) : reach;
        reach = shortens > 0 ? Math.min(reach, l / shortens) : reach;
        for (int i = 0; i < n; i++) {
            double closes = 0;
            for (int k = 0; k < m; k++) {
                closes -= push[i][k] * step[k];
            }
            reach = closes > 0 ? Math.min(reach, slack[i] / closes) : reach;
        }
        return reach;
    }

    /** The change of the optimum for a change of each gap. */
    private double[][] follow(Cholesky h) {
        double[][] follow = new double[m][n];
        for (int i = 0; i < n; i++) {
            double[] column = push[i].clone();
            double weight = -barrier / (slack[i] * slack[i]);
            for (int k = 0; k < m; k++) {
                column[k] *= weight;
            }
            h.solveInPlace(column);
            for (int k = 0; k < m; k++) {
                follow[k][i] = column[k];
            }
        }
        return follow;
    }

    /** Puts the rectangle exactly on the gaps that hold it, where these are enough to do so. */
    private double[] polished() {
        double[][] normal = new double[m][m];
        double[] right = new double[m];
        for (int i = 0; i < n; i++) {
            if (slack[i] < 1e-5) {
                add(normal, push[i], 1);
                for (int k = 0; k < m; k++) {
                    right[k] -= push[i][k] * slack[i];
                }
            }
        }
        Cholesky solver = new Cholesky(normal, 1e-9);
        if (!solver.isDefinite()) {
            return z;
        }
        solver.solveInPlace(right);
        double[] moved = new double[m];
        for (int k = 0; k < m; k++) {
            moved[k] = z[k] + right[k];
        }
        return moved;
    }
}
