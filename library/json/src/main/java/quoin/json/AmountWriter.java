package quoin.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.function.DoublePredicate;
import quoin.measure.Amount;
import quoin.measure.AmountText;
import quoin.measure.Dimension;
import quoin.measure.UnitTable;

/** Writes quantities as the shortest text that reads back to the very same value. */
final class AmountWriter {
    private static final int MOST_DIGITS = 24;
    private static final int MOST_ZEROS = 12;

    private AmountWriter() {}

    static String text(Amount amount) {
        return text(amount.value(), amount.dimension(), value -> value == amount.value());
    }

    /**
     * The shortest text near a value that a check of the value read accepts; the longest where it accepts none.
     *
     * @param base the value in base units
     * @param dimension what it is
     * @param check whether a value read, in base units, is the one
     */
    static String text(double base, Dimension dimension, DoublePredicate check) {
        String unit = Fields.unitOf(dimension);
        BigDecimal exact = inUnit(base, unit);
        String text = "";
        for (int digits = 1; digits <= MOST_DIGITS; digits++) {
            text = plain(exact.round(new MathContext(digits))) + " " + unit;
            if (check.test(AmountText.parse(text).value())) {
                return text;
            }
        }
        return text;
    }

    private static BigDecimal inUnit(double base, String unit) {
        UnitTable.Entry entry = UnitTable.find(unit)
                .orElseThrow(() -> new IllegalArgumentException("unit must be one of a document, got " + unit));
        BigDecimal fromZero = new BigDecimal(base).subtract(new BigDecimal(entry.offset()));
        return fromZero.divide(BigDecimal.valueOf(entry.factor()), MathContext.DECIMAL128);
    }

    /** Few zeros are written out; many become a power of ten. */
    private static String plain(BigDecimal number) {
        BigDecimal bare = number.stripTrailingZeros();
        boolean plain = bare.scale() >= -MOST_ZEROS && bare.scale() - bare.precision() <= MOST_ZEROS;
        return plain ? bare.toPlainString() : bare.toString();
    }
}
