package quoin.benchmarks;

import java.util.List;
import quoin.opening.AdjustedReading;
import quoin.opening.Adjustment;
import quoin.opening.Plane;
import quoin.opening.Survey;

/**
 * The same by the library, with all tests: the global one, and of each reading residual, w, slip with its doubt and
 * redundancy number (its square root over u), and the smallest slip that would show. The correlations of the tests come on
 * request. What such a slip does to the outline is computed when asked for, and is not asked for here.
 */
final class AdjustByLibrary implements Work {
    private final Survey[] surveys;
    private final boolean withCorrelations;

    AdjustByLibrary(List<Survey> surveys, boolean withCorrelations) {
        this.surveys = surveys.toArray(Survey[]::new);
        this.withCorrelations = withCorrelations;
    }

    Adjustment adjust(int time) {
        return Adjustment.of(surveys[time % surveys.length], Plane.FRONT);
    }

    @Override
    public double once(int time) {
        Adjustment adjustment = adjust(time);
        double sum = adjustment.statistic() / adjustment.critical();
        for (double[] row : adjustment.covariance()) {
            for (double covariance : row) {
                sum += covariance;
            }
        }
        List<AdjustedReading> readings = adjustment.readings();
        for (int i = 0; i < readings.size(); i++) {
            AdjustedReading reading = readings.get(i);
            sum += reading.residual() + reading.w() + reading.slip() + reading.slipU() + reading.detectable();
            for (int j = 0; j < i && withCorrelations; j++) {
                sum += adjustment.correlation(i, j);
            }
        }
        return sum;
    }
}
