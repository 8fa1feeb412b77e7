package quoin.rulebook;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quoin.measure.Amount;

/**
 * What a survey must hold before it counts as complete.
 *
 * <p>Immutable and safe for use by many threads.
 *
 * @clause survey
 * @formula complete = every place of {@code needs} was read or stated, and, where {@code detects} is stated, no slip above
 *     it in any one reading would stay unnoticed (&delta;&#8320;/&radic;q at most that, &delta;&#8320; = 4.13), and no place is
 *     more doubtful than {@code goodTo} says
 * @unit mm for {@code detects}; that of the reading for {@code goodTo}
 * @edge an empty list needs nothing beyond what every job needs; a place with {@code /back} is read behind; a needed reading of
 *     the outline that cannot be taken is replaced by another that checks as much
 * @source practice: one reading each way at both ends and both diagonals
 * @param needs the places and facts, as documents write them
 * @param detectsMm the slip in any one reading that must not stay unnoticed, in mm, above 0; NaN where none is stated
 * @param goodTo the greatest standard uncertainty that what was read at a place may have, by the place; each of them is needed
 */
public record SurveyRule(List<String> needs, double detectsMm, Map<String, Amount> goodTo) {
    /** Nothing beyond what every job needs. */
    public static final SurveyRule NONE = new SurveyRule(List.of());

    /** Copies the list and the map; refuses a slip that is not above 0, and an uncertainty for what is not needed. */
    public SurveyRule {
        needs = List.copyOf(needs);
        if (detectsMm <= 0 || Double.isInfinite(detectsMm)) {
            throw new IllegalArgumentException("detects must be above 0 mm and finite, got " + detectsMm + " mm");
        }
        goodTo = Collections.unmodifiableMap(new LinkedHashMap<>(goodTo));
        for (String place : goodTo.keySet()) {
            if (!needs.contains(place)) {
                throw new IllegalArgumentException("a place that must be good must be needed, got " + place);
            }
        }
    }

    /**
     * Places and facts, however good, and no slip that must be noticed.
     *
     * @param needs the places and facts, as documents write them
     */
    public SurveyRule(List<String> needs) {
        this(needs, Double.NaN, Map.of());
    }
}
