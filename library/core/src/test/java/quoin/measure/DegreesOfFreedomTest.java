package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class DegreesOfFreedomTest {
    @Test
    void theEndGauge() {
        // standard: JCGM 100:2008, H.1: nu 16.7. practice: test data of an open uncertainty library give all digits for
        // lS 5e7 nm and the parts of d 5.8, 3.9, 6.7 nm: nu(d) 25.4472507774, u 31.6637674111, nu 16.7521475092
        Uncertain d = few("d1", 5.8, 24).plus(few("d2", 3.9, 5)).plus(few("d3", 6.7, 8));
        assertThat(d.standardUncertainty()).isCloseTo(9.68194195397, within(5e-11));
        assertThat(nu(d)).isCloseTo(25.4472507774, within(5e-10));
        double nominal = 5e7;
        Uncertain length = few("lS", 25, 18)
                .plus(d)
                .plus(few("dalpha", nominal * 0.1 * 1e-6 / StrictMath.sqrt(3), 50))
                .plus(few("dtheta", nominal * 11.5e-6 * 0.05 / StrictMath.sqrt(3), 2));
        assertThat(length.standardUncertainty()).isCloseTo(31.6637674111, within(5e-10));
        assertThat(nu(length)).isCloseTo(16.7521475092, within(5e-10));
        // the guide cuts 16.7 to 16: t 2.92, U 93 nm = 2.92 · 32; recomputed without rounding 2.9208 · 31.6582 = 92.47
        assertThat(Coverage.factor(16, 0.99)).isCloseTo(2.9208, within(5e-5));
        assertThat(2.92 * 32).isCloseTo(93, within(0.5));
        assertThat(Coverage.factor(16, 0.99) * 31.6582).isCloseTo(92.47, within(5e-3));
        // not cut: t 2.9038
        assertThat(Coverage.symmetric(length, 0.99).orElseThrow().factor()).isCloseTo(2.9038, within(5e-4));
    }

    @Test
    void aRatioTimesAReading() {
        // practice: test data of an open uncertainty tool: .1820 (.00093, 9) / .1823 (.00058, 19) · .6978 (.0026, 19):
        // .6967, u .00494, nu 27.7, U .0101; the inputs have two or three digits, which leaves 0.5 % open
        Uncertain value = few(0.1820, "a", 0.00093, 9)
                .dividedBy(few(0.1823, "b", 0.00058, 19))
                .times(few(0.6978, "c", 0.0026, 19));
        assertThat(value.value()).isCloseTo(0.6967, within(5e-5));
        assertThat(value.standardUncertainty()).isCloseTo(0.00494, within(0.005 * 0.00494));
        // nu goes with the fourth power
        assertThat(nu(value)).isCloseTo(27.7, within(4 * 0.005 * 27.7));
        assertThat(Coverage.symmetric(value, 0.95).orElseThrow().expanded()).isCloseTo(0.0101, within(5e-5));
    }

    @Test
    void infiniteIsAValue() {
        // practice: same source: u .57 with nu 9 and u .25 with infinite nu: nu 12.8
        Uncertain sum = few("a", 0.57, 9).plus(Uncertain.of(0, Influence.normal("b", 0.25)));
        assertThat(nu(sum)).isCloseTo(12.8, within(0.05));
        assertThat(nu(Uncertain.of(0, Influence.normal("b", 0.25)))).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(nu(Uncertain.exact(1))).isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void whatContributesNothingDropsOut() {
        Uncertain sum = few("a", 1, 4).plus(few("none", 0, 1));
        assertThat(nu(sum)).isEqualTo(4);
        assertThat(nu(few("none", 0, 1))).isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void intermediateResultsThatShareAnInputDoNotMatter() {
        // z = a + b, y = z − a has the degrees of b. Step by step through z it would be 12 (recomputed).
        Uncertain a = few("a", 1, 4);
        Uncertain b = few("b", 1, 4);
        Uncertain z = a.plus(b);
        assertThat(nu(z)).isCloseTo(8, within(1e-12));
        assertThat(nu(z.minus(a))).isCloseTo(4, within(1e-12));
        double stepwise = 9 / (4.0 / nu(z) + 1.0 / 4);
        assertThat(stepwise).isCloseTo(12, within(1e-9));
    }

    @Test
    void rowsReadTogetherHaveTheirOwnDegrees() {
        // standard: JCGM 100:2008, H.2: five rows give nu 4. The formula that ignores the correlation gives 0.13.
        Uncertain resistance = ResistanceData.resistance(CorrelatedInputs.ofRows("bridge", ResistanceData.ROWS));
        assertThat(nu(resistance)).isEqualTo(4);
        assertThat(naive(CorrelatedInputs.ofRows("bridge", ResistanceData.ROWS)))
                .isCloseTo(0.13, within(5e-3));
    }

    @Test
    void rowsWithAnythingElseAreRefused() {
        List<Uncertain> rows = CorrelatedInputs.ofRows("bridge", ResistanceData.ROWS);
        Uncertain resistance = ResistanceData.resistance(rows);
        assertThat(DegreesOfFreedom.of(resistance.plus(few("other", 0.1, 5)))).isEmpty();
        assertThat(DegreesOfFreedom.of(resistance.plus(Uncertain.of(0, Influence.normal("other", 0.1)))))
                .isEmpty();
        assertThat(Coverage.symmetric(resistance.plus(few("other", 0.1, 5)), 0.95))
                .isEmpty();
        List<Uncertain> others = CorrelatedInputs.ofRows("again", ResistanceData.ROWS);
        assertThat(DegreesOfFreedom.of(rows.get(0).plus(others.get(0)))).isEmpty();
    }

    @Test
    void oneGroupWithTwoDegreesIsRefused() {
        Uncertain one = Uncertain.of(0, Influence.tByScale("a", 1, 4).withGroup("g"));
        Uncertain two = Uncertain.of(0, Influence.tByScale("b", 1, 5).withGroup("g"));
        assertThat(DegreesOfFreedom.of(one.plus(two))).isEmpty();
    }

    @Test
    void aKnownCovarianceHasInfiniteDegreesAndMixesWithOthers() {
        Uncertain known = CorrelatedInputs.ofCovariance("c", new double[] {1, 2}, new double[][] {{1, 0.5}, {0.5, 1}})
                .get(1);
        assertThat(nu(known)).isEqualTo(Double.POSITIVE_INFINITY);
        // u² is 1 + 1, of which one part has 4: 2² / (1² / 4)
        assertThat(nu(known.plus(few("x", 1, 4)))).isCloseTo(16, within(1e-9));
    }

    /** Welch and Satterthwaite over the three inputs as if they were independent, with the correlated u on top. */
    private static double naive(List<Uncertain> rows) {
        double u = ResistanceData.resistance(rows).standardUncertainty();
        double sum = 0;
        for (int k = 0; k < 3; k++) {
            Uncertain alone = ResistanceData.resistance(List.of(
                    k == 0 ? rows.get(0) : Uncertain.exact(rows.get(0).value()),
                    k == 1 ? rows.get(1) : Uncertain.exact(rows.get(1).value()),
                    k == 2 ? rows.get(2) : Uncertain.exact(rows.get(2).value())));
            sum += StrictMath.pow(alone.standardUncertainty(), 4) / 4;
        }
        return StrictMath.pow(u, 4) / sum;
    }

    private static double nu(Uncertain number) {
        return DegreesOfFreedom.of(number).orElseThrow();
    }

    private static Uncertain few(String id, double u, double nu) {
        return few(0, id, u, nu);
    }

    private static Uncertain few(double value, String id, double u, double nu) {
        return Uncertain.of(value, Influence.tByScale(id, u, nu));
    }
}
