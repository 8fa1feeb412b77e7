package quoin.benchmarks;

/** Work that is done many times over: one way to compute the same numbers. */
interface Work {
    /** Does it once, a little differently each time, and returns something that hangs on all results. */
    double once(int time);
}
