package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The search over the angle: that each curve lies above what can be had in its piece, and that nothing better is missed.
 * Reference: what can be had at single angles of a dense grid (itself held against brute force in {@link TurnedShapesTest}
 * and {@link LevelShapesTest}); the search and its bounds are not used for it. Sides that bulge by as much as their corners are
 * out, long thin openings, frames far too large or small: with a bound of 8 times the size of the opening for every curve
 * such frames were up to 0.9 mm tighter than they need be.
 */
class AngleSearchTest {
    private static final double WITHIN = Held.FREELY.withinRad();

    /** In mm: the grid is refined until its steps are 1e-9 rad. */
    private static final double CLOSE = 1e-6;

    private static Opening bulging(Random random, double w, double l) {
        double bow = Math.pow(10, -1 + 2 * random.nextDouble());
        double skew = Math.pow(10, -1 + 2 * random.nextDouble());
        Surveys.Quad quad = Surveys.Quad.level(
                w,
                w + skew * random.nextGaussian(),
                l + skew * random.nextGaussian(),
                skew * random.nextGaussian(),
                l + skew * random.nextGaussian());
        List<Reading> all = new ArrayList<>(quad.six(0.5));
        List<String> places = List.of("1/2", "1/4", "3/4").subList(0, random.nextInt(4));
        for (Side side : Side.values()) {
            for (String place : places) {
                all.add(Surveys.read("bow@" + side.text() + ":" + place, 0.1, bow * random.nextGaussian()));
            }
        }
        return Opening.of(Survey.finished(all, 4 * bow + 0.1));
    }

    private static double[] size(Random random, int i) {
        double w = 600 + 2000 * random.nextDouble();
        double l = i % 4 == 0 ? w * Math.pow(10, 2 * random.nextDouble() - 1) : 600 + 2000 * random.nextDouble();
        return new double[] {w, l};
    }

    private static double scale(Random random, int i) {
        return i % 3 == 0
                ? 1 - 0.01 * random.nextDouble()
                : i % 3 == 1 ? 0.1 + random.nextDouble() : 1 + 4 * random.nextDouble();
    }

    private interface Use {
        void of(int i, Contacts contacts, AngleSearch.Aim<? extends AngleSearch.Peak> aim);
    }

    private static void each(int count, long seed, Use use) {
        Random random = new Random(seed);
        for (int i = 0; i < count; i++) {
            double[] size = size(random, i);
            Opening opening = bulging(random, size[0], size[1]);
            double scale = scale(random, i);
            Contacts contacts = Contacts.of(opening.outlines());
            Squeeze squeeze = Squeeze.clearance(contacts, scale * size[0], scale * size[1]);
            LargestAtAngle area = new LargestAtAngle(contacts);
            use.of(i, contacts, i % 2 == 0 ? squeeze::at : area::at);
        }
    }

    private static double value(AngleSearch.Aim<? extends AngleSearch.Peak> aim, double angle) {
        AngleSearch.Peak peak = aim.at(angle);
        return peak == null ? Double.NEGATIVE_INFINITY : peak.value();
    }

    /** Own derivation, see {@link Curve} and {@link AreaCurve}: here on 40 pairs of angles in one piece, of each of 1000 openings. */
    @Test
    void noCurveIsCrossed() {
        Random random = new Random(2);
        int[] finite = {0};
        double[] tightest = {0};
        each(1000, 1, (i, contacts, aim) -> {
            double[] edges = edges(contacts);
            for (int n = 0; n < 40; n++) {
                int piece = random.nextInt(edges.length - 1);
                double from = edges[piece];
                double wide = edges[piece + 1] - from;
                double a = from + wide * random.nextDouble();
                double b = from + wide * random.nextDouble();
                AngleSearch.Peak peak = aim.at(a);
                double there = value(aim, b);
                if (peak != null && wide > 1e-9) {
                    double t = b - a;
                    double bend = peak.bend(Math.abs(t));
                    double highest = peak.value() + peak.slope() * t + bend * t * t / 2;
                    assertThat(there)
                            .as("opening " + i + " at " + a + " and " + b)
                            .isLessThan(highest + 1e-7);
                    finite[0] += bend < Double.POSITIVE_INFINITY ? 1 : 0;
                    if (bend * t * t > 1e-3) {
                        double bent = there - peak.value() - peak.slope() * t;
                        tightest[0] = Math.max(tightest[0], bent / (bend * t * t / 2));
                    }
                }
            }
        });
        // The bounds say something, and some curve is nearly as bent as its bound.
        assertThat(finite[0]).isGreaterThan(20_000);
        assertThat(tightest[0]).isBetween(0.8, 1 + 1e-3);
    }

