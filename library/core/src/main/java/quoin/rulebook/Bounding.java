package quoin.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import quoin.judge.Args;
import quoin.judge.Bound;
import quoin.judge.Constraint;
import quoin.judge.Source;
import quoin.judge.Step;
import quoin.measure.Uncertain;

/** The limits of a bound for one job. */
final class Bounding {
    private static final List<String> NAMES = List.of("atLeast", "atMost", "within");

    private final BoundClause clause;
    private final List<List<Quota>> sides;
    private final Picking picking;

    private Bounding(BoundClause clause, Picking picking) {
        this.clause = clause;
        this.sides = List.of(clause.atLeast(), clause.atMost(), clause.within());
        this.picking = picking;
    }

    static Limits limits(BoundClause clause, FigureSource figures, Map<String, String> choices) {
        return new Bounding(clause, new Picking(figures, choices)).limits();
    }

    private String place(int side) {
        return clause.id() + "." + NAMES.get(side);
    }

    private Limits limits() {
        List<Outcome> picked = new ArrayList<>();
        List<Step> odds = new ArrayList<>();
        List<List<Picking.Case>> open = new ArrayList<>();
        boolean isOpen = false;
        for (int side = 0; side < sides.size(); side++) {
            List<Picking.Case> cases = List.of();
            if (!sides.get(side).isEmpty()) {
                Quota quota = sides.get(side).get(0);
                picked.add(picking.pick(quota, place(side)));
                cases = picking.cases(quota, place(side));
                odds.addAll(Picking.oddsOf(quota, cases));
                isOpen |= !cases.isEmpty();
            } else {
                picked.add(NOTHING);
            }
            open.add(cases);
        }
        return limits(picked, isOpen ? cases(picked, open) : List.of(), odds);
    }

    /** A side that the clause does not have. */
    private static final Outcome NOTHING = Picking.lost(Outcome.Cause.NOT_VERIFIED, "no-limit", Args.NONE);

    /** Every combination of what the sides may be. */
    private List<Limits.Case> cases(List<Outcome> picked, List<List<Picking.Case>> open) {
        List<Limits.Case> all = new ArrayList<>();
        List<Picking.Case> none = List.of(new Picking.Case(List.of(), 1, NOTHING));
        for (Picking.Case a : open.get(0).isEmpty() ? none : open.get(0)) {
            for (Picking.Case b : open.get(1).isEmpty() ? none : open.get(1)) {
                for (Picking.Case c : open.get(2).isEmpty() ? none : open.get(2)) {
                    List<Constraint> when = new ArrayList<>(a.when());
                    when.addAll(b.when());
                    when.addAll(c.when());
                    List<Outcome> outcomes = List.of(
                            open.get(0).isEmpty() ? picked.get(0) : a.outcome(),
                            open.get(1).isEmpty() ? picked.get(1) : b.outcome(),
                            open.get(2).isEmpty() ? picked.get(2) : c.outcome());
                    all.add(new Limits.Case(when, limits(outcomes, List.of(), List.of())));
                }
            }
        }
        return all;
    }

    private Limits limits(List<Outcome> outcomes, List<Limits.Case> cases, List<Step> odds) {
        double[] values = {Double.NaN, Double.NaN, Double.NaN};
        List<Uncertain> deviations = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        Source source = Source.UNSTATED;
        for (int side = 0; side < values.length; side++) {
            Outcome outcome = outcomes.get(side);
            Uncertain deviation = Outcome.NO_DEVIATION;
            if (!sides.get(side).isEmpty()) {
                if (outcome instanceof Outcome.Lost lost) {
                    return lost(lost, odds);
                }
                Outcome.Found found = (Outcome.Found) outcome;
                steps.addAll(found.steps());
                values[side] = found.amount().value();
                deviation = found.deviation();
                source = source.isStated() ? source : found.source();
                if (!deviation.isExact()) {
                    steps.add(doubt(NAMES.get(side), found));
                }
            }
            deviations.add(deviation);
        }
        steps.addAll(odds);
        return bound(values, deviations, cases, steps, source);
    }

    private Limits lost(Outcome.Lost lost, List<Step> odds) {
        return notStated(new Outcome.Lost(lost.cause(), lost.why(), lost.open(), odds));
    }

    private static Step doubt(String side, Outcome.Found found) {
        double u = found.amount().dimension().widthToAnswer(found.deviation().standardUncertainty());
        Args args = Args.of("side", side).with("u", u);
        return new Step(
                "limit-doubt", args.with("unit", found.amount().dimension().answerUnit()), found.source());
    }

    private Limits bound(
            double[] values, List<Uncertain> deviations, List<Limits.Case> cases, List<Step> steps, Source source) {
        double least = Double.isNaN(values[0]) ? Double.NEGATIVE_INFINITY : values[0];
        double most = Double.isNaN(values[1]) ? Double.POSITIVE_INFINITY : values[1];
        Uncertain leastBy = deviations.get(0);
        Uncertain mostBy = deviations.get(1);
        if (!Double.isNaN(values[2])) {
            if (-values[2] > least) {
                least = -values[2];
                leastBy = deviations.get(2).negated();
            }
            if (values[2] < most) {
                most = values[2];
                mostBy = deviations.get(2);
            }
        }
        if (Double.isInfinite(least) && Double.isInfinite(most)) {
            return notStated(cannot("no-limit"));
        }
        return least <= most
                ? new Limits.Stated(new Bound(least, most), leastBy, mostBy, cases, steps, source)
                : notStated(cannot("limits-cross"));
    }

    private Outcome.Lost cannot(String code) {
        return Picking.lost(Outcome.Cause.NOT_VERIFIED, code, Args.of("figure", clause.figure()));
    }

    private Limits notStated(Outcome.Lost lost) {
        return new Limits.NotStated(lost.ofBound(clause.id()).withFigure(clause.figure()));
    }
}
