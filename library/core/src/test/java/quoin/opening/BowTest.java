package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;

/** A side that is not straight is geometry: it is seen, and nobody's reading is blamed. */
class BowTest {
    private static final double D = Math.hypot(1500, 2400);

    /** Right side 4 mm into the opening in the middle, straight within 5 mm; seven readings, u = 0.5 mm. */
    private static List<Reading> bowed() {
        return Surveys.join(
                Surveys.six(0.5, 1500, 2400, 1500, 2400, D, D),
                Surveys.read("width@1/2", 0.5, 1496),
                Surveys.read("bow@right:1/2", 0.5, 4));
    }

    @Test
    void aBowIsSeenAndNotCalledAMisread() {
        Opening opening = Opening.of(Survey.finished(bowed(), 5));
        assertThat(opening.adjustment().isAccepted()).isTrue();
        Map<String, Estimate> figures = OpeningFigures.survey(opening, Side.HEAD);
        Uncertain bow = (Uncertain) figures.get("opening.bow.right");
        // The prior of ± 5 mm (u 2.9) pulls a reading of u 0.5 by 3 % of what both readings leave.
        assertThat(bow.value()).isCloseTo(4, within(0.15));
        assertThat(bow.standardUncertainty()).isLessThan(0.6);
        assertThat(((Uncertain) figures.get("opening.bow.left")).value()).isCloseTo(0, within(0.2));
        assertThat(figures).doesNotContainKeys("opening.bow.head", "opening.bow.foot");
        // It narrows the opening, and the frame.
        assertThat(((Extreme) figures.get("opening.width.least")).value()).isCloseTo(1496, within(0.2));
        assertThat(((Uncertain) figures.get("fit.width")).value()).isCloseTo(1496, within(0.2));
    }

    /**
     * 4 mm where 2 mm was said, 3.5 standard deviations of that: still geometry. The bow is given as the readings have it
     * but for what the prior pulls, u² / (u² + prior²) of 4 mm with u² of both readings, and nobody's reading is blamed.
     */
    @Test
    void aBowBeyondWhatWasSaidIsStillSeen() {
        Opening opening = Opening.of(Survey.finished(bowed(), 2));
        assertThat(opening.adjustment().isAccepted()).isTrue();
        assertThat(opening.adjustment().suspects()).isEmpty();
        Uncertain bow = (Uncertain) OpeningFigures.survey(opening, Side.HEAD).get("opening.bow.right");
        assertThat(bow.value()).isBetween(4 * (1 - 0.25 / (0.25 + 4 / 3.0)), 4.0);
        // Only by the widths at three places, without a string: the two sides share it, and it is not swallowed.
        List<Reading> widths = Surveys.join(
                Surveys.six(0.5, 1500, 2400, 1500, 2400, D, D),
                Surveys.read("width@1/4", 0.5, 1497),
                Surveys.read("width@1/2", 0.5, 1496),
                Surveys.read("width@3/4", 0.5, 1497));
        Opening shared = Opening.of(Survey.finished(widths, 3));
        assertThat(shared.adjustment().isAccepted()).isTrue();
        assertThat(((Extreme) OpeningFigures.survey(shared, Side.HEAD).get("opening.width.least")).value())
                .isBetween(1495.9, 1496.5);
    }

    /** The same readings of sides said to be straight do not agree. */
    @Test
    void ofStraightSidesTheReadingsDoNotAgree() {
        Adjustment net = Adjustment.of(Survey.finished(bowed(), 0.2), Plane.FRONT);
        assertThat(net.isAccepted()).isFalse();
    }

    /** Only a width in the middle: both sides share what it falls short, half each. */
    @Test
    void aWidthDoesNotSayWhichSideBows() {
        List<Reading> readings = bowed().subList(0, 7);
        Opening opening = Opening.of(Survey.finished(readings, 5));
        assertThat(opening.adjustment().isAccepted()).isTrue();
        Map<String, Estimate> figures = OpeningFigures.survey(opening, Side.HEAD);
        Uncertain left = (Uncertain) figures.get("opening.bow.left");
        Uncertain right = (Uncertain) figures.get("opening.bow.right");
        assertThat(left.value()).isCloseTo(right.value(), within(1e-6));
        assertThat(left.value()).isBetween(1.8, 2.0);
        // Which side it is stays as open as the prior leaves it: 5 / √3 / √2.
        assertThat(left.standardUncertainty()).isCloseTo(5 / Math.sqrt(6), within(0.1));
        assertThat(left.plus(right).standardUncertainty()).isLessThan(0.7);
    }

    /** An untouched side may bulge in its middle by the prior: the doubt of the fit shows it. */
    @Test
    void anUntouchedSideKeepsItsDoubt() {
        List<Reading> six = Surveys.six(0.5, 1500, 2400, 1500, 2400, D, D);
        Uncertain straight =
                Fit.largest(Opening.of(Surveys.straight(six))).orElseThrow().width();
        Uncertain open =
                Fit.largest(Opening.of(Survey.finished(six, 5))).orElseThrow().width();
        assertThat(open.value()).isCloseTo(straight.value(), within(1e-6));
        assertThat(open.standardUncertainty()).isGreaterThan(straight.standardUncertainty() + 0.3);
    }

    /** Touched places by fraction and by distance stand in the order in which they lie on the side. */
    @Test
    void placesStandInOrder() {
        List<Reading> readings = new ArrayList<>(Surveys.six(0.5, 1500, 2400, 1500, 2400, D, D));
        readings.add(Surveys.read("width@1/2", 0.5, 1500));
        readings.add(Surveys.read("width@1100 mm", 0.5, 1500));
        readings.add(Surveys.read("width@2000 mm", 0.5, 1500));
        Opening opening = Opening.of(Survey.finished(readings, 5));
        assertThat(opening.front().side(Side.LEFT))
                .extracting(Outline.Vertex::along)
                .isSorted();
        assertThat(opening.front().side(Side.LEFT))
                .extracting(Outline.Vertex::at)
                .containsExactly("head-left", "1100 mm", "1/2", "2000 mm", "foot-left");
    }

    /** A place beyond the end of its side is no place: there is no outline, and no exception. */
    @Test
    void aPlaceBeyondTheSide() {
        List<Reading> readings =
                Surveys.join(Surveys.six(0.5, 1500, 2400, 1500, 2400, D, D), Surveys.read("width@3000 mm", 0.5, 1500));
        for (double straight : new double[] {Double.NaN, 5}) {
            Opening opening = Opening.of(Survey.finished(readings, straight));
            assertThat(opening.adjustment().state()).isEqualTo(Adjustment.State.CANNOT_CLOSE);
        }
    }
}
