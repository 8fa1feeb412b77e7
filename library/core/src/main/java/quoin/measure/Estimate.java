package quoin.measure;

/** A value with its doubt: one number, or a least or a greatest that keeps its parts. */
public sealed interface Estimate permits Uncertain, Extreme {
    /** {@return the best estimate of the value} */
    double value();
}
