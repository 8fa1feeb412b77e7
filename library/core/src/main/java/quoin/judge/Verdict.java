package quoin.judge;

import java.util.Locale;

/** The three answers, best first. */
public enum Verdict {
    /** The bound holds, with the odds that the rule asks for. */
    PASS,
    /** Neither proven; the reason says why. */
    UNDECIDED,
    /** The bound does not hold, with the odds that the rule asks for. */
    FAIL;

    /**
     * The worse of two verdicts: fail, then undecided, then pass.
     *
     * @param other the other verdict
     * @return the worse one
     */
    public Verdict worse(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** {@return the verdict as documents write it} */
    public String text() {
        return name().toLowerCase(Locale.ROOT);
    }
}
