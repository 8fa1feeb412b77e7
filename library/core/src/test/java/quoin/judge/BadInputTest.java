package quoin.judge;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleConsumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import quoin.measure.Dimension;

/**
 * What no number of this package may be, for every public method that takes one: refused with the argument, the bound and
 * the value got. Values with doubt were refused before, by {@code quoin.measure}.
 */
class BadInputTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    private static final Map<String, DoubleConsumer> FINITE = Map.ofEntries(
            entry("number", v -> Args.of("number", v)),
            entry("number more", v -> Args.NONE.with("number", v)),
            entry("margin", v -> new Margin(v, 1, Dimension.LENGTH, "atLeast")),
            entry("width", v -> DecisionRule.guardBand(v)),
            entry("factor", v -> DecisionRule.guardFactor(v, 2)),
            entry("coverageFactor", v -> DecisionRule.guardFactor(1, v)));

    private static final Map<String, DoubleConsumer> SIZES = Map.ofEntries(
            entry("u", v -> new Margin(1, v, Dimension.LENGTH, "atLeast")),
            entry("width", v -> DecisionRule.guardBand(v)),
            entry("factor", v -> DecisionRule.guardFactor(v, 2)),
            entry("coverageFactor", v -> DecisionRule.guardFactor(1, v)));

    private static final Map<String, DoubleConsumer> PROBABILITIES = Map.of(
            "odds", p -> Odds.firstOrder(p),
            "odds with a lower", p -> new Odds(0.5, p, 1, Odds.Method.BOUNDS),
            "odds with an upper", p -> new Odds(0.5, 0, p, Odds.Method.BOUNDS));

    static Stream<Arguments> notFinite() {
        return calls(FINITE, Double.NaN, INFINITE, -INFINITE);
    }

    static Stream<Arguments> negative() {
        return calls(SIZES, -1, -Double.MIN_VALUE);
    }

    static Stream<Arguments> notAProbability() {
        return calls(PROBABILITIES, Double.NaN, -0.1, 1.1, INFINITE, -INFINITE);
    }

    /** A rule that proves nothing is none: above a half. */
    static Stream<Arguments> notAThreshold() {
        return calls(
                Map.of("probability", p -> DecisionRule.guarded(p)),
                Double.NaN,
                0,
                0.5,
                1,
                -0.95,
                1.5,
                INFINITE,
                -INFINITE);
    }

    private static Stream<Arguments> calls(Map<String, DoubleConsumer> calls, double... bad) {
        return calls.entrySet().stream()
                .flatMap(call ->
                        Arrays.stream(bad).mapToObj(value -> Arguments.of(call.getKey(), value, call.getValue())));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource({"notFinite", "negative", "notAProbability", "notAThreshold"})
    void refused(String name, double bad, DoubleConsumer call) {
        assertThatThrownBy(() -> call.accept(bad))
                .as(name)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith(name.split(" ")[0] + " must be ")
                .hasMessageContaining("got ")
                .hasMessageContaining(Double.toString(bad));
    }

    static Stream<Arguments> bounds() {
        double nan = Double.NaN;
        return Stream.of(
                bound("atLeast must not exceed atMost, got NaN and Infinity", () -> Bound.atLeast(nan)),
                bound("atLeast must not exceed atMost, got -Infinity and NaN", () -> Bound.atMost(nan)),
                bound("atLeast must not exceed atMost, got NaN and 1.0", () -> Bound.between(nan, 1)),
                bound("atLeast must not exceed atMost, got 1.0 and NaN", () -> Bound.between(1, nan)),
                bound("atLeast must not exceed atMost, got 2.0 and 1.0", () -> Bound.between(2, 1)),
                bound("atLeast must not exceed atMost, got Infinity and Infinity", () -> Bound.atLeast(INFINITE)),
                bound("atLeast must not exceed atMost, got -Infinity and -Infinity", () -> Bound.atMost(-INFINITE)),
                bound("bound must have atLeast or atMost, got neither", () -> Bound.atLeast(-INFINITE)),
                bound("bound must have atLeast or atMost, got neither", () -> Bound.atMost(INFINITE)),
                bound("bound must have atLeast or atMost, got neither", () -> Bound.within(INFINITE)),
                bound("within must be 0 or more, got NaN", () -> Bound.within(nan)),
                bound("within must be 0 or more, got -1.0", () -> Bound.within(-1)),
                bound("values must be 1 or more, got 0", () -> new ReadingDoubt("r", "tape", 0, List.of(), List.of())),
                bound("times must be 1 or more, got 0", () -> new Retake(List.of("r"), "", 0, 1, 1)),
                bound("u must be 0 or more and finite, or NaN, got -1.0", () -> retake(-1, 1)),
                bound("u must be 0 or more and finite, or NaN, got Infinity", () -> retake(INFINITE, 1)),
                bound("settles must be from 0 to 1, or NaN, got -0.1", () -> retake(1, -0.1)),
                bound("settles must be from 0 to 1, or NaN, got 1.1", () -> retake(1, 1.1)),
                bound("settles must be from 0 to 1, or NaN, got Infinity", () -> retake(1, INFINITE)),
                bound("retake must name 1 reading or more, got none", () -> new Retake(List.of(), "", 1, 1, 1)));
    }

    private static Retake retake(double u, double settles) {
        return new Retake(List.of("r"), "", 1, u, settles);
    }

    private static Arguments bound(String message, Runnable call) {
        return Arguments.of(message, call);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bounds")
    void boundsAndCountsThatMakeNoSense(String message, Runnable call) {
        assertThatThrownBy(call::run)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(message);
    }
}
