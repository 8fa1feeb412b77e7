package quoin.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import quoin.judge.DecisionRule;

/**
 * A versioned set of rules: how sizes are decided and which bounds hold.
 *
 * <p>The order of its clauses does not matter. A rulebook may be built with faults in it; {@link Lint} finds them.
 * Immutable and safe for use by many threads; {@code with…} gives a changed copy.
 */
public final class Rulebook {
    private final String id;
    private final String version;
    private final String effective;
    private final String title;
    private final DecisionRule decide;
    private final FrameRule frame;
    private final List<SizeClause> sizes;
    private final List<BoundClause> bounds;
    private final SurveyRule survey;
    private final @Nullable FixingRule fixings;
    private final @Nullable List<String> siteAsks;
    private final List<Table> tables;
    private final List<String> sourceAsks;
    private final SizeOrder order;

    private Rulebook(Draft draft) {
        this.id = draft.id;
        this.version = draft.version;
        this.effective = draft.effective;
        this.title = draft.title;
        this.decide = draft.decide;
        this.frame = draft.frame;
        this.sizes = draft.sizes;
        this.bounds = List.copyOf(draft.bounds);
        this.survey = draft.survey;
        this.fixings = draft.fixings;
        this.siteAsks = draft.siteAsks == null ? null : List.copyOf(draft.siteAsks);
        this.tables = List.copyOf(draft.tables);
        this.sourceAsks = List.copyOf(draft.sourceAsks);
        this.order = draft.order;
    }

    /** What a changed copy is made from. */
    private static final class Draft {
        final String id;
        final String version;
        final String effective;
        final String title;
        final DecisionRule decide;
        FrameRule frame = FrameRule.DEFAULT;
        List<SizeClause> sizes = List.of();
        SizeOrder order = SizeOrder.NONE;
        List<BoundClause> bounds = List.of();
        SurveyRule survey = SurveyRule.NONE;

        @Nullable
        FixingRule fixings;

        @Nullable
        List<String> siteAsks;

        List<Table> tables = List.of();
        List<String> sourceAsks = List.of();

        Draft(String id, String version, String effective, String title, DecisionRule decide) {
            this.id = id;
            this.version = version;
            this.effective = effective;
            this.title = title;
            this.decide = decide;
        }

        void sizes(List<SizeClause> clauses) {
            sizes = List.copyOf(clauses);
            order = SizeOrder.of(sizes);
        }
    }

    private Rulebook changed(Consumer<Draft> change) {
        Draft draft = new Draft(id, version, effective, title, decide);
        draft.frame = frame;
        draft.sizes = sizes;
        draft.order = order;
        draft.bounds = bounds;
        draft.survey = survey;
        draft.fixings = fixings;
        draft.siteAsks = siteAsks;
        draft.tables = tables;
        draft.sourceAsks = sourceAsks;
        change.accept(draft);
        return new Rulebook(draft);
    }

    /**
     * A rulebook without clauses so far.
     *
     * @param id its name
     * @param version its version
     * @param effective the day it comes into force, such as {@code 2026-01-01}
     * @param title what people call it; may be empty
     * @param decide how sure one must be where a bound does not say
     * @return the rulebook
     */
    public static Rulebook of(String id, String version, String effective, String title, DecisionRule decide) {
        Checks.named(id, "rulebook");
        Checks.named(version, "version of rulebook " + id);
        Checks.named(effective, "effective day of rulebook " + id);
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(decide, "decide");
        return new Rulebook(new Draft(id, version, effective, title, decide));
    }

    /**
     * The same rules with another way for the frame to lie.
     *
     * @param rule how the frame lies
     * @return the changed copy
     */
    public Rulebook withFrame(FrameRule rule) {
        return changed(draft -> draft.frame = rule);
    }

    /**
     * The same rules with these sizes.
     *
     * @param clauses how the sizes are decided, in any order
     * @return the changed copy
     */
    public Rulebook withSizes(List<SizeClause> clauses) {
        return changed(draft -> draft.sizes(clauses));
    }

    /**
     * The same rules with these bounds.
     *
     * @param clauses the bounds, in any order
     * @return the changed copy
     */
    public Rulebook withBounds(List<BoundClause> clauses) {
        return changed(draft -> draft.bounds = clauses);
    }

    /**
     * The same rules with another survey.
     *
     * @param rule what a survey must hold
     * @return the changed copy
     */
    public Rulebook withSurvey(SurveyRule rule) {
        return changed(draft -> draft.survey = rule);
    }

