package quoin.opening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import quoin.measure.Influence;
import quoin.measure.Influences;
import quoin.measure.Uncertain;

/**
 * The outline of one plane that fits its readings best, by least squares, and whether the readings can be right
 * together.
 *
 * <p>Corners head-left (origin), head-right (on the x axis), foot-right, foot-left, and one offset for each point of a
 * side that a reading touches away from the corners (prior 0, limits plus or minus {@code straightWithin}). Weights come
 * from what is fresh in each reading, with the errors that an instrument makes in all its readings counted as if they
 * were fresh: so a tape cannot teach the adjustment its own scale. The doubt of the result then carries every influence
 * with its true sensitivity, shared ones added before they are squared.
 *
 * <p>Immutable and safe for use by many threads.
 */
public final class Adjustment {
    /** The smallest shift that a test of 0.1 % sees four times in five, in standard deviations. */
    static final double DELTA = GlobalTest.DELTA;

    /** The critical value of a two-sided test of one reading at 0.1 %. */
    static final double CRITICAL_W = 3.2905;

    private static final int MOST_STEPS = 20;
    private static final double CLOSE_ENOUGH = 1e-9;

    /** A side of 1 mm in an opening of 50 m still counts: its diagonal leans by 2e-5, and that squared is 4e-10. */
    private static final double SEEN = 1e-12;

    private final Model model;
    private final State state;
    private final List<Uncertain> unknowns;
    private final List<AdjustedReading> readings;
    private final double[][] confusion;
    private final double statistic;
    private final int redundancy;
    private final List<Span> missing;

    /** How an adjustment ended. */
    public enum State {
        /** An outline was found. */
        SOLVED,
        /** The readings leave a way to move the outline without changing any of them. */
        NOT_DETERMINED,
        /** No outline comes near the readings: they cannot close. */
        CANNOT_CLOSE
    }

    private Adjustment(Model model, State state, List<Span> missing) {
        this(model, state, List.of(), List.of(), new double[0][0], Double.NaN, 0, missing);
    }

    private Adjustment(
            Model model,
            State state,
            List<Uncertain> unknowns,
            List<AdjustedReading> readings,
            double[][] confusion,
            double statistic,
            int redundancy,
            List<Span> missing) {
        this.model = model;
        this.state = state;
        this.unknowns = List.copyOf(unknowns);
        this.readings = List.copyOf(readings);
        this.confusion = confusion;
        this.statistic = statistic;
        this.redundancy = redundancy;
        this.missing = List.copyOf(missing);
    }

    /**
     * The outline that fits the readings of one plane best.
     *
     * @param survey what was read
     * @param plane which plane
     * @return the adjustment, solved or saying why not
     * @formula Gauss–Newton from the rectangle of means: x = (AᵀPA)⁻¹AᵀPl; w = −(eᵢᵀPv)/√qᵢ with q = diag(PQᵥᵥP), P the
     *     inverse of the full covariance
     * @unit mm
     * @edge not determined: says which reading is missing; readings that cannot close: says so; no redundancy: accepted,
     *     nothing was checked
     * @source handbook: Strang and Borre 1997, chapter 12; Baarda 1968 (the tests, from memory)
     */
    public static Adjustment of(Survey survey, Plane plane) {
        boolean mayBulge = survey.straightWithinMm() > 0;
        Model model = Model.of(survey.outline(plane), mayBulge);
        Observations observations = Observations.of(survey, plane, model);
        if (observations.spans.isEmpty()) {
            return new Adjustment(model, State.NOT_DETERMINED, Determinacy.missing(model, new double[0][0]));
        }
        Solver solver = new Solver(model, observations);
        Adjustment solved = solver.solve();
        return solved.isSolved() && !solver.isOutline() ? solver.cannotClose() : solved;
    }

    /** The same from a given start, for any four points: they need not run round an outline. Straight sides. */
    static Adjustment from(double[] start, Survey survey, Plane plane) {
        Model model = Model.of(survey.outline(plane), false);
        Solver solver = new Solver(model, Observations.of(survey, plane, model));
        System.arraycopy(start, 0, solver.x, 0, model.size());
        return solver.solve();
    }

