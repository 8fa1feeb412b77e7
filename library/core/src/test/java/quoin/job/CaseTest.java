package quoin.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.judge.Problem;
import quoin.judge.Verdict;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.parts.Parts;
import quoin.rulebook.Coverage;
import quoin.rulebook.Rounding;
import quoin.rulebook.Rulebook;

class CaseTest {
    private static final Job JOB = Boathouse.job(Boathouse.readings()).build();
    private static final Assessment ASSESSED = Assessment.of(JOB, Boathouse.rules(), Parts.NONE);

    private static Case expecting(Optional<Verdict> verdict, Map<String, Amount> sizes, Map<String, Verdict> findings) {
        return new Case("plain", "", JOB, JOB.choose(), verdict, sizes, findings);
    }

    private static double widthMm() {
        return ASSESSED.order().orElseThrow().widthMm();
    }

    @Test
    void aCaseHoldsWhereAllIsAsExpected() {
        assertThat(expecting(
                                Optional.of(Verdict.PASS),
                                Map.of("frame.width", Boathouse.mm(widthMm())),
                                Map.of("goes-in", Verdict.PASS, "survey", Verdict.PASS))
                        .against(ASSESSED))
                .isEmpty();
    }

    @Test
    void whatIsNotAsExpectedIsNamedAtItsPlace() {
        List<Problem> problems = expecting(
                        Optional.of(Verdict.FAIL),
                        Map.of(
                                "frame.width", Boathouse.mm(widthMm() + 1),
                                "frame.length", new Amount(2392, Dimension.MASS),
                                "lid", Boathouse.mm(1)),
                        Map.of("goes-in", Verdict.UNDECIDED, "lid", Verdict.FAIL))
                .against(ASSESSED);
        assertThat(problems)
                .extracting(Problem::code, Problem::pointer)
                .containsExactly(
                        tuple("case-verdict", "/expect/verdict"),
                        tuple("case-size", "/expect/sizes/frame.length"),
                        tuple("case-size", "/expect/sizes/frame.width"),
                        tuple("case-size", "/expect/sizes/lid"),
                        tuple("case-finding", "/expect/findings/goes-in"),
                        tuple("case-finding", "/expect/findings/lid"));
        assertThat(problems.get(2).args().asMap())
                .containsEntry("expected", (int) widthMm() + 1 + " mm")
                .containsEntry("got", (int) widthMm() + " mm");
        assertThat(problems.get(3).args().asMap()).containsEntry("got", "none");
        assertThat(problems.get(5).args().asMap()).containsEntry("got", "none");
    }

    /** A size that no list holds is a finding under its name; that is how a case expects a refusal. */
    @Test
    void aRefusedSizeIsExpectedAsAFinding() {
        Rulebook rules = Boathouse.rules();
        Rulebook stock = rules.withSizes(List.of(
                rules.sizes().get(0).withRound(new Rounding.DownTo(List.of(Boathouse.mm(2000)))),
                rules.sizes().get(1)));
        Case refused = expecting(Optional.of(Verdict.FAIL), Map.of(), Map.of("frame.width", Verdict.FAIL));
        assertThat(refused.against(Assessment.of(JOB, stock, Parts.NONE))).isEmpty();
        assertThat(refused.against(ASSESSED)).hasSize(2);
    }

    @Test
    void aJobCoversTheClausesWhoseFiguresItDetermines() {
        Coverage none = Coverage.of(Boathouse.rules());
        assertThat(none.untouched()).hasSize(3);
        assertThat(Case.covered(ASSESSED, none).untouched()).isEmpty();
        Job unread = Boathouse.job(List.of(Boathouse.readings().get(0))).build();
        assertThat(Case.covered(Assessment.of(unread, Boathouse.rules(), Parts.NONE), none)
                        .untouched())
                .hasSize(3);
    }

    @Test
    void aCaseThatExpectsNothingIsRefused() {
        assertThatThrownBy(() -> expecting(Optional.empty(), Map.of(), Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("case must expect a verdict, size or finding, got none of them");
        assertThatThrownBy(() -> new Case("", "", JOB, JOB.choose(), Optional.of(Verdict.PASS), Map.of(), Map.of()))
                .hasMessageContaining("id");
    }
}
