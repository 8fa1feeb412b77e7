package quoin.rulebook;

import java.math.BigDecimal;
import java.util.OptionalLong;
import quoin.measure.Amount;
import quoin.measure.Dimension;

/**
 * Amounts as whole numbers: ten-millionths of the unit of answers, so that cuts are compared and periods are counted
 * without an error. Every decimal of six places is one, and every half of it, and so are 1/16, 1/32 and 1/64 of an inch.
 */
final class Exact {
    static final long ONE = 10_000_000;

    /** A thousand million units; nothing in a building is as large. */
    private static final long MOST = 10_000_000L * 1_000_000_000L;

    /** So many times {@link #MOST} is still a long. */
    private static final int FEW = 900;

    /** What a double may be off by and still stand for the decimal it was read from. */
    private static final double DUST = 1e-3;

    private Exact() {}

    /** The whole number of an amount; empty where it is none, or too large. */
    static OptionalLong of(Amount amount) {
        double scaled = amount.toAnswer() * ONE;
        double whole = StrictMath.rint(scaled);
        boolean fits = StrictMath.abs(whole) <= MOST && StrictMath.abs(scaled - whole) <= DUST;
        return fits ? OptionalLong.of((long) whole) : OptionalLong.empty();
    }

    /** The whole number of so many times an amount; empty where it is none, or too large. */
    static OptionalLong of(Amount amount, double times) {
        OptionalLong once = of(amount);
        if (once.isEmpty() || times == 1) {
            return once;
        }
        if (times == StrictMath.rint(times) && StrictMath.abs(times) <= FEW) {
            long product = once.getAsLong() * (long) times;
            return StrictMath.abs(product) <= MOST ? OptionalLong.of(product) : OptionalLong.empty();
        }
        BigDecimal product = BigDecimal.valueOf(once.getAsLong())
                .multiply(BigDecimal.valueOf(times))
                .stripTrailingZeros();
        boolean fits = product.scale() <= 0 && product.abs().compareTo(BigDecimal.valueOf(MOST)) <= 0;
        return fits ? OptionalLong.of(product.longValueExact()) : OptionalLong.empty();
    }

    /** The number in the unit of answers; the double that its decimal text is read as. */
    static double toAnswer(long exact) {
        return (double) exact / ONE;
    }

    /** Whether amounts of a kind can be added: temperatures on a scale cannot. */
    static boolean isAdditive(Dimension dimension) {
        return dimension != Dimension.TEMPERATURE;
    }
}
