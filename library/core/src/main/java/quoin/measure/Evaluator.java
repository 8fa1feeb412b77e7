package quoin.measure;

import java.util.Arrays;

/**
 * Numbers with their doubt in rows that are written again and again: for batches, without any allocation.
 *
 * <p>Each operation writes one row and gives the value and contributions that the operation of {@link Uncertain} gives.
 * A row knows which influences it depends on, so that its cost is that of those only. Rows are counted from 0; a row
 * may be among its own inputs. Mutable, not safe for use by many threads.
 */
public final class Evaluator {
    private final Influences influences;
    private final int length;
    /** How many words of {@link #places} a row has. */
    private final int words;

    private final double[] values;
    private final double[] contributions;
    /** The bits of the contributions of a row that may be other than 0. */
    private final long[] places;
    /** Known from when a row was written. */
    private final double[] variances;

    private final boolean[] blind;

    /**
     * Rows without doubt and of value 0.
     *
     * @param influences every influence that any row may depend on
     * @param rows how many rows, 1 or more
     */
    public Evaluator(Influences influences, int rows) {
        Require.atLeast("number of rows", rows, 1);
        this.influences = influences;
        this.length = influences.size();
        this.words = (length + Long.SIZE - 1) / Long.SIZE;
        this.values = new double[rows];
        this.contributions = new double[rows * length];
        this.places = new long[rows * words];
        this.variances = new double[rows];
        this.blind = new boolean[rows];
    }

    /**
     * Writes a number.
     *
     * @param row where to
     * @param number a number that depends on influences of this evaluator only
     * @throws IllegalArgumentException if it depends on another influence
     */
    public void set(int row, Uncertain number) {
        double[] spread = number.onto(influences).contributions();
        values[row] = number.value();
        blind[row] = number.isFirstOrderBlind();
        System.arraycopy(spread, 0, contributions, row * length, length);
        Arrays.fill(places, row * words, row * words + words, 0);
        variances[row] = 0;
        for (int i = 0; i < length; i++) {
            double c = spread[i];
            places[row * words + i / Long.SIZE] |= c == 0 ? 0 : 1L << i;
            variances[row] += c * c;
        }
    }

