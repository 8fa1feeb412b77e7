package quoin.judge;

import java.util.List;
import quoin.measure.Dimension;
import quoin.measure.Estimate;
import quoin.measure.Uncertain;

/**
 * Whether a value with doubt keeps a limit: the odds, and the finding that a decision rule makes of them.
 *
 * <p>The odds are P(atLeast &le; true value &le; atMost | readings) with a flat prior, both limits together. A least or
 * a greatest is judged by all its parts together, never by the part that happens to govern. No instances.
 */
public final class Conformity {
    /** The integral never claims a smaller error than this. */
    private static final double AT_ONCE = 5e-6;

    private static final String AT_LEAST = "atLeast";
    private static final String AT_MOST = "atMost";

    private Conformity() {}

    /**
     * The probability that an estimate keeps a bound.
     *
     * <p>One value: P = &Phi;((atMost &minus; y)/u) &minus; &Phi;((atLeast &minus; y)/u), 0 or 1 where u = 0, with
     * Student's t for &Phi; where the influences have few degrees of freedom. Parts of a least or greatest have the same
     * tails each, and are correlated as normal numbers are. Where first order sees no doubt although there is some
     * ({@link Uncertain#isFirstOrderBlind()} with u = 0) the odds are bounded by 0 and 1 only. A least keeps atLeast when all its parts do, and atMost when one does; a greatest the other way round; a largest in size
     * keeps a bound when all its parts do.
     *
     * @param estimate the value with its doubt
     * @param bound the limits, in the same base unit
     * @return the odds
     */
    public static Odds odds(Estimate estimate, Bound bound) {
        if (estimate instanceof Uncertain value) {
            return one(value, bound);
        }
        return jointOdds(List.of(new Constraint(estimate, bound)));
    }

    /**
     * The probability that several estimates keep their bounds, all together.
     *
     * @param constraints the estimates and their bounds; 1 for none
     * @return the odds
     */
    public static Odds jointOdds(List<Constraint> constraints) {
        if (constraints.size() == 1 && constraints.get(0).estimate() instanceof Uncertain value) {
            return one(value, constraints.get(0).bound());
        }
        return new Region(constraints).odds();
    }

    /**
     * That probability as closely as a rule needs it for a verdict: bounds of it where they settle the verdict, else as without
     * a rule. For whoever wants verdicts of very many jobs and no odds.
     *
     * @param constraints the estimates and their bounds; 1 for none
     * @param rule the rule that the odds are for; one that does not go by odds is content with bounds
     * @return the odds
     */
    public static Odds jointOdds(List<Constraint> constraints, DecisionRule rule) {
        if (constraints.size() == 1 && constraints.get(0).estimate() instanceof Uncertain value) {
            return one(value, constraints.get(0).bound());
        }
        Region region = new Region(constraints);
        Odds bounds = region.bounded();
        boolean open = rule instanceof DecisionRule.Guarded guarded && isOpen(bounds, guarded.probability());
        return open ? region.odds() : bounds;
    }

    /** Whether odds between these bounds, or the error of an integral of them, may lie on either side of a threshold. */
    private static boolean isOpen(Odds bounds, double p) {
        double upper = bounds.upper() + AT_ONCE;
        double lower = bounds.lower() - AT_ONCE;
        return (upper >= p && lower < p) || (lower <= 1 - p && upper > 1 - p);
    }

    private static Odds one(Uncertain value, Bound bound) {
        double p = Marginal.odds(value, bound);
        return Marginal.isBlind(value) ? unknown(p) : Odds.firstOrder(p);
    }

    /** The odds where first order is blind: only that they are a probability is known. */
    static Odds unknown(double value) {
        return new Odds(value, 0, 1, Odds.Method.BOUNDS);
    }

    /**
     * The verdict alone and soon: what {@link #check} says, but for odds within a few thousandths of a threshold. Bounds of the
     * odds where they settle it, else a rough integral. For weighing what might be read, never for what is answered.
     *
     * @param estimate the value with its doubt
     * @param bound the limits, in base units
     * @param rule how sure one must be
     * @return the verdict
     */
    public static Verdict roughVerdict(Estimate estimate, Bound bound, DecisionRule rule) {
        if (!(rule instanceof DecisionRule.Guarded guarded) || estimate instanceof Uncertain) {
            return Verdicts.decide("verdict", estimate, bound, rule, odds(estimate, bound))
                    .verdict();
        }
        Region region = new Region(List.of(new Constraint(estimate, bound)));
        double p = guarded.probability();
        Odds odds = region.bounded();
        double value = isOpen(odds, p) ? region.rough().value() : odds.value();
        return value >= p ? Verdict.PASS : value <= 1 - p ? Verdict.FAIL : Verdict.UNDECIDED;
    }

