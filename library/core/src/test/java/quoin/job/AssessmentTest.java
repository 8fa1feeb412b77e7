package quoin.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.clearance.SiteFacts;
import quoin.judge.Caution;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Verdict;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;
import quoin.opening.Cannot;
import quoin.opening.Corner;
import quoin.opening.Finish;
import quoin.opening.HeadTowards;
import quoin.opening.Obstacle;
import quoin.opening.Plane;
import quoin.opening.Reading;
import quoin.opening.Side;
import quoin.opening.Span;
import quoin.parts.Declared;
import quoin.parts.Parts;
import quoin.parts.Supply;
import quoin.rulebook.BoundClause;
import quoin.rulebook.FrameRule;
import quoin.rulebook.Quota;
import quoin.rulebook.Rulebook;
import quoin.rulebook.SurveyRule;

class AssessmentTest {
    private static Assessment assess(Job.Builder job) {
        return Assessment.of(job.build(), Boathouse.rules(), Parts.NONE);
    }

    private static Finding finding(Assessment assessment, String clause) {
        return assessment.findings().stream()
                .filter(f -> f.clause().equals(clause))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aGoodJobPasses() {
        Assessment assessment = assess(Boathouse.job(Boathouse.readings()));
        assertThat(assessment.verdict()).isEqualTo(Verdict.PASS);
        assertThat(assessment.survey().complete()).isTrue();
        assertThat(assessment.probability()).isPresent();
        assertThat(assessment.probability().getAsDouble()).isGreaterThan(0.99);
        assertThat(assessment.adjustment().accepted()).isTrue();
        Order order = assessment.order().orElseThrow();
        assertThat(order.widthMm())
                .isEqualTo(assessment.sizes().find("frame.width").orElseThrow().value());
        assertThat(order.widthMm()).isBetween(1490.0, 1497.0);
        assertThat(assessment.shape().orElseThrow().placed()).isPresent();
        assertThat(assessment.notChecked()).contains("fixings", "heat", "way-in");
    }

    @Test
    void theSameJobGivesTheSameFindings() {
        Assessment once = assess(Boathouse.job(Boathouse.readings()));
        Assessment again = assess(Boathouse.job(Boathouse.readings()));
        assertThat(again.findings()).isEqualTo(once.findings());
        assertThat(again.figures()).isEqualTo(once.figures());
    }

    /** A size is a decision: the gap keeps the doubt of the opening, whatever the size was computed from. */
    @Test
    void theDoubtOfAGapIsNeverZero() {
        Assessment assessment = assess(Boathouse.job(Boathouse.readings()));
        FigureValue least = assessment.figures().get("gap.least");
        assertThat(least).isNotNull();
        for (Extreme.Part part : ((Extreme) least.estimate()).parts()) {
            assertThat(part.value().standardUncertainty()).isGreaterThan(0.1);
        }
        for (int mm = 1480; mm <= 1500; mm += 5) {
            Assessment ordered = assess(Boathouse.job(Boathouse.readings())
                    .ordered(Map.of("frame.width", Boathouse.mm(mm), "frame.length", Boathouse.mm(2390))));
            Extreme gap = (Extreme) ordered.figures().get("gap.least").estimate();
            assertThat(gap.governing().value().standardUncertainty()).isGreaterThan(0.1);
        }
    }

    @Test
    void anOrderedSizeReplacesTheClause() {
        Assessment assessment =
                assess(Boathouse.job(Boathouse.readings()).ordered(Map.of("frame.width", Boathouse.mm(1510))));
        assertThat(assessment.order().orElseThrow().widthMm()).isEqualTo(1510);
        assertThat(finding(assessment, "goes-in").verdict()).isEqualTo(Verdict.FAIL);
        assertThat(assessment.verdict()).isEqualTo(Verdict.FAIL);
    }

    @Test
    void aMissingDiagonalIsAnIncompleteSurvey() {
        List<Reading> readings = new ArrayList<>(Boathouse.readings().subList(0, 6));
        Assessment assessment = assess(Boathouse.job(readings));
        assertThat(assessment.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(assessment.survey().missing()).contains("diagonal@head-left", "diagonal@head-right");
        assertThat(assessment.survey().next().orElseThrow().of()).isEqualTo("diagonal@head-left");
        assertThat(finding(assessment, "adjustment").reason()).contains(Reason.NOT_DETERMINED);
        assertThat(finding(assessment, "goes-in").reason()).contains(Reason.NOT_DETERMINED);
        assertThat(assessment.shape()).isEmpty();
        assertThat(assessment.order()).isEmpty();
        assertThat(assessment.probability()).isEmpty();
    }

    @Test
    void aReadingThatCannotBeTakenIsNotAskedFor() {
        List<Reading> readings = new ArrayList<>(Boathouse.readings().subList(0, 6));
        OpeningFacts facts = with(
                readings, List.of(new Cannot(Span.parse("diagonal@head-left"), "chain opener in the way")), List.of());
        Assessment assessment = assess(Boathouse.job(facts));
        assertThat(assessment.survey().next().orElseThrow().of()).isEqualTo("diagonal@head-right");
        assertThat(finding(assessment, "survey").steps())
                .anyMatch(step -> step.code().equals("cannot"));
    }

    private static OpeningFacts with(List<Reading> readings, List<Cannot> cannot, List<Obstacle> obstacles) {
        return new OpeningFacts(
                "recess",
                Double.NaN,
                HeadTowards.RIDGE,
                true,
                2,
                Finish.UNSTATED,
                readings,
                cannot,
                Map.of(),
                obstacles,
                List.of(),
                List.of());
    }

    @Test
    void withoutAHeadOrStraightnessNothingPasses() {
        OpeningFacts facts = OpeningFacts.finished(HeadTowards.UNKNOWN, Double.NaN, Boathouse.readings());
        Assessment assessment = assess(Boathouse.job(facts));
        assertThat(assessment.survey().missing()).containsExactly("headTowards", "straightWithin");
        assertThat(assessment.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(finding(assessment, "survey").reason()).contains(Reason.INCOMPLETE);
        assertThat(assessment.survey().complete()).isFalse();
    }

    @Test
    void aMisreadDiagonalLeavesEveryBoundOpenAndAsksForOneReading() {
        List<Reading> readings = Boathouse.readings();
        readings.set(6, Reading.of("diagonal@head-left", Boathouse.TAPE, 2852, 2852));
        Assessment assessment = assess(Boathouse.job(readings));
        assertThat(assessment.adjustment().accepted()).isFalse();
        assertThat(assessment.adjustment().suspects()).isNotEmpty();
        assertThat(finding(assessment, "goes-in").reason()).contains(Reason.READINGS_DISAGREE);
        assertThat(finding(assessment, "adjustment").retakes()).isNotEmpty();
        assertThat(assessment.survey().next()).isPresent();
        assertThat(assessment.order()).isPresent();
        assertThat(assessment.verdict()).isEqualTo(Verdict.UNDECIDED);
    }

    @Test
    void sidesThatCannotCloseAreAFinding() {
        List<Reading> readings = Boathouse.readings();
        readings.set(5, Reading.of("length@right", Boathouse.TAPE, 9000));
        readings.set(6, Reading.of("diagonal@head-left", Boathouse.TAPE, 500));
        Assessment assessment = assess(Boathouse.job(readings));
        assertThat(finding(assessment, "adjustment").reason()).contains(Reason.READINGS_DISAGREE);
        assertThat(assessment.verdict()).isEqualTo(Verdict.UNDECIDED);
    }

    @Test
    void bareWithoutStillIsUndecided() {
        OpeningFacts facts = new OpeningFacts(
                "recess",
                Double.NaN,
                HeadTowards.RIDGE,
                false,
                2,
                new Finish(Finish.State.BARE, Map.of()),
                Boathouse.readings(),
                List.of(),
                Map.of(),
                List.of(),
                List.of(),
                List.of());
        Assessment assessment = assess(Boathouse.job(facts));
        assertThat(finding(assessment, "finish").reason()).contains(Reason.INCOMPLETE);
        assertThat(assessment.verdict()).isEqualTo(Verdict.UNDECIDED);
    }

    @Test
    void aLiningStillToComeMakesTheFrameSmaller() {
        Finish.Still lining = new Finish.Still(12.5, Doubt.limits(1, Dimension.LENGTH));
        OpeningFacts facts = new OpeningFacts(
                "recess",
                Double.NaN,
                HeadTowards.RIDGE,
                false,
                2,
                new Finish(Finish.State.BARE, Map.of(Side.LEFT, lining, Side.RIGHT, lining)),
                Boathouse.readings(),
                List.of(),
                Map.of(),
                List.of(),
                List.of(),
                List.of());
        double bare = assess(Boathouse.job(facts)).order().orElseThrow().widthMm();
        double finished = assess(Boathouse.job(Boathouse.readings()))
                .order()
                .orElseThrow()
                .widthMm();
        // Two linings of 12.5 mm; each size is rounded down to 1 mm.
        assertThat(finished - bare).isBetween(24.0, 26.0);
    }

    @Test
    void missingFinishIsSaidSo() {
        Assessment assessment = assess(Boathouse.job(with(Boathouse.readings(), List.of(), List.of())));
        assertThat(finding(assessment, "survey").steps())
                .anyMatch(step -> step.code().equals("taken-as-finished"));
        assertThat(assessment.verdict()).isEqualTo(Verdict.PASS);
    }

    @Test
    void unknownSiteFactsNeverPass() {
        Assessment assessment = assess(Boathouse.job(Boathouse.readings()).site(SiteFacts.UNKNOWN));
        assertThat(assessment.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(finding(assessment, "site.role").reason()).contains(Reason.NOT_VERIFIED);
    }

    @Test
    void aRulebookMayLimitTheFactsItAsksFor() {
        Rulebook rules = Boathouse.rules().withSiteAsks(List.of("role"));
        Assessment assessment =
                Assessment.of(Boathouse.job(Boathouse.readings()).build(), rules, Parts.NONE);
        assertThat(assessment.findings().stream().map(Finding::clause).filter(c -> c.startsWith("site.")))
                .containsExactly("site.role");
    }

    @Test
    void aQuoteIsNeverForCutting() {
        Assessment assessment = assess(Boathouse.job(Boathouse.readings()).grade(Job.Grade.QUOTE));
        assertThat(assessment.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(finding(assessment, "grade").steps())
                .anyMatch(step -> step.code().equals("not-for-cutting"));
    }

    @Test
    void whatIsAskedForAndNotBuiltIsNotVerified() {
        Obstacle handle = new Obstacle("handle", Side.FOOT, 700, 820, 55, 30, 60);
        Supply supply = new Supply(
                "mains",
                new Declared(230, Dimension.VOLTAGE, Declared.Basis.DECLARED, quoin.judge.Source.UNSTATED),
                Declared.unknown(Dimension.AREA),
                Declared.unknown(Dimension.LENGTH));
        Assessment assessment = assess(Boathouse.job(with(Boathouse.readings(), List.of(), List.of(handle)))
                .heat(new Heat(291.15, Double.NaN, Double.NaN))
                .supply(supply));
        for (String room : List.of("clearance", "heat", "supply")) {
            assertThat(finding(assessment, room).reason()).contains(Reason.NOT_VERIFIED);
            assertThat(assessment.notChecked()).doesNotContain(room);
        }
        assertThat(assessment.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(assessment.cautions()).isNotEmpty();
    }

    @Test
    void aBoundOnAFigureThatNoRoomComputesIsNotVerified() {
        Rulebook rules =
                Boathouse.rules(BoundClause.of("way-in", "wayin.longest").withAtLeast(Quota.fixed(Boathouse.mm(1400))));
        Assessment assessment =
                Assessment.of(Boathouse.job(Boathouse.readings()).build(), rules, Parts.NONE);
        assertThat(finding(assessment, "way-in").reason()).contains(Reason.NOT_VERIFIED);
        assertThat(assessment.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(assessment.probability()).isEmpty();
    }

    @Test
    void aDeclaredFigureMayBeBounded() {
        Rulebook rules = Boathouse.rules(
                BoundClause.of("headroom", "site.headroom").withAtLeast(Quota.fixed(Boathouse.mm(2300))));
        FigureValue headroom = new FigureValue(Uncertain.exact(2310), Dimension.LENGTH);
        Job job = Boathouse.job(Boathouse.readings())
                .declared(Map.of("site.headroom", headroom))
                .build();
        Assessment assessment = Assessment.of(job, rules, Parts.NONE);
        assertThat(finding(assessment, "headroom").verdict()).isEqualTo(Verdict.PASS);
    }

    /** A headroom in N, or an id that a size has, is the job's mistake, not ours: it counts as not declared. */
    @Test
    void whatIsDeclaredInAnotherKindCountsAsNotDeclared() {
        Rulebook rules = Boathouse.rules(
                BoundClause.of("headroom", "site.headroom").withAtLeast(Quota.fixed(Boathouse.mm(2300))));
        FigureValue force = new FigureValue(Uncertain.exact(2310), Dimension.FORCE);
        FigureValue other = new FigureValue(Uncertain.exact(5), Dimension.LENGTH);
        Job job = Boathouse.job(Boathouse.readings())
                .declared(Map.of("site.headroom", force, "own.other", other))
                .build();
        Assessment assessment = Assessment.of(job, rules, Parts.NONE);
        assertThat(finding(assessment, "headroom").reason()).contains(Reason.NOT_VERIFIED);
        assertThat(finding(assessment, "site.headroom").reason()).contains(Reason.NOT_VERIFIED);
        assertThat(finding(assessment, "site.headroom").steps().get(0).code()).isEqualTo("declared-otherwise");
        assertThat(assessment.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(assessment.findings()).extracting(Finding::clause).doesNotContain("own.other");
    }

    @Test
    void aBoundMayNameASize() {
        Rulebook rules = Boathouse.rules(
                BoundClause.of("not-too-wide", "frame.width").withAtMost(Quota.fixed(Boathouse.mm(1200))));
        Assessment assessment =
                Assessment.of(Boathouse.job(Boathouse.readings()).build(), rules, Parts.NONE);
        assertThat(finding(assessment, "not-too-wide").verdict()).isEqualTo(Verdict.FAIL);
    }

    @Test
    void anUndecidedBoundNamesTheReadingToTakeAgain() {
        Rulebook rules = Boathouse.rules(
                BoundClause.of("square", "opening.diagonal.difference").withWithin(Quota.fixed(Boathouse.mm(1.2))));
        Assessment assessment =
                Assessment.of(Boathouse.job(Boathouse.readings()).build(), rules, Parts.NONE);
        Finding square = finding(assessment, "square");
        assertThat(square.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(square.retakes()).isNotEmpty();
        assertThat(assessment.survey().next().orElseThrow().because().code()).isEqualTo("would-settle");
        assertThat(assessment.survey().complete()).isFalse();
    }

    @Test
    void theBackOfTheRecessCounts() {
        List<Reading> readings = Boathouse.readings();
        readings.add(new Reading("", Span.parse("width@1/2"), Plane.BACK, List.of(1490.0), Boathouse.TAPE));
        Assessment assessment = assess(Boathouse.job(readings));
        assertThat(finding(assessment, "planes").reason()).contains(Reason.READINGS_DISAGREE);
        List<Reading> lean = Boathouse.readings();
        lean.add(new Reading("", Span.parse("width@1/2"), Plane.BACK, List.of(1501.0), Boathouse.TAPE));
        Assessment narrower = assess(Boathouse.job(lean));
        assertThat(narrower.order().orElseThrow().widthMm())
                .isLessThan(assess(Boathouse.job(Boathouse.readings()))
                        .order()
                        .orElseThrow()
                        .widthMm());
        lean.add(new Reading("", Span.parse("diagonal@head-left"), Plane.BACK, List.of(2830.0), Boathouse.TAPE));
        assertThat(finding(assess(Boathouse.job(lean)), "planes").reason()).contains(Reason.NOT_DETERMINED);
    }

    @Test
    void aRulebookWithErrorsIsRefused() {
        Rulebook broken =
                Boathouse.rules(BoundClause.of("odd", "no.such.figure").withAtLeast(Quota.fixed(Boathouse.mm(1))));
        Job job = Boathouse.job(Boathouse.readings()).build();
        assertThatThrownBy(() -> Assessment.of(job, broken, Parts.NONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("unknown-figure");
    }

    @Test
    void theSurveyKnowsFactsThatAreNotReadings() {
        Rulebook rules = Boathouse.rules()
                .withSurvey(new SurveyRule(
                        List.of("slope", "finish", "markedOnSite", "straightWithin", "no-such-thing", "fall@head")));
        Assessment assessment =
                Assessment.of(Boathouse.job(Boathouse.readings()).build(), rules, Parts.NONE);
        assertThat(assessment.survey().missing())
                .containsExactly("slope", "markedOnSite", "no-such-thing", "fall@head");
    }

    /** Held to the left side, the frame leans with it: its angle is that between the left side and square to the head. */
    @Test
    void aFrameHeldToAnotherSide() {
        Rulebook rules = Boathouse.rules().withFrame(new FrameRule(FrameRule.Hold.LEFT, "area", List.of()));
        Assessment assessment =
                Assessment.of(Boathouse.job(Boathouse.readings()).build(), rules, Parts.NONE);
        assertThat(assessment.findings()).extracting(Finding::clause).doesNotContain("frame");
        Shape shape = assessment.shape().orElseThrow();
        Shape.Point foot = shape.corners().get(Corner.FOOT_LEFT);
        double turned = shape.placed().orElseThrow().turnedRad();
        assertThat(Math.tan(turned)).isCloseTo(-foot.x() / foot.y(), within(1e-9));
        Assessment level = assess(Boathouse.job(Boathouse.readings()));
        assertThat(level.shape().orElseThrow().placed().orElseThrow().turnedRad())
                .isZero();
        assertThat(assessment.figures().get("gap.least"))
                .isNotEqualTo(level.figures().get("gap.least"));
        assertThat(assessment.figures().get("fit.turned.width"))
                .isEqualTo(level.figures().get("fit.turned.width"));
    }

    /** Racked by 9.4 mm over the length: 1500 less 8 is 1492 wide, of which 1490.6 go in level; half of what lacks, each side. */
    @Test
    void theLeastReadingsWouldGiveAFrameThatJams() {
        List<Reading> racked = List.of(
                Reading.of("width@head", Boathouse.TAPE, 1500),
                Reading.of("width@foot", Boathouse.TAPE, 1500),
                Reading.of("length@left", Boathouse.TAPE, 2400),
                Reading.of("length@right", Boathouse.TAPE, 2400),
                Reading.of("diagonal@head-left", Boathouse.TAPE, 2835.19),
                Reading.of("diagonal@head-right", Boathouse.TAPE, 2825.19));
        Assessment assessment = assess(Boathouse.job(racked));
        TradeRule rule = assessment.tradeRule().orElseThrow();
        assertThat(rule.widthMm()).isEqualTo(1492);
        assertThat(rule.lengthMm()).isEqualTo(2392);
        // Of the lean 8 mm less than the length count, and its cosine: within 0.03 mm.
        double lean = (2835.19 * 2835.19 - 2825.19 * 2825.19) / (4 * 1500);
        assertThat(rule.leastGap().value()).isCloseTo((1500 - lean - 1492) / 2, within(0.03));
        assertThat(rule.jams()).isTrue();
        assertThat(rule.tightest()).anyMatch(name -> name.startsWith("gap.left"));
        assertThat(assessment.figures().get("gap.rule.least").estimate()).isEqualTo(rule.leastGap());
        assertThat(assess(Boathouse.job(Boathouse.readings()))
                        .tradeRule()
                        .orElseThrow()
                        .jams())
                .isFalse();
    }

    /** The gaps of a frame that may turn are worked out where a bound asks for one; turning never makes the least worse. */
    @Test
    void aFrameThatMayTurn() {
        Rulebook rules = Boathouse.rules(
                BoundClause.of("turned", "gap.turned.least").withAtLeast(Quota.fixed(Boathouse.mm(1))),
                BoundClause.of("strip", "gap.turned.greatest").withAtMost(Quota.fixed(Boathouse.mm(9))));
        Assessment assessment =
                Assessment.of(Boathouse.job(Boathouse.readings()).build(), rules, Parts.NONE);
        assertThat(finding(assessment, "turned").verdict()).isEqualTo(Verdict.PASS);
        assertThat(finding(assessment, "strip").odds()).isPresent();
        double turned = assessment.figures().get("gap.turned.least").estimate().value();
        double level = assessment.figures().get("gap.least").estimate().value();
        assertThat(turned).isGreaterThanOrEqualTo(level - 1e-9);
        assertThat(finding(assessment, "turned").odds().orElseThrow().value())
                .isGreaterThan(
                        finding(assessment, "goes-in").odds().orElseThrow().value() - 1e-3);
        assertThat(assess(Boathouse.job(Boathouse.readings())).figures()).doesNotContainKey("gap.turned.least");
    }

    @Test
    void carryIsHandedThroughUnread() {
        Assessment assessment = assess(Boathouse.job(Boathouse.readings()).carry("{\"order\":7}"));
        assertThat(assessment.carry()).isEqualTo("{\"order\":7}");
        assertThat(assessment.toString()).contains("reading-room");
    }

    private static List<String> codes(Finding finding) {
        return finding.cautions().stream().map(Caution::code).toList();
    }

    /** Four depths hold no redundancy; a fifth in the middle does. */
    @Test
    void aTwistFromFourDepthsIsSaidToBeNoProof() {
        Rulebook rules =
                Boathouse.rules(BoundClause.of("twist", "opening.twist").withWithin(Quota.fixed(Boathouse.mm(6))));
        List<Reading> readings = Boathouse.readings();
        for (String corner : List.of("head-left", "head-right", "foot-right", "foot-left")) {
            readings.add(Reading.of("depth@" + corner, Boathouse.TAPE, 140));
        }
        Assessment four = Assessment.of(Boathouse.job(readings).build(), rules, Parts.NONE);
        assertThat(finding(four, "twist").verdict()).isEqualTo(Verdict.PASS);
        assertThat(codes(finding(four, "twist"))).containsExactly("twist-or-misread-depth");
        readings.add(Reading.of("depth@middle", Boathouse.TAPE, 140));
        Assessment five = Assessment.of(Boathouse.job(readings).build(), rules, Parts.NONE);
        assertThat(codes(finding(five, "twist"))).isEmpty();
        assertThat(four.adjustment().planes()).singleElement().matches(plane -> plane.redundancy() == 0);
        List<Reading> behind = new ArrayList<>(readings.subList(0, readings.size() - 1));
        behind.add(new Reading("", Span.parse("width@1/2"), Plane.BACK, List.of(1502.0), Boathouse.TAPE));
        Assessment deep = Assessment.of(Boathouse.job(behind).build(), rules, Parts.NONE);
        assertThat(codes(finding(deep, "twist")))
                .as("a checked back checks no depth")
                .containsExactly("twist-or-misread-depth");
        readings.set(readings.size() - 1, Reading.of("depth@middle", Boathouse.TAPE, 160));
        Assessment wrong = Assessment.of(Boathouse.job(readings).build(), rules, Parts.NONE);
        assertThat(finding(wrong, "twist").reason()).contains(Reason.READINGS_DISAGREE);
        assertThat(finding(wrong, "planes").steps().get(0).code()).isEqualTo("depths-disagree");
        assertThat(finding(wrong, "goes-in").verdict()).isEqualTo(Verdict.PASS);
    }

    /** A taper whose diagonals are equal: isosceles trapezoid, both diagonals √(h² + ((p + q)/2)²). */
    @Test
    void equalDiagonalsAreSaidToProveLittle() {
        Rulebook rules = Boathouse.rules(
                BoundClause.of("square", "opening.diagonal.difference").withWithin(Quota.fixed(Boathouse.mm(6))));
        double diagonal = Math.rint(Math.hypot(2400, 1495));
        List<Reading> readings = new ArrayList<>(List.of(
                Reading.of("width@head", Boathouse.TAPE, 1500, 1500),
                Reading.of("width@foot", Boathouse.TAPE, 1490, 1490),
                Reading.of("length@left", Boathouse.TAPE, 2400, 2400),
                Reading.of("length@right", Boathouse.TAPE, 2400, 2400),
                Reading.of("diagonal@head-left", Boathouse.TAPE, diagonal, diagonal),
                Reading.of("diagonal@head-right", Boathouse.TAPE, diagonal, diagonal)));
        Assessment taper = Assessment.of(Boathouse.job(readings).build(), rules, Parts.NONE);
        assertThat(finding(taper, "square").verdict()).isEqualTo(Verdict.PASS);
        assertThat(codes(finding(taper, "square"))).containsExactly("equal-diagonals-prove-little");
        Assessment plain = Assessment.of(Boathouse.job(Boathouse.readings()).build(), rules, Parts.NONE);
        assertThat(codes(finding(plain, "square"))).isEmpty();
    }
}
