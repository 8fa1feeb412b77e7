package quoin.measure;

/** The shape of the probability density of an influence. */
public enum Shape {
    /** Normal. */
    NORMAL,
    /** Equally likely within limits. */
    RECTANGULAR,
    /** Likelier towards the middle of the limits, falling straight to nothing. */
    TRIANGULAR,
    /** Flat in the middle, falling straight to nothing at the limits. */
    TRAPEZOID,
    /** Rectangular between limits that are themselves not well known. */
    CURVED_TRAPEZOID,
    /** A sine swing between limits, likeliest at the limits. */
    ARCSINE,
    /** Student's t, shifted and scaled. */
    SCALED_T
}
