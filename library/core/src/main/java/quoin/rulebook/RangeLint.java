package quoin.rulebook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.judge.Args;
import quoin.measure.Amount;

/**
 * Bounds on sizes that can never fail or never pass, and bands that end below a size's limit, as far as plain limits on
 * sizes prove it.
 *
 * <p>Each size is enclosed from its base, items and rounding, inside the fixed limits on the sizes it refers to. The
 * enclosure forgets that two terms may depend on one figure, so it may be too wide and never too narrow: it may miss a
 * bound of that sort, and never names a wrong one.
 */
final class RangeLint {
    /** A value as good as on a limit counts as on it. */
    private static final double CLOSE = 1e-6;

    private final Report report;

    RangeLint(Report report) {
        this.report = report;
    }

    void check(Rulebook rulebook) {
        Map<String, Range> limits = new LinkedHashMap<>();
        for (BoundClause clause : rulebook.bounds()) {
            limits.merge(clause.figure(), limits(clause), Range::limitedTo);
        }
        Map<String, Range> ranges = ranges(rulebook.order(), limits);
        Map<String, Double> cuts = new LinkedHashMap<>();
        rulebook.sizes().forEach(clause -> cuts.put(clause.id(), clause.cutWithin()));
        for (int i = 0; i < rulebook.bounds().size(); i++) {
            BoundClause clause = rulebook.bounds().get(i);
            Range range = ranges.get(clause.figure());
            if (range != null) {
                double cut = cuts.getOrDefault(clause.figure(), 0.0);
                bound(clause, range.widened(cut > 0 ? cut : 0), "/bounds/" + i);
            }
        }
        bands(rulebook.sizes(), limits);
    }

    private void bound(BoundClause clause, Range range, String pointer) {
        Range limits = limits(clause);
        if (limits.equals(Range.ANY)) {
            return;
        }
        Args args = Args.of("clause", clause.id()).with("figure", clause.figure());
        if (range.isInside(limits)) {
            report.warning("never-fails", pointer, args);
        } else if (range.isApartFrom(limits)) {
            report.warning("never-passes", pointer, args);
        }
    }

    /** The fixed limits of a clause; one by bands or by choice counts as none. */
    private static Range limits(BoundClause clause) {
        Optional<Amount> within = BoundLint.fixed(clause.within());
        double least = BoundLint.fixed(clause.atLeast())
                .or(() -> within.map(amount -> new Amount(-amount.value(), amount.dimension())))
                .map(Amount::value)
                .orElse(Double.NEGATIVE_INFINITY);
        double most = BoundLint.fixed(clause.atMost())
                .or(() -> within)
                .map(Amount::value)
                .orElse(Double.POSITIVE_INFINITY);
        return least <= most ? new Range(least, most) : Range.ANY;
    }

    /** Each size before its own limits. */
    private static Map<String, Range> ranges(SizeOrder order, Map<String, Range> limits) {
        Map<String, Range> ranges = new LinkedHashMap<>();
        for (SizeClause clause : order.sorted()) {
            Range range = base(clause.of(), ranges, limits);
            for (Item item : clause.more()) {
                range = range.plus(Range.hull(Names.amounts(item.quota())).times(item.times()));
            }
            for (Item item : clause.less()) {
                range = range.plus(Range.hull(Names.amounts(item.quota())).times(-item.times()));
            }
            ranges.put(clause.id(), round(clause.round(), range));
        }
        return ranges;
    }

    private static Range base(Base base, Map<String, Range> ranges, Map<String, Range> limits) {
        if (base instanceof Base.OfQuota of) {
            return Range.hull(Names.amounts(of.quota()));
        }
        if (base instanceof Base.OfFigure of) {
            Range range = ranges.getOrDefault(of.figure(), Range.ANY);
            return range.limitedTo(limits.getOrDefault(of.figure(), Range.ANY));
        }
        return Range.ANY;
    }

    private static Range round(Rounding rounding, Range range) {
        if (rounding instanceof Rounding.DownTo downTo) {
            double most = range.most() + CLOSE * StrictMath.abs(range.most());
            return Range.hull(downTo.list().stream()).limitedTo(new Range(Double.NEGATIVE_INFINITY, most));
        }
        return rounding instanceof Rounding.Step step
                ? range.widened(StrictMath.abs(step.amount().value()))
                : range;
    }

    private void bands(List<SizeClause> sizes, Map<String, Range> limits) {
        for (int i = 0; i < sizes.size(); i++) {
            SizeClause clause = sizes.get(i);
            String at = "/sizes/" + i;
            if (clause.of() instanceof Base.OfQuota of) {
                bands(of.quota(), limits, at + "/of");
            }
            for (int k = 0; k < clause.less().size(); k++) {
                bands(clause.less().get(k).quota(), limits, at + "/less/" + k);
            }
            for (int k = 0; k < clause.more().size(); k++) {
                bands(clause.more().get(k).quota(), limits, at + "/more/" + k);
            }
        }
    }

    /** A size that its own limit still allows, yet no band covers. */
    private void bands(Quota quota, Map<String, Range> limits, String at) {
        if (!(quota instanceof Quota.Banded banded) || banded.bands().isEmpty()) {
            return;
        }
        Amount last = banded.bands().get(banded.bands().size() - 1).upTo();
        double most = limits.getOrDefault(banded.by(), Range.ANY).most();
        if (most > last.value() && !Double.isInfinite(most)) {
            Args args = Args.of("by", banded.by())
                    .with("witness", last.dimension().toAnswer(most))
                    .with("above", last.toAnswer())
                    .with("unit", last.dimension().answerUnit());
            report.warning("band-gap", at + "/bands/amounts", args);
        }
    }
}
