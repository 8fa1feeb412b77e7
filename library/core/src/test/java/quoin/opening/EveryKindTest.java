package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;

/**
 * Every kind of reading that ties an outline, of one crooked opening with bulging sides whose true distances are computed
 * here from its points. Mark: standard (plane geometry). Depths and falls tie no outline; see OpeningFiguresTest.
 */
class EveryKindTest {
    private static final Surveys.Quad QUAD = Surveys.Quad.level(1503, 1511, 2404, -6, 2397);
    private static final double[] BULGE = {1.5, -1, 0.5, 2}; // head, right, foot, left, at every touched place

    private static double[] on(Side side, double t) {
        double[] p = QUAD.corner(side.from());
        double[] q = QUAD.corner(side.to());
        double length = Surveys.far(p, q);
        double[] middle = {(QUAD.a()[0] + QUAD.c()[0]) / 2, (QUAD.a()[1] + QUAD.c()[1]) / 2};
        double nx = -(q[1] - p[1]) / length;
        double ny = (q[0] - p[0]) / length;
        double[] at = QUAD.on(side, t);
        double in = nx * (middle[0] - at[0]) + ny * (middle[1] - at[1]) > 0 ? 1 : -1;
        double by = in * BULGE[side.ordinal()];
        return new double[] {at[0] + by * nx, at[1] + by * ny};
    }

    private static double length(Side side) {
        return Surveys.far(QUAD.corner(side.from()), QUAD.corner(side.to()));
    }

    private static double read(String of) {
        Span span = Span.parse(of);
        if (span instanceof Span.Edge edge) {
            return length(edge.side());
        }
        if (span instanceof Span.Diagonal diagonal) {
            return Surveys.far(
                    QUAD.corner(diagonal.from()), QUAD.corner(diagonal.from().opposite()));
        }
        if (span instanceof Span.Across across) {
            Side end = across.across() == Side.LEFT ? Side.RIGHT : Side.FOOT;
            double one = across.at().on(length(across.across()));
            double two = across.at().on(length(end));
            return Surveys.far(on(across.across(), one), on(end, two));
        }
        if (span instanceof Span.Cross cross) {
            return Surveys.far(
                    QUAD.corner(cross.from()), on(cross.side(), cross.at().on(length(cross.side()))));
        }
        if (span instanceof Span.Check check) {
            Side width = check.corner().isHead() ? Side.HEAD : Side.FOOT;
            Side length = check.corner().isLeft() ? Side.LEFT : Side.RIGHT;
            double w = check.alongWidth().mm() / length(width);
            double l = check.alongLength().mm() / length(length);
            return Surveys.far(
                    on(width, check.corner().isLeft() ? w : 1 - w),
                    on(length, check.corner().isHead() ? l : 1 - l));
        }
        if (span instanceof Span.Bow bow) {
            return BULGE[bow.side().ordinal()];
        }
        Corner corner = ((Span.Angle) span).corner();
        double[] at = QUAD.corner(corner);
        double[] one = QUAD.corner(corner.next());
        double[] two = QUAD.corner(corner.previous());
        double turn = Math.atan2(one[1] - at[1], one[0] - at[0]) - Math.atan2(two[1] - at[1], two[0] - at[0]);
        return Math.abs(Math.IEEEremainder(turn, 2 * Math.PI));
    }

    private static Reading reading(String of, double by) {
        if (Span.parse(of) instanceof Span.Angle) {
            Instrument square = Instrument.of("square", Instrument.Kind.STATED)
                    .withEach(List.of(Doubt.standard(0.0005, Dimension.ANGLE)));
            return Reading.of(of, square, read(of) + by / 1000);
        }
        return Surveys.read(of, 0.5, read(of) + by);
    }

    /** A bow reading for every side, so that the true bulge is known well. */
    private static List<Reading> all() {
        List<Reading> readings = new ArrayList<>();
        Surveys.SIX.forEach(of -> readings.add(reading(of, 0)));
        for (String more : KINDS) {
            readings.add(reading(more, 0));
        }
        return readings;
    }

