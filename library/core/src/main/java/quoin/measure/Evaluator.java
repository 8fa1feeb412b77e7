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
    private static final int BITS = 64;

    private final Influences influences;
    private final int n;
    private final int words;
    private final double[] values;
    private final double[] contributions;
    private final long[] touched;
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
        this.n = influences.size();
        this.words = (n + BITS - 1) / BITS;
        this.values = new double[rows];
        this.contributions = new double[rows * n];
        this.touched = new long[rows * words];
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
        for (int w = 0; w < words; w++) {
            touched[row * words + w] = 0;
        }
        for (int i = 0; i < n; i++) {
            contributions[row * n + i] = spread[i];
            if (spread[i] != 0) {
                touched[row * words + i / BITS] |= 1L << i;
            }
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
        int mask = row * words;
        for (int w = 0; w < words; w++) {
            long now = (own / BITS == w ? 1L << own : 0) | (shared / BITS == w ? 1L << shared : 0);
            clear(row, w, touched[mask + w] & ~now);
            touched[mask + w] = now;
        }
        contributions[row * n + own] = one;
        contributions[row * n + shared] = own == shared ? one + two : two;
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
        double sum = 0;
        for (int w = 0; w < words; w++) {
            long rest = touched[row * words + w];
            while (rest != 0) {
                double c = contributions[row * n + w * BITS + Long.numberOfTrailingZeros(rest)];
                sum += c * c;
                rest &= rest - 1;
            }
        }
        return StrictMath.sqrt(finite("variance", sum));
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
            long both = touched[a * words + w] & touched[b * words + w];
            while (both != 0) {
                int i = w * BITS + Long.numberOfTrailingZeros(both);
                sum += contributions[a * n + i] * contributions[b * n + i];
                both &= both - 1;
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
        double[] own = Arrays.copyOfRange(contributions, row * n, row * n + n);
        return Uncertain.ofContributions(values[row], influences, own).orBlind(blind[row]);
    }

    private boolean isExact(int row) {
        for (int i = row * n; i < row * n + n; i++) {
            if (contributions[i] != 0) {
                return false;
            }
        }
        return true;
    }

    private void scaled(int row, double factor, int a) {
        for (int w = 0; w < words; w++) {
            long now = touched[a * words + w];
            clear(row, w, touched[row * words + w] & ~now);
            touched[row * words + w] = now;
            while (now != 0) {
                int i = w * BITS + Long.numberOfTrailingZeros(now);
                contributions[row * n + i] = factor * contributions[a * n + i];
                now &= now - 1;
            }
        }
    }

    private void linear(int row, String name, double value, double pa, int a, double pb, int b, boolean marked) {
        for (int w = 0; w < words; w++) {
            long now = touched[a * words + w] | touched[b * words + w];
            clear(row, w, touched[row * words + w] & ~now);
            touched[row * words + w] = now;
            while (now != 0) {
                int i = w * BITS + Long.numberOfTrailingZeros(now);
                contributions[row * n + i] = pa * contributions[a * n + i] + pb * contributions[b * n + i];
                now &= now - 1;
            }
        }
        finite(name, pa + pb);
        write(row, name, value, marked);
    }

    private void combine(int row, double pa, int a, double pb, int b, double pc, int c) {
        for (int w = 0; w < words; w++) {
            long now = touched[a * words + w] | touched[b * words + w] | touched[c * words + w];
            clear(row, w, touched[row * words + w] & ~now);
            touched[row * words + w] = now;
            while (now != 0) {
                int i = w * BITS + Long.numberOfTrailingZeros(now);
                contributions[row * n + i] =
                        pa * contributions[a * n + i] + pb * contributions[b * n + i] + pc * contributions[c * n + i];
                now &= now - 1;
            }
        }
        finite("cosine rule", pa + pb + pc);
    }

    /** What a row held of influences that it no longer depends on. */
    private void clear(int row, int word, long stale) {
        long rest = stale;
        while (rest != 0) {
            contributions[row * n + word * BITS + Long.numberOfTrailingZeros(rest)] = 0;
            rest &= rest - 1;
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
