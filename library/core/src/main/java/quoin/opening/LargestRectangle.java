package quoin.opening;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The rectangle of largest area, parallel to the head, that keeps every gap at zero or more: the most central one among
 * equals.
 *
 * <p>log width + log length is concave and every gap is linear in the four sides of the rectangle, so a path of interior
 * points (a logarithmic barrier, Newton steps) leads to the one optimum. Not safe for use by many threads.
 */
final class LargestRectangle {
    private static final double LAST_BARRIER = 1e-11;
    private static final double ENOUGH = 1e-10;

    /** A rectangle that may slide is held by the barrier alone; below this share of the rest rounding hides that. */
    private static final double HELD = 1e-14;

    private static final int MOST_STEPS = 40;

    private final List<SideGap> gaps;
    private final int n;
    private final double[] slack;
    private final double[] z;
    private double barrier = 1;

    private LargestRectangle(List<SideGap> gaps, double[] start) {
        this.gaps = gaps;
        this.n = gaps.size();
        this.slack = new double[n];
        this.z = start;
    }

    /**
     * The optimum and how it follows the gaps.
     *
     * @param z left x, right x, head y, foot y
     * @param follow the change of each of z for a change of each gap
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Solution(double[] z, double[][] follow) {}

    /** The largest rectangle, or null where not even a small one goes in. */
    static @Nullable Solution solve(List<SideGap> gaps, double centreX, double centreY, double reach) {
        for (double size = reach; size > reach * 1e-3; size /= 2) {
            double[] start = {centreX - size, centreX + size, centreY - size, centreY + size};
            LargestRectangle search = new LargestRectangle(gaps, start);
            if (search.isInside(start)) {
                return search.run();
            }
        }
        return null;
    }

    private boolean isInside(double[] at) {
        boolean inside = at[1] > at[0] && at[3] > at[2];
        for (int i = 0; i < n && inside; i++) {
            slack[i] = gaps.get(i).value(at);
            inside = slack[i] > 0;
        }
        return inside;
    }

    private Solution run() {
        double[][] follow = new double[4][n];
        while (barrier > LAST_BARRIER) {
            barrier /= 10;
            for (int step = 0; step < MOST_STEPS; step++) {
                if (!newton()) {
                    break;
                }
            }
            isInside(z);
            Cholesky h = new Cholesky(curvature(), HELD);
            follow = h.isDefinite() ? follow(h) : follow;
        }
        return new Solution(polished(), follow);
    }

    private double[][] curvature() {
        double[][] h = new double[4][4];
        double w = z[1] - z[0];
        double l = z[3] - z[2];
        add(h, new double[] {-1, 1, 0, 0}, 1 / (w * w));
        add(h, new double[] {0, 0, -1, 1}, 1 / (l * l));
        for (int i = 0; i < n; i++) {
            add(h, gaps.get(i).push(), barrier / (slack[i] * slack[i]));
        }
        return h;
    }

    private static void add(double[][] h, double[] a, double weight) {
        for (int r = 0; r < 4; r++) {
            for (int c = 0; c < 4; c++) {
                h[r][c] += weight * a[r] * a[c];
            }
        }
    }

    /** One Newton step, kept inside; false once it no longer moves. */
    private boolean newton() {
        isInside(z);
        double w = z[1] - z[0];
        double l = z[3] - z[2];
        double[] step = {-1 / w, 1 / w, -1 / l, 1 / l};
        for (int i = 0; i < n; i++) {
            double[] push = gaps.get(i).push();
            for (int k = 0; k < 4; k++) {
                step[k] += barrier * push[k] / slack[i];
            }
        }
        Cholesky h = new Cholesky(curvature(), 0);
        if (!h.isDefinite()) {
            return false;
        }
        double[] gradient = step.clone();
        h.solveInPlace(step);
        double decrement = 0;
        for (int k = 0; k < 4; k++) {
            decrement += gradient[k] * step[k];
        }
        double length = Math.min(1, 0.95 * reach(step, w, l));
        for (int k = 0; k < 4; k++) {
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
            double[] push = gaps.get(i).push();
            double closes = -(push[0] * step[0] + push[1] * step[1] + push[2] * step[2] + push[3] * step[3]);
            reach = closes > 0 ? Math.min(reach, slack[i] / closes) : reach;
        }
        return reach;
    }

    /** The change of the optimum for a change of each gap. */
    private double[][] follow(Cholesky h) {
        double[][] follow = new double[4][n];
        for (int i = 0; i < n; i++) {
            double[] column = gaps.get(i).push().clone();
            double weight = -barrier / (slack[i] * slack[i]);
            for (int k = 0; k < 4; k++) {
                column[k] *= weight;
            }
            h.solveInPlace(column);
            for (int k = 0; k < 4; k++) {
                follow[k][i] = column[k];
            }
        }
        return follow;
    }

    /** Puts the rectangle exactly on the gaps that hold it, where these are enough to do so. */
    private double[] polished() {
        double[][] normal = new double[4][4];
        double[] right = new double[4];
        for (int i = 0; i < n; i++) {
            if (slack[i] < 1e-5) {
                add(normal, gaps.get(i).push(), 1);
                for (int k = 0; k < 4; k++) {
                    right[k] -= gaps.get(i).push()[k] * slack[i];
                }
            }
        }
        Cholesky solver = new Cholesky(normal, 1e-9);
        if (!solver.isDefinite()) {
            return z;
        }
        solver.solveInPlace(right);
        double[] moved = new double[4];
        for (int k = 0; k < 4; k++) {
            moved[k] = z[k] + right[k];
        }
        return moved;
    }
}
