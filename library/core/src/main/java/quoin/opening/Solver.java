package quoin.opening;

import java.util.List;

/** Finds the outline that fits the observations of one plane best, by Gauss and Newton. Not safe for use by many threads. */
final class Solver {
    private static final int MOST_STEPS = 20;
    private static final double CLOSE_ENOUGH = 1e-9;

    /** A side of 1 mm in an opening of 50 m still counts: its diagonal leans by 2e-5, and that squared is 4e-10. */
    private static final double SEEN = 1e-12;

    /** Of a corner that is nearly shut or nearly straight: 0.01 rad from either. */
    private static final double LEAST_SINE = 0.00999983;

    private final Model model;
    private final Observations observations;
    private final LeastSquares estimate;
    private final double[][] design;
    private final double[] rest;
    private double[] x = {};

    Solver(Model model, Observations observations) {
        this.model = model;
        this.observations = observations;
        this.estimate = observations.estimate();
        this.design = new double[observations.size()][model.size()];
        this.rest = new double[observations.size()];
    }

    Adjustment.State solve(double[] start) {
        x = start;
        evaluate();
        if (!isDetermined()) {
            return Adjustment.State.NOT_DETERMINED;
        }
        for (int step = 0; step < MOST_STEPS; step++) {
            if (!estimate.isDetermined(design)) {
                return Adjustment.State.CANNOT_CLOSE;
            }
            double[] move = estimate.step(rest, x);
            double largest = 0;
            for (int k = 0; k < x.length; k++) {
                x[k] += move[k];
                largest = Math.max(largest, Math.abs(move[k]));
            }
            if (!Double.isFinite(largest) || largest > 1e6) {
                return Adjustment.State.CANNOT_CLOSE;
            }
            evaluate();
            if (largest < CLOSE_ENOUGH * Math.max(1, Math.abs(x[0]))) {
                boolean definite = estimate.isDetermined(design);
                return definite ? Adjustment.State.SOLVED : Adjustment.State.CANNOT_CLOSE;
            }
        }
        return Adjustment.State.CANNOT_CLOSE;
    }

    /** The rectangle of means. */
    double[] rectangleOfMeans() {
        double width = mean(Side.HEAD, Side.FOOT, Side.LEFT);
        double length = mean(Side.LEFT, Side.RIGHT, Side.HEAD);
        double other = diagonal();
        if (Double.isNaN(width)) {
            width = Double.isNaN(length) ? other / Math.sqrt(2) : leg(other, length);
        }
        if (Double.isNaN(length)) {
            length = leg(other, width);
        }
        return model.rectangle(orElse(width), orElse(length));
    }

    private static double leg(double diagonal, double side) {
        double square = diagonal * diagonal - side * side;
        return square > 0 ? Math.sqrt(square) : side;
    }

    private static double orElse(double length) {
        return length > 0 ? length : 1000;
    }

    private double mean(Side first, Side second, Side across) {
        double sum = 0;
        int count = 0;
        for (int i = 0; i < observations.size(); i++) {
            Span span = observations.spans.get(i);
            boolean counts = span instanceof Span.Edge e
                    ? e.side() == first || e.side() == second
                    : span instanceof Span.Across a && a.across() == across;
            if (counts) {
                sum += observations.read(i);
                count++;
            }
        }
        return count == 0 ? Double.NaN : sum / count;
    }

    private double diagonal() {
        for (int i = 0; i < observations.size(); i++) {
            if (observations.spans.get(i) instanceof Span.Diagonal) {
                return observations.read(i);
            }
        }
        return Double.NaN;
    }

    private void evaluate() {
        for (int i = 0; i < rest.length; i++) {
            rest[i] = observations.read(i) - model.observe(observations.spans.get(i), x, design[i]);
        }
    }

    /** Whether the readings leave no way to move the outline, however good or poor each of them is. */
    private boolean isDetermined() {
        int m = model.size();
        double[][] alike = new double[m][m];
        for (int k = m - observations.priors.length; k < m; k++) {
            alike[k][k] = 1;
        }
        for (double[] row : design) {
            double square = 0;
            for (double a : row) {
                square += a * a;
            }
            if (square > 0) {
                LeastSquares.addSquare(alike, row, 1 / square);
            }
        }
        return new Cholesky(alike, SEEN).isDefinite();
    }

    /**
     * A simple outline, run round in the one sense, its corners neither reflex nor crossed, and every touched place
     * between the corners of its side.
     */
    boolean isOutline() {
        for (Span span : observations.spans) {
            for (TouchedPoint point : Model.touchedBy(span)) {
                double along = point.on(sideLength(point.side()));
                if (!(along > 0 && along < 1)) {
                    return false;
                }
            }
        }
        for (Corner corner : Corner.values()) {
            if (!(Model.sine(corner, x) > LEAST_SINE)) {
                return false;
            }
        }
        return true;
    }

    private double sideLength(Side side) {
        return model.observe(new Span.Edge(side), x, new double[model.size()]);
    }

    List<Span> missing() {
        return Determinacy.missing(model, design);
    }

    double[] unknowns() {
        return x;
    }

    double[] rest() {
        return rest;
    }

    double[][] gain() {
        return estimate.gain();
    }

    /** The tests of all readings together and of each, with the full covariance, at the solution. */
    Tests tests() {
        LeastSquares test = observations.test();
        return test.isDetermined(design) ? Tests.of(test, rest, x) : Tests.NONE;
    }
}
