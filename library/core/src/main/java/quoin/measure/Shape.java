package quoin.measure;

/** The shapes of the distribution of an influence. */
public enum Shape {
    /** The bell curve. */
    NORMAL,
    /** Anywhere within limits alike. */
    RECTANGULAR,
    /** Within limits, the middle likeliest. */
    TRIANGULAR,
    /** Within limits, a flat top. */
    TRAPEZOID,
    /** Within limits that are themselves not well known. */
    CURVED_TRAPEZOID,
    /** The ends of a swing likeliest. */
    ARCSINE,
    /** Student's t, scaled and shifted. */
    SCALED_T
}
