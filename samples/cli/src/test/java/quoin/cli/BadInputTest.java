package quoin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bad documents cost a message with place and remedy; faults of a job are findings. */
class BadInputTest {
    @TempDir
    private Path folder = Path.of("");

    private String job = "";
    private String rulebook = "";

    @BeforeEach
    void copyTheDemo() throws IOException {
        job = Files.readString(Run.DEMO.resolve("reading-room.json"));
        rulebook = Files.readString(Run.DEMO.resolve("heron-frame.json"));
        Files.copy(Run.DEMO.resolve("heron-parts.json"), folder.resolve("heron-parts.json"));
        write("heron-frame.json", rulebook);
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private Run assess(String text, String... options) throws IOException {
        String[] args = new String[options.length + 2];
        args[0] = "assess";
        args[1] = write("job.json", text).toString();
        System.arraycopy(options, 0, args, 2, options.length);
        return Run.of(args);
    }

    private String with(String old, String changed) {
        assertThat(job).contains(old);
        return job.replace(old, changed);
    }

    private static void refused(Run run, String... words) {
        assertThat(run.code()).as(run.err()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(words);
        assertThat(run.err().lines()).allSatisfy(line -> assertThat(line).matches(".*\\.json:\\d+:\\d+: .+"));
    }

    @Test
    void notJson() throws IOException {
        refused(assess("{ \"format\": quoin"), "job.json:1:", "not JSON");
        refused(assess(""), "job.json:1:1:", "write a JSON object");
        refused(assess("[1, 2"), "not JSON");
        refused(assess(job + " x"), "not JSON");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"quoin-job/1\"        | \"quoin-job/9\"       | write quoin-job/1",
                "\"place\":             | \"plaice\":           | write one of place",
                "\"read\": 1502, \"by\": \"tape\" | \"read\": 1502, \"by\": \"string\" | write one of tape, laser",
                "\"read\": 1502,        | \"read\": \"12 deg\", | write 1503 mm",
                "\"read\": 1502,        | \"read\": -1502,      | write",
                "\"read\": 1502,        | \"read\": 0,          | write",
                "\"read\": 1502,        | \"read\": 1e300,      | write",
                "\"read\": 1502,        | \"read\": \"NaN\",    | write",
                "\"read\": 1502,        | \"read\": \"1502\",   | without a unit",
                "\"read\": 1502,        | \"read\": \"1502 furlong\", | no unit that is known",
                "\"read\": 1502,        | \"read\": [],         | write",
                "\"fit\": \"recess\"    | \"fit\": \"face\"     | not computed yet",
                "\"of\": \"width@1/4\"  | \"of\": \"girth@1/4\" | write",
                "\"headTowards\": \"ridge\" | \"headTowards\": \"up\" | write one of ridge",
                "\"id\": \"reading-room-2\" | \"id\": \"Reading Room\" | small letter",
                "\"straightWithin\": \"2 mm\" | \"straightWithin\": \"two\" | write",
                "\"glazed\": \"yes\"    | \"glazed\": \"maybe\" | write one of"
            })
    void aWrongFieldIsNamedWithItsPlaceAndWhatWouldBeRight(String old, String changed, String remedy)
            throws IOException {
        Run run = assess(with(old, changed));
        refused(run, remedy);
        long line = job.substring(0, job.indexOf(old)).lines().count();
        assertThat(run.err()).startsWith(folder.resolve("job.json") + ":" + line + ":");
        refused(assess(with(old, changed), "--json"), remedy);
    }

    @Test
    void everythingWrongIsSaidInOneRun() throws IOException {
        String bad = with("\"read\": 1502,", "\"read\": \"NaN\",")
                .replace("\"place\":", "\"plaice\":")
                .replace("\"glazed\": \"yes\"", "\"glazed\": \"maybe\"");
        write("heron-frame.json", rulebook.replace("\"gap.greatest\"", "\"gap.gratest\""));
        Run run = assess(bad, "--json");
        refused(run, "NaN", "plaice", "maybe", "gap.gratest", "heron-frame.json:");
        assertThat(run.err().lines()).hasSize(4);
    }

    @Test
    void aRulebookWithANumberWithoutAUnit() throws IOException {
        write("heron-frame.json", rulebook.replace("\"atMost\": \"9 mm\"", "\"atMost\": 9"));
        refused(assess(job), "heron-frame.json:", "without a unit", "9 mm");
    }

    @Test
    void aRulebookThatNamesAnUnknownFigure() throws IOException {
        write("heron-frame.json", rulebook.replace("\"gap.greatest\"", "\"gap.gratest\""));
        refused(assess(job), "heron-frame.json:", "no room knows the figure gap.gratest", "gap.greatest");
    }

    @Test
    void aRulebookThatIsNotAtHand() throws IOException {
        refused(assess(with("\"1.2.0\"", "\"7.0.0\"")), "heron-frame 7.0.0 is not at hand", "--rulebook");
        refused(assess(with("\"heron-parts\"", "\"egret-parts\"")), "egret-parts is not at hand", "--parts");
    }

    @Test
    void aFileOfAHundredMegabytes() throws IOException {
        Path huge = folder.resolve("huge.json");
        try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
            file.setLength(100L * 1024 * 1024);
        }
        refused(Run.of("assess", huge.toString()), "huge.json:1:1:", "8 MB or less");
        refused(
                Run.of("assess", Run.demo("reading-room.json"), "--rulebook", huge.toString()),
                "huge.json:1:1:",
                "8 MB or less");
    }

