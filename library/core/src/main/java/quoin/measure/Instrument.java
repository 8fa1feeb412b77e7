package quoin.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What turns a reading into a number with doubt: some influences fresh for each reading, some one and the same for all
 * readings of this instrument.
 *
 * <p>Immutable and safe for use by many threads; {@code with…} gives a changed copy.
 */
public final class Instrument {
    /** The kinds of instrument. */
    public enum Kind {
        /** A tape. */
        TAPE,
        /** A hand-held laser distance meter. */
        LASER,
        /** Anything whose doubts are stated. */
        STATED;

        /** {@return the kind as documents write it} */
        public String text() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What a tape begins with. */
    public enum End {
        /** Nobody said: nothing is added. */
        UNSTATED,
        /** A hook: its error is added. */
        HOOK,
        /** A butt end: its error is added. */
        BUTT;

        /** {@return the end as documents write it} */
        public String text() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private static final double ROOT_THREE = Math.sqrt(3);

    private final String id;
    private final Kind kind;
    private final @Nullable TapeClass accuracyClass;
    private final End end;
    private final double step;
    private final List<Doubt> each;
    private final List<Doubt> all;
    private final Dimension dimension;

    private Instrument(
            String id,
            Kind kind,
            @Nullable TapeClass accuracyClass,
            End end,
            double step,
            List<Doubt> each,
            List<Doubt> all,
            Dimension dimension) {
        this.id = id;
        this.kind = Objects.requireNonNull(kind, "kind");
        this.accuracyClass = accuracyClass;
        this.end = Objects.requireNonNull(end, "end");
        this.step = step;
        this.each = List.copyOf(each);
        this.all = List.copyOf(all);
        this.dimension = Objects.requireNonNull(dimension, "dimension");
    }

    /**
     * An instrument for lengths without any doubt yet.
     *
     * @param id its name
     * @param kind its kind
     * @return the instrument
     */
    public static Instrument of(String id, Kind kind) {
        if (id.isEmpty()) {
            throw new IllegalArgumentException("instrument must have an id, got an empty text");
        }
        return new Instrument(id, kind, null, End.UNSTATED, 0, List.of(), List.of(), Dimension.LENGTH);
    }

    /**
     * The same instrument for another kind of quantity.
     *
     * @param kindOfQuantity what it reads
     * @return the changed copy
     */
    public Instrument withDimension(Dimension kindOfQuantity) {
        return new Instrument(id, kind, accuracyClass, end, step, each, all, kindOfQuantity);
    }

    /**
     * The same instrument with an accuracy class.
     *
     * @param tapeClass the class
     * @return the changed copy
     */
    public Instrument withAccuracyClass(TapeClass tapeClass) {
        return new Instrument(id, kind, Objects.requireNonNull(tapeClass), end, step, each, all, dimension);
    }

    /**
     * The same instrument with what it begins with.
     *
     * @param beginsWith hook or butt
     * @return the changed copy
     */
    public Instrument withEnd(End beginsWith) {
        return new Instrument(id, kind, accuracyClass, beginsWith, step, each, all, dimension);
    }

