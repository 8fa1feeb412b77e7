package quoin.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;
import quoin.opening.Corner;
import quoin.opening.Reading;
import quoin.opening.Span;

/** By which of a job's instruments each kind of reading is taken. */
final class Tools {
    /** Where a job has nothing that reads lengths: good to about a millimetre. An assumption, for plans only. */
    private static final Instrument SOME =
            Instrument.of("tape", Instrument.Kind.STATED).withEach(List.of(Doubt.standard(1, Dimension.LENGTH)));

    private final List<Reading> readings;
    private final List<Instrument> all = new ArrayList<>();

    Tools(Job job) {
        this.readings = job.opening().readings();
        all.addAll(job.instrumentsByName());
        for (Reading reading : readings) {
            if (!all.contains(reading.by())) {
                all.add(reading.by());
            }
        }
    }

    /**
     * What took the first reading of that kind; else, for a distance, the first tape or laser, and for an offset the first
     * instrument that only states its doubt; else the first that reads such a quantity.
     */
    Optional<Instrument> forReading(Span span) {
        Predicate<Span> alike = isDistance(span) ? Tools::isDistance : other -> isAlike(span, other);
        Optional<Instrument> used = readings.stream()
                .filter(reading -> alike.test(reading.of()))
                .map(Reading::by)
                .findFirst();
        List<Instrument> able = all.stream()
                .filter(instrument -> instrument.dimension() == span.dimension())
                .toList();
        return used.or(() -> able.stream()
                        .filter(instrument -> isDistance(span) != (instrument.kind() == Instrument.Kind.STATED))
                        .findFirst())
                .or(() -> able.stream().findFirst());
    }

    /** What reads distances, for a plan. */
    Instrument lengths() {
        return forReading(new Span.Diagonal(Corner.HEAD_LEFT)).orElse(SOME);
    }

    /** From point to point: by a tape or a laser. */
    static boolean isDistance(Span span) {
        return span.dimension() == Dimension.LENGTH && !isOffset(span);
    }

    private static boolean isOffset(Span span) {
        return span instanceof Span.Bow || span instanceof Span.Depth || span instanceof Span.Fall;
    }

    private static boolean isAlike(Span one, Span other) {
        return one.getClass().equals(other.getClass());
    }
}
