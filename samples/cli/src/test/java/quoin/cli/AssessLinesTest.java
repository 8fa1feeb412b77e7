package quoin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AssessLinesTest {
    @TempDir
    private Path folder = Path.of("");

    private static String line(String demo) throws IOException {
        return Files.readString(Run.DEMO.resolve(demo)).replace("\n", " ");
    }

    private Run lines(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("jobs.ndjson"), text);
        return Run.of(
                "assess",
                "--parts",
                Run.demo("heron-parts.json"),
                "--lines",
                file.toString(),
                "--json",
                "--rulebook",
                Run.demo("heron-frame.json"));
    }

    @Test
    void oneAnswerALineInOrder() throws IOException {
        String good = line("reading-room.json");
        String nameless = good.replace("\"id\": \"reading-room-2\",", "").replace("1502", "\"NaN\"");
        String bad = good.replace("1502", "\"NaN\"");
        Run run = lines(good + "\n" + bad + "\nnot json\n" + nameless + "\n" + line("reading-room-skew.json"));
        assertThat(run.code()).isZero();
        List<String> answers = run.out().lines().toList();
        assertThat(answers).hasSize(5);
        assertThat(answers.get(0))
                .isEqualTo(Run.of("assess", Run.demo("reading-room.json"), "--json")
                        .out()
                        .strip());
        assertThat(answers.get(1))
                .contains("\"job\":\"reading-room-2\"", "\"verdict\":\"refused\"", "\"problems\":[{", "\"line\":2");
        assertThat(answers.get(2)).contains("\"job\":null", "\"verdict\":\"refused\"", "\"line\":3");
        assertThat(answers.get(3)).contains("\"job\":null", "\"verdict\":\"refused\"");
        assertThat(answers.get(4)).contains("\"verdict\":\"fail\"");
        assertThat(run.err()).contains("5 lines answered, 3 of them refused").contains("jobs.ndjson:2:");
    }

    @Test
    void aRulebookThatIsNotAtHandRefusesTheLineOnly() throws IOException {
        String other = line("reading-room.json").replace("\"1.2.0\"", "\"7.0.0\"");
        Run run = lines(other + "\n" + line("reading-room.json") + "\n");
        assertThat(run.code()).isZero();
        assertThat(run.out().lines().toList().get(0)).contains("\"refused\"", "no-rulebook");
        assertThat(run.out().lines().toList().get(1)).contains("\"verdict\":\"pass\"");
    }

    @Test
    void anEmptyFileHasNoAnswers() throws IOException {
        Run run = lines("");
        assertThat(run.code()).isZero();
        assertThat(run.out()).isEmpty();
    }

    @Test
    void aLineThatIsFarTooLongIsRefusedAndTheNextOneAnswered() throws IOException {
        Run run = lines("[" + " ".repeat(9 * 1024 * 1024) + "]\n" + line("reading-room.json"));
        assertThat(run.out().lines().toList().get(0)).contains("\"refused\"", "too-large");
        assertThat(run.out().lines().toList().get(1)).contains("\"verdict\":\"pass\"");
    }

    @Test
    void aBadRulebookOnTheCommandLineIsBadUseOfAllLines() throws IOException {
        Path jobs = Files.writeString(folder.resolve("jobs.ndjson"), line("reading-room.json"));
        Path bad = Files.writeString(folder.resolve("bad.json"), "{}");
        Run run = Run.of("assess", "--lines", jobs.toString(), "--rulebook", bad.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("bad.json:1:1:");
    }
}
