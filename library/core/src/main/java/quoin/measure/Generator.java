package quoin.measure;

/**
 * A generator of random numbers that gives the same numbers on every machine: xoshiro256++ (Blackman and Vigna, 2019),
 * its state filled from a seed by splitmix64. Mutable; made for one run.
 */
final class Generator {
    private static final double TO_UNIT = 0x1p-53;
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private long s0;
    private long s1;
    private long s2;
    private long s3;

    Generator(long seed) {
        long z = seed;
        s0 = mix(z += GOLDEN);
        s1 = mix(z += GOLDEN);
        s2 = mix(z += GOLDEN);
        s3 = mix(z + GOLDEN);
    }

    /** A generator in a given state, not all zero. */
    Generator(long s0, long s1, long s2, long s3) {
        this.s0 = s0;
        this.s1 = s1;
        this.s2 = s2;
        this.s3 = s3;
    }

    /** A generator in the state of another. */
    Generator(Generator other) {
        this(other.s0, other.s1, other.s2, other.s3);
    }

    /** Takes over the state of another. */
    void become(Generator other) {
        s0 = other.s0;
        s1 = other.s1;
        s2 = other.s2;
        s3 = other.s3;
    }

    static long mix(long z) {
        long y = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        y = (y ^ (y >>> 27)) * 0x94D049BB133111EBL;
        return y ^ (y >>> 31);
    }

    long next() {
        long result = Long.rotateLeft(s0 + s3, 23) + s0;
        long t = s1 << 17;
        s2 ^= s0;
        s3 ^= s1;
        s1 ^= s2;
        s0 ^= s3;
        s2 ^= t;
        s3 = Long.rotateLeft(s3, 45);
        return result;
    }

    /** From 0, left out, to 1. */
    double unit() {
        return ((next() >>> 11) + 1) * TO_UNIT;
    }

    /** From −1 to 1. */
    double signed() {
        return (next() >> 10) * TO_UNIT;
    }
}
