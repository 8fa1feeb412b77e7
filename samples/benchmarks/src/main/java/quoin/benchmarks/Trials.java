package quoin.benchmarks;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import quoin.measure.MonteCarlo;
import quoin.measure.Simulation;
import quoin.measure.Uncertain;

/** A million trials of the same opening: the library against a loop by hand with selection, one thread. */
public final class Trials {
    static final int COUNT = 1_000_000;
    private static final int PAIRS = 7;

    private Trials() {}

    /**
     * Prints the ratio and the memory.
     *
     * @param args none
     */
    public static void main(String[] args) {
        double sink = 0;
        double[] ratios = new double[PAIRS];
        for (int k = -2; k < PAIRS; k++) {
            long start = System.nanoTime();
            sink += byHand(k + 10)[0];
            long middle = System.nanoTime();
            sink += byLibrary(k + 10).outputs().get(0).value();
            long end = System.nanoTime();
            if (k >= 0) {
                ratios[k] = (end - middle) / (double) (middle - start);
            }
        }
        Arrays.sort(ratios);
        System.out.println(String.format(
                Locale.ROOT,
                "a million trials: ratio to a loop by hand with selection, median %.2f (%.2f to %.2f) of %d, at most 1.15%s",
                ratios[PAIRS / 2],
                ratios[0],
                ratios[PAIRS - 1],
                PAIRS,
                Double.isNaN(sink) ? " (not finite)" : ""));
    }

    static void print() throws IOException {
        System.out.println(Ratios.fresh(Trials.class, "-XX:+UseSerialGC"));
        System.out.println(Ratios.fresh(LeastMemory.class, "-XX:+UseSerialGC", "-Xmx64m"));
        System.out.println(Numpy.compared());
    }

    static void model(double[] in, double[] out) {
        out[0] = angle(in[0], in[3], in[5]);
        out[1] = angle(in[0], in[1], in[4]);
        out[2] = angle(in[1], in[2], in[5]);
        out[3] = angle(in[2], in[3], in[4]);
        out[4] = in[4] - in[5];
        out[5] = Math.min(in[6], Math.min(in[7], in[8]));
        out[6] = Math.min(in[9], Math.min(in[10], in[11]));
        double width = out[5] - in[12];
        double length = out[6] - in[13];
        out[7] = width - Room.SIZE_WIDTH;
        out[8] = length - Room.SIZE_LENGTH;
        out[9] = Room.MOST_WIDTH - width;
        out[10] = Room.MOST_LENGTH - length;
        out[11] = Room.MOST_AREA - width * length;
    }

    private static double angle(double a, double b, double c) {
        return StrictMath.acos((a * a + b * b - c * c) / (2 * a * b));
    }

    static Simulation byLibrary(long seed) {
        ByNumbers numbers = new ByNumbers();
        List<Uncertain> inputs = numbers.inputs();
        return MonteCarlo.withDefaults().withSeed(seed).withTrials(COUNT).run(inputs, Room.OUTPUTS, Trials::model);
    }

    /** Means, standard deviations and both ends of the symmetric interval of 95 %, one after the other. */
    static double[] byHand(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("Xoshiro256PlusPlus").create(seed);
        double[] v = new double[Room.READINGS];
        Room.read(v, 0);
        double[] in = new double[Room.READINGS + 2];
        double[] out = new double[Room.OUTPUTS];
        double[][] all = new double[Room.OUTPUTS][COUNT];
        for (int t = 0; t < COUNT; t++) {
            double scale = Room.SCALE * random.nextGaussian();
            for (int i = 0; i < Room.READINGS; i++) {
                in[i] = v[i] + Room.FRESH * random.nextGaussian() + v[i] * scale;
            }
            in[12] = Room.OFF_WIDTH + Room.OFF_WIDTH_U * random.nextGaussian();
            in[13] = Room.OFF_LENGTH + Room.OFF_LENGTH_U * random.nextGaussian();
            model(in, out);
            for (int j = 0; j < Room.OUTPUTS; j++) {
                all[j][t] = out[j];
            }
        }
        double[] found = new double[4 * Room.OUTPUTS];
        int low = (int) (0.025 * COUNT);
        for (int j = 0; j < Room.OUTPUTS; j++) {
            double mean = 0;
            for (double value : all[j]) {
                mean += value;
            }
            mean /= COUNT;
            double squares = 0;
            for (double value : all[j]) {
                squares += (value - mean) * (value - mean);
            }
            found[4 * j] = mean;
            found[4 * j + 1] = StrictMath.sqrt(squares / (COUNT - 1));
            found[4 * j + 2] = select(all[j], 0, COUNT - 1, low - 1);
            found[4 * j + 3] = select(all[j], low, COUNT - 1, COUNT - low - 1);
        }
        return found;
    }

    /** Selection by three-way partition; everything before {@code low} is already smaller. */
    static double select(double[] a, int from, int to, int k) {
        int low = from;
        int high = to;
        while (high > low) {
            double x = a[low];
            double m = a[(low + high) >>> 1];
            double z = a[high];
            double pivot = Math.max(Math.min(x, m), Math.min(Math.max(x, m), z));
            int i = low;
            int j = high;
            while (i <= j) {
                while (a[i] < pivot) {
                    i++;
                }
                while (a[j] > pivot) {
                    j--;
                }
                if (i <= j) {
                    double t = a[i];
                    a[i++] = a[j];
                    a[j--] = t;
                }
            }
            if (k <= j) {
                high = j;
            } else if (k >= i) {
                low = i;
            } else {
                return a[k];
            }
        }
        return a[k];
    }
}
