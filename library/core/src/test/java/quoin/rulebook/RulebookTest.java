package quoin.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.judge.DecisionRule;
import quoin.judge.Source;
import quoin.measure.Dimension;

class RulebookTest {
    @Test
    void aRulebookKeepsWhatItWasGiven() {
        Rulebook rulebook = Sample.rulebook();
        assertThat(rulebook.id()).isEqualTo("heron-frame");
        assertThat(rulebook.version()).isEqualTo("1.2.0");
        assertThat(rulebook.effective()).isEqualTo("2026-01-01");
        assertThat(rulebook.title()).isEqualTo("Invented rules");
        assertThat(rulebook.decide()).isEqualTo(DecisionRule.guarded(0.95));
        assertThat(rulebook.frame().depth()).containsExactly(Sample.mm(20), Sample.mm(110));
        assertThat(rulebook.sizes()).isEqualTo(Sample.sizes());
        assertThat(rulebook.bounds()).isEqualTo(Sample.bounds());
        assertThat(rulebook.survey().needs()).containsExactly("headTowards", "width@head");
        assertThat(rulebook.fixings()).contains(Sample.fixings());
        assertThat(rulebook.siteAsks()).contains(List.of("role", "glazed"));
        assertThat(rulebook).hasToString("heron-frame 1.2.0");
        assertThat(rulebook).isEqualTo(Sample.rulebook()).hasSameHashCodeAs(Sample.rulebook());
        assertThat(rulebook).isNotEqualTo(Sample.empty()).isNotEqualTo("heron-frame 1.2.0");
    }

    @Test
    void whatIsNotStatedIsTheDefault() {
        Rulebook rulebook = Sample.empty();
        assertThat(rulebook.frame()).isEqualTo(FrameRule.DEFAULT);
        assertThat(rulebook.survey()).isEqualTo(SurveyRule.NONE);
        assertThat(rulebook.fixings()).isEmpty();
        assertThat(rulebook.siteAsks()).isEmpty();
        assertThat(rulebook.withSiteAsks(List.of()).siteAsks()).contains(List.of());
    }

    @Test
    void aBoundUsesItsOwnRuleFirst() {
        DecisionRule own = DecisionRule.guarded(0.99);
        assertThat(Sample.bounds().get(0).decideOr(DecisionRule.simple())).isEqualTo(own);
        assertThat(Sample.bounds().get(1).decideOr(DecisionRule.simple())).isEqualTo(DecisionRule.simple());
    }

    @Test
    void namesAreNotEmpty() {
        assertThatThrownBy(() -> Rulebook.of("", "1", "2026-01-01", "", DecisionRule.simple()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("rulebook must have a name, got an empty text");
        assertThatThrownBy(() -> Rulebook.of("a", "", "2026-01-01", "", DecisionRule.simple()))
                .hasMessage("version of rulebook a must have a name, got an empty text");
        assertThatThrownBy(() -> Sample.size("", "fit.width")).hasMessage("size must have a name, got an empty text");
        assertThatThrownBy(() -> BoundClause.of("a", "")).hasMessage("figure must have a name, got an empty text");
        assertThatThrownBy(() -> new Quota.ByChoice("", java.util.Map.of()))
                .hasMessage("choice must have a name, got an empty text");
    }

    @Test
    void whatIsNotFiniteIsRefused() {
        assertThatThrownBy(() -> Sample.item(1, Double.NaN)).hasMessage("times must be a finite number, got NaN");
        assertThatThrownBy(() -> new Base.OfShortfall("a", Double.NaN))
                .hasMessage("shortfall must be a finite number, got NaN");
        assertThatThrownBy(() -> Sample.size("a", "b").withCutWithin(Double.POSITIVE_INFINITY))
                .hasMessage("cutWithin must be finite, got Infinity mm");
        assertThatThrownBy(() -> new Size("a", Double.NaN, Dimension.LENGTH, 0, List.of(), Source.UNSTATED))
                .hasMessage("size a must be a finite number, got NaN");
        assertThatThrownBy(() -> new Size("a", 1, Dimension.LENGTH, Double.NaN, List.of(), Source.UNSTATED))
                .hasMessage("within must be 0 mm or more and finite, got NaN mm");
    }

    @Test
    void aLimitIsStatedOnce() {
        List<Quota> two = List.of(Sample.fixed(1), Sample.fixed(2));
        assertThatThrownBy(() -> new BoundClause("a", "b", two, List.of(), List.of(), List.of(), "", Source.UNSTATED))
                .hasMessage("atLeast must be stated once or not at all, got 2");
    }

    @Test
    void aDepthIsAPairAndOnlyAreaIsKept() {
        assertThatThrownBy(() -> new FrameRule(FrameRule.Hold.HEAD, "area", List.of(Sample.mm(1))))
                .hasMessage("depth must be two amounts or none, got 1");
        assertThatThrownBy(() -> new FrameRule(FrameRule.Hold.HEAD, "width", List.of()))
                .hasMessage("keep must be area, got width");
    }

    @Test
    void closedListsAreFoundByTheirText() {
        for (FrameRule.Hold hold : FrameRule.Hold.values()) {
            assertThat(FrameRule.Hold.find(hold.text())).contains(hold);
        }
        assertThat(FrameRule.Hold.find("top")).isEmpty();
        for (Rounding.Mode mode : Rounding.Mode.values()) {
            assertThat(Rounding.Mode.find(mode.text())).contains(mode);
        }
        assertThat(Rounding.Mode.find("Down")).isEmpty();
    }
}
