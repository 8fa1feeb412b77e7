package quoin.measure;

import java.util.Arrays;

/** The numbers beyond a threshold, all that is kept of the trials for the ends of an interval. Mutable. */
final class Tail {
    private final double sign;
    private final double threshold;
    private double[] kept = new double[1024];
    private int size;

    private Tail(double sign, double threshold) {
        this.sign = sign;
        this.threshold = threshold;
    }

    /** Keeps what is at most the threshold. */
    static Tail below(double threshold) {
        return new Tail(1, threshold);
    }

    /** Keeps what is at least the threshold. */
    static Tail above(double threshold) {
        return new Tail(-1, -threshold);
    }

    /** Hands each number to the tail that it belongs to, in one pass. */
    static void add(double[] block, Tail lower, Tail upper) {
        double low = lower.threshold;
        double high = -upper.threshold;
        for (double value : block) {
            if (value <= low) {
                lower.keep(value);
            }
            if (value >= high) {
                upper.keep(-value);
            }
        }
    }

    private void keep(double outward) {
        if (size == kept.length) {
            kept = Arrays.copyOf(kept, 2 * size);
        }
        kept[size++] = outward;
    }

    int size() {
        return size;
    }

    /** The k-th from the outside, from 0. */
    double at(int k) {
        return sign * Selection.select(kept, size, k) + 0.0;
    }

    /** The first so many from the outside inwards. */
    double[] sorted(int count) {
        Arrays.sort(kept, 0, size);
        double[] outer = Arrays.copyOf(kept, count);
        for (int i = 0; i < count; i++) {
            outer[i] = sign * outer[i] + 0.0;
        }
        return outer;
    }
}
