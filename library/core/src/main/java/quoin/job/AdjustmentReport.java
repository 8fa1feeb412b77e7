package quoin.job;

import java.util.List;
import quoin.opening.AdjustedReading;
import quoin.opening.PlaneTest;
import quoin.opening.Suspect;

/**
 * Whether the readings can be right together. Immutable and safe for use by many threads.
 *
 * @param determined whether they determine a shape
 * @param redundancy how many independent checks they hold
 * @param statistic the weighted sum of squared residuals; NaN where there is no shape
 * @param critical the largest statistic that is accepted
 * @param accepted whether there is a shape and the readings can be right together
 * @param readings each reading of the front plane
 * @param suspects the groups of which one reading is likely wrong
 * @param planes the same of the other planes: the back of the recess, and the depths with falls
 */
public record AdjustmentReport(
        boolean determined,
        int redundancy,
        double statistic,
        double critical,
        boolean accepted,
        List<AdjustedReading> readings,
        List<Suspect> suspects,
        List<PlaneTest> planes) {
    /** Copies the lists. */
    public AdjustmentReport {
        readings = List.copyOf(readings);
        suspects = List.copyOf(suspects);
        planes = List.copyOf(planes);
    }
}
