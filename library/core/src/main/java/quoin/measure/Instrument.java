package quoin.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * An instrument: turns what was read into numbers with their influences.
 *
 * <p>The {@code each} doubts are fresh for every value read. The {@code all} doubts are one and the same error for all
 * readings of this instrument, so that they cancel in a difference and add up in a sum. A step adds the rounding of the
 * reading. Immutable; every {@code with…} returns a changed copy.
 */
public final class Instrument {
    /** What kind of instrument it is. */
    public enum Kind {
        /** A tape, perhaps with an accuracy class. */
        TAPE,
        /** A laser distance meter. */
        LASER,
        /** Any other, with stated doubts. */
        STATED
    }

    /** What a tape begins with. */
    public enum End {
        /** Not said: adds nothing. */
        UNSTATED,
        /** A hook. */
        HOOK,
        /** A butt end. */
        BUTT
    }

    private final Parts parts;
    private final Influences shared;

    private Instrument(Parts parts) {
        this.parts = parts;
        this.shared = parts.sharedInfluences();
    }

    /**
     * An instrument without any doubt stated yet.
     *
     * @param id what it is called in the job
     * @param kind what it is
     * @return the instrument; it reads lengths until a doubt of another dimension is stated
     */
    public static Instrument of(String id, Kind kind) {
        Require.id("id", id);
        Objects.requireNonNull(kind, "kind");
        return new Instrument(
                new Parts(id, kind, Dimension.LENGTH, Optional.empty(), End.UNSTATED, 0, List.of(), List.of()));
    }

    /**
     * A copy with an accuracy class.
     *
     * @param tapeClass the class marked on the tape
     * @return the changed copy
     * @throws IllegalArgumentException if this is no tape
     */
    public Instrument withAccuracyClass(TapeClass tapeClass) {
        if (parts.kind != Kind.TAPE) {
            throw new IllegalArgumentException("an accuracy class must be one of a tape, got one for the "
                    + parts.kind.name().toLowerCase(java.util.Locale.ROOT) + " " + parts.id);
        }
        return new Instrument(new Parts(
                parts.id,
                parts.kind,
                parts.dimension,
                Optional.of(tapeClass),
                parts.end,
                parts.step,
                parts.each,
                parts.all));
    }

    /**
     * A copy with another end.
     *
     * @param end what the tape begins with
     * @return the changed copy
     * @throws IllegalArgumentException if this is no tape
     */
    public Instrument withEnd(End end) {
        Objects.requireNonNull(end, "end");
        if (parts.kind != Kind.TAPE) {
            throw new IllegalArgumentException("a hook or butt end must be one of a tape, got one for the "
                    + parts.kind.name().toLowerCase(java.util.Locale.ROOT) + " " + parts.id);
        }
        return new Instrument(new Parts(
                parts.id, parts.kind, parts.dimension, parts.accuracyClass, end, parts.step, parts.each, parts.all));
    }

    /**
     * A copy that is read to a step.
     *
     * @param step the step in base units, 0 for none
     * @return the changed copy
     */
    public Instrument withStep(double step) {
        Require.atLeastZero("step", step, parts.dimension.baseUnit());
        return new Instrument(new Parts(
                parts.id,
                parts.kind,
                parts.dimension,
                parts.accuracyClass,
                parts.end,
                step + 0.0,
                parts.each,
                parts.all));
    }

    /**
     * A copy with these doubts, fresh for every value read.
     *
     * @param doubts the doubts, all of one dimension
     * @return the changed copy
     */
    public Instrument withEach(List<Doubt> doubts) {
        return new Instrument(new Parts(
                parts.id,
                parts.kind,
                dimensionWith(doubts, parts.all),
                parts.accuracyClass,
                parts.end,
                parts.step,
                List.copyOf(doubts),
                parts.all));
    }

    /**
     * A copy with these doubts, one and the same error for all readings.
     *
     * @param doubts the doubts, all of one dimension
     * @return the changed copy
     */
    public Instrument withAll(List<Doubt> doubts) {
        return new Instrument(new Parts(
                parts.id,
                parts.kind,
                dimensionWith(doubts, parts.each),
                parts.accuracyClass,
                parts.end,
                parts.step,
                parts.each,
                List.copyOf(doubts)));
    }

    /**
     * A copy that reads another dimension, for an instrument that has a step only.
     *
     * @param dimension what it reads
     * @return the changed copy
     * @throws IllegalArgumentException if a doubt of another dimension is stated, or a tape or laser shall not read
     *     lengths
     */
    public Instrument withDimension(Dimension dimension) {
        requireDimension(dimension);
        for (Doubt doubt : parts.each) {
            requireSame(dimension, doubt.dimension());
        }
        for (Doubt doubt : parts.all) {
            requireSame(dimension, doubt.dimension());
        }
        return new Instrument(new Parts(
                parts.id, parts.kind, dimension, parts.accuracyClass, parts.end, parts.step, parts.each, parts.all));
    }

