package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Depths and falls against each other. */
class DepthPlaneTest {
    private static final double U = 0.4;

    private static Opening with(double straight, Reading... depths) {
        List<Reading> six = Surveys.six(0.3, 1500, 2400, 1500, 2400, Math.hypot(1500, 2400), Math.hypot(1500, 2400));
        return Opening.of(Survey.finished(Surveys.join(six, depths), straight));
    }

    private static Reading[] depths(Map<String, double[]> values) {
        List<Reading> readings = new ArrayList<>();
        for (String place : List.of("head-left", "head-right", "foot-right", "foot-left", "middle")) {
            if (values.containsKey(place)) {
                readings.add(Surveys.read("depth@" + place, U, values.get(place)));
            }
        }
        return readings.toArray(Reading[]::new);
    }

    private static PlaneTest test(double straight, Reading... readings) {
        return with(straight, readings).planes().get(0);
    }

    private static double[] of(double... values) {
        return values;
    }

    /** Four corner depths fit a twist whatever they are: no redundancy, nothing is noticed. */
    @Test
    void fourCornersCheckNothing() {
        PlaneTest four = test(
                3,
                depths(Map.of(
                        "head-left", of(140), "head-right", of(141), "foot-right", of(152), "foot-left", of(142))));
        assertThat(four.plane()).isEqualTo("depth");
        assertThat(four.redundancy()).isZero();
        assertThat(four.isAccepted()).isTrue();
        assertThat(four.readings()).hasSize(4).allSatisfy(reading -> {
            assertThat(reading.w()).isNaN();
            assertThat(reading.detectable()).isInfinite();
        });
    }

    /**
     * The middle against the mean of the corners, closed form: variance u²(1 + 1/4) + s²/3, s the straightness. Tolerance
     * 1e-6: the covariance carries a ridge of 1e-8.
     */
    @Test
    void theMiddleIsHeldAgainstTheMeanOfTheCorners() {
        Map<String, double[]> five = Map.of(
                "head-left",
                of(140),
                "head-right",
                of(141),
                "foot-right",
                of(142),
                "foot-left",
                of(141),
                "middle",
                of(143));
        PlaneTest test = test(3, depths(five));
        double variance = U * U * 1.25 + 3;
        assertThat(test.redundancy()).isOne();
        assertThat(test.statistic()).isCloseTo(4 / variance, within(1e-6));
        AdjustedReading middle = test.readings().get(4);
        assertThat(middle.w()).isCloseTo(2 / Math.sqrt(variance), within(1e-6));
        assertThat(middle.slip()).isCloseTo(2, within(1e-6));
        assertThat(middle.slipU()).isCloseTo(Math.sqrt(variance), within(1e-6));
        assertThat(middle.residual()).isCloseTo(-2 * U * U / variance, within(1e-6));
        assertThat(test.readings().get(0).slip()).isCloseTo(-8, within(1e-5)); // four times as far, the other way
        assertThat(test.isAccepted()).isTrue();
        assertThat(test(0.2, depths(five)).isAccepted()).isFalse(); // 4 / (0.2 + 0.0133) is 18.7, above 10.83
        assertThat(test(Double.NaN, depths(five)).redundancy()).isZero(); // nobody said how straight it is
    }

    /** Two values at one place differ with variance 2u²; two of a fall alike. */
    @Test
    void valuesAtOnePlaceAreHeldAgainstEachOther() {
        PlaneTest twice = test(3, Surveys.read("depth@middle", U, 140, 143), Surveys.read("fall@head", U, 2, 2.4));
        assertThat(twice.redundancy()).isEqualTo(2);
        assertThat(twice.statistic()).isCloseTo((9 + 0.16) / (2 * U * U), within(1e-5));
        assertThat(twice.isAccepted()).isFalse();
    }

    /** What hangs on depths is not accepted, what hangs on the outline is; and the other way round. */
    @Test
    void onlyWhatHangsOnThemIsDoubted() {
        Opening wrong = with(3, Surveys.read("depth@middle", U, 140, 150));
        assertThat(OpeningFigures.isAccepted(wrong, "opening.depth.least")).isFalse();
        assertThat(OpeningFigures.isAccepted(wrong, "gap.least")).isTrue();
        Opening leaning = with(0.5, Surveys.read("depth@middle", U, 140), Surveys.behind("width@1/2", 0.3, 1480));
        assertThat(OpeningFigures.isAccepted(leaning, "opening.depth.least")).isTrue();
        assertThat(OpeningFigures.isAccepted(leaning, "gap.least")).isFalse();
    }

    /** A width behind, closed form: between it and the front lie two offsets of variance s²/3 and both readings' doubts. */
    @Test
    void theBackHasItsOwnTest() {
        Opening opening = with(1.5, Surveys.behind("width@head", 0.3, 1495));
        PlaneTest back = opening.planes().get(0);
        double front = OpeningFigures.leastWidth(opening).parts().get(0).value().variance();
        assertThat(back.plane()).isEqualTo("back");
        assertThat(back.redundancy()).isOne();
        assertThat(back.statistic()).isCloseTo(25 / (front + 0.09 + 2 * 0.75), within(1e-3));
        assertThat(back.readings().get(0).slip()).isCloseTo(-5, within(1e-3));
        assertThat(back.readings().get(0).w()).isNegative();
    }
}
