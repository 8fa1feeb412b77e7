package quoin.measure;

import java.util.Locale;

/**
 * What a number is a number of.
 *
 * <p>Each dimension has one base unit, used inside, and one answer unit, used in documents. Immutable.
 */
public enum Dimension {
    /** A length; mm inside and in answers. */
    LENGTH("mm", "mm", 1, 0),
    /** An area; mm² inside and in answers. */
    AREA("mm2", "mm2", 1, 0),
    /** An angle; rad inside, degrees in answers. */
    ANGLE("rad", "deg", StrictMath.PI / 180, 0),
    /** A temperature on a scale; kelvin inside, degrees Celsius in answers. */
    TEMPERATURE("K", "degC", 1, 273.15),
    /** A difference of temperatures; K inside and in answers. */
    TEMPERATURE_DIFFERENCE("K", "K", 1, 0),
    /** A mass; kg inside and in answers. */
    MASS("kg", "kg", 1, 0),
    /** A mass per area; kg/mm² inside, g/m² in answers. */
    AREA_MASS("kg/mm2", "g/m2", 1e-9, 0),
    /** A mass per length; kg/mm inside, kg/m in answers. */
    LINE_MASS("kg/mm", "kg/m", 1e-3, 0),
    /** A force; N inside and in answers. */
    FORCE("N", "N", 1, 0),
    /** A force per length; N/mm inside, N/m in answers. */
    LINE_FORCE("N/mm", "N/m", 1e-3, 0),
    /** A torque; N·mm inside, N·m in answers. */
    TORQUE("N.mm", "N.m", 1e3, 0),
    /** A time; s inside and in answers. */
    TIME("s", "s", 1, 0),
    /** A voltage; V inside and in answers. */
    VOLTAGE("V", "V", 1, 0),
    /** A current; A inside and in answers. */
    CURRENT("A", "A", 1, 0),
    /** A power; W inside and in answers. */
    POWER("W", "W", 1, 0),
    /** A speed of turning; rad/s inside, turns a minute in answers. */
    TURNING_SPEED("rad/s", "rpm", StrictMath.PI / 30, 0),
    /** A coefficient of expansion; 1/K inside and in answers. */
    PER_KELVIN("/K", "/K", 1, 0),
    /** A ratio or a count; 1 inside and in answers. */
    RATIO("1", "1", 1, 0);

    private final String label = name().toLowerCase(Locale.ROOT).replace('_', ' ');
    private final String baseUnit;
    private final String answerUnit;
    private final double factor;
    private final double offset;

    Dimension(String baseUnit, String answerUnit, double factor, double offset) {
        this.baseUnit = baseUnit;
        this.answerUnit = answerUnit;
        this.factor = factor;
        this.offset = offset;
    }

    /**
     * The dimension in words.
     *
     * @return lower-case words, such as {@code temperature difference}
     */
    public String label() {
        return label;
    }

    /**
     * The unit used inside.
     *
     * @return its text, such as {@code rad}
     */
    public String baseUnit() {
        return baseUnit;
    }

    /**
     * The unit of answers.
     *
     * @return its text, such as {@code deg}
     */
    public String answerUnit() {
        return answerUnit;
    }

    /**
     * A value in the answer unit.
     *
     * @param base the value in the base unit
     * @return (base − offset) / factor, in the answer unit
     * @throws IllegalArgumentException if the value is not finite
     */
    public double toAnswer(double base) {
        return (finite(base, baseUnit) - offset) / factor + 0.0;
    }

    /**
     * A value in the base unit.
     *
     * @param value the value in the answer unit
     * @return value · factor + offset, in the base unit
     * @throws IllegalArgumentException if the value is not finite
     */
    public double fromAnswer(double value) {
        return finite(value, answerUnit) * factor + offset + 0.0;
    }

    /**
     * A width (an uncertainty, a tolerance, a difference) in the answer unit: by scale only, without the offset of a
     * temperature scale.
     *
     * @param base the width in the base unit
     * @return base / factor, in the answer unit
     * @throws IllegalArgumentException if the value is not finite
     */
    public double widthToAnswer(double base) {
        return finite(base, baseUnit) / factor + 0.0;
    }

    /**
     * A width in the base unit: by scale only.
     *
     * @param value the width in the answer unit
     * @return value · factor, in the base unit
     * @throws IllegalArgumentException if the value is not finite
     */
    public double widthFromAnswer(double value) {
        return finite(value, answerUnit) * factor + 0.0;
    }

    private static double finite(double value, String unit) {
        return Require.finite("value", value, unit);
    }
}
