package quoin.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import quoin.measure.Dimension;

/** The values of this package: what they refuse, what they copy, what equals what. */
class ValuesTest {
    private static void refused(ThrowingCallable call, String message) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessage(message);
    }

    @Test
    void bounds() {
        Bound least = Bound.atLeast(-0.0);
        assertThat(Double.doubleToRawLongBits(least.atLeast())).isZero();
        assertThat(least.hasAtLeast()).isTrue();
        assertThat(least.hasAtMost()).isFalse();
        assertThat(Bound.atMost(2).hasAtLeast()).isFalse();
        assertThat(Bound.within(2)).isEqualTo(Bound.between(-2, 2));
        assertThat(Bound.within(2).contains(2)).isTrue();
        assertThat(Bound.within(2).contains(-2.0000001)).isFalse();
        assertThat(Bound.within(2).contains(Double.NaN)).isFalse();
    }

    @Test
    void boundsThatMakeNoSense() {
        refused(() -> Bound.between(3, 2), "atLeast must not exceed atMost, got 3.0 and 2.0");
        refused(() -> Bound.within(-1), "within must be 0 or more, got -1.0");
        refused(() -> Bound.within(Double.NaN), "within must be 0 or more, got NaN");
        refused(
                () -> Bound.between(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY),
                "bound must have atLeast or atMost, got neither");
        assertThatThrownBy(() -> Bound.atMost(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Bound.atLeast(Double.POSITIVE_INFINITY)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Bound.atMost(Double.NEGATIVE_INFINITY)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void rules() {
        assertThat(DecisionRule.guarded(0.95)).isEqualTo(new DecisionRule.Guarded(0.95));
        assertThat(DecisionRule.simple()).isEqualTo(new DecisionRule.Simple());
        assertThat(DecisionRule.guardBand(0)).isEqualTo(new DecisionRule.GuardBand(0));
        assertThat(DecisionRule.guardFactor(0.83, 2)).isEqualTo(new DecisionRule.GuardFactor(0.83, 2));
        refused(() -> DecisionRule.guarded(0.5), "probability must be above 0.5 and below 1, got 0.5");
        refused(() -> DecisionRule.guarded(1), "probability must be above 0.5 and below 1, got 1.0");
        refused(() -> DecisionRule.guardBand(-1), "width must be 0 or more and finite, got -1.0");
        refused(() -> DecisionRule.guardFactor(-1, 2), "factor must be 0 or more and finite, got -1.0");
        refused(() -> DecisionRule.guardFactor(1, 0), "coverageFactor must be above 0 and finite, got 0.0");
    }

    @Test
    void oddsKeepTheirOrder() {
        assertThat(Odds.firstOrder(0.3)).isEqualTo(new Odds(0.3, 0.3, 0.3, Odds.Method.FIRST_ORDER));
        assertThat(Odds.Method.FIRST_ORDER.text()).isEqualTo("first-order");
        assertThat(Odds.Method.LATTICE.text()).isEqualTo("lattice");
        refused(
                () -> new Odds(0.5, 0.6, 0.7, Odds.Method.BOUNDS),
                "odds must be 0 <= lower <= value <= upper <= 1, got 0.6, 0.5, 0.7");
        assertThatThrownBy(() -> new Odds(0.5, 0.5, Double.NaN, Odds.Method.BOUNDS))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Odds(0.5, -0.1, 0.6, Odds.Method.BOUNDS))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Odds(0.5, 0.5, 1.1, Odds.Method.BOUNDS))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void verdictsFromBestToWorst() {
        assertThat(Verdict.PASS.worse(Verdict.UNDECIDED)).isEqualTo(Verdict.UNDECIDED);
        assertThat(Verdict.FAIL.worse(Verdict.UNDECIDED)).isEqualTo(Verdict.FAIL);
        assertThat(Verdict.PASS.worse(Verdict.PASS)).isEqualTo(Verdict.PASS);
        assertThat(Verdict.UNDECIDED.text()).isEqualTo("undecided");
        assertThat(Reason.TOO_NARROW.text()).isEqualTo("too-narrow");
        assertThat(Stage.valueOf("ORDER")).isEqualTo(Stage.ORDER);
    }

    @Test
    void argumentsKeepTheirOrder() {
        List<String> names = new ArrayList<>(List.of("a", "b"));
        Args args = Args.of("text", "x").with("number", -0.0).with("names", names);
        names.clear();
        assertThat(args.asMap().keySet()).containsExactly("text", "number", "names");
        assertThat(args.get("names")).contains(List.of("a", "b"));
        assertThat(args.get("number")).contains(0.0);
        assertThat(args.get("other")).isEmpty();
        assertThat(args)
                .isEqualTo(Args.of("text", "x").with("number", 0).with("names", List.of("a", "b")))
                .hasSameHashCodeAs(Args.of("text", "x").with("number", 0).with("names", List.of("a", "b")))
                .isNotEqualTo(Args.NONE)
                .isNotEqualTo("text");
        assertThat(Args.of("number", 1.0)).hasToString("{number=1.0}");
        assertThat(Args.of("names", List.of("a")).asMap()).hasSize(1);
        refused(() -> Args.of("number", Double.NaN), "number must be a finite number, got NaN");
    }

    @Test
    void figuresAndCatalogues() {
        Figure width = Figure.survey("opening.width", Dimension.LENGTH, "w", Source.PRACTICE, "width@head");
        Figure gap = Figure.order("gap.least", Dimension.LENGTH, "g", Source.UNSTATED, "opening.width");
        assertThat(width.stage()).isEqualTo(Stage.SURVEY);
        assertThat(gap.needs()).containsExactly("opening.width");
        Catalogue both = Catalogue.of(List.of(width)).union(Catalogue.of(List.of(gap, width)));
        assertThat(both.figures()).containsExactly(width, gap);
        assertThat(both.find("gap.least")).contains(gap);
        assertThat(both.find("gap.most")).isEmpty();
        assertThat(both)
                .isEqualTo(Catalogue.of(List.of(width, gap)))
                .hasSameHashCodeAs(Catalogue.of(List.of(width, gap)))
                .isNotEqualTo(Catalogue.EMPTY)
                .isNotEqualTo("both")
                .hasToString("[opening.width, gap.least]");
        Figure other = Figure.survey("gap.least", Dimension.ANGLE, "g", Source.UNSTATED);
        refused(
                () -> both.union(Catalogue.of(List.of(other))),
                "figure gap.least must be defined once, got two definitions");
        refused(
                () -> Figure.survey("", Dimension.LENGTH, "w", Source.PRACTICE),
                "figure must have a name, got an empty text");
    }

    @Test
    void findings() {
        Step step = Step.of("bound", Args.of("limit", 6.0));
        Margin margin = new Margin(3, 0.9, Dimension.LENGTH, "atMost");
        Retake retake = new Retake(List.of("width@head"), "tape", 2, 0.4, 0.81);
        Caution caution = Caution.of("stored-energy", Caution.Severity.WARN);
        Finding finding = Finding.pass("clause")
                .withFigure("gap.least")
                .withOdds(Odds.firstOrder(0.97))
                .withMargin(margin)
                .plusStep(step)
                .withRetakes(List.of(retake))
                .withCautions(List.of(caution));
        assertThat(finding.clause()).isEqualTo("clause");
        assertThat(finding.figure()).isEqualTo("gap.least");
        assertThat(finding.verdict()).isEqualTo(Verdict.PASS);
        assertThat(finding.reason()).isEmpty();
        assertThat(finding.odds()).contains(Odds.firstOrder(0.97));
        assertThat(finding.margin()).contains(margin);
        assertThat(finding.steps()).containsExactly(step);
        assertThat(finding.retakes()).containsExactly(retake);
        assertThat(finding.cautions()).containsExactly(caution);
        assertThat(finding).hasToString("clause: pass");
        Finding undecided = finding.asUndecided(Reason.READINGS_DISAGREE);
        assertThat(undecided.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(undecided.reason()).contains(Reason.READINGS_DISAGREE);
        assertThat(undecided.odds()).isPresent();
        assertThat(undecided)
                .hasToString("clause: undecided (readings-disagree)")
                .isNotEqualTo(finding);
        assertThat(finding.withClause("other").clause()).isEqualTo("other");
        refused(() -> Finding.fail(""), "clause must have a name, got an empty text");
    }

    @Test
    void findingsAreEqualInEveryPart() {
        Finding plain = Finding.undecided("clause", Reason.DOUBT);
        assertThat(plain)
                .isEqualTo(Finding.undecided("clause", Reason.DOUBT))
                .hasSameHashCodeAs(Finding.undecided("clause", Reason.DOUBT))
                .isNotEqualTo("clause");
        List<Finding> others = List.of(
                plain.withClause("other"),
                plain.withFigure("figure"),
                Finding.fail("clause"),
                plain.asUndecided(Reason.INCOMPLETE),
                plain.withOdds(Odds.firstOrder(0.5)),
                plain.withMargin(new Margin(1, 1, Dimension.LENGTH, "atMost")),
                plain.plusStep(Step.of("step", Args.NONE)),
                plain.withRetakes(List.of(new Retake(List.of("a"), "", 1, Double.NaN, Double.NaN))),
                plain.withCautions(List.of(Caution.of("c", Caution.Severity.DANGER))));
        assertThat(others).doesNotContain(plain).doesNotHaveDuplicates();
    }

    @Test
    void problemsHaveAPlace() {
        Problem error = Problem.error("unknown-field", "/sizes/0/of", Args.of("found", "offf"));
        assertThat(error.severity()).isEqualTo(Problem.Severity.ERROR);
        assertThat(error.at(3, 14))
                .isEqualTo(new Problem("unknown-field", Problem.Severity.ERROR, "/sizes/0/of", 3, 14, error.args()));
        assertThat(Problem.warning("missing-source", "", Args.NONE).severity()).isEqualTo(Problem.Severity.WARNING);
        refused(() -> Problem.error("", "", Args.NONE), "problem must have a name, got an empty text");
    }

    @Test
    void sourcesStepsCautionsRetakes() {
        assertThat(Source.UNSTATED.isStated()).isFalse();
        assertThat(Source.PRACTICE.isStated()).isTrue();
        assertThat(Source.of(Source.Kind.STANDARD, "a standard"))
                .isEqualTo(new Source(Source.Kind.STANDARD, "a standard", "", ""));
        assertThat(Source.Kind.HANDBOOK.text()).isEqualTo("handbook");
        assertThat(Caution.Severity.DANGER.text()).isEqualTo("danger");
        assertThat(Step.of("bound", Args.NONE).source()).isEqualTo(Source.UNSTATED);
        refused(() -> Step.of("", Args.NONE), "step must have a name, got an empty text");
        refused(() -> Caution.of("", Caution.Severity.NOTE), "caution must have a name, got an empty text");
        refused(() -> new Retake(List.of(), "", 1, 1, 1), "retake must name 1 reading or more, got none");
        refused(() -> new Retake(List.of("a"), "", 0, 1, 1), "times must be 1 or more, got 0");
    }
}
