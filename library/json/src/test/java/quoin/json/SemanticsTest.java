package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import quoin.job.Assessment;
import quoin.job.Receipt;
import quoin.judge.Reason;
import quoin.measure.Uncertain;

/**
 * What the library answered when its semantics version was given that number, to nine digits. Where this fails, a result has
 * changed: raise {@code Receipt.SEMANTICS}, name the change under <i>results changed</i> in the changelog, and record the
 * new results in a file of the new number. New figures and clauses may be added without; they are in no list.
 */
class SemanticsTest {
    private static final String TAPERED =
            Examples.changed(Examples.JOB, "\"read\": [1503, 1504]", "\"read\": [1505, 1506]");

    private static final String CROOKED = Examples.changed(Examples.JOB, "\"read\": 2833", "\"read\": 2850");

    static Map<String, String> results() {
        Map<String, String> results = new LinkedHashMap<>();
        int number = 0;
        for (String job : List.of(Examples.JOB, TAPERED, CROOKED)) {
            number++;
            gather(
                    "job" + number + " ",
                    Assessment.of(
                            Examples.job(job), Examples.rulebook(Examples.RULEBOOK), Examples.parts(Examples.PARTS)),
                    results);
        }
        return results;
    }

    private static void gather(String job, Assessment assessment, Map<String, String> results) {
        results.put(job + "verdict", assessment.verdict().text());
        assessment.figures().forEach((id, figure) -> {
            String u = figure.estimate() instanceof Uncertain uncertain ? " " + uncertain.standardUncertainty() : "";
            results.put(job + "figure " + id, figure.estimate().value() + u);
        });
        assessment.sizes().all().forEach(size -> results.put(job + "size " + size.id(), "" + size.value()));
        assessment.findings().forEach(finding -> {
            String reason = finding.reason().map(Reason::text).orElse("");
            String odds = finding.odds().map(o -> "" + o.value()).orElse("");
            results.put(
                    job + "finding " + finding.clause(),
                    (finding.verdict().text() + " " + reason + " " + odds).strip());
        });
    }

    @Test
    void theResultsOfThisSemanticsVersionHold() throws IOException {
        Map<String, String> results = results();
        List<String> recorded = recorded("results-" + Receipt.SEMANTICS + ".txt");
        assertThat(recorded).hasSizeGreaterThan(100);
        for (String line : recorded) {
            int colon = line.indexOf(": ");
            String name = line.substring(0, colon);
            assertThat(results).containsKey(name);
            assertThat(isSame(line.substring(colon + 2).strip(), results.getOrDefault(name, "")))
                    .as(line + " is now " + results.get(name))
                    .isTrue();
        }
    }

    private static boolean isSame(String recorded, String now) {
        String[] was = recorded.split(" +");
        String[] is = now.split(" +");
        boolean same = was.length == is.length;
        for (int i = 0; i < was.length && same; i++) {
            same = was[i].equals(is[i]) || (isNumber(was[i]) && isNumber(is[i]) && isClose(was[i], is[i]));
        }
        return same;
    }

    private static boolean isNumber(String text) {
        return text.matches("-?[0-9].*");
    }

    /** Below a thousandth of a nanometre only the rounding of computing is left. */
    private static boolean isClose(String was, String is) {
        double a = Double.parseDouble(was);
        double b = Double.parseDouble(is);
        return Math.abs(a - b) <= 1e-9 * Math.max(1e-3, Math.abs(a));
    }

    @Test
    void aChangeInTheNinthDigitIsSeen() {
        assertThat(isSame("1495.0 0.25", "1495.0000000001 0.25")).isTrue();
        assertThat(isSame("1495.0 0.25", "1495.00001 0.25")).isFalse();
        assertThat(isSame("undecided doubt 0.93", "undecided doubt 0.9300001")).isFalse();
        assertThat(isSame("undecided doubt 0.93", "pass 0.93")).isFalse();
    }

    private static List<String> recorded(String file) throws IOException {
        try (InputStream in = Objects.requireNonNull(SemanticsTest.class.getResourceAsStream(file), file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        }
    }
}
