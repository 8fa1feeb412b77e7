package quoin.opening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import quoin.measure.Instrument;

/**
 * Everything that may be read of a rectangle, and what a part of it would check: the outline by one net, depths and falls
 * by another, since no distance across the opening checks a depth. Not safe for use by many threads.
 */
final class PlanPool {
    /** One reading that may be taken. */
    record Candidate(Span span, Instrument by) {}

    /** An outline of straight sides has as many unknowns: with no more readings than this nothing is checked. */
    private static final int UNKNOWNS = 5;

    private static final int NOT_USED = -1;

    /** An instrument that states no doubt reads to a micrometre at best. */
    private static final double LEAST_VARIANCE = 1e-6;

    private final List<Candidate> candidates;
    private final double[] scale;
    private final int[] place;
    private final List<Span> outline = new ArrayList<>();
    private final Observations observations;
    private final double[][] design;
    private final Model model;
    private final double[] rectangle;
    private final DepthPool depths;

    PlanPool(List<Candidate> candidates, double widthMm, double lengthMm, double straightWithinMm) {
        this.candidates = List.copyOf(candidates);
        this.scale = new double[candidates.size()];
        this.place = new int[candidates.size()];
        List<Candidate> net = new ArrayList<>();
        List<Candidate> deep = new ArrayList<>();
        for (int i = 0; i < place.length; i++) {
            Candidate one = candidates.get(i);
            scale[i] = one.span() instanceof Span.Angle ? Math.max(widthMm, lengthMm) : 1;
            List<Candidate> into = isOfDepth(one.span()) ? deep : net;
            boolean bends = one.span() instanceof Span.Bow && Double.isNaN(straightWithinMm);
            place[i] = bends ? NOT_USED : into.size();
            if (!bends) {
                into.add(one);
            }
        }
        List<Reading> probes = new ArrayList<>();
        net.forEach(one -> probes.add(reading(one, 1)));
        this.model = Model.of(probes, straightWithinMm > 0);
        this.rectangle = model.rectangle(widthMm, lengthMm);
        this.design = new double[net.size()][model.size()];
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < design.length; i++) {
            outline.add(net.get(i).span());
            readings.add(reading(net.get(i), model.observe(net.get(i).span(), rectangle, design[i])));
        }
        this.observations = Observations.of(Survey.finished(readings, straightWithinMm), Plane.FRONT, model);
        this.depths = new DepthPool(deep, straightWithinMm);
    }

    static boolean isOfDepth(Span span) {
        return span instanceof Span.Depth || span instanceof Span.Fall;
    }

    static Reading reading(Candidate one, double value) {
        return new Reading("", one.span(), Plane.FRONT, List.of(value), one.by());
    }

    int size() {
        return candidates.size();
    }

    Span span(int i) {
        return candidates.get(i).span();
    }

    /** How many readings go into unknowns, at the least. */
    int unknowns() {
        return outline.isEmpty() ? 0 : UNKNOWNS;
    }

    /** The variance of what is fresh in a reading, in mm²: a floor of what it can be checked to. */
    double fresh(int i) {
        if (place[i] == NOT_USED) {
            return 0;
        }
        double own = isOfDepth(span(i)) ? depths.fresh(place[i]) : observations.fresh(place[i]);
        return own * scale[i] * scale[i];
    }

    /**
     * The smallest slip that each of those would show, in their order, in mm; an angle's as an offset over the longer side.
     * All infinite where they determine no outline.
     */
    double[] detectable(int[] chosen) {
        double[] detectable = new double[chosen.length];
        Arrays.fill(detectable, Double.POSITIVE_INFINITY);
        int[] net = part(chosen, false);
        if (!outline.isEmpty() && (net.length <= UNKNOWNS || !isDetermined(rows(net)))) {
            return detectable;
        }
        fill(detectable, chosen, false, ofOutline(net));
        fill(detectable, chosen, true, depths.detectable(part(chosen, true)));
        return detectable;
    }

    private void fill(double[] into, int[] chosen, boolean deep, double[] part) {
        int next = 0;
        for (int i = 0; i < chosen.length; i++) {
            if (isOfDepth(span(chosen[i])) == deep && place[chosen[i]] != NOT_USED) {
                into[i] = part[next++] * scale[chosen[i]];
            }
        }
    }

    private double[] ofOutline(int[] net) {
        double[] detectable = new double[net.length];
        Arrays.fill(detectable, Double.POSITIVE_INFINITY);
        if (net.length == 0) {
            return detectable;
        }
        LeastSquares test = observations.test(net);
        if (test.isDetermined(rows(net))) {
            double[] checks = test.checks();
            for (int i = 0; i < net.length; i++) {
                detectable[i] = smallest(checks[i], observations.variance(net[i]));
            }
        }
        return detectable;
    }

    static double smallest(double check, double variance) {
        return check * variance > Tests.LEAST_CHECK ? GlobalTest.DELTA / Math.sqrt(check) : Double.POSITIVE_INFINITY;
    }

    /** The places in one of the two nets. */
    private int[] part(int[] chosen, boolean deep) {
        return Arrays.stream(chosen)
                .filter(i -> isOfDepth(span(i)) == deep && place[i] != NOT_USED)
                .map(i -> place[i])
                .toArray();
    }

    private double[][] rows(int[] net) {
        return Arrays.stream(net).mapToObj(i -> design[i]).toArray(double[][]::new);
    }

    private boolean isDetermined(double[][] rows) {
        return Determinacy.rank(model, rows) == model.size();
    }

    /** How many ways to move the outline, and how many depths, those readings hold. */
    int rank(int[] chosen) {
        Set<Span> deep = new LinkedHashSet<>();
        for (int i : chosen) {
            if (isOfDepth(span(i))) {
                deep.add(span(i));
            }
        }
        return Determinacy.rank(model, rows(part(chosen, false))) + deep.size();
    }

    /** How many of those that tie the outline check one another, priors included. */
    int checks(int[] chosen) {
        int[] net = part(chosen, false);
        return net.length + model.touched().size() - Determinacy.rank(model, rows(net));
    }

    /** Whether those determine the outline. */
    boolean isDetermined(int[] chosen) {
        return isDetermined(rows(part(chosen, false)));
    }

    /** The variance of what a place is known to by those, all doubt taken as fresh; infinite where they leave it open. */
    double variance(int[] chosen, Span span) {
        int m = model.size();
        double[][] normal = new double[m][m];
        int first = m - observations.priors.length;
        for (int k = first; k < m; k++) {
            normal[k][k] = observations.priors[k - first];
        }
        for (int i : part(chosen, false)) {
            double weight = 1 / Math.max(observations.variance(i), LEAST_VARIANCE);
            for (int k = 0; k < m; k++) {
                for (int l = 0; l <= k; l++) {
                    normal[k][l] += weight * design[i][k] * design[i][l];
                }
            }
        }
        Cholesky root = new Cholesky(normal, 0);
        if (!isDetermined(chosen) || !root.isDefinite()) {
            return Double.POSITIVE_INFINITY;
        }
        double[] row = new double[m];
        model.observe(span, rectangle, row);
        double[] solved = row.clone();
        root.solveInPlace(solved);
        double sum = 0;
        for (int k = 0; k < m; k++) {
            sum += row[k] * solved[k];
        }
        return sum;
    }
}
