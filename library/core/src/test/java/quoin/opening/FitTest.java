package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.measure.Estimate;
import quoin.measure.Uncertain;

/**
 * Level rectangles and gaps of two openings. Reference: linear programmes by an independent solver (mark: handbook for the
 * method, our own table), printed to 1e-3 mm, 1e-2 mm² and 1e-4 mm.
 */
class FitTest {
    private static final Surveys.Quad Q1 = Surveys.Quad.level(2400, 2407, 1503, -4, 1498);
    private static final Surveys.Quad Q3 = Surveys.Quad.level(2400, 2390, 1500, 10, 1500);

    @Test
    void aSkewedOpening() {
        Fit.Rectangle fit = Fit.largest(Q1.opening(0.01)).orElseThrow();
        assertThat(fit.width().value()).isCloseTo(2400, within(1e-6));
        assertThat(fit.length().value()).isCloseTo(1498.008, within(6e-4));
        // The foot at the left side: 1498 + 5 * 4 / 2411, in closed form. The reference's own search ends 0.06 mm²
        // short.
        double area = 2400 * (1498 + 20 / 2411.0);
        assertThat(fit.width().value() * fit.length().value()).isCloseTo(area, within(1e-4));
        assertThat(fit.width().value() * fit.length().value()).isCloseTo(3_595_219.85, within(0.06));
        assertThat(fit.x()).isCloseTo(0, within(1e-6));
        assertThat(fit.y()).isCloseTo(0, within(1e-6));
    }

    /** Equal diagonals, and yet 20 mm narrower at the foot. */
    @Test
    void aTaperWithEqualDiagonals() {
        Fit.Rectangle fit = Fit.largest(Q3.opening(0.01)).orElseThrow();
        assertThat(fit.width().value()).isCloseTo(2380, within(1e-6));
        assertThat(fit.length().value()).isCloseTo(1500, within(1e-6));
    }

    @Test
    void leastGaps() {
        assertThat(least(Q1, 2390, 1490)).isCloseTo(4.0104, within(1e-4));
        assertThat(least(Q3, 2390, 1490)).isCloseTo(-4.9006, within(2e-4)); // theirs is square to a leaning side
    }

    private static double least(Surveys.Quad quad, double w, double l) {
        return Gaps.least(Gaps.of(quad.opening(0.01), Uncertain.exact(w), Uncertain.exact(l))
                        .orElseThrow())
                .value();
    }

    /** A rectangle 1500 x 2400 and a frame 1494 x 2392: gaps 3 and 4, worked by hand. */
    @Test
    void aFrameInARectangle() {
        Opening opening = Surveys.Quad.level(1500, 1500, 2400, 0, 2400).opening(1);
        Gaps gaps =
                Gaps.of(opening, Uncertain.exact(1494), Uncertain.exact(2392)).orElseThrow();
        Map<String, Estimate> figures = OpeningFigures.order(gaps);
        assertThat(figures).hasSize(10);
        for (Side side : Side.values()) {
            for (Corner corner : List.of(side.from(), side.to())) {
                Uncertain gap = (Uncertain) figures.get("gap." + side.text() + "@" + corner.text());
                double wanted = side == Side.LEFT || side == Side.RIGHT ? 3 : 4;
                assertThat(gap.value()).isCloseTo(wanted, within(1e-9));
                assertThat(gap.standardUncertainty()).isPositive();
            }
        }
        assertThat(Gaps.least(gaps).value()).isCloseTo(3, within(1e-9));
        assertThat(Gaps.greatest(gaps).value()).isCloseTo(4, within(1e-9));
        assertThat(gaps.placedX()).isCloseTo(3, within(1e-9));
        assertThat(gaps.placedY()).isCloseTo(4, within(1e-9));
        assertThat(Gaps.least(gaps).governing().names()).hasSize(2);
    }

