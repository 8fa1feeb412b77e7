package quoin.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Source;
import quoin.judge.Verdict;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Uncertain;
import quoin.opening.KeepOut;
import quoin.opening.Reading;
import quoin.opening.Side;
import quoin.parts.Declared;
import quoin.parts.Fastener;
import quoin.parts.Parts;
import quoin.parts.Substrate;
import quoin.rulebook.FixingRule;
import quoin.rulebook.Rulebook;

class FixingRoomTest {
    private static final Substrate TIMBER = Substrate.of(Substrate.Kind.TIMBER);

    private static Rulebook rules() {
        FixingRule rule = new FixingRule(
                Boathouse.mm(100),
                Boathouse.mm(50),
                Boathouse.mm(150),
                Boathouse.mm(25),
                Boathouse.mm(60),
                Boathouse.mm(400),
                Boathouse.mm(1),
                "reveal",
                "screw-8",
                Source.PRACTICE);
        return Boathouse.rules().withFixings(rule);
    }

    private static Parts parts(double hole) {
        Fastener screw = new Fastener("screw-8", mm(4), mm(40), mm(hole), mm(10), List.of());
        return Parts.of("heron-parts", "1.0.0", List.of(), List.of(), List.of(), List.of(screw));
    }

    private static Declared mm(double value) {
        return Declared.of(Boathouse.mm(value));
    }

    private static Map<Side, Substrate> all(Substrate substrate) {
        Map<Side, Substrate> sides = new LinkedHashMap<>();
        for (Side side : Side.values()) {
            sides.put(side, substrate);
        }
        return sides;
    }

    private static Map<Side, Substrate> but(Side side, Substrate substrate) {
        Map<Side, Substrate> sides = all(TIMBER);
        sides.put(side, substrate);
        return sides;
    }

    private static Substrate timbers(double u, double... at) {
        List<Substrate.Timber> timbers = new ArrayList<>();
        for (double one : at) {
            timbers.add(new Substrate.Timber(one, 60, u));
        }
        Declared unknown = Declared.unknown(Dimension.LENGTH);
        return new Substrate(Substrate.Kind.BOARD_ON_TIMBER, unknown, unknown, timbers, "probe", List.of());
    }

    private static Assessment assess(Map<Side, Substrate> sides, Parts parts, KeepOut... keepOuts) {
        OpeningFacts facts = Boathouse.facts(Boathouse.readings(), sides, List.of(), List.of(), List.of(keepOuts));
        return Assessment.of(Boathouse.job(facts).build(), rules(), parts);
    }

    private static Finding finding(Assessment assessment, String clause) {
        return assessment.findings().stream()
                .filter(finding -> finding.clause().equals(clause))
                .findFirst()
                .orElseThrow();
    }

    private static SideHoles holes(Assessment assessment, Side side) {
        return assessment.setOut().stream()
                .filter(one -> one.side() == side)
                .findFirst()
                .orElseThrow();
    }

    /** The frame lies in the middle of an opening some 8 mm wider: its holes lie about 4 mm farther along the opening. */
    @Test
    void everySideHasItsHoles() {
        Assessment assessment = assess(all(TIMBER), parts(4.1));
        assertThat(assessment.setOut()).extracting(SideHoles::side).containsExactlyInAnyOrder(Side.values());
        double width = assessment.sizes().find("frame.width").orElseThrow().value();
        for (Side side : List.of(Side.HEAD, Side.FOOT)) {
            List<Double> at = holes(assessment, side).holes().atMm();
            assertThat(at.get(0)).isBetween(50.0, 150.0);
            assertThat(at.get(at.size() - 1)).isBetween(width - 150, width - 50);
            assertThat(holes(assessment, side).inOpeningMm().get(0)).isCloseTo(at.get(0) + 4, within(1.0));
            assertThat(finding(assessment, "fixing." + side.text()).verdict()).isEqualTo(Verdict.PASS);
        }
        assertThat(holes(assessment, Side.LEFT).holes().farthestMm())
                .hasSize(holes(assessment, Side.LEFT).holes().atMm().size() - 1);
        assertThat(assessment.notChecked()).doesNotContain("fixings");
    }

