package quoin.opening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import quoin.measure.Uncertain;

/**
 * Depths and falls that may be read, and what a part of them would check: a second reading of a place the first; the
 * middle the four corners, where the surface is as straight as the sides. Not safe for use by many threads.
 */
final class DepthPool {
    /** About how deep a recess is, in mm: a class of tape asks. */
    private static final double ABOUT_MM = 150;

    private final List<Span> spans = new ArrayList<>();
    private final List<Uncertain> values;
    private final Parted parted;
    private final double within;

    DepthPool(List<PlanPool.Candidate> candidates, double straightWithinMm) {
        List<Reading> readings = new ArrayList<>();
        for (PlanPool.Candidate one : candidates) {
            spans.add(one.span());
            readings.add(PlanPool.reading(one, ABOUT_MM));
        }
        Survey survey = Survey.finished(readings, Double.NaN);
        List<Uncertain> all = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            all.addAll(survey.observed(i));
        }
        this.values = Parted.aligned(all);
        this.parted = Parted.of(values);
        this.within = straightWithinMm;
    }

    double fresh(int i) {
        return parted.fresh[i];
    }

    double[] detectable(int[] chosen) {
        double[] detectable = new double[chosen.length];
        Arrays.fill(detectable, Double.POSITIVE_INFINITY);
        if (chosen.length == 0) {
            return detectable;
        }
        DepthNet net = DepthNet.of(Arrays.stream(chosen).mapToObj(spans::get).toList(), within);
        List<Uncertain> some = Arrays.stream(chosen).mapToObj(values::get).toList();
        LeastSquares test = Parted.of(some).leastSquares(net.priors());
        if (test.isDetermined(net.design())) {
            double[] checks = test.checks();
            for (int i = 0; i < chosen.length; i++) {
                detectable[i] = PlanPool.smallest(checks[i], some.get(i).variance());
            }
        }
        return detectable;
    }
}