    /**
     * The finding that a rule makes of an estimate and a bound, the bound without a source of its own.
     *
     * @formula verdict by the rule; margin = min(value &minus; atLeast, atMost &minus; value)
     * @unit as the figure
     * @edge the guarded rule answers undecided with {@code numerical} where the odds are within their own error of its
     *     threshold, with {@code too-narrow} where no value of that doubt could pass, else with {@code doubt}
     * @source standard: JCGM 106:2012, 7.3, 7.4, 8.3
     * @param clause the clause or check it is for
     * @param estimate the value with its doubt
     * @param dimension the kind of quantity
     * @param bound the limits, in base units
     * @param rule how sure one must be
     * @return the finding, with odds, margin and the step {@code bound}
     */
    public static Finding check(String clause, Estimate estimate, Dimension dimension, Bound bound, DecisionRule rule) {
        return check(clause, estimate, dimension, bound, rule, Source.UNSTATED);
    }

    /**
     * The finding that a rule makes of an estimate and a bound.
     *
     * <p>The margin is that against the nearer limit; for a least, a greatest or a largest in size that of the governing
     * part. The step {@code bound} has the nearer limit as {@code limit}, its {@code unit}, and both limits where there
     * are two.
     *
     * @formula verdict by the rule; margin = min(value &minus; atLeast, atMost &minus; value)
     * @unit as the figure
     * @edge the guarded rule answers undecided with {@code numerical} where the odds are within their own error of its
     *     threshold, with {@code too-narrow} where no value of that doubt could pass, else with {@code doubt}
     * @source standard: JCGM 106:2012, 7.3, 7.4, 8.3
     * @param clause the clause or check it is for
     * @param estimate the value with its doubt
     * @param dimension the kind of quantity
     * @param bound the limits, in base units
     * @param rule how sure one must be
     * @param source where the limits come from
     * @return the finding, with odds, margin and the step {@code bound}
     */
    public static Finding check(
            String clause, Estimate estimate, Dimension dimension, Bound bound, DecisionRule rule, Source source) {
        return check(clause, List.of(new Constraint(estimate, bound)), dimension, rule, source);
    }

    /**
     * The finding that a rule makes of a figure whose limits have doubts of their own: the doubt of a limit stands on the
     * estimate that is held against it.
     *
     * @formula verdict by the rule; margin = the least of value &minus; atLeast and atMost &minus; value, its u with that of the
     *     limit
     * @unit as the figure
     * @edge as for exact limits; where each limit has a doubt of its own, the more doubtful counts for {@code too-narrow}
     * @source standard: JCGM 106:2012, 7.3, 8.3; a limit with a doubt: assumption
     * @param clause the clause or check it is for
     * @param sides the figure with its limits: one constraint, or one below and one above
     * @param dimension the kind of quantity
     * @param rule how sure one must be
     * @param source where the limits come from
     * @return the finding, with odds, margin and the step {@code bound}
     */
    public static Finding check(
            String clause, List<Constraint> sides, Dimension dimension, DecisionRule rule, Source source) {
        return check(clause, sides, jointOdds(sides), dimension, rule, source);
    }

    /**
     * The finding that a rule makes of odds that were found otherwise, over several cases of the limits, say.
     *
     * @formula verdict of a guarded rule by the odds given, of any other by the sides; margin as for the sides
     * @unit as the figure
     * @edge undecided with {@code numerical} where the bounds of the odds reach over a threshold
     * @source standard: JCGM 106:2012, 7.3, 8.3
     * @param clause the clause or check it is for
     * @param sides the figure with its likeliest limits: one constraint, or one below and one above
     * @param odds the probability that the figure keeps its limits, whichever they are
     * @param dimension the kind of quantity
     * @param rule how sure one must be; a rule that does not go by odds goes by the sides
     * @param source where the limits come from
     * @return the finding, with odds, margin and the step {@code bound}
     */
    public static Finding check(
            String clause, List<Constraint> sides, Odds odds, Dimension dimension, DecisionRule rule, Source source) {
        Margin nearest = margin(sides.get(0), dimension);
        Bound both = sides.get(0).bound();
        for (Constraint side : sides.subList(1, sides.size())) {
            Margin margin = margin(side, dimension);
            nearest = margin.value() < nearest.value() ? margin : nearest;
            both = new Bound(
                    Math.max(both.atLeast(), side.bound().atLeast()),
                    Math.min(both.atMost(), side.bound().atMost()));
        }
        return Verdicts.decide(clause, sides, both, rule, odds)
                .withOdds(odds)
                .withMargin(nearest)
                .plusStep(new Step("bound", args(dimension, both, nearest.against()), source));
    }

    private static Margin margin(Constraint side, Dimension dimension) {
        return margin(Verdicts.governing(side.estimate()), dimension, side.bound());
    }

    private static Margin margin(Uncertain value, Dimension dimension, Bound bound) {
        double above = value.value() - bound.atLeast();
        double below = bound.atMost() - value.value();
        double u = value.standardUncertainty();
        return above < below ? new Margin(above, u, dimension, AT_LEAST) : new Margin(below, u, dimension, AT_MOST);
    }

    private static Args args(Dimension dimension, Bound bound, String against) {
        double limit = against.equals(AT_LEAST) ? bound.atLeast() : bound.atMost();
        Args args = Args.NONE.with("limit", dimension.toAnswer(limit), dimension.answerUnit());
        if (!bound.hasAtLeast() || !bound.hasAtMost()) {
            return args;
        }
        return args.with("atLeast", dimension.toAnswer(bound.atLeast()))
                .with("atMost", dimension.toAnswer(bound.atMost()));
    }
}
