package quoin.judge;

import java.util.Objects;

/**
 * One typed step of how a value or a verdict came about. Immutable and safe for use by many threads.
 *
 * @param code which kind of step
 * @param args its arguments
 * @param source where the number used in it comes from
 */
public record Step(String code, Args args, Source source) {
    /** Checks that nothing is missing. */
    public Step {
        Args.requireId(code, "step");
        Objects.requireNonNull(args, "args");
        Objects.requireNonNull(source, "source");
    }

    /**
     * A step without a source of its own.
     *
     * @param code which kind of step
     * @param args its arguments
     * @return the step
     */
    public static Step of(String code, Args args) {
        return new Step(code, args, Source.UNSTATED);
    }
}
