package quoin.job;

import java.util.Objects;
import quoin.parts.Parts;
import quoin.rulebook.Rulebook;

/**
 * What an answer was made from: enough to make it again, or to name what is no longer the same. Immutable and safe for use by
 * many threads.
 *
 * @param library the version of the library
 * @param semantics the version of its results: a number that is raised whenever a size, figure, verdict or odds of the
 *     same job, rulebook and parts change by more than their last digits, one part in 10<sup>9</sup>
 * @param job the digest of the job, see {@link Job#digest()}
 * @param rulebook the digest of the rulebook, see {@link Rulebook#digest()}
 * @param parts the digest of the parts, see {@link Parts#digest()}; empty where there were none
 */
public record Receipt(String library, int semantics, String job, String rulebook, String parts) {
    /** The version of this library. */
    public static final String LIBRARY = "0.1.0";

    /** The version of this library's results; what changed with each is in the changelog under <i>results changed</i>. */
    public static final int SEMANTICS = 2;

    /** Checks that nothing is missing. */
    public Receipt {
        Objects.requireNonNull(library, "library");
        Objects.requireNonNull(job, "job");
        Objects.requireNonNull(rulebook, "rulebook");
        Objects.requireNonNull(parts, "parts");
    }

    /**
     * What an answer of this library would be made from.
     *
     * @param job the job
     * @param rulebook the rules
     * @param parts the parts; {@link Parts#NONE} where none are chosen
     * @return the receipt
     */
    public static Receipt of(Job job, Rulebook rulebook, Parts parts) {
        String listed = parts.id().isEmpty() ? "" : parts.digest();
        return new Receipt(LIBRARY, SEMANTICS, job.digest(), rulebook.digest(), listed);
    }
}
