package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.judge.Problem;

/** Wrong rulebooks and parts lists, wrong texts of any kind, and many mistakes in one document. */
class BadDocumentTest {
    private static final String NO_ID = "";

    /** The one error of a text, checked for its code, pointer and place. */
    private static Problem only(List<Problem> problems) {
        List<Problem> errors = problems.stream()
                .filter(p -> p.severity() == Problem.Severity.ERROR)
                .toList();
        assertThat(errors).hasSize(1);
        return errors.get(0);
    }

    private static String right(Problem problem) {
        return String.valueOf(problem.args().get("right").orElse(""));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                // passage | what stands there instead | code | pointer | what the place is of | right
                "\"fromEdge\": \"25 mm\"|\"fromEdge\": 25|missing-unit|/fixings/fromEdge|25|25 mm",
                "\"upTo\": \"3000 mm\"|\"upTo\": 3000|missing-unit|/sizes/3/of/bands/amounts/1/upTo|3000|3000 mm",
                "\"atMost\": \"9 mm\"|\"atMost\": 9|missing-unit|/bounds/1/atMost|9|9 mm",
                "\"cutWithin\": \"0.5 mm\", \"because\": \"frame must enter\", \"source\": { \"kind\": \"assumption\""
                        + " } },\\n"
                        + "    { \"id\": \"headbox.length\"|\"cutWithin\": 0.5, \"because\": \"frame must enter\","
                        + " \"source\": { \"kind\": \"assumption\" } },\\n"
                        + "    { \"id\": \"headbox.length\"|missing-unit|/sizes/1/cutWithin|0.5, |0.5 mm",
                "\"atMost\": \"9 mm\"|\"atMost\": \"9\"|missing-unit|/bounds/1/atMost|\"9\"|9 mm",
                "\"atMost\": \"9 mm\"|\"atMost\": \"9 ells\"|wrong-unit|/bounds/1/atMost|\"9 ells\"|mm, cm, m, in, ft",
                "\"atMost\": \"9 mm\"|\"atMost\": \"NaN mm\"|not-a-number|/bounds/1/atMost|\"NaN mm\"|mm",
                "\"atMost\": \"9 mm\"|\"atMost\": NaN|not-a-number|/bounds/1/atMost|NaN|number",
                "\"atMost\": \"9 mm\"|\"atMost\": -Infinity|not-a-number|/bounds/1/atMost|-Infinity|number",
                "\"atMost\": \"9 mm\"|\"atMost\": null|wrong-type|/bounds/1/atMost|null|1503 mm",
                "\"atMost\": \"9 mm\"|\"atMost\": \"1e300 mm\"|out-of-range|/bounds/1/atMost|\"1e300 mm\"|1000000 mm",
                "\"atMost\": \"9 mm\"|\"atMost\": \"9 N\"|wrong-dimension|/bounds/1/atMost|\"9 N\"|",
                "\"figure\": \"gap.greatest\"|\"figure\":"
                        + " \"gap.gratest\"|unknown-figure|/bounds/1/figure|\"gap.gratest\"|",
                "\"of\": \"fit.length\"|\"of\": \"fit.lenght\"|unknown-figure|/sizes/1/of|\"fit.lenght\"|",
                "\"within\": \"6 mm\"|\"withn\": \"6 mm\", \"atMost\": \"6"
                        + " mm\"|unknown-field|/bounds/2/withn|\"withn\"|within",
                "\"probability\": 0.99|\"probability\": 0.5|out-of-range|/bounds/0/decide/probability|0.5|above 0.5"
                        + " and below 1",
                "\"probability\": 0.99|\"probability\": 1|out-of-range|/bounds/0/decide/probability|1|above 0.5 and"
                        + " below 1",
                "\"probability\": 0.99|\"probability\": \"0.99\"|wrong-type|/bounds/0/decide/probability|\"0.99\"|a"
                        + " number",
                "\"probability\": 0.99|\"probability\": 1e999|out-of-range|/bounds/0/decide/probability|1e999|above"
                        + " 0.5 and below 1",
                "{ \"rule\": \"guarded\", \"probability\": 0.99 }|{ \"rule\": \"guarded\""
                        + " }|missing-field|/bounds/0/decide/probability|{ \"rule\": \"guarded\" }|0.95",
                "\"effective\": \"2026-01-01\"|\"effective\":"
                        + " \"2026-02-30\"|wrong-format|/effective|\"2026-02-30\"|2026-11-02",
                "\"hold\": \"head\"|\"hold\": \"middle\"|unknown-value|/frame/hold|\"middle\"|head, right, foot, left",
                "\"frame\": { \"hold\": \"head\", \"keep\": \"area\", \"depth\": [\"20 mm\", \"110 mm\"] }|\"frame\":"
                        + " [ ]|wrong-type|/frame|[ ]|an object",
                "\"needs\": [\"headTowards\"|\"needs\":"
                        + " [\"headToward\"|unknown-value|/survey/needs/0|\"headToward\"|headTowards",
                "\"less\": [ { \"choice\"|\"less\": [ { \"chioce\"|missing-field|/sizes/2/less/0|{ \"chioce\"|choice",
                "\"round\": { \"down\": \"1 mm\" }, \"cutWithin\": \"0.5 mm\", \"because\": \"frame must enter\","
                        + " \"source\": { \"kind\": \"assumption\" } },\\n"
                        + "    { \"id\": \"headbox|\"round\": { }, \"cutWithin\": \"0.5 mm\", \"because\": \"frame must"
                        + " enter\", \"source\": { \"kind\": \"assumption\" } },\\n"
                        + "    { \"id\": \"headbox|missing-field|/sizes/1/round|{ }|one of down, up, nearest, downTo",
                "{ \"drive-m\": \"4 mm\" }|[ \"4 mm\" ]|wrong-type|/sizes/2/less/0/amounts|[ \"4 mm\" ]|an object",
                "{ \"drive-m\": \"4 mm\" }|{ \"Drive\": \"4 mm\""
                        + " }|bad-id|/sizes/2/less/0/amounts/Drive|\"Drive\"|small letter",
                "\"id\": \"light-strip\"|\"id\": \"Light strip\"|bad-id|/bounds/1/id|\"Light strip\"|small letter",
                "\"kind\": \"practice\" } }\\n"
                        + "  ],|\"kind\": \"rumour\" } }\\n"
                        + "  ],|unknown-value|/bounds/2/source/kind|\"rumour\"|practice",
                "\"kind\": \"practice\" } }\\n"
                        + "  ],|\"knid\": 1, \"kind\": \"practice\" } }\\n"
                        + "  ],|unknown-field|/bounds/2/source/knid|\"knid\"|kind"
            })
    void aRulebookWithOneMistake(String passage, String wrong, String code, String pointer, String at, String right) {
        String from = passage.replace("\\n", "\n");
        String to = wrong.replace("\\n", "\n");
        String text = Examples.changed(Examples.RULEBOOK, from, to);
        Read<?> read = RulebookDocument.read(Examples.utf8(text));
        List<Problem> errors = read.problems().stream()
                .filter(p -> p.severity() == Problem.Severity.ERROR)
                .filter(p -> p.pointer().equals(pointer))
                .toList();
        assertThat(errors).as(read.problems().toString()).hasSize(1);
        assertThat(errors.get(0).code()).isEqualTo(code);
        String start = text.substring(0, text.indexOf(to) + to.indexOf(at));
        assertThat(Examples.placeOf(errors.get(0))).isEqualTo(placeAfter(start));
        assertThat(right(errors.get(0))).contains(Objects.toString(right, ""));
        assertThat(read.value()).isEmpty();
        assertThat(read.id()).isEqualTo("heron-frame");
    }

    private static String placeAfter(String start) {
        long line = 1 + start.chars().filter(c -> c == '\n').count();
        return line + ":" + (start.length() - start.lastIndexOf('\n'));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"torque\": \"9 N.m\"|\"torque\": \"9 N\"|wrong-dimension|/drives/drive-m/torque|\"9 N\"",
                "\"torque\": \"9 N.m\"|\"torque\": \"-9 N.m\"|out-of-range|/drives/drive-m/torque|\"-9 N.m\"",
                "\"turns\": 30|\"turns\": -1|out-of-range|/drives/drive-m/turns|-1",
                "\"turns\": 30|\"turns\": [30]|wrong-type|/drives/drive-m/turns|[30]",
                "\"rollWidth\": \"2000 mm\"|\"rollWidth\": 2000|missing-unit|/fabrics/shade-a/rollWidth|2000",
                "\"mayTurn\": true|\"mayTurn\": \"yes\"|wrong-type|/fabrics/shade-a/mayTurn|\"yes\"",
                "\"mayTurn\": true|\"mayturn\": true|unknown-field|/fabrics/shade-a/mayturn|\"mayturn\"",
                "\"stock\": [\"6000 mm\"]|\"stock\": \"6000 mm\"|wrong-type|/profiles/flange/stock|\"6000 mm\"",
                "\"stock\": [\"6000 mm\"]|\"stock\": [\"6000 mm\", null]|wrong-type|/profiles/flange/stock/1|null",
                "\"flange\"|\"Flange\"|bad-id|/profiles/Flange|\"Flange\"",
                "\"basis\": \"characteristic\"|\"basis\":"
                        + " \"guess\"|unknown-value|/fasteners/screw-8/pull/basis|\"guess\"",
                "\"in\": \"timber\"|\"in\": \"cheese\"|unknown-value|/fasteners/screw-8/pull/in|\"cheese\"",
                "\"ambient\": \"50 degC\"|\"ambient\": \"-300 degC\"|out-of-range|/drives/drive-m/ambient|\"-300"
                        + " degC\"",
                "\"version\": \"1.0.0\",|\"version\": 1,|wrong-type|/version|1"
            })
    void aPartsListWithOneMistake(String passage, String wrong, String code, String pointer, String at) {
        String text = Examples.changed(Examples.PARTS, passage, wrong);
        Read<?> read = PartsDocument.read(Examples.utf8(text));
        Problem problem = only(read.problems());
        assertThat(problem.code()).isEqualTo(code);
        assertThat(problem.pointer()).isEqualTo(pointer);
        assertThat(Examples.placeOf(problem))
                .isEqualTo(placeAfter(text.substring(0, text.indexOf(wrong) + wrong.indexOf(at))));
        assertThat(right(problem)).isNotEmpty();
        assertThat(read.value()).isEmpty();
    }

    @Test
    void everyMissingFieldOfARulebookIsNamed() {
        Read<?> read = RulebookDocument.read(Examples.utf8("{}"));
        assertThat(read.problems()).extracting(Problem::code).containsOnly("missing-field");
        assertThat(read.problems())
                .extracting(Problem::pointer)
                .containsExactlyInAnyOrder("/format", "/id", "/version", "/effective", "/decide", "/sizes", "/bounds");
        assertThat(read.problems())
                .allSatisfy(p -> assertThat(Examples.placeOf(p)).isEqualTo("1:1"));
        assertThat(read.id()).isEqualTo(NO_ID);
    }

    /** What the library itself finds wrong with the rules stands beside the mistakes of the text, each in its own place. */
    @Test
    void allMistakesOfARulebookAreNamedAtOnce() {
        String text = """
                {
                  "format": "quoin-rulebook/1", "id": "heron-frame", "version": "1", "effective": "2026-13-01",
                  "decide": { "rule": "guarded", "probability": 2 },
                  "sizes": [
                    null,
                    { "id": "frame.width", "of": "fit.width", "less": [ { "amount": 3 } ], "source": { "kind": "assumption" } },
                    { "id": "Frame length", "of": "fit.lenght", "source": { "kind": "assumption" } },
                    { "id": "box.length", "of": "fram.width", "source": { "kind": "assumption" } },
                    { "id": "tube", "of": "frame.width", "source": { "kind": "assumption" } }
                  ],
                  "bounds": [
                    { "id": "a", "figure": "gap.greatest", "atMost": 9, "source": { "kind": "assumption" } },
                    { "id": "b", "figure": "gap.gratest", "atMost": "9 mm", "source": { "kind": "assumption" } },
                    { "id": "c", "figure": "gap.least", "atLeast": "1 deg", "source": { "kind": "assumption" } }
                  ]
                }
                """;
        List<Problem> problems = RulebookDocument.read(Examples.utf8(text)).problems();
        assertThat(problems.stream().map(p -> p.line() + " " + p.code() + " " + p.pointer()))
                .containsExactly(
                        "2 wrong-format /effective",
                        "3 out-of-range /decide/probability",
                        "4 missing-size /sizes",
                        "5 wrong-type /sizes/0",
                        "6 missing-unit /sizes/1/less/0/amount",
                        "7 bad-id /sizes/2/id",
                        "7 unknown-figure /sizes/2/of",
                        "8 unknown-figure /sizes/3/of",
                        "12 missing-unit /bounds/0/atMost",
                        "13 unknown-figure /bounds/1/figure",
                        "14 wrong-dimension /bounds/2/atLeast");
    }

    @Test
    void everyMissingFieldOfAPartsListIsNamed() {
        assertThat(PartsDocument.read(Examples.utf8("{}")).problems())
                .extracting(Problem::pointer)
                .containsExactlyInAnyOrder("/format", "/id", "/version");
    }

    @Test
    void everyMissingFieldOfAJobIsNamed() {
        assertThat(JobDocument.read(Examples.utf8("{\"opening\":{}, \"choose\":{}}"))
                        .problems())
                .extracting(Problem::pointer)
                .containsExactlyInAnyOrder(
                        "/format",
                        "/id",
                        "/units",
                        "/instruments",
                        "/opening/fit",
                        "/opening/readings",
                        "/choose/rulebook");
    }

    /** All in one run: each mistake of a list of them in one job is named once, in the order of the text. */
    @Test
    void allMistakesOfAJobAreNamedAtOnce() {
        String text = """
            {
              "format": "quoin-job/2",
              "id": "Reading Room",
              "units": "mm", "colour": "red",
              "instruments": { "tape": { "kind": "tape", "step": "1 mm" } },
              "opening": {
                "fit": "face", "slpoe": "12 deg",
                "readings": [
                  { "of": "width@head", "read": 1503, "by": "laser" },
                  { "of": "width@foot", "read": "12 deg", "by": "tape" },
                  { "of": "length@left", "read": -2398, "by": "tape" },
                  { "of": "length@right", "read": 0, "by": "tape" },
                  { "of": "diagonal@head-left", "read": 1e30, "by": "tape" },
                  { "of": "diagonal@head-right", "read": "NaN", "by": "tape" },
                  { "of": "width@1/2", "read": NaN, "by": "tape" },
                  { "of": "width@middle", "read": 1503, "by": "tape" },
                  { "of": "width@1/4", "read": [], "by": "tape" },
                  { "of": "width@3/4", "read": 123456789012345678901234567890123456789012345, "by": "tape" },
                  { "of": "length@1/2", "of": "length@1/4", "read": 2400, "by": "tape" },
                  null
                ]
              },
              "choose": { "rulebook": "heron-frame" }
            }
            """;
        List<Problem> problems = JobDocument.read(Examples.utf8(text)).problems();
        assertThat(problems.stream().map(p -> p.line() + " " + p.code() + " " + p.pointer()))
                .containsExactly(
                        "2 wrong-format /format",
                        "3 bad-id /id",
                        "4 unknown-field /colour",
                        "7 not-supported /opening/fit",
                        "7 unknown-field /opening/slpoe",
                        "9 unknown-instrument /opening/readings/0/by",
                        "10 wrong-dimension /opening/readings/1/read",
                        "11 out-of-range /opening/readings/2/read",
                        "12 out-of-range /opening/readings/3/read",
                        "13 out-of-range /opening/readings/4/read",
                        "14 not-a-number /opening/readings/5/read",
                        "15 not-a-number /opening/readings/6/read",
                        "16 unknown-value /opening/readings/7/of",
                        "17 out-of-range /opening/readings/8/read",
                        "18 not-a-number /opening/readings/9/read",
                        "19 duplicate-key /opening/readings/10/of",
                        "20 wrong-type /opening/readings/11",
                        "23 wrong-type /choose/rulebook");
        assertThat(right(problems.get(4))).isEqualTo("slope");
        assertThat(right(problems.get(5))).isEqualTo("tape");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "|empty-document|1:1",
                "` `|empty-document|1:1",
                "not JSON|not-json|1:1",
                "{|not-json|1:2",
                "{ \"id\": \"a\" \"b\" }|not-json|1:13",
                "{ 'id': 1 }|not-json|1:3",
                "{} {}|not-json|1:4",
                "[1,]|not-json|1:4",
                "{ \"a\": 01 }|not-json|1:9",
                "{ \"a\": 0x10 }|not-json|1:9",
                "// a comment|not-json|1:1",
                "[]|wrong-type|1:1",
                "null|wrong-type|1:1",
                "17|wrong-type|1:1",
                "\"text\"|wrong-type|1:1",
                "NaN|not-a-number|1:1"
            })
    void whatIsNoJsonObjectIsRefusedWithItsPlace(String text, String code, String place) {
        byte[] json = Examples.utf8(Objects.toString(text, ""));
        for (Read<?> read : List.of(JobDocument.read(json), RulebookDocument.read(json), PartsDocument.read(json))) {
            Problem problem = only(read.problems());
            assertThat(problem.code()).isEqualTo(code);
            assertThat(problem.pointer()).isEmpty();
            assertThat(right(problem)).isNotEmpty();
            assertThat(read.value()).isEmpty();
            assertThat(read.id()).isEmpty();
            assertThat(problem.line() + ":" + problem.column()).isEqualTo(place);
        }
    }

    @Test
    void theWordsOfTheParserCarryNoAdviceOfItsOwn() {
        for (String text : List.of(
                "{ 'id': 1 }", "nul", "{ \"a\": 01 }", "{ \"a\": +1 }", "\"\t\"", "\"\\x\"", "[1 2]", "{\"a\"}")) {
            Problem problem = only(JobDocument.read(Examples.utf8(text)).problems());
            assertThat(problem.code()).isEqualTo("not-json");
            assertThat(problem.args().get("got").orElseThrow().toString())
                    .isNotEmpty()
                    .doesNotContain("Feature", "JsonReadFeature", "enable", "Source:", "REDACTED");
        }
    }

    @Test
    void aProblemOfAnUnknownFieldNamesTheNearestOrAll() {
        String near = Examples.changed(Examples.PARTS, "\"fabrics\":", "\"fabrix\":");
        assertThat(right(only(PartsDocument.read(Examples.utf8(near)).problems())))
                .isEqualTo("fabrics");
        String far = Examples.changed(Examples.PARTS, "\"fabrics\":", "\"zzzzzzzz\":");
        assertThat(right(only(PartsDocument.read(Examples.utf8(far)).problems())))
                .isEqualTo("drives, fabrics, fasteners, format, id, profiles, version");
    }

    @Test
    void twoHundredProblemsAreEnough() {
        StringBuilder text = new StringBuilder("{\"format\":\"quoin-parts/1\",\"id\":\"a\",\"version\":\"1\"");
        for (int i = 0; i < 1000; i++) {
            text.append(",\"unknown").append(i).append("\":1");
        }
        Read<?> read = PartsDocument.read(Examples.utf8(text.append('}').toString()));
        assertThat(read.problems()).hasSize(200);
        assertThat(read.value()).isEmpty();
    }
}
