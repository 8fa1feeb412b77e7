package quoin.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Verdict;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;
import quoin.opening.Moving;
import quoin.opening.Obstacle;
import quoin.opening.Reading;
import quoin.opening.Side;
import quoin.parts.Parts;
import quoin.rulebook.FrameRule;
import quoin.rulebook.Rulebook;

class ClearanceRoomTest {
    private static final Instrument RULE =
            Instrument.of("rule", Instrument.Kind.STATED).withEach(List.of(Doubt.standard(0.5, Dimension.LENGTH)));

    private static Obstacle handle(double out, double depthFrom, double depthTo) {
        return new Obstacle("handle", Side.FOOT, 700, 820, out, depthFrom, depthTo);
    }

    private static Rulebook rules() {
        FrameRule plain = Boathouse.rules().frame();
        return Boathouse.rules()
                .withFrame(new FrameRule(plain.hold(), plain.keep(), List.of(Boathouse.mm(20), Boathouse.mm(110))));
    }

    private static List<Finding> findings(
            Rulebook rules, List<Obstacle> obstacles, List<Moving> moving, double... depths) {
        List<Reading> readings = Boathouse.readings();
        String[] corners = {"head-left", "head-right", "foot-right", "foot-left"};
        List<Instrument> instruments = new ArrayList<>(List.of(Boathouse.TAPE));
        for (int i = 0; i < depths.length; i++) {
            readings.add(Reading.of("depth@" + corners[i], RULE, depths[i]));
        }
        instruments.add(RULE);
        OpeningFacts facts = Boathouse.facts(readings, Map.of(), obstacles, moving, List.of());
        Job job = Boathouse.job(facts).instruments(instruments).build();
        return Assessment.of(job, rules, Parts.NONE).findings().stream()
                .filter(finding -> finding.clause().equals("clearance"))
                .toList();
    }

    /** A frame with 4 mm all round: what stands out 2 mm leaves room, 55 mm does not, 4 mm nobody can tell. */
    @Test
    void whatStandsOutOfASideMustLeaveRoom() {
        assertThat(findings(rules(), List.of(handle(2, 30, 60)), List.of())
                        .get(0)
                        .verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(findings(rules(), List.of(handle(55, 30, 60)), List.of())
                        .get(0)
                        .verdict())
                .isEqualTo(Verdict.FAIL);
        Finding close = findings(rules(), List.of(handle(4, 30, 60)), List.of()).get(0);
        assertThat(close.reason()).contains(Reason.DOUBT);
    }

    /** The frame fills 20 to 110 mm: before and behind that an obstacle is clear of it, at the very edge it is not. */
    @Test
    void whatLiesBeyondTheDepthOfTheFrameIsClear() {
        assertThat(findings(rules(), List.of(handle(55, 0, 19)), List.of())
                        .get(0)
                        .verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(findings(rules(), List.of(handle(55, 111, 150)), List.of())
                        .get(0)
                        .verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(findings(rules(), List.of(handle(55, 0, 20)), List.of())
                        .get(0)
                        .verdict())
                .isEqualTo(Verdict.FAIL);
        assertThat(findings(rules(), List.of(handle(55, 110, 150)), List.of())
                        .get(0)
                        .verdict())
                .isEqualTo(Verdict.FAIL);
    }

    @Test
    void whatIsNotStatedIsNotVerified() {
        double no = Double.NaN;
        for (Obstacle obstacle : List.of(
                handle(no, 30, 60),
                handle(2, no, 60),
                handle(2, 30, no),
                new Obstacle("handle", Side.FOOT, no, 820, 2, 30, 60))) {
            assertThat(findings(rules(), List.of(obstacle), List.of()).get(0).reason())
                    .contains(Reason.NOT_VERIFIED);
        }
        assertThat(findings(Boathouse.rules(), List.of(handle(2, 30, 60)), List.of()))
                .allSatisfy(finding -> assertThat(finding.reason()).contains(Reason.NOT_VERIFIED));
    }

    @Test
    void aSashThatOpensInAndMustWorkIsNotVerified() {
        for (String mustWork : List.of("open", "both", "closed")) {
            Moving in = new Moving("sash", Side.HEAD, "in", 1.5, 410, mustWork);
            Verdict expected = mustWork.equals("closed") ? Verdict.PASS : Verdict.UNDECIDED;
            assertThat(findings(rules(), List.of(), List.of(in)).get(0).verdict())
                    .isEqualTo(expected);
            Moving out = new Moving("sash", Side.HEAD, "out", 1.5, 410, mustWork);
            assertThat(findings(rules(), List.of(), List.of(out)).get(0).verdict())
                    .isEqualTo(Verdict.PASS);
        }
        Moving unknown = new Moving("sash", Side.HEAD, "", 1.5, 410, "");
        assertThat(findings(rules(), List.of(), List.of(unknown)).get(0).reason())
                .contains(Reason.NOT_VERIFIED);
    }

    /** The frame fills down to 110 mm: 140 at all corners is enough, 100 at one is not, no depth tells nothing. */
    @Test
    void theRecessMustBeDeepEnough() {
        List<Obstacle> small = List.of(handle(1, 30, 60));
        List<Finding> deep = findings(rules(), small, List.of(), 140, 141, 142, 141);
        assertThat(deep.get(1).verdict()).isEqualTo(Verdict.PASS);
        assertThat(deep.get(1).figure()).isEqualTo("opening.depth.least");
        assertThat(findings(rules(), small, List.of(), 140, 141, 142, 100)
                        .get(1)
                        .verdict())
                .isNotEqualTo(Verdict.PASS);
        assertThat(findings(rules(), small, List.of(), 100, 101, 102, 101)
                        .get(1)
                        .verdict())
                .isEqualTo(Verdict.FAIL);
        assertThat(findings(rules(), small, List.of()).get(1).reason()).contains(Reason.NOT_VERIFIED);
    }

    @Test
    void whoNamesNothingIsNotAnswered() {
        assertThat(findings(rules(), List.of(), List.of(), 100, 100, 100, 100)).isEmpty();
    }
}
