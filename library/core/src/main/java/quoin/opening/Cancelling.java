package quoin.opening;

import java.util.ArrayList;
import java.util.List;

/**
 * The smallest sets of gaps whose pushes cancel with positive weights: no move of the frame widens all of them.
 *
 * <p>A push has two components (along the frame's head and its left side), or a third for a turn. No instances.
 */
final class Cancelling {
    /** Pushes are dependent below this. */
    private static final double DEPENDENT = 1e-12;

    private Cancelling() {}

    /**
     * Gaps and their weights.
     *
     * @param of which gaps
     * @param weight their weights, above 0, sum 1
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared, never handed out
    record Set(int[] of, double[] weight) {
        /** The weighted sum of some values of the gaps. */
        double sum(double[] values) {
            double sum = 0;
            for (int k = 0; k < of.length; k++) {
                sum += weight[k] * values[of[k]];
            }
            return sum;
        }

        private static Set of(int[] of, double... weight) {
            double sum = 0;
            for (double w : weight) {
                sum += w;
            }
            for (int k = 0; k < weight.length; k++) {
                weight[k] /= sum;
            }
            return new Set(of, weight);
        }
    }

    /** Whether gaps with those weights are wanted; k is −1 for two. */
    interface Wanted {
        boolean is(int i, int j, int k, double wi, double wj, double wk);
    }

    /** All sets for pushes along two axes. */
    static List<Set> inPlace(double[][] push) {
        return inPlace(push, (i, j, k, wi, wj, wk) -> true);
    }

    /** Those sets for pushes along two axes that are wanted. */
    static List<Set> inPlace(double[][] push, Wanted wanted) {
        List<Set> sets = new ArrayList<>();
        int n = push.length;
        double[] cross = crosses(push);
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                double ij = cross[i * n + j];
                if (Math.abs(ij) < DEPENDENT) {
                    if (push[i][0] * push[j][0] + push[i][1] * push[j][1] < 0) {
                        addPair(push, i, j, wanted, sets);
                    }
                    continue;
                }
                for (int k = j + 1; k < n; k++) {
                    double jk = cross[j * n + k];
                    double ki = -cross[i * n + k];
                    if (isOneSign(ij, jk, ki)) {
                        double sum = jk + ki + ij;
                        if (wanted.is(i, j, k, jk / sum, ki / sum, ij / sum)) {
                            sets.add(new Set(new int[] {i, j, k}, new double[] {jk / sum, ki / sum, ij / sum}));
                        }
                    }
                }
            }
        }
        return sets;
    }

    private static void addPair(double[][] push, int i, int j, Wanted wanted, List<Set> sets) {
        double wi = StrictMath.hypot(push[j][0], push[j][1]);
        double wj = StrictMath.hypot(push[i][0], push[i][1]);
        double sum = wi + wj;
        if (wanted.is(i, j, -1, wi / sum, wj / sum, 0)) {
            sets.add(new Set(new int[] {i, j}, new double[] {wi / sum, wj / sum}));
        }
    }

    /** The cross product of each push with each later one. */
    private static double[] crosses(double[][] push) {
        int n = push.length;
        double[] cross = new double[n * n];
        for (int i = 0; i < n; i++) {
            double x = push[i][0];
            double y = push[i][1];
            for (int j = i + 1; j < n; j++) {
                cross[i * n + j] = x * push[j][1] - y * push[j][0];
            }
        }
        return cross;
    }

    private static boolean isOneSign(double a, double b, double c) {
        boolean up = a > DEPENDENT && b > DEPENDENT && c > DEPENDENT;
        boolean down = a < -DEPENDENT && b < -DEPENDENT && c < -DEPENDENT;
        return up || down;
    }

    /**
     * All sets for pushes along two axes and a turn whose weighted sum of gaps is at most so far above the least.
     *
     * @param push the pushes; the turn on the scale of the others
     * @param gap the gaps
     * @param far how far above the least sum
     */
    static List<Set> turning(double[][] push, double[] gap, double far) {
        return new Turning(push, gap, far).sets();
    }

    /** Not safe for use by many threads. */
    private static final class Turning {
        private final double[][] push;
        private final double[] gap;
        private final double far;
        private final int n;
        private final double[] across;
        private final List<Set> sets = new ArrayList<>();
        private double least = Double.POSITIVE_INFINITY;

        Turning(double[][] push, double[] gap, double far) {
            this.push = push;
            this.gap = gap;
            this.far = far;
            this.n = push.length;
            this.across = new double[3 * n * n];
        }

        List<Set> sets() {
            for (int i = 0; i < n; i++) {
                for (int j = i + 1; j < n; j++) {
                    across(i, j);
                }
            }
            for (int i = 0; i < n; i++) {
                for (int j = i + 1; j < n; j++) {
                    pair(i, j);
                }
            }
            for (int i = 0; i < n; i++) {
                for (int j = i + 1; j < n; j++) {
                    for (int k = j + 1; k < n; k++) {
                        fours(i, j, k);
                    }
                }
            }
            return near();
        }

        private List<Set> near() {
            List<Set> near = new ArrayList<>(sets.size());
            for (Set set : sets) {
                if (set.sum(gap) <= least + far) {
                    near.add(set);
                }
            }
            return near;
        }

        /** Keeps the cross products of all twos. */
        private void across(int i, int j) {
            double[] a = push[i];
            double[] b = push[j];
            int at = 3 * (i * n + j);
            across[at] = a[1] * b[2] - a[2] * b[1];
            across[at + 1] = a[2] * b[0] - a[0] * b[2];
            across[at + 2] = a[0] * b[1] - a[1] * b[0];
        }

        private double dot(int ij, int kl) {
            return across[ij] * across[kl] + across[ij + 1] * across[kl + 1] + across[ij + 2] * across[kl + 2];
        }

        private static double dot(double[] a, double[] b) {
            return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
        }

        private double volume(int ij, double[] p) {
            return across[ij] * p[0] + across[ij + 1] * p[1] + across[ij + 2] * p[2];
        }

        /** Two that cancel, and three that do so in one plane. */
        private void pair(int i, int j) {
            int ij = 3 * (i * n + j);
            double x = across[ij];
            double y = across[ij + 1];
            double z = across[ij + 2];
            boolean parallel = x * x + y * y + z * z < DEPENDENT * DEPENDENT;
            if (parallel && dot(push[i], push[j]) < 0) {
                add(new int[] {i, j}, Math.sqrt(dot(push[j], push[j])), Math.sqrt(dot(push[i], push[i])));
            }
            for (int k = j + 1; k < n; k++) {
                double[] p = push[k];
                double det = x * p[0] + y * p[1] + z * p[2];
                if (!parallel && Math.abs(det) < DEPENDENT) {
                    three(i, j, k);
                }
            }
        }

        private void three(int i, int j, int k) {
            int ij = 3 * (i * n + j);
            int jk = 3 * (j * n + k);
            int ik = 3 * (i * n + k);
            if (dot(ij, jk) > 0 && dot(jk, ik) < 0 && dot(ik, ij) < 0) {
                add(new int[] {i, j, k}, Math.sqrt(dot(jk, jk)), Math.sqrt(dot(ik, ik)), Math.sqrt(dot(ij, ij)));
            }
        }

        /** Those three with each later one: each weighs as much as the other three span. */
        private void fours(int i, int j, int k) {
            int ij = 3 * (i * n + j);
            int ik = 3 * (i * n + k);
            int jk = 3 * (j * n + k);
            double d = -volume(ij, push[k]);
            double sign = d > DEPENDENT ? 1 : d < -DEPENDENT ? -1 : 0;
            for (int l = k + 1; sign != 0 && l < n; l++) {
                double c = volume(ij, push[l]);
                if (!(c * sign > DEPENDENT)) {
                    continue;
                }
                double a = volume(jk, push[l]);
                double b = -volume(ik, push[l]);
                if (a * sign > DEPENDENT && b * sign > DEPENDENT) {
                    double sum = a + b + c + d;
                    double value = (a * gap[i] + b * gap[j] + c * gap[k] + d * gap[l]) / sum;
                    if (value <= least + far) {
                        least = Math.min(least, value);
                        sets.add(new Set(new int[] {i, j, k, l}, new double[] {a / sum, b / sum, c / sum, d / sum}));
                    }
                }
            }
        }

        private void add(int[] of, double... weight) {
            Set set = Set.of(of, weight);
            least = Math.min(least, set.sum(gap));
            sets.add(set);
        }
    }
}