    /** Half of what both sides leave: u(gap) = u(width) / 2 for a frame without doubt, and the cut adds its half. */
    @Test
    void theDoubtOfTheLeastGap() {
        Opening opening = Surveys.Quad.level(1500, 1500, 2400, 0, 2400).opening(1);
        Uncertain head = opening.corner(Corner.HEAD_RIGHT).get(0);
        Uncertain least =
                Gaps.least(Gaps.of(opening, Uncertain.exact(1490), Uncertain.exact(2300))
                                .orElseThrow())
                        .parts()
                        .stream()
                        .filter(part -> part.names().equals(List.of("gap.right@head-right", "gap.left@head-left")))
                        .findFirst()
                        .orElseThrow()
                        .value();
        // The frame's head lies 50 mm below the opening's, so a little of the foot's doubt comes in.
        assertThat(least.standardUncertainty()).isCloseTo(head.standardUncertainty() / 2, within(0.02));
        Uncertain cut = Uncertain.of(1490, quoin.measure.Influence.rectangular("cut/frame.width", 0.5));
        Uncertain wider = Gaps.least(
                        Gaps.of(opening, cut, Uncertain.exact(2300)).orElseThrow())
                .parts()
                .stream()
                .filter(part -> part.names().equals(List.of("gap.right@head-right", "gap.left@head-left")))
                .findFirst()
                .orElseThrow()
                .value();
        assertThat(wider.variance() - least.variance()).isCloseTo(0.25 / 3 / 4, within(1e-9));
    }

    @Test
    void sizesMustBePositive() {
        Opening opening = Q1.opening(1);
        assertThatThrownBy(() -> Gaps.of(opening, Uncertain.exact(0), Uncertain.exact(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("frame width must be above 0 mm, got 0.0 mm");
        assertThatThrownBy(() -> Gaps.of(opening, Uncertain.exact(1), Uncertain.exact(-1)))
                .hasMessage("frame length must be above 0 mm, got -1.0 mm");
    }

    @Test
    void withoutAShapeThereIsNothing() {
        Opening opening = Opening.of(Surveys.straight(Q1.six(1).subList(0, 4)));
        assertThat(opening.hasShape()).isFalse();
        assertThat(Fit.largest(opening)).isEmpty();
        assertThat(Gaps.of(opening, Uncertain.exact(1), Uncertain.exact(1))).isEmpty();
        assertThatThrownBy(() -> opening.corner(Corner.HEAD_LEFT)).isInstanceOf(IllegalStateException.class);
    }

    /** A parallelogram that leans by half: w = 1000 - l / 2, and the largest area is 500 by 1000, by calculus. */
    @Test
    void anOpeningThatLeansByHalf() {
        for (int lean : new int[] {-1000, 1000}) {
            Opening opening =
                    Surveys.Quad.level(1000, 1000 + lean, 2000, lean, 2000).opening(0.1);
            Fit.Rectangle fit = Fit.largest(opening).orElseThrow();
            assertThat(fit.width().value()).isCloseTo(500, within(1e-3));
            assertThat(fit.length().value()).isCloseTo(1000, within(1e-3));
        }
    }

    /** Linings thicker than the opening is wide leave nothing. */
    @Test
    void nothingGoesIn() {
        Finish.Still thick = new Finish.Still(900, quoin.measure.Doubt.standard(1, quoin.measure.Dimension.LENGTH));
        Finish bare = new Finish(Finish.State.BARE, Map.of(Side.LEFT, thick, Side.RIGHT, thick));
        Opening opening = Opening.of(
                new Survey(Surveys.Quad.level(1500, 1500, 2400, 0, 2400).six(1), Double.NaN, bare));
        assertThat(Fit.largest(opening)).isEmpty();
        assertThat(OpeningFigures.survey(opening, Side.HEAD)).doesNotContainKey("fit.width");
    }

    /**
     * Two rectangles as large as each other, one beside the head and one turned by 0.86 degrees (2350.54 × 789.4006 and
     * 2350.8073 × 789.3109 mm, alike to 1e-6 mm²): whatever the doubts, and so the last digits of the outline, the one
     * that is turned less is taken.
     */
    @Test
    void ofTwoAsLargeTheOneThatIsTurnedLessIsTaken() {
        Surveys.Quad quad = Surveys.Quad.level(840.97, 824.85, 2350.54, 36.13, 2395.67);
        for (int k = 1; k <= 12; k++) {
            List<Reading> readings = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                double u = 0.2 + 0.25 * ((k * (i + 3)) % 11);
                readings.add(Surveys.read(Surveys.SIX.get(i), u, quad.exact()[i]));
            }
            Fit.Rectangle largest = Fit.largest(Opening.of(Surveys.straight(readings)), Held.FREELY)
                    .orElseThrow();
            assertThat(largest.turnedRad()).as("doubts %s", k).isCloseTo(0, within(1e-9));
            assertThat(largest.length().value()).isCloseTo(2350.54, within(1e-6));
        }
    }
}