    /**
     * The same rules with fixings.
     *
     * @param rule where the frame is fixed
     * @return the changed copy
     */
    public Rulebook withFixings(FixingRule rule) {
        return changed(draft -> draft.fixings = rule);
    }

    /**
     * The same rules asking only these facts of the site.
     *
     * @param facts the facts, as documents write them; an empty list asks none
     * @return the changed copy
     */
    public Rulebook withSiteAsks(List<String> facts) {
        return changed(draft -> draft.siteAsks = facts);
    }

    /**
     * The same rulebook with these named tables.
     *
     * @param named the tables
     * @return the changed copy
     */
    public Rulebook withTables(List<Table> named) {
        return changed(draft -> draft.tables = named);
    }

    /**
     * The same rulebook asking these dates of every source that a result rests on.
     *
     * @param dates {@code verifiedOn}, {@code reviewBy}, both, or none
     * @return the changed copy
     */
    public Rulebook withSourceAsks(List<String> dates) {
        return changed(draft -> draft.sourceAsks = dates);
    }

    /** {@return its name} */
    public String id() {
        return id;
    }

    /** {@return its version} */
    public String version() {
        return version;
    }

    /** {@return the day it comes into force} */
    public String effective() {
        return effective;
    }

    /** {@return what people call it; may be empty} */
    public String title() {
        return title;
    }

    /** {@return how sure one must be where a bound does not say} */
    public DecisionRule decide() {
        return decide;
    }

    /** {@return how the frame lies} */
    public FrameRule frame() {
        return frame;
    }

    /** {@return how the sizes are decided} */
    public List<SizeClause> sizes() {
        return sizes;
    }

    /** Which sizes can be decided, each after those it refers to. */
    SizeOrder order() {
        return order;
    }

    /** {@return the bounds} */
    public List<BoundClause> bounds() {
        return bounds;
    }

    /** {@return what a survey must hold} */
    public SurveyRule survey() {
        return survey;
    }

    /** {@return where the frame is fixed; empty for no set-out} */
    public Optional<FixingRule> fixings() {
        return Optional.ofNullable(fixings);
    }

    /** {@return the only facts of the site that are asked for; empty where all are} */
    public Optional<List<String>> siteAsks() {
        return Optional.ofNullable(siteAsks);
    }

    /** {@return every name that its clauses refer to: figures, sizes, what picks a band; each once, sizes first} */
    public Set<String> figures() {
        Set<String> names = new LinkedHashSet<>();
        sizes.forEach(clause -> names.addAll(SizeOrder.figures(clause)));
        for (BoundClause clause : bounds) {
            names.add(clause.figure());
            for (List<Quota> limits : List.of(clause.atLeast(), clause.atMost(), clause.within())) {
                for (Quota limit : limits) {
                    if (limit instanceof Quota.Banded banded) {
                        names.add(banded.by());
                    }
                }
            }
        }
        return names;
    }

    /** Every amount that it states, those of sizes first. */
    List<Quota> quotas() {
        List<Quota> all = new ArrayList<>();
        sizes.forEach(clause -> all.addAll(clause.quotas()));
        bounds.forEach(clause -> all.addAll(clause.quotas()));
        return all;
    }

    /** {@return the named tables} */
    public List<Table> tables() {
        return tables;
    }

    /** {@return the dates that every source must have for a result without a mark: {@code verifiedOn}, {@code reviewBy}} */
    public List<String> sourceAsks() {
        return sourceAsks;
    }

    /** {@return every field in a fixed order, clauses sorted by id: the text that the digest is of} */
    public String canonicalText() {
        return RulebookText.of(this).toString();
    }

    /** {@return {@code sha256:} and the SHA-256 of {@link #canonicalText()}, lower-case hexadecimal} */
    public String digest() {
        return RulebookText.of(this).digest();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Rulebook that
                && id.equals(that.id)
                && version.equals(that.version)
                && effective.equals(that.effective)
                && title.equals(that.title)
                && decide.equals(that.decide)
                && frame.equals(that.frame)
                && sizes.equals(that.sizes)
                && bounds.equals(that.bounds)
                && survey.equals(that.survey)
                && Objects.equals(fixings, that.fixings)
                && Objects.equals(siteAsks, that.siteAsks)
                && tables.equals(that.tables)
                && sourceAsks.equals(that.sourceAsks);
    }

    @Override
    public int hashCode() {
        return Objects.hash(id, version, sizes, bounds);
    }

    @Override
    public String toString() {
        return id + " " + version;
    }
}
