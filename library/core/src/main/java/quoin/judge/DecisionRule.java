package quoin.judge;

/** How sure one must be before a bound counts as kept or broken. Values of it are immutable. */
public sealed interface DecisionRule {
    /** The estimate alone decides; the doubt is shown but does not count. */
    record Simple() implements DecisionRule {}

    /**
     * Pass if P &ge; p, fail if P &le; 1 &minus; p, else undecided.
     *
     * @param probability the p asked for, above 0.5 and below 1
     */
    record Guarded(double probability) implements DecisionRule {
        /** Refuses a probability that proves nothing. */
        public Guarded {
            if (!(probability > 0.5 && probability < 1)) {
                throw new IllegalArgumentException(
                        "probability must be above 0.5 and below 1, got " + probability);
            }
        }
    }

    /**
     * The rule by which the estimate alone decides.
     *
     * @return the rule
     */
    static DecisionRule simple() {
        return new Simple();
    }

    /**
     * The rule by which the odds must reach a probability.
     *
     * @param probability the p asked for, above 0.5 and below 1
     * @return the rule
     */
    static DecisionRule guarded(double probability) {
        return new Guarded(probability);
    }
}
