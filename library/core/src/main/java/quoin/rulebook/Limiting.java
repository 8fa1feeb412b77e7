package quoin.rulebook;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import quoin.judge.Args;
import quoin.measure.Amount;

/** Inside which values the fixed limits of a rulebook keep its sizes. */
final class Limiting {
    private final Mapping mapping;
    private final Names names;
    private final Meter meter;
    private final Map<String, SizeClause> sizes = new LinkedHashMap<>();
    private final Map<String, long[]> limits = new LinkedHashMap<>();

    Limiting(Rulebook rulebook, Mapping mapping, Names names, Meter meter) {
        this.mapping = mapping;
        this.names = names;
        this.meter = meter;
        rulebook.sizes().forEach(clause -> sizes.put(clause.id(), clause));
        for (BoundClause clause : rulebook.bounds()) {
            long[] own = names.isSize(clause.figure()) ? fixed(clause) : new long[] {Cut.BELOW_ALL, Cut.ABOVE_ALL};
            if (!(Cut.isEnd(own[0]) && Cut.isEnd(own[1]))) {
                limits.merge(clause.figure(), own, (a, b) ->
                        new long[] {StrictMath.max(a[0], b[0]), StrictMath.min(a[1], b[1])});
            }
        }
        limits.values().removeIf(ends -> ends[0] >= ends[1]);
    }

    /** The cuts at the fixed limits of a clause; one by bands or by choice counts as none. */
    private static long[] fixed(BoundClause clause) {
        OptionalLong within = exact(clause.within());
        OptionalLong least = exact(clause.atLeast());
        OptionalLong most = exact(clause.atMost());
        if (within.isPresent()) {
            least = least.isPresent() ? least : OptionalLong.of(-within.getAsLong());
            most = most.isPresent() ? most : within;
        }
        return new long[] {
            least.isPresent() ? Cut.before(least.getAsLong()) : Cut.BELOW_ALL,
            most.isPresent() ? Cut.after(most.getAsLong()) : Cut.ABOVE_ALL
        };
    }

    private static OptionalLong exact(List<Quota> side) {
        Optional<Amount> fixed = BoundLint.fixed(side);
        return fixed.isEmpty() ? OptionalLong.empty() : Exact.of(fixed.get());
    }

    /** The sizes that have limits. */
    Set<String> limited() {
        return limits.keySet();
    }

    /** The sizes that a size or amount is made from, and they from, and so on; not itself. */
    Set<String> sources(List<String> figures) {
        Set<String> sources = new LinkedHashSet<>();
        Deque<String> rest = new ArrayDeque<>(figures);
        while (!rest.isEmpty()) {
            SizeClause clause = sizes.get(rest.removeFirst());
            if (clause != null) {
                SizeOrder.figures(clause).stream()
                        .filter(name -> names.isSize(name) && sources.add(name))
                        .forEach(rest::add);
            }
        }
        return sources;
    }

    /** The kinds of parts that these sizes depend on. */
    Set<String> kinds(Set<String> ids) {
        Set<String> kinds = new TreeSet<>();
        ids.forEach(id -> kinds.addAll(mapping.kinds(id)));
        return kinds;
    }

    /** Each of these sizes that has limits, refused outside them; empty where that makes too many boxes. */
    Optional<List<Regions>> inside(Set<String> ids, Map<String, String> choices) {
        List<Regions> inside = new ArrayList<>();
        for (String id : ids) {
            long[] ends = limits.get(id);
            Optional<Regions> regions = mapping.find(id, choices);
            if (ends != null && regions.isPresent()) {
                Optional<Regions> cut = regions.get().split(cuts(ends), meter, (piece, between) -> {
                    boolean in = between == (Cut.isEnd(ends[0]) ? 0 : 1);
                    return in ? piece : new Piece.Refused("outside-limits");
                });
                if (cut.isEmpty()) {
                    return Optional.empty();
                }
                inside.add(cut.get());
            }
        }
        return Optional.of(inside);
    }

    private static long[] cuts(long[] ends) {
        return java.util.Arrays.stream(ends).filter(end -> !Cut.isEnd(end)).toArray();
    }

    /** Between what two points a piece lies in a box; the ends of the line where it has no bound. */
    static long[] range(Piece piece, Regions.Box box) {
        if (piece instanceof Piece.Constant constant) {
            return new long[] {Cut.point(constant.value()), Cut.point(constant.value())};
        }
        Piece.Chain chain = (Piece.Chain) piece;
        long low = box.low(chain.figure());
        long high = box.high(chain.figure());
        return new long[] {
            low == Cut.BELOW_ALL ? Cut.BELOW_ALL : chain.at(Cut.firstAbove(low)),
            high == Cut.ABOVE_ALL ? Cut.ABOVE_ALL : chain.at(Cut.lastBelow(high))
        };
    }

    /** The range that holds both. */
    static long[] hull(long[] a, long[] b) {
        return new long[] {StrictMath.min(a[0], b[0]), StrictMath.max(a[1], b[1])};
    }

    /** The arguments with the ends of a range, where it has them. */
    static Args with(Args args, long[] range) {
        Args more = range[0] == Cut.BELOW_ALL ? args : args.with("from", Exact.toAnswer(Cut.valueOf(range[0])));
        return range[1] == Cut.ABOVE_ALL ? more : more.with("to", Exact.toAnswer(Cut.valueOf(range[1])));
    }

    /** The arguments with the choices that something holds for. */
    static Args with(Args args, Map<String, String> choices) {
        return choices.isEmpty() ? args : args.with("choices", List.copyOf(choices.values()));
    }
}
