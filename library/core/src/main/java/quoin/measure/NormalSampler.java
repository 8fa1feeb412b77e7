package quoin.measure;

/**
 * Standard normal numbers by a ziggurat of 256 layers (Marsaglia and Tsang, 2000, with doubles as by Doornik, 2005). Its
 * tables are computed by {@link StrictMath}, so that the numbers are the same on every machine. Immutable.
 */
final class NormalSampler {
    static final NormalSampler INSTANCE = new NormalSampler();

    private static final int LAYERS = 256;
    /** Where the tail begins and what area each layer has, for 256 layers. */
    private static final double TAIL = 3.654152885361009;

    private static final double AREA = 0.004928673233974658;

    private final double[] x = new double[LAYERS + 1];
    private final double[] density = new double[LAYERS + 1];

    private NormalSampler() {
        x[0] = AREA / bell(TAIL);
        x[1] = TAIL;
        for (int i = 2; i < LAYERS; i++) {
            x[i] = StrictMath.sqrt(-2 * StrictMath.log(bell(x[i - 1]) + AREA / x[i - 1]));
        }
        for (int i = 0; i <= LAYERS; i++) {
            density[i] = bell(x[i]);
        }
    }

    private static double bell(double x) {
        return StrictMath.exp(-0.5 * x * x);
    }

    double sample(Generator random) {
        return of(random.next(), random);
    }

    /** What {@code sample} gives, many times over: on a copy that no one else sees, in half the time. */
    void fill(Generator random, double[] z, int from, int to) {
        Generator near = new Generator(random);
        for (int k = from; k < to; k++) {
            long bits = near.next();
            int layer = (int) (bits & (LAYERS - 1));
            double sample = (bits >> 10) * 0x1p-53 * x[layer];
            if (StrictMath.abs(sample) >= x[layer + 1]) {
                random.become(near);
                sample = of(bits, random);
                near.become(random);
            }
            z[k] = sample;
        }
        random.become(near);
    }

    private double of(long first, Generator random) {
        for (long bits = first; ; bits = random.next()) {
            int layer = (int) (bits & (LAYERS - 1));
            double z = (bits >> 10) * 0x1p-53 * x[layer];
            if (StrictMath.abs(z) < x[layer + 1]) {
                return z;
            }
            if (layer == 0) {
                return z < 0 ? -tail(random) : tail(random);
            }
            double height = density[layer] + random.unit() * (density[layer + 1] - density[layer]);
            if (height < bell(z)) {
                return z;
            }
        }
    }

    private static double tail(Generator random) {
        double a;
        double b;
        do {
            a = -StrictMath.log(random.unit()) / TAIL;
            b = -StrictMath.log(random.unit());
        } while (b + b < a * a);
        return TAIL + a;
    }
}
