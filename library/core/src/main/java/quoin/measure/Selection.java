package quoin.measure;

/** The k-th smallest of some numbers, without sorting them all. */
final class Selection {
    private Selection() {}

    /** The value at position k of the sorted front of the array; the array is reordered. */
    static double select(double[] a, int size, int k) {
        int low = 0;
        int high = size - 1;
        while (high > low) {
            double pivot = median(a[low], a[(low + high) >>> 1], a[high]);
            int i = low;
            int j = high;
            while (i <= j) {
                while (a[i] < pivot) {
                    i++;
                }
                while (a[j] > pivot) {
                    j--;
                }
                if (i <= j) {
                    double t = a[i];
                    a[i++] = a[j];
                    a[j--] = t;
                }
            }
            if (k <= j) {
                high = j;
            } else if (k >= i) {
                low = i;
            } else {
                return a[k];
            }
        }
        return a[k];
    }

    private static double median(double a, double b, double c) {
        return StrictMath.max(StrictMath.min(a, b), StrictMath.min(StrictMath.max(a, b), c));
    }
}
