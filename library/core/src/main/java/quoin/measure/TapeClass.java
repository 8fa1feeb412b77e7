package quoin.measure;

/**
 * Accuracy classes of material measures of length, with their maximum permissible error ±(a + b·L), L in metres rounded
 * up to the next whole metre; c is added where one end is a surface, such as a hook.
 *
 * @see <a href="https://eur-lex.europa.eu/eli/dir/2014/32/oj">Directive 2014/32/EU, Annex X (MI-008)</a>
 */
public enum TapeClass {
    /** a 0.1 mm, b 0.1 mm/m, c 0.1 mm. */
    I(0.1, 0.1, 0.1),
    /** a 0.3 mm, b 0.2 mm/m, c 0.2 mm. */
    II(0.3, 0.2, 0.2),
    /** a 0.6 mm, b 0.4 mm/m, c 0.3 mm. */
    III(0.6, 0.4, 0.3);

    private static final double CLOSE = 1e-6;

    private final double a;
    private final double b;
    private final double c;

    TapeClass(double a, double b, double c) {
        this.a = a;
        this.b = b;
        this.c = c;
    }

    /**
     * The maximum permissible error between two marks.
     *
     * @param lengthMm the length in mm
     * @return the error, plus or minus, in mm
     * @formula a + b·⌈L⌉, L in m
     * @unit mm
     * @edge 2.000 m counts as 2 m, 2.001 m as 3 m; a millionth of a mm over a metre does not count
     * @source standard: Directive 2014/32/EU, Annex X (MI-008)
     */
    public double maximumPermissibleErrorMm(double lengthMm) {
        if (!Double.isFinite(lengthMm)) {
            throw new IllegalArgumentException("length must be a finite number of mm, got " + lengthMm);
        }
        double metres = Math.max(1, Math.ceil((Math.abs(lengthMm) - CLOSE) / 1000));
        return a + b * metres;
    }

    /** {@return what is added where one end is a surface, in mm} */
    public double endErrorMm() {
        return c;
    }
}
