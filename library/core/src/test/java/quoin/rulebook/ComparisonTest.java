package quoin.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.judge.DecisionRule;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.rulebook.Comparison.Change;
import quoin.rulebook.Comparison.Demand;
import quoin.rulebook.Comparison.Flip;
import quoin.rulebook.Comparison.Level;

class ComparisonTest {
    private static final Rulebook OLD = Sample.rulebook();

    private static Rulebook version(String version) {
        return Rulebook.of(OLD.id(), version, OLD.effective(), OLD.title(), OLD.decide())
                .withFrame(OLD.frame())
                .withSizes(OLD.sizes())
                .withBounds(OLD.bounds())
                .withSurvey(OLD.survey())
                .withFixings(OLD.fixings().orElseThrow())
                .withSiteAsks(OLD.siteAsks().orElseThrow());
    }

    private static Comparison with(int index, SizeClause clause) {
        List<SizeClause> sizes = new java.util.ArrayList<>(OLD.sizes());
        sizes.set(index, clause);
        return Comparison.of(OLD, version("1.3.0").withSizes(sizes), Sample.CATALOGUE);
    }

    private static Comparison bounds(BoundClause... bounds) {
        return Comparison.of(OLD, version("1.3.0").withBounds(List.of(bounds)), Sample.CATALOGUE);
    }

    private static Effect.Range mm(double from, boolean fromIncluded, double to, boolean toIncluded) {
        return new Effect.Range(from, fromIncluded, to, toIncluded, "mm");
    }

    /** Less 2 x 4 mm becomes less 2 x 3 mm: 2 mm larger, wherever a frame can be made at all. */
    @Test
    void aDeductionThatChangesMovesTheSizeEverywhere() {
        Comparison comparison = with(0, Sample.frame("frame.width", "fit.width").withLess(Sample.item(3, 2)));
        assertThat(comparison.changes())
                .containsExactly(
                        new Change(Change.Kind.CHANGED, "size", "frame.width", "less/quota/amount", "4 mm", "3 mm"));
        List<Effect> frame = comparison.effects().stream()
                .filter(effect -> effect.clause().equals("frame.width"))
                .toList();
        // 1 mm is the least frame: it was made from 9 mm up, now from 7 mm up
        assertThat(frame).extracting(Effect::kind).containsExactly(Effect.Kind.DECIDED, Effect.Kind.CHANGED);
        assertThat(frame.get(0).where()).isEqualTo(Map.of("fit.width", mm(7, true, 9, false)));
        assertThat(frame.get(1).where()).isEqualTo(Map.of("fit.width", mm(9, true, Double.POSITIVE_INFINITY, false)));
        assertThat(frame.get(1).least()).isEqualTo(2);
        assertThat(frame.get(1).most()).isEqualTo(2);
        assertThat(comparison.effects()).extracting(Effect::clause).contains("headbox.length", "tube.diameter");
        assertThat(comparison.flips())
                .containsExactly(
                        new Flip("goes-in", "sizes", List.of("frame.width")),
                        new Flip("light-strip", "sizes", List.of("frame.width")));
        assertThat(comparison.level()).contains(Level.MINOR);
        assertThat(comparison.leastVersion()).contains("1.3.0");
        assertThat(comparison.isVersionEnough()).isTrue();
    }

    /** The tube by the width of the frame: at 1800 mm and at 3000 mm, pulled back to the opening. */
    @Test
    void anEdgeThatMovesIsSaidInTheOpening() {
        Comparison comparison = with(3, Sample.size("tube.diameter", Sample.bands("frame.width", 1750, 50, 3000, 63)));
        assertThat(comparison.effects()).hasSize(1);
        Effect effect = comparison.effects().get(0);
        // frame.width is fit.width less 8 mm, down to 1 mm: above 1750 from 1759 mm, up to 1800 below 1809 mm
        assertThat(effect.where()).isEqualTo(Map.of("fit.width", mm(1759, true, 1809, false)));
        assertThat(effect.least()).isEqualTo(13);
        assertThat(effect.most()).isEqualTo(13);
        assertThat(effect.period()).isZero();
    }