    /** The observations of one plane: readings first, then one prior for each offset. */
    private record Observations(
            List<Span> spans, List<String> names, List<Integer> entries, List<Uncertain> values, Influences shared) {
        static Observations of(Survey survey, Plane plane, Model model) {
            List<Span> spans = new ArrayList<>();
            List<String> names = new ArrayList<>();
            List<Integer> entries = new ArrayList<>();
            List<Uncertain> values = new ArrayList<>();
            Influences shared = Influences.NONE;
            for (int i = 0; i < survey.readings().size(); i++) {
                Reading reading = survey.readings().get(i);
                if (!Survey.tiesOutline(reading, plane)) {
                    continue;
                }
                shared = shared.union(reading.by().shared());
                for (Uncertain value : survey.observed(i)) {
                    spans.add(reading.of());
                    names.add(reading.name());
                    entries.add(i);
                    values.add(value);
                }
            }
            if (!spans.isEmpty()) {
                for (TouchedPoint point : model.touched()) {
                    values.add(prior(plane, point, survey.straightWithinMm()));
                }
            }
            Influences basis = Influences.NONE;
            for (Uncertain value : values) {
                basis = basis.union(value.influences());
            }
            List<Uncertain> aligned = new ArrayList<>();
            for (Uncertain value : values) {
                aligned.add(value.onto(basis));
            }
            return new Observations(spans, names, entries, aligned, shared);
        }

        private static Uncertain prior(Plane plane, TouchedPoint point, double within) {
            return Uncertain.of(0, Influence.rectangular("straight/" + plane.text() + "/" + point.text(), within));
        }
    }

    /** One solution; not safe for use by many threads. */
    private static final class Solver {
        private final Model model;
        private final Observations observations;
        private final int n;
        private final int m;
        private final double[] x;
        private final double[][] design;
        private final double[] rest;
        private final double[][] weight;

        Solver(Model model, Observations observations) {
            this.model = model;
            this.observations = observations;
            this.n = observations.values.size();
            this.m = model.size();
            this.x = start();
            this.design = new double[n][m];
            this.rest = new double[n];
            this.weight = new Cholesky(estimationCovariance(), 0).inverse();
        }

        private double[] start() {
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
            for (int i = 0; i < observations.spans.size(); i++) {
                Span span = observations.spans.get(i);
                boolean counts = span.equals(new Span.Edge(first))
                        || span.equals(new Span.Edge(second))
                        || (span instanceof Span.Across a && a.across() == across);
                if (counts) {
                    sum += observations.values.get(i).value();
                    count++;
                }
            }
            return count == 0 ? Double.NaN : sum / count;
        }

        private double diagonal() {
            for (int i = 0; i < observations.spans.size(); i++) {
                if (observations.spans.get(i) instanceof Span.Diagonal) {
                    return observations.values.get(i).value();
                }
            }
            return Double.NaN;
        }

        /** Fresh influences with their covariance; shared ones on the diagonal only. */
        private double[][] estimationCovariance() {
            double[][] c = new double[n][n];
            Influences basis = observations.values.get(0).influences();
            for (int k = 0; k < basis.size(); k++) {
                boolean shared = observations.shared.indexOf(basis.get(k)) >= 0;
                for (int i = 0; i < n; i++) {
                    double ci = observations.values.get(i).contribution(k);
                    if (ci == 0) {
                        continue;
                    }
                    c[i][i] += ci * ci;
                    for (int j = 0; j < i && !shared; j++) {
                        c[i][j] += ci * observations.values.get(j).contribution(k);
                        c[j][i] = c[i][j];
                    }
                }
            }
            addRidge(c);
            return c;
        }

        private double[][] fullCovariance() {
            double[][] c = new double[n][n];
            for (int i = 0; i < n; i++) {
                for (int j = 0; j <= i; j++) {
                    c[i][j] = observations.values.get(i).covariance(observations.values.get(j));
                    c[j][i] = c[i][j];
                }
            }
            addRidge(c);
            return c;
        }

        /** Two readings by an instrument that states no doubt of its own agree to a millionth at best. */
        private static void addRidge(double[][] c) {
            for (int i = 0; i < c.length; i++) {
                c[i][i] += 1e-8 * Math.max(c[i][i], 1e-4);
            }
        }

