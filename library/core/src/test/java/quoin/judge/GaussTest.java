package quoin.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GaussTest {
    // memory: JCGM 106:2012, Table 1, three decimals.
    @ParameterizedTest
    @CsvSource({"0.80, 0.842", "0.90, 1.282", "0.95, 1.645", "0.99, 2.326", "0.999, 3.090"})
    void quantilesOfTheStandardNormal(double p, double z) {
        assertThat(Gauss.quantile(p)).isEqualTo(z, within(0.0005));
        assertThat(Gauss.quantile(1 - p)).isEqualTo(-z, within(0.0005));
        assertThat(Gauss.below(Gauss.quantile(p))).isEqualTo(p, within(1e-14));
    }

    // handbook: Abramowitz and Stegun 1964, asymptotic series 26.2.12 for the upper tail, here to five terms:
    // at z = 10 the sixth is 1e-7 of the sum.
    @Test
    void theFarTailKeepsItsDigits() {
        double z = 10;
        double w = 1 / (z * z);
        double series = Gauss.density(z) / z * (1 - w + 3 * w * w - 15 * w * w * w + 105 * w * w * w * w);
        assertThat(Gauss.below(-z) / series).isEqualTo(1, within(2e-7));
        assertThat(Gauss.between(z, Double.POSITIVE_INFINITY)).isEqualTo(Gauss.below(-z));
    }

    @Test
    void anIntervalThatIsNoneHasNoProbability() {
        assertThat(Gauss.between(1, 1)).isZero();
        assertThat(Gauss.between(2, 1)).isZero();
        assertThat(Gauss.between(Double.NaN, 1)).isZero();
        assertThat(Gauss.between(2, 1, 4)).isZero();
    }

    // handbook: Student's t table, one-sided 95 %, as printed to three decimals.
    @ParameterizedTest
    @CsvSource({"1, 6.314", "2, 2.920", "4, 2.132", "10, 1.812", "30, 1.697"})
    void studentsTable(double degreesOfFreedom, double t) {
        assertThat(Gauss.below(t, degreesOfFreedom)).isEqualTo(0.95, within(1e-4));
        assertThat(Gauss.between(-t, t, degreesOfFreedom)).isEqualTo(0.90, within(2e-4));
        assertThat(Gauss.between(t, 1e9, degreesOfFreedom)).isEqualTo(0.05, within(1e-4));
    }

    @Test
    void infiniteDegreesOfFreedomAreTheNormal() {
        assertThat(Gauss.below(1.7, Double.POSITIVE_INFINITY)).isEqualTo(Gauss.below(1.7));
        assertThat(Gauss.below(Double.POSITIVE_INFINITY, 4)).isEqualTo(1);
    }

    // handbook: Student's t table, 4 degrees, one-sided 95 % at 2.132 is the normal 1.645; symmetric; far out held at
    // 8.2.
    @Test
    void theNormalNumberOfTheSameOdds() {
        assertThat(Gauss.score(2.132, 4)).isEqualTo(1.645, within(5e-4));
        assertThat(Gauss.score(-2.132, 4)).isEqualTo(-Gauss.score(2.132, 4));
        assertThat(Gauss.below(Gauss.score(0.7, 3))).isEqualTo(Gauss.below(0.7, 3), within(1e-14));
        assertThat(Gauss.score(0, 4)).isZero();
        assertThat(Gauss.score(2.132, Double.POSITIVE_INFINITY)).isEqualTo(2.132);
        assertThat(Gauss.score(Double.POSITIVE_INFINITY, 4)).isInfinite();
        assertThat(Gauss.score(1e9, 4)).isEqualTo(8.2, within(0.05));
        assertThat(Gauss.score(-1e9, 4)).isEqualTo(-8.2, within(0.05));
        assertThat(Gauss.score(Double.NaN, 4)).isNaN();
    }

    // Closed forms of the chi distribution: 2 dimensions exp(-r^2/2); 3 dimensions by the normal and its density.
    @Test
    void theRadiusInTwoAndThreeDimensions() {
        for (double r = 0.25; r < 6; r += 0.25) {
            assertThat(Gauss.beyond(2, r)).isEqualTo(StrictMath.exp(-r * r / 2), within(1e-14));
            assertThat(Gauss.beyond(3, r)).isEqualTo(2 * Gauss.below(-r) + 2 * r * Gauss.density(r), within(1e-14));
            assertThat(Gauss.shell(3, r)).isEqualTo(2 * r * r * Gauss.density(r), within(1e-14));
        }
        assertThat(Gauss.beyond(5, 0)).isEqualTo(1);
    }

    @Test
    void theTableOfTheInnerLoopIsCloseToTheDistribution() {
        for (double z = -10; z <= 10; z += 0.00731) {
            assertThat(Bell.below(z)).isEqualTo(Gauss.below(z), within(1e-8));
        }
        assertThat(Bell.below(Double.NEGATIVE_INFINITY)).isZero();
        assertThat(Bell.below(Double.POSITIVE_INFINITY)).isEqualTo(1);
        assertThat(Bell.quantile(0)).isEqualTo(-8.2);
        assertThat(Bell.quantile(1)).isEqualTo(8.2);
        assertThat(Bell.quantile(0.95)).isEqualTo(Gauss.quantile(0.95), within(3e-5));
    }

    /** The fast quantile against the exact one, and as the inverse of the fast distribution. */
    @Test
    void theFastQuantileIsNearTheExactOne() {
        for (int k = 1; k < 100_000; k++) {
            double p = k / 100_000.0;
            double z = Bell.quantile(p);
            assertThat(z).isCloseTo(Gauss.quantile(p), within(3e-5));
            assertThat(Bell.below(z)).isCloseTo(p, within(2e-8));
        }
        for (double p : new double[] {1e-300, 1e-12, 1e-5, 0.00009999, 0.0001, 0.9999, 1 - 1e-5, 1 - 1e-15}) {
            double exact = Math.max(-8.2, Math.min(8.2, Gauss.quantile(p)));
            assertThat(Bell.quantile(p)).as("%s", p).isCloseTo(exact, within(3e-5));
        }
    }
}
