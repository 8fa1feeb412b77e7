package quoin.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.fixing.SetOut.Blocked;
import quoin.fixing.SetOut.Holes;
import quoin.fixing.Spacing.Ends;
import quoin.fixing.Spacing.Pitch;
import quoin.fixing.Spacing.Stretch;

class SpacingTest {
    private static Spacing spacing(double length, double end, double least, double most) {
        return Spacing.of(length, new Ends(end, end, end), new Pitch(least, most), 1);
    }

    private static Holes holes(Spacing spacing) {
        return (Holes) spacing.setOut();
    }

    /**
     * Equal pitch between fixed ends, worked outside this project: n = ceil((L - 2e) / s) + 1. An exact multiple must not
     * become one more. Rounded to whole millimetres, so that pitches differ by 1 mm at most.
     */
    @ParameterizedTest
    @CsvSource({
        "2385, 100, 400, 7, 365",
        "1200, 75, 400, 4, 350",
        "2000, 100, 600, 4, 600",
        "900, 100, 350, 3, 350",
        "350, 50, 400, 2, 250"
    })
    void equalPitch(double length, double end, double most, int count, double greatest) {
        Holes holes = holes(spacing(length, end, 60, most));
        assertThat(holes.atMm()).hasSize(count).startsWith(end).endsWith(length - end);
        assertThat(holes.greatestPitchMm()).isEqualTo(greatest);
        assertThat(holes.farthestMm()).hasSize(count - 1);
    }

    /** 2385 - 200 = 2185 = 6 · 364 + 1: no row of whole millimetres is its own mirror image. */
    @Test
    void aRowIsSymmetricWhereItCanBe() {
        assertThat(holes(spacing(2385, 100, 60, 400)).symmetric()).isFalse();
        Holes holes = holes(spacing(2384, 100, 60, 400));
        assertThat(holes.symmetric()).isTrue();
        assertThat(holes.atMm()).containsExactly(100.0, 464.0, 828.0, 1192.0, 1556.0, 1920.0, 2284.0);
    }

    /** The farthest place first takes 5 and is stuck; 0, 4, 8 is the answer. */
    @Test
    void theFarthestFirstIsNotAlwaysRight() {
        Spacing spacing =
                spacing(8, 0, 4, 5).withBarred(List.of(new Stretch(1, 3, "joint"), new Stretch(6, 7, "cable")));
        assertThat(holes(spacing).atMm()).containsExactly(0.0, 4.0, 8.0);
    }

    /**
     * Largest least distance of n points on a line with one open stretch barred, published as examples of a programming
     * question (answers from there). Ends free; the greatest pitch as long as the line.
     */
    @ParameterizedTest
    @CsvSource({
        "7, 2, 6, 7, 7",
        "5, 3, 5, 5, 2.5",
        "9, 10, 5, 6, 1",
        "6, 2, 1, 6, 6",
        "5, 3, 4, 5, 2.5",
        "3, 3, 0, 1, 1.5"
    })
    void largestLeastDistance(double length, int count, double from, double to, double distance) {
        Zones allowed = Zones.of(0, (int) (2 * length)).without(2 * from, 2 * to);
        Zones all = Zones.of(0, (int) (2 * length));
        Chain chain = new Chain(allowed, all, all);
        assertThat(chain.greatestLeast(count, 1, (int) (2 * length)) / 2.0).isEqualTo(distance);
    }

    /** Common practice, no source: first hole about 100 mm from the end, 50 to 150 mm. */
    @Test
    void endsLieAtTheirAimWhereTheyCan() {
        Spacing spacing = Spacing.of(2391, new Ends(100, 50, 150), new Pitch(60, 400), 1);
        assertThat(holes(spacing).atMm()).hasSize(7).startsWith(100.0).endsWith(2291.0);
        Spacing joint = spacing.withBarred(List.of(new Stretch(90, 108, "joint")));
        assertThat(holes(joint).atMm()).startsWith(108.0);
        assertThat(holes(joint.withMarginMm(5)).atMm()).startsWith(113.0);
        assertThat(holes(spacing.withBarred(List.of(new Stretch(95, 130, "joint"))))
                        .atMm())
                .startsWith(95.0);
    }

    /** A longer frame needs one more, or ends farther from the aim: the fewest holes come first. */
    @Test
    void fewestHolesComeBeforeTheAim() {
        Spacing spacing = Spacing.of(2650, new Ends(100, 50, 150), new Pitch(60, 400), 1);
        assertThat(holes(spacing).atMm()).hasSize(7).startsWith(125.0).endsWith(2525.0);
        assertThat(holes(spacing).greatestPitchMm()).isEqualTo(400);
    }

