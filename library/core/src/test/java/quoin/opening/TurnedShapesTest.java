package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Rectangles held and turned against brute force on 10 000 random openings. Reference: a dense grid of angles with all
 * corners of each linear programme (mark: handbook for the method), plain numbers in the test.
 */
class TurnedShapesTest {
    private static final double TWO_DEGREES = Math.toRadians(2);

    /** In mm: the brute force ends its search 1e-10 rad wide and lets conditions fail by 1e-8 mm. */
    private static final double CLOSE = 1e-6;

    @Test
    void skewed() {
        compare(3000, 1, random -> corners(random, 30, 0, 0));
    }

    @Test
    void racked() {
        compare(2000, 2, random -> corners(random, 3, 60, 0));
    }

    @Test
    void tapered() {
        compare(2000, 3, random -> corners(random, 2, 0, 150));
    }

    @Test
    void veryCrooked() {
        compare(1000, 4, random -> corners(random, 200, 100, 0));
    }

    @Test
    void nearlyRectangles() {
        compare(1500, 5, random -> corners(random, Math.pow(10, -9 + 8 * random.nextDouble()), 0, 0));
    }

    @Test
    void exactlyRectanglesRackedOrTapered() {
        compare(500, 6, random -> corners(random, 0, random.nextInt(3) * 10, random.nextInt(3) * 10));
    }

    private interface Kind {
        double[][] corners(Random random);
    }

    private static double[][] corners(Random random, double crooked, double racked, double tapered) {
        double w = 800 + 2000 * random.nextDouble();
        double l = 800 + 2000 * random.nextDouble();
        double lean = racked * (2 * random.nextDouble() - 1);
        double taper = tapered * (2 * random.nextDouble() - 1);
        return new double[][] {
            {0, 0},
            {w, 0},
            {w + lean - taper + off(random, crooked), l + off(random, crooked)},
            {lean + taper + off(random, crooked), l + off(random, crooked)}
        };
    }

    private static double off(Random random, double by) {
        return by * (2 * random.nextDouble() - 1);
    }

    private static void compare(int count, long seed, Kind kind) {
        Random random = new Random(seed);
        for (int i = 0; i < count; i++) {
            double[][] q = kind.corners(random);
            Opening opening = new Surveys.Quad(q[0], q[1], q[2], q[3]).opening(0.5);
            TurnedShapes brute = new TurnedShapes(asAdjusted(opening));
            double w = brute.widest(0, 600) - 20 * random.nextDouble() + 5;
            double l = brute.longest(0, w / 900) - 20 * random.nextDouble() + 5;
            compareClearance(opening, brute, w, l);
            compareArea(opening, brute, i % 50 == 0);
            if (i % 20 == 0) {
                compareGrowth(opening, brute, l);
            }
        }
    }

    private static double[][] asAdjusted(Opening opening) {
        double[][] corners = new double[4][2];
        Corner[] named = Corner.values();
        for (int i = 0; i < 4; i++) {
            corners[i][0] = opening.corner(named[i]).get(0).value();
            corners[i][1] = opening.corner(named[i]).get(1).value();
        }
        return corners;
    }

    private static void compareClearance(Opening opening, TurnedShapes brute, double w, double l) {
        Fit.Placement level = Fit.place(opening, Held.TO_HEAD, w, l).orElseThrow();
        assertThat(level.clearanceMm()).isCloseTo(brute.clearance(0, w, l), within(CLOSE));
        assertThat(level.turnedRad()).isZero();
        assertThat(brute.gapAt(w, l, level.x(), level.y(), 0)).isCloseTo(level.clearanceMm(), within(CLOSE));

        Fit.Placement turned = Fit.place(opening, Held.FREELY, w, l).orElseThrow();
        double best = TurnedShapes.best(TWO_DEGREES, 20, 4000, angle -> brute.clearance(angle, w, l));
        assertThat(turned.clearanceMm()).isCloseTo(best, within(CLOSE));
        assertThat(turned.clearanceMm()).isGreaterThanOrEqualTo(level.clearanceMm() - 1e-9);
        assertThat(brute.gapAt(w, l, turned.x(), turned.y(), turned.turnedRad()))
                .isCloseTo(turned.clearanceMm(), within(CLOSE));
    }

    private static void compareArea(Opening opening, TurnedShapes brute, boolean andTurned) {
        Fit.Rectangle level = Fit.largest(opening).orElseThrow();
        double w = level.width().value();
        double l = level.length().value();
        // Gaps that close within 1e-5 mm of each other hold it alike: it sits on their mean.
        assertThat(w * l).isCloseTo(brute.area(0), within(1e-5 * (w + l)));
        assertThat(brute.gapAt(w, l, level.x(), level.y(), 0)).isGreaterThan(-1e-5);
        if (andTurned) {
            Fit.Rectangle turned = Fit.largest(opening, Held.FREELY).orElseThrow();
            double tw = turned.width().value();
            double tl = turned.length().value();
            assertThat(tw * tl).isCloseTo(TurnedShapes.best(TWO_DEGREES, 20, 2e7, brute::area), within(1e-5 * (w + l)));
            assertThat(brute.gapAt(tw, tl, turned.x(), turned.y(), turned.turnedRad()))
                    .isGreaterThan(-1e-5);
        }
    }

    private static void compareGrowth(Opening opening, TurnedShapes brute, double l) {
        double shorter = l - 30;
        Fit.Rectangle level = Fit.widest(opening, Held.TO_HEAD, shorter).orElseThrow();
        assertThat(level.width().value()).isCloseTo(brute.widest(0, shorter), within(CLOSE));
        Fit.Rectangle turned = Fit.widest(opening, Held.FREELY, shorter).orElseThrow();
        double widest = TurnedShapes.best(TWO_DEGREES, 40, 1e7, angle -> brute.widest(angle, shorter));
        assertThat(turned.width().value()).isCloseTo(widest, within(CLOSE));
        Fit.Rectangle fifth = Fit.ofProportion(opening, Held.FREELY, 0.8).orElseThrow();
        double longest = TurnedShapes.best(TWO_DEGREES, 40, 1e7, angle -> brute.longest(angle, 0.8));
        assertThat(fifth.length().value()).isCloseTo(longest, within(CLOSE));
        assertThat(fifth.width().value()).isCloseTo(0.8 * longest, within(CLOSE));
    }
}
