package quoin.rulebook;

import java.util.Objects;

/** What a size starts from. Values of it are immutable. */
public sealed interface Base {
    /**
     * The estimate of a survey figure, or another size.
     *
     * @param figure its name
     */
    record OfFigure(String figure) implements Base {
        /** Refuses an empty name. */
        public OfFigure {
            Checks.named(figure, "figure");
        }
    }

    /**
     * The value that a figure falls short of with a stated probability.
     *
     * @param figure its name
     * @param probability the probability, above 0 and at most 0.5
     */
    record OfShortfall(String figure, double probability) implements Base {
        /** Refuses an empty name and a probability that is not finite. */
        public OfShortfall {
            Checks.named(figure, "figure");
            probability = Checks.finite(probability, "shortfall");
        }
    }

    /**
     * A stated amount: a stock size, or one by bands or by choice.
     *
     * @param quota the amount
     */
    record OfQuota(Quota quota) implements Base {
        /** Checks that nothing is missing. */
        public OfQuota {
            Objects.requireNonNull(quota, "quota");
        }
    }
}
