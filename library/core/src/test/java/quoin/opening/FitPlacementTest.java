package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Given rectangles and largest ones, held and turned. Reference: linear programmes by an independent solver with a search
 * over the angle (mark: handbook for the method, our own table), printed to 1e-3 mm, 1e-2 mm², 1e-7, 1e-4 mm and 1e-5
 * degrees; rectangles in rectangles by Wetzel, Mathematics Magazine 73 (2000) 204, the formula from memory.
 */
class FitPlacementTest {
    private static final Surveys.Quad Q1 = Surveys.Quad.level(2400, 2407, 1503, -4, 1498);
    private static final Surveys.Quad Q3 = Surveys.Quad.level(2400, 2390, 1500, 10, 1500);
    private static final double ANY = Math.PI / 4;

    @Test
    void aSkewedOpening() {
        Opening opening = Q1.opening(0.01);
        Fit.Rectangle turned = Fit.largest(opening, Held.FREELY).orElseThrow();
        assertThat(turned.width().value()).isCloseTo(2400.028, within(6e-4));
        assertThat(turned.length().value()).isCloseTo(1498.005, within(6e-4));
        // As with the level area, the reference's own search ends 0.06 mm² short: ours is larger, and goes in.
        assertThat(turned.width().value() * turned.length().value()).isBetween(3_595_254.58, 3_595_254.64);
        TurnedShapes brute = new TurnedShapes(Q1.a(), Q1.b(), Q1.c(), Q1.d());
        assertThat(brute.gapAt(
                        turned.width().value(), turned.length().value(), turned.x(), turned.y(), turned.turnedRad()))
                .isGreaterThan(-1e-6);
        assertThat(Math.toDegrees(turned.turnedRad())).isCloseTo(0.11882, within(6e-6));

        Fit.Rectangle same = Fit.ofProportion(opening, Held.FREELY, 1.6).orElseThrow();
        assertThat(same.width().value() / 2400).isCloseTo(0.9986766, within(6e-8));
        assertThat(same.width().value()).isCloseTo(2396.824, within(6e-4));
        assertThat(same.length().value()).isCloseTo(1498.015, within(6e-4));

        assertThat(widest(opening, Held.FREELY)).isCloseTo(2400.0870, within(6e-5));
        assertThat(widest(opening, Held.TO_HEAD)).isCloseTo(2400.0587, within(6e-5));
        // Theirs is square to a leaning side, ours along the frame's normal: 4 mm over cos 0.12 degrees.
        assertThat(clearance(opening, Held.FREELY, 2390, 1490)).isCloseTo(4.0104, within(7e-5));
        assertThat(clearance(opening, Held.TO_HEAD, 2390, 1490)).isCloseTo(4.0104, within(7e-5));
    }

    @Test
    void aTaperWithEqualDiagonals() {
        Opening opening = Q3.opening(0.01);
        Fit.Rectangle turned = Fit.largest(opening, Held.FREELY).orElseThrow();
        assertThat(turned.width().value() * turned.length().value()).isCloseTo(3_570_000, within(0.1));
        assertThat(turned.width().value()).isCloseTo(2380, within(1e-4));
        Fit.Rectangle same = Fit.ofProportion(opening, Held.FREELY, 1.6).orElseThrow();
        assertThat(same.width().value() / 2400).isCloseTo(0.9917355, within(6e-8));
        assertThat(widest(opening, Held.FREELY)).isCloseTo(2380.1333, within(6e-5));
        assertThat(widest(opening, Held.TO_HEAD)).isCloseTo(2380.1333, within(6e-5));
        // Theirs is square to a side that leans by 10 in 1500: 4.9006 over cos of that is 4.9007.
        double lean = Math.cos(Math.atan(10 / 1500.0));
        assertThat(clearance(opening, Held.FREELY, 2390, 1490)).isCloseTo(-4.9006 / lean, within(7e-5));
        assertThat(clearance(opening, Held.TO_HEAD, 2390, 1490)).isCloseTo(-4.9006 / lean, within(7e-5));
    }

    private static double widest(Opening opening, Held held) {
        return Fit.widest(opening, held, 1490).orElseThrow().width().value();
    }

    private static double clearance(Opening opening, Held held, double w, double l) {
        return Fit.place(opening, held, w, l).orElseThrow().clearanceMm();
    }

    private static Opening rectangle(double w, double l) {
        return Surveys.Quad.level(w, w, l, 0, l).opening(0.01);
    }

    /** Either way round: turned by more than half a right angle, width and length change places. */
    private static boolean goesIn(double p, double q, double a, double b) {
        Held any = Held.freelyWithin(ANY);
        return Fit.place(rectangle(a, b), any, p, q).orElseThrow().goesIn()
                || Fit.place(rectangle(a, b), any, q, p).orElseThrow().goesIn();
    }

    @Test
    void rectanglesInRectangles() {
        assertThat(goesIn(900, 400, 800, 600)).isFalse();
        assertThat(goesIn(1000, 100, 900, 616.577)).isTrue();
        assertThat(goesIn(1000, 100, 900, 616.575)).isFalse();
    }