    @Test
    void nestingTenThousandDeep() throws IOException {
        refused(assess("[".repeat(10_000)), "job.json:1:", "64 levels or fewer");
        refused(assess("{\"a\":".repeat(10_000)), "64 levels or fewer");
    }

    private static void undecided(Run run, String reason, String... words) {
        assertThat(run.code()).as(run.err() + run.out()).isEqualTo(10);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("\"reason\":\"" + reason + "\"").contains(words);
    }

    @Test
    void aMissingDiagonalIsAFinding() throws IOException {
        String lacking = job.lines()
                .filter(line -> !line.contains("diagonal@head-right"))
                .reduce("", (a, b) -> a + b + "\n");
        undecided(assess(lacking, "--json"), "incomplete", "\"missing\":[\"diagonal@head-right\"]");
    }

    @Test
    void anUnknownHeadIsAFinding() throws IOException {
        undecided(
                assess(with("\"headTowards\": \"ridge\",", ""), "--json"),
                "incomplete",
                "\"missing\":[\"headTowards\"]");
    }

    @Test
    void sidesThatCannotCloseAreAFinding() throws IOException {
        Run run = assess(
                with("\"of\": \"length@left\", \"read\": 2400", "\"of\": \"length@left\", \"read\": 9400"), "--json");
        undecided(run, "readings-disagree", "\"clause\":\"adjustment\"");
    }

    @Test
    void bareWithoutStillIsAFinding() throws IOException {
        undecided(assess(with("\"finished\"", "\"bare\""), "--json"), "incomplete", "\"clause\":\"finish\"");
    }

    @Test
    void unknownSiteFactsAreFindings() throws IOException {
        String unknown = job.replaceAll("\"site\": \\{[^}]*\\},", "");
        Run run = assess(unknown, "--json");
        undecided(run, "not-verified", "\"clause\":\"site.role\"", "\"clause\":\"site.platform\"");
    }

    @Test
    void aQuoteNeverPasses() throws IOException {
        String quote = with("\"grade\": \"survey\"", "\"grade\": \"quote\"");
        assertThat(assess(quote).code()).isEqualTo(10);
        assertThat(assess(quote).out()).contains("not for cutting").doesNotContain("MADE SIZES");
    }

    /** A stock frame ordered by the least reading each way: 1500 less 6. */
    @Test
    void anOrderByTheLeastReadingFailsInTheSkewedOpening() throws IOException {
        job = Files.readString(Run.DEMO.resolve("reading-room-skew.json"));
        String ordered = with("\"choose\": {", "\"ordered\": { \"frame.width\": \"1494 mm\" },\n  \"choose\": {");
        Run run = assess(ordered, "--json");
        assertThat(run.code()).isEqualTo(20);
        assertThat(run.out()).contains("\"clause\":\"goes-in\",\"figure\":\"gap.least\",\"verdict\":\"fail\"");
    }
}
