package quoin.measure;

import java.util.List;

/** What a run of Monte Carlo found. Immutable. */
public final class Simulation {
    private final int trials;
    private final boolean settled;
    private final double probability;
    private final MonteCarlo.Interval interval;
    private final List<SimulatedOutput> outputs;
    private final double[][] covariance;

    Simulation(MonteCarlo settings, int trials, boolean settled, List<SimulatedOutput> outputs, double[][] covariance) {
        this.trials = trials;
        this.settled = settled;
        this.probability = settings.probability();
        this.interval = settings.interval();
        this.outputs = List.copyOf(outputs);
        this.covariance = covariance;
    }

    /**
     * How many trials there were.
     *
     * @return the number
     */
    public int trials() {
        return trials;
    }

    /**
     * Whether the results became stable to the digits asked for.
     *
     * @return false if the most trials allowed did not do; true where a number of trials was given
     */
    public boolean isSettled() {
        return settled;
    }

    /**
     * What part of the trials the intervals of the outputs hold.
     *
     * @return the coverage probability, between 0 and 1
     */
    public double probability() {
        return probability;
    }

    /**
     * Which of the intervals that hold so much was taken.
     *
     * @return symmetric, as much below as above, or the shortest
     */
    public MonteCarlo.Interval interval() {
        return interval;
    }

    /**
     * The outputs in the order of the model.
     *
     * @return an immutable list
     */
    public List<SimulatedOutput> outputs() {
        return outputs;
    }

    /**
     * The covariance of two outputs.
     *
     * @param i the one, from 0
     * @param j the other, from 0
     * @return their covariance over all trials
     * @throws IllegalStateException if it was not asked for
     */
    public double covariance(int i, int j) {
        if (covariance.length == 0) {
            throw new IllegalStateException("covariance was not asked for: use withCovariance");
        }
        return covariance[i][j];
    }

    /**
     * The correlation of two outputs.
     *
     * @param i the one, from 0
     * @param j the other, from 0
     * @return from −1 to 1; 0 if either does not vary
     * @throws IllegalStateException if it was not asked for
     */
    public double correlation(int i, int j) {
        double product = StrictMath.sqrt(covariance(i, i)) * StrictMath.sqrt(covariance(j, j));
        return product == 0 ? 0 : StrictMath.max(-1, StrictMath.min(1, covariance(i, j) / product));
    }
}
