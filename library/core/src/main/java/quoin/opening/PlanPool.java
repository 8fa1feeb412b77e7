package quoin.opening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import quoin.measure.Instrument;

/** Everything that may be read of a rectangle, and what a part of it would check. Not safe for use by many threads. */
final class PlanPool {
    /** With no more readings than this nothing is checked. */
    private static final int UNKNOWNS = 5;

    private final List<Span> spans;
    private final Observations observations;
    private final double[][] design;
    private final Model model;

    PlanPool(List<Span> spans, double widthMm, double lengthMm, double straightWithinMm, Instrument by) {
        this.spans = List.copyOf(spans);
        List<Reading> probes = readings(value -> 1, by);
        this.model = Model.of(probes, straightWithinMm > 0);
        double[] x = model.rectangle(widthMm, lengthMm);
        double[] row = new double[model.size()];
        Survey survey = Survey.finished(readings(span -> model.observe(span, x, row), by), straightWithinMm);
        this.observations = Observations.of(survey, Plane.FRONT, model);
        this.design = new double[spans.size()][model.size()];
        for (int i = 0; i < spans.size(); i++) {
            model.observe(spans.get(i), x, design[i]);
        }
    }

    private List<Reading> readings(ToDoubleFunction<Span> value, Instrument by) {
        List<Reading> readings = new ArrayList<>();
        for (Span span : spans) {
            readings.add(new Reading("", span, Plane.FRONT, List.of(value.applyAsDouble(span)), by));
        }
        return readings;
    }

    int size() {
        return spans.size();
    }

    Span span(int i) {
        return spans.get(i);
    }

    /** The variance of what is fresh in a reading: a floor of what it can be checked to. */
    double fresh(int i) {
        return observations.fresh(i);
    }

    /** The smallest slip that each of those would show, in their order; all infinite where they determine no outline. */
    double[] detectable(int[] chosen) {
        double[] detectable = new double[chosen.length];
        Arrays.fill(detectable, Double.POSITIVE_INFINITY);
        if (chosen.length <= UNKNOWNS) {
            return detectable;
        }
        double[][] rows = new double[chosen.length][];
        for (int i = 0; i < chosen.length; i++) {
            rows[i] = design[chosen[i]];
        }
        if (!isDetermined(rows)) {
            return detectable;
        }
        LeastSquares test = observations.test(chosen);
        if (test.isDetermined(rows)) {
            double[] checks = test.checks();
            for (int i = 0; i < chosen.length; i++) {
                boolean checked = checks[i] * observations.variance(chosen[i]) > Tests.LEAST_CHECK;
                detectable[i] = checked ? GlobalTest.DELTA / Math.sqrt(checks[i]) : Double.POSITIVE_INFINITY;
            }
        }
        return detectable;
    }

    private boolean isDetermined(double[][] rows) {
        return Determinacy.rank(model, rows) == model.size();
    }

    /** How many ways to move the outline those readings hold. */
    int rank(int[] chosen) {
        double[][] rows = new double[chosen.length][];
        for (int i = 0; i < chosen.length; i++) {
            rows[i] = design[chosen[i]];
        }
        return Determinacy.rank(model, rows);
    }
}
