package quoin.rulebook;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The order in which sizes can be decided: each after those it refers to. */
final class SizeOrder {
    private final Map<String, SizeClause> clauses = new LinkedHashMap<>();
    private final Map<String, Set<String>> uses = new LinkedHashMap<>();
    private final Map<String, Set<String>> usedBy = new LinkedHashMap<>();
    private final List<SizeClause> sorted = new ArrayList<>();
    private final Map<String, Integer> counts = new LinkedHashMap<>();
    private final Set<String> cyclic;

    private SizeOrder(List<SizeClause> sizes) {
        sizes.forEach(clause -> clauses.putIfAbsent(clause.id(), clause));
        sizes.forEach(clause -> counts.merge(clause.id(), 1, Integer::sum));
        clauses.keySet().forEach(id -> usedBy.put(id, new LinkedHashSet<>()));
        for (SizeClause clause : clauses.values()) {
            Set<String> names = new LinkedHashSet<>(figures(clause));
            names.retainAll(clauses.keySet());
            uses.put(clause.id(), names);
            names.forEach(name -> usedBy.getOrDefault(name, Set.of()).add(clause.id()));
        }
        Set<String> done = peel(uses, usedBy, Set.of());
        done.forEach(id -> sorted.addAll(clauses(id)));
        Set<String> rest = new LinkedHashSet<>(clauses.keySet());
        rest.removeAll(done);
        Set<String> after = peel(usedBy, uses, done);
        rest.removeAll(after);
        cyclic = rest;
    }

    static SizeOrder of(List<SizeClause> sizes) {
        return new SizeOrder(sizes);
    }

    /** Every figure or size that a clause refers to. */
    static List<String> figures(SizeClause clause) {
        List<String> names = new ArrayList<>();
        if (clause.of() instanceof Base.OfFigure of) {
            names.add(of.figure());
        } else if (clause.of() instanceof Base.OfShortfall of) {
            names.add(of.figure());
        } else if (clause.of() instanceof Base.OfQuota of) {
            addBy(names, of.quota());
        }
        clause.less().forEach(item -> addBy(names, item.quota()));
        clause.more().forEach(item -> addBy(names, item.quota()));
        return names;
    }

    private static void addBy(List<String> names, Quota quota) {
        if (quota instanceof Quota.Banded banded) {
            names.add(banded.by());
        }
    }

    /** Takes away, again and again, whatever waits for nothing; what is left waits for itself. */
    private static Set<String> peel(
            Map<String, Set<String>> waitsFor, Map<String, Set<String>> waitedFor, Set<String> gone) {
        Map<String, Integer> waiting = new LinkedHashMap<>();
        Deque<String> free = new ArrayDeque<>();
        waitsFor.forEach((id, names) -> {
            int count = 0;
            for (String name : names) {
                count += gone.contains(name) ? 0 : 1;
            }
            waiting.put(id, count);
            if (count == 0 && !gone.contains(id)) {
                free.add(id);
            }
        });
        Set<String> done = new LinkedHashSet<>();
        while (!free.isEmpty()) {
            String id = free.remove();
            done.add(id);
            for (String next : waitedFor.getOrDefault(id, Set.of())) {
                if (waiting.merge(next, -1, Integer::sum) == 0 && !gone.contains(next)) {
                    free.add(next);
                }
            }
        }
        return done;
    }

    private List<SizeClause> clauses(String id) {
        SizeClause clause = clauses.get(id);
        return clause == null ? List.of() : List.of(clause);
    }

    /** Those that can be decided, each after those it refers to. */
    List<SizeClause> sorted() {
        return sorted;
    }

    /** How many clauses decide each size, in the order of the rulebook. */
    Map<String, Integer> counts() {
        return counts;
    }

    /** Those on a cycle, or between two. */
    Set<String> cyclic() {
        return cyclic;
    }
}
