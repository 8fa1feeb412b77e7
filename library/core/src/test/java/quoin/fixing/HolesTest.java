package quoin.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.fixing.Holes.Through;
import quoin.fixing.MetricScrew.Series;
import quoin.fixing.WoodScrew.Wood;
import quoin.judge.Finding;
import quoin.judge.Verdict;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.parts.Declared;
import quoin.parts.Fastener;

class HolesTest {
    private static Declared mm(double value) {
        return Double.isNaN(value)
                ? Declared.unknown(Dimension.LENGTH)
                : Declared.of(new Amount(value, Dimension.LENGTH));
    }

    private static List<Finding> check(
            double thread, double length, double hole, double countersink, double sheet, double packer) {
        Fastener fastener = new Fastener("screw-x", mm(thread), mm(length), mm(hole), mm(countersink), List.of());
        return Holes.check(fastener, new Through(sheet, packer, 12.5, 25));
    }

    private static List<Verdict> verdicts(List<Finding> findings) {
        return findings.stream().map(Finding::verdict).toList();
    }

    /** NDS 2018, table L3 (secondary source): inches; in mm to half the last digit of the reference table. */
    @ParameterizedTest
    @CsvSource({
        "6, 3.51, 2.87, 2.01, 2.58, 3.57",
        "8, 4.17, 3.33, 2.33, 2.99, 4.37",
        "10, 4.83, 3.86, 2.70, 3.47, 5.16",
        "12, 5.49, 4.34, 3.04, 3.91, 5.95",
        "14, 6.15, 4.98, 3.48, 4.48, 6.75"
    })
    void woodScrewsByNumber(int number, double d, double root, double soft, double hard, double clearance) {
        WoodScrew screw = WoodScrew.ofNumber(number).orElseThrow();
        assertThat(screw.number()).isEqualTo(number);
        assertThat(screw.diameterMm()).isCloseTo(d, within(0.00501));
        assertThat(screw.rootMm()).isCloseTo(root, within(0.00501));
        assertThat(screw.pilotMm(Wood.SOFT)).isCloseTo(soft, within(0.00501));
        assertThat(screw.pilotMm(Wood.HARD)).isCloseTo(hard, within(0.00501));
        assertThat(screw.clearanceMm()).isCloseTo(clearance, within(0.00501));
        // D = 0.060 + 0.013 n inch, the rule behind the numbers (secondary source)
        assertThat(screw.diameterMm() / 25.4).isCloseTo(0.060 + 0.013 * number, within(1e-9));
    }

    @Test
    void thereIsNoNumberSeven() {
        assertThat(WoodScrew.ofNumber(7)).isEmpty();
    }

    /** ISO 273, ISO 15065 and ISO 7046-1 (secondary sources). */
    @ParameterizedTest
    @CsvSource({
        "M3, 3.2, 3.4, 3.6, 6.3, 5.5, 1.65",
        "M4, 4.3, 4.5, 4.8, 9.4, 8.4, 2.7",
        "M5, 5.3, 5.5, 5.8, 10.4, 9.3, 2.7",
        "M6, 6.4, 6.6, 7.0, 12.6, 11.3, 3.3",
        "M8, 8.4, 9, 10, 17.3, 15.8, 4.65"
    })
    void metricHoles(
            MetricScrew screw, double fine, double medium, double coarse, double sink, double head, double high) {
        assertThat(screw.clearanceMm(Series.FINE)).isEqualTo(fine);
        assertThat(screw.clearanceMm(Series.MEDIUM)).isEqualTo(medium);
        assertThat(screw.clearanceMm(Series.COARSE)).isEqualTo(coarse);
        assertThat(screw.countersinkMm()).isEqualTo(sink);
        assertThat(screw.headMm()).isEqualTo(head).isLessThan(sink);
        assertThat(screw.headHeightMm()).isEqualTo(high);
        assertThat(fine).isGreaterThan(screw.diameterMm());
    }

    /** Computed from these tables outside this project: 2.45 mm for M4 and M5, 3.00 mm for M6, medium holes. */
    @ParameterizedTest
    @CsvSource({"M4, 2.45", "M5, 2.45", "M6, 3.00"})
    void coneDepths(MetricScrew screw, double depth) {
        assertThat(Holes.coneDepthMm(screw.countersinkMm(), screw.clearanceMm(Series.MEDIUM)))
                .isCloseTo(depth, within(1e-9));
    }

