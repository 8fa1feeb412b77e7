package quoin.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.judge.Caution;
import quoin.judge.DecisionRule;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Verdict;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;
import quoin.opening.Reading;
import quoin.parts.Parts;
import quoin.rulebook.BoundClause;
import quoin.rulebook.Quota;

/** What the answer says of squareness: when equal diagonals prove little, and when a tape cannot decide a limit at all. */
class SquarenessVerdictsTest {
    private static final double WIDTH = 1500;
    private static final double LENGTH = 2400;

    private static Instrument tape(double u) {
        return Instrument.of("tape", Instrument.Kind.STATED).withEach(List.of(Doubt.standard(u, Dimension.LENGTH)));
    }

    private static Assessment assess(
            double u, double head, double foot, double side, double one, double other, BoundClause clause) {
        Instrument tape = tape(u);
        List<Reading> readings = List.of(
                Reading.of("width@head", tape, head),
                Reading.of("width@foot", tape, foot),
                Reading.of("length@left", tape, side),
                Reading.of("length@right", tape, side),
                Reading.of("diagonal@head-left", tape, one),
                Reading.of("diagonal@head-right", tape, other));
        Job job = Boathouse.job(readings).instruments(List.of(tape)).build();
        return Assessment.of(job, Boathouse.rules(clause), Parts.NONE);
    }

    /** A rectangle racked so far that its long side is off by so much at its end. */
    private static Finding racked(double u, double offset, BoundClause clause) {
        double squares = WIDTH * WIDTH + LENGTH * LENGTH;
        double one = Math.sqrt(squares + 2 * WIDTH * offset);
        double other = Math.sqrt(squares - 2 * WIDTH * offset);
        return finding(assess(u, WIDTH, WIDTH, LENGTH, one, other, clause));
    }

    private static Finding finding(Assessment assessment) {
        return assessment.findings().stream()
                .filter(finding -> finding.clause().equals("square"))
                .findFirst()
                .orElseThrow();
    }

    private static BoundClause within(String figure, double mm, double probability) {
        return BoundClause.of("square", figure)
                .withWithin(Quota.fixed(Boathouse.mm(mm)))
                .withDecide(DecisionRule.guarded(probability));
    }

    private static List<String> cautions(Finding finding) {
        return finding.cautions().stream().map(Caution::code).toList();
    }

    /**
     * An isosceles trapezoid has equal diagonals √(h² + ((p + q)/2)²) and no right angle (plane geometry): head 1510, foot
     * 1490, height 2400 leans by 10 over 2400 on both sides. The limit on the diagonals holds, and the finding says what
     * that proves.
     */
    @Test
    void equalDiagonalsProveLittle() {
        double leg = Math.hypot(LENGTH, 10);
        double diagonal = Math.hypot(LENGTH, WIDTH);
        BoundClause diagonals = within("opening.diagonal.difference", 6, 0.95);
        Finding taper = finding(assess(0.8, 1510, 1490, leg, diagonal, diagonal, diagonals));
        assertThat(taper.verdict()).isEqualTo(Verdict.PASS);
        assertThat(cautions(taper)).containsExactly("equal-diagonals-prove-little");
        assertThat(taper.cautions().get(0).args().toString()).contains("10.0");
        BoundClause offset = within("opening.square.offset", 6, 0.95);
        assertThat(finding(assess(0.8, 1510, 1490, leg, diagonal, diagonal, offset))
                        .verdict())
                .isEqualTo(Verdict.FAIL);
        // A true rectangle, and a taper that its doubt hides, are not said to be out.
        assertThat(cautions(finding(assess(0.8, WIDTH, WIDTH, LENGTH, diagonal, diagonal, diagonals))))
                .isEmpty();
        assertThat(cautions(finding(assess(0.8, 1501, 1499, LENGTH, diagonal, diagonal, diagonals))))
                .isEmpty();
    }

    /**
     * 8 mm over the 2400 leg (DIN 18202 table 2, 1 m to 3 m, as reprinted elsewhere), six readings of u: the offset has
     * the doubt u·d/1500 = 1.887 u. With u = 2 mm not even a true rectangle reaches the odds of 2 standard uncertainties
     * (0.97725): P = 1 − 2Φ(−8/3.774) = 0.966. With u = 1 mm it passes below 8 − 2 · 1.887 = 4.226 (plane geometry, and
     * JCGM 106:2012, 8.3.2: a guard band of 2 u).
     */
    @Test
    void whenTheTapeCannotDecideAtAll() {
        BoundClause limit = within("opening.corner.head-left.offset", 8, 0.97725);
        for (double offset : new double[] {0, 0.4, 4, 7.9}) {
            Finding coarse = racked(2, offset, limit);
            assertThat(coarse.verdict()).isEqualTo(Verdict.UNDECIDED);
            assertThat(coarse.reason()).contains(Reason.TOO_NARROW);
        }
        assertThat(racked(2, 0, limit).odds().orElseThrow().value()).isBetween(0.9655, 0.9665);
        assertThat(racked(1, 4.20, limit).verdict()).isEqualTo(Verdict.PASS);
        Finding between = racked(1, 4.25, limit);
        assertThat(between.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(between.reason()).contains(Reason.DOUBT);
        assertThat(racked(1, 11.75, limit).verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(racked(1, 11.80, limit).verdict()).isEqualTo(Verdict.FAIL);
        // What is far out is out however coarse the tape.
        assertThat(racked(2, 16, limit).verdict()).isEqualTo(Verdict.FAIL);
    }
}
