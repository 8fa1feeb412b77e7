package quoin.job;

import java.util.Objects;
import quoin.judge.Verdict;
import quoin.measure.Dimension;

/**
 * A change that gives a clause another verdict. Immutable and safe for use by many threads.
 *
 * @param kind what is changed
 * @param what the reading's name, or the size's
 * @param from what it is now, in base units; the first value of a list
 * @param by how much is added, in base units; to every value of a list
 * @param dimension the kind of quantity
 * @param was the verdict now
 * @param becomes the verdict then
 */
public record Flip(Kind kind, String what, double from, double by, Dimension dimension, Verdict was, Verdict becomes) {
    /** What is changed. */
    public enum Kind {
        /** A reading: had it been read so. */
        READING,
        /** A size of the order: were it made so. */
        ORDER
    }

    /** Checks that nothing is missing. */
    public Flip {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(dimension, "dimension");
        Objects.requireNonNull(was, "was");
        Objects.requireNonNull(becomes, "becomes");
    }

    /** {@return what it would be, in base units; the first value of a list} */
    public double to() {
        return from + by;
    }
}
