package quoin.job;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quoin.judge.Catalogue;
import quoin.measure.Extreme;
import quoin.opening.Gaps;
import quoin.rulebook.FigureSource;
import quoin.rulebook.Rulebook;
import quoin.rulebook.Size;
import quoin.rulebook.Sizes;
import quoin.rulebook.Sizing;

/**
 * The frame that the same rules would have given if the least reading each way had been taken for the rectangle that goes
 * in, and how it would fare: the trade's rule, for comparison. Immutable and safe for use by many threads.
 *
 * @param widthMm its width in mm
 * @param lengthMm its length in mm
 * @param leastGap the largest least gap of any placement as held; negative where it jams
 */
public record TradeRule(double widthMm, double lengthMm, Extreme leastGap) {
    /** What is taken for what. */
    private static final Map<String, String> TAKEN_FOR = Map.of(
            "fit.width", "fit.rule.width",
            "fit.length", "fit.rule.length",
            "fit.turned.width", "fit.rule.width",
            "fit.turned.length", "fit.rule.length");

    /** Checks that nothing is missing. */
    public TradeRule {
        Objects.requireNonNull(leastGap, "leastGap");
    }

    /** {@return whether it would not go in} */
    public boolean jams() {
        return !(leastGap.value() >= 0);
    }

    /** {@return the gaps that hold it where it is tightest, by their figure names} */
    public List<String> tightest() {
        return leastGap.governing().names();
    }

    static Optional<TradeRule> of(
            Rulebook rulebook, Catalogue catalogue, FigureSource known, Map<String, String> parts, Surveyed surveyed) {
        FigureSource least = figure -> known.estimate(TAKEN_FOR.getOrDefault(figure, figure));
        Sizes sizes = Sizing.decide(rulebook, catalogue, least, parts, Map.of());
        Optional<Size> width = sizes.find("frame.width");
        Optional<Size> length = sizes.find("frame.length");
        return width.isEmpty() || length.isEmpty()
                ? Optional.empty()
                : Gaps.of(
                                surveyed.opening(),
                                surveyed.held(),
                                width.get().asUncertain(),
                                length.get().asUncertain())
                        .map(gaps ->
                                new TradeRule(width.get().value(), length.get().value(), Gaps.least(gaps)));
    }
}
