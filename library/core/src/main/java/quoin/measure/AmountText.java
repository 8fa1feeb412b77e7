package quoin.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * Texts of quantities: a number, a space, a unit of the closed table; lengths also in feet and inches with fractions.
 *
 * <p>Numbers use a point and no grouping, whatever the locale.
 */
public final class AmountText {
    private static final int LONGEST = 64;

    private AmountText() {}

    /**
     * Reads a quantity such as {@code 59 3/16 in}, {@code 4' 11 3/16"}, {@code 1.503 m} or {@code 12 deg}.
     *
     * @param text the text
     * @return the amount
     * @throws IllegalArgumentException if it is not a number with a unit; the message says what would be right
     */
    public static Amount parse(String text) {
        String trimmed = text.strip();
        if (trimmed.isEmpty() || trimmed.length() > LONGEST) {
            throw new IllegalArgumentException("quantity must be a number with a unit such as 1503 mm, got "
                    + (trimmed.isEmpty() ? "an empty text" : "a text of " + trimmed.length() + " characters"));
        }
        if (trimmed.indexOf('\'') >= 0 || trimmed.endsWith("\"")) {
            return Amount.ofMm(feetAndInches(trimmed));
        }
        int cut = unitStart(trimmed);
        String number = trimmed.substring(0, cut).strip();
        String unit = trimmed.substring(cut).strip();
        if (unit.isEmpty()) {
            throw new IllegalArgumentException(
                    "quantity must have a unit, such as " + number + " mm, got " + trimmed + " without one");
        }
        UnitTable.Entry entry = UnitTable.find(unit).orElse(null);
        if (entry == null) {
            throw new IllegalArgumentException("unit must be one of "
                    + String.join(", ", UnitTable.all().stream().map(UnitTable.Entry::text).toList()) + ", got "
                    + unit);
        }
        boolean fraction = number.indexOf('/') >= 0;
        if (fraction && !unit.equals("in") && !unit.equals("ft")) {
            throw new IllegalArgumentException("number must be a decimal number in " + unit + ", got " + number);
        }
        double value = fraction ? mixed(number, text) : decimal(number, text);
        return new Amount(entry.toBase(value), entry.dimension());
    }

    /**
     * Reads a quantity of a kind that is expected.
     *
     * @param text the text
     * @param expected the kind of quantity
     * @return the amount
     * @throws IllegalArgumentException if it is not a quantity, or one of another kind
     */
    public static Amount parse(String text, Dimension expected) {
        Amount amount = parse(text);
        if (amount.dimension() != expected) {
            throw new IllegalArgumentException("quantity must be a " + expected.text() + " (" + units(expected)
                    + "), got a " + amount.dimension().text() + ": " + text);
        }
        return amount;
    }

    private static String units(Dimension dimension) {
        String spellings = UnitTable.spellings(dimension);
        return spellings.isEmpty() ? dimension.answerUnit() : spellings;
    }