    /**
     * The same instrument with the step it is read to.
     *
     * @param size the step, 0 or more; 0 for none
     * @return the changed copy
     */
    public Instrument withStep(double size) {
        if (!(size >= 0 && size < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("step must be 0 or more and finite, got " + size);
        }
        return new Instrument(id, kind, accuracyClass, end, size, each, all, dimension);
    }

    /**
     * The same instrument with doubts that are fresh in each reading.
     *
     * @param doubts the doubts
     * @return the changed copy
     */
    public Instrument withEach(List<Doubt> doubts) {
        return new Instrument(id, kind, accuracyClass, end, step, doubts, all, dimension);
    }

    /**
     * The same instrument with doubts that are the same in all its readings.
     *
     * @param doubts the doubts
     * @return the changed copy
     */
    public Instrument withAll(List<Doubt> doubts) {
        return new Instrument(id, kind, accuracyClass, end, step, each, doubts, dimension);
    }

    /** {@return its name} */
    public String id() {
        return id;
    }

    /** {@return its kind} */
    public Kind kind() {
        return kind;
    }

    /** {@return its accuracy class; empty where it has none} */
    public Optional<TapeClass> accuracyClass() {
        return Optional.ofNullable(accuracyClass);
    }

    /** {@return what it begins with} */
    public End end() {
        return end;
    }

    /** {@return the step it is read to; 0 for none} */
    public double step() {
        return step;
    }

    /** {@return the doubts that are fresh in each reading} */
    public List<Doubt> each() {
        return each;
    }

    /** {@return the doubts that are the same in all its readings} */
    public List<Doubt> all() {
        return all;
    }

    /** {@return the kind of quantity it reads} */
    public Dimension dimension() {
        return dimension;
    }

    /** {@return whether anything was said about its doubt} */
    public boolean hasDoubt() {
        return accuracyClass != null || step > 0 || !each.isEmpty() || !all.isEmpty();
    }

    /**
     * The standard uncertainty that is fresh in a reading, without the rounding.
     *
     * @param reading the reading
     * @return the root of the sum of the squares of the {@code each} doubts
     */
    public double eachUncertainty(double reading) {
        double variance = 0;
        for (Doubt doubt : each) {
            double u = doubt.standardUncertainty(reading);
            variance += u * u;
        }
        return Math.sqrt(variance);
    }

    /**
     * Turns independent readings of one thing into numbers with doubt.
     *
     * <p>Each value has its own {@code each} influences. The rounding to the step is fresh for each value if the standard
     * uncertainty of {@code each} is at least half a step, so that it averages out; else one rounding is shared by all
     * values. Shared influences have a standard uncertainty of 1 and the effect as sensitivity.
     *
     * @param readingId a name for this reading; influences are named after it
     * @param values what was read, in the unit inside the library
     * @return one number for each value
     */
    public List<Uncertain> read(String readingId, double... values) {
        List<Uncertain> numbers = new ArrayList<>();
        for (int n = 0; n < values.length; n++) {
            numbers.add(number(readingId, n, values[n]));
        }
        return numbers;
    }

    private Uncertain number(String readingId, int n, double value) {
        List<Influence> influences = new ArrayList<>();
        List<Double> effects = new ArrayList<>();
        for (int k = 0; k < each.size(); k++) {
            Doubt doubt = each.get(k);
            double u = doubt.standardUncertainty(value);
            String name = readingId + "#" + (n + 1) + "/each" + (k + 1);
            influences.add(new Influence(name, doubt.shape(), u, Double.POSITIVE_INFINITY, ""));
            effects.add(1.0);
        }
        if (step > 0) {
            boolean averages = eachUncertainty(value) >= step / 2;
            influences.add(Influence.rectangular(readingId + (averages ? "#" + (n + 1) : "") + "/step", step / 2));
            effects.add(1.0);
        }
        for (int k = 0; k < all.size(); k++) {
            Doubt doubt = all.get(k);
            influences.add(shared("/all" + (k + 1), doubt.shape()));
            effects.add(doubt.standardUncertainty(value));
        }
        if (accuracyClass != null) {
            influences.add(shared("/scale", Shape.RECTANGULAR));
            double c = end == End.UNSTATED ? 0 : accuracyClass.endErrorMm();
            effects.add((accuracyClass.maximumPermissibleErrorMm(value) + c) / ROOT_THREE);
        }
        double[] sensitivities =
                effects.stream().mapToDouble(Double::doubleValue).toArray();
        return Uncertain.of(value, Influences.of(influences), sensitivities);
    }

    private Influence shared(String name, Shape shape) {
        return new Influence(id + name, shape, 1, Double.POSITIVE_INFINITY, "");
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Instrument that
                && id.equals(that.id)
                && kind == that.kind
                && accuracyClass == that.accuracyClass
                && end == that.end
                && step == that.step
                && each.equals(that.each)
                && all.equals(that.all)
                && dimension == that.dimension;
    }

    @Override
    public int hashCode() {
        return Objects.hash(id, kind, accuracyClass, end, step, each, all, dimension);
    }

    @Override
    public String toString() {
        return kind.text() + " " + id;
    }
}
