package quoin.opening;

import java.util.ArrayList;
import java.util.List;
import quoin.measure.Influences;
import quoin.measure.Uncertain;

/**
 * The doubt of some numbers taken apart: what is fresh in each, and what several of them share. Not safe for use by many
 * threads.
 */
final class Parted {
    /** The variance of what no other of them has. */
    final double[] fresh;

    /** The effect of what several of them feel on each number. */
    final double[][] columns;

    private Parted(List<Uncertain> numbers) {
        int n = numbers.size();
        fresh = new double[n];
        List<double[]> several = new ArrayList<>();
        Influences basis = n == 0 ? Influences.NONE : numbers.get(0).influences();
        for (int k = 0; k < basis.size(); k++) {
            double[] column = new double[n];
            int count = 0;
            for (int i = 0; i < n; i++) {
                column[i] = numbers.get(i).contribution(k);
                count += column[i] == 0 ? 0 : 1;
            }
            if (count > 1) {
                several.add(column);
            } else {
                addSquares(fresh, column);
            }
        }
        columns = several.toArray(double[][]::new);
    }

    /** Numbers that are on one list of influences. */
    static Parted of(List<Uncertain> numbers) {
        return new Parted(numbers);
    }

    /** The same numbers, all on the list of all their influences. */
    static List<Uncertain> aligned(List<Uncertain> numbers) {
        Influences basis = Influences.NONE;
        for (Uncertain number : numbers) {
            basis = basis.union(number.influences());
        }
        List<Uncertain> aligned = new ArrayList<>();
        for (Uncertain number : numbers) {
            aligned.add(number.onto(basis));
        }
        return aligned;
    }

    /** Least squares with the full covariance. */
    LeastSquares leastSquares(double[] priors) {
        return new LeastSquares(withRidge(fresh, variance(fresh, columns)), columns, priors);
    }

    /** What is their own, with the effects of some errors counted as if they were fresh. */
    static double[] variance(double[] own, double[]... columns) {
        double[] sum = own.clone();
        for (double[] column : columns) {
            addSquares(sum, column);
        }
        return sum;
    }

    static void addSquares(double[] sum, double[] column) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += column[i] * column[i];
        }
    }

    /** Two readings by an instrument that states no doubt of its own agree to a millionth at best. */
    static double[] withRidge(double[] own, double[] all) {
        double[] sum = new double[own.length];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = own[i] + 1e-8 * Math.max(all[i], 1e-4);
        }
        return sum;
    }
}
