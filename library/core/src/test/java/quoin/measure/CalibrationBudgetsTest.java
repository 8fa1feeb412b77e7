package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Budgets of calibration laboratories and of physics, with their published results; the calliper is in CoverageTest. */
class CalibrationBudgetsTest {
    @Test
    void aTenKilogramWeight() {
        // standard (from memory; parts read in a public budget tool): EA-4/02, S2, in g and mg: 10000.025 g, u 29.2 mg
        // (29.26 recomputed), U 58 mg with k 2
        Uncertain weight = Uncertain.of(10_000_005, Influence.expanded("standard", 45, 2))
                .plus(Uncertain.of(20, Influence.normal("difference", 25 / StrictMath.sqrt(3))))
                .plus(Uncertain.of(0, Influence.rectangular("drift", 15)))
                .plus(Uncertain.of(0, Influence.rectangular("comparator", 10)))
                .plus(Uncertain.of(0, Influence.rectangular("buoyancy", 10)));
        assertThat(weight.value() / 1000).isCloseTo(10_000.025, within(5e-4));
        assertThat(weight.standardUncertainty()).isCloseTo(29.26, within(5e-3));
        // the printed 29.2 is cut, the printed 58 is 2 · 29.2 rounded: half a unit of the last digit and the cut
        assertThat(weight.standardUncertainty()).isCloseTo(29.2, within(0.1));
        assertThat(2 * weight.standardUncertainty()).isCloseTo(58, within(1.0));
        assertThat(Budget.of(weight).lines().get(0).influence().id()).isEqualTo("standard");
    }

    @Test
    void aGaugeBlock() {
        // standard (from memory): EA-4/02, S4, in nm: 49.999926 mm, u 36.4 nm, U 73 nm. One part is
        // the product of two inputs that are both expected to be 0, which only second order sees.
        List<Uncertain> inputs = List.of(
                Uncertain.of(50_000_020, Influence.expanded("standard", 30, 2)),
                Uncertain.of(0, Influence.rectangular("drift", 30)),
                Uncertain.of(-94, Influence.normal("difference", 5.37)),
                Uncertain.of(0, Influence.rectangular("comparator", 32)),
                Uncertain.of(0, Influence.rectangular("temperature difference", 0.05)),
                Uncertain.of(0, Influence.triangular("expansion difference", 2e-6)),
                Uncertain.of(0, Influence.rectangular("temperature", 0.5)),
                Uncertain.of(0, Influence.rectangular("contact", 6.7)));
        double length = 50e6;
        double expansion = 11.5e-6;
        SecondOrder block = SecondOrder.of(
                inputs, x -> x[0] + x[1] + x[2] + x[3] - length * (expansion * x[4] + x[5] * x[6]) - x[7]);
        assertThat(block.value() / 1e6).isCloseTo(49.999926, within(5e-7));
        assertThat(block.standardUncertainty()).isCloseTo(36.4, within(0.05));
        // the parts in closed form: 36.394; from parts rounded to three digits 36.40
        double variance = 15 * 15 + 30 * 30 / 3.0 + 5.37 * 5.37 + 32 * 32 / 3.0 + 6.7 * 6.7 / 3;
        variance += 575 * 575 * 0.05 * 0.05 / 3 + 50 * 50 * (2 * 2 / 6.0) * (0.5 * 0.5 / 3);
        assertThat(block.standardUncertainty()).isCloseTo(StrictMath.sqrt(variance), within(1e-6));
        assertThat(2 * block.standardUncertainty()).isCloseTo(73, within(0.5));
        // without the product 34.4: √(36.40² − 11.8²), recomputed
        assertThat(block.firstOrderUncertainty()).isCloseTo(34.4, within(0.05));
        assertThat(block.unseen()).extracting(Influence::id).containsExactly("expansion difference", "temperature");
    }

    @Test
    void theFallingBallToFirstOrder() {
        // handbook: NIST TN 1900, E3: 5.69 to first order; u 1.11 as by Monte Carlo, where its tool rounds to 0.1
        Uncertain ball = n("ball", 2217, 0.5);
        Uncertain viscosity = n("muC", 4.63, 0.0463)
                .times(n("tM", 61, 6.1).dividedBy(n("tC", 36.6, 5.49)))
                .times(ball.minus(n("rM", 1180, 0.5)).dividedBy(ball.minus(n("rC", 810, 0.5))));
        assertThat(viscosity.value()).isCloseTo(5.69, within(5e-3));
        assertThat(viscosity.standardUncertainty()).isCloseTo(1.11, within(0.1));
        // the ball's density is one influence although it stands twice: its slope is (ρM − ρC) / (ρB − ρC)², recomputed
        double slope = viscosity.sensitivity(Influence.normal("ball", 0.5)) / viscosity.value();
        assertThat(slope).isCloseTo((1180.0 - 810) / ((2217 - 810) * (2217.0 - 1180)), within(1e-12));
    }

