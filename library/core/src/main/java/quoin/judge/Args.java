package quoin.judge;

import java.util.Arrays;
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
    public static final Args NONE = new Args(new Object[0]);

    private static final String UNIT = "unit";

    /** A name, its value, the next name, its value, and so on: there are few, and they are made often. */
    private final Object[] flat;

    private Args(Object[] flat) {
        this.flat = flat;
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
     * These, one more number and its unit.
     *
     * @param name the argument's name
     * @param number its value, finite
     * @param unit the unit, under the name {@code unit}
     * @return the arguments
     * @throws IllegalArgumentException if the number is not finite
     */
    public Args with(String name, double number, String unit) {
        double finite = requireFinite(number, name) + 0.0;
        if (indexOf(name) >= 0 || indexOf(UNIT) >= 0) {
            return with(name, finite).with(UNIT, unit);
        }
        Object[] copy = Arrays.copyOf(flat, flat.length + 4);
        copy[flat.length] = name;
        copy[flat.length + 1] = finite;
        copy[flat.length + 2] = UNIT;
        copy[flat.length + 3] = Objects.requireNonNull(unit, UNIT);
        return new Args(copy);
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
        int at = indexOf(name);
        Object[] copy = Arrays.copyOf(flat, at < 0 ? flat.length + 2 : flat.length);
        copy[at < 0 ? flat.length : at] = name;
        copy[at < 0 ? flat.length + 1 : at + 1] = value;
        return new Args(copy);
    }

    private int indexOf(String name) {
        for (int i = 0; i < flat.length; i += 2) {
            if (flat[i].equals(name)) {
                return i;
            }
        }
        return -1;
    }

    /** {@return the values by name, in order: each a {@code String}, a {@code Double} or a {@code List<String>}} */
    public Map<String, Object> asMap() {
        Map<String, Object> values = new LinkedHashMap<>();
        for (int i = 0; i < flat.length; i += 2) {
            values.put((String) flat[i], flat[i + 1]);
        }
        return Collections.unmodifiableMap(values);
    }

    /**
     * The value of that name.
     *
     * @param name the argument's name
     * @return a {@code String}, a {@code Double} or a {@code List<String>}; empty where there is none
     */
    public Optional<Object> get(String name) {
        int at = indexOf(name);
        return at < 0 ? Optional.empty() : Optional.of(flat[at + 1]);
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
        return other instanceof Args that && asMap().equals(that.asMap());
    }

    @Override
    public int hashCode() {
        return asMap().hashCode();
    }

    @Override
    public String toString() {
        return asMap().toString();
    }
}
