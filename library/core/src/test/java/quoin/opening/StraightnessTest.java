package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Influence;
import quoin.measure.Uncertain;

/** Lines and planes, least squares and minimum zone. */
class StraightnessTest {
    private static final double U = 0.5;

    private static Uncertain read(String id, double value) {
        return Uncertain.of(value, Influence.normal(id, U));
    }

    private static List<LineFit.Station> line(double[] x, double[] z) {
        List<LineFit.Station> stations = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            stations.add(new LineFit.Station(x[i], read("z" + i, z[i])));
        }
        return stations;
    }

    private static List<PlaneFit.Point> plane(double[][] at, double... z) {
        List<PlaneFit.Point> points = new ArrayList<>();
        for (int i = 0; i < at.length; i++) {
            points.add(new PlaneFit.Point(at[i][0], at[i][1], read("z" + i, z[i])));
        }
        return points;
    }

    private static final double[] X = {0, 600, 1200, 1800, 2400};
    private static final double[] Z = {0, 3, 4, 2, 0.5};

    /**
     * Five offsets along 2400 mm. Values computed independently from the closed formulas of a least-squares line:
     * intercept 1.9, slope 0, sd of the slope 0.000527 σ, at the centroid 0.447 σ. Tolerance half a unit of the last digit.
     */
    @Test
    void aLineByLeastSquares() {
        LineFit fit = LineFit.leastSquares(line(X, Z));
        assertThat(fit.intercept().value()).isCloseTo(1.9, within(1e-12));
        assertThat(fit.slope().value()).isCloseTo(0, within(1e-15));
        assertThat(fit.departures())
                .extracting(d -> Math.round(d.value() * 1e9) / 1e9)
                .containsExactly(-1.9, 1.1, 2.1, 0.1, -1.4);
        assertThat(fit.slope().standardUncertainty() / U).isCloseTo(0.000527, within(5e-7));
        Uncertain centroid = fit.intercept().plus(fit.slope().times(1200));
        assertThat(centroid.standardUncertainty() / U).isCloseTo(0.447, within(5e-4));
    }

    /** The same ends and middle: the string between the ends is 3.75 off at 1200, 4 - (0 + 0.5) / 2. */
    @Test
    void theStringBetweenTheEnds() {
        Estimate off = LineFit.minimumZone(line(new double[] {0, 1200, 2400}, new double[] {0, 4, 0.5}));
        assertThat(off.value()).isCloseTo(3.75, within(1e-12));
    }

    /** The same five: minimum zone 3.75 (line 1.875 + 0.00020833 x), smaller than the 4.0 of least squares. */
    @Test
    void aLineByMinimumZone() {
        Estimate zone = LineFit.minimumZone(line(X, Z));
        assertThat(Math.abs(zone.value())).isCloseTo(3.75, within(1e-12));
        assertThat(zone).isInstanceOf(Extreme.class);
        assertThat(LineFit.minimumZone(line(new double[] {0, 1, 2}, new double[] {1, 2, 3}))
                        .value())
                .isZero();
    }

    /** Against a search over slopes that knows nothing of triples. */
    @Test
    void theMinimumZoneIsThatOfASearchOverSlopes() {
        Random random = new Random(7);
        for (int run = 0; run < 50; run++) {
            double[] z = random.doubles(6, 0, 5).toArray();
            double[] x = {0, 300, 900, 1000, 1700, 2400};
            double best = Double.POSITIVE_INFINITY;
            for (int k = -40_000; k <= 40_000; k++) {
                double slope = k * 1e-6;
                double low = Double.POSITIVE_INFINITY;
                double high = Double.NEGATIVE_INFINITY;
                for (int i = 0; i < 6; i++) {
                    low = Math.min(low, z[i] - slope * x[i]);
                    high = Math.max(high, z[i] - slope * x[i]);
                }
                best = Math.min(best, high - low);
            }
            double zone = Math.abs(LineFit.minimumZone(line(x, z)).value());
            assertThat(zone).isBetween(best - 2400e-6, best + 1e-9); // one step of the search over the whole length
        }
    }

    private static final double[][] CORNERS = {{0, 0}, {2400, 0}, {2400, 1500}, {0, 1500}};

    /**
     * Four corners 0 2 5 1 at 2400 × 1500. Values computed independently: plane −0.5 + 0.00125 x + 0.00133333 y,
     * departures ±0.5, twist 2, minimum zone half the twist. σ of the twist is twice that of a depth, of its half once.
     */
    @Test
    void aTwistOfFourCorners() {
        List<PlaneFit.Point> points = plane(CORNERS, 0, 2, 5, 1);
        PlaneFit fit = PlaneFit.leastSquares(points);
        assertThat(fit.intercept().value()).isCloseTo(-0.5, within(1e-12));
        assertThat(fit.slopeX().value()).isCloseTo(0.00125, within(1e-15));
        assertThat(fit.slopeY().value()).isCloseTo(2.0 / 1500, within(1e-15));
        assertThat(fit.departures())
                .extracting(d -> Math.round(d.value() * 1e9) / 1e9)
                .containsExactly(0.5, -0.5, 0.5, -0.5);
        Uncertain zone = (Uncertain) PlaneFit.minimumZone(points);
        assertThat(Math.abs(zone.value())).isCloseTo(1, within(1e-12));
        assertThat(zone.standardUncertainty()).isCloseTo(U, within(1e-12));
    }

    /** Against a search over planes that knows nothing of fours. */
    @Test
    void theMinimumZoneOfFiveDepthsIsThatOfASearchOverPlanes() {
        double[][] at = {{0, 0}, {2400, 0}, {2400, 1500}, {0, 1500}, {1200, 750}};
        Random random = new Random(11);
        for (int run = 0; run < 10; run++) {
            double[] z = random.doubles(5, 0, 4).toArray();
            double best = Double.POSITIVE_INFINITY;
            for (int i = -400; i <= 400; i++) {
                for (int j = -400; j <= 400; j++) {
                    double low = Double.POSITIVE_INFINITY;
                    double high = Double.NEGATIVE_INFINITY;
                    for (int k = 0; k < 5; k++) {
                        double rest = z[k] - i * 0.005 * at[k][0] / 1200 - j * 0.005 * at[k][1] / 750;
                        low = Math.min(low, rest);
                        high = Math.max(high, rest);
                    }
                    best = Math.min(best, high - low);
                }
            }
            double zone = Math.abs(PlaneFit.minimumZone(plane(at, z)).value());
            assertThat(zone).isBetween(best - 0.02, best + 1e-9); // one step of the search in each direction
        }
    }

    @Test
    void tooFewAreRefused() {
        assertThatThrownBy(() -> LineFit.leastSquares(line(new double[] {5, 5}, new double[] {1, 2})))
                .hasMessage("stations must be at 2 places or more, got 2 stations");
        assertThatThrownBy(() -> LineFit.minimumZone(line(new double[] {0, 5}, new double[] {1, 2})))
                .hasMessage("stations must be 3 or more, got 2");
        assertThatThrownBy(() -> LineFit.minimumZone(line(new double[] {0, 5, 5}, new double[] {1, 2, 3})))
                .hasMessage("stations must be at places of their own, got two at 5.0 mm");
        double[][] row = {{0, 0}, {100, 0}, {200, 0}, {300, 0}};
        assertThatThrownBy(() -> PlaneFit.leastSquares(plane(row, 1, 2, 3, 4)))
                .hasMessage("points must be 3 or more, not all on a line, got 4");
        assertThatThrownBy(() -> PlaneFit.minimumZone(plane(row, 1, 2, 3, 4)))
                .hasMessage("points must be 4 or more, not all on a line, got 4");
        assertThatThrownBy(() -> new LineFit.Station(Double.NaN, Uncertain.exact(0)))
                .hasMessage("along must be finite, got NaN mm");
        assertThatThrownBy(() -> new PlaneFit.Point(0, Double.NaN, Uncertain.exact(0)))
                .hasMessage("point must be finite, got 0.0 mm and NaN mm");
    }

    /** In an opening: a bow read at half way is the straightness of its side; four depths give the flatness. */
    @Test
    void theFiguresOfAnOpening() {
        double d = Math.hypot(1500, 2400);
        List<Reading> readings = Surveys.join(
                Surveys.six(0.3, 1500, 2400, 1500, 2400, d, d),
                Surveys.read("bow@left:1/2", 0.2, 3),
                Surveys.read("depth@head-left", 0.2, 140),
                Surveys.read("depth@head-right", 0.2, 142),
                Surveys.read("depth@foot-right", 0.2, 145),
                Surveys.read("depth@foot-left", 0.2, 141));
        Map<String, Estimate> figures = OpeningFigures.survey(Opening.of(Survey.finished(readings, 4)), Side.HEAD);
        assertThat(figures.get("opening.straight.left").value())
                .isCloseTo(figures.get("opening.bow.left").value(), within(1e-9));
        assertThat(Math.abs(figures.get("opening.flatness").value())).isCloseTo(1, within(1e-6));
        assertThat(figures.get("opening.twist").value()).isCloseTo(2, within(1e-12));
    }

    /**
     * A place given as a distance lies where it is on the side: 600 mm of 2400 is a quarter. Offsets 3 and −1 at 600 and
     * 1800 mm; by hand the largest departure is 3 + 1/3, at 600 from the string 0 to 1800. Readings good to 0.01 mm
     * against sides straight to ± 4: the prior takes less than a thousandth off.
     */
    @Test
    void aPlaceGivenAsADistanceCountsFromTheCorner() {
        double d = Math.hypot(1500, 2400);
        List<Reading> readings = Surveys.join(
                Surveys.six(0.3, 1500, 2400, 1500, 2400, d, d),
                Surveys.read("bow@left:600 mm", 0.01, 3),
                Surveys.read("bow@left:3/4", 0.01, -1));
        Estimate straight = OpeningFigures.survey(Opening.of(Survey.finished(readings, 4)), Side.HEAD)
                .get("opening.straight.left");
        assertThat(Math.abs(straight.value())).isCloseTo(3 + 1 / 3.0, within(3e-3));
    }
}
