package quoin.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import quoin.judge.Caution;
import quoin.judge.DecisionRule;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Source;
import quoin.judge.Step;
import quoin.judge.Verdict;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Influence;
import quoin.measure.Uncertain;
import quoin.parts.Parts;
import quoin.rulebook.BoundClause;
import quoin.rulebook.Quota;
import quoin.rulebook.Rulebook;
import quoin.rulebook.Stated;
import quoin.rulebook.SurveyRule;

/** What numbers of a rulebook rest on, how good readings must be, and limits at the edge of a band, in whole jobs. */
class NumbersTest {
    private static Assessment assess(Rulebook rulebook, String taken, Map<String, FigureValue> declared) {
        Job job = Boathouse.job(Boathouse.readings())
                .taken(taken)
                .declared(declared)
                .build();
        return Assessment.of(job, rulebook, Parts.NONE);
    }

    private static Finding finding(Assessment assessment, String clause) {
        return assessment.findings().stream()
                .filter(finding -> finding.clause().equals(clause))
                .findFirst()
                .orElseThrow();
    }

    private static FigureValue declared(String id, double mm, double u) {
        return new FigureValue(Uncertain.of(mm, Influence.normal("declared/" + id, u)), Dimension.LENGTH);
    }

    private static BoundClause headroom(Quota most) {
        return BoundClause.of("headroom", "site.headroom").withAtMost(most).withBecause("some reason", Source.PRACTICE);
    }

    private static Quota banded() {
        return new Quota.Banded(
                "site.depth",
                List.of(
                        new Quota.Band(Boathouse.mm(100), Boathouse.mm(50)),
                        new Quota.Band(Boathouse.mm(200), Boathouse.mm(60))));
    }

    /** P(conforms) by drawing both figures a million times, seed fixed; five standard deviations of the mean are 0.0025. */
    @Test
    void theOddsOfALimitAtAnEdgeAreThoseOfBothOutcomesTogether() {
        for (double[] known : new double[][] {{99.5, 54}, {100.4, 51}, {101, 59.5}, {199.5, 55}}) {
            Map<String, FigureValue> declared = new LinkedHashMap<>();
            declared.put("site.depth", declared("depth", known[0], 1));
            declared.put("site.headroom", declared("headroom", known[1], 2));
            Finding finding = finding(assess(Boathouse.rules(headroom(banded())), "2026-11-02", declared), "headroom");
            SplittableRandom random = new SplittableRandom(7);
            int kept = 0;
            int beyond = 0;
            int runs = 1_000_000;
            for (int i = 0; i < runs; i++) {
                double depth = known[0] + random.nextGaussian();
                double height = known[1] + 2 * random.nextGaussian();
                kept += depth <= 200 && height <= (depth <= 100 ? 50 : 60) ? 1 : 0;
                beyond += depth > 200 ? 1 : 0;
            }
            double odds = finding.odds().orElseThrow().value();
            assertThat(odds).isCloseTo(kept / (double) runs, within(0.0025));
            assertThat(finding.odds().orElseThrow().upper()).isCloseTo((kept + beyond) / (double) runs, within(0.0025));
            assertThat(finding.steps()).extracting(Step::code).contains("band-odds");
        }
    }