    /** p × q in a × b with p > a: from memory of Wetzel's condition. */
    @Test
    void wetzelsCondition() {
        Random random = new Random(204);
        int tight = 0;
        for (int i = 0; i < 300; i++) {
            double a = 500 + 1500 * random.nextDouble();
            double p = a * (1.001 + 0.3 * random.nextDouble());
            double q = a * 0.3 * random.nextDouble();
            double d = p * p + q * q;
            double b = (2 * p * q * a + (p * p - q * q) * Math.sqrt(d - a * a)) / d;
            if (b < a && b > q) {
                tight++;
                assertThat(goesIn(p, q, a, b + 1e-3)).isTrue();
                assertThat(goesIn(p, q, a, b - 1e-3)).isFalse();
            }
        }
        assertThat(tight).isGreaterThan(100);
    }

    /** Held to the left side, a rectangle leans with it: the leaning parallelogram as a rectangle seen from there. */
    @Test
    void heldToASideThatLeans() {
        Opening opening = Surveys.Quad.level(1500, 1560, 2400, 60, 2400).opening(0.01);
        double lean = Math.atan(60 / 2400.0);
        Fit.Placement held = Fit.place(opening, Held.to(Side.LEFT), 1400, 2300).orElseThrow();
        assertThat(held.turnedRad()).isCloseTo(-lean, within(1e-9));
        // Between left and right 1500 cos, of which 1400 are taken.
        assertThat(held.clearanceMm()).isLessThanOrEqualTo((1500 * Math.cos(lean) - 1400) / 2 + 1e-9);
        Fit.Rectangle largest = Fit.largest(opening, Held.to(Side.LEFT)).orElseThrow();
        assertThat(largest.width().value()).isCloseTo(1500 * Math.cos(lean), within(1e-5));
        // What is left of the side once the head has come down by the width times the sine.
        assertThat(largest.length().value()).isCloseTo(2400 / Math.cos(lean) - 1500 * Math.sin(lean), within(1e-4));
        Fit.Rectangle right = Fit.largest(opening, Held.to(Side.RIGHT)).orElseThrow();
        assertThat(right.length().value()).isCloseTo(largest.length().value(), within(1e-4));
        assertThat(Fit.largest(opening, Held.to(Side.FOOT))
                        .orElseThrow()
                        .width()
                        .value())
                .isCloseTo(Fit.largest(opening).orElseThrow().width().value(), within(1e-4));
    }

    /** A bulge into the opening and a back that stands in narrow a turned rectangle, too. */
    @Test
    void bulgesAndTheBackCount() {
        Surveys.Quad quad = Surveys.Quad.level(1500, 1500, 2400, 0, 2400);
        var bowed = Surveys.join(quad.six(0.01), Surveys.read("bow@left:1/2", 0.01, 4));
        Opening front = Opening.of(Survey.finished(bowed, 1000));
        assertThat(clearance(front, Held.FREELY, 1490, 2000)).isCloseTo(3, within(1e-3));
        Opening back = Opening.of(Survey.finished(Surveys.join(bowed, Surveys.behind("width@1/2", 0.01, 1490)), 1000));
        assertThat(clearance(back, Held.FREELY, 1480, 2000)).isLessThan(5.01).isGreaterThan(2.99);
        assertThat(Fit.largest(back, Held.FREELY).orElseThrow().width().value()).isLessThan(1490.1);
    }

    @Test
    void argumentsAreChecked() {
        Opening opening = Q1.opening(1);
        assertThatThrownBy(() -> Fit.place(opening, Held.TO_HEAD, 0, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("width must be above 0 mm, got 0.0 mm");
        assertThatThrownBy(() -> Fit.widest(opening, Held.TO_HEAD, Double.NaN))
                .hasMessage("length must be above 0 mm, got NaN mm");
        assertThatThrownBy(() -> Fit.ofProportion(opening, Held.TO_HEAD, -1))
                .hasMessage("proportion must be above 0, got -1.0");
        assertThatThrownBy(() -> Held.freelyWithin(Double.NaN))
                .hasMessage("angle must be above 0 rad and at most pi/4 rad, got NaN rad");
        assertThat(Held.to(Side.LEFT)).isEqualTo(Held.to(Side.LEFT)).isNotEqualTo(Held.TO_HEAD);
        assertThat(Held.FREELY).hasToString("freely within 0.03490658503988659 rad");
        assertThat(Held.TO_HEAD).hasToString("to the head").hasSameHashCodeAs(Held.to(Side.HEAD));
    }

    @Test
    void whatCannotBe() {
        Opening none = Opening.of(Surveys.straight(Q1.six(1).subList(0, 4)));
        assertThat(Fit.place(none, Held.FREELY, 1, 1)).isEmpty();
        assertThat(Fit.largest(none, Held.FREELY)).isEmpty();
        assertThat(Fit.widest(none, Held.FREELY, 1)).isEmpty();
        assertThat(Fit.ofProportion(none, Held.FREELY, 1)).isEmpty();
        assertThat(Fit.widest(Q1.opening(1), Held.FREELY, 1600)).isEmpty();
        assertThat(clearance(Q1.opening(1), Held.FREELY, 2390, 1600)).isLessThan(-45);
    }
}
