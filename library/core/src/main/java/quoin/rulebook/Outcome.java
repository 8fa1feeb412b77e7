package quoin.rulebook;

import java.util.List;
import quoin.judge.Args;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Step;
import quoin.measure.Amount;

/** An amount with the steps that led to it, or the step where there was no way on. */
sealed interface Outcome {
    /** There is an amount. */
    record Found(Amount amount, List<Step> steps) implements Outcome {
        public Found {
            steps = List.copyOf(steps);
        }
    }

    /** There is none. */
    record Lost(Cause cause, Step why) implements Outcome {
        /** The finding that says so, for a size: what ends in no size that fits fails. */
        Finding ofSize(String clause) {
            Finding finding = switch (cause) {
                case NO_SIZE_FITS -> Finding.fail(clause);
                case NOT_DETERMINED -> Finding.undecided(clause, Reason.NOT_DETERMINED);
                case NOT_VERIFIED -> Finding.undecided(clause, Reason.NOT_VERIFIED);
            };
            Finding explained = finding.plusStep(why);
            return cause == Cause.NO_SIZE_FITS
                    ? explained.plusStep(Step.of("no-size-fits", Args.of("size", clause)))
                    : explained;
        }

        /** The finding that says so, for a bound: a limit that is not stated never fails a job. */
        Finding ofBound(String clause) {
            Reason reason = cause == Cause.NOT_DETERMINED ? Reason.NOT_DETERMINED : Reason.NOT_VERIFIED;
            return Finding.undecided(clause, reason).plusStep(why);
        }
    }

    /** Why there is none. */
    enum Cause {
        NO_SIZE_FITS,
        NOT_DETERMINED,
        NOT_VERIFIED
    }
}
