package quoin.benchmarks;

import java.util.List;
import quoin.opening.AdjustedReading;
import quoin.opening.Adjustment;
import quoin.opening.Plane;
import quoin.opening.Survey;

/** The same by the library. */
final class AdjustByLibrary implements Work {
    private final Survey[] surveys;

    AdjustByLibrary(List<Survey> surveys) {
        this.surveys = surveys.toArray(Survey[]::new);
    }

    Adjustment adjust(int time) {
        return Adjustment.of(surveys[time % surveys.length], Plane.FRONT);
    }

    @Override
    public double once(int time) {
        Adjustment adjustment = adjust(time);
        double sum = adjustment.statistic();
        List<AdjustedReading> readings = adjustment.readings();
        for (int i = 0; i < readings.size(); i++) {
            AdjustedReading reading = readings.get(i);
            sum += reading.residual() + reading.w() + reading.slip() + reading.slipU() + reading.detectable();
            for (int j = 0; j < i; j++) {
                sum += adjustment.correlation(i, j);
            }
        }
        return sum;
    }
}