        Adjustment solve() {
            evaluate();
            if (!isDetermined()) {
                return new Adjustment(model, State.NOT_DETERMINED, Determinacy.missing(model, design));
            }
            for (int step = 0; step < MOST_STEPS; step++) {
                Cholesky normal = normal();
                if (!normal.isDefinite()) {
                    return cannotClose();
                }
                double[] move = rightHandSide(weight);
                normal.solveInPlace(move);
                double largest = 0;
                for (int k = 0; k < m; k++) {
                    x[k] += move[k];
                    largest = Math.max(largest, Math.abs(move[k]));
                }
                if (!Double.isFinite(largest) || largest > 1e6) {
                    return cannotClose();
                }
                evaluate();
                if (largest < CLOSE_ENOUGH * Math.max(1, Math.abs(x[0]))) {
                    return solved();
                }
            }
            return cannotClose();
        }

        private Adjustment cannotClose() {
            return new Adjustment(model, State.CANNOT_CLOSE, List.of());
        }

        /**
         * A simple outline, run round in the one sense, its corners neither reflex nor crossed, and every touched place
         * between the corners of its side.
         */
        private boolean isOutline() {
            for (Span span : observations.spans) {
                for (TouchedPoint point : Model.touchedBy(span)) {
                    double along = point.on(sideLength(point.side()));
                    if (!(along > 0 && along < 1)) {
                        return false;
                    }
                }
            }
            double[] row = new double[m];
            for (Corner corner : Corner.values()) {
                double angle = model.angle(corner, x, row);
                if (!(angle > 0.01 && angle < Math.PI - 0.01)) {
                    return false;
                }
            }
            return true;
        }

        private double sideLength(Side side) {
            return Model.distance(model.corner(side.from(), x), model.corner(side.to(), x), new double[m]);
        }

        private void evaluate() {
            int read = observations.spans.size();
            for (int i = 0; i < n; i++) {
                double computed;
                if (i < read) {
                    computed = model.observe(observations.spans.get(i), x, design[i]);
                } else {
                    int offset = m - (n - read) + (i - read);
                    Arrays.fill(design[i], 0);
                    design[i][offset] = 1;
                    computed = x[offset];
                }
                rest[i] = observations.values.get(i).value() - computed;
            }
        }

        private Cholesky normal() {
            return new Cholesky(normalMatrix(weight), 0);
        }

        /** Whether the readings leave no way to move the outline, however good or poor each of them is. */
        private boolean isDetermined() {
            double[][] alike = new double[n][n];
            for (int i = 0; i < n; i++) {
                double square = 0;
                for (double a : design[i]) {
                    square += a * a;
                }
                alike[i][i] = 1 / square;
            }
            return new Cholesky(normalMatrix(alike), SEEN).isDefinite();
        }

        private double[][] normalMatrix(double[][] p) {
            double[][] pa = times(p, design);
            double[][] normal = new double[m][m];
            for (int i = 0; i < n; i++) {
                for (int k = 0; k < m; k++) {
                    double a = design[i][k];
                    if (a != 0) {
                        for (int l = 0; l < m; l++) {
                            normal[k][l] += a * pa[i][l];
                        }
                    }
                }
            }
            return normal;
        }

        private static double[][] times(double[][] p, double[][] a) {
            int rows = p.length;
            int columns = a[0].length;
            double[][] result = new double[rows][columns];
            for (int i = 0; i < rows; i++) {
                for (int j = 0; j < a.length; j++) {
                    double pij = p[i][j];
                    if (pij != 0) {
                        for (int l = 0; l < columns; l++) {
                            result[i][l] += pij * a[j][l];
                        }
                    }
                }
            }
            return result;
        }

        private double[] rightHandSide(double[][] p) {
            double[] b = new double[m];
            for (int i = 0; i < n; i++) {
                double weighted = 0;
                for (int j = 0; j < n; j++) {
                    weighted += p[i][j] * rest[j];
                }
                for (int k = 0; k < m; k++) {
                    b[k] += design[i][k] * weighted;
                }
            }
            return b;
        }

