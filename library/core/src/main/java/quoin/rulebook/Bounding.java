package quoin.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import quoin.judge.Args;
import quoin.judge.Bound;
import quoin.judge.Step;

/** The limits of a bound for one job. */
final class Bounding {
    private final BoundClause clause;
    private final Picking picking;
    private final List<Step> steps = new ArrayList<>();

    private Bounding(BoundClause clause, Picking picking) {
        this.clause = clause;
        this.picking = picking;
    }

    static Limits limits(BoundClause clause, FigureSource figures, Map<String, String> choices) {
        return new Bounding(clause, new Picking(figures, choices)).limits();
    }

    private Limits limits() {
        List<Double> values = new ArrayList<>();
        for (List<Quota> side : List.of(clause.atLeast(), clause.atMost(), clause.within())) {
            if (side.isEmpty()) {
                values.add(Double.NaN);
                continue;
            }
            Outcome outcome = picking.pick(side.get(0));
            if (outcome instanceof Outcome.Lost lost) {
                return notStated(lost);
            }
            Outcome.Found found = (Outcome.Found) outcome;
            steps.addAll(found.steps());
            values.add(found.amount().value());
        }
        return bound(values.get(0), values.get(1), values.get(2));
    }

    private Limits bound(double atLeast, double atMost, double within) {
        double least = Double.isNaN(atLeast) ? Double.NEGATIVE_INFINITY : atLeast;
        double most = Double.isNaN(atMost) ? Double.POSITIVE_INFINITY : atMost;
        if (!Double.isNaN(within)) {
            least = StrictMath.max(least, -within);
            most = StrictMath.min(most, within);
        }
        if (Double.isInfinite(least) && Double.isInfinite(most)) {
            return notStated(cannot("no-limit"));
        }
        return least <= most ? new Limits.Stated(new Bound(least, most), steps) : notStated(cannot("limits-cross"));
    }

    private Outcome.Lost cannot(String code) {
        return Picking.lost(Outcome.Cause.NOT_VERIFIED, code, Args.of("figure", clause.figure()));
    }

    private Limits notStated(Outcome.Lost lost) {
        return new Limits.NotStated(lost.ofBound(clause.id()).withFigure(clause.figure()));
    }
}
