package quoin.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Which parts may be chosen: those that the amounts of rulebooks name. Immutable. */
final class Offers {
    /** So many combinations of choices are looked at for one size. */
    private static final int MOST = 256;

    private final Map<String, Set<String>> parts;

    private Offers(Map<String, Set<String>> parts) {
        this.parts = parts;
    }

    static Offers of(Rulebook... rulebooks) {
        Map<String, Set<String>> parts = new TreeMap<>();
        for (Rulebook rulebook : rulebooks) {
            for (Quota quota : rulebook.quotas()) {
                if (quota instanceof Quota.ByChoice by) {
                    parts.computeIfAbsent(by.choice(), kind -> new TreeSet<>())
                            .addAll(by.amounts().keySet());
                }
            }
        }
        return new Offers(parts);
    }

    /** Every way to choose parts of these kinds; empty where there are too many. */
    Optional<List<Map<String, String>>> ways(Set<String> kinds) {
        List<Map<String, String>> ways = List.of(Map.of());
        for (String kind : kinds) {
            Set<String> names = parts.getOrDefault(kind, Set.of());
            if ((long) ways.size() * names.size() > MOST) {
                return Optional.empty();
            }
            List<Map<String, String>> more = new ArrayList<>();
            for (Map<String, String> way : ways) {
                for (String name : names) {
                    Map<String, String> longer = new LinkedHashMap<>(way);
                    longer.put(kind, name);
                    more.add(longer);
                }
            }
            ways = more;
        }
        return Optional.of(ways);
    }

    /** The choices of these kinds alone. */
    static Map<String, String> only(Set<String> kinds, Map<String, String> choices) {
        Map<String, String> only = new LinkedHashMap<>();
        for (String kind : kinds) {
            String part = choices.get(kind);
            if (part != null) {
                only.put(kind, part);
            }
        }
        return only;
    }
}
