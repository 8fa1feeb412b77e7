package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoverageTest {
    /**
     * Standard: JCGM 100:2008, Table G.2, the same as NIST TN 1297, Table B.1; two-sided. Printed to two decimals, for 100
     * degrees and more to three.
     */
    @ParameterizedTest
    @CsvSource({
        "1, 1.84, 6.31, 12.71, 13.97, 63.66, 235.80",
        "2, 1.32, 2.92, 4.30, 4.53, 9.92, 19.21",
        "3, 1.20, 2.35, 3.18, 3.31, 5.84, 9.22",
        "4, 1.14, 2.13, 2.78, 2.87, 4.60, 6.62",
        "5, 1.11, 2.02, 2.57, 2.65, 4.03, 5.51",
        "8, 1.07, 1.86, 2.31, 2.37, 3.36, 4.28",
        "10, 1.05, 1.81, 2.23, 2.28, 3.17, 3.96",
        "16, 1.03, 1.75, 2.12, 2.17, 2.92, 3.54",
        "20, 1.03, 1.72, 2.09, 2.13, 2.85, 3.42",
        "50, 1.01, 1.68, 2.01, 2.05, 2.68, 3.16",
        "100, 1.005, 1.660, 1.984, 2.025, 2.626, 3.077",
        "Infinity, 1.000, 1.645, 1.960, 2.000, 2.576, 3.000"
    })
    void studentsTable(double nu, double p6827, double p90, double p95, double p9545, double p99, double p9973) {
        double half = nu >= 100 ? 5.1e-4 : 5.1e-3;
        // the columns 68.27, 95.45 and 99.73 are those of one, two and three standard deviations of a normal number
        assertThat(Coverage.factor(nu, 0.6826894921)).isCloseTo(p6827, within(half));
        assertThat(Coverage.factor(nu, 0.90)).isCloseTo(p90, within(half));
        assertThat(Coverage.factor(nu, 0.95)).isCloseTo(p95, within(half));
        assertThat(Coverage.factor(nu, 0.9544997361)).isCloseTo(p9545, within(half));
        assertThat(Coverage.factor(nu, 0.99)).isCloseTo(p99, within(half));
        assertThat(Coverage.factor(nu, 0.9973002039)).isCloseTo(p9973, within(half));
    }

    @Test
    void oneSidedIsTheNinetyPerCentColumn() {
        // recomputed: nu 4 2.132, nu 9 1.833, infinite 1.645
        assertThat(Coverage.oneSidedFactor(4, 0.95)).isCloseTo(2.132, within(5e-4));
        assertThat(Coverage.oneSidedFactor(9, 0.95)).isCloseTo(1.833, within(5e-4));
        assertThat(Coverage.oneSidedFactor(Double.POSITIVE_INFINITY, 0.95)).isCloseTo(1.645, within(5e-4));
        assertThat(Coverage.oneSidedFactor(4, 0.05)).isCloseTo(-2.132, within(5e-4));
        assertThat(Coverage.factor(4, 0.9)).isCloseTo(Coverage.oneSidedFactor(4, 0.95), within(1e-9));
    }

    @Test
    void theNormalFactorsOfConformity() {
        // standard (from memory, recomputed): JCGM 106:2012, Table 1
        double infinite = Double.POSITIVE_INFINITY;
        assertThat(Coverage.oneSidedFactor(infinite, 0.80)).isCloseTo(0.842, within(5e-4));
        assertThat(Coverage.oneSidedFactor(infinite, 0.90)).isCloseTo(1.282, within(5e-4));
        assertThat(Coverage.oneSidedFactor(infinite, 0.99)).isCloseTo(2.326, within(5e-4));
        assertThat(Coverage.oneSidedFactor(infinite, 0.999)).isCloseTo(3.090, within(5e-4));
    }

    @Test
    void theProductOfThreeFactors() {
        // standard: JCGM 100:2008, G.4.1: 1.03 %, nu 19.0, t 2.09, U 2.2 %. nu is 18.9987: cut to 18 it would give
        // 2.10.
        Uncertain product = Uncertain.of(1, Influence.normal("x1", 0.25).withDegreesOfFreedom(9))
                .plus(Uncertain.of(0, Influence.normal("x2", 0.57).withDegreesOfFreedom(4)))
                .plus(Uncertain.of(0, Influence.normal("x3", 0.82).withDegreesOfFreedom(14)));
        Coverage coverage = Coverage.symmetric(product, 0.95).orElseThrow();
        assertThat(product.standardUncertainty()).isCloseTo(1.03, within(5e-3));
        assertThat(coverage.degreesOfFreedom()).isCloseTo(18.9987, within(5e-5));
        assertThat(coverage.factor()).isCloseTo(2.093, within(5e-4));
        assertThat(coverage.expanded()).isCloseTo(2.2, within(0.05));
        assertThat(coverage.method()).isEqualTo(Coverage.Method.STUDENT);
        assertThat(Coverage.factor(18, 0.95)).isCloseTo(2.10, within(5e-3));
    }

    @Test
    void aDominantRectangleHasASmallerFactor() {
        // standard (from memory): EA-4/02, S9: one rectangle, k = 0.95 √3 = 1.65
        Uncertain one =
                Uncertain.of(0, Influence.rectangular("a", 1)).plus(Uncertain.of(0, Influence.normal("n", 0.01)));
        Coverage coverage = Coverage.ofRectangles(one, 0.95).orElseThrow();
        assertThat(coverage.factor()).isCloseTo(0.95 * StrictMath.sqrt(3), within(1e-12));
        assertThat(coverage.method()).isEqualTo(Coverage.Method.RECTANGLES);
    }

    @Test
    void theVernierCalliper() {
        // standard (from memory, recomputed): EA-4/02, S10: limits in µm; 33 µm (rounded parts), trapezoid of beta
        // 0.33, k
        // 1.83, U 0.06 mm
        Uncertain error = Uncertain.of(100, Influence.rectangular("scale", 25))
                .plus(Uncertain.of(0, Influence.rectangular("mechanical", 50)))
                .plus(Uncertain.of(0, Influence.rectangular("standard", 0.8)))
                .plus(Uncertain.of(0, Influence.rectangular("temperature", 2 * 11.5e-6 * 150e3)));
        Coverage coverage = Coverage.ofRectangles(error, 0.95).orElseThrow();
        assertThat(error.standardUncertainty()).isCloseTo(32.3, within(0.1));
        assertThat(coverage.factor()).isCloseTo(1.83, within(5e-3));
        assertThat(coverage.expanded() / 1000).isCloseTo(0.06, within(5e-3));
    }

    @Test
    void aNormalIntervalOfFourRectanglesIsTooWide() {
        // standard: JCGM 101:2008, 9.2.4 (from memory, recomputed): three of u 1 and one of u 10, exact half-width
        // 17.0158, normal 19.8915. The trapezoid of the two largest is within 3 %.
        Uncertain sum = rectangle("a", 10)
                .plus(rectangle("b", 1))
                .plus(rectangle("c", 1))
                .plus(rectangle("d", 1));
        assertThat(sum.standardUncertainty()).isCloseTo(StrictMath.sqrt(103), within(1e-12));
        assertThat(Coverage.symmetric(sum, 0.95).orElseThrow().expanded()).isCloseTo(19.8915, within(5e-5));
        assertThat(Coverage.ofRectangles(sum, 0.95).orElseThrow().expanded()).isCloseTo(17.0158, within(0.5));
    }

    @Test
    void fourEqualInfluencesToFirstOrder() {
        // standard: JCGM 101:2008, 9.2.2 and 9.2.3: u 2.00 and ± 3.92 to first order, of normals and of rectangles
        // alike
        for (Shape shape : new Shape[] {Shape.NORMAL, Shape.RECTANGULAR}) {
            Uncertain sum = Uncertain.exact(0);
            for (String id : new String[] {"a", "b", "c", "d"}) {
                sum = sum.plus(Uncertain.of(0, new Influence(id, shape, 1, Double.POSITIVE_INFINITY, "")));
            }
            assertThat(sum.standardUncertainty()).isEqualTo(2);
            assertThat(Coverage.symmetric(sum, 0.95).orElseThrow().expanded()).isCloseTo(3.92, within(5e-3));
            assertThat(Coverage.ofRectangles(sum, 0.95)).isEmpty();
        }
    }

    @Test
    void whatIsNotDominatedHasNoSuchCoverage() {
        Uncertain mixed = rectangle("a", 1).plus(Uncertain.of(0, Influence.normal("n", 0.31)));
        assertThat(Coverage.ofRectangles(mixed, 0.95)).isEmpty();
        assertThat(Coverage.ofRectangles(Uncertain.exact(1), 0.95)).isEmpty();
        assertThat(Coverage.ofRectangles(
                        rectangle("a", 1).plus(rectangle("b", 1)).plus(rectangle("c", 1)), 0.95))
                .isEmpty();
    }

    @Test
    void twoEqualRectanglesAreATriangle() {
        // geometry: a triangle of half-width A holds p within A (1 − √(1 − p)); u = A / √6
        Uncertain sum = rectangle("a", 1).plus(rectangle("b", 1));
        double k = StrictMath.sqrt(6) * (1 - StrictMath.sqrt(0.05));
        assertThat(Coverage.ofRectangles(sum, 0.95).orElseThrow().factor()).isCloseTo(k, within(1e-12));
    }

    @Test
    void badArgumentsAreRefused() {
        Uncertain x = rectangle("a", 1);
        for (double p : new double[] {0, 1, -1, 2, Double.NaN}) {
            assertThatIllegalArgumentException().isThrownBy(() -> Coverage.symmetric(x, p));
            assertThatIllegalArgumentException().isThrownBy(() -> Coverage.ofRectangles(x, p));
            assertThatIllegalArgumentException().isThrownBy(() -> Coverage.factor(5, p));
            assertThatIllegalArgumentException().isThrownBy(() -> Coverage.oneSidedFactor(5, p));
        }
        for (double nu : new double[] {0, -1, Double.NaN}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Coverage.factor(nu, 0.95))
                    .withMessageStartingWith("degrees of freedom must be more than 0, got ");
        }
    }

    private static Uncertain rectangle(String id, double u) {
        return Uncertain.of(0, new Influence(id, Shape.RECTANGULAR, u, Double.POSITIVE_INFINITY, ""));
    }
}
