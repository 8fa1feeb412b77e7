package quoin.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
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
    /** The critical value of a two-sided test of one reading at 0.1 %. */
    static final double CRITICAL_W = 3.2905;

    private final Survey survey;
    private final Plane plane;
    private final Model model;
    private final Observations observations;
    private final State state;
    private final double[] values;
    private final double[] rowsAt;
    private final LeastSquares estimate;
    private final Tests tests;
    private final double[] rest;
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

    /**
     * A side that stands further in or out than its stated straightness has it.
     *
     * @param side the side
     * @param at where most, as documents write a place along it
     * @param mm by how much, in mm, positive into the opening
     * @param readings the names of the readings that touch it away from its corners
     */
    public record Bulge(Side side, String at, double mm, List<String> readings) {
        /** Copies the list. */
        public Bulge {
            Objects.requireNonNull(side, "side");
            Objects.requireNonNull(at, "at");
            readings = List.copyOf(readings);
        }
    }

    /** Without an outline. */
    private Adjustment(
            Survey survey, Plane plane, Model model, Observations observations, State state, List<Span> missing) {
        this.survey = survey;
        this.plane = plane;
        this.model = model;
        this.observations = observations;
        this.state = state;
        this.values = new double[0];
        this.rowsAt = new double[0];
        this.estimate = LeastSquares.NONE;
        this.tests = Tests.NONE;
        this.rest = new double[0];
        this.missing = List.copyOf(missing);
    }

    private Adjustment(Survey survey, Plane plane, Model model, Observations observations, Solver solved, Tests tests) {
        this.survey = survey;
        this.plane = plane;
        this.model = model;
        this.observations = observations;
        this.state = State.SOLVED;
        this.values = solved.unknowns();
        this.rowsAt = solved.rowsAt();
        this.estimate = solved.estimate();
        this.tests = tests;
        this.rest = solved.rest();
        this.missing = List.of();
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
        Model model = Model.of(survey, plane);
        Observations observations = Observations.of(survey, plane, model);
        if (observations.size() == 0) {
            List<Span> missing = Determinacy.missing(model, new double[0][0]);
            return new Adjustment(survey, plane, model, observations, State.NOT_DETERMINED, missing);
        }
        Solver solver = new Solver(model, observations);
        State state = solver.solve(solver.rectangleOfMeans());
        boolean closes = state != State.SOLVED || solver.isOutline();
        return answer(survey, plane, model, observations, solver, closes ? state : State.CANNOT_CLOSE);
    }

    /** The same from a given start, for any four points: they need not run round an outline. Straight sides. */
    static Adjustment from(double[] start, Survey survey, Plane plane) {
        Model model = Model.of(List.of(), false);
        Observations observations = Observations.of(survey, plane, model);
        Solver solver = new Solver(model, observations);
        State state = solver.solve(start.clone());
        return answer(survey, plane, model, observations, solver, state);
    }

    private static Adjustment answer(
            Survey survey, Plane plane, Model model, Observations observations, Solver solver, State state) {
        Tests tests = state == State.SOLVED ? solver.tests() : Tests.NONE;
        if (tests.areThere()) {
            return new Adjustment(survey, plane, model, observations, solver, tests);
        }
        State failed = state == State.SOLVED ? State.CANNOT_CLOSE : state;
        List<Span> missing = state == State.NOT_DETERMINED ? solver.missing() : List.of();
        return new Adjustment(survey, plane, model, observations, failed, missing);
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
        return isSolved() ? observations.size() + observations.priors.length - model.size() : 0;
    }

    /** {@return the weighted sum of squared residuals, priors included; NaN where there is no outline} */
    public double statistic() {
        return tests.statistic();
    }

    /** {@return the largest statistic that is accepted; infinite where nothing was checked} */
    public double critical() {
        return redundancy() > 0 ? GlobalTest.critical(redundancy()) : Double.POSITIVE_INFINITY;
    }

    /** {@return whether an outline was found and the readings can be right together} */
    public boolean isAccepted() {
        return isSolved() && statistic() <= critical();
    }

    /**
     * {@return what it says about each reading, each of a list by itself, in the order of the survey; empty where there is
     * no outline; an element is computed anew each time it is asked for}
     */
    public List<AdjustedReading> readings() {
        return isSolved()
                ? new AdjustedReadings(tests, observations, rest, new Reach(model, rowsAt, estimate))
                : List.of();
    }

    /**
     * The covariance of the corners, and of the offsets of touched points where sides may bulge.
     *
     * @return one row and one column for each of: x of head-right, x and y of foot-right, x and y of foot-left, then the
     *     offsets by side and place; empty where there is no outline; a copy
     * @formula (AᵀPA)⁻¹, then what instruments share with its true sensitivity instead of as if it were fresh
     * @unit mm²
     * @edge no outline: empty; variances are too large by 1e-8 of themselves, a floor that keeps readings without doubt
     *     apart
     * @source handbook: Strang and Borre 1997, chapter 12
     */
    public double[][] covariance() {
        return isSolved() ? observations.covariance(estimate, model.size()) : new double[0][];
    }

    /**
     * The correlation of the tests of two readings, ρ: near 1 or −1 a slip in one looks like a slip in the other.
     *
     * @param i the place of one in {@link #readings()}
     * @param j the place of the other
     * @return the correlation, from −1 to 1
     * @throws IndexOutOfBoundsException if there is no such reading
     * @formula ρ = gᵢⱼ / √(gᵢᵢ gⱼⱼ) with G = PQᵥᵥP
     * @unit 1
     * @edge 0 where nothing checks one of the two
     * @source handbook: Förstner 1983 (separability, from memory)
     */
    public double correlation(int i, int j) {
        boolean both = tests.isChecked(i, observations.variance(i)) && tests.isChecked(j, observations.variance(j));
        return both ? tests.correlation(i, j) : 0;
    }

    /** {@return the groups of readings of which one is likely wrong; empty exactly when accepted or not determined} */
    public List<Suspect> suspects() {
        return suspects(List.of());
    }

    /**
     * The groups of readings of which one is likely wrong, where some readings cannot be taken.
     *
     * @param cannot what must not be asked for
     * @return the groups, the one that stands out most first; where the readings cannot close, each group that by itself has no
     *     figure, without slips; empty exactly when accepted or not determined
     */
    public List<Suspect> suspects(List<Span> cannot) {
        if (state == State.CANNOT_CLOSE) {
            return Conflicts.of(survey, plane).stream()
                    .map(group -> conflict(group, cannot))
                    .toList();
        }
        if (!isSolved() || isAccepted()) {
            return List.of();
        }
        List<Bulge> bulges = bulges();
        if (!bulges.isEmpty()) {
            return bulges.stream()
                    .map(bulge -> new Suspect(
                            bulge.readings(), List.of(), new Span.Bow(bulge.side(), At.parse(bulge.at())).text()))
                    .toList();
        }
        return Suspects.of(List.copyOf(readings()), tests, redundancy(), new NextReading(this, cannot));
    }

    /**
     * The sides that are not as straight as stated, where that explains a disagreement that no slip in one distance or angle
     * explains: the readings are then right and {@code straightWithin} is not. A bow that was read speaks for its side, not
     * for a slip, where that side alone explains it.
     *
     * @return each side that explains it alone; else the fewest sides that do together; empty where none do, where the readings
     *     agree, and where nobody said how straight the sides are
     */
    public List<Bulge> bulges() {
        boolean asks = isSolved() && !isAccepted() && !Double.isNaN(survey.straightWithinMm());
        return asks ? new Bulges(this).find() : List.of();
    }

    /** What stands in most groups is read again first. */
    private Suspect conflict(List<Integer> group, List<Span> cannot) {
        List<Reading> readings = group.stream().map(survey.readings()::get).toList();
        Reading again = readings.stream()
                .filter(reading -> !cannot.contains(reading.of()))
                .findFirst()
                .orElse(readings.get(0));
        List<String> names = readings.stream().map(this::name).distinct().toList();
        return new Suspect(names, List.of(), again.of().text());
    }

    /** The name of a reading among those of its plane. */
    private String name(Reading reading) {
        return reading.id().isEmpty() ? reading.of().text() : reading.name();
    }

    Survey survey() {
        return survey;
    }

    Plane plane() {
        return plane;
    }

    Observations observations() {
        return observations;
    }

    Tests tests() {
        return tests;
    }

    /** The unknowns with every influence, computed anew. */
    List<Uncertain> unknowns() {
        List<Uncertain> unknowns = new ArrayList<>();
        Uncertain[] read = isSolved() ? observations.values().toArray(Uncertain[]::new) : new Uncertain[0];
        double[][] gain = isSolved() ? estimate.gain() : new double[0][];
        for (int k = 0; k < values.length; k++) {
            double[] partials = new double[gain.length];
            for (int i = 0; i < gain.length; i++) {
                partials[i] = gain[i][k];
            }
            unknowns.add(Uncertain.combine(values[k], partials, read));
        }
        return unknowns;
    }

    Model model() {
        return model;
    }

    double[] values() {
        return values.clone();
    }
}
