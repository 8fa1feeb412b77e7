package quoin.opening;

import java.util.ArrayList;
import java.util.List;
import quoin.measure.Influence;
import quoin.measure.Influences;
import quoin.measure.Uncertain;

/**
 * The observations of one plane, their doubt taken apart: what is fresh in each, what the values of one entry share, what
 * all readings of an instrument share. Not safe for use by many threads.
 */
final class Observations {
    final List<Span> spans = new ArrayList<>();
    final List<String> texts = new ArrayList<>();
    final List<String> names = new ArrayList<>();
    final List<String> instruments = new ArrayList<>();
    final List<Integer> entries = new ArrayList<>();

    /** What was read, then the prior of each offset, all on one list of influences. */
    final List<Uncertain> values = new ArrayList<>();

    private final Parted parted;

    /** The effect on each observation of what the values of one entry share: their rounding. */
    final double[][] roundings;

    /** The effect on each observation of what the readings of an instrument share. */
    final double[][] common;

    /** The weight of the prior 0 of each offset. */
    final double[] priors;

    private Observations(Survey survey, Plane plane, List<TouchedPoint> touched) {
        List<Uncertain> unaligned = new ArrayList<>();
        Influences shared = read(survey, plane, unaligned);
        int read = spans.size();
        priors = new double[read == 0 ? 0 : touched.size()];
        for (int k = 0; k < priors.length; k++) {
            Uncertain prior = prior(plane, touched.get(k), survey.straightWithinMm());
            unaligned.add(prior);
            priors[k] = 1 / prior.variance();
        }
        values.addAll(Parted.aligned(unaligned));
        parted = Parted.of(values.subList(0, read));
        List<double[]> ofEntries = new ArrayList<>();
        List<double[]> ofInstruments = new ArrayList<>();
        for (int k = 0; k < parted.columns.length; k++) {
            boolean ofAll = shared.indexOf(parted.shared.get(k)) >= 0;
            (ofAll ? ofInstruments : ofEntries).add(parted.columns[k]);
        }
        roundings = ofEntries.toArray(double[][]::new);
        common = ofInstruments.toArray(double[][]::new);
    }

    static Observations of(Survey survey, Plane plane, Model model) {
        return new Observations(survey, plane, model.touched());
    }

    private Influences read(Survey survey, Plane plane, List<Uncertain> unaligned) {
        Influences shared = Influences.NONE;
        for (int i = 0; i < survey.readings().size(); i++) {
            Reading reading = survey.readings().get(i);
            boolean bends = reading.of() instanceof Span.Bow && Double.isNaN(survey.straightWithinMm());
            if (bends || !Survey.tiesOutline(reading, plane)) {
                continue;
            }
            shared = shared.union(reading.by().shared());
            String text = reading.of().text();
            String name = reading.id().isEmpty() ? text : reading.name();
            for (Uncertain value : survey.observed(i)) {
                spans.add(reading.of());
                texts.add(text);
                names.add(name);
                instruments.add(reading.by().id());
                entries.add(i);
                unaligned.add(value);
            }
        }
        return shared;
    }

    private static Uncertain prior(Plane plane, TouchedPoint point, double within) {
        return Uncertain.of(0, Influence.rectangular("straight/" + plane.text() + "/" + point.text(), within));
    }

    int size() {
        return spans.size();
    }

    double read(int i) {
        return values.get(i).value();
    }

    /**
     * The weights of the estimate: what an instrument shares between readings counts as if it were fresh, so that no
     * reading teaches the scale it was read on.
     */
    LeastSquares estimate() {
        double[] alone = Parted.variance(parted.fresh, common);
        double[] all = Parted.variance(alone, roundings);
        return new LeastSquares(Parted.withRidge(alone, all), roundings, priors);
    }

    /** The full covariance, for the tests: what the readings say against each other. */
    LeastSquares test() {
        return parted.leastSquares(priors);
    }

    /** The same for some of them. */
    LeastSquares test(int[] chosen) {
        double[] own = Parted.withRidge(parted.fresh, Parted.variance(parted.fresh, parted.columns));
        double[] variance = new double[chosen.length];
        double[][] columns = new double[common.length][chosen.length];
        for (int i = 0; i < chosen.length; i++) {
            variance[i] = own[chosen[i]];
            for (int k = 0; k < common.length; k++) {
                columns[k][i] = common[k][chosen[i]];
            }
        }
        return new LeastSquares(variance, columns, priors);
    }

    /** The variance of what is fresh in one of them. */
    double fresh(int i) {
        return parted.fresh[i];
    }

    double variance(int i) {
        return values.get(i).variance();
    }
}
