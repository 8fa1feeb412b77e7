package quoin.measure;

import java.util.Locale;

/** The kinds of quantity, each with the unit inside the library and the unit of answers. */
public enum Dimension {
    /** Inside mm, answered in mm. */
    LENGTH("mm", 1),
    /** Inside mm², answered in mm2. */
    AREA("mm2", 1),
    /** Inside rad, answered in deg. */
    ANGLE("deg", Math.PI / 180),
    /** Inside K, answered in degC. */
    TEMPERATURE("degC", 1),
    /** Inside K, answered in K. */
    TEMPERATURE_DIFFERENCE("K", 1),
    /** Inside kg, answered in kg. */
    MASS("kg", 1),
    /** Inside kg/mm², answered in g/m2. */
    AREA_MASS("g/m2", 1e-9),
    /** Inside kg/mm, answered in kg/m. */
    LINE_MASS("kg/m", 1e-3),
    /** Inside N, answered in N. */
    FORCE("N", 1),
    /** Inside N/mm, answered in N/m. */
    LINE_FORCE("N/m", 1e-3),
    /** Inside N·mm, answered in N.m. */
    TORQUE("N.m", 1e3),
    /** Inside s, answered in s. */
    TIME("s", 1),
    /** Inside V, answered in V. */
    VOLTAGE("V", 1),
    /** Inside A, answered in A. */
    CURRENT("A", 1),
    /** Inside W, answered in W. */
    POWER("W", 1),
    /** Inside rad/s, answered in rpm. */
    TURNING_SPEED("rpm", 2 * Math.PI / 60),
    /** Inside 1/K, answered in /K. */
    PER_KELVIN("/K", 1),
    /** A number, answered in 1. */
    RATIO("1", 1);

    private static final double ZERO_CELSIUS = 273.15;

    private final String answerUnit;
    private final double factor;

    Dimension(String answerUnit, double factor) {
        this.answerUnit = answerUnit;
        this.factor = factor;
    }

    /** {@return the unit of answers, as documents write it} */
    public String answerUnit() {
        return answerUnit;
    }

    /** {@return the kind of quantity in words, such as {@code area mass}} */
    public String text() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * From the unit inside to the unit of answers.
     *
     * @param base a value inside
     * @return the value in the answer unit
     * @formula value / factor; a temperature less 273.15
     * @unit the answer unit
     * @edge NaN stays NaN
     * @source standard: SI Brochure, 9th edition (273.15 K is 0 °C)
     */
    public double toAnswer(double base) {
        return this == TEMPERATURE ? base - ZERO_CELSIUS : base / factor;
    }

    /**
     * From the unit of answers to the unit inside.
     *
     * @param value a value in the answer unit
     * @return the value inside
     * @formula value · factor; a temperature plus 273.15
     * @unit the unit inside
     * @edge NaN stays NaN
     * @source standard: SI Brochure, 9th edition (273.15 K is 0 °C)
     */
    public double fromAnswer(double value) {
        return this == TEMPERATURE ? value + ZERO_CELSIUS : value * factor;
    }

    /**
     * A difference or a standard uncertainty from the unit inside to the unit of answers: by scale only.
     *
     * @param base a difference inside
     * @return the difference in the answer unit
     * @formula value / factor
     * @unit the answer unit
     * @edge a temperature's doubt is the same in K and in °C
     * @source standard: SI Brochure, 9th edition
     */
    public double spreadToAnswer(double base) {
        return base / factor;
    }
}
