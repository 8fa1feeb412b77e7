package quoin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReplayOneTest {
    private static final String JOB = Run.demo("reading-room-skew.json");

    @TempDir
    private Path folder = Path.of("");

    private String answer(String from, String to) throws IOException {
        String answer = Run.of("assess", JOB, "--json").out();
        assertThat(answer).contains(from);
        return Files.writeString(folder.resolve("answer.json"), answer.replace(from, to))
                .toString();
    }

    @Test
    void theSameBytesAgain() throws IOException {
        assertThat(Run.of("replay", answer("", ""), JOB))
                .isEqualTo(new Run(0, "the same bytes again, from job reading-room-3\n", ""));
    }

    @Test
    void whatDiffersIsNamedAndTheExitCodeSaysSo() throws IOException {
        String answer = answer("\"made-size\"", "\"mad-size\"");
        assertThat(Run.of("replay", answer, JOB))
                .isEqualTo(new Run(20, "/order/note was \"mad-size\", is \"made-size\"\n", ""));
        Run other = Run.of("replay", answer, Run.demo("reading-room.json"));
        assertThat(other.code()).isEqualTo(20);
        assertThat(other.out())
                .startsWith("the job is another one: its digest was sha256:")
                .hasLineCount(1);
    }

    @Test
    void whatIsNoAnswerOrNoJobIsBadUse() throws IOException {
        Run noAnswer = Run.of("replay", JOB, JOB);
        assertThat(noAnswer.code()).isEqualTo(2);
        assertThat(noAnswer.out()).isEmpty();
        assertThat(noAnswer.err()).contains("reading-room-skew.json:2:").contains("quoin-assessment/1");
        assertThat(Run.of("replay", answer("", ""), Run.demo("heron-frame.json"))
                        .code())
                .isEqualTo(2);
        assertThat(Run.of("replay", JOB).err())
                .isEqualTo("quoin: replay takes an answer and its job, write replay ANSWER JOB\n");
        assertThat(Run.of("replay", "nowhere.json", JOB).err()).contains("nowhere.json is not there");
    }
}
