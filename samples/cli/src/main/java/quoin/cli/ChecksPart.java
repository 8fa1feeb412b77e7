package quoin.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import quoin.job.Assessment;
import quoin.job.FigureValue;
import quoin.judge.Finding;
import quoin.judge.Step;
import quoin.judge.Verdict;
import quoin.words.Words;

/** What was checked, worst first: the verdict, the value and its limit, what there is to spare, and the odds. */
final class ChecksPart {
    private static final int VERDICT = 14;

    private final Assessment assessment;
    private final Words words;
    private final Lengths lengths;

    ChecksPart(Assessment assessment, Words words, Lengths lengths) {
        this.assessment = assessment;
        this.words = words;
        this.lengths = lengths;
    }

    void on(Page page) {
        page.heading("CHECKS");
        List<Finding> findings = new ArrayList<>(assessment.findings());
        findings.sort(Comparator.comparing(Finding::verdict).reversed());
        List<String> plain = new ArrayList<>();
        for (Finding finding : findings) {
            if (finding.verdict() == Verdict.PASS && finding.odds().isEmpty()) {
                plain.add(finding.clause());
            } else {
                finding(page, finding);
            }
        }
        if (!plain.isEmpty()) {
            page.hanging(label(words.of(Verdict.PASS)), String.join(", ", plain));
        }
    }

    private void finding(Page page, Finding finding) {
        page.hanging(label(words.of(finding.verdict())), title(finding));
        String rest = " ".repeat(VERDICT + 4);
        finding.reason().ifPresent(reason -> page.hanging(rest, words.of(reason) + detail(finding)));
        if (finding.margin().isPresent() || finding.odds().isPresent()) {
            String margin = finding.margin().map(words::of).orElse("");
            String odds = finding.odds().map(words::of).orElse("");
            page.hanging(rest, margin + (margin.isEmpty() || odds.isEmpty() ? "" : "; ") + odds);
        } else if (finding.reason().isEmpty() && !detail(finding).isEmpty()) {
            page.hanging(rest, detail(finding).substring(2));
        }
    }

    private String title(Finding finding) {
        String clause = finding.clause();
        if (finding.figure().isEmpty()) {
            return clause;
        }
        FigureValue figure = assessment.figures().get(finding.figure());
        String value = figure == null
                ? ""
                : " " + lengths.amount(figure.estimate().value(), figure.dimension());
        StringBuilder title = new StringBuilder(clause).append(": ").append(finding.figure()).append(value);
        finding.steps().stream()
                .filter(step -> step.code().equals("bound"))
                .forEach(step -> title.append(", ").append(words.of(step)));
        return title.toString();
    }

    private String detail(Finding finding) {
        StringBuilder detail = new StringBuilder();
        for (Step step : finding.steps()) {
            if (!step.code().equals("bound")) {
                detail.append("; ").append(words.of(step));
            }
        }
        return detail.toString();
    }

    private static String label(String verdict) {
        return "  " + Page.pad(verdict, VERDICT) + "  ";
    }
}
