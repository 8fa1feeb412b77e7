package quoin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class SuitsCallTest {
    private static final String FRAME = Run.demo("heron-frame.json");

    /** The example of the README is what the command prints. */
    @Test
    void theReadmeShowsTheRealOutput() throws IOException {
        List<String> lines = Files.readAllLines(Path.of("..", "..", "README.md"));
        int at = lines.indexOf(
                "    $ quoin suits samples/cli/demo/heron-frame.json --width \"1495 mm\" --length \"2391 mm\"");
        assertThat(at).isPositive();
        StringBuilder shown = new StringBuilder();
        for (int i = at + 1; lines.get(i).startsWith("    "); i++) {
            shown.append(lines.get(i).substring(4)).append('\n');
        }
        Run run = Run.of("suits", FRAME, "--width", "1495 mm", "--length", "2391 mm");
        assertThat(run.out()).isEqualTo(shown.toString());
        assertThat(run.code()).isZero();
    }

    @Test
    void aSizeThatTheRulesNeverGiveIsSaidSo() {
        Run run = Run.of("suits", FRAME, "--width", "1495.5 mm", "--length", "2391 mm");
        assertThat(run.code()).isEqualTo(Main.FAIL);
        assertThat(run.out()).contains("no opening").contains("1497.5 mm or more, 1513.5 mm or less");
        assertThat(Run.of("suits", FRAME, "--width", "59 in", "--length", "2391 mm")
                        .out())
                .as("59 in is 1498.6 mm, no whole millimetre")
                .contains("no opening");
    }

    @Test
    void badUseSaysWhatWouldBeRight() {
        assertThat(Run.of("suits", FRAME).err()).contains("write suits RULEBOOK --width");
        assertThat(Run.of("suits", FRAME, "--width", "wide", "--length", "1 m").err())
                .contains("--width is \"wide\"");
        assertThat(Run.of("suits", FRAME, "--width", "1 kg", "--length", "1 m").code())
                .isEqualTo(Main.BAD);
        assertThat(Run.of("suits", FRAME, "--width", "1 m", "--length", "1 m", "--choose", "drive")
                        .err())
                .contains("write --choose drive=drive-m");
        assertThat(Run.of("suits", FRAME, "more").err()).contains("more is one word too many");
        assertThat(Run.of("suits", Run.demo("reading-room.json"), "--width", "1 m", "--length", "1 m")
                        .code())
                .isEqualTo(Main.BAD);
    }
}
