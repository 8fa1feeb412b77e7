package quoin.rulebook;

import java.util.Objects;
import quoin.judge.Source;

/**
 * Something that a size is more or less by. Immutable and safe for use by many threads.
 *
 * @param quota the amount
 * @param times how many times it counts
 * @param because why
 * @param source where it comes from; unstated where the clause's own source holds
 */
public record Item(Quota quota, double times, String because, Source source) {
    /** Refuses a count that is not finite. */
    public Item {
        Objects.requireNonNull(quota, "quota");
        times = Checks.finite(times, "times");
        Objects.requireNonNull(because, "because");
        Objects.requireNonNull(source, "source");
    }
}
