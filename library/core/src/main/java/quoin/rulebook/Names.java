package quoin.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import quoin.judge.Args;
import quoin.judge.Catalogue;
import quoin.judge.Figure;
import quoin.judge.Stage;
import quoin.measure.Amount;
import quoin.measure.Dimension;

/** What a rulebook may name: figures of the catalogue, its own sizes, and figures that a job declares. */
final class Names {
    /** So many names are helped; a stranger's document may hold any number of wrong ones. */
    private static final int HELPED = 50;

    private int helped;
    private final Catalogue catalogue;
    private final Map<String, SizeClause> sizes = new LinkedHashMap<>();
    private final Map<String, Integer> indices = new HashMap<>();
    private final Map<String, Dimension> dimensions = new LinkedHashMap<>();
    private final Set<String> cyclic;

    Names(Rulebook rulebook, Catalogue catalogue) {
        this.catalogue = catalogue;
        for (int i = 0; i < rulebook.sizes().size(); i++) {
            SizeClause clause = rulebook.sizes().get(i);
            if (sizes.putIfAbsent(clause.id(), clause) == null) {
                indices.put(clause.id(), i);
            }
        }
        SizeOrder order = rulebook.order();
        this.cyclic = order.cyclic();
        for (SizeClause clause : order.sorted()) {
            ofBase(clause.of()).ifPresent(dimension -> dimensions.put(clause.id(), dimension));
        }
    }

    private Optional<Dimension> ofBase(Base base) {
        if (base instanceof Base.OfQuota of) {
            return amounts(of.quota()).map(Amount::dimension).findFirst();
        }
        return dimension(base instanceof Base.OfFigure of ? of.figure() : ((Base.OfShortfall) base).figure());
    }

    static Stream<Amount> amounts(Quota quota) {
        if (quota instanceof Quota.Fixed fixed) {
            return Stream.of(fixed.amount());
        }
        return quota instanceof Quota.Banded banded
                ? banded.bands().stream().map(Quota.Band::amount)
                : ((Quota.ByChoice) quota).amounts().values().stream();
    }

    Set<String> cyclic() {
        return cyclic;
    }

    /** The way from a size on a cycle, or between two, back to a size that it has passed: a, b, a. */
    List<String> cycleFrom(String id, int most) {
        List<String> way = new ArrayList<>(List.of(id));
        Set<String> passed = new HashSet<>(way);
        String at = id;
        boolean open = true;
        while (open && way.size() < most) {
            at = next(at, id);
            way.add(at);
            open = passed.add(at);
        }
        return way;
    }

    /** A size on a cycle that a clause refers to: the start again if it can be. */
    private String next(String at, String start) {
        List<String> next = SizeOrder.figures(sizes.getOrDefault(at, SizeClause.of(at, new Base.OfFigure(at)))).stream()
                .filter(cyclic::contains)
                .toList();
        return next.contains(start) || next.isEmpty() ? start : next.get(0);
    }

    /** Where a size first stands among the sizes of the rulebook; &minus;1 where it does not. */
    int index(String size) {
        return indices.getOrDefault(size, -1);
    }

    boolean isSize(String name) {
        return sizes.containsKey(name);
    }

    Optional<Figure> figure(String name) {
        return catalogue.find(name);
    }

    /** Whether the name is one that only a job can declare. */
    static boolean isDeclared(String name) {
        return name.startsWith("site.") || name.startsWith("own.");
    }

    boolean isKnown(String name) {
        return isSize(name) || figure(name).isPresent() || isDeclared(name);
    }

    /** Whether the name is of a figure that needs the sizes first. */
    boolean isOrder(String name) {
        return !isSize(name)
                && figure(name).filter(f -> f.stage() == Stage.ORDER).isPresent();
    }

    /** The kind of quantity; empty where it is not known before the job. */
    Optional<Dimension> dimension(String name) {
        return isSize(name)
                ? Optional.ofNullable(dimensions.get(name))
                : figure(name).map(Figure::dimension);
    }

    /** The arguments of an unknown name: itself, and the nearest that are known. */
    Args unknown(String name) {
        helped++;
        return Args.of("figure", name).with("nearest", helped > HELPED ? List.of() : nearest(name));
    }

    private List<String> nearest(String name) {
        int far = StrictMath.max(2, name.length() / 3);
        return Stream.concat(
                        sizes.keySet().stream(), catalogue.figures().stream().map(Figure::id))
                .distinct()
                .filter(known -> StrictMath.abs(known.length() - name.length()) <= far)
                .filter(known -> distance(name, known) <= far)
                .sorted(Comparator.<String>comparingInt(known -> distance(name, known))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(3)
                .toList();
    }

    /** How many letters must be changed, added or dropped. */
    static int distance(String a, String b) {
        int[] above = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = StrictMath.min(change, StrictMath.min(above[j], row[j - 1]) + 1);
            }
            above = row;
        }
        return above[b.length()];
    }
}
