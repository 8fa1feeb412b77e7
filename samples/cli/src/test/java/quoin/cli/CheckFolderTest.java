package quoin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckFolderTest {
    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void aFolderWithOneRulebookAndOneCase() throws IOException {
        Files.createDirectory(folder.resolve("cases"));
        for (String file : List.of("heron-frame.json", "heron-parts.json", "reading-room.json", "cases/plain.json")) {
            Files.copy(Run.DEMO.resolve(file), folder.resolve(file));
        }
    }

    private void change(String file, String from, String to) throws IOException {
        String text = Files.readString(folder.resolve(file));
        assertThat(text).contains(from);
        Files.writeString(folder.resolve(file), text.replace(from, to));
    }

    private Run check() {
        return Run.of("rulebook", "check", folder.toString());
    }

    @Test
    void casesThatHoldAndBandsThatNoneTouches() {
        Run run = check();
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out().lines().toList())
                .containsExactly(
                        folder.resolve("heron-frame.json")
                                + ":29:102: look at this: no case touches the band of tube.diameter by frame.width"
                                + " above 1800 mm up to 3000 mm",
                        "heron-frame 1.2.0: 1 of 1 cases hold; 1 of 11 clauses, bands and choices untouched");
    }

    @Test
    void aCaseThatDoesNotHoldIsNamedAtItsPlaceAndFails() throws IOException {
        change("heron-frame.json", "\"amount\": \"350 mm\"", "\"amount\": \"360 mm\"");
        Run run = check();
        assertThat(run.code()).isEqualTo(20);
        assertThat(run.out())
                .contains("plain.json:9:", "case plain: size fabric.length is 2753 mm, the case expects 2743 mm")
                .contains("heron-frame 1.2.0: 0 of 1 cases hold");
    }

    @Test
    void aCaseForAnotherVersionOrWithoutItsJobIsABadDocument() throws IOException {
        change("cases/plain.json", "\"1.2.0\"", "\"1.4.0\"");
        Run run = check();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("plain.json:6:", "rulebook heron-frame 1.4.0 is not at hand");
        change("cases/plain.json", "\"1.4.0\"", "\"1.2.0\"");
        change("cases/plain.json", "../reading-room", "../writing-room");
        assertThat(check().err()).contains("plain.json:5:", "job ../writing-room.json is not at hand");
    }

    @Test
    void aFolderWithoutARulebookIsBadUse() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));
        assertThat(Run.of("rulebook", "check", empty.toString()).err()).contains("holds no rulebook");
        assertThat(Run.of("rulebook", "check", "nowhere").err()).contains("nowhere is not there");
        assertThat(Run.of("rulebook").code()).isEqualTo(2);
    }

    /** The demo's own cases. */
    @Test
    void theCasesOfTheDemoHold() {
        Run run = Run.of("rulebook", "check", Run.DEMO.toString());
        assertThat(run.code()).as(run.out() + run.err()).isZero();
        assertThat(run.out()).contains("heron-frame 1.2.0: 4 of 4 cases hold; 0 of 11");
    }
}
