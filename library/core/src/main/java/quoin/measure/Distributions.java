package quoin.measure;

import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.primes.Primes;
import org.apache.commons.math3.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/** The only door of this package to commons-math3; its distributions get no generator. */
final class Distributions {
    private static final @Nullable RandomGenerator NONE = null;

    private Distributions() {}

    /** The value that a standard normal variate stays below with probability p. */
    static double normalQuantile(double p) {
        return new NormalDistribution(NONE, 0, 1, NormalDistribution.DEFAULT_INVERSE_ABSOLUTE_ACCURACY)
                .inverseCumulativeProbability(p);
    }

    /** The value that Student's t stays below with probability p; normal for infinite degrees of freedom. */
    static double studentQuantile(double degreesOfFreedom, double p) {
        if (degreesOfFreedom == Double.POSITIVE_INFINITY) {
            return normalQuantile(p);
        }
        return new TDistribution(NONE, degreesOfFreedom).inverseCumulativeProbability(p);
    }

    /** The value that chi-square stays below with probability p. */
    static double chiSquareQuantile(double degreesOfFreedom, double p) {
        return new ChiSquaredDistribution(NONE, degreesOfFreedom).inverseCumulativeProbability(p);
    }

    /** The next larger prime. */
    static int primeAfter(int n) {
        return Primes.nextPrime(n + 1);
    }
}
