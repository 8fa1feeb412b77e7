package quoin.fixing;

import quoin.judge.Args;
import quoin.judge.Source;
import quoin.judge.Step;

/** Numbers at the door of a code: what is no measure is refused, what is outside its range is unknown to it. */
final class CodeRange {
    private CodeRange() {}

    static void requireAboveZero(String name, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be above 0" + unit + " and finite, got " + value + unit);
        }
    }

    /** Of something that the code has a rule for within a range only. */
    static Step beyond(String edition, String what, double got, String unit, double[] range, Source source) {
        Args args = Args.of("edition", edition)
                .with("what", what)
                .with("got", got, unit)
                .with("atLeast", range[0])
                .with("atMost", range[1]);
        return new Step("beyond-code", args, source);
    }
}
