package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.judge.Bound;
import quoin.judge.Conformity;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;
import quoin.measure.Uncertain;

class SizeByOddsTest {
    private static final Surveys.Quad SQUARE = Surveys.Quad.level(1500, 1500, 2400, 0, 2400);

    /** All readings off by one and the same amount per metre: width and length are off in proportion. */
    private static Opening scaled(double uPerMetre) {
        Instrument tape = Instrument.of("tape", Instrument.Kind.STATED)
                .withEach(List.of(Doubt.standard(1e-4, Dimension.LENGTH)))
                .withAll(List.of(Doubt.standard(uPerMetre, Dimension.LENGTH).perLength()));
        List<Reading> readings = new ArrayList<>();
        double[] exact = SQUARE.exact();
        for (int i = 0; i < 6; i++) {
            readings.add(Reading.of(Surveys.SIX.get(i), tape, exact[i]));
        }
        return Opening.of(Surveys.straight(readings));
    }

    /**
     * One error decides: 2400 mm are off by 2.4 u, more than 1500 mm, so the length decides. Handbook: the 1 % and 5 % points
     * of the normal distribution, 2.3263 and 1.6449. Least gap (2400 + 2.4 e - l) / 2 at least 1 mm.
     */
    @Test
    void theQuantileInClosedForm() {
        Opening opening = scaled(0.5);
        SizeByOdds.Terms terms = new SizeByOdds.Terms(1, 0.01, 0);
        SizeByOdds.Choice sure =
                SizeByOdds.largest(opening, Held.TO_HEAD, terms, 0.99).orElseThrow();
        double length = 2400 - 2 - 2.3263 * 2.4 * 0.5;
        // Rounded down to 0.01 mm, and as many digits as the tables print.
        assertThat(sure.lengthMm()).isBetween(length - 0.0102, length + 2e-4);
        assertThat(sure.widthMm() - sure.lengthMm()).isCloseTo(-900, within(0.0101));
        assertThat(sure.odds()).isGreaterThanOrEqualTo(0.99).isLessThan(0.9905);
        SizeByOdds.Choice likely =
                SizeByOdds.largest(opening, Held.TO_HEAD, terms, 0.95).orElseThrow();
        double longer = 2400 - 2 - 1.6449 * 2.4 * 0.5;
        assertThat(likely.lengthMm()).isBetween(longer - 0.0102, longer + 2e-4);
    }

    /** Whatever the opening: likely enough, and one step more is not. */
    @Test
    void oneStepMoreIsNotLikelyEnough() {
        Opening racked = Surveys.Quad.level(1500, 1510, 2400, 10, 2400).opening(1);
        for (Held held : List.of(Held.TO_HEAD, Held.to(Side.RIGHT), Held.FREELY)) {
            for (double p : new double[] {0.5, 0.9, 0.99}) {
                SizeByOdds.Terms terms = new SizeByOdds.Terms(1, 0.5, 0.5);
                SizeByOdds.Choice choice =
                        SizeByOdds.largest(racked, held, terms, p).orElseThrow();
                assertThat(choice.widthMm() * 2).isEqualTo(Math.rint(choice.widthMm() * 2));
                assertThat(choice.odds()).isGreaterThanOrEqualTo(p);
                assertThat(odds(racked, held, choice.widthMm(), choice.lengthMm()))
                        .isEqualTo(choice.odds());
                assertThat(odds(racked, held, choice.widthMm() + 0.5, choice.lengthMm() + 0.5))
                        .isLessThan(p);
            }
        }
    }

    private static double odds(Opening opening, Held held, double w, double l) {
        Gaps gaps = Gaps.of(opening, held, cut("width", w), cut("length", l)).orElseThrow();
        return Conformity.odds(Gaps.least(gaps), Bound.atLeast(1)).value();
    }

    private static Uncertain cut(String what, double size) {
        return Uncertain.of(size, quoin.measure.Influence.rectangular("cut/frame." + what, 0.5));
    }