    /** Where the unit begins: after the last character that can belong to a number. */
    private static int unitStart(String text) {
        int cut = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean exponent = (c == 'e' || c == 'E')
                    && i > 0
                    && isDigitOrPoint(text.charAt(i - 1))
                    && i + 1 < text.length()
                    && (isDigitOrPoint(text.charAt(i + 1)) || text.charAt(i + 1) == '-' || text.charAt(i + 1) == '+');
            boolean perUnit = c == '/' && i + 1 < text.length() && !isDigitOrPoint(text.charAt(i + 1));
            if (perUnit || !(isDigitOrPoint(c) || exponent || c == '-' || c == '+' || c == '/' || c == ' ')) {
                break;
            }
            cut = i + 1;
        }
        return cut;
    }

    private static boolean isDigitOrPoint(char c) {
        return (c >= '0' && c <= '9') || c == '.';
    }

    static double decimal(String number, String whole) {
        boolean shape = !number.isEmpty() && isDigitOrPoint(number.charAt(number.length() - 1));
        for (int i = 0; i < number.length() && shape; i++) {
            char c = number.charAt(i);
            shape = isDigitOrPoint(c) || c == '-' || c == '+' || c == 'e' || c == 'E';
        }
        double value = Double.NaN;
        if (shape) {
            try {
                value = Double.parseDouble(number);
            } catch (NumberFormatException e) {
                throw notANumber(number, whole, e);
            }
        }
        if (!Double.isFinite(value)) {
            throw notANumber(number, whole, new NumberFormatException(number));
        }
        return value;
    }

    private static IllegalArgumentException notANumber(String number, String whole, NumberFormatException cause) {
        return new IllegalArgumentException(
                "quantity must start with a number such as 1503, got " + (number.isEmpty() ? whole : number), cause);
    }

    /** A whole number and a fraction, or one of them: {@code 59 3/16}, {@code 3/16}, {@code -1 1/2}. */
    private static double mixed(String number, String whole) {
        boolean negative = number.startsWith("-");
        String rest = negative ? number.substring(1).strip() : number;
        int space = rest.lastIndexOf(' ');
        double sum = space < 0 ? 0 : count(rest.substring(0, space).strip(), whole);
        String fraction = rest.substring(space + 1);
        int slash = fraction.indexOf('/');
        if (slash < 0) {
            sum += decimal(fraction, whole);
        } else {
            double over = count(fraction.substring(0, slash), whole);
            double under = count(fraction.substring(slash + 1), whole);
            if (under == 0) {
                throw new IllegalArgumentException("fraction must have a denominator above 0, got " + whole);
            }
            sum += over / under;
        }
        return negative ? -sum : sum;
    }

    private static double count(String digits, String whole) {
        for (int i = 0; i < digits.length(); i++) {
            if (digits.charAt(i) < '0' || digits.charAt(i) > '9') {
                throw new IllegalArgumentException(
                        "fraction must be whole numbers such as 59 3/16, got " + whole);
            }
        }
        if (digits.isEmpty() || digits.length() > 9) {
            throw new IllegalArgumentException("fraction must be whole numbers such as 59 3/16, got " + whole);
        }
        return Integer.parseInt(digits);
    }

    private static double feetAndInches(String text) {
        boolean negative = text.startsWith("-");
        String rest = negative ? text.substring(1).strip() : text;
        int foot = rest.indexOf('\'');
        double feet = foot < 0 ? 0 : decimal(rest.substring(0, foot).strip(), text);
        String inches = rest.substring(foot + 1).strip();
        double more = 0;
        if (!inches.isEmpty()) {
            if (!inches.endsWith("\"")) {
                throw new IllegalArgumentException("length must be written such as 4' 11 3/16\", got " + text);
            }
            String number = inches.substring(0, inches.length() - 1).strip();
            if (number.startsWith("-") || (feet < 0)) {
                throw new IllegalArgumentException("length must have one sign in front, got " + text);
            }
            more = number.indexOf('/') >= 0 ? mixed(number, text) : decimal(number, text);
        }
        double mm = feet * 304.8 + more * 25.4;
        return negative ? -mm : mm;
    }

    /**
     * Writes a quantity.
     *
     * @param amount the amount
     * @param unitText a unit of its kind
     * @param decimals how many decimals, 0 to 12; halves go away from zero
     * @param locale the locale, for the decimal sign
     * @return the text
     * @throws IllegalArgumentException if the unit is not one of that kind
     */
    public static String format(Amount amount, String unitText, int decimals, Locale locale) {
        UnitTable.Entry entry = UnitTable.find(unitText)
                .filter(e -> e.dimension() == amount.dimension())
                .orElseThrow(() -> new IllegalArgumentException(
                        "unit must be one of " + units(amount.dimension()) + ", got " + unitText));
        return LengthText.number(entry.fromBase(amount.value()), decimals, locale) + " " + unitText;
    }

    static BigDecimal rounded(double value, int decimals) {
        return new BigDecimal(Double.toString(value)).setScale(decimals, RoundingMode.HALF_UP);
    }
}
