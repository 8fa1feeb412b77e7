package quoin.measure;

/** One figure of each block of trials, for the standard error of the figure of all. Mutable. */
final class BlockFigure {
    private int count;
    private double mean;
    private double squares;

    void add(double figure) {
        count++;
        double delta = figure - mean;
        mean += delta / count;
        squares += delta * (figure - mean);
    }

    int count() {
        return count;
    }

    double deviation() {
        return StrictMath.sqrt(squares / (count - 1));
    }

    double error() {
        return deviation() / StrictMath.sqrt(count);
    }

    boolean isWithin(double tolerance) {
        return 2 * error() <= tolerance;
    }
}
