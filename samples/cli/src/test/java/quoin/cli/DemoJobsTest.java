package quoin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DemoJobsTest {
    @ParameterizedTest
    @CsvSource({
        "reading-room.json, 0, ORDER, SURVEY COMPLETE: you may come down",
        "reading-room-skew.json, 20, DO NOT ORDER, SURVEY COMPLETE: you may come down",
        "reading-room-misread.json, 10, MEASURE AGAIN, STAY UP: one more reading",
        "reading-room-inches.json, 10, NOT YET, STAY UP: one more reading",
        "reading-room-fixed.json, 10, NOT YET, SURVEY COMPLETE: you may come down"
    })
    void eachDemoHasItsHeadlineAndItsExitCode(String job, int code, String headline, String survey) {
        Run run = Run.of("assess", Run.demo(job));
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isEqualTo(code);
        List<String> lines = run.out().lines().toList();
        assertThat(lines.get(1)).startsWith(headline + "  ");
        assertThat(lines.get(2)).isEqualTo(survey);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "reading-room.json",
                "reading-room-skew.json",
                "reading-room-misread.json",
                "reading-room-inches.json",
                "reading-room-fixed.json"
            })
    void noLineOfASheetIsLongerThanEightyColumns(String job) {
        assertThat(Run.of("assess", Run.demo(job)).out().lines())
                .allSatisfy(line ->
                        assertThat(line.codePointCount(0, line.length())).isLessThanOrEqualTo(80))
                .allSatisfy(line -> assertThat(line).isEqualTo(line.stripTrailing()));
    }

    @ParameterizedTest
    @CsvSource({
        "reading-room.json, pass, 0",
        "reading-room-skew.json, fail, 20",
        "reading-room-misread.json, undecided, 10",
        "reading-room-inches.json, undecided, 10",
        "reading-room-fixed.json, undecided, 10"
    })
    void eachDemoAnswersInTheFormat(String job, String verdict, int code) {
        Run run = Run.of("assess", Run.demo(job), "--json");
        assertThat(run.code()).isEqualTo(code);
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .startsWith("{\"format\":\"quoin-assessment/1\",")
                .endsWith("}\n")
                .contains("\"verdict\":\"" + verdict + "\"");
        assertThat(run.out().lines()).hasSize(1);
    }

    @Test
    void theSheetSaysAllThatAFitterAndAnOfficeNeed() {
        String sheet = Run.of("assess", Run.demo("reading-room.json")).out();
        assertThat(sheet)
                .contains("WHERE YOU STAND", "facing the head", "towards the ridge")
                .contains("THE OPENING AS MEASURED", "head 1503", "Diagonals:")
                .contains("MADE SIZES: nothing more is taken off", "frame width       1495 mm")
                .contains("CHECKS", "goes-in", "to spare, give or take", "against")
                .contains("WHAT NOTHING HERE WOULD HAVE SHOWN", "misread by less than")
                .contains("Nor, of the others, less than:", "- 4 mm: diagonal from head-right to foot-left")
                .contains("Unnoticed, such a slip moves the width by up to 3 mm")
                .contains("A bent hook or a tape of a wrong scale shows in no set of distances")
                .contains("TAKE CARE", "Never lean or stand on glazing")
                .contains("NOT CHECKED, BECAUSE NOBODY ASKED")
                .doesNotContain("standard uncertainty");
    }

    /** By the least reading each way the order would be 1494 mm wide, 1.9 mm more than the rectangle that goes in: half lacks. */
    @Test
    void theSkewedOpeningShowsWhatTheLeastReadingWouldDo() {
        String sheet = Run.of("assess", Run.demo("reading-room-skew.json")).out();
        assertThat(sheet.replaceAll("\\s+", " "))
                .contains(
                        "A frame by that rule, 1494 mm by 2394 mm, jams: placed as well as can be it lacks 0.9 mm (gap")
                .contains("SIZES SO FAR: not to be cut");
        Run forced = Run.of("assess", Run.demo("reading-room-skew.json"), "--json");
        assertThat(forced.out()).contains("\"fit.rule.width\":{\"value\":1500,");
    }

    /** Both diagonals enter every width and length alike: only a diagonal again tells which of the two it is. */
    @Test
    void theMisreadIsNarrowedToTwoAndOneMoreReadingIsAskedFor() {
        String sheet = Run.of("assess", Run.demo("reading-room-misread.json")).out();
        assertThat(sheet)
                .contains("THE READINGS DO NOT AGREE")
                .contains("no telling which of these:")
                .contains("diagonal from head-right to foot-left: read 10 mm too long")
                .contains("diagonal from head-left to foot-right: read 10 mm too long")
                .contains("whole 10 mm, so 2832.0 mm")
                .contains("Next: diagonal from head-right to foot-left, with the tape");
    }

    /** What is asked for is read again, differs, and the one is named; written down right, the job passes. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "\"diagonal@head-right\", \"read\": 2842; \"diagonal@head-right\", \"read\": [2842, 2832]",
                "\"diagonal@head-left\", \"read\": 2833; \"diagonal@head-left\", \"read\": [2833, 2832]"
            })
    void theReadingThatWasAskedForSettlesIt(String old, String again, @TempDir Path folder) throws IOException {
        String job = Files.readString(Run.DEMO.resolve("reading-room-misread.json"));
        String supplied = assess(folder, job.replace(old, again)).out();
        assertThat(supplied)
                .contains("Most out of line:")
                .doesNotContain("no telling which of these")
                .contains("diagonal from head-right to foot-left: read 10 mm too long; it looks like a")
                .doesNotContain("diagonal from head-left to foot-right: read");
        Run settled = assess(folder, job.replace("\"read\": 2842", "\"read\": 2832"));
        assertThat(settled.out()).doesNotContain("DO NOT AGREE").contains("SURVEY COMPLETE");
        assertThat(settled.code()).isZero();
    }

    private static Run assess(Path folder, String job) throws IOException {
        Path file = folder.resolve("job.json");
        Files.writeString(file, job);
        return Run.of(
                "assess",
                file.toString(),
                "--rulebook",
                Run.demo("heron-frame.json"),
                "--parts",
                Run.demo("heron-parts.json"));
    }

    /** Readings that disagree are no question of odds: nobody may come down. */
    @Test
    void whereReadingsDisagreeNobodyIsToldToComeDown() {
        assertThat(Run.of("assess", Run.demo("reading-room-misread.json")).out())
                .contains("STAY UP")
                .doesNotContain("need not stay up");
    }

    /** 9 m across an opening of 1.5 by 2.4 m: the triangles are named, and nobody may come down. */
    @Test
    void readingsThatCannotCloseNameTheirTriangles(@TempDir Path folder) throws IOException {
        String job = Files.readString(Run.DEMO.resolve("reading-room.json"));
        assertThat(job).contains("[2832, 2833]");
        Run run = assess(folder, job.replace("[2832, 2833]", "9000"));
        assertThat(run.code()).isEqualTo(10);
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("MEASURE AGAIN", "STAY UP: one more reading", "THE READINGS CANNOT CLOSE:")
                .contains("no opening has all of these: diagonal from head-left to foot-right, ")
                .contains("Next: diagonal from head-left to foot-right, with the laser");
    }

    /** 30 mm into the opening by string, width and cross (√(1473² + 1200²) = 1900) where 2 mm were stated. */
    @Test
    void aSideThatBowsIsNoMisread(@TempDir Path folder) throws IOException {
        String job = Files.readString(Run.DEMO.resolve("reading-room.json"))
                .replace("\"width@1/2\", \"read\": 1502", "\"width@1/2\", \"read\": 1472")
                .replace(
                        "\"cross@head-left:right:1/2\", \"read\": 1924",
                        "\"cross@head-left:right:1/2\", \"read\": 1900")
                .replace(
                        "\"readings\": [",
                        "\"readings\": [ { \"of\": \"bow@right:1/2\", \"read\": 30, \"by\": \"tape\" },");
        Run run = assess(folder, job);
        assertThat(run.code()).isEqualTo(10);
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("THE READINGS AGREE ONLY IF A SIDE IS LESS STRAIGHT THAN STATED:")
                .contains("the right side stands 30")
                .contains("beyond the 2 mm either way that were stated")
                .contains("Next: bow of the right side half way along it, with the tape")
                .doesNotContain("Most out of line", "SURVEY COMPLETE");
    }

    /** What is missing comes first; nothing that was read is asked for again meanwhile. */
    @Test
    void theIncompleteSurveyAsksForTheMissingDiagonal() {
        String sheet = Run.of("assess", Run.demo("reading-room-inches.json")).out();
        assertThat(sheet)
                .contains("59 3/16 in")
                .contains("Next: diagonal from head-right to foot-left, with the tape; it is still")
                .contains("Had the diagonal from head-left to foot-right been misread by any amount")
                .doesNotContain("that this settles it");
    }

    /**
     * The taper: head 1500, foot 1488, length 2400. The diagonals are equal, the corners 6 mm out over 2400: within the 8 mm
     * of DIN 18202 table 2 (1 m to 3 m) but 0.143 degrees, beyond the 5 minutes of ISO 2768-1 class m (both as reprinted
     * elsewhere).
     */
    @Test
    void equalDiagonalsAreNotTakenForSquare() {
        Run run = Run.of("assess", Run.demo("reading-room-taper.json"));
        assertThat(run.code()).isEqualTo(20);
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("does not hold workshop-angle")
                .contains("building-angle: worst corner, out of square over its leg 6.0 mm, within 8 mm either way")
                .contains("holds out-of-square")
                .contains("Equal diagonals prove no right angle: foot-left is 6 mm out at the end of its leg.");
    }

    /**
     * Drawn 1500 by 2400, the taper is 12 mm short at its foot: beyond the 10 mm of DIN 18202 table 1, row 6 (1 m to 3 m). Its
     * length is as drawn, within the same 10 mm; within 2 mm (ISO 2768-1, class m, to 4 m) no tape of that doubt can prove
     * it. All as reprinted elsewhere.
     */
    @Test
    void deviationsFromWhatWasDrawn() {
        String sheet =
                Run.of("assess", Run.demo("reading-room-taper.json")).out().replaceAll("\\s+", " ");
        assertThat(sheet)
                .contains("does not hold building-width: width, off what was drawn -11.9 mm, within 10 mm either way")
                .contains("holds building-length: length, off what was drawn 0.0 mm, within 10 mm either way")
                .contains("not settled workshop-length: length, off what was drawn 0.0 mm, within 2 mm either way")
                .contains("the limits are closer together than the readings can tell apart;"
                        + " length as drawn 2400 mm is not above 4000 mm, so 2 mm")
                .contains("no further reading is likely to settle workshop-length");
    }

    /** A job in inches is answered in inches, its made sizes in both; limits stay as the rulebook states them. */
    @Test
    void aSheetInInchesSaysMarginsAndDoubtsInInches() {
        String sheet = Run.of("assess", Run.demo("reading-room-inches.json")).out();
        assertThat(sheet)
                .contains(" in to spare, give or take ")
                .contains("1496 mm (58 7/8 in)")
                .doesNotContain("mm to spare")
                .doesNotContain(" mm out over");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "reading-room.json",
                "reading-room-skew.json",
                "reading-room-misread.json",
                "reading-room-inches.json"
            })
    void theSameCallGivesTheSameBytesUnderAnotherLocaleAndTimeZone(String job) {
        Run sheet = Run.of("assess", Run.demo(job));
        Run json = Run.of("assess", Run.demo(job), "--json");
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            assertThat(Run.of("assess", Run.demo(job))).isEqualTo(sheet);
            assertThat(Run.of("assess", Run.demo(job), "--json")).isEqualTo(json);
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertThat(Run.of("assess", Run.demo(job))).isEqualTo(sheet);
            assertThat(Run.of("assess", Run.demo(job), "--json")).isEqualTo(json);
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void theDemoSucceedsWhateverTheVerdict() {
        for (String job : List.of("reading-room.json", "reading-room-skew.json", "reading-room-misread.json")) {
            Run expected = Run.of("assess", Run.demo(job));
            var out = new java.io.ByteArrayOutputStream();
            var stream = Main.utf8(out);
            int code = Demo.run(List.of(Run.demo(job)), stream, stream);
            stream.flush();
            assertThat(code).isZero();
            assertThat(out.toString(java.nio.charset.StandardCharsets.UTF_8)).isEqualTo(expected.out());
        }
    }

    /** The holes of the demo with fixings: on the sheet, and as data with what proves them fewest. */
    @Test
    void theSheetSaysWhereTheHolesGo() {
        String sheet = Run.of("assess", Run.demo("reading-room-fixed.json")).out();
        assertThat(sheet)
                .contains("HOLES: on the frame, running from the left or the head end")
                .contains("  head   148 mm, 548 mm, 948 mm, 1348 mm\n         in the opening at 153 mm, 553 mm")
                .contains("packed with ")
                .contains("nobody has established it; what each fixing carries is not")
                .contains("least gap in heat 2.1 mm, at least 0.5 mm");
        String json =
                Run.of("assess", Run.demo("reading-room-fixed.json"), "--json").out();
        assertThat(json)
                .contains(
                        "\"setOut\":[{\"side\":\"head\",\"on\":\"frame\",\"from\":\"head-left\",\"unit\":\"mm\",\"at\":[148,548,948,1348]")
                .contains(
                        "\"proof\":{\"least\":4,\"because\":{\"code\":\"farthest-reach\",\"args\":{\"farthest\":[150,550,950]}}}");
    }

    /** A lip forbids the head box that was ordered, and the sheet says which length would go in. */
    @Test
    void theSheetSaysWhichBoxGoesIn() {
        Run run = Run.of("assess", Run.demo("reading-room-lip.json"));
        assertThat(run.code()).isEqualTo(20);
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("does not hold the way in: longest box that goes in 1482.9 mm, at least 1491 mm")
                .contains("headbox.length is 1491 mm long; 1482.92 mm go in, right end first, held up to 74 mm higher");
    }
}
