package quoin.measure;

import java.util.ArrayList;
import java.util.List;

/**
 * Inputs that are correlated: by a covariance matrix, or by rows of readings taken together.
 *
 * <p>The inputs are given over independent influences of one group, with F Fᵀ the covariance, so that every operation
 * keeps the correlation. The influences of a group have no meaning one by one; the group has. Stateless.
 */
public final class CorrelatedInputs {
    private static final double ASYMMETRY = 1e-12;

    private CorrelatedInputs() {}

    /**
     * Inputs with a covariance matrix, jointly normal.
     *
     * @param group what the inputs together are called
     * @param values their values
     * @param covariance their covariance, symmetric and positive semidefinite
     * @return the inputs in order, with infinite degrees of freedom
     * @throws IllegalArgumentException if the matrix is not square, not symmetric, not finite or not positive
     *     semidefinite
     */
    public static List<Uncertain> ofCovariance(String group, double[] values, double[][] covariance) {
        return build(group, values, covariance, Double.POSITIVE_INFINITY);
    }

    /**
     * Inputs with their standard uncertainties and correlations, jointly normal.
     *
     * @param group what the inputs together are called
     * @param values their values
     * @param uncertainties their standard uncertainties, 0 or more
     * @param correlations their correlation matrix, with ones on its diagonal
     * @return the inputs in order, with infinite degrees of freedom
     * @throws IllegalArgumentException if sizes differ, or the matrix is not symmetric, not finite or not positive
     *     semidefinite: rounded tables of correlations sometimes are not
     */
    public static List<Uncertain> ofCorrelations(
            String group, double[] values, double[] uncertainties, double[][] correlations) {
        requireSize("uncertainties", uncertainties.length, values.length);
        requireSize("rows of correlations", correlations.length, values.length);
        double[][] covariance = new double[values.length][values.length];
        for (int i = 0; i < values.length; i++) {
            Require.atLeastZero("standard uncertainty", uncertainties[i], "");
            requireSize("correlations in a row", correlations[i].length, values.length);
            if (correlations[i][i] != 1) {
                throw Require.refused("correlation of an input with itself", "1", correlations[i][i], "");
            }
            for (int j = 0; j < values.length; j++) {
                double r = Require.finite("correlation", correlations[i][j], "");
                covariance[i][j] = r * uncertainties[i] * uncertainties[j];
            }
        }
        return build(group, values, covariance, Double.POSITIVE_INFINITY);
    }

    /**
     * The means of inputs that were read together, row by row: covariance s(x, y) / n, nu = n − 1 for all of them (GUM
     * 5.2.3 and H.2).
     *
     * @param group what the inputs together are called
     * @param rows rows of one reading of each input, 2 or more, all of the same length
     * @return the means in order, jointly a scaled t
     * @throws IllegalArgumentException if rows differ in length, are fewer than 2, or hold what is not finite
     */
    public static List<Uncertain> ofRows(String group, double[][] rows) {
        Require.atLeast("number of rows", rows.length, 2);
        int width = Require.atLeast("length of a row", rows[0].length, 1);
        double[] means = new double[width];
        double[][] covariance = new double[width][width];
        for (int n = 0; n < rows.length; n++) {
            requireSize("readings in a row", rows[n].length, width);
            add(rows[n], n, means, covariance);
        }
        double over = (double) rows.length * (rows.length - 1);
        for (double[] line : covariance) {
            for (int j = 0; j < width; j++) {
                line[j] /= over;
            }
        }
        return build(group, means, covariance, rows.length - 1.0);
    }

    /** One row more, keeping the digits of the products of departures. */
    private static void add(double[] row, int before, double[] means, double[][] products) {
        double[] departures = new double[row.length];
        for (int i = 0; i < row.length; i++) {
            departures[i] = Require.finite("reading", row[i], "") - means[i];
            means[i] += departures[i] / (before + 1);
        }
        double weight = before / (before + 1.0);
        for (int i = 0; i < row.length; i++) {
            for (int j = 0; j < row.length; j++) {
                products[i][j] += weight * departures[i] * departures[j];
            }
        }
    }

    private static List<Uncertain> build(String group, double[] values, double[][] covariance, double nu) {
        Require.id("group", group);
        double[] u = uncertainties(values, covariance);
        double[][] factor = PivotedCholesky.factor(correlations(covariance, u));
        int rank = factor.length == 0 ? 0 : factor[0].length;
        Influences basis = influences(group, rank, nu);
        List<Uncertain> inputs = new ArrayList<>(values.length);
        for (int i = 0; i < values.length; i++) {
            double[] contributions = new double[rank];
            for (int k = 0; k < rank; k++) {
                contributions[k] = u[i] * factor[i][k];
            }
            inputs.add(Uncertain.ofContributions(values[i], basis, contributions));
        }
        return List.copyOf(inputs);
    }

    private static Influences influences(String group, int rank, double nu) {
        Shape shape = nu == Double.POSITIVE_INFINITY ? Shape.NORMAL : Shape.SCALED_T;
        List<Influence> list = new ArrayList<>(rank);
        for (int k = 1; k <= rank; k++) {
            list.add(new Influence(group.concat("/").concat(Integer.toString(k)), shape, 1, nu, group));
        }
        return Influences.of(list);
    }

    private static double[] uncertainties(double[] values, double[][] covariance) {
        requireSize("rows of covariance", covariance.length, values.length);
        double[] u = new double[values.length];
        for (int i = 0; i < u.length; i++) {
            requireSize("covariances in a row", covariance[i].length, values.length);
            u[i] = StrictMath.sqrt(Require.atLeastZero("variance", covariance[i][i], ""));
        }
        return u;
    }

    /** An input without doubt has a row of zeros: it takes no part. */
    private static double[][] correlations(double[][] covariance, double[] u) {
        int n = u.length;
        double[][] r = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double product = u[i] * u[j];
                double one = Require.finite("covariance", covariance[i][j], "");
                if (!(StrictMath.abs(one - covariance[j][i]) <= ASYMMETRY * product)) {
                    throw new IllegalArgumentException("covariance must be symmetric, got " + Require.show(one)
                            + " and " + Require.show(covariance[j][i]));
                }
                if (product == 0 && one != 0) {
                    throw Require.refused("covariance with an input without variance", "0", one, "");
                }
                r[i][j] = product == 0 ? 0 : i == j ? 1 : one / product;
            }
        }
        return r;
    }

    private static void requireSize(String name, int got, int wanted) {
        if (got != wanted) {
            throw new IllegalArgumentException("number of " + name + " must be " + wanted + ", got " + got);
        }
    }
}
