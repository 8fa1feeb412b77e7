package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tolerances: five standard errors of the figure, as the run itself reports them, beside half a printed digit. */
class MonteCarloTest {
    private static final MonteCarlo SHORTEST = MonteCarlo.withDefaults().withInterval(MonteCarlo.Interval.SHORTEST);

    @Test
    void theSumOfFourNormals() {
        // standard: JCGM 101:2008, 9.2.2: y 0, u 2.00, 95 % ± 3.92
        SimulatedOutput y = sum(MonteCarlo.withDefaults(), Shape.NORMAL, 1, 1, 1, 1);
        assertThat(y.value()).isCloseTo(0, off(0, y.valueError()));
        assertThat(y.standardUncertainty()).isCloseTo(2, off(0, y.uncertaintyError()));
        assertThat(y.low()).isCloseTo(-3.92, off(5e-3, y.lowError()));
        assertThat(y.high()).isCloseTo(3.92, off(5e-3, y.highError()));
        // closed forms of the errors: u / √M, u / √(2 M), √(p (1 − p) / M) / density; 20 % is what 100 blocks can tell
        assertThat(y.valueError()).isCloseTo(2e-3, within(4e-4));
        assertThat(y.uncertaintyError()).isCloseTo(2e-3 / StrictMath.sqrt(2), within(3e-4));
        double density = StrictMath.exp(-1.96 * 1.96 / 2) / StrictMath.sqrt(2 * StrictMath.PI) / 2;
        assertThat(y.highError()).isCloseTo(StrictMath.sqrt(0.025 * 0.975 / 1e6) / density, within(6e-4));
    }

    @Test
    void theSumOfFourRectangles() {
        // standard: JCGM 101:2008, 9.2.3: ± 3.88; closed form 2 √3 (2 − 0.6^(1/4)) = 3.879406741
        for (MonteCarlo settings : List.of(MonteCarlo.withDefaults(), SHORTEST)) {
            SimulatedOutput y = sum(settings, Shape.RECTANGULAR, 1, 1, 1, 1);
            assertThat(y.standardUncertainty()).isCloseTo(2, off(0, y.uncertaintyError()));
            assertThat(y.low()).isCloseTo(-3.879406741, off(0, y.lowError()));
            assertThat(y.high()).isCloseTo(3.879406741, off(0, y.highError()));
        }
    }

