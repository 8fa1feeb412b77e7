package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InfluenceTest {
    /** Rounding of doubles. */
    private static final double EXACT = 1e-14;

    @Test
    void fromAStatedLimitToAStandardUncertainty() {
        // standard (from memory): GUM 4.3.7, 4.3.9, 4.3.3, F.2.2.1; JCGM 101:2008, 6.4 for arcsine and curved trapezoid
        assertThat(u(Influence.rectangular("x", 1))).isCloseTo(1 / StrictMath.sqrt(3), within(EXACT));
        assertThat(u(Influence.triangular("x", 1))).isCloseTo(1 / StrictMath.sqrt(6), within(EXACT));
        assertThat(u(Influence.trapezoid("x", 1, 0.5))).isCloseTo(StrictMath.sqrt(1.25 / 6), within(EXACT));
        assertThat(u(Influence.trapezoid("x", 1, 0))).isCloseTo(u(Influence.triangular("x", 1)), within(EXACT));
        assertThat(u(Influence.trapezoid("x", 1, 1))).isCloseTo(u(Influence.rectangular("x", 1)), within(EXACT));
        assertThat(u(Influence.arcsine("x", 0.5))).isCloseTo(0.35, within(0.005));
        assertThat(u(Influence.resolution("x", 1))).isCloseTo(0.289, within(5e-4));
        assertThat(u(Influence.expanded("x", 1, 2))).isEqualTo(0.5);
        // var = (b − a)² / 12 + d² / 9
        assertThat(u(Influence.curvedTrapezoid("x", 2, 1)))
                .isCloseTo(StrictMath.sqrt(16.0 / 12 + 1.0 / 9), within(EXACT));
    }

    @Test
    void aProbabilityIsTurnedIntoItsFactor() {
        // standard: NIST TN 1297, 4.3: 95 % 1.960, 99 % 2.576; 4.4: 50 % a · 1.48, all to their printed digits
        assertThat(1 / u(Influence.expandedWithProbability("x", 1, 0.95))).isCloseTo(1.960, within(5e-4));
        assertThat(1 / u(Influence.expandedWithProbability("x", 1, 0.99))).isCloseTo(2.576, within(5e-4));
        assertThat(u(Influence.expandedWithProbability("x", 1, 0.5))).isCloseTo(1.48, within(5e-3));
        // standard: JCGM 100:2008, H.1.2: ± 0.01 µm at 95 % with 5 degrees of freedom, t 2.57: 3.9 nm
        Influence comparator = Influence.expandedWithProbability("x", 10, 0.95, 5);
        assertThat(u(comparator)).isCloseTo(3.9, within(0.05));
        assertThat(comparator.degreesOfFreedom()).isEqualTo(5);
        assertThat(comparator.shape()).isEqualTo(Shape.SCALED_T);
    }

    @ParameterizedTest
    @CsvSource({"10, 50", "25, 8", "50, 2"})
    void howWellAStatementIsKnownGivesItsDegreesOfFreedom(double percent, double nu) {
        // standard: JCGM 100:2008, G.4.2: nu = 1/2 (du/u)^-2; exact
        assertThat(Influence.normal("x", 1).withReliability(percent).degreesOfFreedom())
                .isCloseTo(nu, within(1e-12));
    }

    @Test
    void readingsGiveTheDoubtOfTheirMean() {
        // standard: JCGM 100:2008, 4.4.3: s / sqrt 20 = 0.333, printed to three decimals
        Influence mean = Influence.repeated(
                "t", 96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68,
                100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72);
        assertThat(u(mean)).isCloseTo(0.333, within(5e-4));
        assertThat(mean.degreesOfFreedom()).isEqualTo(19);
        assertThat(mean.ratio()).isEqualTo(1);
    }

    @Test
    void studentsTSaysWhichOfItsTwoWidthsIsMeant() {
        Influence scale = Influence.tByScale("x", 25, 18);
        Influence deviation = Influence.tByStandardDeviation("x", 25, 18);
        assertThat(scale).isNotEqualTo(deviation);
        assertThat(scale.ratio()).isEqualTo(1);
        assertThat(deviation.ratio()).isCloseTo(StrictMath.sqrt(16.0 / 18), within(EXACT));
        assertThat(new Influence("x", Shape.SCALED_T, 25, 18, "")).isEqualTo(scale);
        assertThat(Influence.tByScale("x", 25, Double.POSITIVE_INFINITY)).isEqualTo(Influence.normal("x", 25));
        assertThat(Influence.tByStandardDeviation("x", 25, Double.POSITIVE_INFINITY))
                .isEqualTo(Influence.normal("x", 25));
    }

    @Test
    void changedCopies() {
        Influence x = Influence.trapezoid("x", 1, 0.5).withGroup("g").withDegreesOfFreedom(5);
        assertThat(x.group()).isEqualTo("g");
        assertThat(x.ratio()).isEqualTo(0.5);
        assertThat(x).hasSameHashCodeAs(Influence.trapezoid("x", 1, 0.5));
        assertThat(x)
                .isNotEqualTo(x.withGroup(""))
                .isNotEqualTo(x.withDegreesOfFreedom(6))
                .isNotEqualTo(Influence.trapezoid("y", 1, 0.5).withGroup("g").withDegreesOfFreedom(5))
                .isNotEqualTo(new Influence("x", Shape.TRAPEZOID, x.standardUncertainty(), 5, "g", 0.4))
                .isNotEqualTo(new Influence("x", Shape.CURVED_TRAPEZOID, x.standardUncertainty(), 5, "g", 0.5))
                .isNotEqualTo(new Influence("x", Shape.TRAPEZOID, 1, 5, "g", 0.5))
                .isNotEqualTo(new Object());
    }

    @Test
    void badStatementsAreRefused() {
        refused("half-width must be 0 or more and finite, got -1", () -> Influence.triangular("x", -1));
        refused("half-width must be 0 or more and finite, got NaN", () -> Influence.arcsine("x", Double.NaN));
        refused("top over base must be from 0 to 1, got 2", () -> Influence.trapezoid("x", 1, 2));
        refused("half-width must be more than 0 and finite, got 0", () -> Influence.curvedTrapezoid("x", 0, 0));
        refused("inexactness of the limits must be from 0 to 1, got 2", () -> Influence.curvedTrapezoid("x", 1, 2));
        refused("step must be 0 or more and finite, got -1", () -> Influence.resolution("x", -1));
        refused("coverage factor must be more than 0 and finite, got 0", () -> Influence.expanded("x", 1, 0));
        refused("expanded uncertainty must be 0 or more and finite, got -1", () -> Influence.expanded("x", -1, 2));
        for (double p : new double[] {0, 1, -0.1, 1.1, Double.NaN}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Influence.expandedWithProbability("x", 1, p))
                    .withMessageStartingWith("probability must be more than 0 and less than 1, got ");
        }
        refused(
                "degrees of freedom must be more than 0, got 0",
                () -> Influence.expandedWithProbability("x", 1, 0.95, 0));
        refused("degrees of freedom must be more than 0, got -1", () -> Influence.tByScale("x", 1, -1));
        refused("degrees of freedom must be more than 2, got 2", () -> Influence.tByStandardDeviation("x", 1, 2));
        refused(
                "degrees of freedom must be more than 2, got NaN",
                () -> Influence.tByStandardDeviation("x", 1, Double.NaN));
        refused("number of readings must be 2 or more, got 1", () -> Influence.repeated("x", 1));
        refused("reading must be finite, got Infinity", () -> Influence.repeated("x", 1, Double.POSITIVE_INFINITY));
        refused(
                "reliability must be more than 0 % and finite, got 0 %",
                () -> Influence.normal("x", 1).withReliability(0));
    }

    private static double u(Influence influence) {
        return influence.standardUncertainty();
    }

    private static void refused(String message, Runnable call) {
        assertThatIllegalArgumentException().isThrownBy(call::run).withMessage(message);
    }
}
