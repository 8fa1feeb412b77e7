package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Critical values of the test of all readings together. Mark: handbook (Baarda's B-method), values by an independent program. */
class GlobalTestTest {
    /** Printed to two digits. */
    @ParameterizedTest
    @CsvSource({
        "1, 10.83",
        "2, 11.73",
        "3, 12.63",
        "4, 13.54",
        "5, 14.44",
        "6, 15.35",
        "7, 16.26",
        "8, 17.17",
        "10, 18.99",
        "20, 28.14",
        "40, 46.65"
    })
    void published(int redundancy, double critical) {
        assertThat(GlobalTest.critical(redundancy)).isCloseTo(critical, within(0.006));
    }

    /** One reading's test squared is the test of one redundancy, but for the far side of it. */
    @Test
    void withOneRedundancyBothTestsAgree() {
        assertThat(Math.sqrt(GlobalTest.critical(1))).isCloseTo(3.2905267, within(1e-5));
    }

    @Test
    void theTableIsWhatItIsComputedFrom() {
        for (int redundancy = 1; redundancy <= 40; redundancy++) {
            assertThat(GlobalTest.critical(redundancy)).isCloseTo(GlobalTest.compute(redundancy), within(1e-6));
        }
    }

    /** Beyond the table: computed; mean and spread of the noncentral chi-square say where it must lie. */
    @ParameterizedTest
    @ValueSource(ints = {41, 60, 120})
    void beyondTheTable(int redundancy) {
        double noncentrality = GlobalTest.DELTA * GlobalTest.DELTA;
        double mean = redundancy + noncentrality;
        double spread = Math.sqrt(2 * (redundancy + 2 * noncentrality));
        // Between the normal approximation and half a standard deviation below: the density leans left.
        assertThat(GlobalTest.critical(redundancy)).isBetween(mean - 0.95 * spread, mean - 0.75 * spread);
        assertThat(GlobalTest.critical(redundancy)).isGreaterThan(GlobalTest.critical(redundancy - 1));
    }

    /** Central where there is no shift: 0.95 quantiles of chi-square from tables. */
    @ParameterizedTest
    @CsvSource({"1, 3.841", "2, 5.991", "5, 11.070", "12, 21.026"})
    void centralChiSquare(int degrees, double quantile) {
        assertThat(GlobalTest.below(quantile, degrees, 0)).isCloseTo(0.95, within(1e-4));
    }

    /** The table as printed, for a shift of 17.07 where 17.0746 is used here: critical values, and their levels. */
    @ParameterizedTest
    @CsvSource({
        "1, 10.82, .0010",
        "2, 11.73, .0028",
        "3, 12.63, .0055",
        "4, 13.53, .0089",
        "5, 14.44, .0130",
        "6, 15.35, .0177",
        "7, 16.25, .0229",
        "8, 17.16, .0285",
        "10, 18.98, .0405"
    })
    void asPrinted(int redundancy, double critical, double level) {
        double low = 0;
        double high = 60;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            boolean below = GlobalTest.below(middle, redundancy, 17.07) < 0.2;
            low = below ? middle : low;
            high = below ? high : middle;
        }
        assertThat(low).isCloseTo(critical, within(0.006));
        assertThat(1 - GlobalTest.below(low, redundancy, 0)).isCloseTo(level, within(6e-5));
        assertThat(GlobalTest.critical(redundancy)).isCloseTo(low, within(0.006));
    }

    /** The shift that a two-sided test sees: normal quantiles, printed to four digits. */
    @ParameterizedTest
    @CsvSource({"0.05, 1.9600, 2.8016, 3.2415", "0.01, 2.5758, 3.4175, 3.8574", "0.001, 3.2905, 4.1321, 4.5721"})
    void shiftsThatAreSeen(double level, double critical, double eight, double nine) {
        NormalDistribution normal = new NormalDistribution();
        double k = normal.inverseCumulativeProbability(1 - level / 2);
        assertThat(k).isCloseTo(critical, within(6e-5));
        assertThat(k + normal.inverseCumulativeProbability(0.8)).isCloseTo(eight, within(6e-5));
        assertThat(k + normal.inverseCumulativeProbability(0.9)).isCloseTo(nine, within(6e-5));
        if (level == 0.001) {
            assertThat(GlobalTest.DELTA).isCloseTo(eight, within(6e-5));
            assertThat(GlobalTest.DELTA * GlobalTest.DELTA).isCloseTo(17.07, within(6e-3));
            assertThat(Adjustment.CRITICAL_W).isCloseTo(critical, within(6e-5));
        }
    }

    /** Chi-square at 95, 99 and 99.9 %, printed to three digits, and the interval of s₀ at 95 %. */
    @ParameterizedTest
    @CsvSource({
        "1, 3.841, 6.635, 10.828, .031, 2.241",
        "2, 5.991, 9.210, 13.816, .159, 1.921",
        "3, 7.815, 11.345, 16.266, .268, 1.765",
        "4, 9.488, 13.277, 18.467, .348, 1.669",
        "5, 11.070, 15.086, 20.515, .408, 1.602",
        "6, 12.592, 16.812, 22.458, .454, 1.552",
        "7, 14.067, 18.475, 24.322, .491, 1.512",
        "8, 15.507, 20.090, 26.124, .522, 1.480",
        "10, 18.307, 23.209, 29.588, .570, 1.431",
        "12, 21.026, 26.217, 32.909, .606, 1.395"
    })
    void chiSquare(int degrees, double q95, double q99, double q999, double low, double high) {
        double[] at = {q95, q99, q999, degrees * low * low, degrees * high * high};
        double[] level = {0.95, 0.99, 0.999, 0.025, 0.975};
        double[] digit = {6e-4, 6e-4, 6e-4, 2 * degrees * low * 6e-4, 2 * degrees * high * 6e-4};
        for (int i = 0; i < 5; i++) {
            // Half a digit either way holds the level between.
            assertThat(GlobalTest.below(at[i] - digit[i], degrees, 0)).isLessThanOrEqualTo(level[i]);
            assertThat(GlobalTest.below(at[i] + digit[i], degrees, 0)).isGreaterThanOrEqualTo(level[i]);
        }
    }

    /** The odds by which readings to take next are ranked: normal, up to 0.06 off near even odds, less at the ends. */
    @ParameterizedTest
    @CsvSource({"1, 5", "1, 20", "3, 10", "5, 0.5", "8, 30"})
    void oddsOfAcceptance(int redundancy, double shift) {
        double exact = GlobalTest.below(GlobalTest.critical(redundancy), redundancy, shift);
        assertThat(GlobalTest.accepted(redundancy, shift)).isCloseTo(exact, within(0.06));
        assertThat(GlobalTest.accepted(0, shift)).isOne();
    }
}
