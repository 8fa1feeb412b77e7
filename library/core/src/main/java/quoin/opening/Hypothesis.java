package quoin.opening;

import java.util.ArrayList;
import java.util.List;
import quoin.measure.Instrument;

/** What the tests would say with one more reading, the outline staying where it is. Not safe for use by many threads. */
final class Hypothesis {
    private final Observations observations;
    private final Tests tests;
    private final int redundancy;

    private Hypothesis(Observations observations, Tests tests, int redundancy) {
        this.observations = observations;
        this.tests = tests;
        this.redundancy = redundancy;
    }

    static Hypothesis of(Adjustment now, Span span, Instrument by) {
        Survey survey = now.survey();
        Reading probe = new Reading("", span, now.plane(), List.of(1.0), by);
        Model model = Model.of(with(survey, probe), now.plane());
        double[] x = moved(now, model);
        double read = model.observe(span, x, new double[model.size()]);
        Survey more = with(survey, new Reading("", span, now.plane(), List.of(read), by));
        Observations observations = Observations.of(more, now.plane(), model);
        Design design = new Design(model, observations);
        design.at(x);
        LeastSquares test = observations.test();
        boolean determined = test.isDetermined(design.rows(), model.size());
        Tests tests = determined ? Tests.of(test, design.rest(), x) : Tests.NONE;
        return new Hypothesis(observations, tests, observations.size() + observations.priors.length - model.size());
    }

    private static Survey with(Survey survey, Reading more) {
        List<Reading> readings = new ArrayList<>(survey.readings());
        readings.add(more);
        return new Survey(readings, survey.straightWithinMm(), survey.finish());
    }

    /** The outline as it is; a place that was not touched before lies on the chord. */
    static double[] moved(Adjustment now, Model model) {
        double[] old = now.values();
        double[] x = new double[model.size()];
        System.arraycopy(old, 0, x, 0, 5);
        for (TouchedPoint point : model.touched()) {
            int at = now.model().offsetIndex(point);
            x[model.offsetIndex(point)] = at < 0 ? 0 : old[at];
        }
        return x;
    }

    boolean isDetermined() {
        return tests.areThere();
    }

    int size() {
        return observations.size();
    }

    String name(int i) {
        return observations.name(i);
    }

    /** The odds that another reading is named, too, where one has that slip. */
    double named(int culprit, double slip, int other) {
        double rho = tests.correlation(culprit, other);
        if (!(Math.abs(rho) < Suspects.TOLD_APART)) {
            return 1;
        }
        double shift = slip * slip * tests.between(culprit, culprit) * (1 - rho * rho);
        return GlobalTest.accepted(redundancy - 1, shift);
    }
}
