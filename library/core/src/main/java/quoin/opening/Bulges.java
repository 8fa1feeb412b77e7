package quoin.opening;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Which sides may be less straight than stated: sides that, taken as free to bulge, leave a misfit that is accepted. Not safe
 * for use by many threads.
 */
final class Bulges {
    /** A side that is free to bulge: within a metre or so. */
    private static final double FREE = 1e-6;

    /** A side that is said to be straight without a tolerance, in mm. */
    private static final double STRAIGHT_MM = 1e-3;

    private final Adjustment adjustment;
    private final double within;
    private final Model model;
    private final Observations observations;
    private final double[] x;
    private final double[][] design;
    private final double[] rest;

    Bulges(Adjustment adjustment) {
        this.adjustment = adjustment;
        Survey survey = adjustment.survey();
        this.within = survey.straightWithinMm();
        this.model = Model.of(survey.outline(adjustment.plane()), true);
        Survey tolerant = new Survey(survey.readings(), Math.max(within, STRAIGHT_MM), survey.finish());
        this.observations = Observations.of(tolerant, adjustment.plane(), model);
        this.x = Hypothesis.moved(adjustment, model);
        this.design = new double[observations.size()][model.size()];
        this.rest = new double[observations.size()];
        for (int i = 0; i < rest.length; i++) {
            rest[i] = observations.read(i) - model.observe(observations.span(i), x, design[i]);
        }
    }

    List<Adjustment.Bulge> find() {
        for (int size = 1; size <= Side.values().length; size++) {
            if (oneSlipExplains(size == 1)) {
                return List.of();
            }
            List<Adjustment.Bulge> bulges = new ArrayList<>();
            for (Set<Side> sides : some(size)) {
                if (bulges.isEmpty() || size == 1) {
                    bulges.addAll(explaining(sides));
                }
            }
            if (!bulges.isEmpty()) {
                return bulges;
            }
        }
        return List.of();
    }

    /**
     * One reading without which the others are accepted.
     *
     * @param noBow whether a bow does not count: one side alone explains what a slip in it would
     */
    private boolean oneSlipExplains(boolean noBow) {
        int redundancy = adjustment.redundancy() - 1;
        double explained = redundancy > 0 ? GlobalTest.critical(redundancy) : Double.POSITIVE_INFINITY;
        List<AdjustedReading> readings = adjustment.readings();
        for (int i = 0; i < readings.size(); i++) {
            double w = readings.get(i).w();
            boolean isBow = adjustment.observations().span(i) instanceof Span.Bow;
            if (!(isBow && noBow) && adjustment.statistic() - w * w <= explained) {
                return true;
            }
        }
        return false;
    }

    private static List<Set<Side>> some(int size) {
        List<Set<Side>> some = new ArrayList<>();
        Side[] sides = Side.values();
        for (int mask = 1; mask < 1 << sides.length; mask++) {
            Set<Side> set = EnumSet.noneOf(Side.class);
            for (int k = 0; k < sides.length; k++) {
                if ((mask >> k & 1) == 1) {
                    set.add(sides[k]);
                }
            }
            if (set.size() == size) {
                some.add(set);
            }
        }
        return some;
    }

    /** Those sides where they explain the misfit, each further off than stated; else nothing. */
    private List<Adjustment.Bulge> explaining(Set<Side> sides) {
        double[] priors = observations.priors.clone();
        int redundancy = observations.size() + priors.length - model.size();
        for (int k = 0; k < priors.length; k++) {
            TouchedPoint point = model.touched().get(k);
            if (sides.contains(point.side()) && point.read()) {
                priors[k] = FREE;
                redundancy--;
            }
        }
        LeastSquares test = observations.test(priors);
        if (!test.isDetermined(design)) {
            return List.of();
        }
        double[] step = test.step(rest, x);
        double statistic = Tests.of(test, rest, x).statistic();
        if (!(redundancy <= 0 || statistic <= GlobalTest.critical(redundancy))) {
            return List.of();
        }
        List<Adjustment.Bulge> bulges = new ArrayList<>();
        for (Side side : sides) {
            int most = -1;
            for (int k = 0; k < priors.length; k++) {
                TouchedPoint point = model.touched().get(k);
                if (point.side() == side && point.read() && (most < 0 || off(k, step) > off(most, step))) {
                    most = k;
                }
            }
            if (most < 0 || off(most, step) <= within) {
                return List.of();
            }
            bulges.add(bulge(model.touched().get(most), at(most, step)));
        }
        return bulges;
    }

    private double at(int k, double[] step) {
        int offset = model.offsetIndex(model.touched().get(k));
        return x[offset] + step[offset];
    }

    private double off(int k, double[] step) {
        return Math.abs(at(k, step));
    }

    private Adjustment.Bulge bulge(TouchedPoint point, double mm) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < observations.size(); i++) {
            boolean touches =
                    Model.touchedBy(observations.span(i)).stream().anyMatch(other -> other.side() == point.side());
            if (touches && !names.contains(observations.name(i))) {
                names.add(observations.name(i));
            }
        }
        return new Adjustment.Bulge(point.side(), place(point), mm, names);
    }

    /** Along the side from where it starts; a corner check at its far end counts from there. */
    private String place(TouchedPoint point) {
        if (!point.fromEnd()) {
            return point.at().text();
        }
        double length = model.observe(new Span.Edge(point.side()), x, new double[model.size()]);
        return Math.round(length - point.at().mm()) + " mm";
    }
}
