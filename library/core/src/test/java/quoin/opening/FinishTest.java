package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Uncertain;

/** What is still to come on the sides is taken off, with its doubt. */
class FinishTest {
    private static final double D = Math.hypot(1500, 2400);
    private static final Finish BARE = bare(Map.of(Side.LEFT, 15.0, Side.RIGHT, 12.5, Side.HEAD, 10.0));

    private static Finish bare(Map<Side, Double> still) {
        java.util.Map<Side, Finish.Still> all = new java.util.EnumMap<>(Side.class);
        still.forEach((side, mm) -> all.put(side, new Finish.Still(mm, Doubt.limits(2, Dimension.LENGTH))));
        return new Finish(Finish.State.BARE, all);
    }

    @Test
    void theOutlineIsTheOneThatWillBe() {
        List<Reading> six = Surveys.six(0.5, 1500, 2400, 1500, 2400, D, D);
        Uncertain before = Fit.largest(Opening.of(new Survey(six, Double.NaN, Finish.FINISHED)))
                .orElseThrow()
                .width();
        Opening opening = Opening.of(new Survey(six, Double.NaN, BARE));
        Fit.Rectangle fit = Fit.largest(opening).orElseThrow();
        assertThat(fit.width().value()).isCloseTo(1500 - 27.5, within(1e-5));
        assertThat(fit.length().value()).isCloseTo(2400 - 10, within(1e-5));
        assertThat(opening.corner(Corner.HEAD_LEFT).get(0).value()).isZero();
        assertThat(opening.corner(Corner.HEAD_LEFT).get(1).value()).isZero();
        assertThat(opening.corner(Corner.FOOT_RIGHT).get(0).value()).isCloseTo(1472.5, within(1e-6));
        assertThat(opening.corner(Corner.FOOT_RIGHT).get(1).value()).isCloseTo(2390, within(1e-6));
        // Two linings of ± 2 mm each: their variances add to what the readings leave.
        double wanted = Math.sqrt(before.variance() + 2 * 4 / 3.0);
        assertThat(fit.width().standardUncertainty()).isCloseTo(wanted, within(0.02 * wanted));
    }

    /** In a skewed opening a lining moves each side along its own normal. */
    @Test
    void aSkewedOpening() {
        Surveys.Quad quad = Surveys.Quad.level(1500, 1560, 2400, 30, 2380);
        Opening opening = Opening.of(new Survey(quad.six(0.5), Double.NaN, bare(Map.of(Side.RIGHT, 20.0))));
        for (Corner corner : Corner.values()) {
            assertThat(OpeningFigures.cornerAngle(opening, corner).value())
                    .isCloseTo(
                            OpeningFigures.cornerAngle(quad.opening(0.5), corner)
                                    .value(),
                            within(1e-9));
        }
        // The right side runs 20 mm beside the old one: width at the head less by 20 / cos of its lean.
        double lean = Math.atan2(60, 2400);
        assertThat(opening.corner(Corner.HEAD_RIGHT).get(0).value())
                .isCloseTo(1500 - 20 / Math.cos(lean), within(1e-6));
    }

    /** The bow of a side stays what it was. */
    @Test
    void aBowedSide() {
        List<Reading> readings =
                Surveys.join(Surveys.six(0.1, 1500, 2400, 1500, 2400, D, D), Surveys.read("bow@left:1/2", 0.1, 3));
        Opening finished = Opening.of(new Survey(readings, 5, Finish.FINISHED));
        Opening bare = Opening.of(new Survey(readings, 5, BARE));
        double before = Fit.largest(finished).orElseThrow().width().value();
        assertThat(Fit.largest(bare).orElseThrow().width().value()).isCloseTo(before - 27.5, within(1e-4));
        assertThat(OpeningFigures.leastWidth(bare).value())
                .isCloseTo(OpeningFigures.leastWidth(finished).value() - 27.5, within(1e-4));
    }

    /** Both planes get the same lining: how far the back stands in does not change, nor which plane rules. */
    @Test
    void theBackIsLinedToo() {
        List<Reading> readings = Surveys.join(
                Surveys.six(0.1, 1500, 2400, 1500, 2400, D, D),
                Surveys.behind("width@head", 0.1, 1492),
                Surveys.behind("width@1/2", 0.1, 1492),
                Surveys.behind("width@foot", 0.1, 1492));
        Opening finished = Opening.of(new Survey(readings, 6, Finish.FINISHED));
        Opening bare = Opening.of(new Survey(readings, 6, BARE));
        Map<String, quoin.measure.Estimate> before = OpeningFigures.survey(finished, Side.HEAD);
        Map<String, quoin.measure.Estimate> after = OpeningFigures.survey(bare, Side.HEAD);
        assertThat(before.get("opening.splay.left").value()).isCloseTo(4, within(0.1));
        assertThat(after.get("opening.splay.left").value())
                .isCloseTo(before.get("opening.splay.left").value(), within(1e-6));
        assertThat(after.get("opening.splay.right").value())
                .isCloseTo(before.get("opening.splay.right").value(), within(1e-6));
        assertThat(after.get("fit.width").value())
                .isCloseTo(before.get("fit.width").value() - 27.5, within(1e-4));
        assertThat(after.get("opening.width.least").value())
                .isCloseTo(before.get("opening.width.least").value() - 27.5, within(1e-4));
        assertThat(after.get("opening.length.least").value())
                .isCloseTo(before.get("opening.length.least").value() - 10, within(1e-4));
    }

    /** The same where the back has an outline of its own. */
    @Test
    void aBackOfItsOwnIsLinedToo() {
        List<Reading> readings = new java.util.ArrayList<>(Surveys.six(0.1, 1500, 2400, 1500, 2400, D, D));
        double[] back = {1490, 2396, 1490, 2396, Math.hypot(1490, 2396), Math.hypot(1490, 2396)};
        for (int i = 0; i < 6; i++) {
            readings.add(Surveys.behind(Surveys.SIX.get(i), 0.1, back[i]));
        }
        Opening finished = Opening.of(new Survey(readings, Double.NaN, Finish.FINISHED));
        Opening bare = Opening.of(new Survey(readings, Double.NaN, BARE));
        Map<String, quoin.measure.Estimate> before = OpeningFigures.survey(finished, Side.HEAD);
        Map<String, quoin.measure.Estimate> after = OpeningFigures.survey(bare, Side.HEAD);
        for (Side side : Side.values()) {
            double splay = side == Side.LEFT || side == Side.RIGHT ? 5 : 2;
            String name = "opening.splay." + side.text();
            assertThat(before.get(name).value()).isCloseTo(splay, within(1e-6));
            assertThat(after.get(name).value()).isCloseTo(splay, within(1e-6));
        }
        assertThat(before.get("fit.width").value()).isCloseTo(1490, within(1e-5));
        assertThat(after.get("fit.width").value()).isCloseTo(1490 - 27.5, within(1e-5));
        assertThat(after.get("fit.length").value()).isCloseTo(2396 - 10, within(1e-5));
    }
}
