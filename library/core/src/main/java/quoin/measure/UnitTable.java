package quoin.measure;

import java.util.List;
import java.util.Optional;

/** The closed table of units that documents may write: one spelling each. */
public final class UnitTable {
    private UnitTable() {}

    /**
     * One unit.
     *
     * @param text its one spelling
     * @param dimension the kind of quantity
     * @param factor the size of the unit in the unit inside the library
     * @param offset what a value of zero is inside the library
     */
    public record Entry(String text, Dimension dimension, double factor, double offset) {
        /**
         * A value in this unit, in the unit inside the library.
         *
         * @param value the value in this unit
         * @return the value inside
         */
        public double toBase(double value) {
            return value * factor + offset;
        }

        /**
         * A value inside the library, in this unit.
         *
         * @param base the value inside
         * @return the value in this unit
         */
        public double fromBase(double base) {
            return (base - offset) / factor;
        }
    }

    private static final List<Entry> ENTRIES = List.of(
            unit("mm", Dimension.LENGTH, 1),
            unit("cm", Dimension.LENGTH, 10),
            unit("m", Dimension.LENGTH, 1000),
            unit("in", Dimension.LENGTH, 25.4),
            unit("ft", Dimension.LENGTH, 304.8),
            unit("deg", Dimension.ANGLE, Math.PI / 180),
            new Entry("degC", Dimension.TEMPERATURE, 1, 273.15),
            unit("K", Dimension.TEMPERATURE_DIFFERENCE, 1),
            unit("kg", Dimension.MASS, 1),
            unit("g", Dimension.MASS, 1e-3),
            unit("N", Dimension.FORCE, 1),
            unit("kN", Dimension.FORCE, 1000),
            unit("N.m", Dimension.TORQUE, 1000),
            unit("s", Dimension.TIME, 1),
            unit("min", Dimension.TIME, 60),
            unit("V", Dimension.VOLTAGE, 1),
            unit("A", Dimension.CURRENT, 1),
            unit("W", Dimension.POWER, 1),
            unit("rpm", Dimension.TURNING_SPEED, 2 * Math.PI / 60),
            unit("mm2", Dimension.AREA, 1),
            unit("g/m2", Dimension.AREA_MASS, 1e-9),
            unit("kg/m", Dimension.LINE_MASS, 1e-3),
            unit("N/m", Dimension.LINE_FORCE, 1e-3),
            unit("/K", Dimension.PER_KELVIN, 1),
            unit("%", Dimension.RATIO, 0.01));

    private static Entry unit(String text, Dimension dimension, double factor) {
        return new Entry(text, dimension, factor, 0);
    }

    /**
     * The unit of that spelling.
     *
     * @param text the spelling
     * @return the unit, or empty where there is none
     */
    public static Optional<Entry> find(String text) {
        for (Entry entry : ENTRIES) {
            if (entry.text().equals(text)) {
                return Optional.of(entry);
            }
        }
        return Optional.empty();
    }

    /** {@return all units, in a fixed order} */
    public static List<Entry> all() {
        return ENTRIES;
    }

    /**
     * The units of one kind of quantity.
     *
     * @param dimension the kind of quantity
     * @return their spellings, joined by commas
     */
    public static String spellings(Dimension dimension) {
        return String.join(
                ", ",
                ENTRIES.stream()
                        .filter(e -> e.dimension() == dimension)
                        .map(Entry::text)
                        .toList());
    }
}