    @Test
    void aStepAttenuator() {
        // handbook: NIST TN 1900, E11: 30.043 dB, u 0.0224, 95 % [30.006, 30.081]; the t of 3 degrees is stated by its
        // standard deviation. Printed digits; the inputs carry the half-widths of a public tool in four digits.
        List<Uncertain> inputs = List.of(
                Uncertain.of(30.0402, Influence.tByStandardDeviation("LS", 0.0091, 3)),
                Uncertain.of(0.003, Influence.rectangular("step", 0.00433)),
                Uncertain.of(0, Influence.arcsine("mismatch", 0.02828)),
                Uncertain.of(0, Influence.arcsine("drift", 0.001980)),
                Uncertain.of(0, Influence.arcsine("leakage", 0.0029698)),
                Uncertain.of(0, Influence.rectangular("resolution a", 0.0005196)),
                Uncertain.of(0, Influence.rectangular("resolution b", 0.0005196)),
                n("zero a", 0, 0.002),
                n("zero b", 0, 0.002));
        Uncertain sum = Uncertain.exact(0);
        for (Uncertain input : inputs) {
            sum = sum.plus(input);
        }
        assertThat(sum.value()).isCloseTo(30.043, within(5e-4));
        assertThat(sum.standardUncertainty()).isCloseTo(0.0224, within(5e-5));
        SimulatedOutput y = MonteCarlo.withDefaults()
                .run(inputs, 1, (x, out) -> out[0] = Sums.of(x))
                .outputs()
                .get(0);
        assertThat(y.value()).isCloseTo(30.043, within(5e-4));
        // the fourth moment of a t with 3 degrees is infinite: its variance settles slowly
        assertThat(y.standardUncertainty()).isCloseTo(0.0224, within(5e-5 + 5 * y.uncertaintyError()));
        assertThat(y.low()).isCloseTo(30.006, within(5e-4 + 5 * y.lowError()));
        assertThat(y.high()).isCloseTo(30.081, within(5e-4 + 5 * y.highError()));
    }

    @Test
    void theConstantOfStefanAndBoltzmann() {
        // practice: manual of a public uncertainty calculator, example 10: 5.67037e-8, u 2.05e-13, 99 % [5.67032,
        // 5.67043]e-8, printed digits
        List<Uncertain> inputs = List.of(
                n("h", 6.62606957e-34, 0.00000029e-34),
                n("R", 8.3144621, 0.0000075),
                n("Rydberg", 10973731.568539, 0.000055),
                n("Ar(e)", 5.4857990946e-4, 0.0000000022e-4),
                n("alpha", 7.2973525698e-3, 0.0000000024e-3));
        Uncertain r4 = power(inputs.get(1), 4).times(power(inputs.get(2), 4));
        Uncertain below = power(inputs.get(3), 4).times(power(inputs.get(4), 8));
        double factor = 32 * StrictMath.pow(StrictMath.PI, 5) / (15 * 1e-12 * StrictMath.pow(299792458, 6));
        Uncertain sigma = inputs.get(0).times(factor).times(r4).dividedBy(below);
        assertThat(sigma.value()).isCloseTo(5.67037e-8, within(5e-14));
        assertThat(sigma.standardUncertainty()).isCloseTo(2.05e-13, within(5e-16));
        Coverage coverage = Coverage.symmetric(sigma, 0.99).orElseThrow();
        assertThat(sigma.value() - coverage.expanded()).isCloseTo(5.67032e-8, within(5e-14));
        assertThat(sigma.value() + coverage.expanded()).isCloseTo(5.67043e-8, within(5e-14));
        // the gas constant makes nearly all of it: 4 u(R) / R, recomputed
        assertThat(Budget.of(sigma).lines().get(0).influence().id()).isEqualTo("R");
        assertThat(Budget.of(sigma).lines().get(0).share()).isGreaterThan(0.999);
    }

    private static Uncertain power(Uncertain base, int exponent) {
        Uncertain product = Uncertain.exact(1);
        for (int i = 0; i < exponent; i++) {
            product = product.times(base);
        }
        return product;
    }

    private static Uncertain n(String id, double value, double u) {
        return Uncertain.of(value, Influence.normal(id, u));
    }
}
