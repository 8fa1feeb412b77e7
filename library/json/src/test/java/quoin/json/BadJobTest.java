package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;
import static quoin.json.Examples.changed;
import static quoin.json.Examples.placeOf;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import quoin.job.Job;
import quoin.judge.Problem;

/** One mistake at a time in the example job: which code, at which place, and what would be right. */
class BadJobTest {
    static List<Arguments> mistakes() {
        return List.of(
                Arguments.of("wrong-format", "/format", "\"quoin-job/1\"", "\"quoin-job/9\"", "quoin-job/1"),
                Arguments.of("unknown-field", "/headToward", "\"headTowards\": ", "\"headToward\": ", "headTowards"),
                Arguments.of("unknown-field", "/colour", "\"grade\": \"survey\"", "\"colour\": \"red\"", "grade"),
                Arguments.of("wrong-type", "/markedOnSite", "\"markedOnSite\": true", "\"markedOnSite\": 1", "true"),
                Arguments.of("wrong-type", "/place", "\"Boathouse reading room, second roof opening\"", "[]", "text"),
                Arguments.of("unknown-value", "/grade", "\"grade\": \"survey\"", "\"grade\": \"final\"", "quote"),
                Arguments.of("unknown-value", "/role", "\"role\": \"light\"", "\"role\": \"window\"", "escape"),
                Arguments.of("unknown-value", "/units", "\"units\": \"mm\"", "\"units\": \"cm\"", "mm, in"),
                Arguments.of("wrong-format", "/taken", "\"2026-11-02\"", "\"2 Nov 2026\"", "2026-11-02"),
                Arguments.of("wrong-format", "/taken", "\"2026-11-02\"", "\"2026-13-02\"", "2026-11-02"),
                Arguments.of("bad-id", "/id", "\"id\": \"reading-room-2\"", "\"id\": \"Reading Room\"", "small letter"),
                Arguments.of(
                        "unknown-instrument",
                        "/by",
                        "\"depth@head-left\", \"read\": 142, \"by\": \"rule\"",
                        "\"depth@head-left\", \"read\": 142, \"by\": \"ruler\"",
                        "tape, laser, rule"),
                Arguments.of("wrong-dimension", "/read", "\"read\": 142", "\"read\": \"142 deg\"", "mm"),
                Arguments.of("wrong-dimension", "/slope", "\"slope\": \"12 deg\"", "\"slope\": \"12 mm\"", "deg"),
                Arguments.of("out-of-range", "/read", "\"read\": 142", "\"read\": -142", "above 0"),
                Arguments.of("out-of-range", "/read", "\"read\": 142", "\"read\": 0", "above 0"),
                Arguments.of("out-of-range", "/read", "\"read\": 142", "\"read\": 51000", "50 m"),
                Arguments.of("out-of-range", "/read", "\"read\": 142", "\"read\": 1e400", "mm"),
                Arguments.of("out-of-range", "/read", "\"read\": 142", "\"read\": []", "1 value or more"),
                Arguments.of("not-a-number", "/read", "\"read\": 142", "\"read\": \"NaN\"", "1503 mm"),
                Arguments.of("not-a-number", "/read", "\"read\": 142", "\"read\": \"Infinity mm\"", "1503 mm"),
                Arguments.of("wrong-type", "/read", "\"read\": 142", "\"read\": null", "1503 mm"),
                Arguments.of("missing-unit", "/read", "\"read\": 142", "\"read\": \"142\"", "mm"),
                Arguments.of("wrong-unit", "/read", "\"read\": 142", "\"read\": \"142 ell\"", "mm, cm, m, in, ft"),
                Arguments.of("missing-unit", "/slope", "\"slope\": \"12 deg\"", "\"slope\": 12", "12 deg"),
                Arguments.of("unknown-value", "/of", "\"depth@head-left\"", "\"depth@left\"", "head-left"),
                Arguments.of("unknown-value", "/of", "\"depth@head-left\"", "\"width@5/4\"", "width@1/4"),
                Arguments.of("unknown-value", "/of", "\"depth@head-left\"", "\"breadth@head\"", "width"),
                Arguments.of("not-supported", "/fit", "\"fit\": \"recess\"", "\"fit\": \"face\"", "recess"),
                Arguments.of("unknown-value", "/fit", "\"fit\": \"recess\"", "\"fit\": \"flush\"", "recess"),
                Arguments.of(
                        "not-supported", "/shape", "\"markedOnSite\": true", "\"shape\": \"triangle\"", "four-sided"),
                Arguments.of(
                        "out-of-range",
                        "/straightWithin",
                        "\"straightWithin\": \"2 mm\"",
                        "\"straightWithin\": \"-2 mm\"",
                        "0 mm"),
                Arguments.of(
                        "out-of-range",
                        "/width",
                        "\"ordered\":",
                        "\"nominal\": { \"width\": 0 }, \"ordered\":",
                        "above 0"),
                Arguments.of(
                        "out-of-range",
                        "/length",
                        "\"ordered\":",
                        "\"nominal\": { \"length\": \"51 m\" }, \"ordered\":",
                        "50000 mm at most"),
                Arguments.of(
                        "unknown-field",
                        "/height",
                        "\"ordered\":",
                        "\"nominal\": { \"height\": \"1 m\" }, \"ordered\":",
                        "width"),
                Arguments.of("out-of-range", "/along", "[\"700 mm\", \"820 mm\"]", "[\"700 mm\"]", "two"),
                Arguments.of(
                        "out-of-range", "/along", "[\"700 mm\", \"820 mm\"]", "[\"820 mm\", \"700 mm\"]", "smaller"),
                Arguments.of("out-of-range", "/width", "\"width\": \"47 mm\"", "\"width\": \"0 mm\"", "above 0"),
                Arguments.of("bad-id", "/room", "\"site.headroom\": ", "\"room\": ", "site."),
                Arguments.of("out-of-range", "/frame.width", "\"1495 mm\"", "\"-1495 mm\"", "above 0"),
                Arguments.of(
                        "wrong-type",
                        "/keepOut",
                        "[ { \"side\": \"head\", \"from\": \"1180 mm\", \"to\": \"1240 mm\", \"because\": \"cable entry\" } ]",
                        "\"none\"",
                        "list"),
                Arguments.of("out-of-range", "/to", "\"1240 mm\"", "\"1140 mm\"", "1180"),
                Arguments.of(
                        "wrong-type",
                        "/site",
                        "{ \"role\": \"light\", \"glazed\": \"yes\", \"glassMakerAsked\": \"unknown\", \"structure\": \"rafter\", \"below\": \"floor\", \"platform\": \"tower\" }",
                        "[]",
                        "object"),
                Arguments.of("wrong-type", "/k", "\"k\": 2", "\"k\": \"2\"", "number"),
                Arguments.of("out-of-range", "/k", "\"k\": 2", "\"k\": 0", "0.001"),
                Arguments.of("out-of-range", "/u", "\"u\": \"0.8 mm\"", "\"u\": \"-0.8 mm\"", "0 mm"),
                Arguments.of(
                        "unknown-value",
                        "/substrate",
                        "\"substrate\": \"timber\"",
                        "\"substrate\": \"wood\"",
                        "timber"),
                Arguments.of("out-of-range", "/thickness", "\"45 mm\"", "\"-45 mm\"", "0"));
    }

