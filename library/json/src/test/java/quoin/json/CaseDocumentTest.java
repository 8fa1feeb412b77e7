package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;
import static quoin.json.Examples.changed;
import static quoin.json.Examples.placeOf;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.job.Case;
import quoin.job.Job;
import quoin.judge.Problem;
import quoin.judge.Verdict;
import quoin.measure.Amount;
import quoin.measure.Dimension;

class CaseDocumentTest {
    private static final String NAMED = """
            {
              "format": "quoin-case/1",
              "id": "plain",
              "title": "a plain one",
              "job": "room.json",
              "rulebook": { "id": "heron-frame", "version": "1.2.0" },
              "expect": {
                "verdict": "undecided",
                "sizes": { "frame.width": "1494 mm", "tube.diameter": "5 cm" },
                "findings": { "goes-in": "pass", "site.glazed": "fail" }
              }
            }
            """;

    private static Optional<Job> jobs(String file) {
        return file.equals("room.json") ? Optional.of(Examples.job(Examples.JOB)) : Optional.empty();
    }

    private static Read<Case> read(String text) {
        return CaseDocument.read(Examples.utf8(text), CaseDocumentTest::jobs);
    }

    @Test
    void aCaseIsRead() {
        Case given = read(NAMED).value().orElseThrow();
        assertThat(given.id()).isEqualTo("plain");
        assertThat(given.title()).isEqualTo("a plain one");
        assertThat(given.job()).isEqualTo(Examples.job(Examples.JOB));
        assertThat(given.choose().rulebookVersion()).isEqualTo("1.2.0");
        assertThat(given.choose().parts()).isEqualTo(given.job().choose().parts());
        assertThat(given.verdict()).contains(Verdict.UNDECIDED);
        assertThat(given.sizes())
                .isEqualTo(Map.of(
                        "frame.width", new Amount(1494, Dimension.LENGTH),
                        "tube.diameter", new Amount(50, Dimension.LENGTH)));
        assertThat(given.findings()).isEqualTo(Map.of("goes-in", Verdict.PASS, "site.glazed", Verdict.FAIL));
    }

    @Test
    void aJobMayStandInItAndItsOwnChoiceOfARulebookThenHolds() {
        String inline = changed(NAMED, "\"room.json\"", Examples.JOB.strip())
                .replace(
                        "  \"rulebook\": { \"id\": \"heron-frame\", \"version\": \"1.2.0\" },\n  \"expect\"",
                        "  \"expect\"");
        Case given = read(inline).value().orElseThrow();
        assertThat(given.job()).isEqualTo(Examples.job(Examples.JOB));
        assertThat(given.choose()).isEqualTo(given.job().choose());
    }

    /** Those of the job that stands in it, too, each with its place in the whole text. */
    @Test
    void allProblemsAreNamedAtOnceWithTheirPlaces() {
        String text = changed(
                        NAMED,
                        "\"room.json\"",
                        changed(Examples.JOB, "\"read\": 142", "\"read\": \"NaN\"")
                                .strip())
                .replace("\"1494 mm\"", "1494")
                .replace("\"goes-in\": \"pass\"", "\"goes-in\": \"maybe\"")
                .replace("\"title\"", "\"tittle\"");
        Read<Case> read = read(text);
        assertThat(read.value()).isEmpty();
        assertThat(read.problems())
                .extracting(problem -> problem.code() + " " + problem.pointer() + " " + placeOf(problem))
                .containsExactly(
                        "unknown-field /tittle " + placeOf(text, "\"tittle\""),
                        "not-a-number /job/opening/readings/10/read " + placeOf(text, "\"NaN\""),
                        "missing-unit /expect/sizes/frame.width " + placeOf(text, "1494"),
                        "unknown-value /expect/findings/goes-in " + placeOf(text, "\"maybe\""));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"room.json\"|\"hall.json\"|no-job /job",
                "\"room.json\"|17|wrong-type /job",
                "\"job\": \"room.json\",||missing-field /job",
                "\"id\": \"plain\"|\"id\": \"Plain\"|bad-id /id",
                "\"verdict\": \"undecided\"|\"verdict\": \"refused\"|unknown-value /expect/verdict",
                "{ \"frame.width\": \"1494 mm\", \"tube.diameter\": \"5 cm\" }|[]|wrong-type /expect/sizes",
                "\"version\": \"1.2.0\"|\"versoin\": \"1.2.0\"|unknown-field /rulebook/versoin",
                "quoin-case/1|quoin-case/2|wrong-format /format"
            })
    void eachMistakeIsAProblem(String passage, String by, String problem) {
        Read<Case> read = read(changed(NAMED, passage, by == null ? "" : by));
        assertThat(read.value()).isEmpty();
        assertThat(read.problems())
                .extracting(p -> p.code() + " " + p.pointer())
                .contains(problem)
                .hasSize(1);
        assertThat(read.problems()).allSatisfy(p -> assertThat(p.line()).isPositive());
    }

    @Test
    void aCaseThatExpectsNothingIsRefused() {
        String text = NAMED.substring(0, NAMED.indexOf("\"expect\"")) + "\"expect\": {} }";
        assertThat(read(text).problems()).extracting(Problem::code).isEqualTo(List.of("out-of-range"));
    }
}
