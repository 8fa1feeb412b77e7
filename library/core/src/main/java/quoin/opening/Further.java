package quoin.opening;

import java.util.ArrayList;
import java.util.List;
import quoin.measure.Instrument;
import quoin.measure.Uncertain;

/**
 * Readings that are not taken yet: what they are expected to say, how far off that may be, and the survey once they are
 * taken.
 *
 * <p>A new reading differs from the adjusted value of its place by what the adjusted value errs and by what the
 * instrument errs; an error that both share cancels. Immutable and safe for use by many threads.
 */
public final class Further {
    private final Survey survey;
    private final int[] entries;
    private final List<Uncertain> expected;
    private final int times;

    private Further(Survey survey, int[] entries, List<Uncertain> expected, int times) {
        this.survey = survey;
        this.entries = entries;
        this.expected = List.copyOf(expected);
        this.times = times;
    }

    /**
     * Further readings of places that were read.
     *
     * <p>An entry that the instrument took gets further values; otherwise the place gets a new entry at the end.
     *
     * @param opening the opening as it is known
     * @param places the names of entries of its survey
     * @param by the instrument
     * @param times how many values of each, 1 or more
     * @return the readings
     * @throws IllegalArgumentException if a place was not read
     */
    public static Further of(Opening opening, List<String> places, Instrument by, int times) {
        List<Reading> readings = new ArrayList<>(opening.survey().readings());
        int[] entries = new int[places.size()];
        List<Uncertain> places0 = new ArrayList<>();
        for (int p = 0; p < entries.length; p++) {
            int entry = find(opening.survey(), places.get(p));
            Reading old = readings.get(entry);
            Uncertain there = expected(opening, entry);
            places0.add(there);
            List<Double> values = new ArrayList<>();
            if (old.by().equals(by)) {
                values.addAll(old.values());
            } else {
                entry = readings.size();
            }
            for (int k = 0; k < times; k++) {
                values.add(there.value());
            }
            Reading then = new Reading(entry == readings.size() ? "" : old.id(), old.of(), old.in(), values, by);
            if (entry == readings.size()) {
                readings.add(then);
            } else {
                readings.set(entry, then);
            }
            entries[p] = entry;
        }
        Survey then = opening.survey().withReadings(readings);
        List<Uncertain> expected = new ArrayList<>();
        for (int p = 0; p < entries.length; p++) {
            List<Uncertain> all = then.observed(entries[p]);
            for (Uncertain value : all.subList(all.size() - times, all.size())) {
                expected.add(value.minus(places0.get(p)).plus(places0.get(p).value()));
            }
        }
        return new Further(then, entries, expected, times);
    }

    private static int find(Survey survey, String name) {
        for (int i = 0; i < survey.readings().size(); i++) {
            if (survey.readings().get(i).name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException("place must be one that was read, got " + name);
    }

    /** The adjusted value of a place in front; elsewhere the mean of what was read there. */
    private static Uncertain expected(Opening opening, int entry) {
        Reading reading = opening.survey().readings().get(entry);
        if (opening.hasShape() && Survey.tiesOutline(reading, Plane.FRONT)) {
            Adjustment adjustment = opening.adjustment();
            double[] row = new double[adjustment.model().size()];
            double value = adjustment.model().observe(reading.of(), adjustment.values(), row);
            return Uncertain.combine(value, row, adjustment.unknowns());
        }
        List<Uncertain> read = opening.survey().observed(entry);
        double[] weights = new double[read.size()];
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            weights[i] = 1.0 / weights.length;
            sum += read.get(i).value();
        }
        return Uncertain.combine(sum / weights.length, weights, read);
    }

    /**
     * What each reading is expected to say; its doubt is that of the reading still to come, given all that was read.
     *
     * @return for each place in turn so many values
     */
    public List<Uncertain> expected() {
        return expected;
    }

    /**
     * The survey once they are taken.
     *
     * @param values what they say, in mm or rad, in the order of {@link #expected()}
     * @return the survey
     */
    public Survey survey(double... values) {
        if (values.length != expected.size()) {
            throw new IllegalArgumentException("values must be " + expected.size() + ", got " + values.length);
        }
        List<Reading> readings = new ArrayList<>(survey.readings());
        for (int p = 0; p < entries.length; p++) {
            Reading old = readings.get(entries[p]);
            List<Double> read =
                    new ArrayList<>(old.values().subList(0, old.values().size() - times));
            for (int k = 0; k < times; k++) {
                read.add(values[p * times + k]);
            }
            readings.set(entries[p], new Reading(old.id(), old.of(), old.in(), read, old.by()));
        }
        return survey.withReadings(readings);
    }
}
