package quoin.opening;

import java.util.List;
import java.util.Objects;
import quoin.measure.Uncertain;

/**
 * Whether the readings of one plane other than the front can be right together: the back of the recess, or the depths
 * and falls. Immutable and safe for use by many threads.
 *
 * @param plane {@code back} or {@code depth}
 * @param redundancy how many independent checks the readings hold
 * @param statistic the weighted sum of squared residuals, priors included
 * @param readings each value that was read
 */
public record PlaneTest(String plane, int redundancy, double statistic, List<AdjustedReading> readings) {
    /** Copies the list. */
    public PlaneTest {
        Objects.requireNonNull(plane, "plane");
        readings = List.copyOf(readings);
    }

    /** {@return whether the readings can be right together; true where nothing checks them} */
    public boolean isAccepted() {
        return redundancy == 0 || statistic <= GlobalTest.critical(redundancy);
    }

    /** One value that was read there. */
    record Observed(Reading reading, int entry, Uncertain value) {}

    /**
     * The test of values that are weighted sums of unknowns.
     *
     * @param design how each value follows the unknowns; no columns where there are none
     * @param rest what the values are beyond what is expected of them without any unknown
     * @param covariance of that, doubts of the readings and of the sides together
     */
    static PlaneTest of(
            String plane, List<Observed> observed, double[][] design, double[] rest, double[][] covariance) {
        int n = observed.size();
        int m = design[0].length;
        double[][] p = new Cholesky(covariance, 0).inverse();
        double[][] between = m == 0 ? p : between(p, design, m);
        double statistic = 0;
        double[] weighted = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                weighted[i] += between[i][j] * rest[j];
            }
            statistic += weighted[i] * rest[i];
        }
        AdjustedReading[] readings = new AdjustedReading[n];
        for (int i = 0; i < n; i++) {
            double residual = 0;
            for (int j = 0; j < n; j++) {
                residual -= observed.get(i).value().covariance(observed.get(j).value()) * weighted[j];
            }
            readings[i] = reading(observed.get(i), residual, between[i][i], weighted[i]);
        }
        return new PlaneTest(plane, n - m, Math.max(0, statistic), List.of(readings));
    }

    private static AdjustedReading reading(Observed observed, double residual, double q, double weighted) {
        double variance = observed.value().variance();
        boolean checked = q * variance > 1e-6;
        double root = Math.sqrt(q);
        return new AdjustedReading(
                observed.reading().of().text(),
                observed.reading().name(),
                observed.entry(),
                observed.value().value(),
                checked ? residual + 0.0 : 0.0,
                checked ? weighted / root : Double.NaN,
                checked ? weighted / q : Double.NaN,
                checked ? 1 / root : Double.POSITIVE_INFINITY,
                checked ? GlobalTest.DELTA / root : Double.POSITIVE_INFINITY,
                AdjustedReading.Effect.NONE);
    }

    /** P - PA(A'PA)^-1 A'P: what the values say against each other, free of the unknowns. */
    private static double[][] between(double[][] p, double[][] design, int m) {
        int n = p.length;
        double[][] pa = new double[n][m];
        double[][] normal = new double[m][m];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                for (int k = 0; k < m; k++) {
                    pa[i][k] += p[i][j] * design[j][k];
                }
            }
        }
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < m; k++) {
                for (int l = 0; l < m; l++) {
                    normal[k][l] += design[i][k] * pa[i][l];
                }
            }
        }
        Cholesky solver = new Cholesky(normal, 0);
        double[][] between = new double[n][n];
        for (int j = 0; j < n; j++) {
            double[] column = pa[j].clone();
            solver.solveInPlace(column);
            for (int i = 0; i < n; i++) {
                between[i][j] = p[i][j];
                for (int k = 0; k < m; k++) {
                    between[i][j] -= pa[i][k] * column[k];
                }
            }
        }
        return between;
    }
}
