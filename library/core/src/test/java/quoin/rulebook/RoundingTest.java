package quoin.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quoin.judge.Source;

class RoundingTest {
    /** The steps of rules and tapes in mm: 1 mm, 1/2 mm, 1/16 in, 1/32 in; the inch is 25.4 mm exactly (1959 agreement). */
    @ParameterizedTest
    @ValueSource(doubles = {1, 0.5, 25.4 / 16, 25.4 / 32})
    void aMultipleOfTheStepStaysThroughEveryRounding(double step) {
        for (Rounding.Mode mode : Rounding.Mode.values()) {
            for (int k = 0; k <= 1_000_000; k++) {
                double multiple = k * step;
                if (Roundings.toStep(mode, multiple, step) != multiple) {
                    assertThat(Roundings.toStep(mode, multiple, step))
                            .as(mode + " of " + k + " steps")
                            .isEqualTo(multiple);
                }
            }
        }
    }

    /**
     * Rounding once, at the end: 199 at a half, twice, is 199. Rounding the half first gives 200. The figures are those of
     * a published defect of a rules engine (a half of 199 rounded at an inner boundary, then doubled).
     */
    @Test
    void theInnerRoundingTrap() {
        SizeClause once = Sample.size("once", Sample.fixed(10))
                .withMore(
                        new Item(Sample.fixed(199), 0.5, "", Source.UNSTATED),
                        new Item(Sample.fixed(199), 0.5, "", Source.UNSTATED))
                .withLess(Sample.item(10, 1))
                .withRound(new Rounding.Step(Rounding.Mode.NEAREST, Sample.mm(1)));
        SizeClause half = Sample.size("half", Sample.fixed(10))
                .withMore(new Item(Sample.fixed(199), 0.5, "", Source.UNSTATED))
                .withLess(Sample.item(10, 1))
                .withRound(new Rounding.Step(Rounding.Mode.NEAREST, Sample.mm(1)));
        Rulebook rulebook = Sample.with(once, half);
        Sizes sizes = Sample.decide(rulebook, Sample.survey(1500, 2400));
        assertThat(Sample.mm(sizes, "once")).isEqualTo(199);
        assertThat(2 * Sample.mm(sizes, "half")).isEqualTo(200);
        Mapping mapping = MappingProperties.mapping(rulebook);
        assertThat(mapping.find("once", Map.of()).orElseThrow().piece(0))
                .isEqualTo(new Piece.Constant(199 * Exact.ONE));
        assertThat(mapping.find("half", Map.of()).orElseThrow().piece(0))
                .isEqualTo(new Piece.Constant(100 * Exact.ONE));
    }

    /** Three steps of 1/32 in are one and a half of 1/16 in; in doubles the half comes out a little short. */
    @Test
    void aHalfThatAComputationFallsShortOfIsAHalf() {
        SizeClause fine = Sample.size("fine", "fit.width")
                .withRound(new Rounding.Step(Rounding.Mode.NEAREST, Sample.mm(25.4 / 32)));
        SizeClause coarse =
                Sample.size("coarse", "fine").withRound(new Rounding.Step(Rounding.Mode.NEAREST, Sample.mm(25.4 / 16)));
        Sizes sizes = Sample.decide(
                Sample.with(fine, coarse), RandomRules.known(Map.of("fit.width", 2.4, "fit.length", 50.0)));
        assertThat(Sample.mm(sizes, "fine")).isEqualTo(3 * (25.4 / 32));
        assertThat(Sample.mm(sizes, "coarse")).isEqualTo(2 * (25.4 / 16));
        assertThat(List.of(
                        Roundings.toStep(Rounding.Mode.NEAREST, 0.4999, 1),
                        Roundings.toStep(Rounding.Mode.NEAREST, -0.5, 1)))
                .containsExactly(0.0, -1.0);
    }
}
