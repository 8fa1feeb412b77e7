package quoin.rulebook;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Where a size, or a limit of a bound, differs between two versions of a rulebook, and by how much.
 *
 * <p>Immutable and safe for use by many threads.
 *
 * @param clause the size or the bound
 * @param field {@code size}, or which limit: {@code atLeast}, {@code atMost}, {@code within}
 * @param kind what differs
 * @param choices the chosen parts that it holds for, by kind; empty where they do not matter
 * @param where the values of figures that it holds for; a figure that is not named does not matter
 * @param along the figure that {@code stretches} are of; empty where the difference is the same in all of {@code where}
 * @param period after what distance the stretches repeat, in the unit of {@code along}; 0 where they do not
 * @param stretches where in it the two differ; one that holds everything where {@code along} is empty
 * @param unit the unit of the differences
 */
public record Effect(
        String clause,
        String field,
        Kind kind,
        Map<String, String> choices,
        Map<String, Range> where,
        String along,
        double period,
        List<Stretch> stretches,
        String unit) {
    /** What differs. */
    public enum Kind {
        /** The number; the stretches say by how much. */
        CHANGED,
        /** There is a number where there was none. */
        DECIDED,
        /** There is none where there was one. */
        REFUSED,
        /** It may differ anywhere in {@code where}; the differences are bounds, and infinite where nothing is known. */
        OPEN
    }

    /**
     * Where two versions differ, and by how much: new less old; NaN where only one of them has a number.
     *
     * @param at the values of the figure {@code along}
     * @param least the least difference; where the size is not rounded it may be approached and not reached
     * @param most the greatest difference
     */
    public record Stretch(Range at, double least, double most) {
        /** Checks that nothing is missing. */
        public Stretch {
            Objects.requireNonNull(at, "at");
        }
    }

    /**
     * Values of a figure between two ends.
     *
     * @param from the lower end, in {@code unit}; minus infinity where there is none
     * @param fromIncluded whether the lower end belongs to it
     * @param to the upper end, in {@code unit}; infinity where there is none
     * @param toIncluded whether the upper end belongs to it
     * @param unit the unit of answers for such a figure
     */
    public record Range(double from, boolean fromIncluded, double to, boolean toIncluded, String unit) {
        /** Refuses ends that are not in order. */
        public Range {
            Objects.requireNonNull(unit, "unit");
            if (!(from <= to)) {
                throw new IllegalArgumentException("from must be at most to, got " + from + " and " + to + " " + unit);
            }
            from = from + 0.0;
            to = to + 0.0;
        }

        static Range between(long low, long high, String unit) {
            return new Range(
                    low == Cut.BELOW_ALL ? Double.NEGATIVE_INFINITY : Exact.toAnswer(Cut.value(low)),
                    low != Cut.BELOW_ALL && Cut.isBefore(low),
                    high == Cut.ABOVE_ALL ? Double.POSITIVE_INFINITY : Exact.toAnswer(Cut.value(high)),
                    high != Cut.ABOVE_ALL && !Cut.isBefore(high),
                    unit);
        }

        /**
         * Whether a value lies in it.
         *
         * @param value the value, in {@code unit}
         * @return whether it does; NaN lies nowhere
         */
        public boolean contains(double value) {
            boolean above = fromIncluded ? value >= from : value > from;
            return above && (toIncluded ? value <= to : value < to);
        }

        /** {@return whether it holds every value} */
        public boolean isEverything() {
            return Double.isInfinite(from) && Double.isInfinite(to);
        }
    }

    /** Copies the maps and the list. */
    public Effect {
        Objects.requireNonNull(kind, "kind");
        choices = Collections.unmodifiableMap(new LinkedHashMap<>(choices));
        where = Collections.unmodifiableMap(new LinkedHashMap<>(where));
        stretches = List.copyOf(stretches);
    }

    /** {@return the least difference, new less old} */
    public double least() {
        return stretches.stream().mapToDouble(Stretch::least).min().orElse(Double.NaN);
    }

    /** {@return the greatest difference, new less old} */
    public double most() {
        return stretches.stream().mapToDouble(Stretch::most).max().orElse(Double.NaN);
    }

    /**
     * Whether the versions differ there.
     *
     * @param figures the values of figures, in their units of answers; all that {@code where} and {@code along} name
     * @return whether they do; false where a figure is not given
     */
    public boolean holdsAt(Map<String, Double> figures) {
        boolean inside = where.entrySet().stream()
                .allMatch(entry -> entry.getValue().contains(figures.getOrDefault(entry.getKey(), Double.NaN)));
        if (!inside || along.isEmpty()) {
            return inside;
        }
        double value = figures.getOrDefault(along, Double.NaN);
        return stretches.stream().anyMatch(stretch -> holdsAt(stretch.at(), value));
    }

    private boolean holdsAt(Range at, double value) {
        if (period == 0 || !Double.isFinite(value)) {
            return at.contains(value);
        }
        long from = exact(at.from());
        long turn = exact(period);
        long moved = from + StrictMath.floorMod(exact(value) - from, turn);
        return at.contains(Exact.toAnswer(moved)) || at.contains(Exact.toAnswer(moved + turn));
    }

    private static long exact(double number) {
        return (long) StrictMath.rint(number * Exact.ONE);
    }
}
