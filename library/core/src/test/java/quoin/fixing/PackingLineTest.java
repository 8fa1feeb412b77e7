package quoin.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import quoin.measure.Influence;
import quoin.measure.Uncertain;
import quoin.opening.LineFit;
import quoin.opening.LineFit.Station;

class PackingLineTest {
    static final double[] PLACES = {0, 600, 1200, 1800, 2400};
    static final double[] OUT = {0, 3, 4, 2, 0.5};

    static List<Station> offsets(double u) {
        List<Station> offsets = new ArrayList<>();
        for (int i = 0; i < PLACES.length; i++) {
            Uncertain out = Uncertain.of(OUT[i], Influence.normal("z" + i, u));
            offsets.add(new Station(PLACES[i], out));
        }
        return offsets;
    }

    private static double[] values(PackingLine line) {
        return line.gaps().stream().mapToDouble(gap -> gap.offset().value()).toArray();
    }

    private static double[] doubts(PackingLine line) {
        return line.gaps().stream()
                .mapToDouble(gap -> gap.offset().standardUncertainty())
                .toArray();
    }

    /** Worked by hand: 4 is the greatest offset. To 1e-12 for rounding. */
    @Test
    void aLevelLineTouchesWhereTheSideStandsOutFurthest() {
        PackingLine line = PackingLine.inFall(offsets(0.5), 0);
        assertThat(values(line)).containsExactly(new double[] {4, 1, 0, 2, 3.5}, within(1e-12));
        double both = 0.5 * StrictMath.sqrt(2);
        assertThat(doubts(line)).containsExactly(new double[] {both, both, 0, both, both}, within(1e-12));
    }

    /** In a fall of 1 in 400: 4 − 1200/400 = 1 is the greatest of 0, 1.5, 1, −2.5, −5.5 but for 1.5 at 600. */
    @Test
    void aLineInAFallTouchesWhereThatLineIsMet() {
        PackingLine line = PackingLine.inFall(offsets(0.5), 1.0 / 400);
        assertThat(values(line)).containsExactly(new double[] {1.5, 0, 0.5, 4, 7}, within(1e-12));
        assertThat(line.slope().value()).isEqualTo(1.0 / 400);
        assertThat(line.slope().isExact()).isTrue();
    }

    /**
     * The linear program of least largest gap, solved outside this project with another solver: line 3.75 + 0.00020833 x,
     * largest 3.75, which is the minimum zone straightness of the offsets. To 1e-12 for rounding.
     */
    @Test
    void theLeastLargestGapIsTheMinimumZone() {
        PackingLine line = PackingLine.leastLargest(offsets(0.5));
        assertThat(values(line)).containsExactly(new double[] {3.75, 0.875, 0, 2.125, 3.75}, within(1e-12));
        assertThat(line.slope().value()).isCloseTo(0.5 / 2400, within(1e-15));
        assertThat(line.largestMm())
                .isCloseTo(StrictMath.abs(LineFit.minimumZone(offsets(0.5)).value()), within(1e-12));
        // the gap at the left end is z2 - (z0 + z4) / 2: u = 0.5 sqrt(1 + 1/4 + 1/4)
        double end = 0.5 * StrictMath.sqrt(1.5);
        assertThat(doubts(line)[0]).isCloseTo(end, within(1e-12));
        assertThat(doubts(line)[4]).isCloseTo(end, within(1e-12));
    }

    /**
     * The linear program of least sum, solved outside this project: 10.5, by the line 2 + 0.00166667 x, largest gap 5.5, as
     * well as by every line between that and its mirror, for the mean place is one of the places. The one taken is the one
     * whose largest gap is least.
     */
    @Test
    void amongLeastSumsTheLeastLargestIsTaken() {
        PackingLine line = PackingLine.leastTotal(offsets(0.5));
        assertThat(StrictMath.rint(1e9 * DoubleStream.of(values(line)).sum()) / 1e9)
                .isEqualTo(10.5);
        assertThat(values(line)).containsExactly(new double[] {3.75, 0.875, 0, 2.125, 3.75}, within(1e-12));
    }

    /** Worked by hand: the mean place 900 lies between 600 and 1200, and so the line is 2 + x / 600. */
    @Test
    void theLeastSumLiesAlongTheHull() {
        PackingLine line = PackingLine.leastTotal(offsets(0.5).subList(0, 4));
        assertThat(values(line)).containsExactly(new double[] {2, 0, 0, 3}, within(1e-12));
        assertThat(doubts(line)[1]).isZero();
        assertThat(doubts(line)[2]).isZero();
        // the gap at 1800 is z1 + 2 (z2 - z1) - z3: u = 0.5 sqrt(1 + 4 + 1)
        assertThat(doubts(line)[3]).isCloseTo(0.5 * StrictMath.sqrt(6), within(1e-12));
        assertThat(line.slope().standardUncertainty()).isCloseTo(0.5 * StrictMath.sqrt(2) / 600, within(1e-15));
    }

    @Test
    void aStraightSideNeedsNothing() {
        List<Station> straight = new ArrayList<>();
        for (double x : PLACES) {
            straight.add(new Station(x, Uncertain.of(1 + x / 800, Influence.normal("x" + x, 0.5))));
        }
        assertThat(PackingLine.leastTotal(straight).largestMm()).isLessThan(1e-9);
        assertThat(PackingLine.leastLargest(straight).largestMm()).isLessThan(1e-9);
    }

    @Test
    void oneOffsetMakesALineInAFallOnly() {
        List<Station> one = List.of(new Station(100, Uncertain.exact(3)));
        assertThat(values(PackingLine.inFall(one, 0))).containsExactly(0);
        assertThatThrownBy(() -> PackingLine.leastTotal(one)).hasMessage("number of offsets must be 2 or more, got 1");
    }

    @Test
    void whatMakesNoLineIsRefused() {
        assertThatThrownBy(() -> PackingLine.inFall(List.of(), 0))
                .hasMessage("number of offsets must be 1 or more, got 0");
        assertThatThrownBy(() -> PackingLine.inFall(offsets(0.5), Double.NaN))
                .hasMessage("slope must be finite, got NaN");
        List<Station> twice = List.of(new Station(100, Uncertain.exact(3)), new Station(100, Uncertain.exact(4)));
        assertThatThrownBy(() -> PackingLine.leastLargest(twice))
                .hasMessage("offsets must be at places of their own, got two at 100.0 mm");
    }
}
