package quoin.opening;

import java.util.ArrayList;
import java.util.List;

/** Which of the usual readings would help to determine an outline. */
final class Determinacy {
    private static final double SEEN = 1e-9;

    private Determinacy() {}

    private static final List<Span> USUAL = List.of(
            new Span.Edge(Side.HEAD),
            new Span.Edge(Side.FOOT),
            new Span.Edge(Side.LEFT),
            new Span.Edge(Side.RIGHT),
            new Span.Diagonal(Corner.HEAD_LEFT),
            new Span.Diagonal(Corner.HEAD_RIGHT));

    /** The usual readings that are not a combination of the given rows and the priors, one after the other. */
    static List<Span> missing(Model model, double[][] design) {
        double[] rectangle = model.rectangle(1500, 2400);
        List<double[]> basis = basis(model, design);
        List<Span> missing = new ArrayList<>();
        for (Span span : USUAL) {
            double[] row = new double[model.size()];
            model.observe(span, rectangle, row);
            if (extend(basis, row)) {
                missing.add(span);
            }
        }
        return missing;
    }

    /** How many unknowns the given rows and the priors determine. */
    static int rank(Model model, double[][] design) {
        return basis(model, design).size();
    }

    private static List<double[]> basis(Model model, double[][] design) {
        List<double[]> basis = new ArrayList<>();
        for (TouchedPoint point : model.touched()) {
            double[] prior = new double[model.size()];
            prior[model.offsetIndex(point)] = 1;
            extend(basis, prior);
        }
        for (double[] row : design) {
            extend(basis, row);
        }
        return basis;
    }

    /** Gram–Schmidt: adds what is new in a row; says whether anything was. */
    private static boolean extend(List<double[]> basis, double[] row) {
        double[] rest = row.clone();
        for (int pass = 0; pass < 2; pass++) {
            for (double[] unit : basis) {
                double along = dot(rest, unit);
                for (int k = 0; k < rest.length; k++) {
                    rest[k] -= along * unit[k];
                }
            }
        }
        double norm = Math.sqrt(dot(rest, rest));
        if (!(norm > SEEN * Math.max(1, Math.sqrt(dot(row, row))) + 1e-6)) {
            return false;
        }
        for (int k = 0; k < rest.length; k++) {
            rest[k] /= norm;
        }
        basis.add(rest);
        return true;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int k = 0; k < a.length; k++) {
            sum += a[k] * b[k];
        }
        return sum;
    }
}
