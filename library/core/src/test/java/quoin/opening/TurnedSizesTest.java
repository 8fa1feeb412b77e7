package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The doubt of the largest rectangle that may turn, against readings drawn anew. First order leaves out how the area curves
 * with the angle: that matters only where the best angle lies between those at which the frame is parallel to a side (about
 * one opening in a hundred). The search is shared with the library (it is held against brute force elsewhere); the doubt is
 * not. 1500 draws: a standard deviation scatters by 1.8 per cent, a mean by 0.03 u.
 */
class TurnedSizesTest {
    private static final int DRAWS = 1500;
    private static final double U = 0.5;

    private record Drawn(Fit.Rectangle claimed, double[] width, double[] length) {}

    private static Fit.Rectangle largest(double... six) {
        return Fit.largest(Opening.of(Surveys.straight(Surveys.six(U, six))), Held.FREELY)
                .orElseThrow();
    }

    private static Drawn drawn(Surveys.Quad quad) {
        Random random = new Random(4);
        double[] exact = quad.exact();
        Fit.Rectangle claimed = largest(exact);
        double[] width = new double[DRAWS];
        double[] length = new double[DRAWS];
        for (int n = 0; n < DRAWS; n++) {
            double[] read = exact.clone();
            for (int i = 0; i < 6; i++) {
                read[i] += U * random.nextGaussian();
            }
            Fit.Rectangle one = largest(read);
            width[n] = one.width().value() - claimed.width().value();
            length[n] = one.length().value() - claimed.length().value();
        }
        return new Drawn(claimed, width, length);
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    private static double spread(double[] values) {
        double mean = mean(values);
        double sum = 0;
        for (double value : values) {
            sum += (value - mean) * (value - mean);
        }
        return Math.sqrt(sum / (values.length - 1));
    }

    /** Out by some millimetres in no special way: within 5 per cent. */
    private static void holds(Surveys.Quad quad) {
        Drawn drawn = drawn(quad);
        double w = drawn.claimed.width().standardUncertainty();
        double l = drawn.claimed.length().standardUncertainty();
        assertThat(w / spread(drawn.width)).as(quad + " width").isCloseTo(1, within(0.05));
        assertThat(l / spread(drawn.length)).as(quad + " length").isCloseTo(1, within(0.05));
        assertThat(mean(drawn.width)).isCloseTo(0, within(0.1 * w));
        assertThat(mean(drawn.length)).isCloseTo(0, within(0.1 * l));
    }

    @Test
    void skewed() {
        holds(Surveys.Quad.level(1500, 1507, 2403, -4, 2398));
        holds(Surveys.Quad.level(1500, 1530, 2420, -25, 2380));
    }

    @Test
    void rackedAndTapered() {
        holds(Surveys.Quad.level(1500, 1530, 2405, 32, 2395));
        holds(Surveys.Quad.level(1500, 1488, 2404, 9, 2399));
    }

    /** The best angle lies between those of the sides: it is found by the curve of the area alone. */
    @Test
    void atAnAngleOfNoSide() {
        Surveys.Quad quad = Surveys.Quad.level(1267.654, 1302.117, 1278.644, 39.278, 1280.045);
        double turned = Math.abs(largest(quad.exact()).turnedRad());
        assertThat(turned).isBetween(0.0201, 0.0211);
        holds(quad);
    }

    /**
     * Where several gaps hold a side exactly alike the claim is that of their mean, and the truth their least: up to a quarter
     * more spread, and smaller by up to 1.3 of what is claimed. Odds of gaps, which keep their parts, do not have this
     * fault (see {@link TurnedOddsTest}).
     */
    @Test
    void exactTiesAreClaimedTooWell() {
        for (Surveys.Quad quad : new Surveys.Quad[] {
            Surveys.Quad.level(1500, 1500, 2400, 0, 2400),
            Surveys.Quad.level(1500, 1485, 2400, 15, 2400),
            Surveys.Quad.level(1500, 1512, 2400, 12, 2400)
        }) {
            Drawn drawn = drawn(quad);
            double w = drawn.claimed.width().standardUncertainty();
            double l = drawn.claimed.length().standardUncertainty();
            assertThat(w / spread(drawn.width)).as(quad + " width").isBetween(0.75, 1.02);
            assertThat(l / spread(drawn.length)).as(quad + " length").isBetween(0.75, 1.02);
            assertThat(mean(drawn.width)).isBetween(-1.4 * w, 0.5 * w);
            assertThat(mean(drawn.length)).isBetween(-1.4 * l, 0.5 * l);
            assertThat(mean(drawn.width) / w + mean(drawn.length) / l).isLessThan(-0.4);
        }
    }
}
