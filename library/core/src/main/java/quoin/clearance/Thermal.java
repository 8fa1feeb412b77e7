package quoin.clearance;

/**
 * How much parts grow in heat, how far they move against each other, and how long their slots must be.
 *
 * <p>Stateless.
 */
public final class Thermal {
    /** Lengths are meant at this temperature, in K: 20 &deg;C. */
    public static final double REFERENCE_K = 293.15;

    /** A steel tape, in 1/K; recalled, not seen. */
    public static final double STEEL_TAPE_PER_KELVIN = 11.5e-6;

    private Thermal() {}

    /**
     * How much longer a part gets.
     *
     * @param lengthMm its length, in mm, 0 or more
     * @param perKelvin its coefficient of expansion, in 1/K
     * @param kelvin how much warmer it gets, in K; negative where it cools
     * @return the growth in mm, negative where it shrinks
     * @formula length &middot; &alpha; &middot; &Delta;T
     * @unit mm, 1/K, K
     * @edge 0 where nothing changes
     * @source handbook: linear thermal expansion (any handbook of physics)
     * @throws IllegalArgumentException if a number is not finite or the length is below 0
     */
    public static double growthMm(double lengthMm, double perKelvin, double kelvin) {
        requireLength("length", lengthMm);
        requireFinite("coefficient", perKelvin, "/K");
        requireFinite("difference", kelvin, "K");
        return lengthMm * perKelvin * kelvin + 0.0;
    }

    /**
     * The true length at hand of what a tape reads that is right at 20 &deg;C.
     *
     * @param readMm what was read, in mm, 0 or more
     * @param tapePerKelvin the tape's coefficient of expansion, in 1/K
     * @param tapeK how warm the tape is, in K, above 0
     * @return the length in mm: a warm tape reads short
     * @formula read &middot; (1 + &alpha;(T &minus; 293.15 K))
     * @unit mm, 1/K, K
     * @edge the reading at 20 &deg;C
     * @source handbook: tape correction for temperature (any handbook of surveying)
     * @throws IllegalArgumentException if a number is not finite or out of range
     */
    public static double trueLengthMm(double readMm, double tapePerKelvin, double tapeK) {
        requireTemperature("tape temperature", tapeK);
        return readMm + growthMm(readMm, tapePerKelvin, tapeK - REFERENCE_K);
    }

    /**
     * How far a part moves at a fixing that lets it slide.
     *
     * @param shrinkMm towards the fixing that holds it, in the cold, in mm, 0 or more
     * @param growMm away from it, in the heat, in mm, 0 or more
     */
    public record Movement(double shrinkMm, double growMm) {
        /** Refuses movements below 0. */
        public Movement {
            requireLength("shrink", shrinkMm);
            requireLength("grow", growMm);
        }

        /**
         * How long a slot must be for the screw in it to let the part slide.
         *
         * @param screwMm the diameter of what sits in the slot, in mm, above 0
         * @param withinMm how far off the slot and the screw may be set out, &plusmn;, in mm, 0 or more
         * @return the length over all, in mm
         * @formula screw + shrink + grow + 2 &middot; within
         * @unit mm
         * @edge a round hole where nothing moves
         * @source practice: common practice, no source
         * @throws IllegalArgumentException if the screw is not above 0 or within is below 0
         */
        public double slotMm(double screwMm, double withinMm) {
            if (!(screwMm > 0 && screwMm < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("screw must be above 0 mm and finite, got " + screwMm + " mm");
            }
            requireLength("within", withinMm);
            return screwMm + shrinkMm + growMm + 2 * withinMm;
        }
    }

    /**
     * How far a part moves against what it is fixed to, at a distance from the one fixing that holds it.
     *
     * @param distanceMm from the fixing that holds it, in mm, 0 or more
     * @param perKelvin by how much its coefficient exceeds that of what it is fixed to, in 1/K
     * @param fixedK the temperature at which it is fixed, in K, above 0
     * @param fromK the coldest, in K, not above the hottest
     * @param toK the hottest, in K
     * @return the movement both ways
     * @formula distance &middot; &Delta;&alpha; &middot; (T &minus; T_fixed) at both ends, what lies below 0 and above
     * @unit mm, 1/K, K
     * @edge none either way where both materials grow alike
     * @source handbook: linear thermal expansion (any handbook of physics)
     * @throws IllegalArgumentException if a number is not finite or out of range
     */
    public static Movement sliding(double distanceMm, double perKelvin, double fixedK, double fromK, double toK) {
        requireTemperature("temperature of fixing", fixedK);
        requireRange(fromK, toK);
        double cold = growthMm(distanceMm, perKelvin, fromK - fixedK);
        double hot = growthMm(distanceMm, perKelvin, toK - fixedK);
        double least = StrictMath.min(0, StrictMath.min(cold, hot));
        double greatest = StrictMath.max(0, StrictMath.max(cold, hot));
        return new Movement(0 - least, greatest);
    }

    /**
     * The stress in a part that is held hard at both ends.
     *
     * @param modulus its modulus of elasticity, in N/mm&sup2;, above 0
     * @param perKelvin its coefficient of expansion, in 1/K
     * @param kelvin how much warmer it gets than when it was fixed, in K
     * @return the stress in N/mm&sup2;, positive in compression
     * @formula E &middot; &alpha; &middot; &Delta;T
     * @unit N/mm&sup2;, 1/K, K
     * @edge tension, negative, where it cools
     * @source handbook: strength of materials (any textbook)
     * @throws IllegalArgumentException if a number is not finite or the modulus not above 0
     */
    public static double restraint(double modulus, double perKelvin, double kelvin) {
        if (!(modulus > 0 && modulus < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("modulus must be above 0 N/mm2 and finite, got " + modulus + " N/mm2");
        }
        return growthMm(modulus, perKelvin, kelvin);
    }

    static void requireTemperature(String name, double kelvin) {
        if (!(kelvin > 0 && kelvin < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be above 0 K and finite, got " + kelvin + " K");
        }
    }

    static void requireRange(double fromK, double toK) {
        requireTemperature("coldest", fromK);
        requireTemperature("hottest", toK);
        if (fromK > toK) {
            throw new IllegalArgumentException(
                    "coldest must not be above the hottest of " + toK + " K, got " + fromK + " K");
        }
    }

    private static void requireLength(String name, double mm) {
        if (!(mm >= 0 && mm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be 0 mm or more and finite, got " + mm + " mm");
        }
    }

    private static void requireFinite(String name, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be finite, got " + value + " " + unit);
        }
    }
}
