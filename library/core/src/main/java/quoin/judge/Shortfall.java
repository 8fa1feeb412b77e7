package quoin.judge;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;

/**
 * The value that an estimate falls short of with a stated probability, and how far off the number may be.
 *
 * <p>One value: the quantile, by Student's t where the influences have few degrees of freedom. A least or a greatest: the x
 * with P(estimate &lt; x) = p by the joint odds of all parts ({@link Conformity#odds}), so that a least of n independent equal
 * parts falls short of their common quantile with 1 &minus; (1 &minus; p)&#8319;. Immutable and safe for use by many threads.
 *
 * @param value the value, in base units
 * @param lower a bound that it is not below, for the error of the integrated odds; the value itself in closed form
 * @param upper a bound that it is not above
 */
public record Shortfall(double value, double lower, double upper) {
    /** Checks the order; a NaN is refused. */
    public Shortfall {
        if (!(lower <= value && value <= upper)) {
            throw new IllegalArgumentException(
                    "shortfall must be lower <= value <= upper, got " + lower + ", " + value + ", " + upper);
        }
    }

    /**
     * The value that an estimate falls short of with that probability.
     *
     * @param estimate the value with its doubt, or a least or greatest of parts
     * @param probability how likely it is to fall short, above 0 and below 1
     * @return the value; empty for a largest in size, which has no one side to fall short on, and where first order sees no
     *     doubt although there is some
     * @throws IllegalArgumentException if the probability is out of range
     * @formula one value: y + u&middot;t(p, ν); a least: the root of P(all parts ≥ x) = 1 &minus; p between the least quantiles of the
     *     parts at p/n and at p; a greatest: the root of P(all parts &lt; x) = p between the greatest quantiles at p and at
     *     1 &minus; (1 &minus; p)/n
     * @unit as the estimate
     * @edge no doubt: the value itself; parts without doubt: never above the least (or below the greatest) of them
     * @source standard: bounds of Boole and Bonferroni (any textbook on probability); quantiles of the normal and of
     *     Student's distribution
     */
    public static Optional<Shortfall> of(Estimate estimate, double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("probability must be above 0 and below 1, got " + probability);
        }
        if (estimate instanceof Uncertain value) {
            return Marginal.isBlind(value) ? Optional.empty() : Optional.of(exact(quantile(value, probability)));
        }
        Extreme extreme = (Extreme) estimate;
        List<Uncertain> parts =
                extreme.parts().stream().map(Extreme.Part::value).toList();
        if (parts.stream().anyMatch(Marginal::isBlind)) {
            return Optional.empty();
        }
        if (parts.size() == 1) {
            return Optional.of(exact(quantile(parts.get(0), probability)));
        }
        return switch (extreme.kind()) {
            case LEAST ->
                Optional.of(solve(
                        extreme, probability, least(parts, probability / parts.size()), least(parts, probability)));
            case GREATEST ->
                Optional.of(solve(
                        extreme,
                        probability,
                        greatest(parts, probability),
                        greatest(parts, 1 - (1 - probability) / parts.size())));
            case LARGEST_IN_SIZE -> Optional.empty();
        };
    }

    /** {@return how far the number may be off, either way, in base units} */
    public double error() {
        return Math.max(value - lower, upper - value);
    }

    private static Shortfall exact(double value) {
        return new Shortfall(value, value, value);
    }

    /** Some part falls short at least as often as any one does, and at most as often as all of them added up. */
    private static Shortfall solve(Extreme extreme, double probability, double from, double to) {
        double value = root(extreme, probability, Odds::value, from, to);
        double lower = root(extreme, probability, Odds::lower, from, value);
        double upper = root(extreme, probability, Odds::upper, value, to);
        return new Shortfall(value, lower, upper);
    }

    private static double root(
            Extreme extreme, double probability, ToDoubleFunction<Odds> odds, double from, double to) {
        return Crossing.of(
                x -> 1 - probability - odds.applyAsDouble(Conformity.odds(extreme, Bound.atLeast(x))), from, to);
    }

    private static double least(List<Uncertain> parts, double probability) {
        return parts.stream()
                .mapToDouble(part -> quantile(part, probability))
                .min()
                .orElseThrow();
    }

    private static double greatest(List<Uncertain> parts, double probability) {
        return parts.stream()
                .mapToDouble(part -> quantile(part, probability))
                .max()
                .orElseThrow();
    }

    private static double quantile(Uncertain value, double probability) {
        double u = value.standardUncertainty();
        return u > 0
                ? value.value() + u * Gauss.quantile(probability, Marginal.degreesOfFreedom(value))
                : value.value();
    }
}