    @ParameterizedTest(name = "{0} {1}: {3}")
    @MethodSource("mistakes")
    void saysWhatIsWrongWhereAndWhatWouldBeRight(String code, String pointer, String old, String wrong, String right) {
        String text = changed(Examples.JOB, old, wrong);
        Read<Job> read = JobDocument.read(Examples.utf8(text));
        assertThat(read.value()).isEmpty();
        assertThat(read.id()).isIn("reading-room-2", "Reading Room");
        Problem problem = read.problems().get(0);
        assertThat(read.problems()).as("one mistake, one problem").hasSize(1);
        assertThat(problem.code()).isEqualTo(code);
        assertThat(problem.severity()).isEqualTo(Problem.Severity.ERROR);
        assertThat(problem.pointer()).endsWith(pointer);
        assertThat(problem.args().get("right").orElse("").toString()).contains(right);
        assertThat(placeOf(problem)).isEqualTo(place(text, pointer, code, wrong));
    }

    /** A field that is not known is at its name; else the value is what is wrong. */
    private static String place(String text, String pointer, String code, String wrong) {
        String name = "\"" + pointer.substring(1) + "\"";
        int change = text.indexOf(wrong);
        String upTo = text.substring(0, change);
        boolean atName = code.equals("unknown-field") || (code.equals("bad-id") && wrong.endsWith(": "));
        int nameAt = wrong.contains(name) ? change + wrong.indexOf(name) : upTo.lastIndexOf(name);
        int at = atName ? nameAt : text.indexOf(':', nameAt) + 2;
        int line =
                1 + (int) text.substring(0, at).chars().filter(c -> c == '\n').count();
        return line + ":" + (at - text.lastIndexOf('\n', at - 1));
    }

    @ParameterizedTest
    @MethodSource("required")
    void aRequiredFieldIsMissed(String field, String passage, String place) {
        String text = changed(Examples.JOB, passage, "");
        Read<Job> read = JobDocument.read(Examples.utf8(text));
        assertThat(read.value()).isEmpty();
        assertThat(read.problems()).anySatisfy(problem -> {
            assertThat(problem.code()).isEqualTo("missing-field");
            assertThat(problem.pointer()).isEqualTo(field);
            assertThat(placeOf(problem)).isEqualTo(place.isEmpty() ? "1:1" : placeOf(text, place));
        });
    }

    static List<Arguments> required() {
        return List.of(
                Arguments.of("/format", "\"format\": \"quoin-job/1\", ", ""),
                Arguments.of("/id", "\"id\": \"reading-room-2\", ", ""),
                Arguments.of("/units", ", \"units\": \"mm\"", ""),
                Arguments.of("/opening/fit", "\"fit\": \"recess\", ", "{\n    \"slope\""),
                Arguments.of(
                        "/choose/rulebook",
                        "\"rulebook\": { \"id\": \"heron-frame\", \"version\": \"1.2.0\" }, ",
                        "{ \"parts\""),
                Arguments.of("/choose/rulebook/id", "\"id\": \"heron-frame\", ", "{ \"version\""),
                Arguments.of("/opening/readings/10/by", ", \"by\": \"rule\"", "{ \"of\": \"depth@head-left\""));
    }

