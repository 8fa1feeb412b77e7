package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class CorrelatedInputsTest {
    private static final double[] VALUES = {4.9990, 19.6610e-3, 1.04446};
    private static final double[] ROUNDED_U = {0.0032, 0.0095e-3, 0.00075};
    private static final double[][] ROUNDED_R = {{1, -0.36, 0.86}, {-0.36, 1, -0.65}, {0.86, -0.65, 1}};

    @Test
    void theMeansOfRowsReadTogether() {
        // standard: JCGM 100:2008, H.2, Table H.2; printed digits
        List<Uncertain> vip = CorrelatedInputs.ofRows("bridge", ResistanceData.ROWS);
        assertThat(vip.get(0).value()).isCloseTo(4.9990, within(5e-5));
        assertThat(vip.get(1).value()).isCloseTo(19.6610e-3, within(5e-8));
        assertThat(vip.get(2).value()).isCloseTo(1.04446, within(5e-6));
        assertThat(vip.get(0).standardUncertainty()).isCloseTo(0.0032, within(5e-5));
        assertThat(vip.get(1).standardUncertainty()).isCloseTo(0.0095e-3, within(5e-8));
        assertThat(vip.get(2).standardUncertainty()).isCloseTo(0.00075, within(5e-6));
        assertThat(vip.get(0).correlation(vip.get(1))).isCloseTo(-0.36, within(5e-3));
        assertThat(vip.get(0).correlation(vip.get(2))).isCloseTo(0.86, within(5e-3));
        assertThat(vip.get(1).correlation(vip.get(2))).isCloseTo(-0.65, within(5e-3));
    }

    @Test
    void resistanceAndReactanceFromTheRows() {
        // standard: JCGM 100:2008, H.2 for the values; u and r recomputed from the raw readings, all digits given
        List<Uncertain> vip = CorrelatedInputs.ofRows("bridge", ResistanceData.ROWS);
        Uncertain r = ResistanceData.resistance(vip);
        Uncertain x = ResistanceData.reactance(vip);
        Uncertain z = ResistanceData.impedance(vip);
        assertThat(r.value()).isCloseTo(127.732, within(5e-4));
        assertThat(x.value()).isCloseTo(219.847, within(5e-4));
        assertThat(z.value()).isCloseTo(254.260, within(5e-4));
        assertThat(r.standardUncertainty()).isCloseTo(0.071071, within(5e-7));
        assertThat(x.standardUncertainty()).isCloseTo(0.295582, within(5e-7));
        assertThat(z.standardUncertainty()).isCloseTo(0.236336, within(5e-7));
        assertThat(r.correlation(x)).isCloseTo(-0.58843, within(5e-6));
        assertThat(r.correlation(z)).isCloseTo(-0.48526, within(5e-6));
        assertThat(x.correlation(z)).isCloseTo(0.99251, within(5e-6));
        // published to three decimals
        assertThat(r.standardUncertainty()).isCloseTo(0.071, within(5e-4));
        assertThat(z.standardUncertainty()).isCloseTo(0.236, within(5e-4));
        assertThat(r.correlation(x)).isCloseTo(-0.588, within(5e-4));
        assertThat(r.correlation(z)).isCloseTo(-0.485, within(5e-4));
        assertThat(x.correlation(z)).isCloseTo(0.993, within(5e-4));
    }

    @Test
    void eachRowTransformedIsTheOtherWay() {
        // standard: JCGM 100:2008, H.2.4, second approach: u(X) 0.295; recomputed 0.29549
        double[] rows = new double[5];
        for (int i = 0; i < 5; i++) {
            double[] row = ResistanceData.ROWS[i];
            rows[i] = row[0] * StrictMath.sin(row[2]) / row[1];
        }
        assertThat(Influence.repeated("X", rows).standardUncertainty()).isCloseTo(0.29549, within(5e-6));
    }

    @Test
    void fromThePrintedRoundedInputs() {
        // practice: documentation of an open uncertainty library, all digits given
        List<Uncertain> vip = CorrelatedInputs.ofCorrelations("bridge", VALUES, ROUNDED_U, ROUNDED_R);
        Uncertain r = ResistanceData.resistance(vip);
        Uncertain x = ResistanceData.reactance(vip);
        Uncertain z = ResistanceData.impedance(vip);
        assertThat(r.standardUncertainty()).isCloseTo(0.0699787279884, within(5e-13));
        assertThat(x.standardUncertainty()).isCloseTo(0.295716826846, within(5e-13));
        assertThat(z.standardUncertainty()).isCloseTo(0.236602971835, within(5e-13));
        assertThat(r.correlation(x)).isCloseTo(-0.591484610819, within(5e-13));
        assertThat(r.correlation(z)).isCloseTo(-0.490623905441, within(5e-13));
        assertThat(x.correlation(z)).isCloseTo(0.992797472722, within(5e-13));
    }

    @Test
    void withoutTheCorrelationsTheAnswerIsWrong() {
        // recomputed: 0.194, 0.201, 0.204, three times too large and a third too small
        List<Uncertain> rows = CorrelatedInputs.ofRows("bridge", ResistanceData.ROWS);
        List<Uncertain> apart = List.of(apart("V", rows.get(0)), apart("I", rows.get(1)), apart("phi", rows.get(2)));
        assertThat(ResistanceData.resistance(apart).standardUncertainty()).isCloseTo(0.194, within(1e-3));
        assertThat(ResistanceData.reactance(apart).standardUncertainty()).isCloseTo(0.201, within(1e-3));
        assertThat(ResistanceData.impedance(apart).standardUncertainty()).isCloseTo(0.204, within(1e-3));
    }

    @Test
    void theActivityOfRadon() {
        // standard: JCGM 100:2008, H.4: 0.4300, u 0.0083; recomputed 0.429941, 0.0083301; without r 0.01061
        assertThat(activity(0.646).value()).isCloseTo(0.429941, within(5e-7));
        assertThat(activity(0.646).standardUncertainty()).isCloseTo(0.0083301, within(5e-8));
        assertThat(activity(0).standardUncertainty()).isCloseTo(0.01061, within(5e-6));
    }

    @Test
    void aMatrixMayBeSemidefinite() {
        double[][] one = {{4, 2, 0}, {2, 1, 0}, {0, 0, 0}};
        List<Uncertain> inputs = CorrelatedInputs.ofCovariance("g", new double[] {1, 2, 3}, one);
        assertThat(inputs.get(0).correlation(inputs.get(1))).isCloseTo(1, within(1e-15));
        assertThat(inputs.get(0).minus(inputs.get(1).times(2)).standardUncertainty())
                .isCloseTo(0, within(1e-14));
        assertThat(inputs.get(2).standardUncertainty()).isZero();
        assertThat(inputs.get(0).influences().size()).isEqualTo(1);
        assertThat(inputs.get(0).influences().get(0).id()).isEqualTo("g/1");
        assertThat(CorrelatedInputs.ofCovariance("g", new double[] {1}, new double[][] {{0}})
                        .get(0)
                        .value())
                .isEqualTo(1);
        assertThat(CorrelatedInputs.ofCovariance("g", new double[] {}, new double[][] {}))
                .isEmpty();
    }

    @Test
    void fewerRowsThanInputsGiveASingularMatrixThatIsTaken() {
        List<Uncertain> inputs = CorrelatedInputs.ofRows("g", new double[][] {{1, 2, 3}, {2, 4, 2}});
        assertThat(inputs.get(0).influences().size()).isEqualTo(1);
        assertThat(inputs.get(0).correlation(inputs.get(2))).isCloseTo(-1, within(1e-12));
    }

    @Test
    void aLargeMeanDoesNotEatTheCovariance() {
        double[][] rows = {{1e7 + 0.1, 1}, {1e7 + 0.3, 3}, {1e7 + 0.2, 2}};
        List<Uncertain> inputs = CorrelatedInputs.ofRows("g", rows);
        // s 0.1 and 1 over √3; the readings themselves are good to 1e-9
        assertThat(inputs.get(0).standardUncertainty()).isCloseTo(0.1 / StrictMath.sqrt(3), within(1e-8));
        assertThat(inputs.get(0).correlation(inputs.get(1))).isCloseTo(1, within(1e-12));
    }

    @Test
    void whatIsNoCovarianceIsRefused() {
        double[] two = {1, 2};
        refused(
                "covariance must be symmetric, got 0.5 and 0.4",
                () -> CorrelatedInputs.ofCovariance("g", two, new double[][] {{1, 0.5}, {0.4, 1}}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CorrelatedInputs.ofCovariance("g", two, new double[][] {{1, 2}, {2, 1}}))
                .withMessageStartingWith("covariance must be positive semidefinite, got one with ");
        // a rounded table of three correlations that contradict each other
        double[][] table = {{1, 0.9, 0.9}, {0.9, 1, 0}, {0.9, 0, 1}};
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CorrelatedInputs.ofCorrelations("g", new double[3], new double[] {1, 1, 1}, table))
                .withMessageStartingWith("covariance must be positive semidefinite");
        refused(
                "variance must be 0 or more and finite, got -1",
                () -> CorrelatedInputs.ofCovariance("g", new double[] {1}, new double[][] {{-1}}));
        refused(
                "covariance must be finite, got NaN",
                () -> CorrelatedInputs.ofCovariance("g", two, new double[][] {{1, Double.NaN}, {Double.NaN, 1}}));
        // a covariance with an input that has no variance
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CorrelatedInputs.ofCovariance("g", two, new double[][] {{0, 1}, {1, 1}}));
        refused(
                "number of rows of covariance must be 2, got 1",
                () -> CorrelatedInputs.ofCovariance("g", two, new double[][] {{1, 0}}));
        refused(
                "number of covariances in a row must be 2, got 1",
                () -> CorrelatedInputs.ofCovariance("g", two, new double[][] {{1, 0}, {0}}));
        refused(
                "correlation of an input with itself must be 1, got 2",
                () -> CorrelatedInputs.ofCorrelations("g", two, two, new double[][] {{2, 0}, {0, 2}}));
        refused(
                "number of uncertainties must be 2, got 1",
                () -> CorrelatedInputs.ofCorrelations("g", two, new double[] {1}, ROUNDED_R));
        refused("group must not be blank, got \"\"", () -> CorrelatedInputs.ofRows("", ResistanceData.ROWS));
    }

    @Test
    void rowsOfDifferentLengthAreRefused() {
        refused(
                "number of readings in a row must be 2, got 3",
                () -> CorrelatedInputs.ofRows("g", new double[][] {{1, 2}, {1, 2, 3}}));
        refused("number of rows must be 2 or more, got 1", () -> CorrelatedInputs.ofRows("g", new double[][] {{1, 2}}));
        refused(
                "length of a row must be 1 or more, got 0",
                () -> CorrelatedInputs.ofRows("g", new double[][] {{}, {}}));
        refused(
                "reading must be finite, got NaN",
                () -> CorrelatedInputs.ofRows("g", new double[][] {{1, 2}, {1, Double.NaN}}));
    }

    private static Uncertain activity(double r) {
        double covariance = r * 6.42 * 3.79;
        List<Uncertain> rates = CorrelatedInputs.ofCovariance("rates", new double[] {652.60, 206.09}, new double[][] {
            {6.42 * 6.42, covariance}, {covariance, 3.79 * 3.79}
        });
        Uncertain standard = Uncertain.of(0.1368, Influence.normal("AS", 0.0018));
        Uncertain massStandard = Uncertain.of(5.0192, Influence.normal("mS", 0.0050));
        Uncertain massSample = Uncertain.of(5.0571, Influence.normal("mx", 0.0010));
        return standard.times(massStandard)
                .dividedBy(massSample)
                .times(rates.get(0))
                .dividedBy(rates.get(1));
    }

    private static Uncertain apart(String id, Uncertain mean) {
        return Uncertain.of(mean.value(), Influence.normal(id, mean.standardUncertainty()));
    }

    private static void refused(String message, Runnable call) {
        assertThatIllegalArgumentException().isThrownBy(call::run).withMessage(message);
    }
}
