package quoin.parts;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Names of parts: never empty, never twice. */
final class Ids {
    private Ids() {}

    static void require(String id, String what) {
        if (id.isEmpty()) {
            throw new IllegalArgumentException(what + " must have a name, got an empty text");
        }
    }

    static <T> Map<String, T> index(List<T> parts, Function<T, String> id, String what) {
        Map<String, T> map = new LinkedHashMap<>();
        for (T part : parts) {
            if (map.put(id.apply(part), part) != null) {
                throw new IllegalArgumentException(
                        what + " " + id.apply(part) + " must be listed once, got it more than once");
            }
        }
        return Collections.unmodifiableMap(map);
    }
}
