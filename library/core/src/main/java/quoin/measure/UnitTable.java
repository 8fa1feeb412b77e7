package quoin.measure;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The closed table of unit texts: one spelling each.
 *
 * <p>The table is fixed and immutable.
 */
public final class UnitTable {
    private static final double INCH = 25.4;
    private static final double FOOT = 304.8;
    private static final List<Entry> ENTRIES = List.of(
            new Entry("mm", Dimension.LENGTH, 1, 0),
            new Entry("cm", Dimension.LENGTH, 10, 0),
            new Entry("m", Dimension.LENGTH, 1000, 0),
            new Entry("in", Dimension.LENGTH, INCH, 0),
            new Entry("ft", Dimension.LENGTH, FOOT, 0),
            new Entry("mm2", Dimension.AREA, 1, 0),
            new Entry("deg", Dimension.ANGLE, StrictMath.PI / 180, 0),
            new Entry("degC", Dimension.TEMPERATURE, 1, 273.15),
            new Entry("K", Dimension.TEMPERATURE_DIFFERENCE, 1, 0),
            new Entry("kg", Dimension.MASS, 1, 0),
            new Entry("g", Dimension.MASS, 1e-3, 0),
            new Entry("g/m2", Dimension.AREA_MASS, 1e-9, 0),
            new Entry("kg/m", Dimension.LINE_MASS, 1e-3, 0),
            new Entry("N", Dimension.FORCE, 1, 0),
            new Entry("kN", Dimension.FORCE, 1000, 0),
            new Entry("N/m", Dimension.LINE_FORCE, 1e-3, 0),
            new Entry("N.m", Dimension.TORQUE, 1000, 0),
            new Entry("s", Dimension.TIME, 1, 0),
            new Entry("min", Dimension.TIME, 60, 0),
            new Entry("V", Dimension.VOLTAGE, 1, 0),
            new Entry("A", Dimension.CURRENT, 1, 0),
            new Entry("W", Dimension.POWER, 1, 0),
            new Entry("rpm", Dimension.TURNING_SPEED, StrictMath.PI / 30, 0),
            new Entry("/K", Dimension.PER_KELVIN, 1, 0),
            new Entry("%", Dimension.RATIO, 0.01, 0));

    private UnitTable() {}

    /**
     * A unit text and what it means: base = value · factor + offset.
     *
     * @param text the one spelling
     * @param dimension what it is a unit of
     * @param factor base units in one of it
     * @param offset where its zero lies, in base units
     */
    public record Entry(String text, Dimension dimension, double factor, double offset) {
        /** Checks every part. */
        public Entry {
            Require.id("text", text);
            Objects.requireNonNull(dimension, "dimension");
            factor = Require.aboveZero("factor", factor, "");
            offset = Require.finite("offset", offset, dimension.baseUnit());
        }

        /**
         * A value in base units.
         *
         * @param value the value in this unit
         * @return value · factor + offset
         */
        public double toBase(double value) {
            return Require.finite("value", value, text) * factor + offset + 0.0;
        }

        /**
         * A value in this unit.
         *
         * @param base the value in base units
         * @return (base − offset) / factor
         */
        public double fromBase(double base) {
            return (Require.finite("value", base, dimension.baseUnit()) - offset) / factor + 0.0;
        }
    }

    /**
     * The unit of that text.
     *
     * @param text the text, exactly as the table spells it
     * @return the entry, or empty where the table has none of that spelling
     */
    public static Optional<Entry> find(String text) {
        for (Entry entry : ENTRIES) {
            if (entry.text().equals(text)) {
                return Optional.of(entry);
            }
        }
        return Optional.empty();
    }

    /**
     * The whole table.
     *
     * @return all entries, in a fixed order
     */
    public static List<Entry> all() {
        return ENTRIES;
    }

    /** The first unit of a dimension, for suggestions; "1" where the table has none. */
    static String suggestion(Dimension dimension) {
        for (Entry entry : ENTRIES) {
            if (entry.dimension() == dimension) {
                return entry.text();
            }
        }
        return dimension.answerUnit();
    }

    static String known() {
        StringBuilder text = new StringBuilder();
        for (Entry entry : ENTRIES) {
            text.append(text.length() == 0 ? "" : ", ").append(entry.text());
        }
        return text.toString();
    }
}
