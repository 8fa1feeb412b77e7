package quoin.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Verdict;
import quoin.measure.Extreme;
import quoin.parts.Parts;
import quoin.rulebook.BoundClause;
import quoin.rulebook.Quota;

class PassRoomTest {
    private static PassFacts facts(double left, double right) {
        return new PassFacts("frame.width", 40, 100, left, right, 0.5, 3);
    }

    private static Assessment assess(PassFacts facts, BoundClause... more) {
        return Assessment.of(
                Boathouse.job(Boathouse.readings()).wayIn(facts).build(), Boathouse.rules(more), Parts.NONE);
    }

    private static Finding finding(Assessment assessment, String clause) {
        return assessment.findings().stream()
                .filter(finding -> finding.clause().equals(clause))
                .findFirst()
                .orElseThrow();
    }

    /** The head of 1503.2 mm, lips of 20 mm, 100 mm deep, 40 mm thick: (1483.2 - 2.7) squared + 100 squared, about 1483.9. */
    @Test
    void aLipForbidsTheBox() {
        Assessment assessment = assess(facts(20, 20));
        Finding finding = finding(assessment, "way-in");
        assertThat(finding.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(finding.figure()).isEqualTo("wayin.longest");
        assertThat((double) finding.steps().stream()
                        .filter(step -> step.code().equals("way-in-tilted"))
                        .findFirst()
                        .orElseThrow()
                        .args()
                        .get("longest")
                        .orElseThrow())
                .isCloseTo(1483.9, within(0.3));
        assertThat(assessment.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(assessment.figures()).containsKey("wayin.longest");
    }

    @Test
    void aSmallLipLetsItIn() {
        Finding finding = finding(assess(facts(3, 3)), "way-in");
        assertThat(finding.verdict()).isEqualTo(Verdict.PASS);
        // the cut of the box, 0.5 mm either way, adds to the doubt of what goes in
        Extreme longest = (Extreme)
                java.util.Objects.requireNonNull(assess(facts(3, 3)).figures().get("wayin.longest"))
                        .estimate();
        double u = longest.governing().value().standardUncertainty();
        assertThat(finding.margin().orElseThrow().u()).isCloseTo(StrictMath.sqrt(u * u + 0.25 / 3), within(1e-9));
    }

    /** The length of the box is about that which goes in: the readings cannot tell. */
    @Test
    void nearlyAsLongIsUndecided() {
        double width =
                assess(facts(3, 3)).sizes().find("frame.width").orElseThrow().value();
        for (double lip = 3; lip < 30; lip += 0.1) {
            Finding finding = finding(assess(facts(lip, lip)), "way-in");
            if (finding.verdict() == Verdict.UNDECIDED) {
                assertThat(finding.reason()).contains(Reason.DOUBT);
                assertThat(width).isGreaterThan(1480);
                return;
            }
        }
        throw new AssertionError("some lip must leave it undecided");
    }

    @Test
    void whatIsNotKnownIsNotVerified() {
        PassFacts noLip = new PassFacts("frame.width", 40, 100, Double.NaN, 20, 0.5, 3);
        assertThat(finding(assess(noLip), "way-in").reason()).contains(Reason.NOT_VERIFIED);
        PassFacts noDoubt = new PassFacts("frame.width", 40, 100, 20, 20, Double.NaN, 3);
        assertThat(finding(assess(noDoubt), "way-in").reason()).contains(Reason.NOT_VERIFIED);
        PassFacts noBox = new PassFacts("headbox.length", 40, 100, 20, 20, 0.5, 3);
        assertThat(finding(assess(noBox), "way-in").reason()).contains(Reason.NOT_VERIFIED);
        BoundClause bound = BoundClause.of("box", "wayin.longest").withAtLeast(Quota.fixed(Boathouse.mm(1400)));
        assertThat(finding(assess(PassFacts.UNSTATED, bound), "box").reason()).contains(Reason.NOT_VERIFIED);
        assertThat(finding(assess(facts(3, 3), bound), "box").verdict()).isEqualTo(Verdict.PASS);
    }

    @Test
    void whoDoesNotAskIsNotAnswered() {
        Assessment assessment = assess(PassFacts.UNSTATED);
        assertThat(assessment.notChecked()).contains("way-in");
        assertThat(assessment.findings()).extracting(Finding::clause).doesNotContain("way-in");
        assertThat(assess(facts(3, 3)).notChecked()).doesNotContain("way-in");
    }

    @Test
    void measuresBelowZeroAreRefused() {
        assertThatThrownBy(() -> facts(-1, 0)).hasMessage("left lip must be 0 mm or more and finite, got -1.0 mm");
        assertThatThrownBy(() -> new PassFacts("frame.width", 40, 100, 20, 20, 1, Double.NaN))
                .hasMessage("play must be 0 mm or more and finite, got NaN mm");
    }
}
