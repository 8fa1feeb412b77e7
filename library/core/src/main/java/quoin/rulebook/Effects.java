package quoin.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import quoin.measure.Dimension;

/** Where one function of figures differs from another, said box by box. */
final class Effects {
    /** So many stretches are said one by one; more are said by their period. */
    private static final long LISTED = 12;

    private final String clause;
    private final String field;
    private final Dimension dimension;
    private final Function<String, Dimension> axes;

    Effects(String clause, String field, Dimension dimension, Function<String, Dimension> axes) {
        this.clause = clause;
        this.field = field;
        this.dimension = dimension;
        this.axes = axes;
    }

    /** A box with ends of its own, and how two functions differ in it. */
    private record Area(Map<String, long[]> ends, Difference difference) {
        /** What two areas must have in common to be one along an axis. */
        String beside(String axis) {
            StringBuilder key = new StringBuilder(difference.toString());
            ends.forEach((name, end) -> {
                if (!name.equals(axis)) {
                    key.append(' ').append(name).append(end[0]).append(' ').append(end[1]);
                }
            });
            return key.toString();
        }

        long[] end(String axis) {
            return ends.getOrDefault(axis, new long[] {Cut.BELOW_ALL, Cut.ABOVE_ALL});
        }
    }

    /** That it may differ anywhere, by nobody knows what. */
    Effect anywhere() {
        Effect.Range everything = Effect.Range.between(Cut.BELOW_ALL, Cut.ABOVE_ALL, "");
        Effect.Stretch unknown = new Effect.Stretch(everything, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        return new Effect(
                clause, field, Effect.Kind.OPEN, Map.of(), Map.of(), "", 0, List.of(unknown), dimension.answerUnit());
    }

    /** Every difference for one way to choose; empty where there are too many boxes. */
    Optional<List<Effect>> of(Regions old, Regions now, Map<String, String> choices, Meter meter) {
        return Regions.join(
                        List.of(old, now),
                        meter,
                        (pieces, box) -> Difference.between(pieces.get(0), pieces.get(1), box))
                .map(Regions::plain)
                .map(regions -> said(areas(regions), choices));
    }

    private List<Area> areas(Regions regions) {
        List<Area> areas = new ArrayList<>();
        for (int i = 0; i < regions.count(); i++) {
            Regions.Box box = regions.box(i);
            if (box.piece() instanceof Difference difference && !difference.isNone()) {
                Map<String, long[]> ends = new TreeMap<>();
                regions.axes().forEach(axis -> ends.put(axis, new long[] {box.low(axis), box.high(axis)}));
                areas.add(new Area(ends, difference));
            }
        }
        for (String axis : regions.axes()) {
            areas = joined(areas, axis);
        }
        return areas;
    }

    /** Areas that touch along an axis and differ in the same way are one. Areas come in ascending order. */
    private static List<Area> joined(List<Area> areas, String axis) {
        Map<String, Integer> last = new LinkedHashMap<>();
        List<Area> joined = new ArrayList<>();
        for (Area area : areas) {
            String key = area.beside(axis);
            Integer at = last.get(key);
            if (at != null && joined.get(at).end(axis)[1] == area.end(axis)[0]) {
                Map<String, long[]> ends = new TreeMap<>(area.ends());
                ends.put(axis, new long[] {joined.get(at).end(axis)[0], area.end(axis)[1]});
                joined.set(at, new Area(ends, area.difference()));
            } else {
                last.put(key, joined.size());
                joined.add(area);
            }
        }
        return joined;
    }

    private List<Effect> said(List<Area> areas, Map<String, String> choices) {
        List<Effect> effects = new ArrayList<>();
        for (Area area : areas) {
            Difference difference = area.difference();
            List<Difference.Stretch> stretches = difference.stretches();
            long period = difference.period();
            long[] end = area.end(difference.along());
            if (period > 0 && isShort(end, difference)) {
                stretches = unrolled(difference, end);
                period = 0;
            }
            if (stretches.isEmpty()) {
                continue;
            }
            Map<String, Effect.Range> where = new LinkedHashMap<>();
            area.ends().forEach((axis, ends) -> {
                Effect.Range interval = Effect.Range.between(ends[0], ends[1], unit(axis));
                if (!interval.isEverything()) {
                    where.put(axis, interval);
                }
            });
            String along = difference.along();
            List<Effect.Stretch> shown = stretches.stream()
                    .map(stretch -> said(difference.kind(), stretch, along.isEmpty() ? "" : unit(along)))
                    .toList();
            effects.add(new Effect(
                    clause,
                    field,
                    Effect.Kind.valueOf(difference.kind().name()),
                    choices,
                    where,
                    along,
                    Exact.toAnswer(period),
                    shown,
                    dimension.answerUnit()));
        }
        return effects;
    }

    private String unit(String axis) {
        return axes.apply(axis).answerUnit();
    }

    private static boolean isShort(long[] end, Difference difference) {
        if (Cut.isEnd(end[0]) || Cut.isEnd(end[1])) {
            return false;
        }
        long turns = (end[1] - end[0]) / (2 * difference.period()) + 1;
        return turns <= 2 || turns * difference.stretches().size() <= LISTED;
    }

    /** The stretches of every period that the box meets, cut to the box. */
    private static List<Difference.Stretch> unrolled(Difference difference, long[] end) {
        List<Difference.Stretch> all = new ArrayList<>();
        long period = 2 * difference.period();
        long first = StrictMath.floorDiv(end[0], period) - 2;
        long last = StrictMath.floorDiv(end[1], period) + 1;
        for (long turn = first; turn <= last; turn++) {
            for (Difference.Stretch stretch : difference.stretches()) {
                long from = stretch.from() + turn * period;
                long to = stretch.to() + turn * period;
                long low = StrictMath.max(from, end[0]);
                long high = StrictMath.min(to, end[1]);
                if (low < high) {
                    all.add(cut(stretch, turn * period, low, high));
                }
            }
        }
        return all;
    }

    /** A stretch moved and cut; where it is not even, it rises or falls as its figure does. */
    private static Difference.Stretch cut(Difference.Stretch stretch, long by, long low, long high) {
        if (stretch.first() == stretch.last()) {
            return new Difference.Stretch(low, high, stretch.first(), stretch.last());
        }
        long way = stretch.first() < stretch.last() ? 1 : -1;
        long start = Cut.firstAbove(stretch.from() + by);
        long first = stretch.first() + way * (Cut.firstAbove(low) - start);
        long last = stretch.first() + way * (Cut.lastBelow(high) - start);
        return new Difference.Stretch(low, high, first, last);
    }

    private static Effect.Stretch said(Difference.Kind kind, Difference.Stretch stretch, String unit) {
        boolean numbers = kind == Difference.Kind.CHANGED || kind == Difference.Kind.OPEN;
        double first = numbers ? number(stretch.first()) : Double.NaN;
        double last = numbers ? number(stretch.last()) : Double.NaN;
        return new Effect.Stretch(
                Effect.Range.between(stretch.from(), stretch.to(), unit),
                StrictMath.min(first, last),
                StrictMath.max(first, last));
    }

    private static double number(long point) {
        if (Cut.isEnd(point)) {
            return point == Cut.BELOW_ALL ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        }
        return Exact.toAnswer(Cut.valueOf(point));
    }

    /** Effects that are the same whatever is chosen are said once, without the choices. */
    static List<Effect> merged(Map<Map<String, String>, List<Effect>> byChoices) {
        List<List<Effect>> plain = new ArrayList<>();
        byChoices.values().forEach(effects -> plain.add(without(effects)));
        if (plain.stream().distinct().count() <= 1) {
            return plain.isEmpty() ? List.of() : plain.get(0);
        }
        List<Effect> all = new ArrayList<>();
        byChoices.values().forEach(all::addAll);
        return all;
    }

    private static List<Effect> without(List<Effect> effects) {
        return effects.stream()
                .map(effect -> new Effect(
                        effect.clause(),
                        effect.field(),
                        effect.kind(),
                        Map.of(),
                        effect.where(),
                        effect.along(),
                        effect.period(),
                        effect.stretches(),
                        effect.unit()))
                .toList();
    }

    static Set<String> union(Set<String> a, Set<String> b) {
        Set<String> union = new TreeSet<>(a);
        union.addAll(b);
        return union;
    }
}
