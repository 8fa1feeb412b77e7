package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A side less straight than stated is told from a misread. True distances of a 1500 by 2400 mm rectangle with bulging
 * sides: a width at a bulge is 1500 less the bulges. Mark: standard (plane geometry).
 */
class BulgesTest {
    private static final double D = Math.hypot(1500, 2400);
    private static final List<Reading> SIX = Surveys.six(0.5, 1500, 2400, 1500, 2400, D, D);

    private static Adjustment of(double straight, Reading... more) {
        return Adjustment.of(Survey.finished(Surveys.join(SIX, more), straight), Plane.FRONT);
    }

    /** 30 mm in where 2 mm were stated, by a string and by a width: the side, and by how much. */
    @Test
    void aSideThatBowsFarBeyondWhatWasStated() {
        Adjustment net = of(2, Surveys.read("width@1/2", 0.5, 1470), Surveys.read("bow@right:1/2", 0.5, 30));
        assertThat(net.isAccepted()).isFalse();
        assertThat(net.bulges()).singleElement().satisfies(bulge -> {
            assertThat(bulge.side()).isEqualTo(Side.RIGHT);
            assertThat(bulge.at()).isEqualTo("1/2");
            assertThat(bulge.mm()).isCloseTo(30, within(0.5)); // u of both readings together is 0.35
            assertThat(bulge.readings()).containsExactly("width@1/2", "bow@right:1/2");
        });
        assertThat(net.suspects()).singleElement().satisfies(suspect -> {
            assertThat(suspect.slips()).isEmpty();
            assertThat(suspect.askFor()).isEqualTo("bow@right:1/2");
        });
    }

    /** A string alone speaks for its side. */
    @ParameterizedTest
    @CsvSource({"0, 5", "0.2, 5", "2, 30", "2, -30"})
    void aBowAlone(double straight, double bow) {
        Adjustment net = of(straight, Surveys.read("bow@left:1/3", 0.5, bow));
        assertThat(net.isAccepted()).isFalse();
        assertThat(net.bulges()).singleElement().satisfies(bulge -> {
            assertThat(bulge.side()).isEqualTo(Side.LEFT);
            assertThat(bulge.at()).isEqualTo("1/3");
            assertThat(bulge.mm()).isCloseTo(bow, within(0.01));
        });
    }

    /** Three widths short by one bow: either side does, and no one slip does. */
    @Test
    void widthsDoNotTellWhichSide() {
        Adjustment net = of(
                2,
                Surveys.read("width@1/4", 0.5, 1485),
                Surveys.read("width@1/2", 0.5, 1480),
                Surveys.read("width@3/4", 0.5, 1485));
        assertThat(net.bulges()).extracting(Adjustment.Bulge::side).containsExactly(Side.RIGHT, Side.LEFT);
        assertThat(net.bulges()).allSatisfy(bulge -> {
            assertThat(bulge.at()).isEqualTo("1/2");
            assertThat(bulge.mm()).isCloseTo(20, within(0.5));
        });
    }

    /** Left 15 mm in and the foot 12 mm in: two sides together, and only those. */
    @Test
    void twoSides() {
        Adjustment net = of(
                2,
                Surveys.read("bow@left:1/2", 0.5, 15),
                Surveys.read("width@1/2", 0.5, 1485),
                Surveys.read("bow@foot:1/2", 0.5, 12),
                Surveys.read("length@1/2", 0.5, 2388));
        assertThat(net.bulges()).extracting(Adjustment.Bulge::side).containsExactly(Side.FOOT, Side.LEFT);
    }

    /** One width that is short may be misread; one diagonal that is long is nobody's bow. */
    @Test
    void aSlipIsStillCalledASlip() {
        Adjustment width = of(2, Surveys.read("width@1/2", 0.5, 1470));
        assertThat(width.isAccepted()).isFalse();
        assertThat(width.bulges()).isEmpty();
        assertThat(width.suspects().get(0).readings()).contains("width@1/2");
        Adjustment diagonal = Adjustment.of(
                Survey.finished(
                        Surveys.join(
                                Surveys.six(0.5, 1500, 2400, 1500, 2400, D, D + 30),
                                Surveys.read("width@1/4", 0.5, 1500),
                                Surveys.read("length@3/4", 0.5, 2400),
                                Surveys.read("cross@head-left:right:1/2", 0.5, Math.hypot(1500, 1200))),
                        2),
                Plane.FRONT);
        assertThat(diagonal.isAccepted()).isFalse();
        assertThat(diagonal.bulges()).isEmpty();
        assertThat(diagonal.suspects().get(0).readings()).contains("diagonal@head-right");
        // Two strings that contradict each other are no bow either.
        Adjustment two = of(2, Surveys.read("bow@left:1/2", 0.5, 30), Surveys.read("bow@left:1/2", 0.5, 0));
        assertThat(two.bulges()).isEmpty();
        assertThat(two.suspects()).isNotEmpty();
    }

    @Test
    void nothingWhereTheReadingsAgreeOrNobodySaid() {
        assertThat(of(2, Surveys.read("bow@left:1/2", 0.5, 1)).bulges()).isEmpty();
        assertThat(of(Double.NaN, Surveys.read("width@1/2", 0.5, 1470)).bulges())
                .isEmpty();
    }
}
