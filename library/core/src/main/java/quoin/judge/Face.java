package quoin.judge;

/** One condition in units of its own standard uncertainty: c&middot;z &ge; &minus;h, |c| = 1. Immutable, if nobody writes to c. */
final class Face {
    /** So many conditional standard deviations inside, another condition may be left to a nearly parallel one. */
    private static final double WELL_INSIDE = 2;

    final double h;
    final double[] c;

    Face(double h, double[] c) {
        this.h = h;
        this.c = c;
    }

    static Face of(JointNormal.Row row, double norm) {
        double[] c = row.contributions.clone();
        for (int k = 0; k < c.length; k++) {
            c[k] /= norm;
        }
        return new Face(row.slack / norm, c);
    }

    /** P(this one fails). */
    double fails() {
        return Gauss.below(-h);
    }

    /**
     * P(this one fails although another holds that is no less likely to fail), or 1 where that is clearly not rare.
     *
     * <p>With correlation cos &alpha;: 1/(2&pi;) &int; exp(&minus;(h&sup2; &minus; 2 h h&prime; cos &theta; + h&prime;&sup2;) / (2 sin&sup2; &theta;)) d&theta; from 0 to &alpha;
     * (Plackett 1954, from memory).
     */
    double failsAlone(Face other) {
        double cos = Math.min(1, dot(c, other.c));
        double sin = Math.sqrt(1 - cos * cos);
        boolean rarely = other.h <= h && cos > 0 && cos * h - other.h >= WELL_INSIDE * sin;
        return rarely ? Gauss.wedge(h, other.h, StrictMath.atan2(sin, cos)) : 1;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