    /**
     * What it is called.
     *
     * @return its id
     */
    public String id() {
        return parts.id;
    }

    /**
     * What it is.
     *
     * @return its kind
     */
    public Kind kind() {
        return parts.kind;
    }

    /**
     * What it reads.
     *
     * @return the dimension of its doubts; a length if none is stated
     */
    public Dimension dimension() {
        return parts.dimension;
    }

    /**
     * Its accuracy class.
     *
     * @return the class, or empty
     */
    public Optional<TapeClass> accuracyClass() {
        return parts.accuracyClass;
    }

    /**
     * What the tape begins with.
     *
     * @return its end
     */
    public End end() {
        return parts.end;
    }

    /**
     * The step it is read to.
     *
     * @return the step in base units, 0 for none
     */
    public double step() {
        return parts.step;
    }

    /**
     * The doubts that are fresh for every value.
     *
     * @return an immutable list
     */
    public List<Doubt> each() {
        return parts.each;
    }

    /**
     * The doubts that are one error for all readings.
     *
     * @return an immutable list
     */
    public List<Doubt> all() {
        return parts.all;
    }

    /**
     * The influences that all readings of this instrument share, each with u = 1: its sensitivity is its effect on a
     * reading.
     *
     * @return the shared influences
     */
    public Influences shared() {
        return shared;
    }

    /**
     * Whether anything is said of how good it is.
     *
     * @return false if it has no class, no step and no doubt at all
     */
    public boolean hasDoubt() {
        return parts.accuracyClass.isPresent() || parts.step > 0 || !parts.each.isEmpty() || !parts.all.isEmpty();
    }

    /**
     * The numbers that were read, with their influences.
     *
     * <p>The rounding of the reading is ± step / 2, rectangular: fresh for each value if the {@code each} doubts
     * together have a standard uncertainty of at least half a step, otherwise one and the same for all values of this
     * call, since repeated readings then fall on the same mark and averaging teaches nothing.
     *
     * @param readingId what was read; different readings have different ids
     * @param values the values in base units, at least one
     * @return one number for each value, all on one basis, the shared influences first
     */
    public List<Uncertain> read(String readingId, double... values) {
        Require.id("reading id", readingId);
        Require.atLeast("number of values", values.length, 1);
        double[] clean = values.clone();
        for (int i = 0; i < clean.length; i++) {
            clean[i] = Require.finite("reading", clean[i], parts.dimension.baseUnit());
        }
        Fresh fresh = new Fresh(parts, readingId, clean);
        Influences basis = shared.union(fresh.influences());
        List<Uncertain> result = new ArrayList<>(clean.length);
        for (int i = 0; i < clean.length; i++) {
            double[] contributions = new double[basis.size()];
            parts.effects(clean[i], contributions);
            fresh.fill(i, shared.size(), contributions);
            result.add(Uncertain.ofContributions(clean[i], basis, contributions));
        }
        return List.copyOf(result);
    }

    /**
     * The variance of the {@code each} doubts for a reading, without its rounding.
     *
     * @param reading the reading in base units
     * @return Σu², in the square of the base unit
     */
    public double eachVariance(double reading) {
        return parts.eachVariance(reading);
    }

    /**
     * The variance of the rounding of a reading, rectangular within ± step / 2.
     *
     * @return step² / 12; 0 where there is no step
     */
    public double roundingVariance() {
        return parts.step * parts.step / 12;
    }

    /**
     * Whether values of one reading share their rounding, as {@link #read} takes it.
     *
     * @param values the values in base units
     * @return whether there is a step, and the {@code each} doubts of one of the values have a standard uncertainty below
     *     half of it
     */
    public boolean roundsAlike(List<Double> values) {
        for (int i = 0; i < values.size() && parts.step > 0; i++) {
            if (!parts.varies(values.get(i))) {
                return true;
            }
        }
        return false;
    }

    /**
     * The effect of each shared influence on a reading: its contribution.
     *
     * @param reading the reading in base units
     * @return one for each of {@link #shared()}, in order, in base units
     */
    public double[] sharedEffects(double reading) {
        double[] effects = new double[shared.size()];
        parts.effects(reading, effects);
        return effects;
    }

    @Override
    public boolean equals(Object other) {
        return this == other || (other instanceof Instrument that && parts.equals(that.parts));
    }

    @Override
    public int hashCode() {
        return parts.hashCode();
    }

