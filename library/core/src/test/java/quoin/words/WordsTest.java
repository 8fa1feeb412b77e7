package quoin.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.judge.Args;
import quoin.judge.Margin;
import quoin.judge.Problem;
import quoin.judge.Reason;
import quoin.judge.Retake;
import quoin.judge.Verdict;
import quoin.measure.Dimension;

class WordsTest {
    private static final Words WORDS = Words.in(Locale.ENGLISH);

    @Test
    void everyLocaleFallsBackToEnglish() {
        Words other = Words.in(Locale.forLanguageTag("ar-EG-u-nu-arab"));
        assertThat(other.locale()).isEqualTo(Locale.ENGLISH);
        assertThat(other.of(Verdict.PASS)).isEqualTo(WORDS.of(Verdict.PASS));
    }

    /** The phrases are the trade's own; the numbers follow from counting: 0.998 leaves 2 in 1000. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1      | as good as certain: less than 1 in 1000 against",
                "0.998  | as good as certain: 2 in 1000 against",
                "0.9951 | as good as certain: 5 in 1000 against",
                "0.99   | 1 in 100 against",
                "0.95   | 1 in 20 against",
                "0.86   | 1 in 7 against",
                "0.7    | 3 in 10 against",
                "0.55   | little better than a coin",
                "0.45   | worse than a coin",
                "0.3    | only 3 in 10 for it",
                "0.05   | only 1 in 20 for it",
                "0.002  | as good as certain not to: 2 in 1000 for it",
                "0      | as good as certain not to: less than 1 in 1000 for it",
                "NaN    | the odds are not known"
            })
    void oddsAreSaidInPlainWords(double probability, String words) {
        assertThat(WORDS.odds(probability)).isEqualTo(words);
    }

    @Test
    void oddsNeverPromiseMoreThanTheNumber() {
        for (int i = 0; i <= 10000; i++) {
            double against = i / 10000.0;
            String said = WORDS.odds(1 - against);
            if (said.startsWith("1 in ")) {
                double n = Double.parseDouble(said.replaceAll("^1 in (\\d+) against$", "$1"));
                assertThat(1 / n).as(said).isGreaterThanOrEqualTo(against - 1e-9);
            }
        }
    }

    /** Expanded by two (GUM 6.2, coverage factor 2) and rounded up to the half. */
    @Test
    void aMarginIsSaidWithItsExpandedDoubt() {
        assertThat(WORDS.of(new Margin(3.1, 0.7, Dimension.LENGTH, "atLeast")))
                .isEqualTo("3 mm to spare, give or take 1½ mm");
        assertThat(WORDS.of(new Margin(-2.4, 0.2, Dimension.LENGTH, "atMost")))
                .isEqualTo("2½ mm beyond the limit, give or take ½ mm");
        assertThat(WORDS.of(new Margin(0.5, 0, Dimension.LENGTH, "atMost"))).isEqualTo("½ mm to spare");
        assertThat(WORDS.of(new Margin(-0.1, 0, Dimension.LENGTH, "atMost"))).isEqualTo("0 mm to spare");
    }

    /** A difference of temperatures is converted by scale only: 5 K to spare are not 268 below. */
    @Test
    void aMarginOfATemperatureIsADifference() {
        assertThat(WORDS.of(new Margin(5, 0, Dimension.TEMPERATURE, "atMost"))).startsWith("5 ");
    }