    /** A frame that may turn is never made smaller for the same odds. */
    @Test
    void turningAllowsMore() {
        Opening racked = Surveys.Quad.level(1500, 1510, 2400, 10, 2400).opening(1);
        SizeByOdds.Terms terms = new SizeByOdds.Terms(1, 0.5, 0.5);
        double level = SizeByOdds.largest(racked, Held.TO_HEAD, terms, 0.95)
                .orElseThrow()
                .widthMm();
        double turned = SizeByOdds.largest(racked, Held.FREELY, terms, 0.95)
                .orElseThrow()
                .widthMm();
        assertThat(turned).isGreaterThan(level + 5);
    }

    /**
     * One error decides, as above. With d the amount taken off and s = 2.4 u the cost is
     * R Φ((2 g - d) / s) + c d / 2, least where R φ((2 g - d) / s) / s = c / 2: at d = 2 g + s √(2 ln(2 R / (c s √(2 π)))).
     */
    @Test
    void theLeastCostInClosedForm() {
        Opening opening = scaled(0.5);
        double s = 2.4 * 0.5;
        double remake = 600;
        double perMm = 4;
        double d = 2 + s * Math.sqrt(2 * Math.log(2 * remake / (perMm * s * Math.sqrt(2 * Math.PI))));
        SizeByOdds.Costed best = SizeByOdds.cheapest(
                        opening, Held.TO_HEAD, new SizeByOdds.Terms(1, 0.1, 0), remake, perMm)
                .orElseThrow();
        // Half a step either way, and the step it is rounded down by.
        assertThat(best.choice().lengthMm()).isCloseTo(2400 - d, within(0.1));
        double risk = 0.5 * (1 - erf((d - 2) / s / Math.sqrt(2)));
        assertThat(best.cost()).isCloseTo(remake * risk + perMm * d / 2, within(0.2));
    }

    /** By its series, to 1e-15 for the argument used. */
    private static double erf(double x) {
        double sum = 0;
        double term = x;
        for (int n = 0; n < 100; n++) {
            sum += term / (2 * n + 1);
            term *= -x * x / (n + 1);
        }
        return 2 / Math.sqrt(Math.PI) * sum;
    }

    @Test
    void dearerRemakesMakeSmallerFrames() {
        Opening opening = SQUARE.opening(1);
        SizeByOdds.Terms terms = new SizeByOdds.Terms(1, 1, 0.5);
        double before = Double.POSITIVE_INFINITY;
        for (double remake : new double[] {1, 10, 100, 1000, 10000}) {
            SizeByOdds.Choice choice = SizeByOdds.cheapest(opening, Held.TO_HEAD, terms, remake, 1)
                    .orElseThrow()
                    .choice();
            assertThat(choice.widthMm()).isLessThanOrEqualTo(before);
            before = choice.widthMm();
        }
        assertThat(before).isBetween(1488.0, 1496.0);
    }

    @Test
    void whatCannotBe() {
        Opening none = Opening.of(Surveys.straight(SQUARE.six(1).subList(0, 4)));
        SizeByOdds.Terms terms = new SizeByOdds.Terms(1, 1, 0);
        assertThat(SizeByOdds.largest(none, Held.TO_HEAD, terms, 0.9)).isEmpty();
        assertThat(SizeByOdds.cheapest(none, Held.TO_HEAD, terms, 1, 1)).isEmpty();
        assertThatThrownBy(() -> SizeByOdds.largest(none, Held.TO_HEAD, terms, 1))
                .hasMessage("probability must be above 0 and below 1, got 1.0");
        assertThatThrownBy(() -> SizeByOdds.cheapest(none, Held.TO_HEAD, terms, Double.NaN, 1))
                .hasMessage("cost of a remake must be above 0, got NaN");
        assertThatThrownBy(() -> SizeByOdds.cheapest(none, Held.TO_HEAD, terms, 1, 0))
                .hasMessage("cost of a mm of gap must be above 0, got 0.0");
        assertThatThrownBy(() -> new SizeByOdds.Terms(1, 0, 0)).hasMessage("step must be above 0 mm, got 0.0 mm");
        assertThatThrownBy(() -> new SizeByOdds.Terms(-1, 1, 0)).hasMessage("gap must be 0 mm or more, got -1.0 mm");
        assertThatThrownBy(() -> new SizeByOdds.Terms(1, 1, Double.NaN))
                .hasMessage("cut must be within 0 mm or more, got NaN mm");
    }
}
