package quoin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ImpactLinesTest {
    private static final String OLD = Run.demo("heron-frame.json");

    @TempDir
    private Path folder = Path.of("");

    private String now = "";

    @BeforeEach
    void newRules() throws IOException {
        String rules = Files.readString(Path.of(OLD))
                .replace("\"1.2.0\"", "\"1.2.9\"")
                .replaceFirst("\"amount\": \"3 mm\"", "\"amount\": \"4 mm\"");
        now = Files.writeString(folder.resolve("now.json"), rules).toString();
    }

    private static String job(String demo) throws IOException {
        return Files.readString(Run.DEMO.resolve(demo)).replace("\n", " ");
    }

    private Run impact(String jobs, String... more) throws IOException {
        Path file = Files.writeString(folder.resolve("jobs.ndjson"), jobs);
        List<String> words =
                new ArrayList<>(List.of("impact", OLD, now, file.toString(), "--parts", Run.demo("heron-parts.json")));
        words.addAll(List.of(more));
        return Run.of(words.toArray(new String[0]));
    }

    @Test
    void oneLineAJobInOrderThenTheTotals() throws IOException {
        String jobs = job("reading-room-skew.json") + "\nno job\n" + job("reading-room.json") + "\n";
        Run run = impact(jobs);
        assertThat(run.code()).isZero();
        assertThat(run.out()).isEqualTo("""
                        reading-room-3: size changed; frame.width 1486 mm to 1484 mm; headbox.length 1482 mm to 1480 mm
                        line 2: refused
                        reading-room-2: size changed; frame.width 1495 mm to 1493 mm; headbox.length 1491 mm to 1489 mm
                        3 jobs by heron-frame 1.2.0 and heron-frame 1.2.9: 2 size changed, 1 refused
                        """);
        assertThat(run.err())
                .contains("jobs.ndjson:2:1: this is not JSON")
                .endsWith("quoin: 3 jobs compared, 1 of them refused\n");
        assertThat(impact(jobs)).as("the same again").isEqualTo(run);
    }

    @Test
    void theSameAsDocuments() throws IOException {
        Run run = impact(
                job("reading-room.json") + "\n" + job("reading-room.json").replace("1502", "\"NaN\""), "--json");
        List<String> lines = run.out().lines().toList();
        assertThat(lines).hasSize(3);
        assertThat(lines.get(0))
                .isEqualTo("{\"format\":\"quoin-impact/1\",\"job\":\"reading-room-2\",\"change\":\"size-changed\","
                        + "\"verdict\":{\"from\":\"pass\",\"to\":\"pass\"},\"sizes\":{"
                        + "\"frame.width\":{\"from\":1495,\"to\":1493,\"unit\":\"mm\"},"
                        + "\"headbox.length\":{\"from\":1491,\"to\":1489,\"unit\":\"mm\"}}}");
        assertThat(lines.get(1)).contains("\"job\":\"reading-room-2\",\"change\":\"refused\"", "\"line\":2,");
        assertThat(lines.get(2)).contains("\"jobs\":2,\"unchanged\":0,", "\"size-changed\":1,", "\"refused\":1,");
    }

    @Test
    void aJobWhosePartsAreNotAtHandIsRefused() throws IOException {
        Run run = impact(job("reading-room.json").replace("heron-parts", "other-parts") + "\n");
        assertThat(run.code()).isZero();
        assertThat(run.out()).startsWith("reading-room-2: refused\n");
        assertThat(run.err()).contains("parts list other-parts is not at hand");
    }

    @Test
    void noJobIsNoChange() throws IOException {
        assertThat(impact("").out()).isEqualTo("0 jobs by heron-frame 1.2.0 and heron-frame 1.2.9\n");
    }

    @Test
    void badRulesAreBadUseOfAllLines() throws IOException {
        Path bad = Files.writeString(folder.resolve("bad.json"), "{}");
        Run run = Run.of("impact", OLD, bad.toString(), Run.demo("orders.ndjson"));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("bad.json:1:1:");
        assertThat(Run.of("impact", OLD, OLD).err())
                .isEqualTo("quoin: impact takes two rulebooks and a file of jobs, write impact OLD NEW JOBS.ndjson\n");
    }
}