    @Test
    void outcomesThatDifferAreUndecidedAndAlikeOnesAreNot() {
        assertThat(headroom(100, 55).verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(headroom(100, 55).reason()).contains(Reason.DOUBT);
        assertThat(headroom(100, 40).verdict()).isEqualTo(Verdict.PASS);
        assertThat(headroom(100, 70).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(headroom(90, 55).verdict()).as("far below the edge").isEqualTo(Verdict.FAIL);
        assertThat(headroom(110, 55).verdict()).as("far above it").isEqualTo(Verdict.PASS);
        assertThat(headroom(200, 40).verdict())
                .as("half of it beyond the table")
                .isEqualTo(Verdict.UNDECIDED);
    }

    private static Finding headroom(double depth, double height) {
        Map<String, FigureValue> declared = new LinkedHashMap<>();
        declared.put("site.depth", declared("depth", depth, 1));
        declared.put("site.headroom", declared("headroom", height, 0.5));
        Assessment assessment = assess(Boathouse.rules(headroom(banded())), "2026-11-02", declared);
        assertThat(assessment.probability().orElseThrow())
                .isLessThanOrEqualTo(
                        finding(assessment, "headroom").odds().orElseThrow().value() + 1e-4);
        return finding(assessment, "headroom");
    }

    /** A stranger's table of thousands of edges within the doubt costs a message, not minutes, and never passes. */
    @Test
    void tooManyEdgesAreNotTakenApart() {
        List<Quota.Band> bands = new ArrayList<>();
        for (int i = 1; i <= 20_000; i++) {
            bands.add(new Quota.Band(Boathouse.mm(i * 0.01), Boathouse.mm(1000)));
        }
        Map<String, FigureValue> declared = new LinkedHashMap<>();
        declared.put("site.depth", declared("depth", 100, 20));
        declared.put("site.headroom", declared("headroom", 40, 0.5));
        BoundClause clause = headroom(new Quota.Banded("site.depth", bands));
        Finding finding = assertTimeout(
                Duration.ofSeconds(20),
                () -> finding(assess(Boathouse.rules(clause), "2026-11-02", declared), "headroom"));
        assertThat(finding.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(finding.steps()).extracting(Step::code).contains("too-many-bands");
    }

    private static List<String> marks(String reviewBy, String verifiedOn, String taken, List<String> asks) {
        Source source = new Source(Source.Kind.STANDARD, "a standard", verifiedOn, reviewBy);
        Quota limit = new Quota.Fixed(Stated.of(Boathouse.mm(3000)).withBecause("", source));
        BoundClause clause =
                BoundClause.of("wide", "fit.width").withAtMost(limit).withBecause("", Source.PRACTICE);
        Rulebook book = Boathouse.rules().withBounds(List.of(clause)).withSourceAsks(asks);
        Finding finding = finding(assess(book, taken, Map.of()), "wide");
        assertThat(finding.steps().get(0).source()).isEqualTo(source);
        return finding.cautions().stream().map(Caution::code).toList();
    }

    @Test
    void aStaleOrUnverifiedNumberMarksTheFinding() {
        assertThat(marks("2026-11-01", "", "2026-11-02", List.of())).containsExactly("source-past-review");
        assertThat(marks("2026-11-02", "", "2026-11-02", List.of()))
                .as("due that very day")
                .isEmpty();
        assertThat(marks("2026-11-01", "", "", List.of())).containsExactly("source-review-not-known");
        assertThat(marks("", "", "2026-11-02", List.of())).isEmpty();
        assertThat(marks("2027-01-01", "2026-01-01", "2026-11-02", List.of("verifiedOn")))
                .as("the clause's own source has no date either")
                .containsExactly("source-not-verified");
        assertThat(marks("", "", "2026-11-02", List.of("reviewBy", "verifiedOn")))
                .containsExactly(
                        "source-not-verified", "source-without-review", "source-not-verified", "source-without-review");
    }

    @Test
    void aStaleSizeMarksTheAssessment() {
        Source old = new Source(Source.Kind.PRACTICE, "", "", "2020-01-01");
        Rulebook rules = Boathouse.rules();
        Rulebook book = rules.withSizes(
                List.of(rules.sizes().get(0).withBecause("", old), rules.sizes().get(1)));
        List<Caution> marks = assess(book, "2026-11-02", Map.of()).cautions().stream()
                .filter(caution -> caution.code().startsWith("source-"))
                .toList();
        assertThat(marks).hasSize(1);
        assertThat(marks.get(0).args().get("of")).contains("frame.width");
    }

    private static Assessment goodTo(String place, double u) {
        Rulebook book = Boathouse.rules()
                .withSurvey(
                        new SurveyRule(Boathouse.NEEDS, Double.NaN, Map.of(place, new Amount(u, Dimension.LENGTH))));
        return assess(book, "2026-11-02", Map.of());
    }

    /**
     * The tape: u 0.8 mm a reading, two of them averaged; its class II at 1.5 m, hook included, is (0.3 + 0.2·2 + 0.3)/√3 mm
     * for all alike (2014/32/EU, Annex X; practice for the hook); its step of 1 mm is 0.29 mm.
     */
    @Test
    void aReadingMustBeAsGoodAsTheRulebookAsks() {
        Assessment loose = goodTo("width@head", 2);
        assertThat(loose.survey().missing()).isEmpty();
        Assessment strict = goodTo("width@head", 0.3);
        assertThat(strict.survey().missing()).containsExactly("width@head");
        Finding finding = finding(strict, "survey");
        assertThat(finding.reason()).contains(Reason.INCOMPLETE);
        Step step = finding.steps().get(0);
        assertThat(step.code()).isEqualTo("too-doubtful");
        double u = (double) step.args().get("u").orElseThrow();
        assertThat(u).isBetween(0.8 / Math.sqrt(2), 1.2);
        assertThat(goodTo("width@head", u + 1e-9).survey().missing()).isEmpty();
        assertThat(strict.survey().next().orElseThrow().of()).isEqualTo("width@head");
    }

    @Test
    void aDoubtfulLimitDoesNotSlipThePassOfASimpleRule() {
        List<Finding> findings = new ArrayList<>();
        for (double u : new double[] {0, 5}) {
            Stated limit = Stated.of(Boathouse.mm(1495));
            Stated doubtful = u > 0 ? limit.withDoubt(quoin.measure.Doubt.standard(u, Dimension.LENGTH)) : limit;
            BoundClause clause = BoundClause.of("wide", "fit.width")
                    .withAtLeast(new Quota.Fixed(doubtful))
                    .withDecide(u > 0 ? DecisionRule.guarded(0.99) : DecisionRule.simple());
            findings.add(finding(assess(Boathouse.rules().withBounds(List.of(clause)), "", Map.of()), "wide"));
        }
        assertThat(findings.get(0).verdict()).isEqualTo(Verdict.PASS);
        assertThat(findings.get(1).verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(findings.get(1).margin().orElseThrow().u()).isGreaterThan(5);
    }
}
