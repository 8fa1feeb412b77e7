package quoin.measure;

/** What is known of a quantity: a number with its influences, or a least or greatest that keeps its parts. */
public sealed interface Estimate permits Uncertain, Extreme {
    /**
     * The best value.
     *
     * @return the value, in base units
     */
    double value();
}
