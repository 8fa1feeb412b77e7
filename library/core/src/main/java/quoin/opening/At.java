package quoin.opening;

import quoin.measure.Amount;
import quoin.measure.AmountText;
import quoin.measure.Dimension;

/**
 * A place along a side: a fraction of it, or a distance from where it starts. Immutable and safe for use by many
 * threads.
 *
 * @param fraction the fraction, above 0 and below 1; NaN where the place is a distance
 * @param mm the distance in mm, above 0; NaN where the place is a fraction
 * @param text the place as documents write it, such as {@code 1/4} or {@code 600 mm}
 */
public record At(double fraction, double mm, String text) {
    /** Checks that it is one or the other, and inside the side. */
    public At {
        if (Double.isNaN(fraction) == Double.isNaN(mm)) {
            throw new IllegalArgumentException("place must be a fraction or a distance, got " + text);
        }
        if (!Double.isNaN(fraction) && !(fraction > 0 && fraction < 1)) {
            throw new IllegalArgumentException("fraction must be above 0 and below 1, got " + text);
        }
        if (!Double.isNaN(mm) && !(mm > 0 && mm < 1e6)) {
            throw new IllegalArgumentException("distance must be above 0 mm, got " + text);
        }
    }

    /**
     * Reads a place such as {@code 1/4}, {@code 0.3} or {@code 600 mm}.
     *
     * @param text the place
     * @return the place as a value
     * @throws IllegalArgumentException if it is neither a fraction nor a distance with its unit
     */
    public static At parse(String text) {
        int slash = text.indexOf('/');
        boolean digitsOnly =
                !text.isEmpty() && text.chars().allMatch(c -> (c >= '0' && c <= '9') || c == '/' || c == '.');
        if (!digitsOnly) {
            Amount amount = AmountText.parse(text, Dimension.LENGTH);
            return new At(Double.NaN, amount.value(), text);
        }
        try {
            double fraction = slash < 0
                    ? Double.parseDouble(text)
                    : Double.parseDouble(text.substring(0, slash)) / Double.parseDouble(text.substring(slash + 1));
            return new At(fraction, Double.NaN, text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    "place must be a fraction such as 1/4 or a distance such as 600 mm, got " + text, e);
        }
    }

    /**
     * The fraction on a side of a given length.
     *
     * @param sideMm the length of the side in mm
     * @return the fraction; above 1 where the distance is longer than the side
     */
    double on(double sideMm) {
        return Double.isNaN(fraction) ? mm / sideMm : fraction;
    }

    /** Places with one meaning are one place, however they are written. */
    @Override
    public boolean equals(Object other) {
        return other instanceof At that
                && Double.compare(fraction, that.fraction) == 0
                && Double.compare(mm, that.mm) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(fraction) + Double.hashCode(mm);
    }

    @Override
    public String toString() {
        return text;
    }
}
