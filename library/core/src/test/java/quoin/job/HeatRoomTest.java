package quoin.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Source;
import quoin.judge.Verdict;
import quoin.measure.Dimension;
import quoin.measure.Estimate;
import quoin.opening.Side;
import quoin.parts.Declared;
import quoin.parts.Parts;
import quoin.parts.Profile;
import quoin.parts.Substrate;
import quoin.rulebook.BoundClause;
import quoin.rulebook.Quota;

class HeatRoomTest {
    private static final double ZERO = 273.15;
    private static final Heat SUMMER = new Heat(ZERO + 18, ZERO - 5, ZERO + 65);
    private static final BoundClause BOUND =
            BoundClause.of("loose-in-heat", "heat.gap.least").withAtLeast(Quota.fixed(Boathouse.mm(2)));

    private static Parts parts(double perKelvin) {
        Declared expansion = Double.isNaN(perKelvin)
                ? Declared.unknown(Dimension.PER_KELVIN)
                : new Declared(perKelvin, Dimension.PER_KELVIN, Declared.Basis.DECLARED, Source.UNSTATED);
        Profile flange = new Profile("flange", Declared.unknown(Dimension.LINE_MASS), List.of(), expansion);
        return Parts.of("heron-parts", "1.0.0", List.of(), List.of(), List.of(flange), List.of());
    }

    private static Job job(Heat heat, boolean chosen, boolean timber) {
        Map<Side, Substrate> sides = timber
                ? Map.of(
                        Side.HEAD, Substrate.of(Substrate.Kind.TIMBER),
                        Side.RIGHT, Substrate.of(Substrate.Kind.BOARD_ON_TIMBER),
                        Side.FOOT, Substrate.of(Substrate.Kind.TIMBER),
                        Side.LEFT, Substrate.of(Substrate.Kind.TIMBER))
                : Map.of();
        OpeningFacts facts = Boathouse.facts(Boathouse.readings(), sides, List.of(), List.of(), List.of());
        Choices choose = new Choices(
                "heron-frame",
                "",
                "",
                "heron-parts",
                chosen ? Map.of("profile", "flange") : Map.of(),
                "head",
                "right",
                "right");
        return Job.named("heat", facts, choose).heat(heat).build();
    }

    private static Finding finding(Assessment assessment, String clause) {
        return assessment.findings().stream()
                .filter(finding -> finding.clause().equals(clause))
                .findFirst()
                .orElseThrow();
    }

    private static Estimate figure(Assessment assessment, String figure) {
        return java.util.Objects.requireNonNull(assessment.figures().get(figure))
                .estimate();
    }

    /**
     * Worked by hand: the length of 2392 mm grows by 2392 (23e-6 * 45 - 4e-6 * 47) = 2.026 mm against timber at 65 degC, the
     * width of 1495 by 1.266, and half of that is missing at each side: 1.013 or 0.633, whichever way governs.
     */
    @Test
    void aFrameOfAluminiumIsTighterInSummer() {
        Assessment assessment = Assessment.of(job(SUMMER, true, true), Boathouse.rules(BOUND), parts(23e-6));
        double plain = figure(assessment, "gap.least").value();
        double hot = figure(assessment, "heat.gap.least").value();
        assertThat(plain - hot).isBetween(0.633 - 1e-3, 1.013 + 1e-3);
        assertThat(finding(assessment, "loose-in-heat").verdict()).isEqualTo(Verdict.PASS);
        assertThat(assessment.findings()).extracting(Finding::clause).doesNotContain("heat");
        assertThat(assessment.notChecked()).doesNotContain("heat");
    }

    /** 500 K are not survived by any gap allowance: 1495 * 23e-6 * 475 is 16 mm. */
    @Test
    void aFrameThatIsSqueezedFails() {
        Heat fire = new Heat(ZERO + 18, ZERO - 5, ZERO + 500);
        Assessment assessment = Assessment.of(job(fire, true, true), Boathouse.rules(), parts(23e-6));
        assertThat(finding(assessment, "heat").verdict()).isEqualTo(Verdict.FAIL);
        assertThat(finding(assessment, "heat").figure()).isEqualTo("heat.gap.least");
        assertThat(assessment.verdict()).isEqualTo(Verdict.FAIL);
    }

    @Test
    void withoutABoundTheFrameMustNotBeSqueezed() {
        Assessment assessment = Assessment.of(job(SUMMER, true, true), Boathouse.rules(), parts(23e-6));
        assertThat(finding(assessment, "heat").verdict()).isEqualTo(Verdict.PASS);
        assertThat(finding(assessment, "heat").steps())
                .extracting(step -> step.code())
                .contains("grows-in-heat");
    }

    /**
     * From no growth at all to that of steel, which moves half the length of 2391 mm times 47 K; to 2 in 10 000 for an opening
     * that is not quite square.
     */
    @Test
    void aSurroundThatNobodyFoundOutIsDoubted() {
        Assessment assessment = Assessment.of(job(SUMMER, true, false), Boathouse.rules(), parts(23e-6));
        Estimate gap = figure(assessment, "heat.gap.least");
        quoin.measure.Uncertain governing =
                ((quoin.measure.Extreme) gap).governing().value();
        double effect = governing.sensitivity(quoin.measure.Influence.rectangular("expansion.surround", 6e-6));
        assertThat(effect).isCloseTo(2391 * 47 / 2.0, within(10.0));
        assertThat(finding(assessment, "heat").steps())
                .filteredOn(step -> step.code().equals("grows-in-heat"))
                .allSatisfy(step -> assertThat(step.source().kind()).isEqualTo(Source.Kind.ASSUMPTION));
    }

    @Test
    void whatIsNotKnownIsNotVerified() {
        for (Assessment assessment : List.of(
                Assessment.of(job(SUMMER, false, true), Boathouse.rules(BOUND), parts(23e-6)),
                Assessment.of(job(SUMMER, true, true), Boathouse.rules(BOUND), parts(Double.NaN)),
                Assessment.of(job(SUMMER, true, true), Boathouse.rules(BOUND), Parts.NONE),
                Assessment.of(
                        job(new Heat(ZERO + 18, Double.NaN, ZERO + 65), true, true),
                        Boathouse.rules(BOUND),
                        parts(23e-6)))) {
            assertThat(finding(assessment, "heat").reason()).contains(Reason.NOT_VERIFIED);
            assertThat(finding(assessment, "loose-in-heat").reason()).contains(Reason.NOT_VERIFIED);
            assertThat(assessment.verdict()).isEqualTo(Verdict.UNDECIDED);
        }
    }

    @Test
    void whoStatesNoTemperatureIsNotAsked() {
        Assessment assessment = Assessment.of(job(Heat.UNSTATED, true, true), Boathouse.rules(), parts(23e-6));
        assertThat(assessment.findings()).extracting(Finding::clause).doesNotContain("heat");
        assertThat(assessment.notChecked()).contains("heat");
        assertThat(assessment.figures()).doesNotContainKey("heat.gap.least");
    }

    @Test
    void aBoundOnHeatWithoutTemperaturesIsNotVerified() {
        Assessment assessment = Assessment.of(job(Heat.UNSTATED, true, true), Boathouse.rules(BOUND), parts(23e-6));
        assertThat(finding(assessment, "loose-in-heat").reason()).contains(Reason.NOT_VERIFIED);
    }
}
