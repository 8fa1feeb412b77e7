package quoin.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.judge.Bound;
import quoin.judge.Conformity;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Verdict;
import quoin.measure.Extreme;
import quoin.opening.Opening;
import quoin.opening.OpeningFigures;
import quoin.opening.Survey;
import quoin.parts.Parts;
import quoin.rulebook.BoundClause;
import quoin.rulebook.Quota;

/** What the opening was drawn with, and limits on how far it is off, by nominal size. */
class NominalTest {
    /** As a published table: 8 mm up to 1 m, 10 mm up to 3 m. */
    private static BoundClause asDrawn(String way) {
        return BoundClause.of("as-drawn", "opening." + way + ".deviation")
                .withWithin(new Quota.Banded(
                        "opening." + way + ".nominal",
                        List.of(
                                new Quota.Band(Boathouse.mm(1000), Boathouse.mm(8)),
                                new Quota.Band(Boathouse.mm(3000), Boathouse.mm(10)))));
    }

    private static Assessment assess(double width, double length, BoundClause clause) {
        Job job = Boathouse.job(Boathouse.readings()).nominal(width, length).build();
        return Assessment.of(job, Boathouse.rules(clause), Parts.NONE);
    }

    private static Finding finding(Assessment assessment) {
        return assessment.findings().stream()
                .filter(finding -> finding.clause().equals("as-drawn"))
                .findFirst()
                .orElseThrow();
    }

    /** The head is about 1503.0, the foot 1503.5 wide: what is largest in size depends on the nominal. */
    @Test
    void theDeviationLargestInSizeWithItsSign() {
        Opening opening = Opening.of(Survey.finished(Boathouse.readings(), 2));
        double narrow = OpeningFigures.leastWidth(opening).value();
        assertThat(OpeningFigures.widthDeviation(opening, 1505).value()).isEqualTo(narrow - 1505, within(1e-9));
        Extreme wide = OpeningFigures.widthDeviation(opening, 1500);
        assertThat(wide.value()).isBetween(3.1, 3.8);
        assertThat(wide.parts())
                .hasSameSizeAs(OpeningFigures.leastWidth(opening).parts());
        assertThat(wide.governing().names()).containsExactly("width@foot");
        assertThat(OpeningFigures.lengthDeviation(opening, 2400).value()).isBetween(-0.6, 0.6);
    }

    /** The odds are those of all places, either way, and the doubt is that of the readings: none comes from the nominal. */
    @Test
    void theOddsAreThoseOfAllPlaces() {
        Assessment assessment = assess(1494, Double.NaN, asDrawn("width"));
        Finding finding = finding(assessment);
        Extreme deviation = OpeningFigures.widthDeviation(Opening.of(Survey.finished(Boathouse.readings(), 2)), 1494);
        double joint = Conformity.odds(deviation, Bound.within(10)).value();
        assertThat(finding.odds().orElseThrow().value()).isEqualTo(joint);
        double governing =
                Conformity.odds(deviation.governing().value(), Bound.within(10)).value();
        assertThat(joint).isBetween(0.5, governing - 0.005);
        assertThat(finding.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(finding.reason()).contains(Reason.DOUBT);
    }

    @Test
    void withinTheTableAndBeyondIt() {
        assertThat(finding(assess(1500, 2400, asDrawn("width"))).verdict()).isEqualTo(Verdict.PASS);
        assertThat(finding(assess(1500, 2400, asDrawn("length"))).verdict()).isEqualTo(Verdict.PASS);
        assertThat(finding(assess(1480, 2400, asDrawn("width"))).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(finding(assess(1500, 2420, asDrawn("length"))).verdict()).isEqualTo(Verdict.FAIL);
    }

    /** What was drawn picks the band, not what was read. A nominal beyond the table has no limit. */
    @Test
    void theNominalPicksTheBand() {
        Finding small = finding(assess(1000, 2400, asDrawn("width")));
        assertThat(small.steps().toString()).contains("opening.width.nominal").contains("8.0");
        Finding beyond = finding(assess(1500, 3001, asDrawn("length")));
        assertThat(beyond.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(beyond.reason()).contains(Reason.NOT_VERIFIED);
    }

    @Test
    void withoutANominalNothingPasses() {
        for (Assessment assessment :
                List.of(assess(Double.NaN, 2400, asDrawn("width")), assess(1500, Double.NaN, asDrawn("length")))) {
            assertThat(finding(assessment).verdict()).isEqualTo(Verdict.UNDECIDED);
            assertThat(finding(assessment).reason()).contains(Reason.NOT_DETERMINED);
            assertThat(assessment.verdict()).isEqualTo(Verdict.UNDECIDED);
        }
        BoundClause plain =
                BoundClause.of("as-drawn", "opening.width.deviation").withWithin(Quota.fixed(Boathouse.mm(10)));
        assertThat(finding(assess(Double.NaN, 2400, plain)).reason()).contains(Reason.NOT_DETERMINED);
    }

    @Test
    void aNominalIsALength() {
        Job.Builder job = Boathouse.job(Boathouse.readings());
        for (double mm : new double[] {0, -1500, 50_001, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> job.nominal(mm, 2400))
                    .hasMessage("nominal width must be above 0 mm and at most 50000 mm, got " + mm + " mm");
            assertThatThrownBy(() -> job.nominal(1500, mm)).hasMessageStartingWith("nominal length");
        }
    }
}