    /** Down to 1 mm becomes down to 1/2 mm: half a millimetre more on the upper half of every millimetre. */
    @Test
    void anotherStepRepeats() {
        Comparison comparison =
                with(1, Sample.frame("frame.length", "fit.length").withRound(Sample.down(0.5)));
        Effect effect = comparison.effects().stream()
                .filter(one -> one.clause().equals("frame.length") && one.kind() == Effect.Kind.CHANGED)
                .findFirst()
                .orElseThrow();
        assertThat(effect.along()).isEqualTo("fit.length");
        assertThat(effect.period()).isEqualTo(1);
        assertThat(effect.stretches()).containsExactly(new Effect.Stretch(mm(0.5, true, 1, false), 0.5, 0.5));
    }

    /** Down to 1/16 in against down to 1 mm: the pattern repeats after 127 mm, which is 80 sixteenths. */
    @Test
    void millimetresAgainstSixteenthsRepeatAfter127() {
        Comparison comparison =
                with(1, Sample.frame("frame.length", "fit.length").withRound(Sample.down(25.4 / 16)));
        Effect effect = comparison.effects().stream()
                .filter(one -> one.clause().equals("frame.length") && one.period() > 0)
                .findFirst()
                .orElseThrow();
        assertThat(effect.period()).isEqualTo(127);
        // a sixteenth is 1.5875 mm, so the two are apart by less than that, and by less than 1 mm the other way
        assertThat(effect.least()).isBetween(-1.5875, -1.0);
        assertThat(effect.most()).isBetween(0.0, 1.0);
        for (int i = 0; i < 127_000; i += 7) {
            double length = 2400 + i / 1000.0;
            double old = Math.floor(length - 8 + 1e-9);
            double now = Math.floor((length - 8) / 1.5875 + 1e-9) * 1.5875;
            boolean said = effect.holdsAt(Map.of("fit.length", length));
            assertThat(said).as("at " + length).isEqualTo(Math.abs(now - old) > 1e-7);
        }
    }

    /** Where the pattern goes on over the end of a period, it is one stretch. */
    @Test
    void aStretchOverTheEndOfAPeriodIsOne() {
        SizeClause fine =
                Sample.size("fine", "fit.length").withLess(Sample.item(0.5, 1)).withRound(Sample.down(0.25));
        SizeClause coarse = Sample.size("coarse", "fine").withRound(Sample.down(1));
        SizeClause up = coarse.withRound(new Rounding.Step(Rounding.Mode.UP, Sample.mm(1)));
        Comparison comparison = Comparison.of(Sample.with(fine, coarse), Sample.with(fine, up), Sample.CATALOGUE);
        Effect effect = comparison.effects().stream()
                .filter(one -> one.period() > 0)
                .findFirst()
                .orElseThrow();
        // less 0.5 and down to 1/4: a whole number from .5 to below .75, so up and down are 1 apart from .75 to 1.5
        assertThat(effect.period()).isEqualTo(1);
        assertThat(effect.stretches()).containsExactly(new Effect.Stretch(mm(0.75, true, 1.5, false), 1, 1));
        assertThat(effect.holdsAt(Map.of("fit.length", 2400.25))).isTrue();
        assertThat(effect.holdsAt(Map.of("fit.length", 2400.5))).isFalse();
        assertThat(effect.holdsAt(Map.of("fit.length", 2400.75))).isTrue();
    }

    /** Not rounded against rounded down: apart by what the rounding takes, and the same only at whole millimetres. */
    @Test
    void noRoundingAgainstRounding() {
        Comparison comparison =
                with(1, Sample.frame("frame.length", "fit.length").withRound(Rounding.NONE));
        Effect effect = comparison.effects().stream()
                .filter(one -> one.clause().equals("frame.length") && one.kind() == Effect.Kind.CHANGED)
                .findFirst()
                .orElseThrow();
        assertThat(effect.period()).isEqualTo(1);
        assertThat(effect.stretches()).containsExactly(new Effect.Stretch(mm(0, false, 1, false), 0, 1));
        assertThat(effect.holdsAt(Map.of("fit.length", 2400.0))).isFalse();
        assertThat(effect.holdsAt(Map.of("fit.length", 2400.25))).isTrue();
    }

    @Test
    void aPartThatIsNewIsNamed() {
        Map<String, Amount> amounts = new LinkedHashMap<>();
        amounts.put("drive-m", Sample.mm(4));
        amounts.put("drive-l", Sample.mm(6));
        Comparison comparison = with(
                2,
                Sample.size("headbox.length", "frame.width").withLess(Sample.item(Quota.byChoice("drive", amounts))));
        assertThat(comparison.effects()).isNotEmpty();
        assertThat(comparison.effects()).allSatisfy(effect -> {
            assertThat(effect.kind()).isEqualTo(Effect.Kind.DECIDED);
            assertThat(effect.choices()).isEqualTo(Map.of("drive", "drive-l"));
        });
        assertThat(comparison.level()).contains(Level.MINOR);
        assertThat(comparison.changes())
                .containsExactly(new Change(
                        Change.Kind.ADDED, "size", "headbox.length", "less/quota/part/drive-l", "", "id drive-l 6 mm"));
    }