    @Test
    void holesFindTimber() {
        Spacing spacing = Spacing.of(1200, new Ends(100, 50, 150), new Pitch(60, 600), 1)
                .withTimbers(List.of(
                        new Stretch(80, 127, "stud"), new Stretch(480, 527, "stud"), new Stretch(1080, 1127, "stud")))
                .withMarginMm(8);
        Holes holes = holes(spacing);
        assertThat(holes.atMm()).hasSize(3);
        assertThat(holes.atMm().get(1)).isBetween(488.0, 519.0);
        SetOut none = spacing.withTimbers(List.of(new Stretch(80, 127, "stud"), new Stretch(1080, 1127, "stud")))
                .setOut();
        assertThat(none).isInstanceOf(Blocked.class);
        assertThat(((Blocked) none).because()).containsExactly("timbers");
    }

    @Test
    void whatMustBeUsedIsUsed() {
        Spacing spacing = Spacing.of(1200, new Ends(100, 50, 150), new Pitch(60, 400), 1);
        assertThat(holes(spacing).atMm()).hasSize(4);
        Holes bracket = holes(spacing.withUsed(List.of(300.0)));
        assertThat(bracket.atMm()).contains(300.0).startsWith(100.0).endsWith(1100.0);
        assertThat(bracket.greatestPitchMm()).isLessThanOrEqualTo(400);
        assertThat(holes(spacing.withUsed(List.of(60.0, 1140.0))).atMm())
                .startsWith(60.0)
                .endsWith(1140.0);
        assertThat(spacing.withUsed(List.of(60.0, 100.0)).setOut()).isInstanceOf(Blocked.class);
    }

    @Test
    void whatBlocksIsNamed() {
        Spacing spacing = Spacing.of(1200, new Ends(100, 50, 150), new Pitch(60, 400), 1);
        Blocked end =
                (Blocked) spacing.withBarred(List.of(new Stretch(0, 160, "joint"), new Stretch(700, 710, "old hole")))
                        .setOut();
        assertThat(end).isEqualTo(new Blocked(50, 150, List.of("joint")));
        Blocked far = (Blocked)
                spacing.withBarred(List.of(new Stretch(1040, 1160, "hinge"))).setOut();
        assertThat(far).isEqualTo(new Blocked(1050, 1150, List.of("hinge")));
        Blocked middle = (Blocked) spacing.withBarred(List.of(new Stretch(200, 1000, "glass edge")))
                .setOut();
        assertThat(middle.because()).containsExactly("glass edge");
        Blocked pitch = (Blocked) Spacing.of(1200, new Ends(100, 50, 150), new Pitch(60.2, 60.8), 1)
                .setOut();
        assertThat(pitch.because()).isEmpty();
    }

    /** The very edge is allowed, a stretch of no length bars nothing, with a margin it does. */
    @Test
    void edgesOfWhatIsBarred() {
        Spacing spacing = spacing(200, 100, 60, 400).withUsed(List.of());
        assertThat(Spacing.of(300, new Ends(100, 100, 100), new Pitch(60, 400), 1)
                        .withBarred(List.of(new Stretch(100, 150, "a"), new Stretch(100, 100, "b")))
                        .setOut())
                .isInstanceOf(Holes.class);
        assertThat(Spacing.of(300, new Ends(100, 100, 100), new Pitch(60, 400), 1)
                        .withBarred(List.of(new Stretch(100, 100, "b")))
                        .withMarginMm(0.5)
                        .setOut())
                .isInstanceOf(Blocked.class);
        assertThat(spacing.setOut()).as("one hole is no fixing").isInstanceOf(Blocked.class);
    }

    /** 0.1 mm is no double; 1000.1 mm is a whole number of such steps all the same. */
    @Test
    void decimalStepsAreWholeSteps() {
        Holes holes = holes(Spacing.of(1000.1, new Ends(100, 100, 100), new Pitch(60, 400.1), 0.1));
        assertThat(holes.atMm()).hasSize(3);
    }

    @Test
    void whatIsNoRuleIsRefused() {
        assertThatThrownBy(() -> new Ends(100, 150, 50))
                .hasMessage("ends must have 0 <= atLeast <= aim <= atMost, got 150.0 mm, 100.0 mm and 50.0 mm");
        assertThatThrownBy(() -> new Pitch(0, 50))
                .hasMessage("pitch must have 0 < atLeast <= atMost, got 0.0 mm and 50.0 mm");
        assertThatThrownBy(() -> new Stretch(Double.NaN, 5, ""))
                .hasMessage("stretch must run from not after to, got NaN mm and 5.0 mm");
        assertThatThrownBy(() -> spacing(0, 1, 1, 1)).hasMessage("length must be above 0 mm and finite, got 0.0 mm");
        assertThatThrownBy(() -> Spacing.of(100, new Ends(1, 1, 1), new Pitch(1, 1), 1e-6))
                .hasMessage("mark must be above 0 mm and at least a millionth of the length, got 1.0E-6 mm");
        assertThatThrownBy(() -> spacing(100, 1, 1, 1).withUsed(List.of(10.5)))
                .hasMessage("places to use must be whole steps of 1.0 mm on a side of 100.0 mm, got 10.5 mm");
        assertThatThrownBy(() -> spacing(100, 1, 1, 1).withMarginMm(-1))
                .hasMessage("margin must be 0 mm or more and finite, got -1.0 mm");
    }
}
