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
                throw new IllegalArgumentException("probability must be above 0.5 and below 1, got " + probability);
            }
        }
    }

    /**
     * Pass inside the limits drawn in by a length, fail outside the limits let out by it, else undecided.
     *
     * @param width the guard band, in base units of the figure, 0 or more
     */
    record GuardBand(double width) implements DecisionRule {
        /** Refuses a band that lets values outside the limits pass. */
        public GuardBand {
            if (!(width >= 0 && width < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("width must be 0 or more and finite, got " + width);
            }
        }
    }

    /**
     * A guard band of a multiple of the expanded uncertainty U = k u.
     *
     * <p>The multiple means nothing without the k it was made for, so both are stated.
     *
     * @param factor the multiple r, 0 or more; the band is r k u
     * @param coverageFactor the k of U, above 0
     */
    record GuardFactor(double factor, double coverageFactor) implements DecisionRule {
        /** Refuses a band that lets values outside the limits pass. */
        public GuardFactor {
            if (!(factor >= 0 && factor < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("factor must be 0 or more and finite, got " + factor);
            }
            if (!(coverageFactor > 0 && coverageFactor < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("coverageFactor must be above 0 and finite, got " + coverageFactor);
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

    /**
     * The rule with a guard band of a fixed length.
     *
     * @param width the guard band, in base units of the figure, 0 or more
     * @return the rule
     */
    static DecisionRule guardBand(double width) {
        return new GuardBand(width);
    }

    /**
     * The rule with a guard band of a multiple of the expanded uncertainty.
     *
     * @param factor the multiple of U, 0 or more
     * @param coverageFactor the k of U, above 0
     * @return the rule
     */
    static DecisionRule guardFactor(double factor, double coverageFactor) {
        return new GuardFactor(factor, coverageFactor);
    }
}