    /** ISO 1478 (secondary source); a sheet of exactly one pitch does not do. */
    @ParameterizedTest
    @CsvSource({
        "ST_2_9, 1.06, 2.18",
        "ST_3_5, 1.27, 2.64",
        "ST_4_2, 1.41, 3.10",
        "ST_4_8, 1.59, 3.58",
        "ST_5_5, 1.81, 4.17"
    })
    void tappingScrews(TappingScrew screw, double pitch, double core) {
        assertThat(screw.pitchMm()).isEqualTo(pitch);
        assertThat(screw.coreMm()).isEqualTo(core).isLessThan(screw.diameterMm());
        assertThat(screw.bites(pitch)).isFalse();
        assertThat(screw.bites(pitch + 0.01)).isTrue();
        assertThat(screw.bites(Double.NaN)).isFalse();
    }

    /** Common practice, no source: the screw sold as No. 8 in a hole of 4.1 mm. Its thread by table L3 is 4.17 mm. */
    @Test
    void theUsualHoleIsNotLargerThanTheUsualThread() {
        double thread = WoodScrew.NO_8.diameterMm();
        assertThat(verdicts(check(thread, 60, 4.1, 10, 3, 0)))
                .containsExactly(Verdict.FAIL, Verdict.PASS, Verdict.PASS);
        assertThat(verdicts(check(4.0, 60, 4.1, 10, 3, 0))).containsExactly(Verdict.PASS, Verdict.PASS, Verdict.PASS);
        assertThat(verdicts(check(4.1, 60, 4.1, 10, 3, 0))).first().isEqualTo(Verdict.FAIL);
    }

    /** (10 − 4.1) / 2 = 2.95 mm deep. */
    @Test
    void aConeDeeperThanItsSheetFails() {
        assertThat(verdicts(check(4, 60, 4.1, 10, 2.94, 0)).get(1)).isEqualTo(Verdict.FAIL);
        assertThat(verdicts(check(4, 60, 4.1, 10, 2.95, 0)).get(1)).isEqualTo(Verdict.PASS);
        assertThat(verdicts(check(4, 60, 4.1, 4, 2.95, 0)).get(1)).isEqualTo(Verdict.FAIL);
    }

    /** 2 + 12.5 + 25 = 39.5 mm, and 3 more with a packer of 3. */
    @Test
    void threadCountsBehindBoardAndPackerOnly() {
        assertThat(verdicts(check(4, 40, 4.1, 6, 2, 0)).get(2)).isEqualTo(Verdict.PASS);
        assertThat(verdicts(check(4, 40, 4.1, 6, 2, 3)).get(2)).isEqualTo(Verdict.FAIL);
        assertThat(verdicts(check(4, 42.5, 4.1, 6, 2, 3)).get(2)).isEqualTo(Verdict.PASS);
        assertThat(Holes.lengthMm(2, 3, 12.5, 25)).isEqualTo(42.5);
    }

    @Test
    void whatIsNotKnownIsNeverAPass() {
        double no = Double.NaN;
        assertThat(verdicts(check(no, 40, 4.1, 6, 2, 0)).get(0)).isEqualTo(Verdict.UNDECIDED);
        assertThat(verdicts(check(4, 40, no, 6, 2, 0))).startsWith(Verdict.UNDECIDED, Verdict.UNDECIDED);
        assertThat(verdicts(check(4, 40, 4.1, no, 2, 0)).get(1)).isEqualTo(Verdict.UNDECIDED);
        assertThat(verdicts(check(4, no, 4.1, 6, 2, 0)).get(2)).isEqualTo(Verdict.UNDECIDED);
        assertThat(verdicts(check(4, 40, 4.1, 6, no, 0))).endsWith(Verdict.UNDECIDED, Verdict.UNDECIDED);
    }

    @Test
    void whatIsNoThicknessIsRefused() {
        assertThatThrownBy(() -> Holes.lengthMm(2, -1, 0, 25))
                .hasMessage("thickness must be 0 mm or more and finite, got -1.0 mm");
        assertThatThrownBy(() -> new Through(2, 0, Double.POSITIVE_INFINITY, 25))
                .hasMessage("thickness must be 0 mm or more and finite, got Infinity mm");
        assertThatThrownBy(() -> Holes.coneDepthMm(4, 5))
                .hasMessage("hole must be above 0 mm and at most the countersink of 4.0 mm, got 5.0 mm");
    }
}