    /**
     * Writes a reading: its own influence and a shared one.
     *
     * @param row where to
     * @param value the number, finite
     * @param own the position of the influence of its own
     * @param ownSensitivity the sensitivity to it, finite
     * @param shared the position of the shared influence
     * @param sharedSensitivity the sensitivity to it, finite
     */
    public void reading(int row, double value, int own, double ownSensitivity, int shared, double sharedSensitivity) {
        double one = ownSensitivity * influences.uncertainty(own);
        double two = sharedSensitivity * influences.uncertainty(shared);
        if (!(Math.abs(value) + Math.abs(one) + Math.abs(two) <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("reading must be finite, got " + Require.show(value) + " with "
                    + Require.show(one) + " and " + Require.show(two));
        }
        values[row] = value + 0.0;
        blind[row] = false;
        for (int w = 0; w < words; w++) {
            keep(row, w, bit(own, w) | bit(shared, w));
        }
        int to = row * length;
        contributions[to + own] = one;
        contributions[to + shared] = own == shared ? one + two : two;
        variances[row] = own == shared ? (one + two) * (one + two) : one * one + two * two;
    }

    /**
     * Writes a + b.
     *
     * @param row where to
     * @param a one row
     * @param b the other row
     */
    public void plus(int row, int a, int b) {
        linear(row, "plus", values[a] + values[b], 1, a, 1, b, blind[a] || blind[b]);
    }

    /**
     * Writes a − b.
     *
     * @param row where to
     * @param a one row
     * @param b the row to take off
     */
    public void minus(int row, int a, int b) {
        linear(row, "minus", values[a] - values[b], 1, a, -1, b, blind[a] || blind[b]);
    }

    /**
     * Writes factor · a + shift.
     *
     * @param row where to
     * @param factor the factor
     * @param a the row
     * @param shift what to add
     */
    public void linear(int row, double factor, int a, double shift) {
        scaled(row, finite("linear", factor), a);
        write(row, "linear", factor * values[a] + shift, blind[a]);
    }

    /**
     * Writes a · b.
     *
     * @param row where to
     * @param a one row
     * @param b the other row
     */
    public void times(int row, int a, int b) {
        double x = values[a];
        double y = values[b];
        boolean unseen = (x == 0 || y == 0) && !isExact(a) && !isExact(b);
        linear(row, "times", x * y, y, a, x, b, blind[a] || blind[b] || unseen);
    }

    /**
     * Writes a / b.
     *
     * @param row where to
     * @param a one row
     * @param b the divisor
     * @throws ArithmeticException if the divisor is 0
     */
    public void dividedBy(int row, int a, int b) {
        double x = values[a];
        double y = values[b];
        double quotient = x / y;
        boolean unseen = x == 0 && !isExact(a) && !isExact(b);
        linear(row, "dividedBy", quotient, 1 / y, a, -quotient / y, b, blind[a] || blind[b] || unseen);
    }

    /**
     * Writes the one of two rows whose value is smaller, the first where they are equal: its doubt is that of first order,
     * too large where both are close; see {@link Extreme}.
     *
     * @param row where to
     * @param a one row
     * @param b the other row
     */
    public void least(int row, int a, int b) {
        int from = values[a] <= values[b] ? a : b;
        if (from != row) {
            scaled(row, 1, from);
            write(row, "least", values[from], blind[from]);
        }
    }

    /**
     * Writes the angle between two sides of a triangle; see {@link Uncertain#cosineRule}.
     *
     * @param row where to
     * @param adjacent1 one side at the angle
     * @param adjacent2 the other side at the angle
     * @param opposite the side opposite
     * @throws ArithmeticException if the three lengths make no open triangle
     */
    public void cosineRule(int row, int adjacent1, int adjacent2, int opposite) {
        double a = values[adjacent1];
        double b = values[adjacent2];
        double c = values[opposite];
        double cos = Uncertain.cosine(a, b, c);
        double over = 1 / (a * b * StrictMath.sqrt((1 - cos) * (1 + cos)));
        double pa = (b * cos - a) * over;
        double pb = (a * cos - b) * over;
        double pc = c * over;
        boolean unseen = (pa == 0 && !isExact(adjacent1)) || (pb == 0 && !isExact(adjacent2));
        boolean marked = blind[adjacent1] || blind[adjacent2] || blind[opposite] || unseen;
        combine(row, pa, adjacent1, pb, adjacent2, pc, opposite);
        write(row, "cosine rule", StrictMath.acos(cos), marked);
    }

    /**
     * The value of a row.
     *
     * @param row the row
     * @return its value
     */
    public double value(int row) {
        return values[row];
    }

    /**
     * The combined standard uncertainty of a row.
     *
     * @param row the row
     * @return u, 0 or more
     */
    public double standardUncertainty(int row) {
        return StrictMath.sqrt(finite("variance", variances[row]));
    }

    /**
     * The covariance of two rows.
     *
     * @param a the one
     * @param b the other
     * @return the sum of the products of their contributions
     * @throws ArithmeticException if it is not finite
     */
    public double covariance(int a, int b) {
        double sum = 0;
        for (int w = 0; w < words; w++) {
            for (long rest = places[a * words + w] & places[b * words + w]; rest != 0; rest &= rest - 1) {
                int i = w * Long.SIZE + Long.numberOfTrailingZeros(rest);
                sum += contributions[a * length + i] * contributions[b * length + i];
            }
        }
        if (!(Math.abs(sum) <= Double.MAX_VALUE)) {
            throw new ArithmeticException(
                    "covariance of " + Require.show(values[a]) + " and " + Require.show(values[b]) + " is not finite");
        }
        return sum;
    }

    /**
     * Whether first order misses a doubt on the way to a row; see {@link Uncertain#isFirstOrderBlind()}.
     *
     * @param row the row
     * @return true if a doubt is missed
     */
    public boolean isFirstOrderBlind(int row) {
        return blind[row];
    }

    /**
     * The number in a row.
     *
     * @param row the row
     * @return the number; it does not change when the row is written again
     */
    public Uncertain number(int row) {
        double[] own = Arrays.copyOfRange(contributions, row * length, row * length + influences.size());
        return Uncertain.ofContributions(values[row], influences, own).orBlind(blind[row]);
    }

    private boolean isExact(int row) {
        for (int i = row * length; i < row * length + length; i++) {
            if (contributions[i] != 0) {
                return false;
            }
        }
        return true;
    }

    private void scaled(int row, double factor, int a) {
        int to = row * length;
        int from = a * length;
        double variance = 0;
        for (int w = 0; w < words; w++) {
            long now = places[a * words + w];
            keep(row, w, now);
            for (long rest = now; rest != 0; rest &= rest - 1) {
                int i = w * Long.SIZE + Long.numberOfTrailingZeros(rest);
                double r = factor * contributions[from + i];
                contributions[to + i] = r;
                variance += r * r;
            }
        }
        variances[row] = variance;
    }

    private void linear(int row, String name, double value, double pa, int a, double pb, int b, boolean marked) {
        finite(name, pa + pb);
        int to = row * length;
        int fromA = a * length;
        int fromB = b * length;
        double variance = 0;
        for (int w = 0; w < words; w++) {
            long now = places[a * words + w] | places[b * words + w];
            keep(row, w, now);
            for (long rest = now; rest != 0; rest &= rest - 1) {
                int i = w * Long.SIZE + Long.numberOfTrailingZeros(rest);
                double r = pa * contributions[fromA + i] + pb * contributions[fromB + i];
                contributions[to + i] = r;
                variance += r * r;
            }
        }
        variances[row] = variance;
        write(row, name, value, marked);
    }

    private void combine(int row, double pa, int a, double pb, int b, double pc, int c) {
        finite("cosine rule", pa + pb + pc);
        int to = row * length;
        int fromA = a * length;
        int fromB = b * length;
        int fromC = c * length;
        double variance = 0;
        for (int w = 0; w < words; w++) {
            long now = places[a * words + w] | places[b * words + w] | places[c * words + w];
            keep(row, w, now);
            for (long rest = now; rest != 0; rest &= rest - 1) {
                int i = w * Long.SIZE + Long.numberOfTrailingZeros(rest);
                double r =
                        pa * contributions[fromA + i] + pb * contributions[fromB + i] + pc * contributions[fromC + i];
                contributions[to + i] = r;
                variance += r * r;
            }
        }
        variances[row] = variance;
    }

    /** The bit of an influence in one of the words. */
    private static long bit(int influence, int word) {
        return influence / Long.SIZE == word ? 1L << influence : 0;
    }

    /** Makes zeros of what a row held beyond these influences, in one word of them. */
    private void keep(int row, int word, long now) {
        long stale = places[row * words + word] & ~now;
        places[row * words + word] = now;
        for (; stale != 0; stale &= stale - 1) {
            contributions[row * length + word * Long.SIZE + Long.numberOfTrailingZeros(stale)] = 0;
        }
    }

    private void write(int row, String name, double value, boolean marked) {
        values[row] = finite(name, value) + 0.0;
        blind[row] = marked;
    }

    private static double finite(String name, double value) {
        if (!(Math.abs(value) <= Double.MAX_VALUE)) {
            throw new ArithmeticException(name + " must be finite, got " + Require.show(value));
        }
        return value;
    }
}
