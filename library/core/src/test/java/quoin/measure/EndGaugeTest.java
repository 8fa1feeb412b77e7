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

    @Test
    void theBudgetAsItIsStated() {
        // the inputs of Table H.1 by the ways they are stated there: U = 75 nm with k 3 and nu 18; 0.01 µm at 95 % with
        // nu 5;
        // 0.02 µm at three sigma, good to 25 %; limits with a reliability of 10 % and 50 %
        Uncertain length = stated();
        assertThat(length.value()).isCloseTo(50_000_838, within(0.5));
        assertThat(length.standardUncertainty()).isCloseTo(31.6582, within(5e-5));
        assertThat(DegreesOfFreedom.of(length).orElseThrow()).isCloseTo(16.741, within(5e-4));
    }

    @Test
    void theExpandedUncertaintyByItsThreePaths() {
        double u = stated().standardUncertainty();
        double cut = Coverage.factor(16, 0.99);
        // 1. printed: t 2.92 times the rounded 32 nm is 93 nm; so [745, 931] in JCGM 101:2008, 9.5 about 838
        assertThat(cut).isCloseTo(2.92, within(5e-3));
        assertThat(StrictMath.rint(2.92 * StrictMath.rint(u))).isEqualTo(93);
        assertThat(838 - StrictMath.rint(2.92 * 32)).isEqualTo(745);
        // 2. recomputed, degrees cut to 16, nothing rounded: 92.47; four digits
        assertThat(cut * u).isCloseTo(92.47, within(5e-3));
        // 3. what this library gives, degrees not cut: t(16.741) = 2.9038, 91.93 recomputed; four digits
        Coverage coverage = Coverage.symmetric(stated(), 0.99).orElseThrow();
        assertThat(coverage.factor()).isCloseTo(2.9038, within(5e-4));
        assertThat(coverage.expanded()).isCloseTo(91.93, within(5e-3));
        // 95 %: recomputed 2.1199 · 31.66 = 67.1; the printed 68 of others is 2.13 · 32
        assertThat(Coverage.factor(16, 0.95) * u).isCloseTo(67.1, within(0.05));
        assertThat(Coverage.factor(16, 0.95)).isCloseTo(2.1199, within(5e-5));
    }

    @Test
    void degreesOfAPartThatSharesNothingMayBeCombinedFirst() {
        // recomputed: d as one influence of 9.68 nm with its 25.4 degrees gives the same as its three parts, since they
        // stand nowhere else
        Influence d = Influence.normal("d", 9.68194195397).withDegreesOfFreedom(25.4472507774);
        Uncertain whole = Uncertain.of(0, d).plus(theRest());
        Uncertain apart = Uncertain.of(0, Influence.tByScale("d1", 5.8, 24))
                .plus(Uncertain.of(0, Influence.tByScale("d2", 3.9, 5)))
                .plus(Uncertain.of(0, Influence.tByScale("d3", 6.7, 8)))
                .plus(theRest());
        double nu = DegreesOfFreedom.of(apart).orElseThrow();
        assertThat(nu).isCloseTo(16.752, within(5e-4));
        assertThat(DegreesOfFreedom.of(whole).orElseThrow()).isCloseTo(nu, within(1e-8));
    }

    private static Uncertain theRest() {
        return Uncertain.of(0, Influence.tByScale("lS", 25, 18))
                .plus(Uncertain.of(0, Influence.rectangular("dalpha", 5).withReliability(10)))
                .plus(Uncertain.of(
                        0, Influence.rectangular("dtheta", 5e7 * 11.5e-6 * 0.05).withReliability(50)));
    }

    private static Uncertain stated() {
        Uncertain ls = Uncertain.of(50_000_623, Influence.expanded("lS", 75, 3).withDegreesOfFreedom(18));
        Uncertain d = Uncertain.of(215, Influence.tByScale("d repeatability", 13 / StrictMath.sqrt(5), 24))
                .plus(Uncertain.of(0, Influence.expandedWithProbability("d random", 10, 0.95, 5)))
                .plus(Uncertain.of(0, Influence.expanded("d systematic", 20, 3).withReliability(25)));
        Uncertain alpha = Uncertain.of(11.5e-6, Influence.rectangular("alphaS", 2e-6));
        Uncertain theta = Uncertain.of(-0.1, Influence.normal("theta mean", 0.2))
                .plus(Uncertain.of(0, Influence.arcsine("theta swing", 0.5)));
        Uncertain dalpha = Uncertain.of(0, Influence.rectangular("dalpha", 1e-6).withReliability(10));
        Uncertain dtheta = Uncertain.of(0, Influence.rectangular("dtheta", 0.05).withReliability(50));
        return ls.plus(d).minus(ls.times(dalpha.times(theta).plus(alpha.times(dtheta))));
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
