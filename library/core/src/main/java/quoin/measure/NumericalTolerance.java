package quoin.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** How much of a standard uncertainty its significant digits leave open. Stateless. */
public final class NumericalTolerance {
    private NumericalTolerance() {}

    /**
     * Half a unit in the last significant digit of a standard uncertainty.
     *
     * @formula ½ · 10^l, where u rounded to its digits is c · 10^l with c a whole number of so many digits
     * @unit that of u
     * @edge 0 for u = 0; a u that rounds up to the next power of ten is taken as rounded: 0.0995 with 2 digits is 0.10 and
     *     gives 0.005
     * @source standard: JCGM 101:2008, 7.9.2
     * @param u the standard uncertainty, 0 or more
     * @param digits how many significant digits count, 1 to 9
     * @return the tolerance
     */
    public static double of(double u, int digits) {
        Require.atLeastZero("standard uncertainty", u, "");
        Require.between("significant digits", digits, 1, 9, "");
        if (u == 0) {
            return 0;
        }
        BigDecimal rounded = BigDecimal.valueOf(u).round(new MathContext(digits, RoundingMode.HALF_UP));
        int exponent = rounded.precision() - rounded.scale() - digits;
        return BigDecimal.valueOf(5, 1).scaleByPowerOfTen(exponent).doubleValue();
    }
}
