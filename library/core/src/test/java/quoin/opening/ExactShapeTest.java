package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.measure.Influence;
import quoin.measure.Uncertain;

/** Exact relations of plane geometry. Mark: standard; tolerance: rounding of the adjustment, 1e-9 of the size. */
class ExactShapeTest {
    private static final double TIGHT = 1e-8;

    @Test
    void equalDiagonalsAreNoProof() {
        Opening opening = Surveys.Quad.level(2410, 2400, 1500, 10, 1500).opening(0.1);
        assertThat(OpeningFigures.diagonalDifference(opening).value()).isCloseTo(0, within(TIGHT));
        for (Corner corner : Corner.values()) {
            double departure =
                    Math.toDegrees(OpeningFigures.departure(opening, corner).value());
            // 10 mm in 1500: 0.3820 degrees, open at the foot
            assertThat(departure).isCloseTo((corner.isHead() ? -1 : 1) * 0.3820, within(6e-5));
        }
        assertThat(Math.abs(OpeningFigures.worstDeparture(opening).value()))
                .isCloseTo(Math.atan2(10, 1500), within(1e-11));
        assertThat(OpeningFigures.worstDeparture(opening).parts()).hasSize(4);
    }

    /** (0,0) (2400,12) (2382,1512) (-18,1500): sides 2400.0300 and 1500.1080, diagonals 2821.3592 and 2839.1668. */
    @Test
    void aParallelogram() {
        Opening opening = Opening.of(
                Surveys.straight(Surveys.six(0.1, 2400.0300, 1500.1080, 2400.0300, 1500.1080, 2821.3592, 2839.1668)));
        // 0.40105 degrees out of square; the lengths are printed to 1e-4 mm, which is 5e-6 degrees here
        double[] sign = {1, -1, 1, -1};
        for (Corner corner : Corner.values()) {
            double departure =
                    Math.toDegrees(OpeningFigures.departure(opening, corner).value());
            assertThat(departure).isCloseTo(sign[corner.ordinal()] * 0.40105, within(1.2e-5));
        }
        double d1 = 2821.3592;
        double d2 = 2839.1668;
        assertThat(OpeningFigures.diagonalDifference(opening).value()).isCloseTo(d1 - d2, within(1e-4));
        assertThat(d2 * d2 - d1 * d1).isCloseTo(100_800, within(1.0)); // 2839 * 1e-4 * 2
    }

    /** Diagonals that differ by 5 mm: 0.112610 degrees, small-angle formula, second order 1e-6 of it. */
    @ParameterizedTest
    @CsvSource({"2, 0.045044", "3, 0.067566", "5, 0.112610", "10, 0.225220"})
    void diagonalsThatDiffer(double by, double degrees) {
        double d = Math.sqrt(2400.0 * 2400 + 1500 * 1500);
        Opening opening =
                Opening.of(Surveys.straight(Surveys.six(0.1, 2400, 1500, 2400, 1500, d + by / 2, d - by / 2)));
        assertThat(Math.toDegrees(
                        OpeningFigures.departure(opening, Corner.HEAD_RIGHT).value()))
                .isCloseTo(degrees, within(4e-6));
        assertThat(Math.toDegrees(
                        OpeningFigures.departure(opening, Corner.HEAD_LEFT).value()))
                .isCloseTo(-degrees, within(4e-6));
    }

    @Test
    void anglesAddUp() {
        Opening opening = Surveys.Quad.level(2400, 2507, 1303, -184, 1498).opening(1);
        double sum = 0;
        for (Corner corner : Corner.values()) {
            sum += OpeningFigures.cornerAngle(opening, corner).value();
        }
        assertThat(sum).isCloseTo(2 * Math.PI, within(1e-12));
    }

