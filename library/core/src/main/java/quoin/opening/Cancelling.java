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

    /** All sets for pushes along two axes. */
    static List<Set> inPlace(double[][] push) {
        List<Set> sets = new ArrayList<>();
        int n = push.length;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                double ij = cross(push[i], push[j]);
                if (Math.abs(ij) < DEPENDENT) {
                    if (push[i][0] * push[j][0] + push[i][1] * push[j][1] < 0) {
                        sets.add(Set.of(
                                new int[] {i, j},
                                StrictMath.hypot(push[j][0], push[j][1]),
                                StrictMath.hypot(push[i][0], push[i][1])));
                    }
                    continue;
                }
                for (int k = j + 1; k < n; k++) {
                    double jk = cross(push[j], push[k]);
                    double ki = cross(push[k], push[i]);
                    if (isOneSign(ij, jk, ki)) {
                        sets.add(Set.of(new int[] {i, j, k}, jk, ki, ij));
                    }
                }
            }
        }
        return sets;
    }

    private static boolean isOneSign(double a, double b, double c) {
        boolean up = a > DEPENDENT && b > DEPENDENT && c > DEPENDENT;
        boolean down = a < -DEPENDENT && b < -DEPENDENT && c < -DEPENDENT;
        return up || down;
    }

    private static double cross(double[] a, double[] b) {
        return a[0] * b[1] - a[1] * b[0];
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
        private final double[] volume;
        private final List<Set> sets = new ArrayList<>();
        private double least = Double.POSITIVE_INFINITY;

        Turning(double[][] push, double[] gap, double far) {
            this.push = push;
            this.gap = gap;
            this.far = far;
            this.n = push.length;
            this.volume = new double[n * n * n];
        }

        List<Set> sets() {
            for (int i = 0; i < n; i++) {
                for (int j = i + 1; j < n; j++) {
                    pair(i, j);
                }
            }
            for (int i = 0; i < n; i++) {
                for (int j = i + 1; j < n; j++) {
                    for (int k = j + 1; k < n; k++) {
                        for (int l = k + 1; l < n; l++) {
                            four(i, j, k, l);
                        }
                    }
                }
            }
            sets.removeIf(set -> !(set.sum(gap) <= least + far));
            return sets;
        }

        private double[] across(int i, int j) {
            double[] a = push[i];
            double[] b = push[j];
            return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
        }

        private static double dot(double[] a, double[] b) {
            return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
        }

        /** Two that cancel, and three that do so in one plane; the volumes of all threes are kept. */
        private void pair(int i, int j) {
            double[] ij = across(i, j);
            boolean parallel = dot(ij, ij) < DEPENDENT * DEPENDENT;
            if (parallel && dot(push[i], push[j]) < 0) {
                add(new int[] {i, j}, Math.sqrt(dot(push[j], push[j])), Math.sqrt(dot(push[i], push[i])));
            }
            for (int k = j + 1; k < n; k++) {
                double det = dot(ij, push[k]);
                volume[(i * n + j) * n + k] = det;
                if (!parallel && Math.abs(det) < DEPENDENT) {
                    double[] jk = across(j, k);
                    double[] ki = across(k, i);
                    if (dot(ij, jk) > 0 && dot(jk, ki) > 0 && dot(ki, ij) > 0) {
                        add(
                                new int[] {i, j, k},
                                Math.sqrt(dot(jk, jk)),
                                Math.sqrt(dot(ki, ki)),
                                Math.sqrt(dot(ij, ij)));
                    }
                }
            }
        }

        private void four(int i, int j, int k, int l) {
            double a = volume[(j * n + k) * n + l];
            double b = -volume[(i * n + k) * n + l];
            double c = volume[(i * n + j) * n + l];
            double d = -volume[(i * n + j) * n + k];
            boolean up = a > DEPENDENT && b > DEPENDENT && c > DEPENDENT && d > DEPENDENT;
            boolean down = a < -DEPENDENT && b < -DEPENDENT && c < -DEPENDENT && d < -DEPENDENT;
            if (up || down) {
                double sum = a + b + c + d;
                double value = (a * gap[i] + b * gap[j] + c * gap[k] + d * gap[l]) / sum;
                if (value <= least + far) {
                    least = Math.min(least, value);
                    sets.add(new Set(new int[] {i, j, k, l}, new double[] {a / sum, b / sum, c / sum, d / sum}));
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
