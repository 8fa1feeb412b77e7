package quoin.rulebook;

import java.util.List;

/**
 * What a survey must hold before it counts as complete.
 *
 * <p>Immutable and safe for use by many threads.
 *
 * @clause survey
 * @formula complete = every place of {@code needs} was read or stated
 * @unit none
 * @edge an empty list needs nothing beyond what every job needs
 * @source practice: one reading each way at both ends and both diagonals
 * @param needs the places and facts, as documents write them
 */
public record SurveyRule(List<String> needs) {
    /** Nothing beyond what every job needs. */
    public static final SurveyRule NONE = new SurveyRule(List.of());

    /** Copies the list. */
    public SurveyRule {
        needs = List.copyOf(needs);
    }
}
