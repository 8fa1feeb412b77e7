package quoin.measure;

/**
 * Whether Monte Carlo bears out a first-order result (JCGM 101:2008, 8): both ends of the coverage interval agree within
 * half a unit in the last significant digit of u. Immutable.
 *
 * <p>The run should be stable to a fifth of that, or its own noise decides; the errors of the ends tell.
 *
 * @param lowDifference how far the lower ends are apart, 0 or more
 * @param highDifference how far the upper ends are apart, 0 or more
 * @param tolerance what they may be apart
 */
public record FirstOrderCheck(double lowDifference, double highDifference, double tolerance) {
    /** Checks every part. */
    public FirstOrderCheck {
        lowDifference = Require.atLeastZero("difference of the lower ends", lowDifference, "");
        highDifference = Require.atLeastZero("difference of the upper ends", highDifference, "");
        tolerance = Require.atLeastZero("tolerance", tolerance, "");
    }

    /**
     * Compares a first-order result with a simulated one.
     *
     * @param number the number to first order
     * @param coverage its coverage
     * @param simulated what Monte Carlo found for the same probability
     * @param digits how many significant digits of u count, 1 to 9
     * @return the comparison
     */
    public static FirstOrderCheck of(Uncertain number, Coverage coverage, SimulatedOutput simulated, int digits) {
        return new FirstOrderCheck(
                StrictMath.abs(number.value() - coverage.expanded() - simulated.low()),
                StrictMath.abs(number.value() + coverage.expanded() - simulated.high()),
                NumericalTolerance.of(number.standardUncertainty(), digits));
    }

    /**
     * Whether the first-order result may be used.
     *
     * @return true if neither end is off by more than the tolerance
     */
    public boolean isValid() {
        return lowDifference <= tolerance && highDifference <= tolerance;
    }
}
