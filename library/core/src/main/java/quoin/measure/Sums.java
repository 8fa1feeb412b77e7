package quoin.measure;

/** Sums of many numbers: four side by side, always in the same order. */
final class Sums {
    private Sums() {}

    static double of(double[] a) {
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        double s3 = 0;
        int i = 0;
        for (; i + 3 < a.length; i += 4) {
            s0 += a[i];
            s1 += a[i + 1];
            s2 += a[i + 2];
            s3 += a[i + 3];
        }
        for (; i < a.length; i++) {
            s0 += a[i];
        }
        return s0 + s1 + (s2 + s3);
    }

    static double ofProducts(double[] a, double[] b) {
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        double s3 = 0;
        int i = 0;
        for (; i + 3 < a.length; i += 4) {
            s0 += a[i] * b[i];
            s1 += a[i + 1] * b[i + 1];
            s2 += a[i + 2] * b[i + 2];
            s3 += a[i + 3] * b[i + 3];
        }
        for (; i < a.length; i++) {
            s0 += a[i] * b[i];
        }
        return s0 + s1 + (s2 + s3);
    }

    static double ofSquares(double[] a, double mean) {
        return ofProducts(a, mean, a, mean);
    }

    /** The sum of the products of the departures from two means. */
    static double ofProducts(double[] a, double meanA, double[] b, double meanB) {
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        double s3 = 0;
        int i = 0;
        for (; i + 3 < a.length; i += 4) {
            s0 += (a[i] - meanA) * (b[i] - meanB);
            s1 += (a[i + 1] - meanA) * (b[i + 1] - meanB);
            s2 += (a[i + 2] - meanA) * (b[i + 2] - meanB);
            s3 += (a[i + 3] - meanA) * (b[i + 3] - meanB);
        }
        for (; i < a.length; i++) {
            s0 += (a[i] - meanA) * (b[i] - meanB);
        }
        return s0 + s1 + (s2 + s3);
    }
}
