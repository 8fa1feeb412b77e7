package quoin.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import quoin.job.Assessment;
import quoin.job.FigureValue;
import quoin.judge.Args;
import quoin.judge.Caution;
import quoin.judge.Finding;
import quoin.judge.Step;
import quoin.judge.Verdict;
import quoin.measure.Dimension;
import quoin.rulebook.BoundClause;
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
                plain.add(words.clause(finding.clause()));
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
            if (!isBound(finding.clause())
                    && finding.reason().isEmpty()
                    && !detail(finding).isEmpty()) {
                page.hanging(rest, detail(finding).substring(2));
            }
        } else if (finding.reason().isEmpty() && !detail(finding).isEmpty()) {
            page.hanging(rest, detail(finding).substring(2));
        }
        for (Caution caution : finding.cautions()) {
            page.hanging(rest, words.of(caution));
        }
    }

    private String title(Finding finding) {
        String clause = finding.clause();
        if (finding.figure().isEmpty()) {
            return words.clause(clause);
        }
        FigureValue figure = assessment.figures().get(finding.figure());
        StringBuilder title = new StringBuilder(isBound(clause) ? clause : words.clause(clause))
                .append(": ")
                .append(words.figure(finding.figure()));
        if (figure != null) {
            title.append(' ').append(lengths.amount(figure.estimate().value(), figure.dimension()));
        }
        limit(finding).ifPresent(limit -> title.append(", ").append(limit));
        because(clause).ifPresent(because -> title.append(" (").append(because).append(')'));
        return title.toString();
    }

    private boolean isBound(String clause) {
        return assessment.rulebook().bounds().stream()
                .anyMatch(bound -> bound.id().equals(clause));
    }

    private Optional<String> because(String clause) {
        return assessment.rulebook().bounds().stream()
                .filter(bound -> bound.id().equals(clause) && !bound.because().isEmpty())
                .map(BoundClause::because)
                .findFirst();
    }

    /** The limit in words: one side, both, or the same either way. */
    private Optional<String> limit(Finding finding) {
        Optional<Step> bound = finding.steps().stream()
                .filter(step -> step.code().equals("bound"))
                .findFirst();
        if (bound.isEmpty() || finding.margin().isEmpty()) {
            return Optional.empty();
        }
        Args args = bound.get().args();
        Dimension dimension = finding.margin().get().dimension();
        Optional<Double> least = number(args, "atLeast");
        Optional<Double> most = number(args, "atMost");
        if (least.isPresent() && most.isPresent()) {
            boolean same = least.get() == -most.get();
            Args both = said(said(Args.NONE, "atLeast", least.get(), dimension), "atMost", most.get(), dimension);
            return Optional.of(words.text(same ? "bound.within" : "bound.between", both));
        }
        String against = finding.margin().get().against();
        return number(args, "limit")
                .map(limit -> words.text("bound." + against, said(Args.NONE, against, limit, dimension)));
    }

    private static Optional<Double> number(Args args, String name) {
        return args.get(name).filter(Double.class::isInstance).map(Double.class::cast);
    }

    /** Limits stand in the unit they were stated in, small angles as offsets. */
    private Args said(Args args, String name, double answer, Dimension dimension) {
        String text = dimension == Dimension.ANGLE
                ? lengths.amount(dimension.fromAnswer(answer), dimension)
                : words.number(answer) + (dimension == Dimension.RATIO ? "" : " " + dimension.answerUnit());
        return args.with(name, text);
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