    private static final List<String> KINDS = List.of(
            "width@1/3",
            "width@700 mm",
            "length@1/2",
            "length@400 mm",
            "cross@head-left:right:1/2",
            "cross@foot-left:head:300 mm",
            "check@head-right:600 mm:800 mm",
            "check@foot-left:300 mm:400 mm",
            "angle@foot-right",
            "angle@head-left",
            "bow@left:1/3",
            "bow@head:1/2");

    @Test
    void allTogetherCloseExactlyButForThePriors() {
        Adjustment net = Adjustment.of(Survey.finished(all(), 1000), Plane.FRONT);
        assertThat(net.isAccepted()).isTrue();
        // The priors of ± 1 m pull by less than a micrometre.
        for (AdjustedReading reading : net.readings()) {
            assertThat(reading.residual()).as(reading.of()).isCloseTo(0, within(1e-4));
        }
        double[] x = net.values();
        double[] truth = {QUAD.b()[0], QUAD.c()[0], QUAD.c()[1], QUAD.d()[0], QUAD.d()[1]};
        for (int k = 0; k < 5; k++) {
            assertThat(x[k]).isCloseTo(truth[k], within(1e-3));
        }
    }

    /** A slip in any one of them is seen, and its size is told. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "width@1/3",
                "width@700 mm",
                "length@1/2",
                "length@400 mm",
                "cross@head-left:right:1/2",
                "cross@foot-left:head:300 mm",
                "check@head-right:600 mm:800 mm",
                "check@foot-left:300 mm:400 mm",
                "angle@foot-right",
                "angle@head-left",
                "bow@left:1/3",
                "bow@head:1/2"
            })
    void aSlipInAnyKindIsSeen(String of) {
        List<Reading> readings = all();
        readings.set(6 + KINDS.indexOf(of), reading(of, 40));
        Adjustment net = Adjustment.of(Survey.finished(readings, 4), Plane.FRONT);
        assertThat(net.isAccepted()).isFalse();
        AdjustedReading wrong = Surveys.of(net, of);
        double scale = of.startsWith("angle") ? 1e-3 : 1;
        assertThat(wrong.slip()).isCloseTo(40 * scale, within(3 * scale));
        assertThat(net.suspects().get(0).readings()).contains(of);
    }

    /** Read twice it counts twice, and two readings of an entry are told from two entries by nothing but their entry. */
    @Test
    void repeatedReadings() {
        List<Reading> list =
                Surveys.join(all(), Surveys.read("width@head", 0.5, read("width@head"), read("width@head")));
        Adjustment net = Adjustment.of(Survey.finished(list, 4), Plane.FRONT);
        Adjustment once = Adjustment.of(Survey.finished(all(), 4), Plane.FRONT);
        assertThat(net.redundancy()).isEqualTo(once.redundancy() + 2);
        assertThat(net.readings())
                .filteredOn(reading -> reading.of().equals("width@head"))
                .hasSize(3);
    }

    /** A bow that is read where nobody said how straight the sides are: the shape is shown as if they were straight. */
    @Test
    void aBowWithoutAStatedStraightness() {
        List<Reading> readings = Surveys.join(Surveys.six(0.5, QUAD.exact()), Surveys.read("bow@right:1/2", 0.5, 4));
        Adjustment net = Adjustment.of(Survey.finished(readings, Double.NaN), Plane.FRONT);
        assertThat(net.isAccepted()).isTrue();
        assertThat(net.readings()).hasSize(6);
        // Said to be straight, the bow contradicts it.
        Adjustment straight = Adjustment.of(Survey.finished(readings, 0), Plane.FRONT);
        assertThat(straight.isAccepted()).isFalse();
        assertThat(straight.suspects().get(0).readings()).containsExactly("bow@right:1/2");
    }
}
