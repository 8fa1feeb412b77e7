package quoin.measure;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** Texts of lengths, both ways: what is written can be read again. */
public final class LengthText {
    private static final double INCH = 25.4;

    private LengthText() {}

    /**
     * Reads a length such as {@code 1503 mm}, {@code 1.503 m}, {@code 59 3/16 in} or {@code 4' 11 3/16"}.
     *
     * @param text the text
     * @return the length in mm
     * @throws IllegalArgumentException if it is not a length; the message says what would be right
     * @formula number times the size of the unit
     * @unit mm
     * @edge negative lengths are read as such
     * @source standard: 1 in = 25.4 mm exactly, 1 ft = 12 in (international yard and pound agreement, 1959)
     */
    public static double parseMm(String text) {
        return AmountText.parse(text, Dimension.LENGTH).value();
    }

    /**
     * Writes a length in millimetres.
     *
     * @param mm the length in mm
     * @param decimals how many decimals, 0 to 12; halves go away from zero
     * @param locale the locale, for the decimal sign
     * @return such as {@code 1503.5 mm}
     */
    public static String millimetres(double mm, int decimals, Locale locale) {
        return number(mm, decimals, locale) + " mm";
    }

    /**
     * Writes a length in metres.
     *
     * @param mm the length in mm
     * @param decimals how many decimals, 0 to 12; halves go away from zero
     * @param locale the locale, for the decimal sign
     * @return such as {@code 1.503 m}
     */
    public static String metres(double mm, int decimals, Locale locale) {
        return number(mm / 1000, decimals, locale) + " m";
    }

    /**
     * Writes a length in inches with a reduced fraction.
     *
     * @param mm the length in mm
     * @param denominator the finest fraction: 1, 2, 4, 8, 16, 32 or 64
     * @return such as {@code 59 3/16 in}
     */
    public static String inches(double mm, int denominator) {
        long steps = steps(mm, denominator);
        return (steps < 0 ? "-" : "") + mixed(Math.abs(steps), denominator) + " in";
    }

    /**
     * Writes a length in feet and inches with a reduced fraction.
     *
     * @param mm the length in mm
     * @param denominator the finest fraction: 1, 2, 4, 8, 16, 32 or 64
     * @return such as {@code 4' 11 3/16"}
     */
    public static String feetAndInches(double mm, int denominator) {
        long steps = steps(mm, denominator);
        long foot = 12L * denominator;
        long size = Math.abs(steps);
        String feet = size >= foot ? size / foot + "' " : "";
        return (steps < 0 ? "-" : "") + feet + mixed(size % foot, denominator) + "\"";
    }

    private static long steps(double mm, int denominator) {
        if (denominator < 1 || denominator > 64 || Integer.bitCount(denominator) != 1) {
            throw new IllegalArgumentException("denominator must be 1, 2, 4, 8, 16, 32 or 64, got " + denominator);
        }
        requireFinite(mm);
        double step = INCH / denominator;
        return Math.round(Steps.nearest(mm, step) / step);
    }

    private static String mixed(long steps, int denominator) {
        long whole = steps / denominator;
        long over = steps % denominator;
        long under = denominator;
        while (over != 0 && over % 2 == 0) {
            over /= 2;
            under /= 2;
        }
        if (over == 0) {
            return Long.toString(whole);
        }
        return (whole == 0 ? "" : whole + " ") + over + "/" + under;
    }

    static String number(double value, int decimals, Locale locale) {
        if (decimals < 0 || decimals > 12) {
            throw new IllegalArgumentException("decimals must be 0 to 12, got " + decimals);
        }
        requireFinite(value);
        BigDecimal rounded = AmountText.rounded(value, decimals);
        char point = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
        return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString().replace('.', point);
    }

    private static void requireFinite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("length must be a finite number, got " + value);
        }
    }
}
