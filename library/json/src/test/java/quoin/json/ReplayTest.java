package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;
import static quoin.json.Examples.changed;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.job.Assessment;
import quoin.job.Job;
import quoin.job.Receipt;
import quoin.parts.Parts;
import quoin.rulebook.Rulebook;

class ReplayTest {
    private static final Job JOB = Examples.job(Examples.JOB);
    private static final Rulebook RULEBOOK = Examples.rulebook(Examples.RULEBOOK);
    private static final Parts PARTS = Examples.parts(Examples.PARTS);
    private static final String ANSWER = AssessmentDocument.write(Assessment.of(JOB, RULEBOOK, PARTS));

    private static Replay replay(String answer) {
        return replay(answer, JOB, RULEBOOK, PARTS);
    }

    private static Replay replay(String answer, Job job, Rulebook rulebook, Parts parts) {
        return Replay.of(Examples.utf8(answer), job, rulebook, parts).value().orElseThrow();
    }

    @Test
    void theSameGivesTheSameBytes() {
        assertThat(replay(ANSWER).isSame()).isTrue();
        assertThat(replay(ANSWER + "\n").isSame()).isTrue();
        assertThat(replay(ANSWER + "\r\n").isSame()).isTrue();
        for (String demo : Examples.demo(JobDocument.FORMAT)) {
            Job job = Examples.job(demo);
            String answer = AssessmentDocument.write(Assessment.of(job, RULEBOOK, Parts.NONE));
            assertThat(replay(answer, Examples.job(demo), Examples.rulebook(Examples.RULEBOOK), Parts.NONE)
                            .differences())
                    .isEmpty();
        }
    }

    @Test
    void anotherJobRulebookOrPartsAreNamedByTheirDigests() {
        Job job = Examples.job(changed(Examples.JOB, "\"read\": 142", "\"read\": 143"));
        Rulebook rulebook = Examples.rulebook(changed(Examples.RULEBOOK, "\"9 mm\"", "\"8 mm\""));
        Parts parts = Examples.parts(changed(Examples.PARTS, "\"9 N.m\"", "\"10 N.m\""));
        assertThat(replay(ANSWER, job, RULEBOOK, PARTS).differences())
                .containsExactly(new Replay.Difference("job", "/jobDigest", JOB.digest(), job.digest()));
        assertThat(replay(ANSWER, JOB, rulebook, Parts.NONE).differences())
                .containsExactly(
                        new Replay.Difference("rulebook", "/rulebook/digest", RULEBOOK.digest(), rulebook.digest()),
                        new Replay.Difference("parts", "/parts/digest", PARTS.digest(), "none"));
        assertThat(replay(ANSWER, JOB, RULEBOOK, parts).differences())
                .extracting(Replay.Difference::code)
                .containsExactly("parts");
    }

    @Test
    void anotherVersionOfTheLibraryOrOfItsResultsIsNamed() {
        String library = changed(ANSWER, "\"library\":\"" + Receipt.LIBRARY + "\"", "\"library\":\"0.0.9\"");
        assertThat(replay(library).differences())
                .containsExactly(new Replay.Difference("library", "/library", "0.0.9", Receipt.LIBRARY));
        String semantics = "\"semantics\":" + Receipt.SEMANTICS + ",";
        assertThat(replay(changed(ANSWER, semantics, "\"semantics\":9999,")).differences())
                .containsExactly(new Replay.Difference("semantics", "/semantics", "9999", "" + Receipt.SEMANTICS));
        assertThat(replay(changed(ANSWER, semantics, "")).differences())
                .containsExactly(new Replay.Difference("semantics", "/semantics", "none", "" + Receipt.SEMANTICS));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"note\":\"made-size\"|\"note\":\"mad-size\"|/order/note|\"mad-size\"|\"made-size\"",
                "\"note\":\"made-size\"|\"note\":1|/order/note|1|\"made-size\"",
                "\"cutList\":[]|\"cutList\":[1]|/cutList/0|1|none",
                "\"cutList\":[],||/cutList|none|a list",
                "\"cutList\":[],|\"cutList\":[],\"own\":{},|/own|an object|none"
            })
    void elseTheFirstFieldThatDiffersIsNamed(String passage, String by, String pointer, String recorded, String now) {
        assertThat(replay(changed(ANSWER, passage, by == null ? "" : by)).differences())
                .containsExactly(new Replay.Difference("field", pointer, recorded, now));
    }

    @Test
    void anAnswerThatWasLaidOutAnewIsNotTheSameBytes() {
        assertThat(replay(ANSWER.replaceFirst(",", ", ")).differences())
                .extracting(Replay.Difference::code)
                .containsExactly("layout");
    }

    @Test
    void whatIsNoAnswerIsRefusedWithItsPlace() {
        Read<Replay> other = Replay.of(Examples.utf8(Examples.JOB), JOB, RULEBOOK, PARTS);
        assertThat(other.value()).isEmpty();
        assertThat(other.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("wrong-format");
            assertThat(problem.line()).isPositive();
        });
        assertThat(Replay.of(Examples.utf8("no"), JOB, RULEBOOK, PARTS).problems())
                .isNotEmpty();
    }

    /** A refusal has no receipt: it was made from no rulebook. */
    @Test
    void aRefusalDiffersInEverything() {
        String refused = AssessmentDocument.refused("a", List.of());
        assertThat(replay(refused).differences())
                .extracting(Replay.Difference::code)
                .containsExactly("job", "rulebook", "parts", "semantics");
    }
}
