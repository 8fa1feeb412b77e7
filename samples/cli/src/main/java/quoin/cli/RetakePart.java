package quoin.cli;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quoin.job.Assessment;
import quoin.job.Next;
import quoin.judge.Args;
import quoin.judge.Finding;
import quoin.judge.Retake;
import quoin.judge.Verdict;
import quoin.opening.Reading;
import quoin.words.Words;

/** What to measure again or still, and why. */
final class RetakePart {
    private final Assessment assessment;
    private final Words words;

    RetakePart(Assessment assessment, Words words) {
        this.assessment = assessment;
        this.words = words;
    }

    void on(Page page) {
        List<Finding> asking = assessment.findings().stream()
                .filter(finding -> finding.verdict() == Verdict.UNDECIDED
                        && !finding.retakes().isEmpty())
                .toList();
        if (!assessment.survey().complete() || !asking.isEmpty()) {
            page.heading("WHAT TO MEASURE, AND WHY");
            next(page);
            missing(page);
            retakes(page, asking);
        }
    }

    private void next(Page page) {
        assessment.survey().next().ifPresent(next -> {
            String by = next.by().isEmpty() ? "" : ", with the " + next.by();
            String why = isMissing(next.name()) ? "it is still missing" : words.of(next.because());
            page.text(2, "Next: " + what(next.name()) + by + "; " + why + ".");
        });
    }

    private boolean isMissing(String name) {
        return assessment.survey().missing().contains(name);
    }

    private void missing(Page page) {
        String next = assessment.survey().next().map(Next::name).orElse("");
        assessment.survey().missing().stream()
                .filter(name -> !name.equals(next))
                .forEach(name -> page.hanging("  - ", words.text("missing", Args.of("what", what(name))) + "."));
    }

    private String what(String name) {
        return words.has("survey." + name) ? words.text("survey." + name, Args.NONE) : words.place(name);
    }

    /** Who is suspected stands with the opening already; here stands what would settle a limit. */
    private void retakes(Page page, List<Finding> asking) {
        Set<String> said = new LinkedHashSet<>();
        for (Finding finding : asking) {
            if (finding.odds().isPresent() && finding.retakes().stream().noneMatch(Retake::isWorthTaking)) {
                page.hanging("  - ", nothingSettles(finding) + ".");
                continue;
            }
            for (Retake retake : finding.retakes()) {
                String line = words.of(retake) + " (" + words.clause(finding.clause()) + ").";
                if (finding.odds().isPresent() && said.add(line)) {
                    page.hanging("  - ", line);
                    another(retake)
                            .ifPresent(by -> page.text(4, words.text("retake.other-instrument", Args.of("by", by))));
                }
            }
        }
    }

    private String nothingSettles(Finding finding) {
        return words.text("retake.not-worth", Args.of("clause", words.clause(finding.clause())));
    }

    /** The one instrument that took all of these, where how well they are read would decide but not by which. */
    private Optional<String> another(Retake retake) {
        Set<String> instruments = new LinkedHashSet<>();
        for (Reading reading : assessment.job().opening().readings()) {
            if (retake.readings().contains(reading.name())) {
                instruments.add(reading.by().id());
            }
        }
        boolean other = retake.by().isEmpty() && Double.isFinite(retake.u()) && instruments.size() == 1;
        return other ? instruments.stream().findFirst() : Optional.empty();
    }
}
