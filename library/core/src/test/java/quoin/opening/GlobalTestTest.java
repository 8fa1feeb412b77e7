package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
}
