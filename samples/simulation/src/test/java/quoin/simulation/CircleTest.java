package quoin.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A short run of the circle, seeded; the long one is a command. */
class CircleTest {
    private static final int OPENINGS = 1500;

    /**
     * Openings that scatter by 40 u: claims are frequencies. Four standard errors of the count (one run in 16,000 goes
     * beyond by chance; the seed is fixed, so it either does or does not).
     */
    @Test
    void claimsAreFrequenciesWhereOpeningsScatterWidely() {
        for (Tally tally : new Circle(40 * Population.FRESH, OPENINGS, 2).tallies()) {
            assertThat(tally.count()).as(tally.name()).isPositive();
            assertThat(Math.abs(tally.difference())).as(tally.name()).isLessThan(4 * tally.error());
        }
    }

    /** Openings that are nearly square: a flat prior does not know that, so the claim is cautious, not bold. */
    @Test
    void claimsAreCautiousWhereOpeningsAreNearlySquare() {
        Tally square = new Circle(Population.FRESH, OPENINGS, 3).tallies().get(3);
        assertThat(square.difference()).isLessThan(4 * square.error());
    }
}
