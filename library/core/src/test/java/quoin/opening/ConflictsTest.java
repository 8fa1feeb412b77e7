package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;

/** Readings that cannot close name the group: triangles and four-sided figures. Mark: standard (triangle inequality). */
class ConflictsTest {
    private static final double D = Math.hypot(1500, 2400);

    private static Reading read(String of, double mm) {
        return Surveys.read(of, 1, mm);
    }

    private static List<List<String>> groups(Reading... readings) {
        Adjustment net = Surveys.adjust(List.of(readings));
        assertThat(net.state()).isEqualTo(Adjustment.State.CANNOT_CLOSE);
        assertThat(net.suspects())
                .allSatisfy(suspect -> assertThat(suspect.slips()).isEmpty());
        return net.suspects().stream().map(Suspect::readings).toList();
    }

    /** 4000 against 1500 + 2400 on one side of it only: head and right; left and foot are longer and close. */
    @Test
    void aDiagonalLongerThanTwoSides() {
        assertThat(groups(
                        read("width@head", 1500),
                        read("length@right", 2400),
                        read("width@foot", 1700),
                        read("length@left", 2500),
                        read("diagonal@head-left", 4000)))
                .containsExactly(List.of("width@head", "length@right", "diagonal@head-left"));
    }

    /** On both sides of it: two triangles, and what both have is to be read again. */
    @Test
    void twoTriangles() {
        Adjustment net = Surveys.adjust(List.of(
                read("width@head", 1500),
                read("length@right", 2400),
                read("width@foot", 1500),
                read("length@left", 2400),
                read("diagonal@head-left", 9000)));
        assertThat(net.suspects())
                .extracting(Suspect::readings)
                .containsExactly(
                        List.of("diagonal@head-left", "width@head", "length@right"),
                        List.of("diagonal@head-left", "width@foot", "length@left"));
        assertThat(net.suspects()).allMatch(suspect -> suspect.askFor().equals("diagonal@head-left"));
        // What cannot be read again is not asked for.
        assertThat(net.suspects(List.of(Span.parse("diagonal@head-left"))))
                .extracting(Suspect::askFor)
                .containsExactly("width@head", "width@foot");
    }

    /** A diagonal shorter than the difference of two sides: the longer side is longer than the way round. */
    @Test
    void aDiagonalTooShort() {
        assertThat(groups(
                        read("width@head", 1500),
                        read("length@right", 2400),
                        read("width@foot", 1500),
                        read("length@left", 2400),
                        read("diagonal@head-left", 700)))
                .containsExactlyInAnyOrder(
                        List.of("diagonal@head-left", "width@head", "length@right"),
                        List.of("diagonal@head-left", "width@foot", "length@left"));
    }

    /** One side longer than the three others together, and no diagonal that shows it sooner. */
    @Test
    void fourSides() {
        List<List<String>> groups = groups(
                read("width@head", 9000),
                read("length@right", 2400),
                read("width@foot", 1500),
                read("length@left", 2400),
                read("check@head-left:600 mm:800 mm", 1000));
        assertThat(groups).containsExactly(List.of("width@head", "length@right", "width@foot", "length@left"));
    }

    /** A cross is tied to its corner by half a side. */
    @Test
    void aCross() {
        assertThat(groups(
                        read("width@head", 1500),
                        read("length@right", 2400),
                        read("width@foot", 1500),
                        read("length@left", 2400),
                        read("cross@head-left:right:1/2", 3000)))
                .containsExactly(List.of("width@head", "length@right", "cross@head-left:right:1/2"));
    }

    /** A corner check longer than its two legs together names itself: the legs are what its name says. */
    @Test
    void aCheckLongerThanItsLegs() {
        List<List<String>> groups = groups(
                read("width@head", 1500),
                read("length@right", 2400),
                read("width@foot", 1500),
                read("length@left", 2400),
                read("check@head-left:600 mm:800 mm", 1600));
        assertThat(groups).hasSize(1);
        assertThat(groups.get(0)).contains("check@head-left:600 mm:800 mm");
        assertThat(groups.get(0)).doesNotContain("width@foot", "length@right");
    }

    @Test
    void aPlaceBeyondItsSide() {
        List<Reading> readings =
                Surveys.join(Surveys.six(1, 1500, 2400, 1500, 2400, D, D), read("width@3000 mm", 1500));
        assertThat(groups(readings.toArray(Reading[]::new)))
                .allMatch(group -> group.contains("width@3000 mm") && group.size() == 2)
                .hasSize(2);
    }

    /** Two values of one place far apart are a group of their own, whatever else there is. */
    @Test
    void twoValuesOfOnePlace() {
        List<List<String>> groups = groups(
                read("width@head", 1500),
                read("length@right", 2400),
                read("width@foot", 1500),
                read("length@left", 2400),
                Surveys.read("diagonal@head-left", 1, 9000, D));
        assertThat(groups).allMatch(group -> group.contains("diagonal@head-left"));
    }

    @Test
    void anAngleThatShutsItsCorner() {
        Instrument square = Instrument.of("square", Instrument.Kind.STATED)
                .withEach(List.of(Doubt.standard(0.001, Dimension.ANGLE)));
        List<Reading> readings = new ArrayList<>(List.of(
                read("width@head", 1500),
                read("length@right", 2400),
                read("width@foot", 1500),
                read("length@left", 2400)));
        readings.add(Reading.of("angle@head-left", square, 3.14159));
        Adjustment net = Surveys.adjust(readings);
        assertThat(net.isAccepted()).isFalse();
        if (net.state() == Adjustment.State.CANNOT_CLOSE) {
            assertThat(net.suspects()).extracting(Suspect::readings).containsExactly(List.of("angle@head-left"));
        }
    }

    /** Readings of a true opening hold no conflict: with each kind, none is found, whatever the shape. */
    @ParameterizedTest
    @CsvSource({"1500, 1500, 2400, 0, 2400", "1500, 1700, 2400, -150, 2300", "300, 2500, 900, -800, 2000"})
    void aTrueOpeningHasNone(double b, double cx, double cy, double dx, double dy) {
        Surveys.Quad quad = Surveys.Quad.level(b, cx, cy, dx, dy);
        List<Reading> readings = new ArrayList<>(quad.six(1));
        for (String at : List.of("1/4", "1/2", "3/4")) {
            double t = At.parse(at).on(1);
            readings.add(read("width@" + at, quad.across(Side.LEFT, t)));
            readings.add(read("length@" + at, quad.across(Side.HEAD, t)));
            readings.add(read("cross@head-left:right:" + at, Surveys.far(quad.a(), quad.on(Side.RIGHT, t))));
        }
        // Nothing stands out by geometry: what is left is the fallback, all whose absence leaves the rest accepted.
        List<List<Integer>> groups = Conflicts.of(Surveys.straight(readings), Plane.FRONT);
        assertThat(groups).hasSize(1);
        assertThat(groups.get(0)).hasSize(readings.size());
    }

    /** A slip so large that no outline comes near: the reading is in the group, whichever it is. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5})
    void theWrongOneIsInEveryGroup(int wrong) {
        double[] size = {1500, 2400, 1500, 2400, D, D};
        size[wrong] *= 10;
        Adjustment net = Surveys.adjust(Surveys.six(1, size));
        assertThat(net.isAccepted()).isFalse();
        assertThat(net.suspects()).isNotEmpty();
        assertThat(net.suspects()).allMatch(suspect -> suspect.readings().contains(Surveys.SIX.get(wrong)));
    }
}
