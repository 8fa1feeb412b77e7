package quoin.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import quoin.measure.Uncertain;

/**
 * Whether the readings of one plane other than the front can be right together: the back of the recess, or the depths
 * and falls. Immutable and safe for use by many threads.
 *
 * @param plane {@code back} or {@code depth}
 * @param redundancy how many independent checks the readings hold
 * @param statistic the weighted sum of squared residuals, priors included; NaN where it cannot be computed
 * @param readings each value that was read
 */
public record PlaneTest(String plane, int redundancy, double statistic, List<AdjustedReading> readings) {
    /** Copies the list. */
    public PlaneTest {
        Objects.requireNonNull(plane, "plane");
        readings = List.copyOf(readings);
    }

    /** {@return whether the readings can be right together; true where nothing checks them} */
    public boolean isAccepted() {
        return redundancy == 0 || statistic <= GlobalTest.critical(redundancy);
    }

    /** One value that was read there. */
    record Observed(Reading reading, int entry, Uncertain value) {}

    /**
     * The test of values that are weighted sums of unknowns.
     *
     * @param values what is beyond what is expected where every unknown is 0, with all its doubt
     * @param design how each value follows the unknowns
     * @param priors the weights of the prior 0 of the last unknowns
     */
    static PlaneTest of(
            String plane, List<Observed> observed, List<Uncertain> values, double[][] design, double[] priors) {
        int n = observed.size();
        int redundancy = n + priors.length - design[0].length;
        LeastSquares test = Parted.of(Parted.aligned(values)).leastSquares(priors);
        if (!test.isDetermined(design)) {
            return new PlaneTest(plane, redundancy, Double.NaN, List.of());
        }
        double[] rest = values.stream().mapToDouble(Uncertain::value).toArray();
        Tests tests = Tests.of(test, rest, new double[design[0].length]);
        List<AdjustedReading> readings = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Observed one = observed.get(i);
            double residual = 0;
            for (int j = 0; j < n && tests.isChecked(i, one.value().variance()); j++) {
                residual -= one.value().covariance(observed.get(j).value()) * tests.weighted(j);
            }
            readings.add(tests.reading(
                    i,
                    one.reading().of().text(),
                    one.reading().name(),
                    one.entry(),
                    one.value().value(),
                    one.value().variance(),
                    residual,
                    null));
        }
        return new PlaneTest(plane, redundancy, tests.statistic(), readings);
    }
}