    private static double[] edges(Contacts contacts) {
        double[] breaks = contacts.parallels(WITHIN);
        double[] edges = Arrays.copyOf(breaks, breaks.length + 2);
        edges[breaks.length] = -WITHIN;
        edges[breaks.length + 1] = WITHIN;
        Arrays.sort(edges);
        return edges;
    }

    @Test
    void nothingBetterIsMissed() {
        each(400, 3, (i, contacts, aim) -> {
            double found = best(contacts, aim);
            assertThat(found).as("opening " + i).isCloseTo(grid(aim), within(CLOSE));
        });
    }

    private static <P extends AngleSearch.Peak> double best(Contacts contacts, AngleSearch.Aim<P> aim) {
        P best = AngleSearch.best(WITHIN, contacts.parallels(WITHIN), 1e-9, aim);
        return java.util.Objects.requireNonNull(best).value();
    }

    private static double grid(AngleSearch.Aim<? extends AngleSearch.Peak> aim) {
        double best = Double.NEGATIVE_INFINITY;
        double at = 0;
        int steps = 400;
        for (int k = -steps; k <= steps; k++) {
            double value = value(aim, WITHIN * k / steps);
            at = value > best ? WITHIN * k / steps : at;
            best = Math.max(best, value);
        }
        for (double step = WITHIN / steps; step > 1e-9; step /= 4) {
            double middle = at;
            for (int k = -4; k <= 4; k++) {
                double angle = Math.max(-WITHIN, Math.min(WITHIN, middle + step * k / 4));
                double value = value(aim, angle);
                at = value > best ? angle : at;
                best = Math.max(best, value);
            }
        }
        return best;
    }

    /** A parabola that nothing bends more than 0. */
    private record Parabola(double angle, double value, double slope) implements AngleSearch.Peak {
        static Parabola of(double angle, double top) {
            return new Parabola(angle, -1e3 * (angle - top) * (angle - top), -2e3 * (angle - top));
        }

        @Override
        public boolean isHeldAs(AngleSearch.Peak other) {
            return false;
        }

        @Override
        public double bend(double within) {
            return 0;
        }
    }

    /** Closed form: the top of a parabola, in ranges of which one or both ends have nothing, and under any break points. */
    @Test
    void anEndWhereNothingIsHadHidesNoPieceBeforeIt() {
        for (double top : new double[] {-0.016, -0.003, 0, 0.0012, 0.012, 0.0173}) {
            for (double none : new double[] {0.018, 0.03, 1}) {
                for (double[] breaks : new double[][] {{}, {0.001}, {-0.01, 0, 0.002}}) {
                    Parabola found = AngleSearch.best(
                            WITHIN, breaks, 1e-12, a -> a > none || a < -none ? null : Parabola.of(a, top));
                    assertThat(java.util.Objects.requireNonNull(found).angle()).isCloseTo(top, within(1e-5));
                }
            }
        }
    }

    /** Closed form: a parabola that rises to an end of the range has its best there. */
    @Test
    void theEndsOfTheRangeCount() {
        for (double top : new double[] {-1, -WITHIN, WITHIN, 1}) {
            Parabola found = AngleSearch.best(WITHIN, new double[] {0.001, -0.002}, 1e-12, a -> Parabola.of(a, top));
            double end = Math.copySign(WITHIN, top);
            assertThat(java.util.Objects.requireNonNull(found).angle()).isCloseTo(end, within(1e-5));
        }
    }
}
