package quoin.measure;

/**
 * What Monte Carlo found of one output, each figure with its own Monte Carlo standard error. Immutable.
 *
 * @param value the mean of the trials
 * @param standardUncertainty their standard deviation
 * @param low the lower end of the coverage interval
 * @param high its upper end
 * @param valueError the standard error of the value
 * @param uncertaintyError the standard error of the standard uncertainty
 * @param lowError the standard error of the lower end
 * @param highError the standard error of the upper end
 */
public record SimulatedOutput(
        double value,
        double standardUncertainty,
        double low,
        double high,
        double valueError,
        double uncertaintyError,
        double lowError,
        double highError) {
    /** Checks every part. */
    public SimulatedOutput {
        value = Require.finite("value", value, "");
        standardUncertainty = Require.atLeastZero("standard uncertainty", standardUncertainty, "");
        low = Require.finite("lower end", low, "");
        high = Require.finite("upper end", high, "");
        if (!(low <= high)) {
            throw Require.refused("lower end", "at most the upper end, " + Require.show(high), low, "");
        }
        valueError = Require.atLeastZero("error of the value", valueError, "");
        uncertaintyError = Require.atLeastZero("error of the standard uncertainty", uncertaintyError, "");
        lowError = Require.atLeastZero("error of the lower end", lowError, "");
        highError = Require.atLeastZero("error of the upper end", highError, "");
    }
}
