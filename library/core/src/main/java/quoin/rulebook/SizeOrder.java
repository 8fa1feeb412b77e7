package quoin.rulebook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The order in which sizes can be decided: each after those it refers to. */
final class SizeOrder {
    static final SizeOrder NONE = new SizeOrder(List.of());

    private final Map<String, Integer> counts = new LinkedHashMap<>();
    private final List<SizeClause> sorted = new ArrayList<>();
    private final Set<String> cyclic = new LinkedHashSet<>();

    private SizeOrder(List<SizeClause> sizes) {
        List<SizeClause> clauses = new ArrayList<>();
        Map<String, Integer> places = new HashMap<>();
        for (SizeClause clause : sizes) {
            if (counts.merge(clause.id(), 1, Integer::sum) == 1) {
                places.put(clause.id(), clauses.size());
                clauses.add(clause);
            }
        }
        int[][] uses = new int[clauses.size()][];
        for (int i = 0; i < uses.length; i++) {
            uses[i] = places(figures(clauses.get(i)), places);
        }
        int[][] usedBy = turned(uses);
        boolean[] done = new boolean[uses.length];
        for (int place : peel(uses, usedBy, done)) {
            sorted.add(clauses.get(place));
        }
        peel(usedBy, uses, done);
        for (int i = 0; i < done.length; i++) {
            if (!done[i]) {
                cyclic.add(clauses.get(i).id());
            }
        }
    }

    /** Where the sizes among these names stand, each once. */
    private static int[] places(List<String> names, Map<String, Integer> places) {
        int[] found = new int[names.size()];
        int count = 0;
        for (String name : names) {
            Integer place = places.get(name);
            if (place != null && !contains(found, count, place)) {
                found[count++] = place;
            }
        }
        return Arrays.copyOf(found, count);
    }

    private static boolean contains(int[] found, int count, int place) {
        for (int i = 0; i < count; i++) {
            if (found[i] == place) {
                return true;
            }
        }
        return false;
    }

    /** Who is used by whom, from who uses whom. */
    private static int[][] turned(int[][] uses) {
        int[] counts = new int[uses.length];
        for (int[] used : uses) {
            for (int place : used) {
                counts[place]++;
            }
        }
        int[][] usedBy = new int[uses.length][];
        for (int i = 0; i < usedBy.length; i++) {
            usedBy[i] = new int[counts[i]];
        }
        for (int i = uses.length - 1; i >= 0; i--) {
            for (int place : uses[i]) {
                usedBy[place][--counts[place]] = i;
            }
        }
        return usedBy;
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

    /** Takes away, again and again, whatever waits for nothing, in order; what is left waits for itself. */
    private static int[] peel(int[][] waitsFor, int[][] waitedFor, boolean[] gone) {
        boolean[] before = gone.clone();
        int[] waiting = new int[waitsFor.length];
        int[] taken = new int[waitsFor.length];
        int free = 0;
        for (int i = 0; i < waiting.length; i++) {
            for (int other : waitsFor[i]) {
                waiting[i] += before[other] ? 0 : 1;
            }
            if (waiting[i] == 0 && !before[i]) {
                taken[free++] = i;
            }
        }
        for (int next = 0; next < free; next++) {
            gone[taken[next]] = true;
            for (int other : waitedFor[taken[next]]) {
                if (--waiting[other] == 0 && !before[other]) {
                    taken[free++] = other;
                }
            }
        }
        return Arrays.copyOf(taken, free);
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
