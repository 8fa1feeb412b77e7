package quoin.opening;

import java.util.List;

/** Finds the outline that fits the observations of one plane best, by Gauss and Newton. Not safe for use by many threads. */
final class Solver {
    private static final int MOST_STEPS = 20;
    private static final double CLOSE_ENOUGH = 1e-9;
    private static final double MOST_MOVE = 1e6;

    /** A side of 1 mm in an opening of 50 m still counts: its diagonal leans by 2e-5, and that squared is 4e-10. */
    private static final double SEEN = 1e-12;

    /** Of a corner that is nearly shut or nearly straight: 0.01 rad from either. */
    private static final double LEAST_SINE = 0.00999983;

    private final Model model;
    private final Observations observations;
    private final LeastSquares estimate;
    private final Design design;
    private double[] x = {};
    private double[] rowsAt = {};

    Solver(Model model, Observations observations) {
        this.model = model;
        this.observations = observations;
        this.estimate = observations.estimate();
        this.design = new Design(model, observations);
    }

    Adjustment.State solve(double[] start) {
        x = start;
        design.at(x);
        boolean definite = estimate.isDetermined(design.rows(), model.size());
        if (!isDetermined(definite)) {
            return Adjustment.State.NOT_DETERMINED;
        }
        for (int step = 0; step < MOST_STEPS && definite; step++) {
            double[] move = estimate.step(design.rest(), x);
            double largest = 0;
            for (int k = 0; k < x.length; k++) {
                x[k] += move[k];
                largest = Math.max(largest, Math.abs(move[k]));
            }
            if (!(largest <= MOST_MOVE)) {
                return Adjustment.State.CANNOT_CLOSE;
            }
            if (largest < CLOSE_ENOUGH * Math.max(1, Math.abs(x[0]))) {
                design.follow(move);
                rowsAt = x.clone();
                for (int k = 0; k < x.length; k++) {
                    rowsAt[k] -= move[k];
                }
                return Adjustment.State.SOLVED;
            }
            design.at(x);
            definite = estimate.isDetermined(design.rows(), model.size());
        }
        return Adjustment.State.CANNOT_CLOSE;
    }

    /** The rectangle of means. */
    double[] rectangleOfMeans() {
        double widths = 0;
        double lengths = 0;
        int ofWidth = 0;
        int ofLength = 0;
        double other = Double.NaN;
        for (int i = 0; i < observations.size(); i++) {
            Span span = observations.span(i);
            double read = observations.read(i);
            if (span instanceof Span.Diagonal) {
                other = Double.isNaN(other) ? read : other;
            } else if (isWidth(span)) {
                widths += read;
                ofWidth++;
            } else if (span instanceof Span.Edge || span instanceof Span.Across) {
                lengths += read;
                ofLength++;
            }
        }
        double width = widths / ofWidth;
        double length = lengths / ofLength;
        if (ofWidth == 0) {
            width = ofLength == 0 ? other / Math.sqrt(2) : leg(other, length);
        }
        if (ofLength == 0) {
            length = leg(other, width);
        }
        return model.rectangle(orElse(width), orElse(length));
    }

    private static boolean isWidth(Span span) {
        return span instanceof Span.Edge e
                ? e.side() == Side.HEAD || e.side() == Side.FOOT
                : span instanceof Span.Across a && a.across() == Side.LEFT;
    }

    private static double leg(double diagonal, double side) {
        double square = diagonal * diagonal - side * side;
        return square > 0 ? Math.sqrt(square) : side;
    }

    private static double orElse(double length) {
        return length > 0 ? length : 1000;
    }

    /** Whether the readings leave no way to move the outline, however good or poor each of them is. */
    private boolean isDetermined(boolean definite) {
        if (definite && estimate.leastPivot() > SEEN) {
            return true;
        }
        int m = model.size();
        double[] alike = new double[Cholesky.sizeOf(m)];
        for (int k = m - observations.priors.length; k < m; k++) {
            alike[Cholesky.row(k) + k] = 1;
        }
        double[] rows = design.rows();
        double[] weight = new double[observations.size()];
        for (int i = 0; i < weight.length; i++) {
            double square = LeastSquares.product(m, rows, i, rows, i);
            weight[i] = square > 0 ? 1 / square : 0;
        }
        LeastSquares.addSquares(alike, rows, m, weight);
        return new Cholesky(alike, m, SEEN).isDefinite();
    }

    /**
     * A simple outline, run round in the one sense, its corners neither reflex nor crossed, and every touched place
     * between the corners of its side.
     */
    boolean isOutline() {
        for (int i = 0; i < observations.size() && !design.allJoinMeans(); i++) {
            Span span = observations.span(i);
            if (!Model.isAtDistance(span)) {
                continue;
            }
            for (TouchedPoint point : Model.touchedBy(span)) {
                double along = point.on(sideLength(point.side()));
                if (!(along > 0 && along < 1)) {
                    return false;
                }
            }
        }
        return Model.leastSine(x) > LEAST_SINE;
    }

    private double sideLength(Side side) {
        return model.observe(new Span.Edge(side), x, new double[model.size()]);
    }

    List<Span> missing() {
        return Determinacy.missing(model, design.matrix());
    }

    double[] unknowns() {
        return x;
    }

    /** Where the rows of the estimate were taken: before the last move, which is too small to bend anything. */
    double[] rowsAt() {
        return rowsAt;
    }

    double[] rest() {
        return design.rest();
    }

    LeastSquares estimate() {
        return estimate;
    }

    /** The tests of all readings together and of each, with the full covariance, at the solution. */
    Tests tests() {
        LeastSquares test = observations.sharesNothing() ? estimate : observations.test();
        boolean determined = observations.sharesNothing() || test.isDetermined(design.rows(), model.size());
        return determined ? Tests.of(test, design.rest(), x) : Tests.NONE;
    }
}
