package quoin.measure;

import java.math.BigDecimal;
import java.math.MathContext;

/** Reads one text of a quantity from left to right; made for one text and thrown away. */
final class QuantityParser {
    private static final int LONGEST_TEXT = 64;
    private static final int LONGEST_EXPONENT = 3;
    private static final BigDecimal INCHES_IN_A_FOOT = BigDecimal.valueOf(12);
    private static final BigDecimal INCH = new BigDecimal("25.4");

    private final String text;
    private final char point;
    private final String suggestion;
    private int at;

    QuantityParser(String text, char point, Dimension suggested) {
        this.text = text.strip();
        this.point = point;
        this.suggestion = UnitTable.suggestion(suggested);
    }

    Amount parse() {
        if (text.isEmpty()) {
            throw new IllegalArgumentException("the text is empty: write a number and a unit, such as 1503 mm");
        }
        if (text.length() > LONGEST_TEXT) {
            throw new IllegalArgumentException(
                    "a quantity has at most " + LONGEST_TEXT + " characters, got " + text.length());
        }
        boolean negative = sign();
        Fraction number = number();
        Amount amount = atMark() ? feetAndInches(number, negative) : withUnit(number, negative);
        return amount;
    }

    private Amount withUnit(Fraction number, boolean negative) {
        String unitText = text.substring(at).strip();
        if (unitText.isEmpty()) {
            throw new IllegalArgumentException(text + " is a number without a unit: write " + text + " " + suggestion
                    + ("mm".equals(suggestion) ? " or another length unit" : ""));
        }
        UnitTable.Entry unit = UnitTable.find(unitText).orElseThrow(() -> unknownUnit(unitText));
        if (number.isFraction() && !"in".equals(unitText) && !"ft".equals(unitText)) {
            throw refused("fractions are for inches and feet, write a decimal number of " + unitText);
        }
        BigDecimal factor = BigDecimal.valueOf(unit.factor());
        double size = number.times(factor);
        return amount((negative ? -size : size) + unit.offset(), unit.dimension());
    }

    private IllegalArgumentException unknownUnit(String unitText) {
        char first = unitText.charAt(0);
        if (first == ',' || first == '.') {
            return refused("write the number with '" + point + "' before its decimals and nothing between thousands");
        }
        return refused("unknown unit \"" + unitText + "\", known are " + UnitTable.known());
    }

    private Amount feetAndInches(Fraction first, boolean negative) {
        Fraction inches = first;
        BigDecimal feet = BigDecimal.ZERO;
        if (text.charAt(at) == '\'') {
            at++;
            skipSpaces();
            if (at == text.length()) {
                return length(first.times(INCH.multiply(INCHES_IN_A_FOOT)), negative);
            }
            if (first.isFraction() || first.numerator().scale() > 0) {
                throw refused("feet before inches are a whole number");
            }
            feet = first.numerator();
            inches = number();
            if (inches.times(BigDecimal.ONE) >= INCHES_IN_A_FOOT.doubleValue()) {
                throw refused("inches behind feet are less than 12");
            }
        }
        if (at != text.length() - 1 || text.charAt(at) != '"') {
            throw refused("inches end with \", as in 4' 11 3/16\"");
        }
        return length(inches.plus(feet.multiply(INCHES_IN_A_FOOT)).times(INCH), negative);
    }

    private Amount length(double millimetres, boolean negative) {
        return amount(negative ? -millimetres : millimetres, Dimension.LENGTH);
    }

    private Amount amount(double value, Dimension dimension) {
        if (!Double.isFinite(value)) {
            throw refused("the number is too large");
        }
        return new Amount(value, dimension);
    }

    private boolean sign() {
        char first = text.charAt(0);
        if (first == '-' || first == '+') {
            at++;
        }
        return first == '-';
    }

    /** A decimal number, a fraction, or a whole number and a fraction. */
    private Fraction number() {
        BigDecimal first = decimal();
        if (fractionFollows()) {
            return new Fraction(first, denominator());
        }
        int back = at;
        skipSpaces();
        if (!atDigit()) {
            at = back;
            skipSpaces();
            return new Fraction(first, BigDecimal.ONE);
        }
        BigDecimal numerator = decimal();
        if (!fractionFollows() || first.scale() > 0 || numerator.scale() > 0) {
            throw refused("after the number stands a unit or a fraction, as in 59 3/16 in");
        }
        BigDecimal denominator = denominator();
        return new Fraction(first.multiply(denominator).add(numerator), denominator);
    }

    private boolean fractionFollows() {
        return at + 1 < text.length() && text.charAt(at) == '/' && isDigit(text.charAt(at + 1));
    }

    private BigDecimal denominator() {
        at++;
        BigDecimal denominator = decimal();
        skipSpaces();
        if (denominator.signum() == 0 || denominator.scale() > 0) {
            throw refused("a fraction is divided by a whole number above 0");
        }
        return denominator;
    }

    private BigDecimal decimal() {
        int start = at;
        StringBuilder digits = new StringBuilder();
        copyDigits(digits);
        if (at < text.length() && text.charAt(at) == point && at + 1 < text.length() && isDigit(text.charAt(at + 1))) {
            at++;
            digits.append('.');
            copyDigits(digits);
        }
        if (at == start) {
            throw refused("write a number and a unit, such as 1503 mm");
        }
        copyExponent(digits);
        return new BigDecimal(digits.toString());
    }

    private void copyExponent(StringBuilder digits) {
        int next = at + 1;
        if (at >= text.length() || (text.charAt(at) != 'e' && text.charAt(at) != 'E')) {
            return;
        }
        if (next < text.length() && (text.charAt(next) == '-' || text.charAt(next) == '+')) {
            next++;
        }
        int end = next;
        while (end < text.length() && isDigit(text.charAt(end))) {
            end++;
        }
        if (end == next) {
            return;
        }
        if (end - next > LONGEST_EXPONENT) {
            throw refused("a power of ten has at most " + LONGEST_EXPONENT + " digits");
        }
        digits.append(text, at, end);
        at = end;
    }

    private void copyDigits(StringBuilder digits) {
        while (atDigit()) {
            digits.append(text.charAt(at++));
        }
    }

    private void skipSpaces() {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
    }

    private boolean atMark() {
        return at < text.length() && (text.charAt(at) == '\'' || text.charAt(at) == '"');
    }

    private boolean atDigit() {
        return at < text.length() && isDigit(text.charAt(at));
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private IllegalArgumentException refused(String remedy) {
        return new IllegalArgumentException("\"" + text + "\" cannot be read as a quantity: " + remedy);
    }

    /** An exact number: people count in sixteenths and in hundredths, and both must come out exact. */
    private record Fraction(BigDecimal numerator, BigDecimal denominator) {
        boolean isFraction() {
            return denominator.compareTo(BigDecimal.ONE) != 0;
        }

        Fraction plus(BigDecimal whole) {
            return new Fraction(numerator.add(whole.multiply(denominator)), denominator);
        }

        double times(BigDecimal factor) {
            BigDecimal product = numerator.multiply(factor);
            return isFraction()
                    ? product.divide(denominator, MathContext.DECIMAL128).doubleValue()
                    : product.doubleValue();
        }
    }
}
