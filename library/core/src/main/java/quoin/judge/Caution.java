package quoin.judge;

import java.util.Locale;
import java.util.Objects;

/**
 * A warning that goes with a result. Immutable and safe for use by many threads.
 *
 * @param code which caution
 * @param severity how grave
 * @param args its arguments
 */
public record Caution(String code, Severity severity, Args args) {
    /** How grave a caution is, worst first. */
    public enum Severity {
        /** Can kill or maim. */
        DANGER,
        /** Can injure or do great damage. */
        WARN,
        /** Worth knowing. */
        NOTE;

        /** {@return the severity as documents write it} */
        public String text() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Checks that nothing is missing. */
    public Caution {
        Args.requireId(code, "caution");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(args, "args");
    }

    /**
     * A caution without arguments.
     *
     * @param code which caution
     * @param severity how grave
     * @return the caution
     */
    public static Caution of(String code, Severity severity) {
        return new Caution(code, severity, Args.NONE);
    }
}
