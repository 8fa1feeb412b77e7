package quoin.cli;

import java.util.Optional;
import quoin.job.Assessment;
import quoin.job.Job;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Retake;
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
        if (assessment.survey().complete()) {
            return "headline.survey-complete";
        }
        if (assessment.survey().next().isEmpty()) {
            return "headline.stay-up-open";
        }
        return missingReadings(assessment) > 1 ? "headline.stay-up-more" : "headline.stay-up";
    }

    /** How many readings are still missing. */
    static long missingReadings(Assessment assessment) {
        return assessment.survey().missing().stream()
                .filter(name -> name.indexOf('@') > 0)
                .count();
    }

    static boolean isQuote(Assessment assessment) {
        return assessment.job().grade() == Job.Grade.QUOTE;
    }

    /** What was read cannot be right or is not good enough; what was never read is another matter. */
    private static boolean measureAgain(Assessment assessment) {
        boolean nothingMissing = assessment.survey().missing().isEmpty();
        return assessment.findings().stream().anyMatch(finding -> asksForReadings(finding, nothingMissing));
    }

    private static boolean asksForReadings(Finding finding, boolean nothingMissing) {
        Optional<Reason> reason = finding.reason();
        return reason.isPresent()
                && (reason.get() == Reason.READINGS_DISAGREE
                        || (nothingMissing
                                && reason.get() == Reason.DOUBT
                                && finding.retakes().stream().anyMatch(Retake::isWorthTaking)));
    }
}