    @Test
    void anAngleIsSaidAsAnOffsetNeverInDegrees() {
        assertThat(WORDS.of(new Margin(0.002, 0.0005, Dimension.ANGLE, "atMost")))
                .isEqualTo("2 mm in each metre to spare, give or take 1 mm in each metre");
        assertThat(WORDS.outOver(0.00167, 2400, "foot-right")).isEqualTo("4 mm out over the 2.4 m leg at foot-right");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "width@head | width at the head",
                "length@right | length on the right",
                "width@1/4 | width a quarter of the way down from the head",
                "length@1/3 | length 1/3 of the way in from the left",
                "width@600 mm | width at 600 mm down from the head",
                "diagonal@head-right | diagonal from head-right to foot-left",
                "cross@head-left:right:1/2 | distance from head-left to the right side half way along it",
                "check@foot-left:600 mm:800 mm | corner check at foot-left, 600 mm by 800 mm",
                "angle@head-left | angle at head-left",
                "bow@left:3/4 | bow of the left side three quarters of the way along it",
                "depth@middle | depth in the middle",
                "depth@foot-right | depth at foot-right",
                "fall@head | fall along the head",
                "width@1/2/back | width half way down from the head at the back",
                "headTowards | headTowards"
            })
    void aPlaceIsSaidInWords(String of, String words) {
        assertThat(WORDS.place(of)).isEqualTo(words);
    }

    @Test
    void aRetakeNamesPlaceInstrumentTimesAndDoubt() {
        assertThat(WORDS.of(new Retake(List.of("diagonal@head-left"), "tape", 2, 0.4, 0.812)))
                .isEqualTo("diagonal from head-left to foot-right, with the tape, 2 times afresh, good to 0.8 mm:"
                        + " 81 in 100 that this settles it");
        assertThat(WORDS.of(new Retake(List.of("width@head"), "", 1, Double.NaN, Double.NaN)))
                .isEqualTo("width at the head");
    }

    @Test
    void aSlipThatWouldNotHaveShownIsSaid() {
        assertThat(WORDS.unseen("width@head", 7.2))
                .isEqualTo(
                        "had the width at the head been misread by less than 8 mm, nothing here would have shown it");
        assertThat(WORDS.unseen("width@head", Double.POSITIVE_INFINITY)).contains("by any amount");
        assertThat(WORDS.slip(7.2)).isEqualTo("8 mm");
        assertThat(WORDS.slip(Double.POSITIVE_INFINITY)).isEqualTo("any amount");
        assertThat(WORDS.with(LengthStyle.INCHES).slip(7.2)).isEqualTo("5/16 in");
        // 0.004 rad is 4.00002 mm in a metre.
        assertThat(WORDS.unseenEffect(2.1, 3.9, 0.004))
                .isEqualTo(
                        "unnoticed, such a slip moves the width by up to 3 mm, the length by up to 4 mm, and a corner"
                                + " by up to 5 mm in each metre");
    }

    /** 1 in = 25.4 mm (international yard and pound agreement of 1959, from memory); rounded as in millimetres. */
    @Test
    void smallLengthsAreSaidInInchesWhereTheJobIs() {
        Words inches = WORDS.with(LengthStyle.INCHES);
        assertThat(inches.of(new Margin(3.1, 0.7, Dimension.LENGTH, "atLeast")))
                .isEqualTo("1/8 in to spare, give or take 1/16 in");
        assertThat(inches.of(new Margin(-3.1, 0.81, Dimension.LENGTH, "atLeast")))
                .isEqualTo("1/8 in beyond the limit, give or take 1/8 in");
        assertThat(inches.of(new Margin(-0.7, 0, Dimension.LENGTH, "atLeast"))).isEqualTo("0 in to spare");
        assertThat(inches.of(new Margin(0.002, 0.0005, Dimension.ANGLE, "atMost")))
                .isEqualTo("2 mm in each metre to spare, give or take 1 mm in each metre");
        assertThat(inches.of(new Retake(List.of("width@head"), "", 1, 0.4, Double.NaN)))
                .isEqualTo("width at the head, good to 1/32 in");
        assertThat(inches.of(new Retake(List.of("width@head"), "", 1, 0.1, Double.NaN)))
                .isEqualTo("width at the head, good to 0.2 mm");
        assertThat(inches.unseen("width@head", 7.2)).contains("less than 5/16 in");
        assertThat(inches.giveOrTake(0.7)).isEqualTo("1/16 in");
        assertThat(inches.outOver(0.00167, 2400, "foot-right")).startsWith("3/16 in out over the ");
    }

    @Test
    void aProblemIsOneLineWithItsPlace() {
        Problem problem = Problem.error("unknown-field", "/opening/fitt", Args.of("field", "fitt"))
                .at(3, 7);
        assertThat(WORDS.line("job.json", problem))
                .startsWith("job.json:3:7: ")
                .doesNotContain("\n")
                .contains("fitt");
    }

    @Test
    void aCodeWithoutASentenceIsShownAsItIs() {
        assertThat(WORDS.text("step.no-such-code", Args.of("a", 1))).isEqualTo("step.no-such-code {a=1.0}");
    }

    @Test
    void everyReasonAndVerdictHasWords() {
        for (Reason reason : Reason.values()) {
            assertThat(WORDS.has("reason." + reason.text())).as(reason.text()).isTrue();
        }
        for (Verdict verdict : Verdict.values()) {
            assertThat(WORDS.has("verdict." + verdict.text()))
                    .as(verdict.text())
                    .isTrue();
        }
    }

    @Test
    void noSentenceHasAnOpenBracketOrATrailingSpace() {
        for (String key : WORDS.keys()) {
            String pattern = WORDS.text(key, Args.NONE);
            assertThat(pattern)
                    .as(key)
                    .isEqualTo(pattern.strip())
                    .doesNotContain("{")
                    .doesNotContain("[");
        }
    }

    @Test
    void keysAreSorted() {
        assertThat(WORDS.keys().stream().collect(Collectors.toList())).isSorted();
    }
}
