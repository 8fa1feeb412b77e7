package quoin.measure;

/**
 * A row of numbers of which most are 0, without most of the zeros: a word whose bits say which blocks of neighbours are
 * kept, and the kept ones one after the other. Up to 64 numbers a block is one number; beyond, 64 blocks hold them all.
 *
 * <p>A number depends on few of the influences of its job, and so costs what those cost.
 */
final class Packed {
    private static final int BITS = 64;

    private Packed() {}

    /** How many neighbours make a block in a row of n. */
    static int width(int n) {
        return StrictMath.max(1, (n + BITS - 1) / BITS);
    }

    /** Where a number is kept, or −1 where its block is left out. */
    static int indexOf(int i, long places, int width) {
        if (width == 1) {
            long bit = 1L << i;
            return (places & bit) == 0 ? -1 : Long.bitCount(places & (bit - 1));
        }
        long bit = 1L << (i / width);
        return (places & bit) == 0 ? -1 : Long.bitCount(places & (bit - 1)) * width + i % width;
    }

    /** Which blocks of a row are not all 0. */
    static long places(double[] row, int width) {
        long places = 0;
        for (int i = 0; i < row.length; i++) {
            places |= row[i] == 0 ? 0 : 1L << (i / width);
        }
        return places;
    }

    /** The kept numbers of a row. */
    static double[] pack(double[] row, long places, int width) {
        double[] r = new double[count(places, width)];
        int k = 0;
        for (long rest = places; rest != 0; rest &= rest - 1) {
            int from = Long.numberOfTrailingZeros(rest) * width;
            for (int i = from; i < StrictMath.min(from + width, row.length); i++) {
                r[k + i - from] = row[i];
            }
            k += width;
        }
        return r;
    }

    /** Adds factor times the kept numbers where they belong in a whole row. */
    static void addTo(double[] row, double factor, long places, double[] kept, int width) {
        int k = 0;
        for (long rest = places; rest != 0; rest &= rest - 1) {
            int from = Long.numberOfTrailingZeros(rest) * width;
            for (int i = from; i < StrictMath.min(from + width, row.length); i++) {
                row[i] += factor * kept[k + i - from];
            }
            k += width;
        }
    }

    /** How many numbers are kept. */
    static int count(long places, int width) {
        return Long.bitCount(places) * width;
    }

    /** Adds factor times what one row keeps to another, which keeps at least as much. */
    static void add(double[] r, long all, double factor, long in, double[] kept, int width) {
        if (width > 1) {
            addBlocks(r, all, factor, in, kept, width);
            return;
        }
        if (in == all) {
            for (int i = 0; i < kept.length; i++) {
                r[i] += factor * kept[i];
            }
            return;
        }
        int i = 0;
        for (long rest = in; rest != 0; rest &= rest - 1) {
            r[Long.bitCount(all & ((rest & -rest) - 1))] += factor * kept[i++];
        }
    }

    private static void addBlocks(double[] r, long all, double factor, long in, double[] kept, int width) {
        int i = 0;
        for (long rest = in; rest != 0; rest &= rest - 1) {
            int k = count(all & ((rest & -rest) - 1), width);
            for (int end = i + width; i < end; i++) {
                r[k++] += factor * kept[i];
            }
        }
    }

    /** The sum of the products, number by number. */
    static double ofProducts(long inA, double[] a, long inB, double[] b, int width) {
        double sum = 0;
        for (long rest = inA & inB; rest != 0; rest &= rest - 1) {
            long below = (rest & -rest) - 1;
            int i = count(inA & below, width);
            int j = count(inB & below, width);
            for (int e = 0; e < width; e++) {
                sum += a[i + e] * b[j + e];
            }
        }
        return sum;
    }
}
