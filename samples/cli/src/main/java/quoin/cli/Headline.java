package quoin.cli;

import java.util.Optional;
import quoin.job.Assessment;
import quoin.job.Job;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Verdict;

/** The two lines that everything else explains: may it be ordered, and may one come down. */
final class Headline {
    private Headline() {}

    /** The key of the first line. */
    static String order(Assessment assessment) {
        if (assessment.verdict() == Verdict.FAIL) {
            return "headline.do-not-order";
        }
        if (assessment.verdict() == Verdict.PASS) {
            return "headline.order";
        }
        return measureAgain(assessment) ? "headline.measure-again" : "headline.not-yet";
    }

    /** The key of the second line. */
    static String survey(Assessment assessment) {
        boolean again = assessment.verdict() != Verdict.FAIL && measureAgain(assessment);
        return assessment.survey().complete() && !again ? "headline.survey-complete" : "headline.stay-up";
    }

    static boolean isQuote(Assessment assessment) {
        return assessment.job().grade() == Job.Grade.QUOTE;
    }

    private static boolean measureAgain(Assessment assessment) {
        return assessment.findings().stream().anyMatch(Headline::asksForReadings);
    }

    private static boolean asksForReadings(Finding finding) {
        Optional<Reason> reason = finding.reason();
        return reason.isPresent()
                && (reason.get() == Reason.READINGS_DISAGREE
                        || (reason.get() == Reason.DOUBT && !finding.retakes().isEmpty()));
    }
}
