package quoin.judge;

import java.util.List;
import java.util.function.Predicate;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;

/** From odds and estimate to one of three verdicts. */
final class Verdicts {
    private Verdicts() {}

    static Finding decide(String clause, Estimate estimate, Bound bound, DecisionRule rule, Odds odds) {
        return decide(clause, List.of(new Constraint(estimate, bound)), bound, rule, odds);
    }

    /** By all sides together; both limits at once are those of {@code both}. */
    static Finding decide(String clause, List<Constraint> sides, Bound both, DecisionRule rule, Odds odds) {
        Uncertain widest = widest(sides.get(0).estimate());
        for (Constraint side : sides) {
            Uncertain other = widest(side.estimate());
            widest = other.standardUncertainty() > widest.standardUncertainty() ? other : widest;
        }
        if (rule instanceof DecisionRule.Guarded guarded) {
            return guarded(clause, widest, both, guarded.probability(), odds);
        }
        return banded(clause, sides, widest, both, rule);
    }

    /** Inside the drawn-in limits passes, outside the let-out limits fails; without a band one of them is true. */
    private static Finding banded(
            String clause, List<Constraint> sides, Uncertain widest, Bound bound, DecisionRule rule) {
        if (sides.stream().allMatch(side -> holds(side.estimate(), side.bound(), rule, 1))) {
            return Finding.pass(clause);
        }
        if (!sides.stream().allMatch(side -> holds(side.estimate(), side.bound(), rule, -1))) {
            return Finding.fail(clause);
        }
        double band = band(widest, rule);
        return Finding.undecided(
                clause, 2 * band > bound.atMost() - bound.atLeast() ? Reason.TOO_NARROW : Reason.DOUBT);
    }

    private static Finding guarded(String clause, Uncertain widest, Bound bound, double p, Odds odds) {
        if (odds.lower() >= p) {
            return Finding.pass(clause);
        }
        if (odds.upper() <= 1 - p) {
            return Finding.fail(clause);
        }
        if (odds.upper() >= p || odds.lower() <= 1 - p) {
            return Finding.undecided(clause, Reason.NUMERICAL);
        }
        return Finding.undecided(clause, Marginal.best(widest, bound) < p ? Reason.TOO_NARROW : Reason.DOUBT);
    }

    /** The value that a two-sided limit must leave room for: the most doubtful part where all must be inside. */
    private static Uncertain widest(Estimate estimate) {
        Uncertain widest = governing(estimate);
        if (is(estimate, Extreme.Kind.LARGEST_IN_SIZE)) {
            for (Uncertain part : parts(estimate)) {
                widest = part.standardUncertainty() > widest.standardUncertainty() ? part : widest;
            }
        }
        return widest;
    }

    /** The value, or the part that governs. */
    static Uncertain governing(Estimate estimate) {
        return estimate instanceof Extreme extreme ? extreme.governing().value() : (Uncertain) estimate;
    }

    /** Whether the limits hold when each is drawn in by side times the guard band. */
    private static boolean holds(Estimate estimate, Bound bound, DecisionRule rule, int side) {
        List<Uncertain> parts = parts(estimate);
        Predicate<Uncertain> high = part -> part.value() >= bound.atLeast() + side * band(part, rule);
        Predicate<Uncertain> low = part -> part.value() <= bound.atMost() - side * band(part, rule);
        return (is(estimate, Extreme.Kind.GREATEST)
                        ? parts.stream().anyMatch(high)
                        : parts.stream().allMatch(high))
                && (is(estimate, Extreme.Kind.LEAST)
                        ? parts.stream().anyMatch(low)
                        : parts.stream().allMatch(low));
    }

    private static double band(Uncertain part, DecisionRule rule) {
        return Zones.band(rule, part.standardUncertainty());
    }

    private static boolean is(Estimate estimate, Extreme.Kind kind) {
        return estimate instanceof Extreme extreme && extreme.kind() == kind;
    }

    private static List<Uncertain> parts(Estimate estimate) {
        return estimate instanceof Extreme extreme
                ? extreme.parts().stream().map(Extreme.Part::value).toList()
                : List.of((Uncertain) estimate);
    }
}
