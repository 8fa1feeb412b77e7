package quoin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import quoin.clearance.SiteFacts;
import quoin.job.Assessment;
import quoin.job.Choices;
import quoin.job.Job;
import quoin.job.OpeningFacts;
import quoin.json.RulebookDocument;
import quoin.judge.Finding;
import quoin.judge.Verdict;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;
import quoin.measure.TapeClass;
import quoin.opening.HeadTowards;
import quoin.opening.Reading;
import quoin.parts.Parts;
import quoin.rulebook.Rulebook;
import quoin.words.Words;

/** The example of the README, run as it stands there. */
class EmbedTest {
    @Test
    void theExampleOfTheReadmeRuns() throws IOException {
        Path demo = Run.DEMO;
        // README starts here
        Instrument tape = Instrument.of("tape", Instrument.Kind.TAPE)
                .withAccuracyClass(TapeClass.II)
                .withEnd(Instrument.End.HOOK)
                .withStep(1)
                .withEach(List.of(Doubt.standard(0.8, Dimension.LENGTH)));
        List<Reading> readings = List.of(
                Reading.of("width@head", tape, 1503, 1504),
                Reading.of("width@foot", tape, 1503, 1504),
                Reading.of("length@left", tape, 2400),
                Reading.of("length@right", tape, 2400),
                Reading.of("diagonal@head-left", tape, 2832, 2833),
                Reading.of("diagonal@head-right", tape, 2831, 2831));
        SiteFacts site = SiteFacts.of(Map.of("role", "light", "glazed", "yes", "structure", "rafter"));
        Choices choose = new Choices("heron-frame", "", "", "", Map.of("drive", "drive-m"), "head", "right", "right");
        Job job = Job.named("order-4711", OpeningFacts.finished(HeadTowards.RIDGE, 2, readings), choose)
                .site(site)
                .build();
        Rulebook rules = RulebookDocument.read(Files.readAllBytes(demo.resolve("heron-frame.json")))
                .value()
                .orElseThrow();

        Assessment assessment = Assessment.of(job, rules, Parts.NONE);

        Verdict verdict = assessment.verdict(); // UNDECIDED: three facts of the site are not known
        double width = assessment.order().orElseThrow().widthMm(); // what the workshop makes
        Finding goesIn = assessment.findings().stream()
                .filter(finding -> finding.clause().equals("goes-in"))
                .findFirst()
                .orElseThrow();
        String odds = Words.in(Locale.ENGLISH).of(goesIn.odds().orElseThrow());
        // README ends here
        assertThat(verdict).isEqualTo(Verdict.UNDECIDED);
        assertThat(assessment.findings().stream()
                        .filter(finding -> finding.verdict() == Verdict.UNDECIDED)
                        .map(Finding::clause))
                .contains("site.glassMakerAsked", "site.below", "site.platform");
        assertThat(width).isBetween(1490.0, 1500.0);
        assertThat(odds).contains("against");
    }

    @Test
    void theReadmeShowsThisVeryExample() throws IOException {
        String source = Files.readString(Path.of("src", "test", "java", "quoin", "cli", "EmbedTest.java"));
        String start = "        // README starts here\n";
        String block =
                source.substring(source.indexOf(start) + start.length(), source.indexOf("        // README ends here"));
        String snippet = block.lines()
                .map(line -> line.isEmpty() ? line : line.substring(8))
                .collect(Collectors.joining("\n"));
        assertThat(Files.readString(Path.of("..", "..", "README.md"))).contains("```java\n" + snippet + "\n```");
    }
}
