package quoin.job;

import java.util.List;
import java.util.Optional;

/**
 * Where the survey stands. Immutable and safe for use by many threads.
 *
 * @param missing what is still missing, as documents write it: facts first, then readings in the order to take them
 * @param next the reading to take next; none where nothing more can be asked for
 * @param agrees whether the readings can be right together, in every plane
 */
public record SurveyState(List<String> missing, Optional<Next> next, boolean agrees) {
    /** Copies the list. */
    public SurveyState {
        missing = List.copyOf(missing);
    }

    /**
     * {@return whether one may come down: nothing is missing, no reading is asked for, and those there are can be right
     * together}
     */
    public boolean complete() {
        return missing.isEmpty() && next.isEmpty() && agrees;
    }
}
