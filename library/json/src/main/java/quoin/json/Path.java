package quoin.json;

import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;

/** The way from the root of a document to a value. It is put into words only when somebody asks. Immutable. */
final class Path {
    static final Path ROOT = new Path(null, "", -1);

    private final @Nullable Path parent;
    private final String name;
    private final int item;

    private Path(@Nullable Path parent, String name, int item) {
        this.parent = parent;
        this.name = name;
        this.item = item;
    }

    Path field(String field) {
        return new Path(this, field, -1);
    }

    Path item(int index) {
        return new Path(this, "", index);
    }

    /** The way as a JSON pointer (RFC 6901). */
    String pointer() {
        Deque<Path> way = new ArrayDeque<>();
        for (Path at = this; at != null && at.parent != null; at = at.parent) {
            way.push(at);
        }
        StringBuilder text = new StringBuilder();
        for (Path step : way) {
            text.append('/').append(step.item < 0 ? step.name.replace("~", "~0").replace("/", "~1") : step.item);
        }
        return text.toString();
    }
}