    /** 4m² = -AB² + BC² - CD² + DA² + AC² + BD² for the middle length m, and alike for the width. */
    @Test
    void middleWidthAndLength() {
        double[] s = Surveys.Quad.level(2400, 2407, 1503, -4, 1498).exact();
        Opening opening = Opening.of(Survey.finished(Surveys.six(0.1, s), 1));
        double m = Math.sqrt(-s[0] * s[0] + s[1] * s[1] - s[2] * s[2] + s[3] * s[3] + s[4] * s[4] + s[5] * s[5]) / 2;
        double n = Math.sqrt(s[0] * s[0] - s[1] * s[1] + s[2] * s[2] - s[3] * s[3] + s[4] * s[4] + s[5] * s[5]) / 2;
        assertThat(m).isCloseTo(1500.50075, within(6e-6));
        assertThat(n).isCloseTo(2405.50130, within(6e-6));
        assertThat(part(OpeningFigures.leastLength(opening), "length@1/2")).isCloseTo(m, within(1e-6));
        assertThat(part(OpeningFigures.leastWidth(opening), "width@1/2")).isCloseTo(n, within(1e-6));
    }

    private static double part(quoin.measure.Extreme extreme, String name) {
        return extreme.parts().stream()
                .filter(part -> part.names().contains(name))
                .findFirst()
                .orElseThrow()
                .value()
                .value();
    }

    /**
     * Area by sides and diagonals, a quarter of the root of 4p&sup2;q&sup2; - (a&sup2; - b&sup2; + c&sup2; - d&sup2;)&sup2; (Bretschneider, any handbook of geometry), against the
     * adjusted corners. The area of this shape is printed as 3 609 449 mm&sup2;: to half of the last digit.
     */
    @Test
    void theAreaBySidesAndDiagonals() {
        Surveys.Quad quad = Surveys.Quad.level(2400, 2407, 1503, -4, 1498);
        double[] six = quad.exact();
        double squares = six[0] * six[0] - six[1] * six[1] + six[2] * six[2] - six[3] * six[3];
        double byLengths = StrictMath.sqrt(4 * six[4] * six[4] * six[5] * six[5] - squares * squares) / 4;
        Opening opening = quad.opening(0.1);
        double twice = 0;
        Corner[] round = Corner.values();
        for (int i = 0; i < 4; i++) {
            double[] p = at(opening, round[i]);
            double[] q = at(opening, round[(i + 1) % 4]);
            twice += p[0] * q[1] - q[0] * p[1];
        }
        assertThat(Math.abs(twice) / 2).isCloseTo(byLengths, within(1e-3)).isCloseTo(3_609_449, within(0.5));
    }

    /** In a rectangle PA&sup2; + PC&sup2; = PB&sup2; + PD&sup2; for a pin anywhere (any handbook of geometry), and in no other quadrilateral. */
    @Test
    void aPinAnywhereTellsARectangle() {
        Opening rectangle = Surveys.Quad.level(2400, 2400, 1500, 0, 1500).opening(0.1);
        Opening other = Surveys.Quad.level(2410, 2400, 1500, 10, 1500).opening(0.1);
        for (double[] pin : new double[][] {{731, 402}, {1200, 750}, {-50, 1700}}) {
            assertThat(unequal(rectangle, pin)).isCloseTo(0, within(1e-3));
        }
        assertThat(Math.abs(unequal(other, new double[] {731, 402}))).isGreaterThan(1000);
    }

    private static double unequal(Opening opening, double[] pin) {
        double sum = 0;
        for (Corner corner : Corner.values()) {
            double far = Surveys.far(at(opening, corner), pin);
            boolean first = corner == Corner.HEAD_LEFT || corner == Corner.FOOT_RIGHT;
            sum += (first ? 1 : -1) * far * far;
        }
        return sum;
    }

    private static double[] at(Opening opening, Corner corner) {
        return new double[] {
            opening.corner(corner).get(0).value(), opening.corner(corner).get(1).value()
        };
    }

    /** A corner by three readings of 1 mm: &sigma; &radic;2 d / (ab) = 0.0637 degrees for 2400 by 1500, derived outside this project. */
    @Test
    void aCornerByThreeReadings() {
        Uncertain angle = Uncertain.cosineRule(
                Uncertain.of(2400, Influence.normal("a", 1)),
                Uncertain.of(1500, Influence.normal("b", 1)),
                Uncertain.of(StrictMath.hypot(2400, 1500), Influence.normal("d", 1)));
        assertThat(Math.toDegrees(angle.standardUncertainty())).isCloseTo(0.0637, within(0.00005));
    }
}
