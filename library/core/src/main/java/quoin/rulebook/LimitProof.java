package quoin.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import quoin.judge.Args;
import quoin.measure.Amount;
import quoin.measure.Dimension;

/**
 * Bounds on sizes that can never fail or never pass while the sizes that they are made from keep their own limits, and
 * bounds that another bound on the same figure makes needless.
 */
final class LimitProof {
    /** So many bounds on one figure are held against each other. */
    private static final int MOST_ON_ONE = 20;

    private final Rulebook rulebook;
    private final Mapping mapping;
    private final Names names;
    private final Meter meter;
    private final Report report;
    private final Offers offers;
    private final Limiting limiting;

    LimitProof(Proving proving) {
        this.rulebook = proving.rulebook();
        this.mapping = proving.mapping();
        this.names = proving.names();
        this.meter = proving.meter();
        this.report = proving.report();
        this.offers = proving.offers();
        this.limiting = proving.limiting();
    }

    void check() {
        Map<String, Double> cuts = new LinkedHashMap<>();
        rulebook.sizes().forEach(clause -> cuts.put(clause.id(), clause.cutWithin()));
        Map<String, List<Integer>> onOne = new LinkedHashMap<>();
        for (int i = 0; i < rulebook.bounds().size(); i++) {
            BoundClause clause = rulebook.bounds().get(i);
            onOne.computeIfAbsent(clause.figure(), figure -> new ArrayList<>()).add(i);
            if (mapping.isMapped(clause.figure()) && isExact(clause)) {
                ever(clause, cuts.getOrDefault(clause.figure(), 0.0), "/bounds/" + i);
            }
        }
        onOne.values().stream().filter(all -> all.size() <= MOST_ON_ONE).forEach(this::needless);
    }

    private static boolean isExact(BoundClause clause) {
        return sides(clause).stream().flatMap(List::stream).allMatch(Mapping::isExact);
    }

    private static List<List<Quota>> sides(BoundClause clause) {
        return List.of(clause.atLeast(), clause.atMost(), clause.within());
    }

    private Set<String> kinds(BoundClause clause) {
        Set<String> kinds = new TreeSet<>();
        sides(clause).forEach(side -> side.forEach(quota -> kinds.addAll(mapping.kinds(quota))));
        return kinds;
    }

    /** The limits in one box. */
    private record Ends(boolean stated, long least, long most) {
        boolean holds(Ends other) {
            return stated && other.stated && least <= other.least && most >= other.most;
        }
    }

    /** One function for each limit of a clause; empty where one has too many boxes. */
    private Optional<List<Regions>> limits(BoundClause clause, Map<String, String> choices) {
        List<Regions> limits = new ArrayList<>();
        for (List<Quota> side : sides(clause)) {
            if (side.isEmpty()) {
                limits.add(Regions.everywhere(new Piece.Constant(0)));
            } else {
                mapping.amount(side.get(0), 1, choices).ifPresent(limits::add);
            }
        }
        return limits.size() == sides(clause).size() ? Optional.of(limits) : Optional.empty();
    }

    private static Ends ends(BoundClause clause, List<Piece> pieces) {
        if (pieces.stream().anyMatch(piece -> piece instanceof Piece.Refused)) {
            return new Ends(false, 0, 0);
        }
        long least = clause.atLeast().isEmpty() ? Long.MIN_VALUE : point(pieces.get(0));
        long most = clause.atMost().isEmpty() ? Long.MAX_VALUE : point(pieces.get(1));
        return clause.within().isEmpty()
                ? new Ends(true, least, most)
                : new Ends(true, -point(pieces.get(2)), point(pieces.get(2)));
    }

    private static long point(Piece piece) {
        return Cut.point(((Piece.Constant) piece).value());
    }

    /** What was found so far about one bound. */
    private static final class Found {
        private boolean anything;
        private boolean alwaysInside = true;
        private boolean neverInside = true;
        private long[] range = {Long.MAX_VALUE, Long.MIN_VALUE};

        void box(long[] size, Ends ends, long cut) {
            anything = true;
            long least = size[0] == Cut.BELOW_ALL ? size[0] : size[0] - cut;
            long most = size[1] == Cut.ABOVE_ALL ? size[1] : size[1] + cut;
            alwaysInside &= ends.stated() && least >= ends.least() && most <= ends.most();
            neverInside &= ends.stated() && (most < ends.least() || least > ends.most());
            range = Limiting.hull(range, size);
        }
    }

