package quoin.judge;

import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;

/** From odds and estimate to one of three verdicts. */
final class Verdicts {
    private Verdicts() {}

    static Finding decide(String clause, Estimate estimate, Bound bound, DecisionRule rule, Odds odds) {
        if (rule instanceof DecisionRule.Guarded guarded) {
            return guarded(clause, estimate, bound, guarded.probability(), odds);
        }
        return holds(estimate, bound) ? Finding.pass(clause) : Finding.fail(clause);
    }

    private static Finding guarded(String clause, Estimate estimate, Bound bound, double p, Odds odds) {
        if (odds.lower() >= p) {
            return Finding.pass(clause);
        }
        if (odds.upper() <= 1 - p) {
            return Finding.fail(clause);
        }
        if (odds.upper() >= p || odds.lower() <= 1 - p) {
            return Finding.undecided(clause, Reason.NUMERICAL);
        }
        return Finding.undecided(clause, best(estimate, bound) < p ? Reason.TOO_NARROW : Reason.DOUBT);
    }

    /** The highest odds that any value of that doubt could reach. */
    private static double best(Estimate estimate, Bound bound) {
        double half = 0.5 * (bound.atMost() - bound.atLeast());
        double least = 1;
        if (estimate instanceof Extreme extreme && extreme.kind() == Extreme.Kind.LARGEST_IN_SIZE) {
            for (Extreme.Part part : extreme.parts()) {
                least = Math.min(least, best(part.value(), half));
            }
            return least;
        }
        return best(estimate instanceof Extreme extreme ? extreme.governing().value() : (Uncertain) estimate, half);
    }

    private static double best(Uncertain value, double half) {
        double z = half / value.standardUncertainty();
        return Gauss.between(-z, z);
    }

    private static boolean holds(Estimate estimate, Bound bound) {
        if (estimate instanceof Extreme extreme && extreme.kind() == Extreme.Kind.LARGEST_IN_SIZE) {
            return extreme.parts().stream().allMatch(part -> bound.contains(part.value().value()));
        }
        return bound.contains(estimate.value());
    }
}
