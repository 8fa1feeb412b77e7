package quoin.json;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quoin.judge.Problem;

/**
 * What came of reading a document: a value, or what is wrong with it. Immutable and safe for use by many threads.
 *
 * @param <T> the kind of value
 */
public final class Read<T> {
    private final @Nullable T value;
    private final List<Problem> problems;
    private final String id;

    Read(@Nullable T value, List<Problem> problems, String id) {
        this.value = value;
        this.problems = List.copyOf(problems);
        this.id = id;
    }

    /** {@return the value; empty where the document is refused} */
    public Optional<T> value() {
        return Optional.ofNullable(value);
    }

    /** {@return what is wrong or worth a look, in the order of the text; an error exactly where there is no value} */
    public List<Problem> problems() {
        return problems;
    }

    /** {@return the document's id as far as it could be read; empty where it could not} */
    public String id() {
        return id;
    }
}
