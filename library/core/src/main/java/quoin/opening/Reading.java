package quoin.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import quoin.measure.Instrument;

/**
 * One entry of the survey: what was read, in which plane, by what; several values are independent readings of the same
 * thing. Immutable and safe for use by many threads.
 *
 * @param id a name of its own; empty where it has none
 * @param of what was read
 * @param in the plane
 * @param values what was read, in mm or rad
 * @param by the instrument
 */
public record Reading(String id, Span of, Plane in, List<Double> values, Instrument by) {
    /** Refuses an empty list, and values that are not finite. */
    public Reading {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(of, "of");
        Objects.requireNonNull(in, "in");
        Objects.requireNonNull(by, "by");
        List<Double> copy = new ArrayList<>();
        for (Double value : values) {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("read must be a finite number, got " + value + " for " + of.text());
            }
            copy.add(value + 0.0);
        }
        if (copy.isEmpty()) {
            throw new IllegalArgumentException("read must have 1 value or more, got none for " + of.text());
        }
        values = List.copyOf(copy);
    }

    /**
     * A reading in the front plane without a name of its own.
     *
     * @param of what was read, as documents write it
     * @param by the instrument
     * @param mm the values, in mm (rad for an angle)
     * @return the reading
     */
    public static Reading of(String of, Instrument by, double... mm) {
        List<Double> values = new ArrayList<>();
        for (double value : mm) {
            values.add(value);
        }
        return new Reading("", Span.parse(of), Plane.FRONT, values, by);
    }

    /** {@return what it is of, in its plane} */
    public Survey.Place place() {
        return new Survey.Place(of, in);
    }

    /** {@return its name, or what it is of where it has none, with the plane where that is the back} */
    public String name() {
        if (!id.isEmpty()) {
            return id;
        }
        return place().text();
    }
}
