package quoin.measure;

/**
 * Accuracy classes of material measures of length.
 *
 * <p>The maximum permissible error is ± (a + b · L), L the length in metres rounded up to the next whole metre, plus c
 * where the terminal interval is bounded by a surface (EU Directive 2014/32/EU, Annex X). Immutable.
 */
public enum TapeClass {
    /** Class I: a 0.1 mm, b 0.1 mm, c 0.1 mm. */
    I(0.1, 0.1, 0.1),
    /** Class II: a 0.3 mm, b 0.2 mm, c 0.2 mm. */
    II(0.3, 0.2, 0.2),
    /** Class III: a 0.6 mm, b 0.4 mm, c 0.3 mm. */
    III(0.6, 0.4, 0.3);

    private static final double MM_IN_A_METRE = 1000;
    private static final double CLOSE = 1e-6;

    private final double fixed;
    private final double perMetre;
    private final double terminal;

    TapeClass(double fixed, double perMetre, double terminal) {
        this.fixed = fixed;
        this.perMetre = perMetre;
        this.terminal = terminal;
    }

    /**
     * The maximum permissible error between two marks: a + b · ⌈L⌉ in mm; a length within 1e-6 mm above a whole metre
     * counts as that metre. It jumps by b behind every whole metre.
     *
     * @param lengthMm the length in mm, 0 or more
     * @return the error, taken as ±, in mm
     * @throws IllegalArgumentException if the length is negative or not finite
     */
    public double maximumPermissibleErrorMm(double lengthMm) {
        return fixed + perMetre * metresUp(lengthMm);
    }

    /**
     * The maximum permissible error from the end of the tape: c more where a hook or a butt end bounds the first
     * interval.
     *
     * @param lengthMm the length in mm, 0 or more
     * @param end what the tape begins with
     * @return the error, taken as ±, in mm
     * @throws IllegalArgumentException if the length is negative or not finite
     */
    public double maximumPermissibleErrorMm(double lengthMm, Instrument.End end) {
        double between = maximumPermissibleErrorMm(lengthMm);
        return end == Instrument.End.UNSTATED ? between : between + terminal;
    }

    private static double metresUp(double lengthMm) {
        double length = Require.atLeastZero("length", lengthMm, "mm");
        return StrictMath.max(0, StrictMath.ceil((length - CLOSE) / MM_IN_A_METRE));
    }
}
