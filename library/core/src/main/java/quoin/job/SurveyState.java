package quoin.job;

import java.util.List;
import java.util.Optional;

/**
 * Where the survey stands. Immutable and safe for use by many threads.
 *
 * @param missing what is still missing, as documents write it
 * @param next the reading to take next; none where nothing more is asked for
 */
public record SurveyState(List<String> missing, Optional<Next> next) {
    /** Copies the list. */
    public SurveyState {
        missing = List.copyOf(missing);
    }

    /** {@return whether nothing is missing and no reading is asked for: one may come down} */
    public boolean complete() {
        return missing.isEmpty() && next.isEmpty();
    }
}
