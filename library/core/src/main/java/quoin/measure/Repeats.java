package quoin.measure;

import java.util.List;

/**
 * Whether repeated readings of one thing scatter as their stated doubt says.
 *
 * <p>statistic = Σ (x − mean)² / u², against chi-square with n − 1 degrees of freedom at 0.1 %. The scatter is only ever
 * tested against the stated doubt; it never replaces it. Immutable.
 *
 * @param count how many readings, 2 or more
 * @param mean their mean, in base units
 * @param standardDeviation their experimental standard deviation s, in base units
 * @param statedUncertainty the stated standard uncertainty of one reading that is fresh each time, above 0
 * @param statistic the sum of the squares of the departures from the mean, over u²
 * @param critical what the statistic may reach at most
 */
public record Repeats(
        int count, double mean, double standardDeviation, double statedUncertainty, double statistic, double critical) {
    private static final double ALPHA = 0.001;

    /** Checks every part. */
    public Repeats {
        Require.atLeast("number of readings", count, 2);
        mean = Require.finite("mean", mean, "");
        standardDeviation = Require.atLeastZero("standard deviation", standardDeviation, "");
        Require.aboveZero("stated uncertainty", statedUncertainty, "");
        statistic = Require.atLeastZero("statistic", statistic, "");
        Require.aboveZero("critical value", critical, "");
    }

    /**
     * Tests readings against the doubt stated for each of them.
     *
     * @param values the readings, 2 or more, in base units
     * @param u the standard uncertainty that is fresh for each reading, above 0
     * @return the test
     */
    public static Repeats of(double[] values, double u) {
        Require.aboveZero("stated uncertainty", u, "");
        Scatter scatter = Scatter.of(values);
        int nu = values.length - 1;
        return new Repeats(
                values.length,
                scatter.mean(),
                scatter.standardDeviation(),
                u,
                scatter.squares() / (u * u),
                Distributions.chiSquareQuantile(nu, 1 - ALPHA));
    }

    /**
     * Tests readings as an instrument gave them. What every one of them shares cannot scatter and is left out; u is the
     * root mean square of what is left.
     *
     * @param readings the readings, 2 or more
     * @return the test
     * @throws IllegalArgumentException if nothing of their doubt is fresh
     */
    public static Repeats of(List<Uncertain> readings) {
        double[] values = new double[readings.size()];
        double variance = 0;
        for (int i = 0; i < values.length; i++) {
            values[i] = readings.get(i).value();
            variance += freshVariance(readings, i);
        }
        return of(values, StrictMath.sqrt(variance / StrictMath.max(1, values.length)));
    }

    /**
     * Whether the readings scatter no more than the stated doubt allows.
     *
     * @return true if the statistic is at most the critical value
     */
    public boolean isConsistent() {
        return statistic <= critical;
    }

    /**
     * How far one reading must be off the others, themselves alike, to be noticed: u √(critical · n / (n − 1)).
     *
     * <p>Two readings show a difference only, never which of them is off.
     *
     * @return the least slip that the test notices, in base units
     */
    public double leastNoticed() {
        return statedUncertainty * StrictMath.sqrt(critical * count / (count - 1));
    }

    /**
     * How well the scatter itself is known: the relative standard deviation of s for normal readings.
     *
     * <p>√(1 − c²) / c with c = √(2/(n−1)) Γ(n/2) / Γ((n−1)/2); 0.76 for two readings, 0.24 for ten (GUM E.1, from
     * memory).
     *
     * @return the relative standard deviation of the standard deviation
     */
    public double scatterDoubt() {
        // Γ((n+1)/2)/Γ(n/2) goes from n = 1 up by the product r(n+1) = (n/2) / r(n).
        double ratio = 1 / StrictMath.sqrt(StrictMath.PI);
        for (int n = 1; n < count - 1; n++) {
            ratio = n / 2.0 / ratio;
        }
        double bias = StrictMath.sqrt(2.0 / (count - 1)) * ratio;
        return StrictMath.sqrt(1 - bias * bias) / bias;
    }

    private static double freshVariance(List<Uncertain> readings, int which) {
        Uncertain reading = readings.get(which);
        double variance = 0;
        for (int i = 0; i < reading.influences().size(); i++) {
            Influence influence = reading.influences().get(i);
            double contribution = reading.contribution(i);
            boolean shared = true;
            for (Uncertain other : readings) {
                int at = other.influences().indexOf(influence);
                shared &= at >= 0 && other.contribution(at) != 0;
            }
            variance += shared ? 0 : contribution * contribution;
        }
        return variance;
    }
}
