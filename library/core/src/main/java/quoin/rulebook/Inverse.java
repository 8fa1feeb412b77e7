package quoin.rulebook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.measure.Amount;
import quoin.measure.Dimension;

/** From what a size must be back to what the figures must be that it is made from. Cycles must have been refused. */
final class Inverse {
    /** So many boxes at most; a rulebook has a few. */
    private static final int MOST = 10_000;

    /** A multiple this close, in parts of the step, counts as one. */
    private static final double CLOSE = 1e-6;

    private final Map<String, SizeClause> sizes = new LinkedHashMap<>();
    private final Names names;
    private final Map<String, String> choices;

    Inverse(Rulebook rulebook, Names names, Map<String, String> choices) {
        this.names = names;
        rulebook.order().sorted().forEach(clause -> sizes.put(clause.id(), clause));
        this.choices = choices;
    }

    boolean isSize(String name) {
        return sizes.containsKey(name);
    }

    /** An amount, and what must hold for it. */
    private record Way(double amount, List<Map<String, Interval>> when) {}

    /** The boxes of figures in which a figure or size lies in an interval. */
    List<Map<String, Interval>> of(String name, Interval wanted) {
        SizeClause clause = sizes.get(name);
        if (wanted.isSliver()) {
            return List.of();
        }
        if (clause == null) {
            return List.of(Map.of(name, wanted));
        }
        List<Map<String, Interval>> all = new ArrayList<>();
        Interval positive = isLength(clause) ? wanted.and(Interval.POSITIVE) : wanted;
        for (Interval bare : unrounded(clause.round(), positive)) {
            for (Way way : sums(clause)) {
                if (clause.of() instanceof Base.OfFigure of) {
                    all.addAll(both(way.when(), of(of.figure(), bare.plus(-way.amount()))));
                } else if (bare.has(way.amount())) {
                    all.addAll(way.when());
                }
                check(all.size());
            }
        }
        return all;
    }

    private boolean isLength(SizeClause clause) {
        return names.dimension(clause.id()).orElse(Dimension.LENGTH) == Dimension.LENGTH;
    }

    private static void check(int boxes) {
        if (boxes > MOST) {
            throw new IllegalArgumentException("boxes must be " + MOST + " or fewer, got " + boxes);
        }
    }

    /** Everything that is added, the base too where it is an amount: each combination of bands once. */
    private List<Way> sums(SizeClause clause) {
        List<Way> sums = List.of(new Way(0, List.of(Map.of())));
        if (clause.of() instanceof Base.OfShortfall) {
            throw new IllegalArgumentException("size must not start from a shortfall, got " + clause.id());
        }
        if (clause.of() instanceof Base.OfQuota of) {
            sums = plus(sums, of.quota(), 1);
        }
        for (Item item : clause.more()) {
            sums = plus(sums, item.quota(), item.times());
        }
        for (Item item : clause.less()) {
            sums = plus(sums, item.quota(), -item.times());
        }
        return sums;
    }

    private List<Way> plus(List<Way> sums, Quota quota, double times) {
        List<Way> more = new ArrayList<>();
        for (Way way : ways(quota)) {
            for (Way sum : sums) {
                List<Map<String, Interval>> when = both(sum.when(), way.when());
                if (!when.isEmpty()) {
                    more.add(new Way(sum.amount() + times * way.amount(), when));
                }
                check(more.size());
            }
        }
        return more;
    }

    private List<Way> ways(Quota quota) {
        if (quota instanceof Quota.Fixed fixed) {
            return List.of(new Way(fixed.amount().value(), List.of(Map.of())));
        }
        if (quota instanceof Quota.ByChoice by) {
            Stated number = by.numbers().get(choices.getOrDefault(by.choice(), ""));
            return number == null ? List.of() : List.of(new Way(number.amount().value(), List.of(Map.of())));
        }
        Quota.Banded banded = (Quota.Banded) quota;
        List<Way> ways = new ArrayList<>();
        double from = 0;
        for (Quota.Band band : banded.bands()) {
            double upTo = band.upTo().value();
            List<Map<String, Interval>> when = of(banded.by(), Interval.above(from, upTo));
            if (!when.isEmpty()) {
                ways.add(new Way(band.amount().value(), when));
            }
            from = upTo;
        }
        return ways;
    }

    /** The boxes that lie in one of each. */
    static List<Map<String, Interval>> both(List<Map<String, Interval>> some, List<Map<String, Interval>> others) {
        List<Map<String, Interval>> all = new ArrayList<>();
        for (Map<String, Interval> one : some) {
            for (Map<String, Interval> other : others) {
                Map<String, Interval> box = new LinkedHashMap<>(one);
                other.forEach((figure, ends) -> box.merge(figure, ends, Interval::and));
                if (box.values().stream().noneMatch(Interval::isSliver)) {
                    all.add(box);
                }
                check(all.size());
            }
        }
        return all;
    }

    /** Which values are rounded into an interval. */
    private static List<Interval> unrounded(Rounding rounding, Interval wanted) {
        if (rounding instanceof Rounding.DownTo downTo) {
            return listed(downTo, wanted);
        }
        return rounding instanceof Rounding.Step step
                ? stepped(step, wanted).map(List::of).orElse(List.of())
                : List.of(wanted);
    }

    private static List<Interval> listed(Rounding.DownTo rounding, Interval wanted) {
        List<Double> list = new ArrayList<>(
                rounding.list().stream().map(Amount::value).distinct().toList());
        Collections.sort(list);
        List<Interval> all = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            double next = i + 1 < list.size() ? list.get(i + 1) : Double.POSITIVE_INFINITY;
            if (wanted.has(list.get(i))) {
                all.add(Interval.from(list.get(i), next));
            }
        }
        return all;
    }

    private static Optional<Interval> stepped(Rounding.Step rounding, Interval wanted) {
        double step = rounding.amount().value();
        double first = multiple(wanted.least(), step, wanted.withLeast(), 1);
        double last = multiple(wanted.most(), step, wanted.withMost(), -1);
        if (first > last) {
            return Optional.empty();
        }
        return Optional.of(
                switch (rounding.mode()) {
                    case DOWN -> Interval.from(first, last + step);
                    case UP -> Interval.above(first - step, last);
                    case NEAREST -> new Interval(first - step / 2, first > 0, last + step / 2, last < 0);
                });
    }

    /** The first multiple inside an end, going up or down. */
    private static double multiple(double end, double step, boolean with, int way) {
        if (Double.isInfinite(end)) {
            return end;
        }
        double count = end / step;
        double near = StrictMath.rint(count);
        if (StrictMath.abs(count - near) <= CLOSE) {
            return with ? near * step : (near + way) * step;
        }
        return (way > 0 ? StrictMath.ceil(count) : StrictMath.floor(count)) * step;
    }
}
