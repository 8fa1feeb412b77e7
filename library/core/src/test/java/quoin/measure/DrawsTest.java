package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DrawsTest {
    private static final int TRIALS = 400_000;

    record Case(Influence influence, double deviation, double kurtosis, double greatest) {}

    static List<Case> shapes() {
        double free = Double.POSITIVE_INFINITY;
        // moments of the densities: handbook (from memory); the greatest possible size in units of the stated one
        return List.of(
                new Case(Influence.normal("x", 1), 1, 3, free),
                new Case(Influence.rectangular("x", 1), 1 / StrictMath.sqrt(3), 1.8, 1),
                new Case(Influence.triangular("x", 1), 1 / StrictMath.sqrt(6), 2.4, 1),
                new Case(Influence.trapezoid("x", 1, 1), 1 / StrictMath.sqrt(3), 1.8, 1),
                new Case(Influence.trapezoid("x", 1, 0), 1 / StrictMath.sqrt(6), 2.4, 1),
                new Case(Influence.curvedTrapezoid("x", 1, 0), 1 / StrictMath.sqrt(3), 1.8, 1),
                // E x² = 1/3 + d²/9, E x⁴ = (1 + 2 d² + d⁴/5) / 5
                new Case(
                        Influence.curvedTrapezoid("x", 1, 0.5),
                        StrictMath.sqrt(1.0 / 3 + 0.25 / 9),
                        (1 + 0.5 + 0.0625 / 5) / 5 / StrictMath.pow(1.0 / 3 + 0.25 / 9, 2),
                        1.5),
                new Case(Influence.arcsine("x", 1), 1 / StrictMath.sqrt(2), 1.5, 1),
                new Case(Influence.tByScale("x", 1, 20), StrictMath.sqrt(20.0 / 18), 3 + 6.0 / 16, free),
                new Case(Influence.tByStandardDeviation("x", 1, 20), 1, 3 + 6.0 / 16, free));
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void everyShapeHasItsMoments(Case shape) {
        double[] x = draw(Uncertain.of(0, shape.influence()));
        double mean = Sums.of(x) / TRIALS;
        double variance = Sums.ofSquares(x, mean) / TRIALS;
        double fourth = 0;
        double greatest = 0;
        for (double v : x) {
            fourth += v * v * v * v / TRIALS;
            greatest = StrictMath.max(greatest, StrictMath.abs(v));
        }
        // five standard errors of a mean and of a variance
        double error = 5 * shape.deviation() / StrictMath.sqrt(TRIALS);
        assertThat(mean).isCloseTo(0, within(error));
        assertThat(StrictMath.sqrt(variance))
                .isCloseTo(shape.deviation(), within(error * StrictMath.sqrt((shape.kurtosis() - 1) / 4)));
        assertThat(fourth / (variance * variance)).isCloseTo(shape.kurtosis(), within(0.1));
        assertThat(greatest).isLessThanOrEqualTo(shape.greatest() * (1 + 1e-12));
    }

    @Test
    void normalNumbersFollowTheirDistribution() {
        double[] x = draw(Uncertain.of(0, Influence.normal("x", 1)));
        Arrays.sort(x);
        double worst = 0;
        for (int i = 1; i < 1000; i++) {
            double expected = Coverage.oneSidedFactor(Double.POSITIVE_INFINITY, i / 1000.0);
            int below = Arrays.binarySearch(x, expected);
            double part = (below < 0 ? -below - 1 : below) / (double) TRIALS;
            worst = StrictMath.max(worst, StrictMath.abs(part - i / 1000.0));
        }
        // Kolmogorov and Smirnov: 1.95 / √n is passed by chance once in a thousand
        assertThat(worst).isLessThan(1.95 / StrictMath.sqrt(TRIALS));
        // the tail behind 3.65 is made apart: 2 · (1 − Φ(4)) = 6.33e-5, 25 of 400 000; five standard deviations
        long tail = Arrays.stream(x).filter(v -> StrictMath.abs(v) > 4).count();
        assertThat((double) tail).isCloseTo(25.3, within(25.0));
    }

    @Test
    void theSameSeedGivesTheSameDigits() {
        double[] inputs = new double[1];
        Draws draws = new Draws(List.of(Uncertain.of(0, Influence.normal("x", 1))), new Generator(1));
        double[] first = new double[3];
        for (int i = 0; i < 3; i++) {
            draws.draw(inputs);
            first[i] = inputs[0];
        }
        // frozen: a change of these digits is a change of what every caller gets
        assertThat(first).containsExactly(PINNED);
    }

    private static final double[] PINNED = {-0.5102467031384619, -0.7323289185485465, 0.4798716761620119};

    @Test
    void rowsReadTogetherAreJointlyAT() {
        List<Uncertain> rows = CorrelatedInputs.ofRows(
                "g", new double[][] {{1, 2}, {2, 1}, {3, 5}, {4, 3}, {5, 6}, {6, 4}, {9, 8}, {7, 9}});
        Draws draws = new Draws(rows, new Generator(3));
        double[] inputs = new double[2];
        double[] one = new double[TRIALS];
        double[] two = new double[TRIALS];
        for (int t = 0; t < TRIALS; t++) {
            draws.draw(inputs);
            one[t] = inputs[0];
            two[t] = inputs[1];
        }
        double m1 = rows.get(0).value();
        double m2 = rows.get(1).value();
        double covariance = Sums.ofProducts(one, m1, two, m2) / TRIALS;
        double variance = Sums.ofSquares(one, m1) / TRIALS;
        // nu 7: a covariance larger than that of first order by 7 / 5; five standard errors of a heavy tail: 2 %
        assertThat(covariance).isCloseTo(1.4 * rows.get(0).covariance(rows.get(1)), within(0.03 * variance));
        assertThat(variance).isCloseTo(1.4 * rows.get(0).variance(), within(0.03 * variance));
        // one chi-square for both: the squares of uncorrelated parts go together, 1/(nu − 4) of them
        double[] a = squares(one, m1, two, m2, rows, 1);
        double[] b = squares(one, m1, two, m2, rows, -1);
        double meanA = Sums.of(a) / TRIALS;
        double meanB = Sums.of(b) / TRIALS;
        double together = Sums.ofProducts(a, meanA, b, meanB) / TRIALS;
        assertThat(together / (meanA * meanB)).isCloseTo(2.0 / 3, within(0.2));
    }

    /** Squares of the sum or the difference of both in units of their u, which are uncorrelated. */
    private static double[] squares(
            double[] one, double m1, double[] two, double m2, List<Uncertain> rows, double sign) {
        double u1 = rows.get(0).standardUncertainty();
        double u2 = rows.get(1).standardUncertainty();
        double[] result = new double[one.length];
        for (int t = 0; t < one.length; t++) {
            double sum = (one[t] - m1) / u1 + sign * (two[t] - m2) / u2;
            result[t] = sum * sum;
        }
        return result;
    }

    @Test
    void aTWithoutAStandardDeviationIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Draws(List.of(Uncertain.of(0, Influence.tByScale("x", 1, 2))), new Generator(1)))
                .withMessage(
                        "degrees of freedom of x must be more than 2, got 2: with fewer its density has no standard"
                                + " deviation to be simulated");
    }

    @Test
    void sharedInfluencesAreDrawnOnce() {
        Influence shared = Influence.normal("shared", 1);
        Uncertain one = Uncertain.of(5, shared);
        Draws draws = new Draws(List.of(one, one.times(2), Uncertain.exact(7)), new Generator(5));
        double[] inputs = new double[3];
        draws.draw(inputs);
        assertThat(inputs[1] - 10).isCloseTo(2 * (inputs[0] - 5), within(1e-12));
        assertThat(inputs[2]).isEqualTo(7);
        assertThat(draws.inputs()).isEqualTo(3);
    }

    private static double[] draw(Uncertain number) {
        Draws draws = new Draws(List.of(number), new Generator(11));
        double[] inputs = new double[1];
        double[] x = new double[TRIALS];
        for (int t = 0; t < TRIALS; t++) {
            draws.draw(inputs);
            x[t] = inputs[0];
        }
        return x;
    }
}
