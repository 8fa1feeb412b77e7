package quoin.judge;

import java.util.Locale;
import java.util.Objects;

/**
 * Where a number, a rule or a formula comes from.
 *
 * <p>Dates are data in the form {@code 2026-11-02}; nothing compares them with a clock. Immutable and safe for use by
 * many threads.
 *
 * @param kind what sort of source it is
 * @param ref standard and clause, book and table, test report; empty where there is none
 * @param verifiedOn the date somebody last held the number against the source; empty where unknown
 * @param reviewBy the date it must be looked at again; empty where none is set
 */
public record Source(Kind kind, String ref, String verifiedOn, String reviewBy) {
    /** The sorts of source. */
    public enum Kind {
        /** A published standard or directive. */
        STANDARD,
        /** A handbook or textbook. */
        HANDBOOK,
        /** Declared by the maker of the part. */
        DECLARED,
        /** Tested on site or in a laboratory. */
        TESTED,
        /** Common practice without a published source. */
        PRACTICE,
        /** Recalled, not seen. */
        MEMORY,
        /** Assumed, to be replaced by a declared value. */
        ASSUMPTION,
        /** Nobody said. */
        UNSTATED;

        /** {@return the kind as documents write it} */
        public String text() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** No source was given. */
    public static final Source UNSTATED = new Source(Kind.UNSTATED, "", "", "");

    /** Common practice, no published source. */
    public static final Source PRACTICE = new Source(Kind.PRACTICE, "", "", "");

    /** Checks that nothing is missing. */
    public Source {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(ref, "ref");
        Objects.requireNonNull(verifiedOn, "verifiedOn");
        Objects.requireNonNull(reviewBy, "reviewBy");
    }

    /**
     * A source without dates.
     *
     * @param kind what sort of source it is
     * @param ref standard and clause, book and table, test report
     * @return the source
     */
    public static Source of(Kind kind, String ref) {
        return new Source(kind, ref, "", "");
    }

    /** {@return whether somebody named a source} */
    public boolean isStated() {
        return kind != Kind.UNSTATED;
    }
}
