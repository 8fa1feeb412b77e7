package quoin.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static quoin.judge.Values.greatest;
import static quoin.judge.Values.largestInSize;
import static quoin.judge.Values.least;
import static quoin.judge.Values.row;
import static quoin.judge.Values.value;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Influence;
import quoin.measure.Uncertain;

/** What falls short with a stated probability, against closed forms and draws. */
class ShortfallTest {
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private static Shortfall of(Estimate estimate, double probability) {
        return Shortfall.of(estimate, probability).orElseThrow();
    }

    private static Uncertain[] independent(int n, double value, double u) {
        Uncertain[] values = new Uncertain[n];
        for (int i = 0; i < n; i++) {
            values[i] = value(value, u, "part " + i);
        }
        return values;
    }

    /** The odds are good to 1e-4; over the density of the answer that is a length. */
    private static double close(double probability, double density) {
        return 1e-4 / Math.min(density, probability);
    }

    // handbook: 1 % and 5 % points of the normal, -2.3263 and -1.6449; of Student's t for 4 degrees, -3.747 and -2.132.
    @Test
    void oneValueIsItsQuantile() {
        assertThat(of(value(1502.3, 0.8), 0.01).value()).isEqualTo(1502.3 - 0.8 * 2.3263, within(0.8 * 5e-5));
        assertThat(of(value(1502.3, 0.8), 0.95).value()).isEqualTo(1502.3 + 0.8 * 1.6449, within(0.8 * 5e-5));
        Uncertain five = Uncertain.of(10, Influence.tByScale("five readings", 1, 4));
        assertThat(of(five, 0.01).value()).isEqualTo(10 - 3.747, within(5e-4));
        assertThat(of(least(five), 0.05).value()).isEqualTo(10 - 2.132, within(5e-4));
        assertThat(of(greatest(five), 0.05).error()).isZero();
    }

    // closed form: n independent equal parts fall short of a common quantile with 1 - (1 - p)^n.
    @Test
    void aLeastOfIndependentEqualParts() {
        for (int n : new int[] {2, 3, 5, 8}) {
            for (double p : new double[] {0.001, 0.01, 0.05, 0.3, 0.5, 0.9}) {
                double z = NORMAL.inverseCumulativeProbability(1 - Math.pow(1 - p, 1.0 / n));
                double density = n * NORMAL.density(z) * Math.pow(1 - NORMAL.cumulativeProbability(z), n - 1);
                Shortfall shortfall = of(least(independent(n, 1500, 2)), p);
                assertThat(shortfall.value()).as(n + " parts, " + p).isEqualTo(1500 + 2 * z, within(2e-4 / density));
                assertThat(1500 + 2 * z)
                        .as(n + " parts, " + p)
                        .isBetween(shortfall.lower() - 1e-6, shortfall.upper() + 1e-6);
            }
        }
    }

    // closed form: n independent equal parts are all below a common quantile with p^n.
    @Test
    void aGreatestOfIndependentEqualParts() {
        for (int n : new int[] {2, 3, 5}) {
            for (double p : new double[] {0.01, 0.05, 0.5}) {
                double z = NORMAL.inverseCumulativeProbability(Math.pow(p, 1.0 / n));
                double density = n * NORMAL.density(z) * Math.pow(NORMAL.cumulativeProbability(z), n - 1);
                Shortfall shortfall = of(greatest(independent(n, 3, 0.5)), p);
                assertThat(shortfall.value()).as(n + " parts, " + p).isEqualTo(3 + 0.5 * z, within(0.5e-4 / density));
                assertThat(3 + 0.5 * z).isBetween(shortfall.lower() - 1e-6, shortfall.upper() + 1e-6);
            }
        }
    }

    // closed form: two numbers of correlation r are both above nought with 1/4 + asin(r)/2π, three (of equal r) with
    // 1/8 + 3 asin(r)/4π (Sheppard).
    @Test
    void correlatedPartsByTheOrthants() {
        for (double r : new double[] {-0.4, 0, 0.5, 0.9}) {
            double other = Math.sqrt(1 - r * r);
            double two = 0.25 + Math.asin(r) / (2 * Math.PI);
            Shortfall shortfall = of(least(row(0, 1, 0), row(0, r, other)), 1 - two);
            assertThat(shortfall.value()).as("r " + r).isEqualTo(0, within(close(1 - two, 0.3)));
            if (r >= 0) {
                double s = Math.sqrt(r);
                double own = Math.sqrt(1 - r);
                double three = 0.125 + 3 * Math.asin(r) / (4 * Math.PI);
                Extreme least = least(row(0, s, own, 0, 0), row(0, s, 0, own, 0), row(0, s, 0, 0, own));
                assertThat(of(least, 1 - three).value()).as("r " + r).isEqualTo(0, within(close(1 - three, 0.3)));
            }
        }
    }