    @Test
    void limitsAndDecisionsFlipVerdicts() {
        List<BoundClause> old = OLD.bounds();
        Comparison comparison = bounds(
                old.get(0).withDecide(DecisionRule.guarded(0.95)),
                old.get(1).withAtMost(Sample.bands("fit.width", 1000, 10, 4000, 12)),
                BoundClause.of("new", "fit.width")
                        .withAtMost(Sample.fixed(3000))
                        .withBecause("b", Sample.ASSUMED));
        assertThat(comparison.flips())
                .containsExactly(
                        new Flip("goes-in", "decide", List.of()),
                        new Flip("light-strip", "limit", List.of()),
                        new Flip("new", "added", List.of()),
                        new Flip("out-of-square", "removed", List.of()));
        // up to 1000 mm the limit is 10 mm as it was; at or below zero and above 4000 mm there is none any more
        assertThat(comparison.effects())
                .extracting(Effect::kind)
                .containsExactly(Effect.Kind.REFUSED, Effect.Kind.CHANGED, Effect.Kind.REFUSED);
        Effect changed = comparison.effects().get(1);
        assertThat(changed.clause()).isEqualTo("light-strip");
        assertThat(changed.field()).isEqualTo("atMost");
        assertThat(changed.where()).isEqualTo(Map.of("fit.width", mm(1000, false, 4000, true)));
        assertThat(changed.most()).isEqualTo(2);
    }

    @Test
    void textIsAPatch() {
        Comparison comparison = with(4, OLD.sizes().get(4).withBecause("hems and wraps", Source.PRACTICE));
        assertThat(comparison.effects()).isEmpty();
        assertThat(comparison.flips()).isEmpty();
        assertThat(comparison.changes())
                .containsExactly(
                        new Change(
                                Change.Kind.CHANGED, "size", "fabric.length", "because", "because", "hems and wraps"),
                        new Change(Change.Kind.CHANGED, "size", "fabric.length", "source", "assumption", "practice"));
        assertThat(comparison.demands()).containsExactly(new Demand(Level.PATCH, "text", List.of("fabric.length")));
        assertThat(comparison.leastVersion()).contains("1.2.1");
    }

    /** 350 mm more is 300 mm and 50 mm more: another text, the same numbers. */
    @Test
    void theSameNumbersInOtherWordsAreAPatch() {
        Comparison comparison = with(4, OLD.sizes().get(4).withMore(Sample.item(300, 1), Sample.item(25, 2)));
        assertThat(comparison.changes()).isNotEmpty();
        assertThat(comparison.effects()).isEmpty();
        assertThat(comparison.level()).contains(Level.PATCH);
    }

    @Test
    void whatAJobMustStateIsMajor() {
        Rulebook now = version("1.3.0").withSurvey(new SurveyRule(List.of("headTowards", "width@head", "width@foot")));
        Comparison comparison = Comparison.of(OLD, now, Sample.CATALOGUE);
        assertThat(comparison.demands()).containsExactly(new Demand(Level.MAJOR, "survey", List.of("width@foot")));
        assertThat(comparison.leastVersion()).contains("2.0.0");
        assertThat(comparison.isVersionEnough()).isFalse();
        Rulebook without = version("2.0.0").withSizes(OLD.sizes().subList(0, 4));
        assertThat(Comparison.of(OLD, without, Sample.CATALOGUE).demands())
                .contains(new Demand(Level.MAJOR, "size-removed", List.of("fabric.length")));
        assertThat(Comparison.of(without, OLD, Sample.CATALOGUE).demands())
                .contains(new Demand(Level.MINOR, "size-added", List.of("fabric.length")));
        Rulebook own = version("2.0.0")
                .withBounds(List.of(BoundClause.of("own", "own.load")
                        .withAtMost(Sample.fixed(1))
                        .withBecause("b", Sample.ASSUMED)));
        assertThat(Comparison.of(OLD, own, Sample.CATALOGUE).demands())
                .contains(new Demand(Level.MAJOR, "declared", List.of("own.load")));
    }

