package quoin.benchmarks;

import java.lang.management.ManagementFactory;

/** A candidate and its yardstick, a millisecond of the one after a millisecond of the other. */
final class Pair {
    private static final double BATCH_NS = 1e6;

    private final Work yardstick;
    private final Work candidate;
    private int yardsticks = 1;
    private int candidates = 1;
    private double sink;

    Pair(Work yardstick, Work candidate) {
        this.yardstick = yardstick;
        this.candidate = candidate;
    }

    /** Warms both up and finds how many of each make a batch: by the best time seen, for others work here, too. */
    Pair warm(double seconds) {
        double end = System.nanoTime() + seconds * 1e9;
        double first = BATCH_NS;
        double second = BATCH_NS;
        while (System.nanoTime() < end) {
            first = Math.min(first, (double) time(yardstick, yardsticks) / yardsticks);
            second = Math.min(second, (double) time(candidate, candidates) / candidates);
            yardsticks = count(first);
            candidates = count(second);
        }
        return this;
    }

    private static int count(double best) {
        return (int) Math.max(1, BATCH_NS / Math.max(1, best));
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
        int times = Math.min(1000, candidates);
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
