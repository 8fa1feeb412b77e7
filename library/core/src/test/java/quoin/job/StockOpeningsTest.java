package quoin.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.judge.Source;
import quoin.judge.Verdict;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;
import quoin.opening.HeadTowards;
import quoin.opening.Reading;
import quoin.parts.Parts;
import quoin.rulebook.BoundClause;
import quoin.rulebook.Interval;
import quoin.rulebook.Quota;
import quoin.rulebook.Rulebook;

class StockOpeningsTest {
    private static final Instrument SHARP =
            Instrument.of("sharp", Instrument.Kind.STATED).withEach(List.of(Doubt.standard(1e-4, Dimension.LENGTH)));

    private static final Rulebook RULES = Boathouse.rules(BoundClause.of("strip", "gap.greatest")
                    .withAtMost(Quota.fixed(Boathouse.mm(9)))
                    .withBecause("the strip hides no more", Source.PRACTICE))
            .withSizes(Boathouse.rules().sizes().stream()
                    .map(size -> size.withCutWithin(0))
                    .toList());

    /** A rectangle that is read all but exactly, assessed whole with the stock frame ordered. */
    private static boolean suits(double width, double length) {
        double diagonal = Math.hypot(width, length);
        List<Reading> readings = List.of(
                Reading.of("width@head", SHARP, width),
                Reading.of("width@foot", SHARP, width),
                Reading.of("length@left", SHARP, length),
                Reading.of("length@right", SHARP, length),
                Reading.of("diagonal@head-left", SHARP, diagonal),
                Reading.of("diagonal@head-right", SHARP, diagonal));
        Job job = Boathouse.job(OpeningFacts.finished(HeadTowards.RIDGE, 0, readings))
                .ordered(Map.of("frame.width", Boathouse.mm(1495), "frame.length", Boathouse.mm(2391)))
                .build();
        return Assessment.of(job, RULES, Parts.NONE).findings().stream()
                .filter(finding -> List.of("goes-in", "strip").contains(finding.clause()))
                .allMatch(finding -> finding.verdict() == Verdict.PASS);
    }

    @Test
    void inverseThenForward() {
        StockOpenings openings = StockOpenings.of(RULES, 1495, 2391, Map.of());
        assertThat(openings.width()).isEqualTo(new Interval(1497, true, 1513, true));
        assertThat(openings.length()).isEqualTo(new Interval(2393, true, 2409, true));
        assertThat(openings.by()).containsExactly("goes-in", "strip");
        double near = 0.01;
        for (double width : new double[] {1497, 1513}) {
            for (double length : new double[] {2393, 2409}) {
                double inW = width + (width < 1500 ? near : -near);
                double inL = length + (length < 2400 ? near : -near);
                assertThat(suits(inW, inL)).as(inW + " by " + inL).isTrue();
                assertThat(suits(2 * width - inW, inL)).isFalse();
                assertThat(suits(inW, 2 * length - inL)).isFalse();
            }
        }
    }

    @Test
    void withoutBoundsEveryOpeningSuits() {
        StockOpenings any = StockOpenings.of(RULES.withBounds(List.of()), 1495, 2391, Map.of());
        assertThat(any.width().least()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(any.by()).isEmpty();
    }
}
