package quoin.opening;

import java.util.Locale;

/**
 * Slips that people make on a tape. What a slip leaves is one true reading or a few, given what was read: a hint, not a
 * proof. Common practice; swapped digits and 6 for 9 also in Ghilani, Adjustment Computations, chapter 21.
 */
enum CommonSlip {
    /** A whole centimetre; a 5 and a 6 taken for each other leave the same. */
    WHOLE_10_MM,
    /** A whole decimetre: the neighbouring one, or a tape held at its 100 mm mark. */
    WHOLE_100_MM,
    /** A whole metre. */
    WHOLE_1000_MM,
    /** A tape held at its first inch mark, and the inch not taken off or taken off twice. */
    BURNT_INCH,
    /** A 6 and a 9 taken for each other, at any place. */
    SIX_FOR_NINE,
    /** A 1 and a 7 taken for each other, at any place. */
    ONE_FOR_SEVEN,
    /** A 3 and an 8 taken for each other, at any place. */
    THREE_FOR_EIGHT,
    /** The last two digits swapped. */
    SWAPPED_DIGITS,
    /** Two digits further up swapped. */
    SWAPPED_DIGITS_90,
    /** So many before a numbered mark, read as so many after it: 147 read as 153. */
    COUNTED_BACK;

    private static final double INCH = 25.4;
    private static final int FEW = 4;
    private static final double WHOLE = 1e-6;

    String text() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * What should have been read, if this is what happened.
     *
     * @param observed what was read, in mm
     * @param likely what the other readings say, in mm
     * @return the nearest to {@code likely} that this slip leaves; NaN where the digits do not allow it
     */
    double corrected(double observed, double likely) {
        return switch (this) {
            case WHOLE_10_MM -> eitherWay(observed, 10, likely);
            case WHOLE_100_MM -> eitherWay(observed, 100, likely);
            case WHOLE_1000_MM -> eitherWay(observed, 1000, likely);
            case BURNT_INCH -> eitherWay(observed, INCH, likely);
            case SIX_FOR_NINE -> digit(observed, 6, 9, likely);
            case ONE_FOR_SEVEN -> digit(observed, 1, 7, likely);
            case THREE_FOR_EIGHT -> digit(observed, 3, 8, likely);
            case SWAPPED_DIGITS -> swapped(observed, 1, 1, likely);
            case SWAPPED_DIGITS_90 -> swapped(observed, 10, 100, likely);
            case COUNTED_BACK -> countedBack(observed);
        };
    }

    private static double eitherWay(double observed, double by, double likely) {
        return likely > observed ? observed + by : observed - by;
    }

    /** Whether it was read in millimetres: a tape in inches has other digits. */
    private static boolean isDecimal(double observed) {
        return observed > 0 && Math.abs(observed * 10 - Math.rint(observed * 10)) < WHOLE;
    }

    private static int digitAt(double observed, int place) {
        return (int) ((long) (observed + WHOLE) / place % 10);
    }

    private static double digit(double observed, int one, int other, double likely) {
        double best = Double.NaN;
        for (int place = 1; place <= 1000 && isDecimal(observed); place *= 10) {
            int read = digitAt(observed, place);
            double by = read == one ? other - one : read == other ? one - other : 0;
            best = by == 0 ? best : nearer(best, observed + by * place, likely);
        }
        return best;
    }

    private static double swapped(double observed, int from, int to, double likely) {
        double best = Double.NaN;
        for (int place = from; place <= to && isDecimal(observed); place *= 10) {
            int low = digitAt(observed, place);
            int high = digitAt(observed, place * 10);
            best = low == high ? best : nearer(best, observed + 9.0 * (low - high) * place, likely);
        }
        return best;
    }

    private static double countedBack(double observed) {
        int past = digitAt(observed, 1);
        return isDecimal(observed) && past > 0 && past <= FEW ? observed - 2 * past : Double.NaN;
    }

    private static double nearer(double best, double next, double likely) {
        return Math.abs(best - likely) <= Math.abs(next - likely) ? best : next;
    }
}
