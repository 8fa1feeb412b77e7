package quoin.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.judge.Source;
import quoin.judge.Verdict;
import quoin.measure.Amount;
import quoin.opening.Reading;
import quoin.parts.Parts;
import quoin.rulebook.BoundClause;
import quoin.rulebook.Quota;
import quoin.rulebook.Rulebook;

/** Inverse then forward: every change that is named is made in a job of its own and assessed whole. */
class FlipsTest {
    private static final Rulebook RULES = Boathouse.rules(
            BoundClause.of("out-of-square", "opening.diagonal.difference")
                    .withWithin(Quota.fixed(Boathouse.mm(6)))
                    .withBecause("the gap becomes a wedge", Source.PRACTICE),
            BoundClause.of("strip", "gap.greatest")
                    .withAtMost(Quota.fixed(Boathouse.mm(9)))
                    .withBecause("the strip hides no more", Source.PRACTICE));

    private static Assessment assess(List<Reading> readings, Map<String, Amount> ordered) {
        Job job = Boathouse.job(readings).taken("2026-11-02").ordered(ordered).build();
        return Assessment.of(job, RULES, Parts.NONE);
    }

    private static Verdict verdict(Assessment assessment, String clause) {
        return assessment.findings().stream()
                .filter(finding -> finding.clause().equals(clause))
                .findFirst()
                .orElseThrow()
                .verdict();
    }

    private static Assessment with(List<Reading> readings, Flip flip, double by) {
        List<Reading> changed = new ArrayList<>();
        for (Reading reading : readings) {
            boolean moves = flip.kind() == Flip.Kind.READING && reading.name().equals(flip.what());
            List<Double> values = reading.values().stream()
                    .map(value -> moves ? value + by : value)
                    .toList();
            changed.add(new Reading(reading.id(), reading.of(), reading.in(), values, reading.by()));
        }
        Map<String, Amount> ordered = new LinkedHashMap<>();
        if (flip.kind() == Flip.Kind.ORDER) {
            ordered.put(flip.what(), new Amount(flip.from() + by, flip.dimension()));
        }
        return assess(changed, ordered);
    }

    @Test
    void whatFlipsABoundDoesSoAndNothingNearerDoes() {
        int orders = 0;
        int readings = 0;
        Assessment now = assess(Boathouse.readings(), Map.of());
        for (String clause : List.of("goes-in", "out-of-square", "strip")) {
            Verdict was = verdict(now, clause);
            List<Flip> flips = Flips.nearest(now, clause);
            assertThat(flips).as(clause).isNotEmpty();
            for (Flip flip : flips) {
                assertThat(flip.was()).isEqualTo(was).isNotEqualTo(flip.becomes());
                assertThat(verdict(with(Boathouse.readings(), flip, flip.by()), clause))
                        .as(clause + " by " + flip)
                        .isEqualTo(flip.becomes());
                double nearer = flip.by() - Math.signum(flip.by());
                if (nearer != 0) {
                    assertThat(verdict(with(Boathouse.readings(), flip, nearer), clause))
                            .isEqualTo(was);
                }
                orders += flip.kind() == Flip.Kind.ORDER ? 1 : 0;
                readings += flip.kind() == Flip.Kind.READING ? 1 : 0;
            }
        }
        assertThat(orders).isPositive();
        assertThat(readings).isPositive();
    }

    /** The order cannot change how square the opening is; a frame that is one step too large for its gap is made smaller. */
    @Test
    void theOrderFlipsWhatHangsOnIt() {
        Assessment now = assess(Boathouse.readings(), Map.of());
        assertThat(Flips.nearest(now, "out-of-square")).extracting(Flip::kind).containsOnly(Flip.Kind.READING);
        Assessment tight = assess(Boathouse.readings(), Map.of("frame.width", Boathouse.mm(1502)));
        assertThat(verdict(tight, "goes-in")).isEqualTo(Verdict.FAIL);
        List<Flip> order = Flips.nearest(tight, "goes-in").stream()
                .filter(flip -> flip.kind() == Flip.Kind.ORDER)
                .toList();
        assertThat(order).extracting(Flip::what).containsExactly("frame.width");
        assertThat(order.get(0).by()).isNegative();
        assertThat(order.get(0).to()).isLessThan(1502);
    }

    @Test
    void anUnknownClauseIsRefused() {
        Assessment now = assess(Boathouse.readings(), Map.of());
        assertThatThrownBy(() -> Flips.nearest(now, "frame.width"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("clause must be a bound of the rulebook, got frame.width");
    }
}
