package quoin.clearance;

/**
 * How much timber swells and shrinks across the grain as its moisture changes. Along the grain it hardly does. Stateless.
 */
public final class Moisture {
    private static final double GREEN_PERCENT = 28;

    private Moisture() {}

    /** Timbers with a printed coefficient of dimensional change, tangential, for each per cent of moisture. */
    public enum Timber {
        /** Douglas fir. */
        DOUGLAS_FIR(0.00267),
        /** White oak. */
        WHITE_OAK(0.00365),
        /** Red oak; some printings have 0.00365. */
        RED_OAK(0.00369),
        /** Hard maple. */
        HARD_MAPLE(0.00353),
        /** Beech. */
        BEECH(0.00431);

        private final double perPercent;

        Timber(double perPercent) {
            this.perPercent = perPercent;
        }
    }

    /** Which way across a board of softwood. */
    public enum Way {
        /** Its width. */
        WIDTH(6.031, 0.215),
        /** Its thickness. */
        THICKNESS(5.062, 0.181);

        private final double green;
        private final double slope;

        Way(double green, double slope) {
            this.green = green;
            this.slope = slope;
        }
    }

    /**
     * How much a timber swells across the grain.
     *
     * @param acrossMm its size across the grain, in mm, above 0
     * @param timber which timber
     * @param fromPercent its moisture when it was measured, from 0 to 28 %
     * @param toPercent its moisture in service, from 0 to 28 %
     * @return the change in mm, negative where it dries
     * @formula size &middot; C &middot; (to &minus; from)
     * @unit mm, %
     * @edge 0 where the moisture stays
     * @source handbook: coefficients of dimensional change of a wood handbook (secondary source), tangential
     * @throws IllegalArgumentException if a number is out of its range
     */
    public static double changeMm(double acrossMm, Timber timber, double fromPercent, double toPercent) {
        requireSize(acrossMm);
        requirePercent("moisture from", fromPercent);
        requirePercent("moisture to", toPercent);
        return acrossMm * timber.perPercent * (toPercent - fromPercent) + 0.0;
    }

    /**
     * How much sawn softwood swells across the grain.
     *
     * @param acrossMm its size at the first moisture, in mm, above 0
     * @param way its width or its thickness
     * @param fromPercent its moisture when it was measured, from 8 to 19 %
     * @param toPercent its moisture in service, from 8 to 19 %
     * @return the change in mm, negative where it dries
     * @formula size &middot; ((100 &minus; S(to)) / (100 &minus; S(from)) &minus; 1), S = 6.031 &minus; 0.215 M or 5.062 &minus; 0.181 M per cent of the green size
     * @unit mm, %
     * @edge 0 where the moisture stays
     * @source handbook: shrinkage of softwood lumber, a forest products research paper (secondary source)
     * @throws IllegalArgumentException if a number is out of its range
     */
    public static double softwoodChangeMm(double acrossMm, Way way, double fromPercent, double toPercent) {
        requireSize(acrossMm);
        requireSeasoned("moisture from", fromPercent);
        requireSeasoned("moisture to", toPercent);
        double from = 100 - (way.green - way.slope * fromPercent);
        double to = 100 - (way.green - way.slope * toPercent);
        return acrossMm * (to - from) / from + 0.0;
    }

    private static void requireSize(double mm) {
        if (!(mm > 0 && mm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("size across must be above 0 mm and finite, got " + mm + " mm");
        }
    }

    private static void requirePercent(String name, double percent) {
        if (!(percent >= 0 && percent <= GREEN_PERCENT)) {
            throw new IllegalArgumentException(name + " must be from 0 to 28 %, got " + percent + " %");
        }
    }

    private static void requireSeasoned(String name, double percent) {
        if (!(percent >= 8 && percent <= 19)) {
            throw new IllegalArgumentException(name + " must be from 8 to 19 %, got " + percent + " %");
        }
    }
}
