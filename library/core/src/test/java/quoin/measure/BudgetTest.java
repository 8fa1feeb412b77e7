package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BudgetTest {
    @Test
    void theLargestInfluenceComesFirst() {
        Uncertain sum = Uncertain.of(1, Influence.normal("a", 3))
                .plus(Uncertain.of(1, Influence.normal("b", 4)).times(-1))
                .plus(Uncertain.of(1, Influence.normal("none", 0)));
        Budget budget = Budget.of(sum);
        assertThat(budget.number()).isEqualTo(sum);
        assertThat(budget.lines()).extracting(line -> line.influence().id()).containsExactly("b", "a");
        assertThat(budget.lines().get(0).contribution()).isEqualTo(-4);
        assertThat(budget.lines().get(0).sensitivity()).isEqualTo(-1);
        assertThat(budget.lines().get(0).share()).isCloseTo(16.0 / 25, within(1e-15));
        assertThat(budget.lines().get(1).share()).isCloseTo(9.0 / 25, within(1e-15));
        assertThat(Budget.of(Uncertain.exact(1)).lines()).isEmpty();
    }

    @Test
    void influencesArePutTogetherByWhatTheyBelongTo() {
        Instrument tape = Instrument.of("tape", Instrument.Kind.TAPE)
                .withAccuracyClass(TapeClass.II)
                .withStep(1)
                .withEach(List.of(Doubt.standard(0.8, Dimension.LENGTH)));
        Uncertain width = tape.read("width@1/4", 1503).get(0);
        Budget budget = Budget.of(width);
        assertThat(budget.parts()).extracting(Budget.Part::name).containsExactly("width@1/4", "tape");
        double each = 0.8 * 0.8 + 1.0 / 12;
        double all = 0.7 * 0.7 / 3;
        assertThat(budget.parts().get(0).contribution()).isCloseTo(StrictMath.sqrt(each), within(1e-12));
        assertThat(budget.parts().get(0).share()).isCloseTo(each / (each + all), within(1e-12));
        assertThat(budget.parts().get(1).share()).isCloseTo(all / (each + all), within(1e-12));
        assertThat(Budget.of(width, influence -> "all").parts()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "tape/scale, tape",
        "tape/all1, tape",
        "width@head#1/each1, width@head",
        "width@1/4#2/step, width@1/4",
        "width@1/4/step, width@1/4",
        "frame.width, frame.width",
        "/x, /x",
        "#1/each1, #1"
    })
    void theOwnerIsTheFrontOfTheId(String id, String owner) {
        assertThat(Budget.owner(Influence.normal(id, 1))).isEqualTo(owner);
    }

    @Test
    void aCorrelatedGroupIsOnePart() {
        List<Uncertain> vip = CorrelatedInputs.ofRows("bridge", ResistanceData.ROWS);
        Budget budget = Budget.of(ResistanceData.resistance(vip));
        assertThat(budget.parts()).hasSize(1);
        assertThat(budget.parts().get(0).name()).isEqualTo("bridge");
        assertThat(budget.parts().get(0).contribution()).isCloseTo(0.071071, within(5e-7));
    }
}
