package quoin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ReadmeTest {
    private static final Path ROOT = Path.of("..", "..");

    /** Whoever follows the set-up finds two commands, each in a block of its own, and nothing else to run. */
    @Test
    void thereAreExactlyTwoSetUpCommands() throws IOException {
        List<String> blocks = Pattern.compile("(?m)^```(\\w*)\\R((?s:.*?))^```$")
                .matcher(Files.readString(ROOT.resolve("README.md")))
                .results()
                .filter(match -> match.group(1).isEmpty())
                .map(match -> match.group(2).strip())
                .toList();
        assertThat(blocks).containsExactly("mvn -q compile exec:java", "mvn verify");
    }

    /** All but the catalogue, which the build writes. */
    @Test
    void everyFileTheReadmeNamesIsThere() throws IOException {
        String readme = Files.readString(ROOT.resolve("README.md"));
        Pattern.compile("`((?:docs|samples)/[a-z/.-]+\\.(?:md|json)|[A-Z]+\\.md)`")
                .matcher(readme)
                .results()
                .map(match -> match.group(1))
                .filter(file -> !file.equals("docs/catalogue.md"))
                .forEach(file -> assertThat(ROOT.resolve(file)).exists());
    }
}