    @Test
    void aSmallerVersionIsNotEnough() {
        List<SizeClause> sizes = new java.util.ArrayList<>(OLD.sizes());
        sizes.set(0, Sample.frame("frame.width", "fit.width").withCutWithin(1));
        for (String small : List.of("1.2.0", "1.2.9", "1.1.9", "0.9.0", "next", "1.3")) {
            Comparison comparison = Comparison.of(OLD, version(small).withSizes(sizes), Sample.CATALOGUE);
            assertThat(comparison.level()).as(small).contains(Level.MINOR);
            assertThat(comparison.isVersionEnough()).as(small).isFalse();
        }
        for (String enough : List.of("1.3.0", "1.10.0", "2.0.0")) {
            Comparison comparison = Comparison.of(OLD, version(enough).withSizes(sizes), Sample.CATALOGUE);
            assertThat(comparison.isVersionEnough()).as(enough).isTrue();
        }
    }

    @Test
    void theCutIsANumberToo() {
        Comparison comparison = with(0, Sample.frame("frame.width", "fit.width").withCutWithin(1));
        assertThat(comparison.effects()).isEmpty();
        assertThat(comparison.demands())
                .containsExactly(
                        new Demand(Level.MINOR, "verdict", List.of("goes-in", "light-strip")),
                        new Demand(Level.MINOR, "number", List.of("frame.width")));
    }

    /** The same amount with a tolerance of its own gives the same size and other odds. */
    @Test
    void theDoubtOfANumberIsANumberToo() {
        Quota own = new Quota.Fixed(Stated.of(Sample.mm(4)).withDoubt(Doubt.limits(0.5, Dimension.LENGTH)));
        Comparison size =
                with(0, Sample.frame("frame.width", "fit.width").withLess(new Item(own, 2, "", Source.UNSTATED)));
        assertThat(size.effects()).isEmpty();
        assertThat(size.demands())
                .containsExactly(
                        new Demand(Level.MINOR, "verdict", List.of("goes-in", "light-strip")),
                        new Demand(Level.MINOR, "number", List.of("frame.width")));
        Quota limit = new Quota.Fixed(Stated.of(Sample.mm(1)).withDoubt(Doubt.limits(0.5, Dimension.LENGTH)));
        List<BoundClause> old = OLD.bounds();
        Comparison bound = bounds(old.get(0).withAtLeast(limit), old.get(1), old.get(2));
        assertThat(bound.effects()).isEmpty();
        assertThat(bound.flips()).containsExactly(new Flip("goes-in", "doubt", List.of()));
        assertThat(bound.level()).contains(Level.MINOR);
        Quota said = new Quota.Fixed(Stated.of(Sample.mm(4)).withBecause("as tried", Source.PRACTICE));
        assertThat(with(0, Sample.frame("frame.width", "fit.width").withLess(new Item(said, 2, "", Source.UNSTATED)))
                        .level())
                .contains(Level.PATCH);
    }

    @Test
    void whatCannotBeMappedMayDifferAnywhere() {
        Comparison comparison = with(4, OLD.sizes().get(4).withMore(Sample.item(1000.0 / 3, 1)));
        assertThat(comparison.effects()).hasSize(1);
        assertThat(comparison.effects().get(0).kind()).isEqualTo(Effect.Kind.OPEN);
        assertThat(comparison.effects().get(0).most()).isInfinite();
        assertThat(comparison.level()).contains(Level.MINOR);
    }

    @Test
    void anotherFigureMayDifferAnywhere() {
        Comparison comparison = with(2, Sample.size("headbox.length", "frame.length"));
        assertThat(comparison.effects())
                .anySatisfy(effect -> assertThat(effect.kind()).isEqualTo(Effect.Kind.OPEN));
    }

    @Test
    void aRulebookWithErrorsIsNotCompared() {
        Rulebook wrong = version("1.3.0").withSizes(List.of());
        assertThatThrownBy(() -> Comparison.of(OLD, wrong, Sample.CATALOGUE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("rulebook heron-frame 1.3.0 must be without errors, got missing-size at /sizes");
    }

    @Test
    void onlyTheVersionChanged() {
        Comparison comparison = Comparison.of(OLD, version("1.2.1"), Sample.CATALOGUE);
        assertThat(comparison.isEmpty()).isTrue();
        assertThat(comparison.leastVersion()).isEqualTo(Optional.empty());
    }
}
