package quoin.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.clearance.SiteFacts;
import quoin.judge.DecisionRule;
import quoin.judge.Reason;
import quoin.judge.Source;
import quoin.judge.Verdict;
import quoin.measure.Amount;
import quoin.parts.Parts;
import quoin.rulebook.BoundClause;
import quoin.rulebook.Item;
import quoin.rulebook.Quota;
import quoin.rulebook.Rounding;
import quoin.rulebook.Rulebook;
import quoin.rulebook.SizeClause;

class ImpactTest {
    private static final Rulebook OLD = Boathouse.rules();
    private static final Job JOB = Boathouse.job(Boathouse.readings()).build();

    /** The same rules but for the clause of one size. */
    private static Rulebook with(SizeClause changed) {
        List<SizeClause> sizes = new ArrayList<>(OLD.sizes());
        sizes.removeIf(clause -> clause.id().equals(changed.id()));
        sizes.add(changed);
        return OLD.withSizes(sizes);
    }

    private static SizeClause width() {
        return OLD.sizes().stream()
                .filter(clause -> clause.id().equals("frame.width"))
                .findFirst()
                .orElseThrow();
    }

    private static Impact.Ground ground(Verdict verdict) {
        return new Impact.Ground(verdict, Optional.empty());
    }

    private static Impact impact(Job job, Rulebook now) {
        return Impact.of(job, OLD, now, Parts.NONE);
    }

    private static double widthMm() {
        return Assessment.of(JOB, OLD, Parts.NONE).order().orElseThrow().widthMm();
    }

    @Test
    void theSameRulesChangeNothing() {
        assertThat(impact(JOB, OLD))
                .isEqualTo(new Impact(
                        "reading-room",
                        Impact.Change.UNCHANGED,
                        new Impact.Pair<>(Verdict.PASS, Verdict.PASS),
                        Map.of(),
                        Map.of()));
    }

    /** 5 mm less at two sides instead of 4 mm at two sides: the frame is 2 mm narrower, whatever the readings. */
    @Test
    void aSizeThatChangesIsNamedWithBothItsValues() {
        Rulebook now = with(width().withLess(new Item(Quota.fixed(Boathouse.mm(5)), 2, "gap", Source.PRACTICE)));
        Impact impact = impact(JOB, now);
        assertThat(impact.change()).isEqualTo(Impact.Change.SIZE_CHANGED);
        assertThat(impact.sizes())
                .isEqualTo(Map.of(
                        "frame.width",
                        new Impact.Pair<>(
                                Optional.of(Boathouse.mm(widthMm())), Optional.of(Boathouse.mm(widthMm() - 2)))));
        assertThat(impact.verdict().isSame()).isTrue();
    }

    @Test
    void aVerdictThatFlipsIsNamedWithItsGrounds() {
        Rulebook now = OLD.withBounds(List.of(BoundClause.of("goes-in", "gap.least")
                .withAtLeast(Quota.fixed(Boathouse.mm(50)))
                .withDecide(DecisionRule.guarded(0.99))));
        Impact impact = impact(JOB, now);
        assertThat(impact.change()).isEqualTo(Impact.Change.VERDICT_FLIPPED);
        assertThat(impact.verdict()).isEqualTo(new Impact.Pair<>(Verdict.PASS, Verdict.FAIL));
        assertThat(impact.sizes()).isEmpty();
        assertThat(impact.findings())
                .isEqualTo(Map.of("goes-in", new Impact.Pair<>(Optional.empty(), Optional.of(ground(Verdict.FAIL)))));
    }

    @Test
    void aSizeThatCanNoLongerBeDecidedIsARefusal() {
        Rulebook now = with(width().withRound(new Rounding.DownTo(List.of(Boathouse.mm(2000)))));
        Impact impact = impact(JOB, now);
        assertThat(impact.change()).isEqualTo(Impact.Change.NEWLY_REFUSED);
        assertThat(impact.verdict().to()).isEqualTo(Verdict.FAIL);
        assertThat(impact.sizes().get("frame.width").to()).isEmpty();
        assertThat(impact(
                                Boathouse.job(Boathouse.readings())
                                        .ordered(Map.of(
                                                "frame.width",
                                                new Amount(1490, Boathouse.mm(1).dimension())))
                                        .build(),
                                now)
                        .change())
                .as("an order already made is made")
                .isNotEqualTo(Impact.Change.NEWLY_REFUSED);
        assertThat(Impact.of(JOB, now, OLD, Parts.NONE).change())
                .as("the other way round it is no refusal")
                .isEqualTo(Impact.Change.VERDICT_FLIPPED);
    }

    @Test
    void anotherReasonNotToPassIsOnlyAnotherReason() {
        Job unknown = Boathouse.job(Boathouse.readings())
                .site(SiteFacts.of(Map.of("glazed", "yes")))
                .build();
        Rulebook now = OLD.withSiteAsks(List.of("role"));
        Impact impact = impact(unknown, now);
        assertThat(impact.change()).isEqualTo(Impact.Change.REASON_CHANGED);
        assertThat(impact.verdict()).isEqualTo(new Impact.Pair<>(Verdict.UNDECIDED, Verdict.UNDECIDED));
        assertThat(impact.findings().keySet())
                .contains("site.below", "site.platform")
                .doesNotContain("site.role");
        assertThat(impact.findings().get("site.below"))
                .isEqualTo(new Impact.Pair<>(
                        Optional.of(new Impact.Ground(Verdict.UNDECIDED, Optional.of(Reason.NOT_VERIFIED))),
                        Optional.empty()));
    }

    @Test
    void aNewClauseThatPassesChangesNothing() {
        Rulebook now = Boathouse.rules(
                BoundClause.of("wide-enough", "opening.width.least").withAtLeast(Quota.fixed(Boathouse.mm(100))));
        assertThat(impact(JOB, now).change()).isEqualTo(Impact.Change.UNCHANGED);
    }

    @Test
    void totalsCountEachJobOnceByItsGravestChange() {
        Impact same = impact(JOB, OLD);
        Impact refused = impact(JOB, with(width().withRound(new Rounding.DownTo(List.of(Boathouse.mm(2000))))));
        ImpactTotals totals =
                ImpactTotals.NONE.plus(same).plus(refused).plus(same).plusRefused();
        assertThat(totals.jobs()).isEqualTo(4);
        assertThat(totals.refused()).isEqualTo(1);
        assertThat(totals.count(Impact.Change.UNCHANGED)).isEqualTo(2);
        assertThat(totals.count(Impact.Change.NEWLY_REFUSED)).isEqualTo(1);
        assertThat(totals.count(Impact.Change.VERDICT_FLIPPED)).isZero();
        assertThat(totals.flips()).isEqualTo(Map.of("pass-fail", 1L));
        assertThat(totals)
                .isEqualTo(ImpactTotals.NONE.plus(same).plusRefused().plus(same).plus(refused))
                .hasSameHashCodeAs(
                        ImpactTotals.NONE.plus(same).plusRefused().plus(same).plus(refused));
        assertThat(ImpactTotals.NONE.jobs()).isZero();
    }
}
