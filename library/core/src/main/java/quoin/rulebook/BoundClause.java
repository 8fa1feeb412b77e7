package quoin.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import quoin.judge.DecisionRule;
import quoin.judge.Source;

/**
 * A bound on a figure or on a size.
 *
 * <p>It has {@code atLeast}, {@code atMost}, both, or {@code within} alone; {@link Lint} says where that is not so.
 * Immutable and safe for use by many threads.
 *
 * @clause bound
 * @formula atLeast &le; figure &le; atMost; within t means &minus;t &le; figure &le; t
 * @unit that of the figure: mm for a length
 * @edge both limits belong to the bound; a limit by bands or by choice that is not stated for this job leaves the
 *     finding undecided, never passed
 * @source standard: JCGM 106:2012, 7.4 (a tolerance interval includes its limits)
 * @param id the clause's name
 * @param figure the figure, or a size of the rulebook
 * @param atLeast the least value that conforms; none or one
 * @param atMost the greatest value that conforms; none or one
 * @param within how far from zero, either way; none or one
 * @param decide how sure one must be; none for the rulebook's own rule, or one
 * @param because why the clause is there
 * @param source where it comes from
 */
public record BoundClause(
        String id,
        String figure,
        List<Quota> atLeast,
        List<Quota> atMost,
        List<Quota> within,
        List<DecisionRule> decide,
        String because,
        Source source) {
    /** Refuses an empty name and more than one of a limit; copies the lists. */
    public BoundClause {
        Checks.named(id, "bound");
        Checks.named(figure, "figure");
        Checks.atMostOne(atLeast.size(), "atLeast");
        Checks.atMostOne(atMost.size(), "atMost");
        Checks.atMostOne(within.size(), "within");
        Checks.atMostOne(decide.size(), "decide");
        atLeast = List.copyOf(atLeast);
        atMost = List.copyOf(atMost);
        within = List.copyOf(within);
        decide = List.copyOf(decide);
        Objects.requireNonNull(because, "because");
        Objects.requireNonNull(source, "source");
    }

    /**
     * A bound without a limit so far.
     *
     * @param id the clause's name
     * @param figure the figure, or a size of the rulebook
     * @return the clause
     */
    public static BoundClause of(String id, String figure) {
        return new BoundClause(id, figure, List.of(), List.of(), List.of(), List.of(), "", Source.UNSTATED);
    }

    /**
     * The same bound, not below this.
     *
     * @param limit the least value that conforms
     * @return the changed copy
     */
    public BoundClause withAtLeast(Quota limit) {
        return new BoundClause(id, figure, List.of(limit), atMost, within, decide, because, source);
    }

    /**
     * The same bound, not above this.
     *
     * @param limit the greatest value that conforms
     * @return the changed copy
     */
    public BoundClause withAtMost(Quota limit) {
        return new BoundClause(id, figure, atLeast, List.of(limit), within, decide, because, source);
    }

    /**
     * The same bound, no further than this from zero.
     *
     * @param limit how far, either way
     * @return the changed copy
     */
    public BoundClause withWithin(Quota limit) {
        return new BoundClause(id, figure, atLeast, atMost, List.of(limit), decide, because, source);
    }

    /**
     * The same bound decided by a rule of its own.
     *
     * @param rule how sure one must be
     * @return the changed copy
     */
    public BoundClause withDecide(DecisionRule rule) {
        return new BoundClause(id, figure, atLeast, atMost, within, List.of(rule), because, source);
    }

    /**
     * The same bound with its reason and source.
     *
     * @param why why the clause is there
     * @param from where it comes from
     * @return the changed copy
     */
    public BoundClause withBecause(String why, Source from) {
        return new BoundClause(id, figure, atLeast, atMost, within, decide, why, from);
    }

    /**
     * How sure one must be here.
     *
     * @param rulebook the rulebook's own rule
     * @return this clause's rule, or the rulebook's where it has none
     */
    public DecisionRule decideOr(DecisionRule rulebook) {
        return decide.isEmpty() ? rulebook : decide.get(0);
    }

    /**
     * The limits for one job.
     *
     * @param figures the job's sizes and survey figures, which pick the bands
     * @param choices the chosen part by kind
     * @return the bound, or the finding that says why there is none
     */
    public Limits bound(FigureSource figures, Map<String, String> choices) {
        return Bounding.limits(this, figures, choices);
    }

    /** The amounts that it states. */
    List<Quota> quotas() {
        List<Quota> all = new ArrayList<>(2);
        all.addAll(atLeast);
        all.addAll(atMost);
        all.addAll(within);
        return all;
    }
}
