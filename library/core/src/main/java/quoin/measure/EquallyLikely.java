package quoin.measure;

import java.util.List;

/**
 * Equally likely values of several correlated numbers, taken as normal: a fixed lattice, so that the same numbers give
 * the same values on every machine.
 *
 * <p>One number gets the middles of intervals of equal probability; with several, each further direction gets the multiples
 * of the square root of a prime (Richtmyer). A share of n such values differs from the probability by at most 1 / (2n) for
 * each end of an interval in one dimension, and by about as much as 1 / &radic;n of its own spread in many. No instances.
 */
public final class EquallyLikely {
    private EquallyLikely() {}

    /**
     * The values.
     *
     * @param numbers what is uncertain
     * @param count how many equally likely cases, 1 or more
     * @return for each case one value for each number
     */
    public static double[][] values(List<Uncertain> numbers, int count) {
        Require.atLeast("number of cases", count, 1);
        double[][] factor = PivotedCholesky.factor(correlations(numbers));
        double[][] cases = new double[count][numbers.size()];
        int rank = factor.length == 0 ? 0 : factor[0].length;
        double[] generators = generators(rank);
        for (int c = 0; c < count; c++) {
            double[] z = new double[rank];
            for (int q = 0; q < rank; q++) {
                double step = q == 0 ? (c + 0.5) / count : (c + 0.5) * generators[q];
                double p = step - StrictMath.floor(step);
                z[q] = Distributions.normalQuantile(StrictMath.min(StrictMath.max(p, 0.25 / count), 1 - 0.25 / count));
            }
            for (int i = 0; i < factor.length; i++) {
                double sum = 0;
                for (int q = 0; q < rank; q++) {
                    sum += factor[i][q] * z[q];
                }
                Uncertain number = numbers.get(i);
                cases[c][i] = number.value() + number.standardUncertainty() * sum;
            }
        }
        return cases;
    }

    private static double[][] correlations(List<Uncertain> numbers) {
        int n = numbers.size();
        double[][] r = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double both =
                        numbers.get(i).standardUncertainty() * numbers.get(j).standardUncertainty();
                r[i][j] = both > 0 ? numbers.get(i).covariance(numbers.get(j)) / both : 0;
            }
        }
        return r;
    }

    private static double[] generators(int dimensions) {
        double[] generators = new double[dimensions];
        int prime = 1;
        for (int q = 1; q < dimensions; q++) {
            prime = Distributions.primeAfter(prime);
            generators[q] = StrictMath.sqrt(prime);
        }
        return generators;
    }
}
