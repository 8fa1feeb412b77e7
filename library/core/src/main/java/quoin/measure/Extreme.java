package quoin.measure;

import java.util.List;
import java.util.Objects;

/**
 * A least, a greatest or a largest in size that keeps its parts.
 *
 * <p>First order on a minimum or an absolute value overstates the odds, so the parts stay, each with its influences.
 * Immutable.
 *
 * @param kind which one of the parts counts
 * @param parts the parts, at least one
 */
public record Extreme(Kind kind, List<Part> parts) implements Estimate {
    /** Which one of the parts counts. */
    public enum Kind {
        /** The least of the parts. */
        LEAST,
        /** The greatest of the parts. */
        GREATEST,
        /** The part largest in size, with its sign. */
        LARGEST_IN_SIZE
    }

    /**
     * One part.
     *
     * @param names what it is made of: names of figures, gaps or readings
     * @param value its value with its influences
     */
    public record Part(List<String> names, Uncertain value) {
        /** Copies the names. */
        public Part {
            names = List.copyOf(names);
            Objects.requireNonNull(value, "value");
        }
    }

    /** Copies the parts; there must be one. */
    public Extreme {
        Objects.requireNonNull(kind, "kind");
        parts = List.copyOf(parts);
        Require.atLeast("number of parts", parts.size(), 1);
    }

    /**
     * The least of some parts.
     *
     * @param parts the parts, at least one
     * @return the least, with its parts
     */
    public static Extreme least(List<Part> parts) {
        return new Extreme(Kind.LEAST, parts);
    }

    /**
     * The greatest of some parts.
     *
     * @param parts the parts, at least one
     * @return the greatest, with its parts
     */
    public static Extreme greatest(List<Part> parts) {
        return new Extreme(Kind.GREATEST, parts);
    }

    /**
     * The part largest in size, with its sign.
     *
     * @param parts the parts, at least one
     * @return the largest in size, with its parts
     */
    public static Extreme largestInSize(List<Part> parts) {
        return new Extreme(Kind.LARGEST_IN_SIZE, parts);
    }

    /**
     * The value of the part that governs.
     *
     * @return the least, the greatest or the largest in size, in base units
     */
    @Override
    public double value() {
        return governing().value().value();
    }

    /**
     * The part that governs; the first among equals.
     *
     * @return the part whose value is the value of this
     */
    public Part governing() {
        Part best = parts.get(0);
        for (Part part : parts) {
            if (beats(part.value().value(), best.value().value())) {
                best = part;
            }
        }
        return best;
    }

    private boolean beats(double one, double other) {
        return switch (kind) {
            case LEAST -> one < other;
            case GREATEST -> one > other;
            case LARGEST_IN_SIZE -> StrictMath.abs(one) > StrictMath.abs(other);
        };
    }
}
