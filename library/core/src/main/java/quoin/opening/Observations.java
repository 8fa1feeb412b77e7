package quoin.opening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import quoin.measure.Influence;
import quoin.measure.Influences;
import quoin.measure.Instrument;
import quoin.measure.Uncertain;

/**
 * The observations of one plane in plain numbers, their doubt taken apart: what is fresh in each, what the values of one
 * entry share, what all readings of an instrument share. Immutable and safe for use by many threads.
 */
final class Observations {
    private static final double[][] NONE = {};

    private final Survey survey;
    private final Plane plane;
    private final List<TouchedPoint> touched;
    private final Reading[] readings;
    private final int[] entries;
    private final double[] read;
    private final double[] fresh;

    /** The effect on each observation of what the values of one entry share: their rounding. */
    private final double[][] roundings;

    /** The effect on each observation of what the readings of an instrument share. */
    private final double[][] common;

    /** The weight of the prior 0 of each offset. */
    final double[] priors;

    private Observations(Survey survey, Plane plane, List<TouchedPoint> touched) {
        this.survey = survey;
        this.plane = plane;
        this.touched = touched;
        List<Reading> entered = survey.readings();
        int n = 0;
        for (int entry = 0; entry < entered.size(); entry++) {
            n += count(entered.get(entry));
        }
        readings = new Reading[n];
        entries = new int[n];
        read = new double[n];
        fresh = new double[n];
        List<double[]> ofEntries = List.of();
        int at = 0;
        for (int entry = 0; entry < entered.size(); entry++) {
            Reading reading = entered.get(entry);
            int count = count(reading);
            take(reading, entry, at, count);
            if (count > 1 && reading.by().roundsAlike(reading.values())) {
                ofEntries = ofEntries.isEmpty() ? new ArrayList<>() : ofEntries;
                ofEntries.add(rounding(reading, at, count));
            }
            at += count;
        }
        roundings = ofEntries.isEmpty() ? NONE : ofEntries.toArray(double[][]::new);
        common = common(shared());
        priors = new double[n == 0 ? 0 : touched.size()];
        for (int k = 0; k < priors.length; k++) {
            priors[k] = 3 / (survey.straightWithinMm() * survey.straightWithinMm());
        }
    }

    private void take(Reading reading, int entry, int at, int count) {
        for (int k = 0; k < count; k++) {
            double value = reading.values().get(k);
            readings[at + k] = reading;
            entries[at + k] = entry;
            read[at + k] = value;
            fresh[at + k] = reading.by().eachVariance(value) + reading.by().roundingVariance();
        }
    }

    /** The effect of a rounding that all values of an entry share; it is then not fresh in each. */
    private double[] rounding(Reading reading, int at, int count) {
        double[] column = new double[read.length];
        double rounding = reading.by().roundingVariance();
        for (int i = at; i < at + count; i++) {
            column[i] = Math.sqrt(rounding);
            fresh[i] = reading.by().eachVariance(read[i]);
        }
        return column;
    }

    private Influences shared() {
        Influences shared = Influences.NONE;
        for (Reading reading : readings) {
            shared = shared.union(reading.by().shared());
        }
        return shared;
    }

    static Observations of(Survey survey, Plane plane, Model model) {
        return new Observations(survey, plane, model.touched());
    }

    /** How many values count. A bow where nobody said how straight the sides are is left out. */
    private int count(Reading reading) {
        boolean bends = reading.of() instanceof Span.Bow && Double.isNaN(survey.straightWithinMm());
        return !bends && Survey.tiesOutline(reading, plane) ? reading.values().size() : 0;
    }

    /** What several readings feel; what only one feels is fresh in it. */
    private double[][] common(Influences shared) {
        if (shared.size() == 0) {
            return NONE;
        }
        double[][] columns = new double[shared.size()][read.length];
        for (int i = 0; i < read.length; i++) {
            Instrument by = readings[i].by();
            double[] effects = by.sharedEffects(read[i]);
            for (int k = 0; k < effects.length; k++) {
                columns[shared.indexOf(by.shared().get(k))][i] = effects[k];
            }
        }
        List<double[]> several = new ArrayList<>();
        for (double[] column : columns) {
            int count = 0;
            for (double effect : column) {
                count += effect == 0 ? 0 : 1;
            }
            if (count > 1) {
                several.add(column);
            } else {
                Parted.addSquares(fresh, column);
            }
        }
        return several.toArray(double[][]::new);
    }

