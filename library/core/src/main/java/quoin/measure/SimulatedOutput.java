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
        double highError) {}
