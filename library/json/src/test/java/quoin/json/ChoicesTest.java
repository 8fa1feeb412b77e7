package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static quoin.json.Examples.changed;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.job.Assessment;
import quoin.job.Job;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Verdict;
import quoin.parts.Parts;
import quoin.rulebook.Size;

/** What a rulebook may leave to the job, from the documents to the answer. Expected sizes are sums by hand. */
class ChoicesTest {
    /** 1495 mm wide by the rules of the example; its headbox 4 mm shorter. */
    private static final double WIDTH = 1495;

    /** The example without the order that was made already. */
    private static final String OPEN = changed(Examples.JOB, "\"ordered\": { \"frame.width\": \"1495 mm\" },", "");

    private static Assessment assess(String job, String rulebook) {
        return Assessment.of(Examples.job(job), Examples.rulebook(rulebook), Parts.NONE);
    }

    private static Optional<Double> size(Assessment assessment, String id) {
        return assessment.sizes().find(id).map(Size::value);
    }

    private static Finding finding(Assessment assessment, String clause) {
        return assessment.findings().stream()
                .filter(finding -> finding.clause().equals(clause))
                .findFirst()
                .orElseThrow();
    }

    /** An amount may hang on any kind of part that can be chosen. */
    @ParameterizedTest
    @CsvSource({"drive", "fabric", "profile", "fastener"})
    void amountsByAnyPart(String kind) {
        assertThat(Parts.CHOICES).contains(kind);
        String rules = changed(
                Examples.RULEBOOK,
                "\"choice\": \"drive\", \"amounts\": { \"drive-m\": \"4 mm\" }",
                "\"choice\": \"" + kind + "\", \"amounts\": { \"a\": \"7 mm\", \"b\": \"9 mm\" }");
        String job =
                changed(Examples.JOB, "\"fabric\": \"shade-a\", \"drive\": \"drive-m\",", "\"" + kind + "\": \"b\",");
        assertThat(size(assess(job, rules), "headbox.length")).contains(WIDTH - 9);
        Assessment none = assess(changed(job, "\"" + kind + "\": \"b\",", ""), rules);
        assertThat(size(none, "headbox.length")).isEmpty();
        assertThat(finding(none, "headbox.length").reason()).contains(Reason.NOT_VERIFIED);
    }

    @ParameterizedTest
    @CsvSource({"'1400 mm, 1450 mm, 1500 mm, 1900 mm',1450", "'1900 mm, 1450 mm, 1400 mm',1450", "'1600 mm, 1900 mm',"})
    void stockSizes(String list, Double expected) {
        String stock = "[\"" + list.replace(", ", "\", \"") + "\"]";
        String rules = Examples.RULEBOOK.replaceFirst("\"down\": \"1 mm\"", "\"downTo\": " + stock);
        Assessment assessment = assess(OPEN, rules);
        assertThat(size(assessment, "frame.width")).isEqualTo(Optional.ofNullable(expected));
        if (expected == null) {
            assertThat(finding(assessment, "frame.width").verdict()).isEqualTo(Verdict.FAIL);
        }
    }

    /** The limit hangs on the size: 1495 mm is in the band up to 1495 mm, which is its own edge, and not in one up to 1494. */
    @ParameterizedTest
    @CsvSource({"1495,PASS", "1494,FAIL"})
    void bandedLimits(int edge, Verdict expected) {
        String bands = "{ \"bands\": { \"by\": \"frame.width\", \"amounts\": [ { \"upTo\": \"" + edge
                + " mm\", \"amount\": \"90 mm\" }, { \"upTo\": \"3000 mm\", \"amount\": \"0.1 mm\" } ] } }";
        Assessment assessment =
                assess(Examples.JOB, changed(Examples.RULEBOOK, "\"atMost\": \"9 mm\"", "\"atMost\": " + bands));
        assertThat(finding(assessment, "light-strip").verdict()).isEqualTo(expected);
    }

    /** P(2.31 m within u = 5 mm is at least 2.30 m) = Phi(2) = 0.977, by the table of the normal distribution. */
    @Test
    void figuresOfOnesOwn() {
        String rules = changed(
                Examples.RULEBOOK,
                "\"figure\": \"gap.greatest\", \"atMost\": \"9 mm\"",
                "\"figure\": \"site.headroom\", \"atLeast\": \"2.30 m\"");
        Finding stated = finding(assess(Examples.JOB, rules), "light-strip");
        assertThat(stated.verdict()).isEqualTo(Verdict.PASS);
        assertThat(stated.odds().orElseThrow().value()).isCloseTo(0.97725, within(1e-5));
        String silent = changed(Examples.JOB, "\"site.headroom\"", "\"site.width\"");
        assertThat(finding(assess(silent, rules), "light-strip").reason()).contains(Reason.NOT_VERIFIED);
    }

    /** A size may be of a figure of one's own, too. */
    @Test
    void aSizeOfAFigureOfOnesOwn() {
        String rules = changed(
                Examples.RULEBOOK,
                "\"id\": \"fabric.length\", \"of\": \"frame.length\"",
                "\"id\": \"fabric.length\", \"of\": \"site.headroom\"");
        assertThat(size(assess(Examples.JOB, rules), "fabric.length")).contains(2310.0 + 350);
    }

    @Test
    void anOrderAlreadyMadeReplacesTheResult() {
        Job job = Examples.job(Examples.JOB);
        assertThat(job.ordered()).as("the example orders a width").containsOnlyKeys("frame.width");
        assertThat(size(Assessment.of(job, Examples.rulebook(Examples.RULEBOOK), Parts.NONE), "frame.width"))
                .contains(job.ordered().get("frame.width").value());
        assertThat(Map.copyOf(job.ordered())).hasSize(1);
    }
}