    private void ever(BoundClause clause, double cutWithin, String pointer) {
        Set<String> sources = limiting.sources(List.of(clause.figure()));
        sources.remove(clause.figure());
        Set<String> kinds =
                Effects.union(kinds(clause), Effects.union(mapping.kinds(clause.figure()), limiting.kinds(sources)));
        Optional<List<Map<String, String>>> ways = offers.ways(kinds);
        long cut = cutWithin > 0
                ? Cut.point(Exact.of(new Amount(cutWithin, Dimension.LENGTH)).orElse(0))
                : 0;
        Found found = new Found();
        for (Map<String, String> choices : ways.orElse(List.of())) {
            if (!ever(clause, choices, sources, cut, found)) {
                return;
            }
        }
        if (ways.isEmpty() || !found.anything) {
            return;
        }
        Args args = Args.of("clause", clause.id())
                .with("figure", clause.figure())
                .with(
                        "unit",
                        names.dimension(clause.figure())
                                .orElse(Dimension.LENGTH)
                                .answerUnit());
        if (found.alwaysInside) {
            report.warning("never-fails", pointer, Limiting.with(args, found.range));
        } else if (found.neverInside) {
            report.warning("never-passes", pointer, Limiting.with(args, found.range));
        }
    }

    /** Whether all boxes could be looked at. */
    private boolean ever(BoundClause clause, Map<String, String> choices, Set<String> sources, long cut, Found found) {
        Optional<List<Regions>> limits = limits(clause, choices);
        Optional<List<Regions>> inside = limiting.inside(sources, choices);
        Optional<Regions> size = mapping.find(clause.figure(), choices);
        if (limits.isEmpty() || inside.isEmpty() || size.isEmpty()) {
            return false;
        }
        List<Regions> all = new ArrayList<>(limits.get());
        int count = all.size();
        all.add(size.get());
        all.addAll(inside.get());
        return Regions.join(all, meter, (pieces, box) -> {
                    if (pieces.subList(count, pieces.size()).stream().noneMatch(p -> p instanceof Piece.Refused)) {
                        Ends ends = ends(clause, pieces.subList(0, count));
                        found.box(Limiting.range(pieces.get(count), box), ends, cut);
                    }
                    return pieces.get(count);
                })
                .isPresent();
    }

    /** Bounds on one figure, by index: one that holds wherever another does, and asks for no more odds, decides nothing. */
    private void needless(List<Integer> onOne) {
        for (int a : onOne) {
            for (int b : onOne) {
                BoundClause one = rulebook.bounds().get(a);
                BoundClause other = rulebook.bounds().get(b);
                boolean asSure = one.decideOr(rulebook.decide()).equals(other.decideOr(rulebook.decide()));
                if (a != b
                        && asSure
                        && isExact(one)
                        && isExact(other)
                        && isWider(one, other)
                        && (b < a || !isWider(other, one))) {
                    report.warning(
                            "never-matters",
                            "/bounds/" + a,
                            Args.of("clause", one.id())
                                    .with("other", other.id())
                                    .with("figure", one.figure()));
                    break;
                }
            }
        }
    }

    private boolean isWider(BoundClause wide, BoundClause narrow) {
        Optional<List<Map<String, String>>> ways = offers.ways(Effects.union(kinds(wide), kinds(narrow)));
        return ways.isPresent() && ways.get().stream().allMatch(choices -> isWider(wide, narrow, choices));
    }

    private boolean isWider(BoundClause wide, BoundClause narrow, Map<String, String> choices) {
        Optional<List<Regions>> a = limits(wide, choices);
        Optional<List<Regions>> b = limits(narrow, choices);
        if (a.isEmpty() || b.isEmpty()) {
            return false;
        }
        List<Regions> all = new ArrayList<>(a.get());
        all.addAll(b.get());
        int half = a.get().size();
        Piece yes = new Piece.Constant(1);
        Optional<Regions> wider = Regions.join(all, meter, (pieces, box) -> {
            Ends outer = ends(wide, pieces.subList(0, half));
            Ends inner = ends(narrow, pieces.subList(half, pieces.size()));
            boolean neither = !outer.stated() && !inner.stated();
            return neither || outer.holds(inner) ? yes : new Piece.Constant(0);
        });
        return wider.isPresent()
                && wider.get().plain().count() == 1
                && wider.get().piece(0).equals(yes);
    }
}
