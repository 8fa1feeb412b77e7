package quoin.measure;

import java.util.List;
import java.util.Objects;

/**
 * A least or a greatest of several values, which keeps its parts: a first-order doubt of the extreme itself would
 * promise too much. Immutable and safe for use by many threads.
 *
 * @param kind which extreme
 * @param parts the values, 1 or more
 */
public record Extreme(Kind kind, List<Part> parts) implements Estimate {
    /** Which extreme. */
    public enum Kind {
        /** The least value. */
        LEAST,
        /** The greatest value. */
        GREATEST,
        /** The value largest in size, with its sign. */
        LARGEST_IN_SIZE
    }

    /**
     * One of the values.
     *
     * @param names what it is, or what it is made of
     * @param value the value
     */
    public record Part(List<String> names, Uncertain value) {
        /** Copies the names. */
        public Part {
            names = List.copyOf(names);
            Objects.requireNonNull(value, "value");
        }
    }

    /** Copies the parts. */
    public Extreme {
        Objects.requireNonNull(kind, "kind");
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("extreme must have 1 part or more, got none");
        }
    }

    /**
     * The least of several values.
     *
     * @param parts the values, 1 or more
     * @return the least
     * @formula min of the parts
     * @unit that of the parts
     * @edge equal parts: the first governs
     * @source standard: the parts are kept, see the odds of a least
     */
    public static Extreme least(List<Part> parts) {
        return new Extreme(Kind.LEAST, parts);
    }

    /**
     * The greatest of several values.
     *
     * @param parts the values, 1 or more
     * @return the greatest
     * @formula max of the parts
     * @unit that of the parts
     * @edge equal parts: the first governs
     * @source standard: the parts are kept, see the odds of a greatest
     */
    public static Extreme greatest(List<Part> parts) {
        return new Extreme(Kind.GREATEST, parts);
    }

    /**
     * The value largest in size, with its sign.
     *
     * @param parts the values, 1 or more
     * @return the extreme
     * @formula the part of largest absolute value
     * @unit that of the parts
     * @edge equal sizes: the first governs
     * @source standard: the parts are kept, see the odds of a largest in size
     */
    public static Extreme largestInSize(List<Part> parts) {
        return new Extreme(Kind.LARGEST_IN_SIZE, parts);
    }

    /** {@return the part that is the extreme; the first of equals} */
    public Part governing() {
        Part best = parts.get(0);
        for (Part part : parts) {
            if (beats(part.value().value(), best.value().value())) {
                best = part;
            }
        }
        return best;
    }

    private boolean beats(double a, double b) {
        return switch (kind) {
            case LEAST -> a < b;
            case GREATEST -> a > b;
            case LARGEST_IN_SIZE -> Math.abs(a) > Math.abs(b);
        };
    }

    @Override
    public double value() {
        return governing().value().value();
    }
}