        private Adjustment solved() {
            List<Uncertain> unknowns = unknowns();
            double[][] g = testMatrix();
            double[] gr = new double[n];
            double statistic = 0;
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    gr[i] += g[i][j] * rest[j];
                }
                statistic += gr[i] * rest[i];
            }
            int read = observations.spans.size();
            List<AdjustedReading> readings = new ArrayList<>();
            double[][] confusion = new double[read][read];
            for (int i = 0; i < read; i++) {
                readings.add(reading(i, g[i][i], gr[i]));
                for (int j = 0; j < read; j++) {
                    double both = Math.sqrt(g[i][i] * g[j][j]);
                    confusion[i][j] = both > 0 ? g[i][j] / both : 0;
                }
            }
            return new Adjustment(
                    model, State.SOLVED, unknowns, readings, confusion, Math.max(0, statistic), n - m, List.of());
        }

        private AdjustedReading reading(int i, double q, double gr) {
            double variance = observations.values.get(i).variance();
            boolean checked = q * variance > 1e-6;
            double root = Math.sqrt(q);
            return new AdjustedReading(
                    observations.spans.get(i).text(),
                    observations.names.get(i),
                    observations.entries.get(i),
                    observations.values.get(i).value(),
                    -rest[i] + 0.0,
                    checked ? gr / root : Double.NaN,
                    checked ? gr / q : Double.NaN,
                    checked ? 1 / root : Double.POSITIVE_INFINITY,
                    checked ? DELTA / root : Double.POSITIVE_INFINITY);
        }

        private List<Uncertain> unknowns() {
            Cholesky normal = normal();
            double[][] pa = times(weight, design);
            double[][] gain = new double[n][];
            for (int i = 0; i < n; i++) {
                gain[i] = pa[i].clone();
                normal.solveInPlace(gain[i]);
            }
            List<Uncertain> result = new ArrayList<>();
            for (int k = 0; k < m; k++) {
                double[] partials = new double[n];
                for (int i = 0; i < n; i++) {
                    partials[i] = gain[i][k];
                }
                result.add(Uncertain.combine(x[k], partials, observations.values));
            }
            return result;
        }

        /** PQᵥᵥP for the full covariance: what the readings say against each other, free of the unknowns. */
        private double[][] testMatrix() {
            double[][] p = new Cholesky(fullCovariance(), 0).inverse();
            double[][] pa = times(p, design);
            Cholesky normal = new Cholesky(normalMatrix(p), 0);
            double[][] g = new double[n][n];
            for (int j = 0; j < n; j++) {
                double[] column = pa[j].clone();
                normal.solveInPlace(column);
                for (int i = 0; i < n; i++) {
                    double sum = 0;
                    for (int k = 0; k < m; k++) {
                        sum += pa[i][k] * column[k];
                    }
                    g[i][j] = p[i][j] - sum;
                }
            }
            return g;
        }
    }

    /** {@return how it ended} */
    public State state() {
        return state;
    }

    /** {@return whether an outline was found} */
    public boolean isSolved() {
        return state == State.SOLVED;
    }

    /** {@return the readings that would each help to determine the outline; empty where it is determined} */
    public List<Span> missing() {
        return missing;
    }

    /** {@return readings, each of a list counted, and offset priors, less unknowns; 0 where there is no outline} */
    public int redundancy() {
        return redundancy;
    }

    /** {@return the weighted sum of squared residuals, priors included; NaN where there is no outline} */
    public double statistic() {
        return statistic;
    }

    /** {@return the largest statistic that is accepted; infinite where nothing was checked} */
    public double critical() {
        return redundancy > 0 ? GlobalTest.critical(redundancy) : Double.POSITIVE_INFINITY;
    }

    /** {@return whether an outline was found and the readings can be right together} */
    public boolean isAccepted() {
        return isSolved() && statistic <= critical();
    }

    /** {@return what it says about each reading, each of a list by itself, in the order of the survey} */
    public List<AdjustedReading> readings() {
        return readings;
    }

    /** {@return the groups of readings of which one is likely wrong; empty exactly when accepted or without an outline} */
    public List<Suspect> suspects() {
        return isSolved() && !isAccepted() ? Suspects.of(readings, confusion, statistic, redundancy) : List.of();
    }

    /** The correlation of the tests of two readings: near 1 or -1 they cannot be told apart. */
    double confusion(int i, int j) {
        return confusion[i][j];
    }

    List<Uncertain> unknowns() {
        return unknowns;
    }

    Model model() {
        return model;
    }

    double[] values() {
        return unknowns.stream().mapToDouble(Uncertain::value).toArray();
    }
}
