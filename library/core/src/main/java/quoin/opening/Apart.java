package quoin.opening;

/**
 * What tells the pushes of two to four gaps apart: that of the first less that of each other, along two or three axes (a third
 * that is not there is 0). Immutable and safe for use by many threads.
 *
 * <p>Two differences are taken with the cross product of both as a third: the least move that widens by given amounts has
 * nothing along it. With rows a, b, c the move is (e₁ b×c + e₂ c×a + e₃ a×b) / (a · b×c) (Cramer's rule).
 */
final class Apart {
    private final int count;
    private final double ax;
    private final double ay;
    private final double az;
    private final double bx;
    private final double by;
    private final double bz;
    /** The cross product of the first two. */
    private final double abx;

    private final double aby;
    private final double abz;
    /** The third, or the cross product where there are two. */
    private final double cx;

    private final double cy;
    private final double cz;
    /** The determinant of the three; of one the square of its length. */
    private final double det;

    /** Of gaps with those pushes, of which so many axes count. */
    Apart(double[][] push, int[] of, int axes) {
        double[] p = push[of[0]];
        double[] q = push[of[1]];
        boolean turns = axes > 2;
        count = of.length - 1;
        ax = p[0] - q[0];
        ay = p[1] - q[1];
        az = turns ? p[2] - q[2] : 0;
        if (count == 1) {
            bx = by = bz = abx = aby = abz = cx = cy = cz = 0;
            det = ax * ax + ay * ay + az * az;
            return;
        }
        double[] r = push[of[2]];
        bx = p[0] - r[0];
        by = p[1] - r[1];
        bz = turns ? p[2] - r[2] : 0;
        abx = ay * bz - az * by;
        aby = az * bx - ax * bz;
        abz = ax * by - ay * bx;
        if (count == 2) {
            cx = abx;
            cy = aby;
            cz = abz;
        } else {
            double[] s = push[of[3]];
            cx = p[0] - s[0];
            cy = p[1] - s[1];
            cz = turns ? p[2] - s[2] : 0;
        }
        det = abx * cx + aby * cy + abz * cz;
    }

    /** The length, area or volume that they span. */
    double volume() {
        return count == 3 ? Math.abs(det) : Math.sqrt(det);
    }

    /** Adds the least move that widens the first gap by so much more than each of the others; none where they span nothing. */
    void addMove(double more1, double more2, double more3, double[] move) {
        if (det == 0) {
            return;
        }
        double e = more1 / det;
        double f = more2 / det;
        double g = more3 / det;
        if (count == 1) {
            move[0] += ax * e;
            move[1] += ay * e;
            move[2] += az * e;
            return;
        }
        move[0] += e * (by * cz - bz * cy) + f * (cy * az - cz * ay) + g * abx;
        move[1] += e * (bz * cx - bx * cz) + f * (cz * ax - cx * az) + g * aby;
        move[2] += e * (bx * cy - by * cx) + f * (cx * ay - cy * ax) + g * abz;
    }
}