    @Override
    public String toString() {
        return "Instrument" + parts.toString().substring("Parts".length());
    }

    private Dimension dimensionWith(List<Doubt> doubts, List<Doubt> others) {
        if (doubts.isEmpty()) {
            return parts.dimension;
        }
        Dimension dimension = doubts.get(0).dimension();
        requireDimension(dimension);
        for (Doubt doubt : doubts) {
            requireSame(dimension, doubt.dimension());
        }
        for (Doubt doubt : others) {
            requireSame(dimension, doubt.dimension());
        }
        return dimension;
    }

    private void requireDimension(Dimension dimension) {
        if (parts.kind != Kind.STATED && dimension != Dimension.LENGTH) {
            throw new IllegalArgumentException("doubts of " + parts.id + " must be lengths, got " + dimension.label());
        }
    }

    private void requireSame(Dimension wanted, Dimension got) {
        if (wanted != got) {
            throw new IllegalArgumentException("doubts of " + parts.id + " must be of one dimension, got "
                    + wanted.label() + " and " + got.label());
        }
    }

    /** Numbers run from 1. Not by +, which costs a fresh program tens of milliseconds at its first use. */
    private static String numbered(String name, String mark, int index) {
        return name.concat(mark).concat(Integer.toString(index + 1));
    }

    /** Everything that was stated. */
    private record Parts(
            String id,
            Kind kind,
            Dimension dimension,
            Optional<TapeClass> accuracyClass,
            End end,
            double step,
            List<Doubt> each,
            List<Doubt> all) {

        Influences sharedInfluences() {
            List<Influence> list = new ArrayList<>();
            if (accuracyClass.isPresent()) {
                list.add(unit(id.concat("/scale"), Shape.RECTANGULAR));
            }
            for (int k = 0; k < all.size(); k++) {
                list.add(unit(numbered(id, "/all", k), all.get(k).shape()));
            }
            return Influences.of(list);
        }

        /** Writes the effect of each shared influence on a reading. */
        void effects(double reading, double[] contributions) {
            int at = 0;
            if (accuracyClass.isPresent()) {
                contributions[at++] = accuracyClass.get().maximumPermissibleErrorMm(StrictMath.abs(reading), end)
                        / StrictMath.sqrt(3);
            }
            for (Doubt doubt : all) {
                contributions[at++] = doubt.standardUncertainty(reading);
            }
        }

        double eachVariance(double reading) {
            double sum = 0;
            for (Doubt doubt : each) {
                double u = doubt.standardUncertainty(reading);
                sum += u * u;
            }
            return sum;
        }

        /** Whether repeated readings of a value fall on more marks than one. */
        boolean varies(double reading) {
            double half = step / 2;
            return eachVariance(reading) >= half * half;
        }

        private static Influence unit(String id, Shape shape) {
            return new Influence(id, shape, 1, Double.POSITIVE_INFINITY, "");
        }
    }

    /** The influences of one call: for each value its doubts, then its rounding; or one rounding for all, at the end. */
    private static final class Fresh {
        private final List<Influence> list = new ArrayList<>();
        private final int perValue;
        private final boolean oneRounding;

        Fresh(Parts parts, String readingId, double[] values) {
            boolean rounded = parts.step > 0;
            oneRounding = rounded && !varies(parts, values);
            perValue = parts.each.size() + (rounded && !oneRounding ? 1 : 0);
            for (int n = 0; n < values.length; n++) {
                String id = numbered(readingId, "#", n);
                for (int k = 0; k < parts.each.size(); k++) {
                    Doubt doubt = parts.each.get(k);
                    list.add(new Influence(
                            numbered(id, "/each", k),
                            doubt.shape(),
                            doubt.standardUncertainty(values[n]),
                            Double.POSITIVE_INFINITY,
                            ""));
                }
                if (rounded && !oneRounding) {
                    list.add(Influence.rectangular(id.concat("/step"), parts.step / 2));
                }
            }
            if (oneRounding) {
                list.add(Influence.rectangular(readingId.concat("/step"), parts.step / 2));
            }
        }

        private static boolean varies(Parts parts, double[] values) {
            for (double value : values) {
                if (!parts.varies(value)) {
                    return false;
                }
            }
            return true;
        }

        Influences influences() {
            return Influences.of(list);
        }

        void fill(int value, int offset, double[] contributions) {
            for (int k = value * perValue; k < (value + 1) * perValue; k++) {
                contributions[offset + k] = list.get(k).standardUncertainty();
            }
            if (oneRounding) {
                contributions[contributions.length - 1] =
                        list.get(list.size() - 1).standardUncertainty();
            }
        }
    }
}
