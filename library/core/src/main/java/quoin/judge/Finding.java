package quoin.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What was found about one clause: verdict, reason, odds, margin, steps, and what would settle it.
 *
 * <p>Immutable and safe for use by many threads; {@code with…} gives a changed copy.
 */
public final class Finding {
    private final String clause;
    private final String figure;
    private final Verdict verdict;
    private final @Nullable Reason reason;
    private final @Nullable Odds odds;
    private final @Nullable Margin margin;
    private final List<Step> steps;
    private final List<Retake> retakes;
    private final List<Caution> cautions;

    private Finding(
            String clause,
            String figure,
            Verdict verdict,
            @Nullable Reason reason,
            @Nullable Odds odds,
            @Nullable Margin margin,
            List<Step> steps,
            List<Retake> retakes,
            List<Caution> cautions) {
        Args.requireId(clause, "clause");
        this.clause = clause;
        this.figure = Objects.requireNonNull(figure, "figure");
        this.verdict = Objects.requireNonNull(verdict, "verdict");
        this.reason = reason;
        this.odds = odds;
        this.margin = margin;
        this.steps = List.copyOf(steps);
        this.retakes = List.copyOf(retakes);
        this.cautions = List.copyOf(cautions);
    }

    /**
     * A finding that passes.
     *
     * @param clause the clause or check it comes from
     * @return the finding
     */
    public static Finding pass(String clause) {
        return new Finding(clause, "", Verdict.PASS, null, null, null, List.of(), List.of(), List.of());
    }

    /**
     * A finding that fails.
     *
     * @param clause the clause or check it comes from
     * @return the finding
     */
    public static Finding fail(String clause) {
        return new Finding(clause, "", Verdict.FAIL, null, null, null, List.of(), List.of(), List.of());
    }

    /**
     * A finding that decides nothing, and why.
     *
     * @param clause the clause or check it comes from
     * @param reason why it is undecided
     * @return the finding
     */
    public static Finding undecided(String clause, Reason reason) {
        return new Finding(
                clause,
                "",
                Verdict.UNDECIDED,
                Objects.requireNonNull(reason, "reason"),
                null,
                null,
                List.of(),
                List.of(),
                List.of());
    }

    /**
     * The same finding under another clause.
     *
     * @param name the clause
     * @return the changed copy
     */
    public Finding withClause(String name) {
        return new Finding(name, figure, verdict, reason, odds, margin, steps, retakes, cautions);
    }

    /**
     * The same finding about a named figure.
     *
     * @param id the figure's name
     * @return the changed copy
     */
    public Finding withFigure(String id) {
        return new Finding(clause, id, verdict, reason, odds, margin, steps, retakes, cautions);
    }

    /**
     * The same finding with its odds.
     *
     * @param value the probability that the bound holds
     * @return the changed copy
     */
    public Finding withOdds(Odds value) {
        return new Finding(clause, figure, verdict, reason, value, margin, steps, retakes, cautions);
    }

    /**
     * The same finding with its margin.
     *
     * @param value what there is to spare
     * @return the changed copy
     */
    public Finding withMargin(Margin value) {
        return new Finding(clause, figure, verdict, reason, odds, value, steps, retakes, cautions);
    }

    /**
     * The same finding with one more step at the end.
     *
     * @param step the step
     * @return the changed copy
     */
    public Finding plusStep(Step step) {
        List<Step> all = new ArrayList<>(steps);
        all.add(step);
        return new Finding(clause, figure, verdict, reason, odds, margin, all, retakes, cautions);
    }

    /**
     * The same finding with these retakes.
     *
     * @param list what to read again, best first
     * @return the changed copy
     */
    public Finding withRetakes(List<Retake> list) {
        return new Finding(clause, figure, verdict, reason, odds, margin, steps, list, cautions);
    }

    /**
     * The same finding with these cautions.
     *
     * @param list what to take care of, worst first
     * @return the changed copy
     */
    public Finding withCautions(List<Caution> list) {
        return new Finding(clause, figure, verdict, reason, odds, margin, steps, retakes, list);
    }

    /**
     * The same finding undecided for a reason; odds, margin and steps stay.
     *
     * @param why the reason
     * @return the changed copy
     */
    public Finding asUndecided(Reason why) {
        return new Finding(clause, figure, Verdict.UNDECIDED, why, odds, margin, steps, retakes, cautions);
    }

    /** {@return the clause or check it comes from} */
    public String clause() {
        return clause;
    }

    /** {@return the figure it is about; empty where there is none} */
    public String figure() {
        return figure;
    }

    /** {@return the verdict} */
    public Verdict verdict() {
        return verdict;
    }

    /** {@return why it is undecided; empty where it is decided} */
    public Optional<Reason> reason() {
        return Optional.ofNullable(reason);
    }

    /** {@return the probability that the bound holds; empty where there is none} */
    public Optional<Odds> odds() {
        return Optional.ofNullable(odds);
    }

    /** {@return what there is to spare; empty where there is none} */
    public Optional<Margin> margin() {
        return Optional.ofNullable(margin);
    }

    /** {@return how it came about} */
    public List<Step> steps() {
        return steps;
    }

    /** {@return what to read again, best first} */
    public List<Retake> retakes() {
        return retakes;
    }

    /** {@return what to take care of, worst first} */
    public List<Caution> cautions() {
        return cautions;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Finding that
                && clause.equals(that.clause)
                && figure.equals(that.figure)
                && verdict == that.verdict
                && reason == that.reason
                && Objects.equals(odds, that.odds)
                && Objects.equals(margin, that.margin)
                && steps.equals(that.steps)
                && retakes.equals(that.retakes)
                && cautions.equals(that.cautions);
    }

    @Override
    public int hashCode() {
        return Objects.hash(clause, figure, verdict, reason, odds, margin, steps, retakes, cautions);
    }

    @Override
    public String toString() {
        return clause + ": " + verdict.text() + (reason == null ? "" : " (" + reason.text() + ")");
    }
}
