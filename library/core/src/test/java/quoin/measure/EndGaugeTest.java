package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Standard: JCGM 100:2008, H.1, end-gauge calibration: l = lS + d − lS (δα θ + αS δθ), in nm. The published figures
 * round at three places; each path has its own tolerance.
 */
class EndGaugeTest {
    private static final Influence STANDARD = Influence.normal("lS", 25);

    @Test
    void theContributionsAsPrinted() {
        Uncertain length = length(50_000_623, 13 / StrictMath.sqrt(5), 10 / 2.57, 20.0 / 3);
        assertThat(length.value()).isCloseTo(50_000_838, within(0.5));
        // printed to one decimal of a nm: 25; 9.7 (three parts of d); 0; 0; 2.9; 16.6
        assertThat(length.contribution(0)).isEqualTo(25);
        double d = StrictMath.sqrt(square(length, 1) + square(length, 2) + square(length, 3));
        assertThat(d).isCloseTo(9.7, within(0.05));
        assertThat(sensitivity(length, "alphaS")).isZero();
        assertThat(sensitivity(length, "theta mean")).isZero();
        assertThat(contribution(length, "dalpha")).isCloseTo(2.9, within(0.05));
        assertThat(contribution(length, "dtheta")).isCloseTo(-16.6, within(0.05));
        // printed as 1002 nm² and 32 nm: the table's squares of rounded contributions
        assertThat(length.variance()).isCloseTo(1002, within(1.0));
        assertThat(length.standardUncertainty()).isCloseTo(32, within(0.5));
    }

    @Test
    void theUnroundedPath() {
        // recomputed from the inputs of the table without rounding on the way (t of 5 degrees 2.570582 instead of the
        // printed 2.57): four decimals given
        Uncertain length = length(50_000_623, 13 / StrictMath.sqrt(5), 10 / 2.570582, 20.0 / 3);
        assertThat(length.standardUncertainty()).isCloseTo(31.6582, within(5e-5));
    }

    @Test
    void thePathWithRoundedPartsOfD() {
        // practice: test data of an open uncertainty library, lS 5e7 nm and parts of d 5.8, 3.9, 6.7 nm; all digits
        // given
        Uncertain length = length(50_000_000, 5.8, 3.9, 6.7);
        assertThat(length.standardUncertainty()).isCloseTo(31.6637674111, within(5e-10));
    }

    private static Uncertain length(double standard, double repeatability, double random, double systematic) {
        Uncertain ls = Uncertain.of(standard, STANDARD);
        Uncertain d = Uncertain.of(215, Influence.normal("d repeatability", repeatability))
                .plus(Uncertain.of(0, Influence.normal("d random", random)))
                .plus(Uncertain.of(0, Influence.normal("d systematic", systematic)));
        Uncertain alpha = Uncertain.of(11.5e-6, Influence.rectangular("alphaS", 2e-6));
        Uncertain theta = Uncertain.of(-0.1, Influence.normal("theta mean", 0.2))
                .plus(Uncertain.of(
                        0,
                        new Influence(
                                "theta swing", Shape.ARCSINE, 0.5 / StrictMath.sqrt(2), Double.POSITIVE_INFINITY, "")));
        Uncertain dalpha = Uncertain.of(0, Influence.rectangular("dalpha", 1e-6));
        Uncertain dtheta = Uncertain.of(0, Influence.rectangular("dtheta", 0.05));
        return ls.plus(d).minus(ls.times(dalpha.times(theta).plus(alpha.times(dtheta))));
    }

    private static double square(Uncertain number, int i) {
        return number.contribution(i) * number.contribution(i);
    }

    private static double contribution(Uncertain number, String id) {
        for (int i = 0; i < number.influences().size(); i++) {
            if (number.influences().get(i).id().equals(id)) {
                return number.contribution(i);
            }
        }
        throw new AssertionError(id);
    }

    private static double sensitivity(Uncertain number, String id) {
        return contribution(number, id);
    }
}
