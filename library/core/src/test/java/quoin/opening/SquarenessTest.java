package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Out of square as offsets; relations of plane geometry, computed by hand. */
class SquarenessTest {
    private static Opening of(double u, double... six) {
        return Opening.of(Surveys.straight(Surveys.six(u, six)));
    }

    /**
     * Isosceles trapezoid, bases 2410 and 2390, height 1500: legs 1500.0333, both diagonals 2830.1943 (plane geometry:
     * √(h² + ((p + q)/2)²)), every corner 0.3820 degrees out, 10 mm in 1500. Here head and foot are the legs' ends.
     */
    @Test
    void equalDiagonalsDoNotProveSquare() {
        double leg = Math.sqrt(1500.0 * 1500 + 100);
        double diagonal = Math.sqrt(2400.0 * 2400 + 1500.0 * 1500);
        Opening opening = of(0.5, 2410, leg, 2390, leg, diagonal, diagonal);
        assertThat(OpeningFigures.diagonalDifference(opening).value()).isCloseTo(0, within(1e-6));
        double angle = Math.atan(10 / 1500.0);
        assertThat(OpeningFigures.departure(opening, Corner.HEAD_LEFT).value()).isCloseTo(-angle, within(1e-7));
        assertThat(Squareness.offset(opening, Corner.HEAD_LEFT).value())
                .isCloseTo(-2410 * Math.sin(angle), within(1e-4));
        assertThat(Squareness.offset(opening, Corner.FOOT_RIGHT).value())
                .isCloseTo(2390 * Math.sin(angle), within(1e-4));
        assertThat(Math.abs(Squareness.worstOffset(opening).value())).isCloseTo(2410 * Math.sin(angle), within(1e-4));
        assertThat(Squareness.taperOfWidth(opening).value()).isCloseTo(20, within(1e-6));
        assertThat(Squareness.taperOfLength(opening).value()).isCloseTo(0, within(1e-6));
        assertThat(Squareness.hiddenByEqualDiagonals(opening)).isPresent();
    }

    /**
     * Small rack of a rectangle a × b: the offset over leg a is Δd · d/(2b), over leg b Δd · d/(2a). For 2400 × 1500 and
     * Δd = 5 mm: 4.717 and 2.948 mm (plane geometry, first order; tolerance 0.01 for the second order).
     */
    @Test
    void aRackedOpeningShowsInItsDiagonals() {
        double lean = 4.717 / 2400;
        double c = Math.hypot(2400 + 1500 * Math.sin(lean), 1500 * Math.cos(lean));
        double d = Math.hypot(2400 - 1500 * Math.sin(lean), 1500 * Math.cos(lean));
        Opening opening = of(0.3, 2400, 1500, 2400, 1500, c, d);
        assertThat(c - d).isCloseTo(5, within(0.01));
        assertThat(Math.abs(Squareness.offset(opening, Corner.HEAD_LEFT).value()))
                .isCloseTo(4.717, within(0.01));
        assertThat(Squareness.taperOfWidth(opening).value()).isCloseTo(0, within(1e-6));
        assertThat(Squareness.hiddenByEqualDiagonals(opening)).isEmpty();
    }

    /** From six readings of u the offset has the doubt u·d/b over leg a and u·d/a over leg b: 1.887 for the long one. */
    @Test
    void theDoubtOfAnOffset() {
        double d = Math.hypot(2400, 1500);
        Opening opening = of(1, 2400, 1500, 2400, 1500, d, d);
        assertThat(Squareness.offset(opening, Corner.HEAD_LEFT).standardUncertainty())
                .isCloseTo(d / 1500, within(1e-3));
        assertThat(Squareness.hiddenByEqualDiagonals(opening)).isEmpty();
    }

    @Test
    void withoutAShapeNothingIsHidden() {
        Opening opening = Opening.of(Surveys.straight(java.util.List.of(Surveys.read("width@head", 1, 1500))));
        assertThat(Squareness.hiddenByEqualDiagonals(opening)).isEmpty();
    }
}
