package quoin.rulebook;

import java.util.List;
import quoin.judge.Args;
import quoin.judge.DecisionRule;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Source;
import quoin.judge.Step;
import quoin.measure.Amount;
import quoin.measure.Uncertain;

/** An amount with the steps that led to it, or the step where there was no way on. */
sealed interface Outcome {
    /** Of an exact number. */
    Uncertain NO_DEVIATION = Uncertain.exact(0);

    /**
     * There is an amount; how far the rule's own number may be off is zero with its influence. The steps are not copied: nobody
     * adds to them afterwards, and who keeps them copies.
     */
    record Found(Amount amount, Uncertain deviation, List<Step> steps, Source source) implements Outcome {
        Found(Amount amount, List<Step> steps) {
            this(amount, NO_DEVIATION, steps, Source.UNSTATED);
        }
    }

    /** There is none; the others that the doubt leaves open, with their odds, where there are such. */
    record Lost(Cause cause, Step why, double open, List<Step> others) implements Outcome {
        public Lost {
            others = List.copyOf(others);
        }

        Lost(Cause cause, Step why) {
            this(cause, why, 0, List.of());
        }

        /** The finding that says so, for a size: what ends in no size that fits fails. */
        Finding ofSize(String clause, DecisionRule rule) {
            if (rule instanceof DecisionRule.Guarded guarded && open > 1 - guarded.probability()) {
                return plus(Finding.undecided(clause, Reason.DOUBT).plusStep(why), others);
            }
            Finding finding = switch (cause) {
                case NO_SIZE_FITS -> Finding.fail(clause);
                case NOT_DETERMINED -> Finding.undecided(clause, Reason.NOT_DETERMINED);
                case NOT_VERIFIED -> Finding.undecided(clause, Reason.NOT_VERIFIED);
            };
            Finding explained = plus(finding.plusStep(why), others);
            return cause == Cause.NO_SIZE_FITS
                    ? explained.plusStep(Step.of("no-size-fits", Args.of("size", clause)))
                    : explained;
        }

        private static Finding plus(Finding finding, List<Step> steps) {
            Finding all = finding;
            for (Step step : steps) {
                all = all.plusStep(step);
            }
            return all;
        }

        /** The finding that says so, for a bound: a limit that is not stated never fails a job. */
        Finding ofBound(String clause) {
            Reason reason = cause == Cause.NOT_DETERMINED ? Reason.NOT_DETERMINED : Reason.NOT_VERIFIED;
            return plus(Finding.undecided(clause, reason).plusStep(why), others);
        }
    }

    /** Why there is none. */
    enum Cause {
        NO_SIZE_FITS,
        NOT_DETERMINED,
        NOT_VERIFIED
    }
}
