package quoin.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.judge.Args;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Retake;
import quoin.judge.Step;
import quoin.opening.Cannot;
import quoin.opening.Finish;
import quoin.opening.HeadTowards;
import quoin.opening.Opening;
import quoin.opening.Reading;
import quoin.opening.Span;
import quoin.opening.Suspect;
import quoin.rulebook.Rulebook;

/** Whether the survey holds what it needs, and what to read next. */
final class SurveyCheck {
    private final Job job;
    private final Rulebook rulebook;
    private final Opening opening;

    SurveyCheck(Job job, Rulebook rulebook, Opening opening) {
        this.job = job;
        this.rulebook = rulebook;
        this.opening = opening;
    }

    /** What the job itself, the rulebook and the shape need and do not have. */
    List<String> missing() {
        List<String> missing = new ArrayList<>();
        if (job.opening().headTowards() == HeadTowards.UNKNOWN) {
            missing.add("headTowards");
        }
        if (Double.isNaN(job.opening().straightWithinMm())) {
            missing.add("straightWithin");
        }
        for (String need : rulebook.survey().needs()) {
            if (!missing.contains(need) && !has(need)) {
                missing.add(need);
            }
        }
        for (Span span : opening.adjustment().missing()) {
            if (!missing.contains(span.text())) {
                missing.add(span.text());
            }
        }
        return missing;
    }

    private boolean has(String need) {
        return switch (need) {
            case "headTowards" -> job.opening().headTowards() != HeadTowards.UNKNOWN;
            case "straightWithin" -> !Double.isNaN(job.opening().straightWithinMm());
            case "slope" -> !Double.isNaN(job.opening().slopeRad());
            case "finish" -> job.opening().finish().state() != Finish.State.UNSTATED;
            case "markedOnSite" -> job.opening().markedOnSite();
            default -> isRead(need);
        };
    }

    private boolean isRead(String need) {
        try {
            return opening.survey().has(Span.parse(need));
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    Finding finding(List<String> missing) {
        Finding finding = missing.isEmpty() ? Finding.pass("survey") : Finding.undecided("survey", Reason.INCOMPLETE);
        for (String need : missing) {
            finding = finding.plusStep(Step.of("missing", Args.of("what", need)));
        }
        for (Cannot cannot : job.opening().cannot()) {
            finding = finding.plusStep(
                    Step.of("cannot", Args.of("what", cannot.of().text()).with("because", cannot.because())));
        }
        if (job.opening().finish().state() == Finish.State.UNSTATED) {
            finding = finding.plusStep(Step.of("taken-as-finished", Args.NONE));
        }
        return finding;
    }

    /** Something is still to come on the sides, and nobody said how much. */
    Optional<Finding> finish() {
        Finish finish = job.opening().finish();
        boolean open = finish.state() == Finish.State.BARE && finish.still().isEmpty();
        return open
                ? Optional.of(Finding.undecided("finish", Reason.INCOMPLETE)
                        .plusStep(Step.of("missing", Args.of("what", "still"))))
                : Optional.empty();
    }

    /** What to read next: what is missing, then what would tell which reading is wrong, then what a finding asks for. */
    Optional<Next> next(List<String> missing, List<Suspect> suspects, List<Finding> findings) {
        for (String need : missing) {
            if (isSpan(need) && !isBarred(need)) {
                return Optional.of(new Next(need, usual(), Step.of("missing", Args.of("what", need))));
            }
        }
        for (Suspect suspect : suspects) {
            Step because = Step.of("would-tell", Args.of("readings", suspect.readings()));
            return Optional.of(new Next(suspect.askFor(), instrumentOf(suspect.askFor()), because));
        }
        for (Finding finding : findings) {
            for (Retake retake : finding.retakes()) {
                if (retake.isWorthTaking()) {
                    Step because = Step.of("would-settle", Args.of("clause", finding.clause()));
                    return Optional.of(new Next(retake.readings().get(0), retake.by(), because));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isSpan(String need) {
        return need.indexOf('@') > 0;
    }

    private boolean isBarred(String need) {
        return job.opening().cannot().stream()
                .anyMatch(cannot -> cannot.of().text().equals(need));
    }

    private String instrumentOf(String of) {
        return job.opening().readings().stream()
                .filter(reading -> reading.of().text().equals(of))
                .map(reading -> reading.by().id())
                .findFirst()
                .orElse(usual());
    }

    /** The instrument that took the first reading. */
    private String usual() {
        List<Reading> readings = job.opening().readings();
        return readings.isEmpty() ? "" : readings.get(0).by().id();
    }
}
