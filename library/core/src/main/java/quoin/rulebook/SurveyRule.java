package quoin.rulebook;

import java.util.List;

/**
 * What a survey must hold before it counts as complete.
 *
 * <p>Immutable and safe for use by many threads.
 *
 * @clause survey
 * @formula complete = every place of {@code needs} was read or stated, and, where {@code detects} is stated, no slip above
 *     it in any one reading would stay unnoticed (&delta;&#8320;/&radic;q at most that, &delta;&#8320; = 4.13)
 * @unit mm for {@code detects}
 * @edge an empty list needs nothing beyond what every job needs; a place with {@code /back} is read behind; a needed reading of
 *     the outline that cannot be taken is replaced by another that checks as much
 * @source practice: one reading each way at both ends and both diagonals
 * @param needs the places and facts, as documents write them
 * @param detectsMm the slip in any one reading that must not stay unnoticed, in mm, above 0; NaN where none is stated
 */
public record SurveyRule(List<String> needs, double detectsMm) {
    /** Nothing beyond what every job needs. */
    public static final SurveyRule NONE = new SurveyRule(List.of());

    /** Copies the list; refuses a slip that is not above 0. */
    public SurveyRule {
        needs = List.copyOf(needs);
        if (detectsMm <= 0 || Double.isInfinite(detectsMm)) {
            throw new IllegalArgumentException("detects must be above 0 mm and finite, got " + detectsMm + " mm");
        }
    }

    /**
     * Without a slip that must be noticed.
     *
     * @param needs the places and facts, as documents write them
     */
    public SurveyRule(List<String> needs) {
        this(needs, Double.NaN);
    }
}
