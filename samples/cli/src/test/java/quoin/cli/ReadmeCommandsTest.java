package quoin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every command that the README or the guide shows after {@code $ quoin} in an indented block prints what stands below it. What
 * a command writes to a file by {@code >} the commands after it find there.
 */
class ReadmeCommandsTest {
    private static final Path ROOT = Path.of("..", "..");
    private static final String PROMPT = "$ quoin ";

    @TempDir
    private Path folder = Path.of("");

    private record Shown(String command, String output) {}

    private static List<Shown> shown(String document) throws IOException {
        List<Shown> shown = new ArrayList<>();
        Pattern.compile("(?m)^ {4}.*\\R(?:\\R*^ {4}.*\\R)*")
                .matcher(Files.readString(ROOT.resolve(document)))
                .results()
                .map(match -> match.group().indent(-4))
                .filter(block -> block.startsWith(PROMPT))
                .forEach(block -> {
                    for (String part : block.substring(PROMPT.length()).split(Pattern.quote("\n" + PROMPT), -1)) {
                        int end = part.indexOf('\n');
                        String output = end < 0 ? "" : part.substring(end + 1).stripTrailing();
                        shown.add(new Shown(end < 0 ? part : part.substring(0, end), output));
                    }
                });
        return shown;
    }

    /** The tests run in the module's folder, whoever reads the README in the root. */
    private static String here(String text) {
        return text.replace("samples/cli/", "");
    }

    /** Words as a shell takes them: those in quotes are one. */
    private static String[] words(String command) {
        return Pattern.compile("\"([^\"]*)\"|(\\S+)")
                .matcher(command)
                .results()
                .map(match -> match.group(1) == null ? match.group(2) : match.group(1))
                .toArray(String[]::new);
    }

    private String run(String command) throws IOException {
        int to = command.indexOf(" > ");
        String[] words = words(here(to < 0 ? command : command.substring(0, to)));
        for (int i = 0; i < words.length; i++) {
            Path made = folder.resolve(words[i]);
            words[i] = Files.exists(made) ? made.toString() : words[i];
        }
        String out = Run.of(words).out();
        if (to < 0) {
            return out.stripTrailing();
        }
        Files.writeString(folder.resolve(command.substring(to + 3)), out);
        return "";
    }

    @Test
    void everyCommandPrintsWhatIsShown() throws IOException {
        List<Shown> all = new ArrayList<>(shown("README.md"));
        all.addAll(shown("docs/guide.md"));
        assertThat(all).as("the scan must find something").hasSizeGreaterThan(3);
        for (Shown shown : all) {
            assertThat(run(shown.command())).as(shown.command()).isEqualTo(here(shown.output()));
        }
    }
}
