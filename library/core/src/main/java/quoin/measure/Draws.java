package quoin.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Draws inputs: each influence once a trial, in units of its u; the inputs follow from their contributions. */
final class Draws {
    private static final double ROOT_3 = StrictMath.sqrt(3);
    private static final double ROOT_6 = StrictMath.sqrt(6);
    private static final double ROOT_2 = StrictMath.sqrt(2);
    private static final double TURN = 2 * StrictMath.PI;

    private final Generator random;
    private final NormalSampler normal = NormalSampler.INSTANCE;
    private final Shape[] shapes;
    /** Where normal influences that stand side by side end; its own position for any other. */
    private final int[] normalTo;

    private final double[] nu;
    private final double[] ratio;
    /** Which earlier influence's chi-square a scaled t of a group shares; its own position where it draws itself. */
    private final int[] chiOf;

    private final double[] drawn;
    private final double[] roots;
    private final double[] values;
    /** The contributions row by row: those of input i stand from start[i] to start[i + 1]. */
    private final int[] start;

    private final int[] column;
    private final double[] contribution;

    Draws(List<Uncertain> inputs, Generator random) {
        this.random = random;
        Influences all = Influences.NONE;
        for (Uncertain input : inputs) {
            all = all.union(input.influences());
        }
        double[][] dense = new double[inputs.size()][];
        values = new double[inputs.size()];
        for (int i = 0; i < values.length; i++) {
            dense[i] = inputs.get(i).onto(all).contributions();
            values[i] = inputs.get(i).value();
        }
        int[] used = used(dense, all.size());
        int n = used.length;
        shapes = new Shape[n];
        nu = new double[n];
        ratio = new double[n];
        chiOf = new int[n];
        drawn = new double[n];
        roots = new double[n];
        normalTo = new int[n];
        fill(all, used);
        start = new int[values.length + 1];
        column = new int[values.length * n];
        contribution = new double[values.length * n];
        fill(dense, used);
    }

    private static int[] used(double[][] dense, int size) {
        int[] used = new int[size];
        int count = 0;
        for (int j = 0; j < size; j++) {
            boolean any = false;
            for (double[] row : dense) {
                any |= row[j] != 0;
            }
            used[count] = j;
            count += any ? 1 : 0;
        }
        return Arrays.copyOf(used, count);
    }

    private void fill(Influences all, int[] used) {
        List<String> groups = new ArrayList<>();
        for (int k = 0; k < used.length; k++) {
            Influence influence = all.get(used[k]);
            shapes[k] = influence.shape();
            nu[k] = influence.degreesOfFreedom();
            ratio[k] = influence.ratio();
            if (shapes[k] == Shape.SCALED_T && !(nu[k] > 2)) {
                throw new IllegalArgumentException("degrees of freedom of " + influence.id()
                        + " must be more than 2, got " + Require.show(nu[k])
                        + ": with fewer its density has no standard deviation to be simulated");
            }
            int first = influence.group().isEmpty() ? -1 : groups.indexOf(influence.group());
            chiOf[k] = first < 0 ? k : first;
            groups.add(influence.group());
        }
        for (int k = used.length - 1; k >= 0; k--) {
            boolean joined = k + 1 < used.length && shapes[k + 1] == Shape.NORMAL;
            normalTo[k] = shapes[k] != Shape.NORMAL ? k : joined ? normalTo[k + 1] : k + 1;
        }
    }

    private void fill(double[][] dense, int[] used) {
        int at = 0;
        for (int i = 0; i < values.length; i++) {
            start[i] = at;
            for (int k = 0; k < used.length; k++) {
                if (dense[i][used[k]] != 0) {
                    column[at] = k;
                    contribution[at++] = dense[i][used[k]];
                }
            }
        }
        start[values.length] = at;
    }

    int inputs() {
        return values.length;
    }

    /** One trial. */
    void draw(double[] inputs) {
        int k = 0;
        while (k < drawn.length) {
            if (normalTo[k] > k) {
                normal.fill(random, drawn, k, normalTo[k]);
                k = normalTo[k];
            } else {
                drawn[k] = other(k);
                k++;
            }
        }
        double[] z = drawn;
        int at = 0;
        for (int i = 0; i < values.length; i++) {
            double x = values[i];
            for (int end = start[i + 1]; at < end; at++) {
                x += contribution[at] * z[column[at]];
            }
            inputs[i] = x;
        }
    }

    private double other(int k) {
        return switch (shapes[k]) {
            case NORMAL -> normal.sample(random);
            case RECTANGULAR -> ROOT_3 * random.signed();
            case TRIANGULAR -> ROOT_6 / 2 * (random.signed() + random.signed());
            case TRAPEZOID -> trapezoid(ratio[k]);
            case CURVED_TRAPEZOID -> curved(ratio[k]);
            case ARCSINE -> ROOT_2 * StrictMath.sin(TURN * random.unit());
            case SCALED_T -> ratio[k] * normal.sample(random) / rootOfChi(k);
        };
    }

    /** The sum of two rectangles of half-widths (1 + β) / 2 and (1 − β) / 2, in units of u = √((1 + β²) / 6). */
    private double trapezoid(double beta) {
        double sum = (1 + beta) / 2 * random.signed() + (1 - beta) / 2 * random.signed();
        return sum * ROOT_6 / StrictMath.sqrt(1 + beta * beta);
    }

    /** A rectangle whose half-width is itself drawn from 1 ± d, in units of u = √(1 / 3 + d² / 9). */
    private double curved(double d) {
        double half = 1 + d * random.signed();
        return half * random.signed() / StrictMath.sqrt(1.0 / 3 + d * d / 9);
    }

    /** √(χ² / ν): one and the same for a correlated group, which makes it jointly a t. */
    private double rootOfChi(int k) {
        if (chiOf[k] == k) {
            roots[k] = StrictMath.sqrt(2 * gamma(nu[k] / 2) / nu[k]);
        }
        return roots[chiOf[k]];
    }

    /** A gamma variate of shape above 1 (Marsaglia and Tsang, 2000). */
    private double gamma(double shape) {
        double d = shape - 1.0 / 3;
        double c = 1 / StrictMath.sqrt(9 * d);
        while (true) {
            double z = normal.sample(random);
            double v = 1 + c * z;
            if (v <= 0) {
                continue;
            }
            double cube = v * v * v;
            if (StrictMath.log(random.unit()) < 0.5 * z * z + d - d * cube + d * StrictMath.log(cube)) {
                return d * cube;
            }
        }
    }
}
