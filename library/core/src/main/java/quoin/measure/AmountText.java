package quoin.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/**
 * The text of quantities: a number and one of the unit texts of {@link UnitTable}.
 *
 * <p>Texts look like {@code 1503 mm}, {@code 59 3/16 in}, {@code 4' 11 3/16"}, {@code 12 deg}, {@code 23e-6 /K}.
 * Reading is exact in decimals and fractions before the one rounding to a {@code double}. Stateless.
 */
public final class AmountText {
    private static final int MOST_DECIMALS = 12;

    private AmountText() {}

    /**
     * Reads a quantity, decimals behind a point.
     *
     * @param text a number and a unit
     * @return the amount in base units
     * @throws IllegalArgumentException if the text is no quantity; the message says what would be right
     */
    public static Amount parse(String text) {
        return new QuantityParser(text, '.', Dimension.LENGTH).parse();
    }

    /**
     * Reads a quantity of a given dimension, decimals behind a point.
     *
     * @param text a number and a unit
     * @param expected the dimension that is wanted
     * @return the amount in base units
     * @throws IllegalArgumentException if the text is no quantity or one of another dimension
     */
    public static Amount parse(String text, Dimension expected) {
        return parse(text, expected, '.');
    }

    static Amount parse(String text, Dimension expected, char point) {
        Amount amount = new QuantityParser(text, point, expected).parse();
        if (amount.dimension() != expected) {
            throw new IllegalArgumentException("\"" + text.strip() + "\" is an amount of "
                    + amount.dimension().label() + ", wanted is one of " + expected.label() + ", such as a number of "
                    + UnitTable.suggestion(expected));
        }
        return amount;
    }

    /**
     * Writes a quantity in a unit, rounded to decimals, halves away from zero.
     *
     * @param amount what to write
     * @param unitText the unit, as {@link UnitTable} spells it
     * @param decimals digits behind the decimal separator, 0 to 12
     * @param locale whose decimal separator to write
     * @return the text, such as {@code 1503.5 mm}; no separators between thousands, ASCII digits
     * @throws IllegalArgumentException if the unit is unknown or of another dimension
     */
    public static String format(Amount amount, String unitText, int decimals, Locale locale) {
        UnitTable.Entry unit = UnitTable.find(unitText)
                .orElseThrow(() ->
                        new IllegalArgumentException("unit must be one of " + UnitTable.known() + ", got " + unitText));
        if (unit.dimension() != amount.dimension()) {
            throw new IllegalArgumentException("unit must be one of "
                    + amount.dimension().label() + ", got " + unitText + ", a unit of "
                    + unit.dimension().label());
        }
        return decimal(unit.fromBase(amount.value()), decimals, locale) + " " + unitText;
    }

    static String decimal(double value, int decimals, Locale locale) {
        if (decimals < 0 || decimals > MOST_DECIMALS) {
            throw Require.refused("decimals", "from 0 to " + MOST_DECIMALS, decimals, "");
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        String plain = rounded.toPlainString();
        char point = point(locale);
        return point == '.' ? plain : plain.replace('.', point);
    }

    static char point(Locale locale) {
        return DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
    }
}
