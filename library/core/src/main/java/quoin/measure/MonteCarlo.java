package quoin.measure;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Propagation of densities by Monte Carlo (JCGM 101:2008): draws the inputs once a trial and evaluates all outputs of a
 * model, so that their correlation is kept.
 *
 * <p>Generator, samplers and elementary functions are pinned: the same settings give the same digits on every machine.
 * An output that is 1 where something holds and 0 elsewhere has the probability of it as its value, with its error.
 * Immutable; every {@code with…} returns a changed copy.
 */
public final class MonteCarlo {
    private static final int LEAST_TRIALS = 10_000;
    private static final int MOST_TRIALS = 100_000_000;
    private static final int BLOCK = 10_000;
    private static final int FEWEST_BLOCKS = 20;
    private static final int FEWEST_ADAPTIVE = 10;

    /** A model: outputs from inputs. Must give the same outputs for the same inputs. */
    @FunctionalInterface
    public interface Model {
        /**
         * Computes the outputs of one trial.
         *
         * @param inputs the drawn inputs, to be read only
         * @param outputs where the outputs go, all to be written
         */
        void evaluate(double[] inputs, double[] outputs);
    }

    /** Which of the intervals that hold p of the trials is reported. */
    public enum Interval {
        /** As much below as above it. */
        SYMMETRIC,
        /** The shortest one. */
        SHORTEST
    }

    private final long seed;
    private final double probability;
    private final Interval interval;
    private final int trials;
    private final int digits;
    private final boolean covariance;

    private MonteCarlo(long seed, double probability, Interval interval, int trials, int digits, boolean covariance) {
        this.seed = seed;
        this.probability = probability;
        this.interval = interval;
        this.trials = trials;
        this.digits = digits;
        this.covariance = covariance;
    }

    /**
     * A million trials, symmetric intervals of 0.95, seed 1.
     *
     * @return the settings
     */
    public static MonteCarlo withDefaults() {
        return new MonteCarlo(1, 0.95, Interval.SYMMETRIC, 1_000_000, 0, false);
    }

    /**
     * A copy with another seed.
     *
     * @param other the seed
     * @return the changed copy
     */
    public MonteCarlo withSeed(long other) {
        return new MonteCarlo(other, probability, interval, trials, digits, covariance);
    }

    /**
     * A copy with another coverage probability.
     *
     * @param p the probability that the intervals hold, between 0 and 1
     * @return the changed copy
     */
    public MonteCarlo withProbability(double p) {
        return new MonteCarlo(seed, Require.probability("probability", p), interval, trials, digits, covariance);
    }

    /**
     * A copy with another kind of interval.
     *
     * @param kind which interval is reported
     * @return the changed copy
     */
    public MonteCarlo withInterval(Interval kind) {
        return new MonteCarlo(seed, probability, Objects.requireNonNull(kind), trials, digits, covariance);
    }

    /**
     * A copy with a fixed number of trials.
     *
     * @param number how many, 10 000 to 100 000 000; rounded up to whole blocks
     * @return the changed copy
     */
    public MonteCarlo withTrials(int number) {
        Require.between("number of trials", number, LEAST_TRIALS, MOST_TRIALS, "");
        return new MonteCarlo(seed, probability, interval, number, 0, covariance);
    }

    /**
     * A copy that goes on until the results are stable (JCGM 101:2008, 7.9): blocks of trials until for every output twice
     * the standard error of the value, of u and of both ends is at most half a unit in the last significant digit of u. Never
     * fewer than ten blocks where so many are allowed: the two of the standard agree by chance too often.
     *
     * @param significantDigits of u, 1 to 4
     * @param mostTrials where it stops at the latest, 20 000 to 100 000 000
     * @return the changed copy
     */
    public MonteCarlo withDigits(int significantDigits, int mostTrials) {
        Require.between("significant digits", significantDigits, 1, 4, "");
        Require.between("most trials", mostTrials, 2 * LEAST_TRIALS, MOST_TRIALS, "");
        return new MonteCarlo(seed, probability, interval, mostTrials, significantDigits, covariance);
    }

    /**
     * A copy that also computes the covariance of the outputs.
     *
     * @return the changed copy
     */
    public MonteCarlo withCovariance() {
        return new MonteCarlo(seed, probability, interval, trials, digits, true);
    }

    /**
     * Runs a model.
     *
     * @param inputs the inputs, with the influences that they share
     * @param outputs how many outputs the model has, 1 or more
     * @param model the model
     * @return what was found
     * @throws ArithmeticException if an output is not finite
     * @throws IllegalArgumentException if an influence has no standard deviation (a scaled t with 2 degrees of freedom or
     *     fewer), or there are too few trials for the probability
     */
    public Simulation run(List<Uncertain> inputs, int outputs, Model model) {
        Require.atLeast("number of outputs", outputs, 1);
        int least = leastBlock(probability);
        if (trials < 2L * least) {
            throw Require.refused(
                    "number of trials", 2L * least + " or more for probability " + probability, trials, "");
        }
        TrialRun run = new TrialRun(this, inputs, outputs, model);
        Optional<Simulation> simulation = run.withTails();
        return simulation.isPresent() ? simulation.get() : run.withAllTrials();
    }

    /** ⌈100 / (1 − p)⌉, where 0.9 gives 1000 although 1 − 0.9 is a little less than a tenth in doubles. */
    static int leastBlock(double probability) {
        double exact = 100 / (1 - probability);
        return (int) StrictMath.min(Integer.MAX_VALUE / 2.0, StrictMath.ceil(exact * (1 - 1e-12)));
    }

    int blockSize() {
        int least = leastBlock(probability);
        if (isAdaptive()) {
            return StrictMath.max(BLOCK, least);
        }
        int wanted = StrictMath.min(BLOCK, trials / FEWEST_BLOCKS);
        return StrictMath.min(trials / 2, StrictMath.max(wanted, least));
    }

    boolean isAdaptive() {
        return digits > 0;
    }

    int digits() {
        return digits;
    }

    /** Two blocks agree by chance too often: their standard error has one degree of freedom. */
    int fewestBlocks() {
        return StrictMath.min(FEWEST_ADAPTIVE, mostBlocks());
    }

    int mostBlocks() {
        int size = blockSize();
        return isAdaptive() ? trials / size : (trials + size - 1) / size;
    }

    boolean hasCovariance() {
        return covariance;
    }

    long seed() {
        return seed;
    }

    double probability() {
        return probability;
    }

    Interval interval() {
        return interval;
    }
}
