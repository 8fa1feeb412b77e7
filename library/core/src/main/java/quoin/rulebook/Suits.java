package quoin.rulebook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import quoin.judge.Bound;
import quoin.judge.Catalogue;
import quoin.measure.Amount;
import quoin.measure.Estimate;
import quoin.measure.Uncertain;

/**
 * The openings that finished sizes suit: for which survey figures a rulebook decides just these sizes, and which of its bounds
 * they then keep.
 *
 * <p>Each rounding, sum and band is taken back exactly; the ends are those of exact arithmetic (nearer than 1e-6 of a step to one,
 * deciding may fall to the other side). Bounds are held against the figures and sizes themselves, without doubt. Immutable and
 * safe for use by many threads.
 *
 * @param boxes the figures, each between two ends; any one of the boxes will do; none where no opening gives these sizes
 * @param kept the bounds that hold everywhere in the boxes
 * @param broken the bounds that hold nowhere in them
 * @param open the bounds that these figures and sizes do not settle: such as hang on the shape of the opening
 */
public record Suits(List<Box> boxes, List<String> kept, List<String> broken, List<String> open) {
    /**
     * Figures with their ends.
     *
     * @param figures what each may be, by the figure's name
     */
    public record Box(Map<String, Interval> figures) {
        /** Copies the map, sorted by name. */
        public Box {
            figures = Collections.unmodifiableMap(new TreeMap<>(figures));
        }
    }

    /** Copies the lists. */
    public Suits {
        boxes = List.copyOf(boxes);
        kept = List.copyOf(kept);
        broken = List.copyOf(broken);
        open = List.copyOf(open);
    }

    /**
     * The openings that these sizes suit.
     *
     * @formula all x with size(x) = the size stated, for each size; limits on figures of the boxes draw these in
     * @unit that of the figures
     * @edge no box where no figure gives the size: no multiple of its step, not in its list, not above zero, above the last
     *     band
     * @source practice: which openings a stock frame fits
     * @param rulebook the rules, without errors
     * @param catalogue every figure that can be named
     * @param sizes the finished sizes, by name
     * @param choices the chosen part by kind
     * @return the openings
     * @throws IllegalArgumentException if a size is none of the rulebook, starts from a shortfall or hangs on more bands than can
     *     be taken apart
     */
    public static Suits of(
            Rulebook rulebook, Catalogue catalogue, Map<String, Amount> sizes, Map<String, String> choices) {
        Inverse inverse = new Inverse(rulebook, new Names(rulebook, catalogue), choices);
        List<Map<String, Interval>> all = List.of(Map.of());
        for (Map.Entry<String, Amount> size : sizes.entrySet()) {
            if (!inverse.isSize(size.getKey())) {
                throw new IllegalArgumentException("size must be one of the rulebook, got " + size.getKey());
            }
            all = Inverse.both(
                    all, inverse.of(size.getKey(), Interval.of(size.getValue().value())));
        }
        List<Box> boxes = all.stream().map(Box::new).toList();
        return new Judge(rulebook, catalogue, sizes, choices).of(boxes);
    }

    /** Holds bounds against boxes. */
    private record Judge(
            Rulebook rulebook, Catalogue catalogue, Map<String, Amount> sizes, Map<String, String> choices) {
        Suits of(List<Box> boxes) {
            List<Box> drawn = boxes;
            List<String> kept = new ArrayList<>();
            List<String> broken = new ArrayList<>();
            List<String> open = new ArrayList<>();
            for (BoundClause clause : rulebook.bounds()) {
                List<Box> inside = new ArrayList<>();
                boolean told = !drawn.isEmpty();
                boolean all = true;
                for (Box box : drawn) {
                    Optional<List<Box>> rest = keeping(clause, box);
                    told &= rest.isPresent();
                    all &= rest.isPresent() && rest.get().equals(List.of(box));
                    rest.ifPresent(inside::addAll);
                }
                if (!told) {
                    open.add(clause.id());
                } else if (inside.isEmpty()) {
                    broken.add(clause.id());
                } else {
                    kept.add(clause.id());
                    drawn = all ? drawn : inside;
                }
            }
            return new Suits(drawn, kept, broken, open);
        }

        /** What of a box keeps a bound: all, a part or nothing; empty where that cannot be told. */
        private Optional<List<Box>> keeping(BoundClause clause, Box box) {
            Map<String, Estimate> some = new LinkedHashMap<>();
            box.figures().forEach((figure, ends) -> some.put(figure, Uncertain.exact(ends.some())));
            FigureSource survey = figure -> Optional.ofNullable(some.get(figure));
            Sizes decided = Sizing.decide(rulebook, catalogue, survey, choices, sizes);
            FigureSource known = decided.before(survey);
            Optional<Estimate> value = known.forBands(clause.figure());
            if (value.isEmpty()
                    || !isConstant(clause, decided)
                    || !(clause.bound(known, choices) instanceof Limits.Stated stated)) {
                return Optional.empty();
            }
            Bound bound = stated.bound();
            Interval limits = new Interval(bound.atLeast(), true, bound.atMost(), true);
            Interval ends = box.figures().get(clause.figure());
            if (ends == null) {
                return Optional.of(bound.contains(value.get().value()) ? List.of(box) : List.of());
            }
            Map<String, Interval> drawn = new LinkedHashMap<>(box.figures());
            drawn.put(clause.figure(), ends.and(limits));
            return Optional.of(ends.and(limits).isEmpty() ? List.of() : List.of(new Box(drawn)));
        }

        /** Whether it hangs on nothing that changes within a box: stated sizes, those made of them, figures, fixed limits. */
        private boolean isConstant(BoundClause clause, Sizes decided) {
            boolean fixed = Stream.of(clause.atLeast(), clause.atMost(), clause.within())
                    .flatMap(List::stream)
                    .allMatch(quota -> !(quota instanceof Quota.Banded banded) || isStated(banded.by()));
            return fixed && (decided.find(clause.figure()).isEmpty() || isStated(clause.figure()));
        }

        private boolean isStated(String name) {
            if (sizes.containsKey(name)) {
                return true;
            }
            return rulebook.sizes().stream()
                    .filter(size -> size.id().equals(name))
                    .anyMatch(size -> !SizeOrder.figures(size).isEmpty()
                            && SizeOrder.figures(size).stream().allMatch(this::isStated));
        }
    }
}
