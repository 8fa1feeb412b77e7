package quoin.measure;

import java.util.Locale;

/**
 * The text of lengths, in metric and in inches, both ways.
 *
 * <p>What is written here can be read here, with the same locale, and gives the written number back. Stateless.
 */
public final class LengthText {
    private static final double INCH = 25.4;
    private static final int FINEST = 64;
    private static final int INCHES_IN_A_FOOT = 12;
    private static final double LONGEST = 1e12;

    private LengthText() {}

    /**
     * Reads a length, decimals behind a point.
     *
     * @formula number · unit, exact in decimals and fractions before one rounding; 1 in = 25.4 mm
     * @unit mm; texts in mm, cm, m, in, ft, or feet and inches
     * @edge a number without a unit, a unit of another dimension and NaN are refused
     * @source standard: international yard and pound agreement of 1959, 1 in = 25.4 mm (from memory)
     * @param text such as {@code 1503 mm}, {@code 1.503 m}, {@code 59 3/16 in}, {@code 4' 11 3/16"}
     * @return the length in mm
     * @throws IllegalArgumentException if the text is no length; the message says what would be right
     */
    public static double parseMm(String text) {
        return AmountText.parse(text, Dimension.LENGTH).value();
    }

    /**
     * Reads a length with the decimal separator of a locale.
     *
     * @formula number · unit, exact in decimals and fractions before one rounding; 1 in = 25.4 mm
     * @unit mm; texts in mm, cm, m, in, ft, or feet and inches
     * @edge a separator between thousands is refused
     * @source standard: international yard and pound agreement of 1959, 1 in = 25.4 mm (from memory)
     * @param text such as {@code 1503,5 mm}
     * @param locale whose decimal separator to read
     * @return the length in mm
     * @throws IllegalArgumentException if the text is no length; the message says what would be right
     */
    public static double parseMm(String text, Locale locale) {
        return AmountText.parse(text, Dimension.LENGTH, AmountText.point(locale))
                .value();
    }

    /**
     * A length in millimetres, halves away from zero.
     *
     * @param mm the length in mm
     * @param decimals digits behind the separator, 0 to 12
     * @param locale whose decimal separator to write
     * @return such as {@code 1503 mm}
     */
    public static String millimetres(double mm, int decimals, Locale locale) {
        return AmountText.decimal(length(mm), decimals, locale) + " mm";
    }

    /**
     * A length in metres, halves away from zero.
     *
     * @param mm the length in mm
     * @param decimals digits behind the separator, 0 to 12
     * @param locale whose decimal separator to write
     * @return such as {@code 1.503 m}
     */
    public static String metres(double mm, int decimals, Locale locale) {
        return AmountText.decimal(length(mm) / 1000, decimals, locale) + " m";
    }

    /**
     * A length in inches and a reduced fraction of an inch, to the nearest step, halves away from zero.
     *
     * @param mm the length in mm
     * @param denominator parts of an inch: 1, 2, 4, 8, 16, 32 or 64
     * @return such as {@code 59 3/16 in}, {@code 59 in}, {@code 3/16 in}, {@code -3/16 in}
     */
    public static String inches(double mm, int denominator) {
        long parts = parts(mm, denominator);
        return (parts < 0 ? "-" : "") + mixed(StrictMath.abs(parts), denominator) + " in";
    }

    /**
     * A length in feet, inches and a reduced fraction of an inch, to the nearest step, halves away from zero.
     *
     * @param mm the length in mm
     * @param denominator parts of an inch: 1, 2, 4, 8, 16, 32 or 64
     * @return such as {@code 4' 11 3/16"}, {@code 4' 0"}, {@code 11 3/16"}
     */
    public static String feetAndInches(double mm, int denominator) {
        long parts = parts(mm, denominator);
        long size = StrictMath.abs(parts);
        long foot = (long) INCHES_IN_A_FOOT * denominator;
        String feet = size < foot ? "" : size / foot + "' ";
        return (parts < 0 ? "-" : "") + feet + mixed(size % foot, denominator) + "\"";
    }

    private static String mixed(long parts, int denominator) {
        long whole = parts / denominator;
        long over = parts % denominator;
        if (over == 0) {
            return Long.toString(whole);
        }
        int under = denominator;
        while (over % 2 == 0) {
            over /= 2;
            under /= 2;
        }
        return (whole == 0 ? "" : whole + " ") + over + "/" + under;
    }

    private static long parts(double mm, int denominator) {
        if (denominator < 1 || denominator > FINEST || Integer.bitCount(denominator) != 1) {
            throw Require.refused("denominator", "1, 2, 4, 8, 16, 32 or 64", denominator, "");
        }
        return (long) Steps.nearestCount(length(mm) * denominator / INCH);
    }

    private static double length(double mm) {
        return Require.between("length", mm, -LONGEST, LONGEST, "mm");
    }
}
