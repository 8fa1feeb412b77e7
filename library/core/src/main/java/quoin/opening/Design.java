package quoin.opening;

/**
 * How the observations of one plane follow the unknowns: observed less computed, and the rows of derivatives, one after
 * the other.
 *
 * <p>Most readings join two points that are means of corners: the vector between them is a weighted sum of the corners,
 * the weights are found once, and only its length and direction are found anew. Not safe for use by many threads.
 */
final class Design {
    private final Model model;
    private final Observations observations;
    private final int n;
    private final int m;
    private final double[][] means;
    private final boolean allJoinMeans;
    private final double[] rows;
    private final double[] rest;
    private double[] row = {};

    Design(Model model, Observations observations) {
        this.model = model;
        this.observations = observations;
        this.n = observations.size();
        this.m = model.size();
        this.means = new double[n][];
        this.rows = new double[n * m];
        this.rest = new double[n];
        boolean all = true;
        for (int i = 0; i < n; i++) {
            means[i] = model.means(observations.span(i));
            all &= means[i].length > 0;
        }
        this.allJoinMeans = all;
    }

    /** Finds both where the unknowns are there. */
    void at(double[] x) {
        double bx = x[0];
        double cx = x[1];
        double cy = x[2];
        double dx = x[3];
        double dy = x[4];
        for (int i = 0; i < n; i++) {
            double[] mean = means[i];
            if (mean.length == 0) {
                observe(i, x);
                continue;
            }
            double b = mean[0];
            double c = mean[1];
            double d = mean[2];
            double ex = b * bx + c * cx + d * dx;
            double ey = c * cy + d * dy;
            double length = Math.sqrt(ex * ex + ey * ey);
            double inverse = 1 / length;
            double ux = ex * inverse;
            double uy = ey * inverse;
            int at = i * m;
            rows[at] = b * ux;
            rows[at + 1] = c * ux;
            rows[at + 2] = c * uy;
            rows[at + 3] = d * ux;
            rows[at + 4] = d * uy;
            rest[i] = observations.read(i) - length;
        }
    }

    private void observe(int i, double[] x) {
        if (row.length == 0) {
            row = new double[m];
        }
        rest[i] = observations.read(i) - model.observe(observations.span(i), x, row);
        System.arraycopy(row, 0, rows, i * m, m);
    }

    /** Takes a move of the unknowns that is too small to bend anything. */
    void follow(double[] move) {
        for (int i = 0; i < n; i++) {
            double follows = 0;
            for (int k = 0; k < m; k++) {
                follows += rows[i * m + k] * move[k];
            }
            rest[i] -= follows;
        }
    }

    /** Whether every observation joins two points that are means of corners, whatever the unknowns are. */
    boolean allJoinMeans() {
        return allJoinMeans;
    }

    /** Observed less computed. */
    double[] rest() {
        return rest;
    }

    /** The derivatives by the unknowns. */
    double[] rows() {
        return rows;
    }

    /** The same, one array for each observation. */
    double[][] matrix() {
        double[][] matrix = new double[n][];
        for (int i = 0; i < n; i++) {
            matrix[i] = java.util.Arrays.copyOfRange(rows, i * m, (i + 1) * m);
        }
        return matrix;
    }
}
