package quoin.judge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Conditions c&middot;z &ge; &minus;h on standard normals, turned so that one new coordinate is met at a time.
 *
 * <p>The axes are chosen face by face, the face most likely to fail first, given what the earlier ones leave (Gibson,
 * Glasbey and Elston 1994). Every face then belongs to the last coordinate that it touches and bounds it by the earlier
 * ones, so that P is the mean of a product of one-dimensional probabilities over the cube (Genz 1992; with more faces
 * than coordinates Genz and Kwong 2000). The cube has one dimension less than there are coordinates.
 */
final class Staircase implements Integrand {
    private static final double SAME_SPAN = 1e-6;
    /** The mean size of a standard normal number. */
    private static final double MEAN_SIZE = StrictMath.sqrt(2 / StrictMath.PI);

    private static final double LEAST_PROBABILITY = 1e-12;

    private final List<Step> steps = new ArrayList<>();
    private final double[][] turned;
    private final double flattened;
    private final double[] ends = new double[2];
    private final double[] y;

    /** The faces that end at one coordinate: lower ones first. Column q holds their factors of coordinate q. */
    private static final class Step {
        private final int lower;
        private final double[] start;
        private final double[][] columns;
        private final double[] work;

        Step(int lower, double[] start, double[][] columns) {
            this.lower = lower;
            this.start = start;
            this.columns = columns;
            this.work = new double[start.length];
        }

        /** Limits of this coordinate, given the earlier ones: the lower to ends[0], the upper to ends[1]. */
        void limits(double[] y, double[] ends) {
            System.arraycopy(start, 0, work, 0, work.length);
            for (int q = 0; q < columns.length; q++) {
                double[] column = columns[q];
                double factor = y[q];
                for (int i = 0; i < work.length; i++) {
                    work[i] -= column[i] * factor;
                }
            }
            double lo = Double.NEGATIVE_INFINITY;
            double hi = Double.POSITIVE_INFINITY;
            for (int i = 0; i < lower; i++) {
                lo = Math.max(lo, work[i]);
            }
            for (int i = lower; i < work.length; i++) {
                hi = Math.min(hi, work[i]);
            }
            ends[0] = lo;
            ends[1] = hi;
        }
    }

    /** Builds the stairs; the rows of c have length 1. */
    Staircase(double[] h, double[][] c) {
        Turning turning = new Turning(h, c);
        while (turning.open > 0) {
            steps.add(turning.next());
        }
        y = new double[steps.size()];
        turned = turning.turned(y.length);
        flattened = turning.flattened;
    }

    /** {@return the number of coordinates} */
    int rank() {
        return steps.size();
    }

    /** {@return how far P may be off since what is left of a face below 1e-6 is taken as nothing} */
    double flattened() {
        return flattened;
    }

    /** {@return the faces in the turned coordinates, in their order} */
    double[][] turned() {
        return turned;
    }

    @Override
    public int dimensions() {
        return steps.size() - 1;
    }

    @Override
    public double work() {
        double sum = 0;
        for (Step step : steps) {
            sum += 100 + step.start.length * (step.columns.length + 1.0);
        }
        return sum;
    }

    /** {@return the probability where there is one coordinate only} */
    double exact() {
        steps.get(0).limits(new double[0], ends);
        return Gauss.between(ends[0], ends[1]);
    }

    @Override
    public double at(double[] point) {
        double product = 1;
        int last = steps.size() - 1;
        for (int j = 0; j <= last; j++) {
            steps.get(j).limits(y, ends);
            double below = Bell.below(ends[0]);
            double room = Bell.below(ends[1]) - below;
            if (!(ends[0] < ends[1]) || !(room > 0)) {
                return 0;
            }
            product *= room;
            if (j < last) {
                y[j] = Bell.quantile(below + point[j] * room);
            }
        }
        return product;
    }

    /** The faces on their way into the stairs. */
    private static final class Turning {
        private final double[] h;
        private final double[][] rest;
        private final double[][] turned;
        private final double[] expected;
        private final boolean[] placed;
        private int coordinate;
        private int open;
        private double flattened;

        Turning(double[] h, double[][] c) {
            this.h = h;
            open = h.length;
            rest = new double[open][];
            turned = new double[open][c[0].length];
            for (int i = 0; i < open; i++) {
                rest[i] = c[i].clone();
            }
            expected = h.clone();
            placed = new boolean[open];
        }

        double[][] turned(int coordinates) {
            double[][] result = new double[turned.length][];
            for (int i = 0; i < result.length; i++) {
                result[i] = Arrays.copyOf(turned[i], coordinates);
            }
            return result;
        }

        Step next() {
            double[] axis = axis();
            List<Integer> lower = new ArrayList<>();
            List<Integer> upper = new ArrayList<>();
            for (int i = 0; i < h.length; i++) {
                if (placed[i]) {
                    continue;
                }
                double along = dot(rest[i], axis);
                turned[i][coordinate] = along;
                for (int k = 0; k < axis.length; k++) {
                    rest[i][k] -= along * axis[k];
                }
                double left = size(rest[i]);
                if (!(left > SAME_SPAN)) {
                    flattened += Gauss.density(h[i]) * MEAN_SIZE * left;
                    placed[i] = true;
                    open--;
                    (along > 0 ? lower : upper).add(i);
                }
            }
            expect(mean(lower, upper));
            int count = lower.size();
            lower.addAll(upper);
            Step step = step(count, lower);
            coordinate++;
            return step;
        }

        /** The direction of what is left of the open face most likely to fail. */
        private double[] axis() {
            int pivot = -1;
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < h.length; i++) {
                if (!placed[i]) {
                    double margin = expected[i] / size(rest[i]);
                    if (pivot < 0 || margin < least) {
                        pivot = i;
                        least = margin;
                    }
                }
            }
            double[] axis = rest[pivot].clone();
            double scale = 1 / size(axis);
            for (int k = 0; k < axis.length; k++) {
                axis[k] *= scale;
            }
            return axis;
        }

        /** The mean of the new coordinate between the limits that the expected earlier ones leave. */
        private double mean(List<Integer> lower, List<Integer> upper) {
            double lo = Double.NEGATIVE_INFINITY;
            double hi = Double.POSITIVE_INFINITY;
            for (int i : lower) {
                lo = Math.max(lo, -expected[i] / turned[i][coordinate]);
            }
            for (int i : upper) {
                hi = Math.min(hi, -expected[i] / turned[i][coordinate]);
            }
            double p = Gauss.between(lo, hi);
            return p > LEAST_PROBABILITY ? (Gauss.density(lo) - Gauss.density(hi)) / p : 0;
        }

        private void expect(double mean) {
            for (int i = 0; i < h.length; i++) {
                expected[i] += turned[i][coordinate] * mean;
            }
        }

        private Step step(int lower, List<Integer> faces) {
            double[] start = new double[faces.size()];
            double[][] columns = new double[coordinate][faces.size()];
            for (int t = 0; t < start.length; t++) {
                double[] row = turned[faces.get(t)];
                start[t] = -h[faces.get(t)] / row[coordinate];
                for (int q = 0; q < coordinate; q++) {
                    columns[q][t] = row[q] / row[coordinate];
                }
            }
            return new Step(lower, start, columns);
        }

        private static double size(double[] a) {
            return StrictMath.sqrt(dot(a, a));
        }

        private static double dot(double[] a, double[] b) {
            double sum = 0;
            for (int i = 0; i < a.length; i++) {
                sum += a[i] * b[i];
            }
            return sum;
        }
    }
}