    @Test
    void oneLargeRectangleIsNotNormal() {
        // standard: JCGM 101:2008, 9.2.4 (from memory, recomputed): u √103, exact ± 17.0158; normal ± 19.9
        SimulatedOutput y = sum(MonteCarlo.withDefaults(), Shape.RECTANGULAR, 1, 1, 1, 10);
        assertThat(y.standardUncertainty()).isCloseTo(StrictMath.sqrt(103), off(0, y.uncertaintyError()));
        assertThat(y.low()).isCloseTo(-17.0158, off(0, y.lowError()));
        assertThat(y.high()).isCloseTo(17.0158, off(0, y.highError()));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0, 50, 50, 0, 150",
        "0, .010, 150, 111.803, 0, 367",
        "0, .050, 2550, 502.494, 1590, 3543",
        ".9, 0, 50, 67.268, 0, 185",
        ".9, .010, 150, 120.520, 13, 398",
        ".9, .050, 2550, 504.505, 1628, 3555"
    })
    void theComparisonLoss(double r, double x1, double y, double u, double low, double high) {
        // standard: JCGM 101:2008, 9.4 (from memory, recomputed; standard deviations are closed forms), shortest 95 %
        SimulatedOutput loss = loss(SHORTEST, r, x1);
        assertThat(loss.value()).isCloseTo(y, off(0, loss.valueError()));
        assertThat(loss.standardUncertainty()).isCloseTo(u, off(5e-4, loss.uncertaintyError()));
        assertThat(loss.low()).isCloseTo(low, off(0.5, loss.lowError()));
        assertThat(loss.high()).isCloseTo(high, off(0.5, loss.highError()));
    }

    @Test
    void shortestIsNotSymmetric() {
        // recomputed: symmetric 95 % for r 0: x1 0.010 [8.5, 427] against [0, 367], x1 0 [1.3, 184] against [0, 150]
        SimulatedOutput one = loss(MonteCarlo.withDefaults(), 0, 0.010);
        assertThat(one.low()).isCloseTo(8.5, off(0.1, one.lowError()));
        assertThat(one.high()).isCloseTo(427, off(0.5, one.highError()));
        SimulatedOutput zero = loss(MonteCarlo.withDefaults(), 0, 0);
        // closed form: exponential of mean 50, −50 ln 0.975 and −50 ln 0.025
        assertThat(zero.low()).isCloseTo(-50 * StrictMath.log(0.975), off(0, zero.lowError()));
        assertThat(zero.high()).isCloseTo(-50 * StrictMath.log(0.025), off(0, zero.highError()));
        // the same for r 0.9: [29.1, 479] against [13, 398], [0.56, 241] against [0, 185]
        SimulatedOutput correlated = loss(MonteCarlo.withDefaults(), .9, 0.010);
        assertThat(correlated.low()).isCloseTo(29.1, off(0.05, correlated.lowError()));
        assertThat(correlated.high()).isCloseTo(478.4, off(0.2, correlated.highError()));
        SimulatedOutput correlatedZero = loss(MonteCarlo.withDefaults(), .9, 0);
        assertThat(correlatedZero.low()).isCloseTo(0.56, off(0.005, correlatedZero.lowError()));
        assertThat(correlatedZero.high()).isCloseTo(241, off(0.2, correlatedZero.highError()));
        SimulatedOutput shortest = loss(SHORTEST, 0, 0.010);
        assertThat(shortest.high() - shortest.low()).isLessThan(one.high() - one.low());
    }

    @Test
    void whichIntervalItIsIsSaid() {
        Simulation run =
                MonteCarlo.withDefaults().withTrials(10_000).run(list(Shape.NORMAL, 1), 1, MonteCarloTest::add);
        assertThat(run.interval()).isEqualTo(MonteCarlo.Interval.SYMMETRIC);
        assertThat(run.probability()).isEqualTo(0.95);
        Simulation shortest =
                SHORTEST.withTrials(10_000).withProbability(0.9).run(list(Shape.NORMAL, 1), 1, MonteCarloTest::add);
        assertThat(shortest.interval()).isEqualTo(MonteCarlo.Interval.SHORTEST);
        assertThat(shortest.probability()).isEqualTo(0.9);
    }

    @Test
    void theGaugeBlock() {
        // standard: JCGM 101:2008, 9.5 (from memory): 838, u 36, 99 % [745, 932]; recomputed 838.0, 35.8, [744.3,
        // 931.8]
        List<Uncertain> inputs = gaugeBlock();
        MonteCarlo settings = MonteCarlo.withDefaults().withProbability(0.99);
        SimulatedOutput y =
                settings.run(inputs, 1, MonteCarloTest::gaugeBlock).outputs().get(0);
        assertThat(y.value()).isCloseTo(838.0, off(0.05, y.valueError()));
        assertThat(y.standardUncertainty()).isCloseTo(35.8, off(0.05, y.uncertaintyError()));
        assertThat(y.low()).isCloseTo(744.3, off(0.05, y.lowError()));
        assertThat(y.high()).isCloseTo(931.8, off(0.05, y.highError()));
        // standard: the first-order result of 9.5 is not borne out to two digits (JCGM 101:2008, 8)
        Uncertain first = firstOrderGaugeBlock();
        assertThat(first.standardUncertainty()).isCloseTo(32, within(0.5));
        Coverage coverage = Coverage.symmetric(first, 0.99).orElseThrow();
        FirstOrderCheck check = FirstOrderCheck.of(first, coverage, y, 2);
        assertThat(check.tolerance()).isEqualTo(0.5);
        assertThat(check.isValid()).isFalse();
        SimulatedOutput narrower = settings.withProbability(0.95)
                .run(inputs, 1, MonteCarloTest::gaugeBlock)
                .outputs()
                .get(0);
        assertThat(narrower.low()).isCloseTo(767.5, off(0.05, narrower.lowError()));
        assertThat(narrower.high()).isCloseTo(908.3, off(0.05, narrower.highError()));
    }

    @Test
    void aLinearNormalResultIsBorneOut() {
        Uncertain sum = Uncertain.exact(0);
        for (int i = 0; i < 4; i++) {
            sum = sum.plus(Uncertain.of(0, Influence.normal("x".concat(Integer.toString(i)), 1)));
        }
        SimulatedOutput y = sum(MonteCarlo.withDefaults(), Shape.NORMAL, 1, 1, 1, 1);
        FirstOrderCheck check =
                FirstOrderCheck.of(sum, Coverage.symmetric(sum, 0.95).orElseThrow(), y, 2);
        assertThat(check.tolerance()).isEqualTo(0.05);
        assertThat(check.isValid()).isTrue();
        assertThat(check.lowDifference()).isLessThan(0.05);
    }

    @Test
    void theLogarithmOfARectangle() {
        // practice: national laboratory report DEM-ES-011, 9.2: x in [0.1, 1.1]; exact -0.6649, 0.6061, shortest
        // [-1.896, 0.0953], symmetric [-2.079, 0.072]; first order -0.511, 0.481
        List<Uncertain> x = List.of(Uncertain.of(0.6, Influence.rectangular("x", 0.5)));
        Uncertain first = Uncertain.combine(StrictMath.log(0.6), new double[] {1 / 0.6}, x);
        assertThat(first.value()).isCloseTo(-0.511, within(5e-4));
        assertThat(first.standardUncertainty()).isCloseTo(0.481, within(5e-4));
        // printed upper end 0.432
        assertThat(first.value() + Coverage.symmetric(first, 0.95).orElseThrow().expanded())
                .isCloseTo(0.432, within(5e-4));
        SimulatedOutput shortest = SHORTEST.run(x, 1, (in, out) -> out[0] = StrictMath.log(in[0]))
                .outputs()
                .get(0);
        assertThat(shortest.value()).isCloseTo(-0.6649, off(5e-5, shortest.valueError()));
        assertThat(shortest.standardUncertainty()).isCloseTo(0.6061, off(5e-5, shortest.uncertaintyError()));
        assertThat(shortest.low()).isCloseTo(-1.896, off(5e-4, shortest.lowError()));
        assertThat(shortest.high()).isCloseTo(0.0953, off(5e-5, shortest.highError()));
        SimulatedOutput symmetric = MonteCarlo.withDefaults()
                .run(x, 1, (in, out) -> out[0] = StrictMath.log(in[0]))
                .outputs()
                .get(0);
        assertThat(symmetric.low()).isCloseTo(-2.079, off(5e-4, symmetric.lowError()));
        assertThat(symmetric.high()).isCloseTo(0.072, off(5e-4, symmetric.highError()));
    }

    @Test
    void magnitudeAndPhaseNearTheOrigin() {
        // practice: test data of an open uncertainty tool: Re 0.001, Im 0, u 0.01 each: magnitude 0.013, u 0.007, phase
        // u
        // 1.744; to first order u(phase) is 10
        Uncertain re = Uncertain.of(0.001, Influence.normal("re", 0.01));
        Uncertain im = Uncertain.of(0, Influence.normal("im", 0.01));
        assertThat(Uncertain.atan2(im, re).standardUncertainty()).isCloseTo(10, within(1e-12));
        List<SimulatedOutput> out = MonteCarlo.withDefaults()
                .run(List.of(re, im), 2, (x, y) -> {
                    y[0] = StrictMath.hypot(x[0], x[1]);
                    y[1] = StrictMath.atan2(x[1], x[0]);
                })
                .outputs();
        assertThat(out.get(0).value()).isCloseTo(0.013, within(5e-4));
        assertThat(out.get(0).standardUncertainty()).isCloseTo(0.007, within(5e-4));
        assertThat(out.get(1).standardUncertainty())
                .isCloseTo(1.744, off(5e-4, out.get(1).uncertaintyError()));
    }

    @ParameterizedTest
    @CsvSource({".001, .012, .008, -.556, 1.599", ".010, .015, .008, -.343, .903"})
    void magnitudeAndPhaseOfCorrelatedParts(double re, double magnitude, double u, double phase, double uPhase) {
        // standard: JCGM 102:2011, Table 7, rows 1 and 2, as a public tool carries them: r 0.9, printed digits
        List<Uncertain> parts = CorrelatedInputs.ofCorrelations(
                "s", new double[] {re, 0}, new double[] {0.01, 0.01}, new double[][] {{1, 0.9}, {0.9, 1}});
        List<SimulatedOutput> out = MonteCarlo.withDefaults()
                .run(parts, 2, (x, y) -> {
                    y[0] = StrictMath.hypot(x[0], x[1]);
                    y[1] = StrictMath.atan2(x[1], x[0]);
                })
                .outputs();
        assertThat(out.get(0).value()).isCloseTo(magnitude, within(5e-4));
        assertThat(out.get(0).standardUncertainty()).isCloseTo(u, within(5e-4));
        assertThat(out.get(1).value()).isCloseTo(phase, off(5e-4, out.get(1).valueError()));
        assertThat(out.get(1).standardUncertainty())
                .isCloseTo(uPhase, off(5e-4, out.get(1).uncertaintyError()));
    }

    @Test
    void theFallingBall() {
        // handbook: NIST TN 1900, E3: first order 5.69; Monte Carlo 5.82, u 1.11, 95 % [4.05, 8.39], printed digits
        List<Uncertain> in = List.of(
                n("muC", 4.63, 0.0463),
                n("tM", 61, 6.1),
                n("tC", 36.6, 5.49),
                n("rB", 2217, 0.5),
                n("rM", 1180, 0.5),
                n("rC", 810, 0.5));
        SimulatedOutput y = MonteCarlo.withDefaults()
                .run(in, 1, (x, out) -> out[0] = x[0] * (x[1] / x[2]) * (x[3] - x[4]) / (x[3] - x[5]))
                .outputs()
                .get(0);
        assertThat(y.value()).isCloseTo(5.82, off(5e-3, y.valueError()));
        assertThat(y.standardUncertainty()).isCloseTo(1.11, off(5e-3, y.uncertaintyError()));
        assertThat(y.low()).isCloseTo(4.05, off(5e-3, y.lowError()));
        assertThat(y.high()).isCloseTo(8.39, off(5e-3, y.highError()));
    }

    @Test
    void outputsOfOneRunKeepTheirCorrelation() {
        // standard: JCGM 100:2008, H.2: r(R, X) −0.588; two runs apart would give 0
        List<Uncertain> vip = CorrelatedInputs.ofCovariance(
                "bridge",
                new double[] {4.9990, 19.6610e-3, 1.04446},
                covariance(CorrelatedInputs.ofRows("rows", ResistanceData.ROWS)));
        Simulation run = MonteCarlo.withDefaults().withCovariance().run(vip, 2, (x, y) -> {
            y[0] = x[0] * StrictMath.cos(x[2]) / x[1];
            y[1] = x[0] * StrictMath.sin(x[2]) / x[1];
        });
        assertThat(run.correlation(0, 1)).isCloseTo(-0.588, within(5e-3));
        assertThat(run.correlation(1, 0)).isEqualTo(run.correlation(0, 1));
        assertThat(run.correlation(0, 0)).isCloseTo(1, within(1e-12));
        assertThat(run.covariance(0, 0))
                .isCloseTo(StrictMath.pow(run.outputs().get(0).standardUncertainty(), 2), within(1e-12));
        SimulatedOutput r = run.outputs().get(0);
        assertThat(r.standardUncertainty()).isCloseTo(0.071, within(5e-4));
        // practice: notebook of a public tool: 95 % ± 0.139 Ω about 127.732; naive degrees of 0.13 would say ± 0.90
        assertThat((r.high() - r.low()) / 2).isCloseTo(0.139, off(5e-4, r.highError()));
        assertThat(Coverage.factor(1, 0.95) * 0.071071).isCloseTo(0.90, within(5e-3));
    }

    @Test
    void itGoesOnUntilTheDigitsAreStable() {
        MonteCarlo settings = MonteCarlo.withDefaults().withDigits(2, 10_000_000);
        Simulation run = settings.run(list(Shape.NORMAL, 1, 1, 1, 1), 1, MonteCarloTest::add);
        SimulatedOutput y = run.outputs().get(0);
        assertThat(run.isSettled()).isTrue();
        // u 2.0: 2 s at most 0.05; two blocks of 10 000 at least, and far from all allowed
        assertThat(run.trials()).isBetween(20_000, 500_000);
        assertThat(2 * y.valueError()).isLessThanOrEqualTo(0.05);
        assertThat(y.high()).isCloseTo(3.92, within(0.1));
        Simulation stopped = MonteCarlo.withDefaults()
                .withDigits(4, 20_000)
                .run(list(Shape.NORMAL, 1, 1, 1, 1), 1, MonteCarloTest::add);
        assertThat(stopped.isSettled()).isFalse();
        assertThat(stopped.trials()).isEqualTo(20_000);
    }

    @Test
    void everyFigureOfEveryOutputMustBeStable() {
        // standard: JCGM 101:2008, 7.9.4. Closed forms for y = exp x, u 2.16, delta 0.05, blocks of 10 000: twice the
        // error of the upper end, 0.19 / √h, wants some 57 blocks, u some 20, the value 2; half of it allowed for the
        // scatter of such a count
        List<Uncertain> x = list(Shape.NORMAL, 1);
        MonteCarlo settings = MonteCarlo.withDefaults().withDigits(2, 10_000_000);
        Simulation up = settings.run(x, 1, (in, out) -> out[0] = StrictMath.exp(in[0]));
        assertThat(up.trials()).isBetween(350_000, 900_000);
        Simulation down = settings.run(x, 1, (in, out) -> out[0] = -StrictMath.exp(in[0]));
        assertThat(down.trials()).isBetween(350_000, 900_000);
        Simulation second = settings.run(x, 2, (in, out) -> {
            out[0] = in[0];
            out[1] = StrictMath.exp(in[0]);
        });
        assertThat(second.trials()).isEqualTo(up.trials());
        // blocks of 100 / (1 − p)
        Simulation rare =
                settings.withProbability(0.999).withDigits(1, 10_000_000).run(x, 1, MonteCarloTest::add);
        assertThat(rare.trials() % 100_000).isZero();
    }

    @Test
    void theUncertaintyMustBeStableToo() {
        // standard: JCGM 101:2008, 7.9.4 f. An output of 35 with q = 0.001, else 0: both ends are 0 in every block, and
        // the value is sure after two. Closed form: u = 35 √(q (1 − q)) = 1.11, delta 0.05; that of a block of 10 000
        // scatters by 35 (1 − 2 q) / 2 / 100 = 0.175, and 2 · 0.175 / √h ≤ 0.05 wants 49 blocks; half of it allowed for
        // the scatter of such a count
        double rare = Coverage.oneSidedFactor(Double.POSITIVE_INFINITY, 0.999);
        Simulation run = MonteCarlo.withDefaults()
                .withDigits(2, 10_000_000)
                .run(list(Shape.NORMAL, 1), 1, (x, y) -> y[0] = x[0] > rare ? 35 : 0);
        assertThat(run.isSettled()).isTrue();
        assertThat(run.trials()).isBetween(250_000, 750_000);
    }

    @Test
    void aLargeValueDoesNotEatTheScatterOfTheTrials() {
        // standard: NIST StRD NumAcc4, its readings again and again: 10000000.1 and 10000000.3 in turns, standard
        // deviation 0.1 √(n / (n − 1)). 1e-13 of the value, 1e-6, is what sums of so many may lose; the second output
        // goes the other way: covariance −0.01
        int[] calls = {0};
        Simulation run = MonteCarlo.withDefaults()
                .withTrials(100_000)
                .withCovariance()
                .run(list(Shape.NORMAL, 1), 2, (x, y) -> {
                    boolean low = calls[0]++ % 2 == 0;
                    y[0] = low ? 10000000.1 : 10000000.3;
                    y[1] = low ? 10000000.3 : 10000000.1;
                });
        double n = run.trials();
        for (SimulatedOutput y : run.outputs()) {
            assertThat(y.value()).isCloseTo(10000000.2, within(1e-6));
            assertThat(y.standardUncertainty()).isCloseTo(0.1 * StrictMath.sqrt(n / (n - 1)), within(1e-6));
            assertThat(y.uncertaintyError()).isCloseTo(0, within(1e-6));
        }
        assertThat(run.covariance(0, 1)).isCloseTo(-0.01 * n / (n - 1), within(1e-6));
        assertThat(run.correlation(0, 1)).isCloseTo(-1, within(1e-5));
    }

    @Test
    void aLargeValueDoesNotEatWhatIsBetweenTheBlocks() {
        // the same readings, a block of 10 000 of one and a block of the other: all scatter is between the blocks
        int[] calls = {0};
        Simulation run = MonteCarlo.withDefaults()
                .withDigits(1, 20_000)
                .withCovariance()
                .run(list(Shape.NORMAL, 1), 1, (x, y) -> y[0] = calls[0]++ % 20_000 < 10_000 ? 10000000.1 : 10000000.3);
        double u = 0.1 * StrictMath.sqrt(20_000.0 / 19_999);
        assertThat(run.outputs().get(0).standardUncertainty()).isCloseTo(u, within(1e-6));
        assertThat(run.covariance(0, 0)).isCloseTo(u * u, within(1e-6));
    }

    @Test
    void theEndsAreThoseOfAllTrialsTogether() {
        // standard: JCGM 101:2008, 7.9.4: the results of all trials, not the mean of those of the blocks. One block
        // from 0
        // to 9999, one from 20 000 to 29 999: of 20 000 sorted trials the ends are 500 from either end
        int[] calls = {0};
        SimulatedOutput y = MonteCarlo.withDefaults()
                .withDigits(1, 20_000)
                .run(list(Shape.NORMAL, 1), 1, (x, out) -> {
                    int c = calls[0]++ % 20_000;
                    out[0] = c < 10_000 ? c : c + 10_000;
                })
                .outputs()
                .get(0);
        assertThat(y.low()).isCloseTo(500, within(1.0));
        assertThat(y.high()).isCloseTo(29_499, within(1.0));
    }

    @Test
    void theLeastNumberOfTrialsIsExact() {
        // ⌈100 / (1 − p)⌉; computed carelessly 0.9 gives 1001
        assertThat(MonteCarlo.leastBlock(0.9)).isEqualTo(1000);
        assertThat(MonteCarlo.leastBlock(0.95)).isEqualTo(2000);
        assertThat(MonteCarlo.leastBlock(0.99)).isEqualTo(10_000);
        assertThat(MonteCarlo.leastBlock(0.999)).isEqualTo(100_000);
        assertThat((int) StrictMath.ceil(100 / (1 - 0.9))).isEqualTo(1001);
    }

    @Test
    void anOutputOfOnesAndZerosIsAProbability() {
        // Φ(1) = 0.841345; error √(p (1 − p) / M), to the 10 % that 100 blocks can tell
        SimulatedOutput odds = MonteCarlo.withDefaults()
                .run(list(Shape.NORMAL, 1), 1, (x, y) -> y[0] = x[0] <= 1 ? 1 : 0)
                .outputs()
                .get(0);
        assertThat(odds.value()).isCloseTo(0.841345, off(5e-7, odds.valueError()));
        assertThat(odds.valueError()).isCloseTo(StrictMath.sqrt(0.8413 * 0.1587 / 1e6), within(7e-5));
        assertThat(odds.low()).isZero();
        assertThat(odds.high()).isEqualTo(1);
    }

    @Test
    void aConstantHasNoDoubt() {
        SimulatedOutput y = MonteCarlo.withDefaults()
                .withTrials(10_000)
                .withCovariance()
                .run(List.of(Uncertain.exact(3)), 1, (x, out) -> out[0] = x[0])
                .outputs()
                .get(0);
        assertThat(y).isEqualTo(new SimulatedOutput(3, 0, 3, 3, 0, 0, 0, 0));
        Simulation adaptive = MonteCarlo.withDefaults()
                .withDigits(2, 100_000)
                .withCovariance()
                .run(List.of(Uncertain.exact(3)), 1, (x, out) -> out[0] = x[0]);
        assertThat(adaptive.isSettled()).isTrue();
        assertThat(adaptive.correlation(0, 0)).isZero();
    }

    @Test
    void theSameSettingsGiveTheSameDigits() {
        MonteCarlo settings = MonteCarlo.withDefaults().withTrials(20_000);
        SimulatedOutput one = sum(settings, Shape.NORMAL, 1, 1);
        assertThat(sum(settings, Shape.NORMAL, 1, 1)).isEqualTo(one);
        assertThat(sum(settings.withSeed(2), Shape.NORMAL, 1, 1)).isNotEqualTo(one);
    }

    @Test
    void keepingOnlyTheTailsChangesNothing() {
        MonteCarlo settings = MonteCarlo.withDefaults().withTrials(50_000);
        for (MonteCarlo each : List.of(settings, settings.withInterval(MonteCarlo.Interval.SHORTEST))) {
            TrialRun run = new TrialRun(each, list(Shape.ARCSINE, 1, 2), 1, MonteCarloTest::add);
            assertThat(run.withAllTrials().outputs())
                    .isEqualTo(run.withTails().orElseThrow().outputs());
        }
    }

    @Test
    void aFirstBlockThatMisleadsIsMadeGood() {
        // the first 10 000 trials of a million give one number, all later ones others: no tail could be foreseen
        int[] calls = {0};
        SimulatedOutput y = MonteCarlo.withDefaults()
                .run(list(Shape.NORMAL, 1), 1, (x, out) -> out[0] = calls[0]++ % 1_000_000 < 10_000 ? 5 : x[0])
                .outputs()
                .get(0);
        assertThat(y.low()).isCloseTo(-1.96, within(0.05));
        // 1 % of fives leave 1.5 % of a normal number above: 2.17
        assertThat(y.high()).isCloseTo(2.17, within(0.05));
        assertThat(calls[0]).isEqualTo(2_000_000);
    }

    @Test
    void badSettingsAreRefused() {
        MonteCarlo settings = MonteCarlo.withDefaults();
        for (double p : new double[] {0, 1, Double.NaN, 1.5}) {
            assertThatIllegalArgumentException().isThrownBy(() -> settings.withProbability(p));
        }
        refused("number of trials must be from 10000 to 100000000, got 9999", () -> settings.withTrials(9_999));
        refused("significant digits must be from 1 to 4, got 5", () -> settings.withDigits(5, 100_000));
        refused("most trials must be from 20000 to 100000000, got 100", () -> settings.withDigits(2, 100));
        refused("number of outputs must be 1 or more, got 0", () -> settings.run(List.of(), 0, (x, y) -> {}));
        refused(
                "number of trials must be 200000 or more for probability 0.999, got 10000",
                () -> settings.withTrials(10_000).withProbability(0.999).run(List.of(), 1, (x, y) -> {}));
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> settings.run(list(Shape.NORMAL, 1), 1, (x, y) -> y[0] = StrictMath.sqrt(x[0])))
                .withMessage("an output of the model must be finite, got a mean of NaN");
        Simulation run = settings.withTrials(10_000).run(list(Shape.NORMAL, 1), 1, MonteCarloTest::add);
        assertThatExceptionOfType(IllegalStateException.class)
                .isThrownBy(() -> run.covariance(0, 0))
                .withMessage("covariance was not asked for: use withCovariance");
        assertThat(run.trials()).isEqualTo(10_000);
    }

    private static double[][] covariance(List<Uncertain> inputs) {
        double[][] c = new double[inputs.size()][inputs.size()];
        for (int i = 0; i < c.length; i++) {
            for (int j = 0; j < c.length; j++) {
                c[i][j] = inputs.get(i).covariance(inputs.get(j));
            }
        }
        return c;
    }

    private static SimulatedOutput loss(MonteCarlo settings, double r, double x1) {
        List<Uncertain> inputs = CorrelatedInputs.ofCorrelations(
                "x", new double[] {x1, 0}, new double[] {0.005, 0.005}, new double[][] {{1, r}, {r, 1}});
        return settings.run(inputs, 1, (x, y) -> y[0] = 1e6 * (x[0] * x[0] + x[1] * x[1]))
                .outputs()
                .get(0);
    }

    private static List<Uncertain> gaugeBlock() {
        return List.of(
                Uncertain.of(50_000_623, Influence.tByScale("LS", 25, 18)),
                Uncertain.of(215, Influence.tByScale("D", 6, 24)),
                Uncertain.of(0, Influence.tByScale("d1", 4, 5)),
                Uncertain.of(0, Influence.tByScale("d2", 7, 8)),
                Uncertain.of(11.5e-6, Influence.rectangular("alphaS", 2e-6)),
                Uncertain.of(-0.1, Influence.normal("theta0", 0.2)),
                Uncertain.of(0, Influence.arcsine("Delta", 0.5)),
                Uncertain.of(0, Influence.curvedTrapezoid("dalpha", 1e-6, 0.1e-6)),
                Uncertain.of(0, Influence.curvedTrapezoid("dtheta", 0.050, 0.025)));
    }

    private static void gaugeBlock(double[] x, double[] y) {
        double theta = x[5] + x[6];
        y[0] = x[0] + x[1] + x[2] + x[3] - x[0] * (x[7] * theta + x[4] * x[8]) - 5e7;
    }

    private static Uncertain firstOrderGaugeBlock() {
        List<Uncertain> x = gaugeBlock();
        Uncertain theta = x.get(5).plus(x.get(6));
        Uncertain expansion = x.get(7).times(theta).plus(x.get(4).times(x.get(8)));
        return x.get(0)
                .plus(x.get(1))
                .plus(x.get(2))
                .plus(x.get(3))
                .minus(x.get(0).times(expansion))
                .minus(5e7);
    }

    private static SimulatedOutput sum(MonteCarlo settings, Shape shape, double... u) {
        return settings.run(list(shape, u), 1, MonteCarloTest::add).outputs().get(0);
    }

    private static void add(double[] x, double[] y) {
        y[0] = Sums.of(x);
    }

    private static List<Uncertain> list(Shape shape, double... u) {
        List<Uncertain> inputs = new ArrayList<>();
        for (int i = 0; i < u.length; i++) {
            String id = "x".concat(Integer.toString(i));
            inputs.add(Uncertain.of(0, new Influence(id, shape, u[i], Double.POSITIVE_INFINITY, "")));
        }
        return inputs;
    }

    private static Uncertain n(String id, double value, double u) {
        return Uncertain.of(value, Influence.normal(id, u));
    }

    private static Offset<Double> off(double printed, double error) {
        return within(printed + 5 * error);
    }

    private static void refused(String message, Runnable call) {
        assertThatIllegalArgumentException().isThrownBy(call::run).withMessage(message);
    }
}