    @Test
    void allMistakesAreSaidAtOnceInTheOrderOfTheText() {
        String text = Examples.JOB
                .replace("\"grade\": \"survey\"", "\"grade\": \"final\"")
                .replace("\"slope\": \"12 deg\"", "\"slope\": 12")
                .replace("\"read\": 2398", "\"read\": 0")
                .replace("\"kind\": \"mains\"", "\"kinds\": \"mains\"");
        List<Problem> problems = JobDocument.read(Examples.utf8(text)).problems();
        assertThat(problems.stream().map(Problem::code))
                .containsExactly("unknown-value", "missing-unit", "out-of-range", "unknown-field");
        assertThat(problems.stream().map(Problem::line)).isSorted();
    }

    @Test
    void columnsCountCharactersNotBytes() {
        String text = "{ \"place\": \"Größe €\", \"colour\": 1 }";
        Problem colour = JobDocument.read(Examples.utf8(text)).problems().stream()
                .filter(problem -> problem.code().equals("unknown-field"))
                .findFirst()
                .orElseThrow();
        assertThat(placeOf(colour)).isEqualTo(placeOf(text, "\"colour\""));
    }

    @Test
    void anAngleByATapeIsRefused() {
        String text = changed(
                Examples.JOB, "\"depth@head-left\", \"read\": 142", "\"angle@head-left\", \"read\": \"90 deg\"");
        assertThat(JobDocument.read(Examples.utf8(text)).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.code()).isEqualTo("wrong-dimension"));
    }

    @Test
    void anAngleHasItsUnit() {
        String text = changed(
                        Examples.JOB, "\"each\": [ { \"u\": \"0.4 mm\" } ]", "\"each\": [ { \"u\": \"0.4 deg\" } ]")
                .replace("\"depth@head-left\", \"read\": 142", "\"angle@head-left\", \"read\": 90");
        assertThat(JobDocument.read(Examples.utf8(text)).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.code()).isEqualTo("missing-unit"));
    }

    @Test
    void aDoubtIsStatedInOneWay() {
        for (String wrong : List.of(
                "{ \"u\": \"0.4 mm\", \"limits\": \"1 mm\" }",
                "{ \"U\": \"1 mm\" }",
                "{ \"u\": \"1 mm\", \"k\": 2 }",
                "{}")) {
            String text = changed(Examples.JOB, "{ \"u\": \"0.4 mm\" }", wrong);
            assertThat(JobDocument.read(Examples.utf8(text)).problems())
                    .as(wrong)
                    .isNotEmpty()
                    .allSatisfy(problem -> {
                        assertThat(problem.pointer()).startsWith("/instruments/rule");
                        assertThat(problem.args().get("right").orElseThrow().toString())
                                .contains("u, limits");
                    });
        }
    }

    @Test
    void anInstrumentWithoutDoubtIsRefused() {
        String text = changed(Examples.JOB, "\"stated\", \"each\": [ { \"u\": \"0.4 mm\" } ]", "\"stated\"");
        assertThat(JobDocument.read(Examples.utf8(text)).problems()).anySatisfy(problem -> {
            assertThat(problem.code()).isEqualTo("missing-field");
            assertThat(problem.pointer()).isEqualTo("/instruments/rule");
        });
    }

    @Test
    void aHookIsForATape() {
        String text = changed(Examples.JOB, "\"laser\", \"step\"", "\"laser\", \"end\": \"hook\", \"step\"");
        assertThat(JobDocument.read(Examples.utf8(text)).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.pointer()).startsWith("/instruments/laser"));
    }

    @Test
    void carryHasALimit() {
        String text = changed(Examples.JOB, "any JSON up to 4 kB, handed through unread", "x".repeat(5000));
        assertThat(JobDocument.read(Examples.utf8(text)).problems())
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.code()).isEqualTo("carry-too-large");
                    assertThat(placeOf(problem)).isEqualTo(placeOf(text, "{ \"order\""));
                });
    }

    @Test
    void anythingButAnObjectIsRefused() {
        for (String text : List.of("[]", "1", "null", "\"quoin-job/1\"", "true")) {
            Read<Job> read = JobDocument.read(Examples.utf8(text));
            assertThat(read.value()).isEmpty();
            assertThat(read.id()).isEmpty();
            assertThat(read.problems()).singleElement().satisfies(problem -> {
                assertThat(problem.code()).isEqualTo("wrong-type");
                assertThat(placeOf(problem)).isEqualTo("1:1");
            });
        }
    }

    @Test
    void aThousandMistakesAreNotAllSaid() {
        String many = "{ " + "\"x\": 1, ".repeat(1000) + "\"id\": \"a\" }";
        assertThat(JobDocument.read(Examples.utf8(many)).problems()).hasSizeLessThanOrEqualTo(200);
    }
}
