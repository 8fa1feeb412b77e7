package quoin.measure;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleConsumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.unit.Units;

/**
 * What no number of this package may be, for every public method that takes one: refused with the argument, the bound, the
 * unit where it has one, and the value got. One test for each kind of bad input.
 */
class BadInputTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;
    private static final Influence A = Influence.normal("a", 1);
    private static final Influences ONE = Influences.of(List.of(A));
    private static final Uncertain X = Uncertain.of(1, A);
    private static final MonteCarlo RUN = MonteCarlo.withDefaults();
    private static final Dimension MM = Dimension.LENGTH;
    private static final SimulatedOutput GOOD = new SimulatedOutput(0, 1, -2, 2, 0, 0, 0, 0);

    /** Numbers that may be anything finite. */
    private static final Map<String, DoubleConsumer> FINITE = Map.ofEntries(
            entry("value of exact", v -> Uncertain.exact(v)),
            entry("value of one influence", v -> Uncertain.of(v, A)),
            entry("value of sensitivities", v -> Uncertain.of(v, ONE, new double[] {1})),
            entry("contribution of sensitivities", v -> Uncertain.of(1, ONE, new double[] {v})),
            entry("value of a reading", v -> Uncertain.ofReading(v, ONE, 0, 1, 0, 1)),
            entry("contributions of own", v -> Uncertain.ofReading(1, ONE, 0, v, 0, 1)),
            entry("contributions of shared", v -> Uncertain.ofReading(1, ONE, 0, 1, 0, v)),
            entry("value of contributions", v -> Uncertain.ofContributions(v, ONE, new double[] {1})),
            entry("contribution", v -> Uncertain.ofContributions(1, ONE, new double[] {v})),
            entry("value of combine", v -> Uncertain.combine(v, new double[] {1}, X)),
            entry("partial", v -> Uncertain.combine(1, new double[] {v}, X)),
            entry("partial in a list", v -> Uncertain.combine(1, new double[] {v}, List.of(X))),
            entry("reading of a mean", v -> Influence.repeated("x", 1, v)),
            entry("reading of repeats", v -> Repeats.of(new double[] {1, v}, 1)),
            entry("reading in rows", v -> CorrelatedInputs.ofRows("g", new double[][] {{1, 2}, {v, 2}})),
            entry("value beside a covariance", v -> CorrelatedInputs.ofCovariance("g", new double[] {v}, one())),
            entry(
                    "value beside correlations",
                    v -> CorrelatedInputs.ofCorrelations("g", new double[] {v}, new double[] {1}, one())),
            entry("covariance", v -> covariance(1, v, v, 1)),
            entry("covariance of one side", v -> covariance(1, 0, v, 1)),
            entry("correlation", v -> correlation(v)),
            entry("reading of an instrument", v -> tape().read("r", v)),
            entry("reading of a doubt", v -> Doubt.limits(1, MM).standardUncertainty(v)),
            entry(
                    "reading of a doubt that grows",
                    v -> Doubt.limits(1, MM).perLength().standardUncertainty(v)),
            entry("value to round down", v -> Steps.down(v, 1)),
            entry("value to round up", v -> Steps.up(v, 1)),
            entry("value to round", v -> Steps.nearest(v, 1)),
            entry("value of an amount", v -> new Amount(v, MM)),
            entry("value to the answer", v -> MM.toAnswer(v)),
            entry("value from the answer", v -> MM.fromAnswer(v)),
            entry("value of a width to the answer", v -> MM.widthToAnswer(v)),
            entry("value of a width from the answer", v -> MM.widthFromAnswer(v)),
            entry("value in a unit", v -> UnitTable.all().get(0).toBase(v)),
            entry("value to a unit", v -> UnitTable.all().get(0).fromBase(v)),
            entry("factor", v -> new UnitTable.Entry("u", MM, v, 0)),
            entry("offset", v -> new UnitTable.Entry("u", MM, 1, v)),
            entry("length in mm", v -> LengthText.millimetres(v, 0, Locale.ROOT)),
            entry("length in m", v -> LengthText.metres(v, 0, Locale.ROOT)),
            entry("length in inches", v -> LengthText.inches(v, 16)),
            entry("length in feet", v -> LengthText.feetAndInches(v, 16)),
            entry("mean of repeats", v -> new Repeats(2, v, 1, 1, 1, 1)),
            entry("value of an output", v -> new SimulatedOutput(v, 1, -2, 2, 0, 0, 0, 0)),
            entry("lower end", v -> new SimulatedOutput(0, 1, v, 2, 0, 0, 0, 0)),
            entry("upper end", v -> new SimulatedOutput(0, 1, -2, v, 0, 0, 0, 0)),
            entry("value of second order", v -> new SecondOrder(v, 1, 1, 1, List.of())),
            entry("value of first order", v -> new SecondOrder(1, v, 1, 1, List.of())),
            entry("sensitivity", v -> new Budget.Line(A, v, 1, 1)),
            entry("contribution of a line", v -> new Budget.Line(A, 1, v, 1)));

    /** Numbers that must be 0 or more, and finite. */
    private static final Map<String, DoubleConsumer> SIZES = Map.ofEntries(
            entry("standard uncertainty", u -> Influence.normal("x", u)),
            entry("standard uncertainty of the record", u -> new Influence("x", Shape.NORMAL, u, 5, "", 0)),
            entry("standard uncertainty of the short record", u -> new Influence("x", Shape.NORMAL, u, 5, "")),
            entry("half-width of a rectangle", u -> Influence.rectangular("x", u)),
            entry("half-width of a triangle", u -> Influence.triangular("x", u)),
            entry("half-width of a trapezoid", u -> Influence.trapezoid("x", u, 0.5)),
            entry("half-width of a curved trapezoid", u -> Influence.curvedTrapezoid("x", u, 0)),
            entry("inexactness of the limits", u -> Influence.curvedTrapezoid("x", 1, u)),
            entry("half-width of a swing", u -> Influence.arcsine("x", u)),
            entry("step of a resolution", u -> Influence.resolution("x", u)),
            entry("expanded uncertainty with k", u -> Influence.expanded("x", u, 2)),
            entry("coverage factor of an expanded one", u -> Influence.expanded("x", 1, u)),
            entry("expanded uncertainty with p", u -> Influence.expandedWithProbability("x", u, 0.95)),
            entry("expanded uncertainty with p and nu", u -> Influence.expandedWithProbability("x", u, 0.95, 5)),
            entry("standard uncertainty as a scale", u -> Influence.tByScale("x", u, 5)),
            entry("standard uncertainty as a deviation", u -> Influence.tByStandardDeviation("x", u, 5)),
            entry("reliability", u -> Influence.normal("x", 1).withReliability(u)),
            entry("doubt", u -> Doubt.standard(u, MM)),
            entry("doubt as limits", u -> Doubt.limits(u, MM)),
            entry("doubt expanded", u -> Doubt.expanded(u, 2, MM)),
            entry("coverage factor of a doubt", u -> Doubt.expanded(1, u, MM)),
            entry("doubt of the record", u -> new Doubt(Doubt.Statement.LIMITS, u, 1, Doubt.Growth.FIXED, MM)),
            entry("step of an instrument", u -> tape().withStep(u)),
            entry(
                    "standard uncertainty of an input",
                    u -> CorrelatedInputs.ofCorrelations("g", new double[] {1}, new double[] {u}, one())),
            entry("variance", u -> covariance(u, 0, 0, 1)),
            entry("stated uncertainty", u -> Repeats.of(new double[] {1, 2}, u)),
            entry("standard deviation of repeats", u -> new Repeats(2, 1, u, 1, 1, 1)),
            entry("stated uncertainty of repeats", u -> new Repeats(2, 1, 1, u, 1, 1)),
            entry("statistic", u -> new Repeats(2, 1, 1, 1, u, 1)),
            entry("critical value", u -> new Repeats(2, 1, 1, 1, 1, u)),
            entry("coverage factor", u -> new Coverage(0.95, 5, u, 1, Coverage.Method.STUDENT)),
            entry("expanded uncertainty", u -> new Coverage(0.95, 5, 1, u, Coverage.Method.STUDENT)),
            entry("standard uncertainty of a tolerance", u -> NumericalTolerance.of(u, 2)),
            entry("tolerance of closeness", u -> X.isCloseTo(X, u)),
            entry("step down", u -> Steps.down(1, u)),
            entry("step up", u -> Steps.up(1, u)),
            entry("step", u -> Steps.nearest(1, u)),
            entry("length of a tape", u -> TapeClass.II.maximumPermissibleErrorMm(u)),
            entry("length of a tape with a hook", u -> TapeClass.II.maximumPermissibleErrorMm(u, Instrument.End.HOOK)),
            entry("standard uncertainty of an output", u -> new SimulatedOutput(0, u, -2, 2, 0, 0, 0, 0)),
            entry("error of the value", u -> new SimulatedOutput(0, 1, -2, 2, u, 0, 0, 0)),
            entry("error of the standard uncertainty", u -> new SimulatedOutput(0, 1, -2, 2, 0, u, 0, 0)),
            entry("error of the lower end", u -> new SimulatedOutput(0, 1, -2, 2, 0, 0, u, 0)),
            entry("error of the upper end", u -> new SimulatedOutput(0, 1, -2, 2, 0, 0, 0, u)),
            entry("standard uncertainty of first order", u -> new SecondOrder(1, 1, u, 1, List.of())),
            entry("standard uncertainty of second order", u -> new SecondOrder(1, 1, 1, u, List.of())),
            entry("difference of the lower ends", u -> new FirstOrderCheck(u, 1, 1)),
            entry("difference of the upper ends", u -> new FirstOrderCheck(1, u, 1)),
            entry("tolerance", u -> new FirstOrderCheck(1, 1, u)),
            entry("contribution of a part", u -> new Budget.Part("p", u, 1)),
            entry("share of a part", u -> new Budget.Part("p", 1, u)),
            entry("share of a line", u -> new Budget.Line(A, 1, 1, u)));

    /** Numbers that divide, or are nothing when 0. */
    private static final Map<String, DoubleConsumer> ABOVE_ZERO = Map.ofEntries(
            entry("coverage factor of an expanded one", u -> Influence.expanded("x", 1, u)),
            entry("half-width of a curved trapezoid", u -> Influence.curvedTrapezoid("x", u, 0)),
            entry("reliability", u -> A.withReliability(u)),
            entry("coverage factor of a doubt", u -> Doubt.expanded(1, u, MM)),
            entry("stated uncertainty", u -> Repeats.of(new double[] {1, 2}, u)),
            entry("stated uncertainty of repeats", u -> new Repeats(2, 1, 1, u, 1, 1)),
            entry("critical value", u -> new Repeats(2, 1, 1, 1, 1, u)),
            entry("factor", u -> new UnitTable.Entry("u", MM, u, 0)),
            entry("step down", u -> Steps.down(1, u)),
            entry("step up", u -> Steps.up(1, u)),
            entry("step", u -> Steps.nearest(1, u)));

    /** Degrees of freedom: above 0; infinite is a value. */
    private static final Map<String, DoubleConsumer> DEGREES = Map.of(
            "degrees of freedom of the record", nu -> new Influence("x", Shape.NORMAL, 1, nu, "", 0),
            "degrees of freedom of the short record", nu -> new Influence("x", Shape.NORMAL, 1, nu, ""),
            "degrees of freedom of a copy", nu -> A.withDegreesOfFreedom(nu),
            "degrees of freedom of an expanded one", nu -> Influence.expandedWithProbability("x", 1, 0.95, nu),
            "degrees of freedom by scale", nu -> Influence.tByScale("x", 1, nu),
            "degrees of freedom by deviation", nu -> Influence.tByStandardDeviation("x", 1, nu),
            "degrees of freedom of a factor", nu -> Coverage.factor(nu, 0.95),
            "degrees of freedom of a one-sided factor", nu -> Coverage.oneSidedFactor(nu, 0.95),
            "degrees of freedom of a coverage", nu -> new Coverage(0.95, nu, 2, 2, Coverage.Method.STUDENT));

    /** Probabilities: between 0 and 1, both left out. */
    private static final Map<String, DoubleConsumer> PROBABILITIES = Map.of(
            "probability of an expanded one", p -> Influence.expandedWithProbability("x", 1, p),
            "probability of one with degrees", p -> Influence.expandedWithProbability("x", 1, p, 5),
            "probability of a coverage", p -> Coverage.symmetric(X, p),
            "probability of rectangles", p -> Coverage.ofRectangles(X, p),
            "probability of a factor", p -> Coverage.factor(5, p),
            "probability of a one-sided factor", p -> Coverage.oneSidedFactor(5, p),
            "probability of the record", p -> new Coverage(p, 5, 2, 2, Coverage.Method.STUDENT),
            "probability of a run", p -> RUN.withProbability(p));

    static Stream<Arguments> notFinite() {
        return calls(FINITE, Double.NaN, INFINITE, -INFINITE);
    }

    static Stream<Arguments> notASize() {
        return calls(SIZES, Double.NaN, INFINITE, -INFINITE, -1, -Double.MIN_VALUE);
    }

    static Stream<Arguments> zero() {
        return calls(ABOVE_ZERO, 0, -0.0);
    }

    static Stream<Arguments> notDegrees() {
        return calls(DEGREES, Double.NaN, 0, -0.0, -1, -INFINITE);
    }

    static Stream<Arguments> notAProbability() {
        return calls(PROBABILITIES, Double.NaN, 0, 1, -0.5, 1.5, INFINITE, -INFINITE);
    }

    private static Stream<Arguments> calls(Map<String, DoubleConsumer> calls, double... bad) {
        return calls.entrySet().stream()
                .flatMap(call -> java.util.Arrays.stream(bad)
                        .mapToObj(value -> Arguments.of(call.getKey(), value, call.getValue())));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("notFinite")
    void notANumberOrInfinite(String name, double bad, DoubleConsumer call) {
        refused(name, bad, call);
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("notASize")
    void negativeOrInfiniteSizes(String name, double bad, DoubleConsumer call) {
        refused(name, bad, call);
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("zero")
    void nothingWhereSomethingIsNeeded(String name, double bad, DoubleConsumer call) {
        refused(name, bad, call);
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("notDegrees")
    void zeroOrNegativeDegreesOfFreedom(String name, double bad, DoubleConsumer call) {
        refused(name, bad, call);
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("notAProbability")
    void probabilitiesThatAreNone(String name, double bad, DoubleConsumer call) {
        refused(name, bad, call);
    }

    static Stream<Arguments> matrices() {
        return Stream.of(
                Arguments.of("r of 2", new double[][] {{1, 2}, {2, 1}}),
                Arguments.of("r of −1.01", new double[][] {{1, -1.01}, {-1.01, 1}}),
                // each pair is possible, all three are not
                Arguments.of("three that contradict", new double[][] {{1, 0.9, 0.9}, {0.9, 1, 0}, {0.9, 0, 1}}),
                Arguments.of(
                        "rounded too far", new double[][] {{1, -0.51, -0.51}, {-0.51, 1, -0.51}, {-0.51, -0.51, 1}}));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("matrices")
    void covariancesThatAreNotPositiveSemidefinite(String name, double[][] matrix) {
        double[] values = new double[matrix.length];
        double[] u = new double[matrix.length];
        java.util.Arrays.fill(u, 1);
        assertThatThrownBy(() -> CorrelatedInputs.ofCovariance("g", values, matrix))
                .as(name)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageMatching("covariance must be positive semidefinite, got one with -?[0-9.E-]+ left after"
                        + " elimination");
        assertThatThrownBy(() -> CorrelatedInputs.ofCorrelations("g", values, u, matrix))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("positive semidefinite");
    }

    static Stream<Arguments> sizes() {
        double[] two = {1, 2};
        double[][] eye = {{1, 0}, {0, 1}};
        return Stream.of(
                sizes("readings in a row", 2, 1, () -> CorrelatedInputs.ofRows("g", new double[][] {{1, 2}, {1}})),
                sizes("readings in a row", 1, 2, () -> CorrelatedInputs.ofRows("g", new double[][] {{1}, {1, 2}})),
                sizes("rows of covariance", 1, 2, () -> CorrelatedInputs.ofCovariance("g", new double[1], eye)),
                sizes(
                        "covariances in a row",
                        2,
                        1,
                        () -> CorrelatedInputs.ofCovariance("g", two, new double[][] {{1, 0}, {0}})),
                sizes("uncertainties", 2, 3, () -> CorrelatedInputs.ofCorrelations("g", two, new double[3], eye)),
                sizes(
                        "rows of correlations",
                        2,
                        1,
                        () -> CorrelatedInputs.ofCorrelations("g", two, two, new double[][] {{1, 0}})),
                sizes(
                        "correlations in a row",
                        2,
                        3,
                        () -> CorrelatedInputs.ofCorrelations("g", two, two, new double[][] {{1, 0, 0}, {0, 1}})),
                sizes("sensitivities", 1, 2, () -> Uncertain.of(1, ONE, two)),
                sizes("contributions", 1, 2, () -> Uncertain.ofContributions(1, ONE, two)),
                sizes("partials", 1, 2, () -> Uncertain.combine(1, two, X)));
    }

    private static Arguments sizes(String what, int wanted, int got, Runnable call) {
        return Arguments.of("number of " + what + " must be " + wanted + ", got " + got, call);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sizes")
    void rowsOfDifferentLength(String message, Runnable call) {
        assertThatThrownBy(call::run)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(message);
    }

    static Stream<Arguments> counts() {
        return Stream.of(
                count("number of readings must be 2 or more, got 1", () -> Influence.repeated("x", 1)),
                count("number of readings must be 2 or more, got 1", () -> Repeats.of(new double[1], 1)),
                count("number of readings must be 2 or more, got 1", () -> new Repeats(1, 1, 1, 1, 1, 1)),
                count("number of rows must be 2 or more, got 1", () -> CorrelatedInputs.ofRows("g", one())),
                count("number of rows must be 2 or more, got 0", () -> CorrelatedInputs.ofRows("g", new double[0][])),
                count("number of values must be 1 or more, got 0", () -> tape().read("r")),
                count("number of parts must be 1 or more, got 0", () -> Extreme.least(List.of())),
                count("number of outputs must be 1 or more, got -1", () -> RUN.run(List.of(X), -1, (x, y) -> {})),
                count("number of trials must be from 10000 to 100000000, got 0", () -> RUN.withTrials(0)),
                count("significant digits must be from 1 to 4, got 0", () -> RUN.withDigits(0, 100_000)),
                count("most trials must be from 20000 to 100000000, got 19999", () -> RUN.withDigits(2, 19_999)),
                count("significant digits must be from 1 to 9, got 10", () -> NumericalTolerance.of(1, 10)),
                count(
                        "significant digits must be from 1 to 9, got 0",
                        () -> FirstOrderCheck.of(X, Coverage.symmetric(X, 0.95).orElseThrow(), GOOD, 0)),
                count("ratio must be from 0 to 1, got 1.5", () -> new Influence("x", Shape.TRAPEZOID, 1, 1, "", 1.5)),
                count("top over base must be from 0 to 1, got NaN", () -> Influence.trapezoid("x", 1, Double.NaN)),
                count(
                        "lower end must be at most the upper end, 2, got 3",
                        () -> new SimulatedOutput(0, 1, 3, 2, 0, 0, 0, 0)),
                count("share must be from 0 to 1.000000000001, got 2", () -> new Budget.Part("p", 1, 2)),
                count(
                        "degrees of freedom must be more than 2, got 2",
                        () -> Influence.tByStandardDeviation("x", 1, 2)));
    }

    private static Arguments count(String message, Runnable call) {
        return Arguments.of(message, call);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("counts")
    void numbersOutOfTheirRange(String message, Runnable call) {
        assertThatThrownBy(call::run)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(message);
    }

    /** Arithmetic has its own exception: what it would give is no number. */
    static Stream<Arguments> arithmetic() {
        return calls(
                Map.of(
                        "plus", v -> X.plus(v),
                        "minus", v -> X.minus(v),
                        "times", v -> X.times(v),
                        "dividedBy", v -> X.dividedBy(v),
                        "times of a quantity", v -> Measured.of(X, Units.METRE).times(v)),
                Double.NaN,
                INFINITE,
                -INFINITE);
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("arithmetic")
    void numbersThatHaveNoResult(String name, double bad, DoubleConsumer call) {
        assertThatThrownBy(() -> call.accept(bad))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageMatching("\\w+ has no finite result for 1 and .*" + bad);
    }

    /** The first word or two of the name, the bound and the value got; mm where the argument is a length. */
    private static void refused(String name, double bad, DoubleConsumer call) {
        String argument = name.replaceFirst(
                " (of|in|as|to|from|beside|by|with|down|up|expanded|that)\\b.*| (?=of own|of shared).*", "");
        String got = Require.show(bad == 0 ? 0 : bad);
        assertThatThrownBy(() -> call.accept(bad))
                .as(name)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith(argument)
                .hasMessageContaining(" must be ")
                .hasMessageContaining("got ")
                .hasMessageContaining(got);
    }

    private static double[][] one() {
        return new double[][] {{1}};
    }

    private static void covariance(double a, double b, double c, double d) {
        CorrelatedInputs.ofCovariance("g", new double[] {1, 2}, new double[][] {{a, b}, {c, d}});
    }

    private static void correlation(double r) {
        CorrelatedInputs.ofCorrelations("g", new double[] {1, 2}, new double[] {1, 1}, new double[][] {{1, r}, {r, 1}});
    }

    private static Instrument tape() {
        return Instrument.of("tape", Instrument.Kind.TAPE).withAccuracyClass(TapeClass.II);
    }
}
