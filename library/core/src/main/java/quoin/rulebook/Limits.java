package quoin.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import quoin.judge.Bound;
import quoin.judge.Constraint;
import quoin.judge.Finding;
import quoin.judge.Source;
import quoin.judge.Step;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;

/** The limits of a clause for one job, or why there are none. Values of it are immutable. */
public sealed interface Limits {
    /**
     * The limits are stated.
     *
     * @param bound the limits, in base units
     * @param leastBy how far the lower limit may be off: zero, with the influences of the rule's own number
     * @param mostBy how far the upper limit may be off
     * @param cases what the limits may be where the doubt of a figure reaches the edge of a band, the limits above among
     *     them; empty where it does not
     * @param steps which bands and choices they come from; empty where they are fixed
     * @param source where the numbers come from; unstated where the clause's source holds
     */
    record Stated(Bound bound, Uncertain leastBy, Uncertain mostBy, List<Case> cases, List<Step> steps, Source source)
            implements Limits {
        /** Copies the lists. */
        public Stated {
            Objects.requireNonNull(bound, "bound");
            Objects.requireNonNull(leastBy, "leastBy");
            Objects.requireNonNull(mostBy, "mostBy");
            cases = List.copyOf(cases);
            steps = List.copyOf(steps);
            Objects.requireNonNull(source, "source");
        }

        /** {@return whether both limits are exact and nothing is open} */
        public boolean isExact() {
            return leastBy.isExact() && mostBy.isExact() && cases.isEmpty();
        }

        /**
         * What an estimate must keep, the doubt of a limit put on the estimate: y &ge; a + &delta; is y &minus; &delta; &ge; a.
         *
         * @param estimate the figure, in base units
         * @return one constraint, or one for each limit where they may be off differently
         */
        public List<Constraint> on(Estimate estimate) {
            boolean two = bound.hasAtLeast() && bound.hasAtMost() && !leastBy.equals(mostBy);
            if (!two) {
                return List.of(new Constraint(shifted(estimate, bound.hasAtLeast() ? leastBy : mostBy), bound));
            }
            return List.of(
                    new Constraint(shifted(estimate, leastBy), Bound.atLeast(bound.atLeast())),
                    new Constraint(shifted(estimate, mostBy), Bound.atMost(bound.atMost())));
        }

        private static Estimate shifted(Estimate estimate, Uncertain by) {
            if (by.isExact()) {
                return estimate;
            }
            if (estimate instanceof Uncertain value) {
                return value.minus(by);
            }
            Extreme extreme = (Extreme) estimate;
            List<Extreme.Part> parts = new ArrayList<>();
            for (Extreme.Part part : extreme.parts()) {
                parts.add(new Extreme.Part(part.names(), part.value().minus(by)));
            }
            return new Extreme(extreme.kind(), parts);
        }
    }

    /**
     * One of several outcomes.
     *
     * @param when what must hold for it
     * @param limits the limits then, without cases of their own
     */
    record Case(List<Constraint> when, Limits limits) {
        /** Copies the list. */
        public Case {
            when = List.copyOf(when);
            Objects.requireNonNull(limits, "limits");
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
