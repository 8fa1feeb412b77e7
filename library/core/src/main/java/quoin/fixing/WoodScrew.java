package quoin.fixing;

import java.util.Locale;
import java.util.Optional;

/**
 * Wood screws sold by number, with the diameters of NDS 2018, table L3 (secondary source), and the holes for them.
 *
 * <p>A number says nothing of strength. A screw of a maker's own shape has its maker's holes.
 */
public enum WoodScrew {
    /** No. 6. */
    NO_6(6, 0.138, 0.113, 0.262),
    /** No. 8. */
    NO_8(8, 0.164, 0.131, 0.312),
    /** No. 10. */
    NO_10(10, 0.190, 0.152, 0.363),
    /** No. 12. */
    NO_12(12, 0.216, 0.171, 0.414),
    /** No. 14. */
    NO_14(14, 0.242, 0.196, 0.480);

    private static final double INCH_MM = 25.4;

    private final int number;
    private final double diameterInch;
    private final double rootInch;
    private final double headInch;

    WoodScrew(int number, double diameterInch, double rootInch, double headInch) {
        this.number = number;
        this.diameterInch = diameterInch;
        this.rootInch = rootInch;
        this.headInch = headInch;
    }

    /**
     * The screw of a number.
     *
     * @param number its number
     * @return the screw, or empty where the table has none of that number
     */
    public static Optional<WoodScrew> ofNumber(int number) {
        for (WoodScrew screw : values()) {
            if (screw.number == number) {
                return Optional.of(screw);
            }
        }
        return Optional.empty();
    }

    /**
     * Its number.
     *
     * @return the number
     */
    public int number() {
        return number;
    }

    /**
     * Its nominal diameter, over the thread.
     *
     * @return D in mm
     */
    public double diameterMm() {
        return diameterInch * INCH_MM;
    }

    /**
     * The diameter of its root, under the thread.
     *
     * @return D_r in mm
     */
    public double rootMm() {
        return rootInch * INCH_MM;
    }

    /**
     * The diameter of its head.
     *
     * @return D_H in mm
     */
    public double headMm() {
        return headInch * INCH_MM;
    }

    /**
     * The hole it passes through freely.
     *
     * @return the diameter in mm
     * @formula (number + 3) / 64 inch
     * @unit mm
     * @edge none
     * @source practice: rule of thumb of woodworkers, read in a secondary source
     */
    public double clearanceMm() {
        return (number + 3) / 64.0 * INCH_MM;
    }

    /**
     * The hole for its thread.
     *
     * @param wood what it is screwed into
     * @return the diameter in mm
     * @formula 70 % of the root diameter in softwood, 90 % in hardwood
     * @unit mm
     * @edge none
     * @source handbook: commentary to the NDS, edition before 1962, from a secondary source
     */
    public double pilotMm(Wood wood) {
        return wood.share * rootMm();
    }

    /** What a screw is driven into. */
    public enum Wood {
        /** Softwood. */
        SOFT(0.7),
        /** Hardwood. */
        HARD(0.9);

        private final double share;

        Wood(double share) {
            this.share = share;
        }

        /** {@return the name as documents write it} */
        public String text() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
