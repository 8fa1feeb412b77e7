package quoin.benchmarks;

/** How long the first evaluation takes in a fresh JVM, in ms, from nothing loaded to twelve outputs. */
public final class FirstUse {
    private FirstUse() {}

    /**
     * Prints the time.
     *
     * @param args none
     */
    public static void main(String[] args) {
        long start = System.nanoTime();
        double sum = new ByNumbers().once(0);
        long end = System.nanoTime();
        System.out.println((end - start) / 1e6 + " " + sum);
    }
}
