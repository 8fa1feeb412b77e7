package quoin.benchmarks;

/**
 * How long the first evaluation takes in a fresh JVM, in ms: the program's own classes are there and have done the work by
 * hand once; nothing of the library is loaded, not even its jar opened.
 */
public final class FirstUse {
    private FirstUse() {}

    /**
     * Prints the time.
     *
     * @param args none
     * @throws ClassNotFoundException if this program is not whole
     */
    public static void main(String[] args) throws ClassNotFoundException {
        double sum = new ByHand().once(0);
        Class.forName(ByNumbers.class.getName());
        long start = System.nanoTime();
        sum -= new ByNumbers().once(0);
        long end = System.nanoTime();
        System.out.println((end - start) / 1e6 + " " + sum);
    }
}
