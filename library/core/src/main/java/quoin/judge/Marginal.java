package quoin.judge;

import quoin.measure.Influence;
import quoin.measure.Uncertain;

/** The odds of one value by itself: Student's t where its influences have few degrees of freedom, else normal. */
final class Marginal {
    private Marginal() {}

    /** P(value keeps the bound); 0 or 1 where there is no doubt. */
    static double odds(Uncertain value, Bound bound) {
        double u = value.standardUncertainty();
        if (u == 0) {
            return bound.contains(value.value()) ? 1 : 0;
        }
        double lo = (bound.atLeast() - value.value()) / u;
        double hi = (bound.atMost() - value.value()) / u;
        return Gauss.between(lo, hi, degreesOfFreedom(value));
    }

    /**
     * The slack that leaves a normal number of that doubt the same odds; the slack itself where there is no doubt or it
     * is normal.
     */
    static double asNormal(double slack, Uncertain value) {
        double degrees = degreesOfFreedom(value);
        double u = value.standardUncertainty();
        return degrees == Double.POSITIVE_INFINITY || u == 0 ? slack : u * Gauss.score(slack / u, degrees);
    }

    /** Whether first order sees no doubt at all where there is some: the odds may then be anything. */
    static boolean isBlind(Uncertain value) {
        return value.isFirstOrderBlind() && value.standardUncertainty() == 0;
    }

    /** The same with normal tails, whatever the degrees of freedom. */
    static double normal(Uncertain value, Bound bound) {
        double u = value.standardUncertainty();
        return Gauss.between((bound.atLeast() - value.value()) / u, (bound.atMost() - value.value()) / u);
    }

    /** The highest odds that any value of that doubt has between two limits. */
    static double best(Uncertain value, Bound bound) {
        double z = 0.5 * (bound.atMost() - bound.atLeast()) / value.standardUncertainty();
        return Gauss.between(-z, z, degreesOfFreedom(value));
    }

    /**
     * Effective degrees of freedom by Welch and Satterthwaite over the flat influences, neither rounded nor cut off.
     * Influences of a group are not independent, and the formula does not hold for them; if one of them has few degrees
     * of freedom, the least of all is taken, which the formula never undercuts.
     */
    static double degreesOfFreedom(Uncertain value) {
        double sum = 0;
        double least = Double.POSITIVE_INFINITY;
        boolean grouped = false;
        double u = value.standardUncertainty();
        for (int i = 0; i < value.influences().size(); i++) {
            Influence influence = value.influences().get(i);
            double share = value.contribution(i) / u;
            double degrees = influence.degreesOfFreedom();
            if (share != 0 && degrees != Double.POSITIVE_INFINITY) {
                sum += share * share * share * share / degrees;
                least = Math.min(least, degrees);
                grouped |= !influence.group().isEmpty();
            }
        }
        return grouped ? least : 1 / sum;
    }
}
