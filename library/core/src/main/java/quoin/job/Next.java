package quoin.job;

import java.util.Objects;
import quoin.judge.Step;

/**
 * The reading to take next. Immutable and safe for use by many threads.
 *
 * @param of what to read, as documents write it
 * @param by the instrument; empty where any will do
 * @param because why
 */
public record Next(String of, String by, Step because) {
    /** Checks that nothing is missing. */
    public Next {
        Objects.requireNonNull(of, "of");
        Objects.requireNonNull(by, "by");
        Objects.requireNonNull(because, "because");
    }
}
