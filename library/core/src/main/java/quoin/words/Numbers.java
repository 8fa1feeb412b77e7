package quoin.words;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as people read them. */
final class Numbers {
    private static final double PLAIN_BELOW = 1e9;

    private Numbers() {}

    /** At most six significant digits, no trailing zeros, a decimal point. */
    static String plain(double value) {
        if (!Double.isFinite(value)) {
            return "unknown";
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(6)).stripTrailingZeros();
        boolean readable = Math.abs(value) < PLAIN_BELOW && (value == 0 || Math.abs(value) >= 1e-6);
        return readable ? rounded.toPlainString() : rounded.toString();
    }

    /** To the nearest half, as 3, ½ or 1½. */
    static String nearestHalf(double value) {
        return halves(StrictMath.floor(value * 2 + 0.5));
    }

    /** Up to the next half; a value within 1e-9 of a half counts as it. */
    static String halfUp(double value) {
        return halves(StrictMath.ceil(value * 2 - 1e-9));
    }

    /** Down to a tenth, so that who keeps to it is good enough; below a tenth as it is. */
    static String tenthDown(double value) {
        double tenths = StrictMath.floor(value * 10 + 1e-9);
        return tenths < 1 ? plain(value) : rounded(tenths / 10, 1);
    }

    private static String halves(double count) {
        long whole = (long) StrictMath.floor(count / 2);
        boolean half = count - 2.0 * whole >= 0.5;
        if (!half) {
            return Long.toString(whole);
        }
        return whole == 0 ? "½" : whole + "½";
    }

    /** To a number of decimals, halves away from zero, no trailing zeros. */
    static String rounded(double value, int decimals) {
        BigDecimal exact = BigDecimal.valueOf(value).setScale(decimals, java.math.RoundingMode.HALF_UP);
        BigDecimal stripped = exact.signum() == 0 ? BigDecimal.ZERO : exact.stripTrailingZeros();
        return stripped.toPlainString();
    }
}
