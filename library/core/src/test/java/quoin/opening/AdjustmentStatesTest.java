package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;
import quoin.measure.Uncertain;

/** What is answered where readings are too few, cannot be, or are out of all proportion. */
class AdjustmentStatesTest {
    private static final double D = Math.hypot(1500, 2400);

    private static List<Reading> sides() {
        return List.of(
                Surveys.read("width@head", 1, 1500),
                Surveys.read("width@foot", 1, 1500),
                Surveys.read("length@left", 1, 2400),
                Surveys.read("length@right", 1, 2400));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, 2})
    void withoutADiagonalItIsNotDetermined(double straight) {
        Adjustment net = Adjustment.of(Survey.finished(sides(), straight), Plane.FRONT);
        assertThat(net.state()).isEqualTo(Adjustment.State.NOT_DETERMINED);
        assertThat(net.missing()).extracting(Span::text).contains("diagonal@head-left");
        assertThat(net.missing()).extracting(Span::text).noneMatch(of -> of.contains("width") || of.contains("length"));
        assertThat(net.isSolved()).isFalse();
        assertThat(net.isAccepted()).isFalse();
        assertThat(net.suspects()).isEmpty();
        assertThat(net.readings()).isEmpty();
        assertThat(net.redundancy()).isZero();
        assertThat(net.statistic()).isNaN();
        assertThat(net.critical()).isInfinite();
    }

    @Test
    void widthsAndLengthsInTheMiddleDoNotReplaceADiagonal() {
        List<Reading> readings =
                Surveys.join(sides(), Surveys.read("width@1/2", 1, 1500), Surveys.read("length@1/2", 1, 2400));
        Adjustment net = Adjustment.of(Survey.finished(readings, 2), Plane.FRONT);
        assertThat(net.state()).isEqualTo(Adjustment.State.NOT_DETERMINED);
        assertThat(net.missing()).extracting(Span::text).contains("diagonal@head-left");
    }

    @ParameterizedTest
    @ValueSource(strings = {"check@head-left:600 mm:800 mm", "cross@head-left:right:1/2"})
    void acrossTheCornerReplacesADiagonal(String of) {
        double far = of.startsWith("check") ? 1000 : Math.hypot(1500, 1200);
        Adjustment net = Surveys.adjust(Surveys.join(sides(), Surveys.read(of, 1, far)));
        assertThat(net.isSolved()).isTrue();
        assertThat(net.values()[1]).isCloseTo(1500, within(1e-6));
    }

    @Test
    void anAngleReplacesADiagonal() {
        Instrument square = Instrument.of("square", Instrument.Kind.STATED)
                .withEach(List.of(Doubt.standard(0.001, Dimension.ANGLE)));
        Adjustment net = Surveys.adjust(Surveys.join(sides(), Reading.of("angle@foot-right", square, Math.PI / 2)));
        assertThat(net.isSolved()).isTrue();
        assertThat(net.values()[2]).isCloseTo(2400, within(1e-6));
        assertThat(net.values()[3]).isCloseTo(0, within(1e-6));
    }

    @Test
    void nothingReadIsNotDetermined() {
        Adjustment net = Surveys.adjust(List.of());
        assertThat(net.state()).isEqualTo(Adjustment.State.NOT_DETERMINED);
        assertThat(net.missing()).hasSize(5);
        Opening opening = Opening.of(Surveys.straight(List.of(Surveys.read("depth@middle", 1, 100))));
        assertThat(opening.hasShape()).isFalse();
        assertThat(opening.adjustment().missing()).hasSize(5);
        assertThat(OpeningFigures.survey(opening, Side.HEAD)).containsOnlyKeys("opening.depth.least");
    }

    /** A diagonal longer than two sides together, without another reading that could be blamed. */
    @ParameterizedTest
    @ValueSource(doubles = {4500, 9000, 700, 100})
    void sidesThatCannotClose(double diagonal) {
        Adjustment net = Surveys.adjust(Surveys.join(sides(), Surveys.read("diagonal@head-left", 1, diagonal)));
        assertThat(net.state()).isEqualTo(Adjustment.State.CANNOT_CLOSE);
        assertThat(net.missing()).isEmpty();
        assertThat(net.isAccepted()).isFalse();
        assertThat(Opening.of(Surveys.straight(Surveys.join(sides(), Surveys.read("diagonal@head-left", 1, diagonal))))
                        .hasShape())
                .isFalse();
    }

    /** From a sliver of a millimetre to fifty metres: solved, and square. */
    @ParameterizedTest
    @CsvSource({"1, 1", "1, 2400", "2400, 1", "50000, 50000", "50000, 1", "100, 50000"})
    void everySizeIsAnswered(double w, double l) {
        double d = Math.hypot(w, l);
        Opening opening = Opening.of(Survey.finished(Surveys.six(0.01, w, l, w, l, d, d), 0.01));
        assertThat(opening.adjustment().isAccepted()).isTrue();
        Fit.Rectangle fit = Fit.largest(opening).orElseThrow();
        assertThat(fit.width().value()).isCloseTo(w, within(1e-5));
        assertThat(fit.length().value()).isCloseTo(l, within(1e-5));
        assertThat(OpeningFigures.survey(opening, Side.HEAD)).containsKeys("fit.width", "opening.square.worst");
        Gaps gaps =
                Gaps.of(opening, Uncertain.exact(w / 2), Uncertain.exact(l / 2)).orElseThrow();
        assertThat(Gaps.least(gaps).value()).isCloseTo(Math.min(w, l) / 4, within(1e-5));
    }

    /** A side of a millimetre in a big opening: whatever the state, there is an answer. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-9, 0.001, 1, 1e5, 1e9})
    void aSideOutOfAllProportion(double head) {
        for (double straight : new double[] {Double.NaN, 2}) {
            List<Reading> readings = Surveys.six(1, head, 2400, 1500, 2400, D, D);
            Opening opening = Opening.of(Survey.finished(readings, straight));
            Adjustment net = opening.adjustment();
            assertThat(net.isAccepted()).isFalse();
            assertThat(OpeningFigures.survey(opening, Side.HEAD)).containsKey("fit.rule.width");
            if (opening.hasShape()) {
                assertThat(net.suspects()).isNotEmpty();
            }
        }
    }

    /** A reading of a far better instrument on a crooked side must not look like a missing one. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-3, 1e-5, 1e-7, 0})
    void aMuchBetterReadingDoesNotHideTheRest(double u) {
        for (String better : Surveys.SIX) {
            Surveys.Quad quad = Surveys.Quad.level(1500, 1700, 2400, -150, 2300);
            List<Reading> readings = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                String of = Surveys.SIX.get(i);
                readings.add(Surveys.read(of, of.equals(better) ? u : 1, quad.exact()[i]));
            }
            Adjustment net = Surveys.adjust(readings);
            assertThat(net.isSolved()).as(better).isTrue();
            assertThat(net.values()).containsExactly(new double[] {1500, 1700, 2400, -150, 2300}, within(1e-5));
        }
    }

    /** An instrument that states no doubt: an outline is still found. */
    @Test
    void noDoubtAtAll() {
        Instrument bare = Instrument.of("bare", Instrument.Kind.STATED);
        List<Reading> readings = new ArrayList<>();
        double[] size = {1500, 2400, 1500, 2400, D, D};
        for (int i = 0; i < 6; i++) {
            readings.add(Reading.of(Surveys.SIX.get(i), bare, size[i]));
        }
        Adjustment net = Surveys.adjust(readings);
        assertThat(net.isAccepted()).isTrue();
        assertThat(net.values()[0]).isCloseTo(1500, within(1e-9));
    }

    @Test
    void oneRedundancyNamesNoSingleReading() {
        for (int wrong = 0; wrong < 6; wrong++) {
            double[] size = {1500, 2400, 1500, 2400, D, D};
            size[wrong] += 100;
            Adjustment net = Surveys.adjust(Surveys.six(1, size));
            assertThat(net.redundancy()).isOne();
            assertThat(net.isAccepted()).isFalse();
            assertThat(net.suspects()).allMatch(suspect -> suspect.readings().size() > 1);
            assertThat(net.suspects()).hasSize(1);
        }
    }

    /** The same with sides that may bulge, and with a repeated reading that spends the one redundancy. */
    @Test
    void oneRedundancyNamesNoSingleReadingWithBulgingSides() {
        for (int wrong = 0; wrong < 6; wrong++) {
            double[] size = {1500, 2400, 1500, 2400, D, D};
            size[wrong] += 100;
            Adjustment net = Adjustment.of(Survey.finished(Surveys.six(1, size), 2), Plane.FRONT);
            assertThat(net.redundancy()).isOne();
            assertThat(net.suspects())
                    .isNotEmpty()
                    .allMatch(suspect -> suspect.readings().size() > 1);
        }
        Adjustment twice = Surveys.adjust(Surveys.join(
                sides(),
                Surveys.read("diagonal@head-left", 1, D),
                new Reading(
                        "again",
                        Span.parse("diagonal@head-left"),
                        Plane.FRONT,
                        List.of(D + 50),
                        Surveys.fresh("u1.0", 1))));
        assertThat(twice.redundancy()).isOne();
        assertThat(twice.suspects()).hasSize(1);
        assertThat(twice.suspects().get(0).readings()).containsExactlyInAnyOrder("again", "diagonal@head-left");
    }

    @Test
    void badArguments() {
        assertThatThrownBy(() -> Survey.finished(List.of(), -1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("straightWithin must be 0 mm or more, got -1.0 mm");
        assertThatThrownBy(() -> Survey.finished(List.of(), Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Surveys.read("width@head", 1, Double.NaN))
                .hasMessage("read must be a finite number, got NaN for width@head");
        assertThatThrownBy(() -> Surveys.read("width@head", 1))
                .hasMessage("read must have 1 value or more, got none for width@head");
        assertThatThrownBy(() -> new KeepOut(Side.HEAD, 2, 1, "x"))
                .hasMessage("keep-out must start before it ends, got 2.0 mm to 1.0 mm");
        assertThatThrownBy(() -> new Finish.Still(-1, Doubt.standard(1, Dimension.LENGTH)))
                .hasMessage("still must be 0 mm or more and below 1000 mm, got -1.0 mm");
    }
}
