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

    /** The variance of what no other observation has. */
    final double[] fresh;

    /** The effect on each observation of what the values of one entry share: their rounding. */
    final double[][] roundings;

    /** The effect on each observation of what the readings of an instrument share. */
    final double[][] common;

    /** The weight of the prior 0 of each offset. */
    final double[] priors;

    private Observations(Survey survey, Plane plane, List<TouchedPoint> touched) {
        Influences shared = read(survey, plane);
        int read = spans.size();
        priors = new double[read == 0 ? 0 : touched.size()];
        for (int k = 0; k < priors.length; k++) {
            Uncertain prior = prior(plane, touched.get(k), survey.straightWithinMm());
            values.add(prior);
            priors[k] = 1 / prior.variance();
        }
        align();
        fresh = new double[read];
        List<double[]> ofEntries = new ArrayList<>();
        List<double[]> ofInstruments = new ArrayList<>();
        Influences basis = read == 0 ? Influences.NONE : values.get(0).influences();
        for (int k = 0; k < basis.size(); k++) {
            double[] column = new double[read];
            if (several(k, column)) {
                (shared.indexOf(basis.get(k)) >= 0 ? ofInstruments : ofEntries).add(column);
            } else {
                for (int i = 0; i < read; i++) {
                    fresh[i] += column[i] * column[i];
                }
            }
        }
        roundings = ofEntries.toArray(double[][]::new);
        common = ofInstruments.toArray(double[][]::new);
    }

    static Observations of(Survey survey, Plane plane, Model model) {
        return new Observations(survey, plane, model.touched());
    }

    private Influences read(Survey survey, Plane plane) {
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
                values.add(value);
            }
        }
        return shared;
    }

    private static Uncertain prior(Plane plane, TouchedPoint point, double within) {
        return Uncertain.of(0, Influence.rectangular("straight/" + plane.text() + "/" + point.text(), within));
    }

    private void align() {
        Influences basis = Influences.NONE;
        for (Uncertain value : values) {
            basis = basis.union(value.influences());
        }
        for (int i = 0; i < values.size(); i++) {
            values.set(i, values.get(i).onto(basis));
        }
    }

    /** The effects of one influence; whether more than one observation feels it. */
    private boolean several(int influence, double[] column) {
        int count = 0;
        for (int i = 0; i < column.length; i++) {
            column[i] = values.get(i).contribution(influence);
            count += column[i] == 0 ? 0 : 1;
        }
        return count > 1;
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
        double[] alone = variance(fresh, common);
        double[] all = variance(alone, roundings);
        return new LeastSquares(withRidge(alone, all), roundings, priors);
    }

    /** The full covariance, for the tests: what the readings say against each other. */
    LeastSquares test() {
        double[] all = variance(variance(fresh, common), roundings);
        double[][] columns = new double[roundings.length + common.length][];
        System.arraycopy(roundings, 0, columns, 0, roundings.length);
        System.arraycopy(common, 0, columns, roundings.length, common.length);
        return new LeastSquares(withRidge(fresh, all), columns, priors);
    }

    /** The same for some of them. */
    LeastSquares test(int[] chosen) {
        double[] all = variance(variance(fresh, common), roundings);
        double[] own = withRidge(fresh, all);
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

    double variance(int i) {
        return values.get(i).variance();
    }

    private static double[] variance(double[] own, double[][] columns) {
        double[] sum = own.clone();
        for (double[] column : columns) {
            for (int i = 0; i < sum.length; i++) {
                sum[i] += column[i] * column[i];
            }
        }
        return sum;
    }

    /** Two readings by an instrument that states no doubt of its own agree to a millionth at best. */
    private static double[] withRidge(double[] own, double[] all) {
        double[] sum = own.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += 1e-8 * Math.max(all[i], 1e-4);
        }
        return sum;
    }
}