    /** Without a value for what they hold, fixings never pass. */
    @Test
    void capacityIsNotVerified() {
        Assessment assessment = assess(all(TIMBER), parts(4.1));
        assertThat(finding(assessment, "fixing.capacity").reason()).contains(Reason.NOT_VERIFIED);
        assertThat(assessment.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(assessment.cautions()).extracting(caution -> caution.code()).contains("hidden-cables");
    }

    @Test
    void whatNobodyFoundOutIsNotVerified() {
        Assessment assessment = assess(but(Side.FOOT, Substrate.UNKNOWN), parts(4.1));
        assertThat(finding(assessment, "fixing.foot").reason()).contains(Reason.NOT_VERIFIED);
        assertThat(finding(assessment, "fixing.head").verdict()).isEqualTo(Verdict.PASS);
        assertThat(assessment.setOut()).extracting(SideHoles::side).doesNotContain(Side.FOOT);
        Assessment doubtful = assess(but(Side.LEFT, timbers(Double.NaN, 100, 500)), parts(4.1));
        assertThat(finding(doubtful, "fixing.left").reason()).contains(Reason.NOT_VERIFIED);
        assertThat(finding(assess(all(TIMBER), Parts.NONE), "fixing.fastener").reason())
                .contains(Reason.NOT_VERIFIED);
    }

    /** Common practice, no source: nothing overhead hangs on board alone. */
    @Test
    void boardAloneFails() {
        for (Substrate.Kind kind : List.of(Substrate.Kind.BOARD, Substrate.Kind.PLASTERBOARD)) {
            Assessment assessment = assess(but(Side.HEAD, Substrate.of(kind)), parts(4.1));
            assertThat(finding(assessment, "fixing.head").verdict()).isEqualTo(Verdict.FAIL);
        }
    }

    /** A stretch that leaves nothing of the 50 to 150 mm at the end of the side: named. */
    @Test
    void whatIsInTheWayIsNamed() {
        KeepOut joint = new KeepOut(Side.HEAD, 40, 165, "steel joint");
        Finding finding = finding(assess(all(TIMBER), parts(4.1), joint), "fixing.head");
        assertThat(finding.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(finding.steps().get(0).args().get("because")).contains(List.of("steel joint"));
        KeepOut elsewhere = new KeepOut(Side.FOOT, 40, 165, "steel joint");
        assertThat(finding(assess(all(TIMBER), parts(4.1), elsewhere), "fixing.head")
                        .verdict())
                .isEqualTo(Verdict.PASS);
    }

    /**
     * A joint is given along the opening, the hole along the frame, 4 mm on: the first hole keeps half the countersink (5),
     * half a marking step (0.5) and 2 u of where the frame starts away from it, and not a whole step more.
     */
    @Test
    void holesKeepClearOfAJoint() {
        Assessment assessment = assess(all(TIMBER), parts(4.1), new KeepOut(Side.LEFT, 40, 120, "joint"));
        Uncertain start = (Uncertain)
                java.util.Objects.requireNonNull(assessment.figures().get("gap.head@head-left"))
                        .estimate();
        double clear = 120 + 5 + 0.5 + 2 * start.standardUncertainty();
        assertThat(holes(assessment, Side.LEFT).inOpeningMm().get(0)).isBetween(clear, clear + 1);
        assertThat(start.standardUncertainty()).isGreaterThan(0.1);
    }

    @Test
    void holesFindTheTimbers() {
        Assessment assessment =
                assess(but(Side.RIGHT, timbers(3, 90, 450, 810, 1170, 1530, 1890, 2250, 2310)), parts(4.1));
        for (double at : holes(assessment, Side.RIGHT).inOpeningMm()) {
            assertThat(List.of(90, 450, 810, 1170, 1530, 1890, 2250, 2310))
                    .anySatisfy(timber -> assertThat(Math.abs(at - timber)).isLessThan(30 - 6 - 5));
        }
        Assessment none = assess(but(Side.RIGHT, timbers(3, 90, 2310)), parts(4.1));
        assertThat(finding(none, "fixing.right").reason()).contains(Reason.NOT_VERIFIED);
        assertThat(finding(none, "fixing.right").steps().get(0).args().get("because"))
                .contains(List.of("timbers"));
    }

    @Test
    void aHoleNotLargerThanItsThreadFails() {
        assertThat(finding(assess(all(TIMBER), parts(4.0)), "fixing.hole").verdict())
                .isEqualTo(Verdict.FAIL);
        assertThat(finding(assess(all(TIMBER), parts(4.1)), "fixing.hole").verdict())
                .isEqualTo(Verdict.PASS);
    }

    /**
     * Gaps of 4 mm at the head to 10 mm at the foot of a tapered opening, straight between: the stack at each hole and what is
     * left make up the gap there, and the stack is the thickest of 1, 2 and 5 mm that goes in.
     */
    @Test
    void everyHoleIsPacked() {
        List<Reading> tapered = List.of(
                Reading.of("width@head", Boathouse.TAPE, 1503, 1503),
                Reading.of("width@1/2", Boathouse.TAPE, 1509),
                Reading.of("width@foot", Boathouse.TAPE, 1515, 1515),
                Reading.of("length@left", Boathouse.TAPE, 2400, 2400),
                Reading.of("length@right", Boathouse.TAPE, 2400, 2400),
                Reading.of("diagonal@head-left", Boathouse.TAPE, 2835),
                Reading.of("diagonal@head-right", Boathouse.TAPE, 2835));
        OpeningFacts facts = Boathouse.facts(tapered, all(TIMBER), List.of(), List.of(), List.of());
        FixingRule rule = rules().fixings().orElseThrow();
        Rulebook packed =
                rules().withFixings(rule.withPackers(List.of(Boathouse.mm(1), Boathouse.mm(2), Boathouse.mm(5))));
        Assessment assessment = Assessment.of(Boathouse.job(facts).build(), packed, parts(4.1));
        for (Side side : Side.values()) {
            List<Double> at = holes(assessment, side).holes().atMm();
            List<SidePacker> packers = assessment.packers().stream()
                    .filter(packer -> packer.side() == side)
                    .toList();
            assertThat(packers).hasSameSizeAs(at);
            double length = assessment
                    .sizes()
                    .find(side == Side.HEAD || side == Side.FOOT ? "frame.width" : "frame.length")
                    .orElseThrow()
                    .value();
            double start =
                    gap(assessment, "gap." + side.text() + "@" + side.from().text());
            double end = gap(assessment, "gap." + side.text() + "@" + side.to().text());
            for (int i = 0; i < at.size(); i++) {
                double straight = start + (end - start) * at.get(i) / length;
                double stack = packers.get(i).packer().thicknessMm();
                assertThat(packers.get(i).packer().alongMm()).isEqualTo(at.get(i));
                // the sides bow by some tenths of a millimetre
                assertThat(stack + packers.get(i).packer().left().value()).isCloseTo(straight, within(0.7));
                assertThat(stack).isEqualTo(Math.rint(stack));
                assertThat(packers.get(i).packer().left().value()).isBetween(0.0, 1.0);
            }
        }
        assertThat(assess(all(TIMBER), parts(4.1)).packers()).isEmpty();
        assertThat(packed.digest()).isNotEqualTo(rules().digest());
    }

    private static double gap(Assessment assessment, String figure) {
        return java.util.Objects.requireNonNull(assessment.figures().get(figure))
                .estimate()
                .value();
    }

    @Test
    void aPackerThatIsNoneIsRefused() {
        FixingRule rule = rules().fixings().orElseThrow();
        assertThatThrownBy(() -> rule.withPackers(List.of(Boathouse.mm(0))))
                .hasMessage("packer must be from 0.001 mm to 100.0 mm, got 0.0 mm");
        assertThatThrownBy(() -> rule.withPackers(List.of(new Amount(1, Dimension.FORCE))))
                .hasMessage("packer must be from 0.001 mm to 100.0 mm, got 1.0 of another kind");
        assertThatThrownBy(() -> rule.withPackers(java.util.Collections.nCopies(21, Boathouse.mm(1))))
                .hasMessage("number of packers must be 20 or less, got 21");
    }
}
