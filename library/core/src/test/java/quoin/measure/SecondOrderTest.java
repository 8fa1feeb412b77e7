package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SecondOrderTest {
    @Test
    void theEndGauge() {
        // standard: JCGM 100:2008, H.1.7: u 32 nm becomes 34 nm; recomputed 11.73 and 1.67 nm on top give 33.8
        double standard = 50_000_623;
        List<Uncertain> inputs = List.of(
                Uncertain.of(standard, Influence.normal("lS", 25)),
                Uncertain.of(215, Influence.normal("d", 9.7)),
                Uncertain.of(11.5e-6, Influence.rectangular("alphaS", 2e-6)),
                Uncertain.of(-0.1, Influence.normal("theta", StrictMath.hypot(0.2, 0.5 / StrictMath.sqrt(2)))),
                Uncertain.of(0, Influence.rectangular("dalpha", 1e-6)),
                Uncertain.of(0, Influence.rectangular("dtheta", 0.05)));
        SecondOrder result = SecondOrder.of(inputs, x -> x[0] + x[1] - x[0] * (x[4] * x[3] + x[2] * x[5]));
        assertThat(result.firstOrderUncertainty()).isCloseTo(31.66, within(0.05));
        assertThat(result.standardUncertainty()).isCloseTo(33.8, within(0.05));
        double more = result.standardUncertainty() * result.standardUncertainty()
                - result.firstOrderUncertainty() * result.firstOrderUncertainty();
        assertThat(StrictMath.sqrt(more)).isCloseTo(StrictMath.hypot(11.73, 1.67), within(0.01));
        assertThat(result.unseen()).extracting(Influence::id).containsExactly("alphaS", "theta");
        assertThat(result.isFirstOrderBlind()).isTrue();
        assertThat(result.value()).isCloseTo(50_000_838, within(0.5));
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 50, 50", ".010, 100, 112, 150", ".050, 500, 502, 2550"})
    void theComparisonLoss(double x1, double first, double second, double value) {
        // standard: JCGM 101:2008, 9.4 (from memory, recomputed): outputs times 1e-6, printed without decimals
        SecondOrder result = SecondOrder.of(loss(x1), x -> 1e6 * (x[0] * x[0] + x[1] * x[1]));
        assertThat(result.firstOrderUncertainty()).isCloseTo(first, within(0.5));
        assertThat(result.standardUncertainty()).isCloseTo(second, within(0.5));
        assertThat(result.value()).isCloseTo(value, within(0.5));
        assertThat(result.firstOrder()).isCloseTo(1e6 * x1 * x1, within(1e-9));
        assertThat(result.unseen()).hasSize(x1 == 0 ? 2 : 1);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0, 0, -48, 148",
        ".010, -96, 296, -69, 369",
        ".050, 1520, 3480, 1565, 3535",
    })
    void theIntervalsOfTheComparisonLoss(double x1, double low, double high, double secondLow, double secondHigh) {
        // standard: JCGM 101:2008, 9.4 (from memory, recomputed), 95 %, of first and of second order, printed without
        // decimals
        SecondOrder result = SecondOrder.of(loss(x1), x -> 1e6 * (x[0] * x[0] + x[1] * x[1]));
        double k = Coverage.factor(Double.POSITIVE_INFINITY, 0.95);
        double u = result.firstOrderUncertainty();
        assertThat(result.firstOrder() - k * u).isCloseTo(low, within(0.5));
        assertThat(result.firstOrder() + k * u).isCloseTo(high, within(0.5));
        assertThat(result.value() - k * result.standardUncertainty()).isCloseTo(secondLow, within(0.5));
        assertThat(result.value() + k * result.standardUncertainty()).isCloseTo(secondHigh, within(0.5));
    }

    @ParameterizedTest
    @CsvSource({"0, 67.268", ".010, 120.520", ".050, 504.505"})
    void theCorrelatedComparisonLoss(double x1, double u) {
        // standard: JCGM 101:2008, 9.4, r 0.9: the loss is of second degree, so second order gives its standard
        // deviation in closed form; three decimals
        List<Uncertain> inputs = CorrelatedInputs.ofCorrelations(
                "x", new double[] {x1, 0}, new double[] {0.005, 0.005}, new double[][] {{1, 0.9}, {0.9, 1}});
        SecondOrder result = SecondOrder.of(inputs, x -> 1e6 * (x[0] * x[0] + x[1] * x[1]));
        assertThat(result.value()).isCloseTo(1e6 * x1 * x1 + 50, within(1e-6));
        assertThat(result.standardUncertainty()).isCloseTo(u, within(5e-4));
    }

    @Test
    void theSquareAtZeroIsMarkedAlreadyToFirstOrder() {
        Uncertain x = Uncertain.of(0, Influence.normal("x", 1));
        Uncertain square = x.times(x);
        assertThat(square.standardUncertainty()).isZero();
        assertThat(square.isFirstOrderBlind()).isTrue();
    }

    @Test
    void aSharedInfluenceIsVariedOnce() {
        // (x + e)(x − e) has no first order in e and the second derivative −2
        Influence e = Influence.normal("e", 0.5);
        Uncertain x = Uncertain.of(3, e);
        Uncertain y = x.negated().plus(6);
        SecondOrder result = SecondOrder.of(List.of(x, y), v -> v[0] * v[1]);
        assertThat(result.firstOrderUncertainty()).isCloseTo(0, within(1e-12));
        assertThat(result.value()).isCloseTo(9 - 0.25, within(1e-12));
        assertThat(result.standardUncertainty()).isCloseTo(StrictMath.sqrt(0.5) * 0.5, within(1e-12));
    }

    @Test
    void aLinearFunctionHasNoSecondOrder() {
        SecondOrder result = SecondOrder.of(loss(0.01), x -> 3 * x[0] - 4 * x[1]);
        assertThat(result.standardUncertainty()).isCloseTo(0.025, within(1e-12));
        assertThat(result.isFirstOrderBlind()).isFalse();
        assertThat(SecondOrder.of(List.of(Uncertain.exact(2)), x -> x[0] * x[0]).value())
                .isEqualTo(4);
    }

    @Test
    void termsOfThirdDegreeAreExact() {
        // x³ at 2 with u 0.1: slope 12, curvature 12, third 6: u² = 1.44 + ½ (0.12)² + 1.2 · 0.006
        SecondOrder result =
                SecondOrder.of(List.of(Uncertain.of(2, Influence.normal("x", 0.1))), x -> x[0] * x[0] * x[0]);
        assertThat(result.firstOrderUncertainty()).isCloseTo(1.2, within(1e-10));
        double expected = 1.44 + 0.5 * 0.12 * 0.12 + 1.2 * 0.006;
        assertThat(result.standardUncertainty()).isCloseTo(StrictMath.sqrt(expected), within(1e-10));
        assertThat(result.value()).isCloseTo(8 + 0.06, within(1e-10));
    }

    @Test
    void whereSecondOrderDoesNotDoItSaysSo() {
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> of(x -> x[0] - x[0] * x[0] * x[0] / 3))
                .withMessage("second order leaves no variance: use Monte Carlo");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> of(x -> StrictMath.sqrt(x[0])))
                .withMessage("the function is not finite near its inputs, got NaN");
    }

    private static SecondOrder of(ToDoubleFunction<double[]> function) {
        return SecondOrder.of(List.of(Uncertain.of(0, Influence.normal("x", 1))), function);
    }

    private static List<Uncertain> loss(double x1) {
        return List.of(Uncertain.of(x1, Influence.normal("x1", 0.005)), Uncertain.of(0, Influence.normal("x2", 0.005)));
    }
}
