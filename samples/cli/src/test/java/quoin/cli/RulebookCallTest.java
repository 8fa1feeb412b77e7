package quoin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RulebookCallTest {
    private static final String OLD = Run.demo("heron-frame.json");
    private static final String NOW = Run.demo("heron-frame-1.3.0.json");

    @TempDir
    private Path folder;

    private String write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    @ParameterizedTest
    @CsvSource({"heron-frame.json", "heron-frame-1.3.0.json", "heron-square.json"})
    void theDemoRulebooksAreClean(String file) {
        Run run = Run.of("rulebook", "check", Run.demo(file), "--parts", Run.demo("heron-parts.json"));
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Nothing is wrong");
    }

    @Test
    void aWarningIsSaidWithItsPlaceAndWitness() throws IOException {
        String text = Files.readString(Path.of(OLD))
                .replace("\"1800 mm\", \"amount\": \"50 mm\"", "\"1800 mm\", \"amount\": \"70 mm\"");
        Run run = Run.of("rulebook", "check", write("down.json", text));
        assertThat(run.code()).isZero();
        // frame.width passes 1800 mm where fit.width reaches 1807 mm: 1807 less 6 is 1801
        assertThat(run.err())
                .matches("(?s).*down.json:\\d+:\\d+: .*size tube.diameter becomes 7 mm smaller where fit.width passes"
                        + " 1807 mm, from 70 to 63; .*");
        assertThat(run.out()).contains("1 warning, said above");
    }

    @Test
    void anErrorEndsWithTwo() throws IOException {
        String text = Files.readString(Path.of(OLD)).replace("\"of\": \"fit.width\"", "\"of\": \"fit.widht\"");
        Run run = Run.of("rulebook", "check", write("wrong.json", text));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("wrong.json:", "fit.widht", "fit.width");
    }

    @Test
    void theDemoVersionsAreCompared() {
        Run run = Run.of("rulebook", "compare", OLD, NOW);
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains(
                        "tube.diameter is 13 mm larger where fit.width is 1497 mm or more and below\n    1807 mm",
                        "the limit atMost of light-strip is 1 mm smaller everywhere",
                        "1.3.0 is enough");
    }

    @Test
    void aVersionThatIsTooSmallIsRefused() throws IOException {
        String text = Files.readString(Path.of(NOW)).replace("\"1.3.0\"", "\"1.2.1\"");
        String file = write("small.json", text);
        Run run = Run.of("rulebook", "compare", OLD, file);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .isEqualTo(file + ":4:3: version 1.2.1 is too small for what changed; write 1.3.0 or more\n");
        assertThat(run.out()).contains("1.2.1 is too small; write 1.3.0 or more.");
    }

    @Test
    void theSameFileTwiceIsNoChange() {
        Run run = Run.of("rulebook", "compare", OLD, OLD);
        assertThat(run.code()).isZero();
        assertThat(run.out().lines().filter(line -> line.equals("  nothing"))).hasSize(4);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rulebook                     | rulebook lacks its command",
                "rulebook judge a             | judge is not a command for rulebooks",
                "rulebook check               | takes one rulebook, got 0",
                "rulebook check a b           | takes one rulebook, got 2",
                "rulebook check --json a      | --json is not an option here",
                "rulebook check nowhere.json  | nowhere.json is not there",
                "rulebook compare a           | takes two rulebooks, got 1",
                "rulebook compare --x a       | --x is not an option here"
            })
    void badUseIsNamedWithWhatWouldBeRight(String line, String words) {
        Run run = Run.of(line.split(" +"));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("quoin: ").contains(words).endsWith("\n");
        assertThat(run.err().lines()).hasSize(1);
    }
}
