package quoin.rulebook;

import org.apache.commons.math3.distribution.NormalDistribution;

/** The only door to the distributions of commons-math3 in this package. */
final class Normal {
    private Normal() {}

    /** The value that a standard normal variable falls short of with that probability. */
    static double quantile(double probability) {
        return new NormalDistribution(null, 0, 1).inverseCumulativeProbability(probability);
    }
}
