package quoin.measure;

import java.util.Arrays;

/** What is kept of the trials of one output. Mutable; made for one run. */
final class OutputTrials {
    private final MonteCarlo settings;
    private final boolean blockIntervals;
    private final Tail lower;
    private final Tail upper;
    private final BlockFigure values = new BlockFigure();
    private final BlockFigure uncertainties = new BlockFigure();
    private final BlockFigure lows = new BlockFigure();
    private final BlockFigure highs = new BlockFigure();
    private long count;
    private double mean;
    private double squares;

    /** The first block tells where the tails begin, so many standard deviations of its quantiles to the safe side. */
    OutputTrials(MonteCarlo settings, double[] firstBlock, double margin) {
        this.settings = settings;
        boolean shortest = settings.interval() == MonteCarlo.Interval.SHORTEST;
        this.blockIntervals = shortest || settings.isAdaptive();
        int n = firstBlock.length;
        double outside = (1 - settings.probability()) / (shortest ? 1 : 2);
        double index = n * outside + margin * StrictMath.sqrt(n * outside * (1 - outside)) + 2;
        if (index < n / 2.0) {
            double[] first = firstBlock.clone();
            lower = Tail.below(Selection.select(first, n, (int) index));
            upper = Tail.above(Selection.select(first, n, n - 1 - (int) index));
        } else {
            lower = Tail.below(Double.POSITIVE_INFINITY);
            upper = Tail.above(Double.NEGATIVE_INFINITY);
        }
    }

    void add(double[] block) {
        double blockMean = Sums.of(block) / block.length;
        if (!(StrictMath.abs(blockMean) <= Double.MAX_VALUE)) {
            throw new ArithmeticException("an output of the model must be finite, got a mean of " + blockMean);
        }
        double blockSquares = Sums.ofSquares(block, blockMean);
        double all = count + block.length;
        double delta = blockMean - mean;
        mean += delta * block.length / all;
        squares += blockSquares + delta * delta * count * block.length / all;
        count += block.length;
        values.add(blockMean);
        uncertainties.add(StrictMath.sqrt(blockSquares / (block.length - 1)));
        Tail.add(block, lower, upper);
        if (blockIntervals) {
            double[] sorted = block.clone();
            Arrays.sort(sorted);
            CoverageIndex index = CoverageIndex.of(block.length, settings.probability());
            int r = index.start(settings.interval(), sorted);
            lows.add(sorted[r]);
            highs.add(sorted[r + index.inside()]);
        }
    }

    boolean isStable() {
        double tolerance = NumericalTolerance.of(standardUncertainty(), settings.digits());
        return values.isWithin(tolerance)
                && uncertainties.isWithin(tolerance)
                && lows.isWithin(tolerance)
                && highs.isWithin(tolerance);
    }

    boolean hasEnough() {
        CoverageIndex index = index();
        int wanted = settings.interval() == MonteCarlo.Interval.SHORTEST
                ? index.outside()
                : index.symmetricStart() + spread(index) + 2;
        return lower.size() >= wanted && upper.size() >= wanted;
    }

    SimulatedOutput result() {
        return settings.interval() == MonteCarlo.Interval.SHORTEST ? shortest() : symmetric();
    }

    private SimulatedOutput symmetric() {
        CoverageIndex index = index();
        int low = index.symmetricStart();
        int high = index.outside() - 1 - low;
        int spread = spread(index);
        double lowError = (lower.at(low + spread) - lower.at(StrictMath.max(0, low - spread))) / 2;
        double highError = (upper.at(StrictMath.max(0, high - spread)) - upper.at(high + spread)) / 2;
        return output(lower.at(low), upper.at(high), lowError, highError);
    }

    private SimulatedOutput shortest() {
        CoverageIndex index = index();
        double[] outerLow = lower.sorted(index.outside());
        double[] outerHigh = upper.sorted(index.outside());
        for (int i = 0, j = outerHigh.length - 1; i < j; i++, j--) {
            double t = outerHigh[i];
            outerHigh[i] = outerHigh[j];
            outerHigh[j] = t;
        }
        int r = index.shortestStart(outerLow, outerHigh, index.inside());
        // The ends of a shortest interval settle with the cube root of the number of trials, not with the square root.
        double root = StrictMath.cbrt(lows.count());
        return output(outerLow[r], outerHigh[r], lows.deviation() / root, highs.deviation() / root);
    }

    private SimulatedOutput output(double low, double high, double lowError, double highError) {
        return new SimulatedOutput(
                mean + 0.0,
                standardUncertainty(),
                low,
                high,
                values.error(),
                uncertainties.error(),
                lowError,
                highError);
    }

    private double standardUncertainty() {
        return StrictMath.sqrt(squares / (count - 1));
    }

    private CoverageIndex index() {
        return CoverageIndex.of((int) count, settings.probability());
    }

    /** One standard deviation of the position of a quantile. */
    private int spread(CoverageIndex index) {
        double part = (index.symmetricStart() + 1.0) / count;
        return (int) StrictMath.ceil(StrictMath.sqrt(count * part * (1 - part)));
    }
}
