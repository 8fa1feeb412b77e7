package quoin.benchmarks;

import java.lang.management.ManagementFactory;

/** A candidate and its yardstick, a millisecond of the one after a millisecond of the other. */
final class Pair {
    private static final double BATCH_NS = 1e6;
    private static final int WARM = 20_000;

    private final Work yardstick;
    private final Work candidate;
    private int yardsticks = 1;
    private int candidates = 1;
    private double sink;

    Pair(Work yardstick, Work candidate) {
        this.yardstick = yardstick;
        this.candidate = candidate;
    }

    /** Warms both up and finds how many of each make a batch. */
    Pair warm(double seconds) {
        double end = System.nanoTime() + seconds * 1e9;
        while (System.nanoTime() < end) {
            long first = time(yardstick, yardsticks);
            long second = time(candidate, candidates);
            yardsticks = count(yardsticks, first);
            candidates = count(candidates, second);
        }
        return this;
    }

    private static int count(int now, long took) {
        return (int) Math.max(1, Math.min(WARM * 50.0, now * BATCH_NS / Math.max(1, took)));
    }

    /** How much longer the candidate takes than its yardstick, from one batch of each. */
    double ratio() {
        double first = (double) time(yardstick, yardsticks) / yardsticks;
        double second = (double) time(candidate, candidates) / candidates;
        return second / first;
    }

    /** Bytes that one evaluation of the candidate allocates. */
    double bytes() {
        var bean = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        int times = 1000;
        long before = bean.getThreadAllocatedBytes(id);
        for (int i = 0; i < times; i++) {
            sink += candidate.once(i);
        }
        return Math.floor((bean.getThreadAllocatedBytes(id) - before) / (double) times);
    }

    private long time(Work work, int times) {
        long start = System.nanoTime();
        for (int i = 0; i < times; i++) {
            sink += work.once(i);
        }
        return System.nanoTime() - start;
    }

    /** So that nothing is optimised away. */
    double sink() {
        return sink;
    }
}
