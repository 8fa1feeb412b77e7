package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.judge.ReadingDoubt;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Influence;
import quoin.measure.Instrument;
import quoin.measure.TapeClass;

/** What stays with an instrument is known by the instrument, whatever it is called. */
class SharedInfluenceTest {
    private static Instrument tape(String id, double each) {
        return Instrument.of(id, Instrument.Kind.TAPE)
                .withAccuracyClass(TapeClass.II)
                .withStep(1)
                .withEach(List.of(Doubt.standard(each, Dimension.LENGTH)));
    }

    private static Survey survey(Instrument by) {
        return Survey.finished(
                List.of(
                        Reading.of("width@head", by, 1503, 1504),
                        Reading.of("width@foot", by, 1503),
                        Reading.of("length@left", by, 2398),
                        Reading.of("length@right", by, 2400),
                        Reading.of("diagonal@head-left", by, 2833),
                        Reading.of("diagonal@head-right", by, 2829)),
                2);
    }

    @Test
    void theNameOfAnInstrumentChangesNothing() {
        List<AdjustedReading> plain =
                Adjustment.of(survey(tape("tape", 0.8)), Plane.FRONT).readings();
        for (String id : List.of("tape:1", "straight/tape")) {
            assertThat(Adjustment.of(survey(tape(id, 0.8)), Plane.FRONT).readings())
                    .isEqualTo(plain);
        }
    }

    /** Rounding averages out only if u of each is at least half a step. */
    @Test
    void aRoundingThatAllValuesShareIsNotDrawnAnew() {
        ReadingDoubt fine = survey(tape("tape", 0.1)).readingDoubts().get(0);
        assertThat(fine.fresh()).hasSize(2).allMatch(influence -> influence.id().contains("each"));
        assertThat(fine.shared().stream().map(Influence::id))
                .anyMatch(id -> id.endsWith("/step"))
                .hasSize(2);
        ReadingDoubt coarse = survey(tape("tape", 0.8)).readingDoubts().get(0);
        assertThat(coarse.fresh()).hasSize(4);
        assertThat(coarse.shared())
                .containsExactlyElementsOf(tape("tape", 0.8).shared().asList());
        assertThat(coarse.values()).isEqualTo(2);
        ReadingDoubt single = survey(tape("tape", 0.1)).readingDoubts().get(1);
        assertThat(single.fresh()).hasSize(1);
        assertThat(single.shared()).hasSize(2);
    }
}
