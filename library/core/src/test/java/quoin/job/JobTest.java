package quoin.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.judge.DecisionRule;
import quoin.measure.Dimension;
import quoin.opening.Finish;
import quoin.opening.HeadTowards;
import quoin.rulebook.Rulebook;

class JobTest {
    private static Rulebook book(String version, String effective) {
        return Rulebook.of("heron-frame", version, effective, "", DecisionRule.simple());
    }

    @Test
    void equalJobsAreEqual() {
        Job one = Boathouse.job(Boathouse.readings()).place("room").build();
        Job other = Boathouse.job(Boathouse.readings()).place("room").build();
        Job third = Boathouse.job(Boathouse.readings()).place("hall").build();
        assertThat(one).isEqualTo(other).hasSameHashCodeAs(other).isNotEqualTo(third);
        assertThat(one.toString()).isEqualTo("job reading-room");
        assertThat(one.supply()).isEmpty();
        assertThat(one.instruments()).containsExactly(Boathouse.TAPE);
    }

    @Test
    void aJobWithoutAnIdIsRefused() {
        OpeningFacts facts = OpeningFacts.finished(HeadTowards.RIDGE, 2, List.of());
        assertThatThrownBy(() -> Job.named("", facts, Choices.rulebook("heron-frame")))
                .hasMessageContaining("id");
        assertThatThrownBy(() -> Choices.rulebook("")).hasMessageContaining("id");
    }

    @Test
    void openingFactsHoldTheirBounds() {
        assertThatThrownBy(() -> OpeningFacts.finished(HeadTowards.RIDGE, -1, List.of()))
                .hasMessageContaining("-1");
        assertThatThrownBy(() -> new OpeningFacts(
                        "face",
                        0,
                        HeadTowards.RIDGE,
                        false,
                        2,
                        Finish.FINISHED,
                        List.of(),
                        List.of(),
                        Map.of(),
                        List.of(),
                        List.of(),
                        List.of()))
                .hasMessageContaining("face");
    }

    @Test
    void theNewestRulebookInForceIsPicked() {
        List<Rulebook> books =
                List.of(book("1.9.0", "2026-01-01"), book("1.10.0", "2026-01-01"), book("2.0.0", "2027-01-01"));
        Choices any = Choices.rulebook("heron-frame");
        assertThat(Rulebooks.pick(any, "2026-11-02", books).map(Rulebook::version))
                .contains("1.10.0");
        assertThat(Rulebooks.pick(any, "", books).map(Rulebook::version)).contains("2.0.0");
        assertThat(Rulebooks.pick(any, "2025-01-01", books)).isEmpty();
        assertThat(Rulebooks.pick(Choices.rulebook("other"), "", books)).isEmpty();
    }

    @Test
    void aPinnedVersionOrDigestMustMatch() {
        Rulebook first = book("1.2.0", "2026-01-01");
        List<Rulebook> books = List.of(first, book("1.3.0", "2026-02-01"));
        Choices pinned = new Choices("heron-frame", "1.2.0", "", "", Map.of(), "", "", "");
        assertThat(Rulebooks.pick(pinned, "2025-01-01", books)).contains(first);
        Choices sealed = new Choices("heron-frame", "", first.digest(), "", Map.of(), "", "", "");
        assertThat(Rulebooks.pick(sealed, "", books)).contains(first);
        Choices wrong = new Choices("heron-frame", "1.2.0", "sha256:0", "", Map.of(), "", "", "");
        assertThat(Rulebooks.pick(wrong, "", books)).isEqualTo(Optional.empty());
    }

    @Test
    void versionsCompareNumberByNumber() {
        assertThat(Rulebooks.compare("1.10", "1.9")).isPositive();
        assertThat(Rulebooks.compare("1.2", "1.2.0")).isZero();
        assertThat(Rulebooks.compare("1.a", "1.b")).isNegative();
    }

    @Test
    void everyFigureOfTheDocumentsIsInTheCatalogue() {
        for (String id : List.of(
                "opening.width.least",
                "opening.length.least",
                "opening.diagonal.difference",
                "opening.corner.head-left.angle",
                "opening.corner.foot-right.departure",
                "opening.square.worst",
                "opening.bow.left",
                "opening.splay.right",
                "opening.twist",
                "opening.depth.least",
                "roller.fall",
                "fit.width",
                "fit.length",
                "fit.turned.width",
                "fit.turned.length",
                "fit.rule.width",
                "fit.rule.length",
                "gap.least",
                "gap.greatest",
                "gap.left@head-left",
                "gap.foot@foot-right",
                "gap.turned.least",
                "gap.turned.greatest",
                "frame.area",
                "frame.mass",
                "wayin.longest",
                "heat.gap.least",
                "fixing.load.worst",
                "roll.diameter",
                "tube.deflection",
                "fabric.sag",
                "drive.torque",
                "drive.runs",
                "cable.drop")) {
            assertThat(Figures.CATALOGUE.find(id)).as(id).isPresent();
        }
        assertThat(Figures.CATALOGUE.find("frame.area").orElseThrow().dimension())
                .isEqualTo(Dimension.AREA);
    }
}
