package quoin.rulebook;

import java.util.stream.Stream;
import quoin.measure.Amount;

/** Between what two values a size must lie; infinities where nothing is known. */
record Range(double least, double most) {
    static final Range ANY = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    static Range hull(Stream<Amount> amounts) {
        double[] values = amounts.mapToDouble(Amount::value).sorted().toArray();
        return values.length == 0 ? ANY : new Range(values[0], values[values.length - 1]);
    }

    Range plus(Range other) {
        return new Range(least + other.least, most + other.most);
    }

    Range times(double factor) {
        double a = least * factor;
        double b = most * factor;
        return a <= b ? new Range(a, b) : b < a ? new Range(b, a) : ANY;
    }

    Range widened(double by) {
        return new Range(least - by, most + by);
    }

    /** What lies in both; this range itself where nothing does. */
    Range limitedTo(Range other) {
        double low = StrictMath.max(least, other.least);
        double high = StrictMath.min(most, other.most);
        return low <= high ? new Range(low, high) : this;
    }

    boolean isInside(Range other) {
        return least >= other.least && most <= other.most;
    }

    boolean isApartFrom(Range other) {
        return most < other.least || least > other.most;
    }
}
