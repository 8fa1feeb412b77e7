package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quoin.judge.Bound;
import quoin.judge.Conformity;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;

/**
 * The odds of a frame that may turn, against how often it goes in when the readings are drawn anew. The simulation shares
 * the adjustment and the search with the library (the search is held against brute force elsewhere); the odds it is held
 * against share nothing with it.
 */
class TurnedOddsTest {
    private static final int DRAWS = 20_000;

    /** For the cases beside the racked one. */
    private static final int FEWER = 5_000;

    /** The tolerance asked for; the draws themselves scatter by 0.002, fewer of them by 0.005. */
    private static final double CLOSE = 0.015;

    private static final double U = 1;

    private record Case(Surveys.Quad quad, double width, double length, double atLeast) {
        Opening opening() {
            return quad.opening(U);
        }

        Gaps gaps(Held held) {
            return Gaps.of(opening(), held, Uncertain.exact(width), Uncertain.exact(length))
                    .orElseThrow();
        }

        double claimed(Held held) {
            return Conformity.odds(Gaps.least(gaps(held)), Bound.atLeast(atLeast))
                    .value();
        }

        /** What one would claim of a frame that stays where it is, whatever the opening. */
        double claimedInPlace() {
            Opening opening = opening();
            Contacts contacts = Contacts.of(opening.outlines());
            Fit.Placement best = Fit.place(opening, Held.FREELY, width, length).orElseThrow();
            contacts.turnTo(best.turnedRad());
            double c = Math.cos(best.turnedRad());
            double s = Math.sin(best.turnedRad());
            double dx = best.x() - contacts.pivotX();
            double dy = best.y() - contacts.pivotY();
            double x = c * dx + s * dy;
            double y = c * dy - s * dx;
            double[] z = {x, x + width, y, y + length};
            List<Extreme.Part> parts = new ArrayList<>();
            for (SideGap gap : opening.gaps(contacts, Held.FREELY, best.turnedRad())) {
                parts.add(new Extreme.Part(List.of(gap.name()), gap.at(z)));
            }
            return Conformity.odds(Extreme.least(parts), Bound.atLeast(atLeast)).value();
        }

        double happens(Held held, int draws, long seed) {
            Random random = new Random(seed);
            double[] exact = quad.exact();
            int goesIn = 0;
            for (int n = 0; n < draws; n++) {
                double[] read = exact.clone();
                for (int i = 0; i < 6; i++) {
                    read[i] += U * random.nextGaussian();
                }
                Opening drawn = Opening.of(Surveys.straight(Surveys.six(U, read)));
                double clearance =
                        Fit.place(drawn, held, width, length).orElseThrow().clearanceMm();
                goesIn += clearance >= atLeast ? 1 : 0;
            }
            return goesIn / (double) draws;
        }
    }

    private static void holds(String what, Case one, Held held, long seed) {
        holds(what, one, held, FEWER, seed);
    }

    private static void holds(String what, Case one, Held held, int draws, long seed) {
        double happens = one.happens(held, draws, seed);
        double claimed = one.claimed(held);
        assertThat(claimed).as(what).isCloseTo(happens, within(CLOSE));
        // Neither as good as certain nor hopeless, or the check would show little.
        assertThat(happens).as(what).isBetween(0.2, 0.98);
    }

    /** Racked by 12 mm over the length; the frame leans with it. Held where it is, it would seem far less likely to go in. */
    @Test
    void racked() {
        Surveys.Quad quad = Surveys.Quad.level(1500, 1512, 2400, 12, 2400);
        Case likely = new Case(quad, 1494.7, 2391.5, 1);
        holds("racked", likely, Held.FREELY, DRAWS, 1);
        assertThat(likely.claimedInPlace()).isLessThan(likely.claimed(Held.FREELY) - 0.25);
        holds("racked, tight", new Case(quad, 1496, 2392.5, 1), Held.FREELY, 2);
    }

    @Test
    void skewed() {
        Surveys.Quad quad = Surveys.Quad.level(1500, 1507, 2403, -4, 2398);
        holds("skewed", new Case(quad, 1497, 2395, 1), Held.FREELY, 3);
        holds("skewed, held to the left", new Case(quad, 1495, 2395, 1), Held.to(Side.LEFT), 4);
    }

    @Test
    void square() {
        Surveys.Quad quad = Surveys.Quad.level(1500, 1500, 2400, 0, 2400);
        holds("square", new Case(quad, 1496, 2396, 1), Held.FREELY, 5);
        holds("square, held", new Case(quad, 1495, 2395, 1), Held.TO_HEAD, 6);
    }

    @Test
    void tapered() {
        Surveys.Quad quad = Surveys.Quad.level(1500, 1485, 2400, 15, 2400);
        holds("tapered", new Case(quad, 1467, 2394, 1), Held.FREELY, 7);
    }

    /** It leans by more than the frame may turn: the frame stays at the end of its range. */
    @Test
    void beyondTheRange() {
        double lean = 2400 * Math.tan(Math.toRadians(2.1));
        Surveys.Quad quad = Surveys.Quad.level(1500, 1500 + lean, 2400, lean, 2400);
        holds("beyond the range", new Case(quad, 1490, 2340, 1), Held.FREELY, 8);
    }

    /** It leans by as much as the frame may turn, give or take its doubt. */
    @Test
    void atTheEndOfTheRange() {
        double lean = 2400 * Math.tan(Math.toRadians(2));
        Surveys.Quad quad = Surveys.Quad.level(1500, 1500 + lean, 2400, lean, 2400);
        holds("at the end of the range", new Case(quad, 1495, 2340, 1), Held.FREELY, 9);
    }
}
