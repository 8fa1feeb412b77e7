package quoin.judge;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The arguments of a code: names and values in a fixed order, from which words are made elsewhere.
 *
 * <p>A value is a text, a finite number, or a list of texts. Immutable and safe for use by many threads.
 */
public final class Args {
    /** No argument. */
    public static final Args NONE = new Args(Map.of());

    private final Map<String, Object> values;

    private Args(Map<String, Object> values) {
        this.values = values;
    }

    /**
     * One text.
     *
     * @param name the argument's name
     * @param text its value
     * @return the arguments
     */
    public static Args of(String name, String text) {
        return NONE.with(name, text);
    }

    /**
     * One number.
     *
     * @param name the argument's name
     * @param number its value, finite
     * @return the arguments
     */
    public static Args of(String name, double number) {
        return NONE.with(name, number);
    }

    /**
     * One list of texts.
     *
     * @param name the argument's name
     * @param texts its values
     * @return the arguments
     */
    public static Args of(String name, List<String> texts) {
        return NONE.with(name, texts);
    }

    /**
     * These and one more text.
     *
     * @param name the argument's name
     * @param text its value
     * @return the arguments
     */
    public Args with(String name, String text) {
        return add(name, Objects.requireNonNull(text, name));
    }

    /**
     * These and one more number.
     *
     * @param name the argument's name
     * @param number its value, finite
     * @return the arguments
     * @throws IllegalArgumentException if the number is not finite
     */
    public Args with(String name, double number) {
        return add(name, requireFinite(number, name) + 0.0);
    }

    /**
     * These and one more list of texts.
     *
     * @param name the argument's name
     * @param texts its values
     * @return the arguments
     */
    public Args with(String name, List<String> texts) {
        return add(name, List.copyOf(texts));
    }

    private Args add(String name, Object value) {
        Map<String, Object> copy = new LinkedHashMap<>(values);
        copy.put(name, value);
        return new Args(Collections.unmodifiableMap(copy));
    }

    /** {@return the values by name, in order: each a {@code String}, a {@code Double} or a {@code List<String>}} */
    public Map<String, Object> asMap() {
        return values;
    }

    /**
     * The value of that name.
     *
     * @param name the argument's name
     * @return a {@code String}, a {@code Double} or a {@code List<String>}; empty where there is none
     */
    public Optional<Object> get(String name) {
        return Optional.ofNullable(values.get(name));
    }

    static double requireFinite(double number, String what) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException(what + " must be a finite number, got " + number);
        }
        return number;
    }

    static void requireId(String id, String what) {
        if (id.isEmpty()) {
            throw new IllegalArgumentException(what + " must have a name, got an empty text");
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Args that && values.equals(that.values);
    }

    @Override
    public int hashCode() {
        return values.hashCode();
    }

    @Override
    public String toString() {
        return values.toString();
    }
}
