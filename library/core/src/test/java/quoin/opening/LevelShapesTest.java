package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;

/** The largest level rectangle and the least gap against brute force, on openings of every kind. */
class LevelShapesTest {
    /** Ends of the searches 1e-7 mm wide; slopes up to a half. */
    private static final double CLOSE = 2e-6;

    @Test
    void skewedOpenings() {
        compare(500, 30, 0, 1);
    }

    @Test
    void taperedOpenings() {
        compare(300, 300, 0, 2);
    }

    @Test
    void nearlyRectangles() {
        compare(300, 1e-4, 0, 3);
    }

    @Test
    void exactRectangles() {
        compare(50, 0, 0, 4);
    }

    @Test
    void bowedOpenings() {
        compare(400, 15, 5, 5);
    }

    private static void compare(int count, double crooked, double bowed, long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < count; i++) {
            Surveys.Quad quad = quad(random, crooked);
            Opening opening = bowed > 0 ? bowed(random, quad, bowed) : quad.opening(0.5);
            assertThat(opening.hasShape()).isTrue();
            LevelShapes brute = new LevelShapes(opening);
            compareFit(opening, brute);
            compareGap(random, opening, brute);
        }
    }

    private static Surveys.Quad quad(Random random, double crooked) {
        double w = 800 + 2000 * random.nextDouble();
        double l = 800 + 2000 * random.nextDouble();
        return Surveys.Quad.level(
                w,
                w + crooked * (2 * random.nextDouble() - 1),
                l + crooked * (2 * random.nextDouble() - 1),
                crooked * (2 * random.nextDouble() - 1),
                l + crooked * (2 * random.nextDouble() - 1));
    }

    private static Opening bowed(Random random, Surveys.Quad quad, double bowed) {
        List<Reading> readings = new ArrayList<>(quad.six(0.5));
        for (Side side : Side.values()) {
            if (random.nextInt(3) > 0) {
                double off = bowed * (2 * random.nextDouble() - 1);
                readings.add(Surveys.read("bow@" + side.text() + ":1/" + (2 + random.nextInt(3)), 0.5, off));
            }
        }
        return Opening.of(Survey.finished(readings, 5));
    }

    private static void compareFit(Opening opening, LevelShapes brute) {
        Fit.Rectangle rectangle = Fit.largest(opening).orElseThrow();
        double w = rectangle.width().value();
        double l = rectangle.length().value();
        // Gaps that close within 1e-5 mm of each other hold it alike: it sits on their mean.
        assertThat(brute.gap(w, l, rectangle.x(), rectangle.y())).isGreaterThan(-1e-5);
        double area = brute.largestArea();
        assertThat(w * l).isCloseTo(area, within(1e-5 * (w + l)));
        assertThat(rectangle.width().standardUncertainty()).isPositive();
        assertThat(rectangle.length().standardUncertainty()).isPositive();
    }

    private static void compareGap(Random random, Opening opening, LevelShapes brute) {
        Fit.Rectangle rectangle = Fit.largest(opening).orElseThrow();
        double w = rectangle.width().value() - 20 * random.nextDouble() + 5;
        double l = rectangle.length().value() - 20 * random.nextDouble() + 5;
        Gaps gaps = Gaps.of(opening, Uncertain.exact(w), Uncertain.exact(l)).orElseThrow();
        Extreme least = Gaps.least(gaps);
        assertThat(least.value()).isCloseTo(brute.leastGap(w, l), within(CLOSE));
        assertThat(least.governing().value().standardUncertainty()).isPositive();
        // The balanced placement is one placement: never better than the best.
        assertThat(brute.gap(w, l, gaps.placedX(), gaps.placedY())).isLessThan(least.value() + CLOSE);
    }
}
