package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.measure.Estimate;
import quoin.measure.Uncertain;

/** The plane at the back of the recess. */
class BackPlaneTest {
    private static final double D = Math.hypot(1500, 2400);

    private static Opening with(double straight, Reading... back) {
        return Opening.of(
                Survey.finished(Surveys.join(Surveys.six(0.3, 1500, 2400, 1500, 2400, D, D), back), straight));
    }

    private static boolean accepted(Opening opening) {
        return opening.planes().stream().allMatch(PlaneTest::isAccepted);
    }

    @Test
    void withoutReadingsThereIsNone() {
        Opening opening = with(4);
        assertThat(opening.back()).isEmpty();
        assertThat(accepted(opening)).isTrue();
        assertThat(opening.unusedBehind()).isEmpty();
        assertThat(OpeningFigures.survey(opening, Side.HEAD)).doesNotContainKey("opening.splay.left");
    }

    @Test
    void aNarrowerBackGivesSplayAndASmallerFit() {
        Opening opening = with(4, Surveys.behind("width@1/2", 0.3, 1496));
        assertThat(accepted(opening)).isTrue();
        Map<String, Estimate> figures = OpeningFigures.survey(opening, Side.HEAD);
        double left = figures.get("opening.splay.left").value();
        double right = figures.get("opening.splay.right").value();
        // Half of 4 mm each, pulled a little by the prior (u 4/√3 against 0.3 and the front's own)
        assertThat(left).isCloseTo(2, within(0.1));
        assertThat(right).isCloseTo(left, within(1e-6));
        assertThat(figures.get("fit.width").value()).isCloseTo(1496, within(0.2));
        assertThat(figures.get("opening.width.least").value()).isCloseTo(1496, within(0.2));
        assertThat(Fit.largest(with(4)).orElseThrow().width().value()).isCloseTo(1500, within(1e-5));
    }

    @Test
    void aWiderBackDoesNotHelp() {
        Opening opening = with(4, Surveys.behind("width@1/2", 0.3, 1504));
        Map<String, Estimate> figures = OpeningFigures.survey(opening, Side.HEAD);
        assertThat(figures.get("opening.splay.left").value()).isCloseTo(-2, within(0.1));
        assertThat(figures.get("fit.width").value()).isCloseTo(1500, within(1e-5));
    }

    @Test
    void lengthsBehind() {
        Opening opening = with(
                4,
                Surveys.behind("length@left", 0.3, 2397),
                Surveys.behind("length@1/2", 0.3, 2397),
                Surveys.behind("length@right", 0.3, 2397),
                Surveys.behind("width@600 mm", 0.3, 1500));
        Map<String, Estimate> figures = OpeningFigures.survey(opening, Side.HEAD);
        assertThat(figures.get("opening.splay.head").value()).isCloseTo(1.5, within(0.1));
        assertThat(figures.get("opening.splay.foot").value()).isCloseTo(1.5, within(0.1));
        assertThat(figures.get("fit.length").value()).isCloseTo(2397, within(0.2));
        assertThat(figures.get("fit.width").value()).isCloseTo(1500, within(0.2));
    }

    @Test
    void tooMuchLean() {
        assertThat(accepted(with(1, Surveys.behind("width@1/2", 0.3, 1498)))).isTrue();
        assertThat(accepted(with(1, Surveys.behind("width@1/2", 0.3, 1480)))).isFalse();
        assertThat(accepted(with(Double.NaN, Surveys.behind("width@1/2", 0.3, 1490))))
                .isFalse();
    }

    @Test
    void readingsThatDoNotHelpAreNamed() {
        Opening opening = with(
                4,
                Surveys.behind("diagonal@head-left", 0.3, D),
                Surveys.behind("width@1/2", 0.3, 1499),
                Surveys.behind("depth@middle", 0.3, 100));
        assertThat(opening.unusedBehind()).containsExactly("diagonal@head-left/back");
    }

    @Test
    void aBackOfItsOwn() {
        List<Reading> back = new ArrayList<>();
        double d = Math.hypot(1490, 2390);
        double[] size = {1490, 2390, 1490, 2390, d, d};
        for (int i = 0; i < 6; i++) {
            back.add(Surveys.behind(Surveys.SIX.get(i), 0.3, size[i]));
        }
        Opening opening = with(Double.NaN, back.toArray(Reading[]::new));
        assertThat(accepted(opening)).isTrue();
        Map<String, Estimate> figures = OpeningFigures.survey(opening, Side.HEAD);
        for (Side side : Side.values()) {
            assertThat(figures.get("opening.splay." + side.text()).value()).isCloseTo(5, within(1e-6));
        }
        assertThat(figures.get("fit.width").value()).isCloseTo(1490, within(1e-5));
        assertThat(figures.get("fit.length").value()).isCloseTo(2390, within(1e-5));
        Gaps gaps =
                Gaps.of(opening, Uncertain.exact(1484), Uncertain.exact(2384)).orElseThrow();
        assertThat(Gaps.least(gaps).value()).isCloseTo(3, within(1e-6));
        assertThat(Gaps.least(gaps).governing().names()).allMatch(name -> name.endsWith("/back"));
        // What shows in the room is the front.
        assertThat(Gaps.greatest(gaps).value()).isCloseTo(8, within(1e-6));
        assertThat(Gaps.single(gaps).keySet()).noneMatch(name -> name.endsWith("/back"));
    }

    /** A back of its own with a misread diagonal is not accepted. */
    @Test
    void aBackThatDoesNotAgree() {
        List<Reading> back = new ArrayList<>();
        double[] size = {1490, 2390, 1490, 2390, 2816, 2860};
        for (int i = 0; i < 6; i++) {
            back.add(Surveys.behind(Surveys.SIX.get(i), 0.3, size[i]));
        }
        assertThat(accepted(with(Double.NaN, back.toArray(Reading[]::new)))).isFalse();
    }
}
