package quoin.rulebook;

import java.util.List;
import java.util.Objects;
import quoin.judge.Bound;
import quoin.judge.Finding;
import quoin.judge.Step;

/** The limits of a clause for one job, or why there are none. Values of it are immutable. */
public sealed interface Limits {
    /**
     * The limits are stated.
     *
     * @param bound the limits, in base units
     * @param steps which bands and choices they come from; empty where they are fixed
     */
    record Stated(Bound bound, List<Step> steps) implements Limits {
        /** Copies the list. */
        public Stated {
            Objects.requireNonNull(bound, "bound");
            steps = List.copyOf(steps);
        }
    }

    /**
     * There are no limits for this job.
     *
     * @param finding the undecided finding that says why
     */
    record NotStated(Finding finding) implements Limits {
        /** Checks that nothing is missing. */
        public NotStated {
            Objects.requireNonNull(finding, "finding");
        }
    }
}
