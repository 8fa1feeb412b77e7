package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.measure.Uncertain;

/**
 * An opening of about 2400 by 1500, six readings to the millimetre, u = 1 mm. Reference: a free network adjustment by GNU
 * Gama 2.24 and an independent one (mark: handbook). Printed digits set the tolerances.
 */
class CleanOpeningTest {
    private static final double[] READ = {2400, 1503, 2411, 1498, 2838, 2833};

    @Test
    void cornersAndTheirDoubt() {
        Opening opening = Opening.of(Surveys.straight(Surveys.six(1, READ)));
        double[][] places = {{0, 0}, {2400.163, 0}, {2407.050, 1503.085}, {-4.107, 1498.096}};
        double[][] doubts = {{0, 0}, {.905, 0}, {1.102, .966}, {1.180, .965}};
        for (Corner corner : Corner.values()) {
            List<Uncertain> at = opening.corner(corner);
            for (int k = 0; k < 2; k++) {
                assertThat(at.get(k).value()).isCloseTo(places[corner.ordinal()][k], within(6e-4));
                assertThat(at.get(k).standardUncertainty()).isCloseTo(doubts[corner.ordinal()][k], within(6e-4));
            }
        }
    }

    @Test
    void anglesAndTheirDoubt() {
        Opening opening = Opening.of(Surveys.straight(Surveys.six(1, READ)));
        double[] degrees = {90.1571, 90.2625, 89.6189, 89.9615};
        double[] u = {0.0451, 0.0451, 0.0448, 0.0450};
        for (Corner corner : Corner.values()) {
            Uncertain angle = OpeningFigures.cornerAngle(opening, corner);
            assertThat(Math.toDegrees(angle.value())).isCloseTo(degrees[corner.ordinal()], within(6e-5));
            assertThat(Math.toDegrees(angle.standardUncertainty())).isCloseTo(u[corner.ordinal()], within(6e-5));
            assertThat(OpeningFigures.departure(opening, corner).value()).isEqualTo(angle.value() - Math.PI / 2);
        }
    }

    @Test
    void residualsAndTests() {
        Adjustment net = Surveys.adjust(Surveys.six(1, READ));
        check(net, .1629, .1012, .1622, .1015, -.1917, -.1914, 0.3831);
        double[] r = {.18080, .06980, .17915, .07026, .25044, .24956};
        double sum = 0;
        for (int i = 0; i < 6; i++) {
            double own = 1 / Math.pow(net.readings().get(i).slipU(), 2);
            assertThat(own).isCloseTo(r[i], within(6e-6));
            sum += own;
        }
        assertThat(sum).isCloseTo(1, within(1e-6)); // the redundancy; the ridge of 1e-8 is below that
        assertThat(net.statistic()).isCloseTo(0.146762, within(6e-7));
        assertThat(net.isAccepted()).isTrue();
        assertThat(net.suspects()).isEmpty();
        assertThat(net.critical()).isCloseTo(10.83, within(0.01));
    }

    @Test
    void aWidthMisreadByTenMillimetres() {
        Adjustment net = Surveys.adjust(Surveys.six(1, 2410, 1503, 2411, 1498, 2838, 2833));
        check(net, -1.6413, -1.0197, -1.6406, -1.0231, 1.9346, 1.9312, 3.8657);
        assertThat(net.statistic()).isCloseTo(14.9439, within(6e-5));
        assertThat(net.isAccepted()).isFalse();
        assertThat(net.suspects()).hasSize(1);
        assertThat(net.suspects().get(0).readings()).containsExactlyInAnyOrderElementsOf(Surveys.SIX);
    }

    @Test
    void aLengthMisreadByTenMillimetresPasses() {
        Adjustment net = Surveys.adjust(Surveys.six(1, 2400, 1513, 2411, 1498, 2838, 2833));
        check(net, -.9590, -.5959, -.9547, -.6018, 1.1297, 1.1278, 2.2576);
        assertThat(net.statistic()).isCloseTo(5.0966, within(6e-5));
        assertThat(net.isAccepted()).isTrue();
    }

    private static void check(Adjustment net, double... expected) {
        for (int i = 0; i < 6; i++) {
            assertThat(net.readings().get(i).residual()).isCloseTo(expected[i], within(6e-5));
            assertThat(Math.abs(net.readings().get(i).w())).isCloseTo(expected[6], within(6e-5));
        }
    }
}
