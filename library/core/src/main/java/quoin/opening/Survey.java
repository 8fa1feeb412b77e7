package quoin.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import quoin.judge.ReadingDoubt;
import quoin.measure.Influence;
import quoin.measure.Uncertain;

/**
 * What was read of one opening, and how straight its sides are. Immutable and safe for use by many threads.
 *
 * @param readings the entries, in the order they were taken
 * @param straightWithinMm the sides are straight within plus or minus this, in mm; NaN where nobody said
 * @param finish what is still to come on the sides
 */
public record Survey(List<Reading> readings, double straightWithinMm, Finish finish) {
    /** Copies the list. */
    public Survey {
        readings = List.copyOf(readings);
        Objects.requireNonNull(finish, "finish");
        if (straightWithinMm < 0) {
            throw new IllegalArgumentException("straightWithin must be 0 mm or more, got " + straightWithinMm + " mm");
        }
        if (Double.isInfinite(straightWithinMm)) {
            throw new IllegalArgumentException("straightWithin must be finite, got " + straightWithinMm + " mm");
        }
    }

    /**
     * A place in one of the planes: what an entry is of.
     *
     * @param of the place
     * @param in the plane
     */
    public record Place(Span of, Plane in) {
        private static final String BEHIND = "/" + Plane.BACK.text();

        /** Checks that nothing is missing. */
        public Place {
            Objects.requireNonNull(of, "of");
            Objects.requireNonNull(in, "in");
        }

        /**
         * A place in front.
         *
         * @param of the place
         */
        public Place(Span of) {
            this(of, Plane.FRONT);
        }

        /**
         * Reads a place as answers name it.
         *
         * @param name the text, such as {@code width@1/4}, or {@code width@1/4/back} for the back plane
         * @return the place
         * @throws IllegalArgumentException if there is no such place; the message says what would be right
         */
        public static Place parse(String name) {
            return name.endsWith(BEHIND)
                    ? new Place(Span.parse(name.substring(0, name.length() - BEHIND.length())), Plane.BACK)
                    : new Place(Span.parse(name));
        }

        /** {@return the place as answers name it} */
        public String text() {
            return in == Plane.BACK ? of.text() + BEHIND : of.text();
        }

        /** Whether readings of it tie the outline of their plane. */
        boolean tiesOutline() {
            return !(of instanceof Span.Depth) && !(of instanceof Span.Fall);
        }
    }

    /**
     * A survey of a finished opening.
     *
     * @param readings the entries
     * @param straightWithinMm the sides are straight within plus or minus this, in mm
     * @return the survey
     */
    public static Survey finished(List<Reading> readings, double straightWithinMm) {
        return new Survey(readings, straightWithinMm, Finish.FINISHED);
    }

    /** The same survey with other entries. */
    Survey withReadings(List<Reading> entries) {
        return new Survey(entries, straightWithinMm, finish);
    }

    /**
     * Whether anything was read there.
     *
     * @param span the place
     * @return whether an entry of either plane is of it
     */
    public boolean has(Span span) {
        return readings.stream().anyMatch(reading -> reading.of().equals(span));
    }

    /**
     * Whether anything was read there.
     *
     * @param place the place
     * @return whether an entry is of it; depths and falls have one plane
     */
    public boolean has(Place place) {
        return readings.stream()
                .anyMatch(reading ->
                        reading.of().equals(place.of()) && (reading.in() == place.in() || !place.tiesOutline()));
    }

    /**
     * Places in the order to read them: one round from head-left by the head, the right side, the foot and the left side
     * back, then widths from head to foot, the middle, lengths from left to right, crosses, diagonals. It goes on
     * from the last entry, so that nobody climbs back; what was read already, or stands in the list a second time, waits for
     * a second round, since a reading that is repeated at once repeats its slip.
     *
     * @param places the places, in any order
     * @return the same places in the order to read them
     */
    public List<Place> walk(List<Place> places) {
        return Round.of(this, places);
    }

    /** {@return the entries of one plane that tie its outline} */
    List<Reading> outline(Plane plane) {
        return readings.stream().filter(reading -> tiesOutline(reading, plane)).toList();
    }

    static boolean tiesOutline(Reading reading, Plane plane) {
        return reading.in() == plane && reading.place().tiesOutline();
    }

    /** {@return the mean of everything read there, whatever the plane, or empty where nothing was} */
    Optional<Uncertain> mean(Span span) {
        return mean(reading -> reading.of().equals(span));
    }

    /**
     * The mean of everything that was read at a place, in whatever entries.
     *
     * @param place the place
     * @return the mean with its doubt, or empty where nothing was read
     */
    public Optional<Uncertain> mean(Place place) {
        return mean(reading -> reading.of().equals(place.of()) && reading.in() == place.in());
    }

    private Optional<Uncertain> mean(Predicate<Reading> which) {
        List<Uncertain> all = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            if (which.test(readings.get(i))) {
                all.addAll(observed(i));
            }
        }
        return all.isEmpty() ? Optional.empty() : Optional.of(mean(all));
    }

    /** {@return each value of the entry at that index, with its doubt} */
    List<Uncertain> observed(int index) {
        return read(index, readings.get(index).values());
    }

    private List<Uncertain> read(int index, List<Double> values) {
        Reading reading = readings.get(index);
        return reading.by()
                .read(
                        index + ":" + reading.name(),
                        values.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /**
     * What another value of each entry by its instrument would draw anew, and what would stay: the instrument's shared
     * influences, and a rounding that all values of the entry share.
     *
     * @return one for each entry, in order
     */
    public List<ReadingDoubt> readingDoubts() {
        List<ReadingDoubt> doubts = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            Reading reading = readings.get(i);
            double value = reading.values().get(0);
            List<Uncertain> twice = read(i, List.of(value, value));
            List<Influence> fresh = new ArrayList<>();
            List<Influence> shared = new ArrayList<>();
            for (Uncertain number : observed(i)) {
                for (Influence influence : number.influences().asList()) {
                    boolean stays = twice.get(0).sensitivity(influence) != 0
                            && twice.get(1).sensitivity(influence) != 0;
                    List<Influence> list = stays ? shared : fresh;
                    if (!list.contains(influence)) {
                        list.add(influence);
                    }
                }
            }
            doubts.add(new ReadingDoubt(
                    reading.name(), reading.by().id(), reading.values().size(), fresh, shared));
        }
        return doubts;
    }

    private static Uncertain mean(List<Uncertain> all) {
        Uncertain sum = all.get(0);
        for (Uncertain next : all.subList(1, all.size())) {
            sum = sum.plus(next);
        }
        return sum.dividedBy(all.size());
    }
}