    /** One error in all parts: the least is one number. */
    @Test
    void partsOfOneErrorAreOneNumber() {
        Extreme least = least(value(10, 1), value(10.5, 1), value(12, 1));
        assertThat(of(least, 0.01).value()).isEqualTo(10 - 2.3263, within(5e-5));
    }

    /** Parts of different values and doubts that share an error, against draws of their influences. */
    @Test
    void drawsFallShortAsOftenAsStated() {
        double[][] parts = {{1500, 0.4, 0.6, 0, 0}, {1500.5, 0.4, 0, 0.9, 0}, {1501, 0.5, 0, 0.3, 1.2}};
        Extreme least = least(drawable(parts[0]), drawable(parts[1]), drawable(parts[2]));
        Extreme greatest = greatest(drawable(parts[0]), drawable(parts[1]), drawable(parts[2]));
        int draws = 400_000;
        for (double p : new double[] {0.01, 0.1, 0.5}) {
            double low = of(least, p).value();
            double high = of(greatest, p).value();
            Random random = new Random(7);
            int short1 = 0;
            int short2 = 0;
            for (int n = 0; n < draws; n++) {
                double[] z = new double[4];
                Arrays.setAll(z, k -> random.nextGaussian());
                double min = Double.POSITIVE_INFINITY;
                double max = Double.NEGATIVE_INFINITY;
                for (double[] part : parts) {
                    double at = part[0] + part[1] * z[0] + part[2] * z[1] + part[3] * z[2] + part[4] * z[3];
                    min = Math.min(min, at);
                    max = Math.max(max, at);
                }
                short1 += min < low ? 1 : 0;
                short2 += max < high ? 1 : 0;
            }
            // four standard deviations of the draws, and the error of the odds
            double scatter = 4 * Math.sqrt(p * (1 - p) / draws) + 1e-4;
            assertThat(short1 / (double) draws).as("least " + p).isEqualTo(p, within(scatter));
            assertThat(short2 / (double) draws).as("greatest " + p).isEqualTo(p, within(scatter));
        }
    }

    private static Uncertain drawable(double[] part) {
        return row(part[0], Arrays.copyOfRange(part, 1, 5));
    }

    /** A part without doubt is a wall: the least never stands above it, whatever the probability. */
    @Test
    void aPartWithoutDoubt() {
        Extreme least = least(Uncertain.exact(9), value(10, 1));
        assertThat(of(least, 0.01).value()).isEqualTo(10 - 2.3263, within(5e-5));
        assertThat(of(least, 0.5).value()).isEqualTo(9, within(1e-6));
        assertThat(of(least(Uncertain.exact(9), Uncertain.exact(8)), 0.2).value())
                .isEqualTo(8);
        assertThat(of(greatest(Uncertain.exact(9), value(8, 1)), 0.2).value()).isEqualTo(9, within(1e-6));
    }

    /** Independent parts multiply whatever their tails. */
    @Test
    void fewDegreesOfFreedomKeepTheirTails() {
        Uncertain few = Uncertain.of(0, Influence.tByScale("three readings", 1, 2));
        Uncertain many = value(0, 1, "another");
        double x = of(least(few, many), 0.02).value();
        double both = (1 - Gauss.below(x, 2)) * (1 - Gauss.below(x));
        assertThat(both).isEqualTo(0.98, within(1e-4));
    }

    /** A bracket of a few last digits is one number; so it is where one part alone can fall short. */
    @Test
    void aBracketOfAFewLastDigits() {
        double from = 1486.499;
        double to = from;
        for (int digits = 0; digits < 40; digits++) {
            assertThat(Crossing.of(x -> x > from ? 1 : -1, from, to)).isBetween(from, to);
            to = Math.nextUp(to);
        }
        for (int i = 0; i < 200; i++) {
            double above = 6 + 0.02 * i;
            Shortfall shortfall = of(least(value(1486.5, 1, "a"), value(1486.5 + above, 0.8, "b")), 0.01);
            assertThat(shortfall.value()).isEqualTo(1486.5 - 2.3263, within(1e-3));
        }
    }

    @Test
    void whatHasNoShortfall() {
        assertThat(Shortfall.of(largestInSize(value(1, 1), value(-2, 1)), 0.01)).isEmpty();
        Uncertain square = value(0, 1).times(value(0, 1));
        assertThat(square.isFirstOrderBlind()).isTrue();
        assertThat(Shortfall.of(square, 0.01)).isEmpty();
        assertThat(Shortfall.of(least(square, value(3, 1)), 0.01)).isEmpty();
        for (double p : new double[] {0, 1, -0.1, Double.NaN}) {
            assertThatThrownBy(() -> Shortfall.of(value(1, 1), p))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("probability must be above 0 and below 1, got " + p);
        }
        assertThatThrownBy(() -> new Shortfall(Double.NaN, 0, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
