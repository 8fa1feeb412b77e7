package quoin.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import quoin.judge.DecisionRule;
import quoin.judge.Finding;
import quoin.judge.Source;
import quoin.judge.Verdict;
import quoin.measure.Amount;
import quoin.opening.Reading;
import quoin.parts.Parts;
import quoin.rulebook.Base;
import quoin.rulebook.BoundClause;
import quoin.rulebook.FrameRule;
import quoin.rulebook.Item;
import quoin.rulebook.Quota;
import quoin.rulebook.Rounding;
import quoin.rulebook.Rulebook;
import quoin.rulebook.SizeClause;

class ImpactProperties {
    @Property(tries = 60)
    void aRulebookAgainstItselfChangesNothing(@ForAll("jobs") Job job, @ForAll("rules") Rulebook rules) {
        Impact impact = Impact.of(job, rules, rules, Parts.NONE);
        assertThat(impact.change()).isEqualTo(Impact.Change.UNCHANGED);
        assertThat(impact.sizes()).isEmpty();
        assertThat(impact.findings()).isEmpty();
        assertThat(impact.verdict().isSame()).isTrue();
    }

    /** What is compared is what the whole assessment answers, which is worked out on another way. */
    @Property(tries = 15)
    void bothSidesAreThoseOfTheWholeAssessment(
            @ForAll("jobs") Job job, @ForAll("rules") Rulebook before, @ForAll("rules") Rulebook after) {
        Impact impact = Impact.of(job, before, after, Parts.NONE);
        Assessment old = Assessment.of(job, before, Parts.NONE);
        Assessment now = Assessment.of(job, after, Parts.NONE);
        assertThat(impact.verdict()).isEqualTo(new Impact.Pair<>(old.verdict(), now.verdict()));
        for (String size : List.of("frame.width", "frame.length", "tube")) {
            Impact.Pair<Optional<Amount>> pair = new Impact.Pair<>(size(old, size), size(now, size));
            assertThat(Optional.ofNullable(impact.sizes().get(size)))
                    .isEqualTo(pair.isSame() ? Optional.empty() : Optional.of(pair));
        }
        for (String clause : List.of("goes-in", "strip", "survey", "tube", "site.below")) {
            Impact.Pair<Optional<Impact.Ground>> pair = new Impact.Pair<>(ground(old, clause), ground(now, clause));
            assertThat(Optional.ofNullable(impact.findings().get(clause)))
                    .as(clause)
                    .isEqualTo(pair.isSame() ? Optional.empty() : Optional.of(pair));
        }
    }

    @Property(tries = 30)
    void theOtherWayRoundEverythingIsTurned(
            @ForAll("jobs") Job job, @ForAll("rules") Rulebook before, @ForAll("rules") Rulebook after) {
        Impact there = Impact.of(job, before, after, Parts.NONE);
        Impact back = Impact.of(job, after, before, Parts.NONE);
        assertThat(back.verdict()).isEqualTo(turned(there.verdict()));
        assertThat(back.sizes().keySet()).isEqualTo(there.sizes().keySet());
        there.sizes().forEach((id, pair) -> assertThat(back.sizes().get(id)).isEqualTo(turned(pair)));
        there.findings()
                .forEach((id, pair) -> assertThat(back.findings().get(id)).isEqualTo(turned(pair)));
    }

    private static <T> Impact.Pair<T> turned(Impact.Pair<T> pair) {
        return new Impact.Pair<>(pair.to(), pair.from());
    }

    private static Optional<Amount> size(Assessment assessment, String id) {
        return assessment.sizes().find(id).map(size -> new Amount(size.value(), size.dimension()));
    }

    private static Optional<Impact.Ground> ground(Assessment assessment, String clause) {
        return assessment.findings().stream()
                .filter(finding -> finding.clause().equals(clause) && finding.verdict() != Verdict.PASS)
                .map((Finding finding) -> new Impact.Ground(finding.verdict(), finding.reason()))
                .findFirst();
    }

    /** The boathouse with every reading moved by a few mm, sometimes one of them missing. */
    @Provide
    Arbitrary<Job> jobs() {
        Arbitrary<List<Integer>> moved =
                Arbitraries.integers().between(-3, 3).list().ofSize(8);
        return Combinators.combine(moved, Arbitraries.integers().between(0, 15)).as((by, without) -> {
            List<Reading> readings = new ArrayList<>();
            List<Reading> plain = Boathouse.readings();
            for (int i = 0; i < plain.size(); i++) {
                Reading reading = plain.get(i);
                int mm = by.get(i);
                List<Double> values =
                        reading.values().stream().map(value -> value + mm).toList();
                if (i != without) {
                    readings.add(new Reading(reading.id(), reading.of(), reading.in(), values, reading.by()));
                }
            }
            return Boathouse.job(readings).build();
        });
    }

    @Provide
    Arbitrary<Rulebook> rules() {
        return Combinators.combine(
                        Arbitraries.integers().between(2, 6),
                        Arbitraries.of(1.0, 5.0),
                        Arbitraries.integers().between(0, 6),
                        Arbitraries.integers().between(4, 14),
                        Arbitraries.integers().between(1490, 1510),
                        Arbitraries.of(true, false),
                        Arbitraries.of(FrameRule.Hold.HEAD, FrameRule.Hold.LEFT))
                .as((gap, step, least, strip, edge, asks, hold) ->
                        rules(gap, step, least, strip, edge, asks).withFrame(new FrameRule(hold, "area", List.of())));
    }

    private static Rulebook rules(int gap, double step, int least, int strip, int edge, boolean asks) {
        Quota bands = new Quota.Banded("frame.width", List.of(new Quota.Band(Boathouse.mm(edge), Boathouse.mm(50))));
        Rulebook rules = Boathouse.rules()
                .withSizes(List.of(
                        frame("frame.width", "fit.width", gap, step),
                        frame("frame.length", "fit.length", gap, step),
                        SizeClause.of("tube", new Base.OfQuota(bands))))
                .withBounds(List.of(
                        BoundClause.of("goes-in", "gap.least")
                                .withAtLeast(Quota.fixed(Boathouse.mm(least)))
                                .withDecide(DecisionRule.guarded(0.99)),
                        BoundClause.of("strip", "gap.greatest").withAtMost(Quota.fixed(Boathouse.mm(strip)))));
        return asks ? rules : rules.withSiteAsks(List.of());
    }

    private static SizeClause frame(String id, String of, int gap, double step) {
        return SizeClause.of(id, new Base.OfFigure(of))
                .withLess(new Item(Quota.fixed(Boathouse.mm(gap)), 2, "gap", Source.PRACTICE))
                .withRound(new Rounding.Step(Rounding.Mode.DOWN, Boathouse.mm(step)))
                .withCutWithin(0.5);
    }

    /** So that the laws above are not about one case. */
    @Property(tries = 1)
    void everyKindOfChangeOccurs() {
        Map<String, Impact.Change> seen = new TreeMap<>();
        Job job = Boathouse.job(Boathouse.readings()).build();
        Rulebook plain = rules(4, 1, 1, 14, 1500, true);
        for (Rulebook other : List.of(
                plain,
                rules(5, 1, 1, 14, 1500, true),
                rules(4, 1, 6, 14, 1500, true),
                rules(4, 1, 1, 14, 1490, true))) {
            Impact.Change change = Impact.of(job, plain, other, Parts.NONE).change();
            seen.put(change.text(), change);
        }
        assertThat(seen.keySet()).containsExactly("newly-refused", "size-changed", "unchanged", "verdict-flipped");
    }
}