    int size() {
        return read.length;
    }

    double read(int i) {
        return read[i];
    }

    Span span(int i) {
        return readings[i].of();
    }

    /** The entry of the survey that it belongs to. */
    int entry(int i) {
        return entries[i];
    }

    /** The entry itself. */
    Reading reading(int i) {
        return readings[i];
    }

    /** What it is of, as documents write it. */
    String text(int i) {
        return readings[i].of().text();
    }

    /** Its own name, or what it is of. */
    String name(int i) {
        return readings[i].id().isEmpty() ? text(i) : readings[i].id();
    }

    /** What was read, then the prior of each offset, all on one list of influences. */
    List<Uncertain> values() {
        List<Uncertain> unaligned = new ArrayList<>();
        for (int i = 0; i < entries.length; i++) {
            if (i == 0 || entries[i] != entries[i - 1]) {
                unaligned.addAll(survey.observed(entries[i]));
            }
        }
        for (int k = 0; k < priors.length; k++) {
            String id = "straight/" + plane.text() + "/" + touched.get(k).text();
            unaligned.add(Uncertain.of(0, Influence.rectangular(id, survey.straightWithinMm())));
        }
        return Parted.aligned(unaligned);
    }

    /**
     * The weights of the estimate: what an instrument shares between readings counts as if it were fresh, so that no
     * reading teaches the scale it was read on.
     */
    LeastSquares estimate() {
        double[] alone = common.length == 0 ? fresh : Parted.variance(fresh, common);
        double[] all = roundings.length == 0 ? alone : Parted.variance(alone, roundings);
        return new LeastSquares(Parted.withRidge(alone, all), roundings, priors);
    }

    /** Whether those weights are those of the full covariance, since no readings share anything. */
    boolean sharesNothing() {
        return common.length == 0;
    }

    /** The full covariance, for the tests: what the readings say against each other. */
    LeastSquares test() {
        return test(priors);
    }

    /** The same with other weights of the priors. */
    LeastSquares test(double[] otherPriors) {
        double[][] columns = columns();
        double[] all = Parted.variance(fresh, columns);
        return new LeastSquares(Parted.withRidge(fresh, all), columns, otherPriors);
    }

    private double[][] columns() {
        double[][] columns = Arrays.copyOf(common, common.length + roundings.length);
        System.arraycopy(roundings, 0, columns, common.length, roundings.length);
        return columns;
    }

    /** The same for some of them. */
    LeastSquares test(int[] chosen) {
        double[] own = Parted.withRidge(fresh, Parted.variance(fresh, columns()));
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

    /** The covariance of the first unknowns: what is shared counts with its true sensitivity, not as if it were fresh. */
    double[][] covariance(LeastSquares estimate, int unknowns) {
        double[][] covariance = estimate.inverse();
        if (estimate.width() > unknowns) {
            covariance = front(covariance, unknowns);
        }
        if (common.length > 0) {
            double[][] together = new double[common.length][unknowns];
            for (int i = 0; i < read.length; i++) {
                double[] gain = estimate.gain(i);
                for (int c = 0; c < common.length; c++) {
                    double effect = common[c][i];
                    for (int k = 0; k < unknowns; k++) {
                        together[c][k] += effect * gain[k];
                    }
                    addSquare(covariance, gain, -effect * effect);
                }
            }
            for (double[] column : together) {
                addSquare(covariance, column, 1);
            }
        }
        return covariance;
    }

    private static double[][] front(double[][] matrix, int unknowns) {
        double[][] front = new double[unknowns][];
        for (int k = 0; k < unknowns; k++) {
            front[k] = Arrays.copyOf(matrix[k], unknowns);
        }
        return front;
    }

    private static void addSquare(double[][] matrix, double[] row, double times) {
        for (int k = 0; k < matrix.length; k++) {
            for (int l = 0; l < matrix.length; l++) {
                matrix[k][l] += times * row[k] * row[l];
            }
        }
    }

    /** The variance of what is fresh in one of them. */
    double fresh(int i) {
        return fresh[i];
    }

    /** The variance of one of them. */
    double variance(int i) {
        return common.length + roundings.length == 0 ? fresh[i] : fresh[i] + sharedVariance(i);
    }

    private double sharedVariance(int i) {
        double sum = 0;
        for (double[] column : common) {
            sum += column[i] * column[i];
        }
        for (double[] column : roundings) {
            sum += column[i] * column[i];
        }
        return sum;
    }
}
