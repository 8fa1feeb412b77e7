package quoin.clearance;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is known of the site: closed lists of facts, each of which may be unknown. Immutable and safe for use by many
 * threads.
 */
public final class SiteFacts {
    /** What an answer may be to each fact, besides {@code unknown}. */
    public static final Map<String, List<String>> ANSWERS = answers();

    /** Nothing is known. */
    public static final SiteFacts UNKNOWN = new SiteFacts(Map.of());

    private final Map<String, String> stated;

    private SiteFacts(Map<String, String> stated) {
        this.stated = stated;
    }

    private static Map<String, List<String>> answers() {
        Map<String, List<String>> map = new LinkedHashMap<>();
        map.put("role", List.of("light", "escape", "smoke", "access"));
        map.put("glazed", List.of("yes", "no"));
        map.put("glassMakerAsked", List.of("yes", "no"));
        map.put("structure", List.of("rafter", "joist", "trimmer", "truss", "engineered"));
        map.put("below", List.of("floor", "stairs", "water", "void"));
        map.put("platform", List.of("none", "ladder", "tower"));
        return Collections.unmodifiableMap(map);
    }

    /**
     * Facts by name; what is missing is unknown.
     *
     * @param stated the facts that somebody stated
     * @return the facts
     * @throws IllegalArgumentException if a fact or its value is not in the closed lists
     */
    public static SiteFacts of(Map<String, String> stated) {
        Map<String, String> ordered = new LinkedHashMap<>();
        for (Map.Entry<String, List<String>> entry : ANSWERS.entrySet()) {
            String value = stated.getOrDefault(entry.getKey(), "unknown");
            if (!value.equals("unknown") && !entry.getValue().contains(value)) {
                throw new IllegalArgumentException(
                        entry.getKey() + " must be one of " + entry.getValue() + " or unknown, got " + value);
            }
            ordered.put(entry.getKey(), value);
        }
        for (String name : stated.keySet()) {
            if (!ANSWERS.containsKey(name)) {
                throw new IllegalArgumentException("site fact must be one of " + ANSWERS.keySet() + ", got " + name);
            }
        }
        return new SiteFacts(Collections.unmodifiableMap(ordered));
    }

    /**
     * What is known of one fact.
     *
     * @param name the fact, such as {@code role}
     * @return its value, or {@code unknown}
     */
    public String get(String name) {
        return stated.getOrDefault(name, "unknown");
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SiteFacts that && ANSWERS.keySet().stream().allMatch(n -> get(n).equals(that.get(n)));
    }

    @Override
    public int hashCode() {
        return ANSWERS.keySet().stream().map(this::get).toList().hashCode();
    }

    @Override
    public String toString() {
        return stated.toString();
    }
}
