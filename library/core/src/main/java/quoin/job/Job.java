package quoin.job;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import quoin.clearance.SiteFacts;
import quoin.measure.Amount;
import quoin.measure.Instrument;
import quoin.parts.Supply;

/**
 * One job as it is handed in: readings, facts and choices.
 *
 * <p>Immutable and safe for use by many threads; made with a {@link Builder}.
 */
public final class Job {
    /** What the job is for. */
    public enum Grade {
        /** Sizes to cut by. */
        SURVEY,
        /** Sizes for a price only: never passes. */
        QUOTE
    }

    private static final double LONGEST_MM = 50_000;

    private final String id;
    private final OpeningFacts opening;
    private final Choices choose;
    private final String place;
    private final String taken;
    private final Grade grade;
    private final String units;
    private final List<Instrument> instruments;
    private final SiteFacts site;
    private final Heat heat;
    private final PassFacts wayIn;
    private final @Nullable Supply supply;
    private final Map<String, Amount> ordered;
    private final Map<String, FigureValue> declared;
    private final double nominalWidthMm;
    private final double nominalLengthMm;
    private final String carry;

    private Job(Builder builder) {
        this.id = builder.id;
        this.opening = builder.opening;
        this.choose = builder.choose;
        this.place = builder.place;
        this.taken = builder.taken;
        this.grade = builder.grade;
        this.units = builder.units;
        this.instruments = List.copyOf(builder.instruments);
        this.site = builder.site;
        this.heat = builder.heat;
        this.wayIn = builder.wayIn;
        this.supply = builder.supply;
        this.ordered = Collections.unmodifiableMap(new TreeMap<>(builder.ordered));
        this.declared = Collections.unmodifiableMap(new TreeMap<>(builder.declared));
        this.nominalWidthMm = builder.nominalWidthMm;
        this.nominalLengthMm = builder.nominalLengthMm;
        this.carry = builder.carry;
    }

    /**
     * Starts a job.
     *
     * @param id its name
     * @param opening its opening
     * @param choose what was chosen
     * @return a builder
     */
    public static Builder named(String id, OpeningFacts opening, Choices choose) {
        return new Builder(id, opening, choose);
    }

    /** {@return its name} */
    public String id() {
        return id;
    }

    /** {@return its opening} */
    public OpeningFacts opening() {
        return opening;
    }

    /** {@return what was chosen} */
    public Choices choose() {
        return choose;
    }

    /** {@return where the opening is} */
    public String place() {
        return place;
    }

    /** {@return the day it was measured, such as 2026-11-02} */
    public String taken() {
        return taken;
    }

    /** {@return survey or quote} */
    public Grade grade() {
        return grade;
    }

    /** {@return the unit of its bare numbers, mm or in} */
    public String units() {
        return units;
    }

    /** {@return the instruments, each once} */
    public List<Instrument> instruments() {
        return instruments;
    }

    /** The instruments by name: in which order a document lists them says nothing. */
    List<Instrument> instrumentsByName() {
        return instruments.stream().sorted(Comparator.comparing(Instrument::id)).toList();
    }

    /** {@return what is known of the site} */
    public SiteFacts site() {
        return site;
    }

    /** {@return what a box has to pass on its way in} */
    public PassFacts wayIn() {
        return wayIn;
    }

    /** {@return its temperatures} */
    public Heat heat() {
        return heat;
    }

    /** {@return its supply; empty where not stated} */
    public Optional<Supply> supply() {
        return Optional.ofNullable(supply);
    }

    /** {@return sizes that replace a clause's result, by name} */
    public Map<String, Amount> ordered() {
        return ordered;
    }

    /** {@return figures the caller declares (site. or own.), by name} */
    public Map<String, FigureValue> declared() {
        return declared;
    }

    /** {@return the width that the opening was drawn with, in mm; NaN where not stated} */
    public double nominalWidthMm() {
        return nominalWidthMm;
    }

    /** {@return the length that the opening was drawn with, in mm; NaN where not stated} */
    public double nominalLengthMm() {
        return nominalLengthMm;
    }

    /** {@return JSON text that is handed through unread} */
    public String carry() {
        return carry;
    }

    /**
     * The text that the digest is of: every field that an answer can hang on, in a fixed order.
     *
     * <p>How a document was laid out, the order of its names, and the units it was written in leave no trace; the order of
     * its readings does, since answers list them in it.
     *
     * @return the text
     */
    public String canonicalText() {
        return JobText.of(this).toString();
    }

    /** {@return {@code sha256:} and the SHA-256 of {@link #canonicalText()}, lower-case hexadecimal} */
    public String digest() {
        return JobText.of(this).digest();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Job that && state().equals(that.state());
    }

    @Override
    public int hashCode() {
        return state().hashCode();
    }

    @Override
    public String toString() {
        return "job " + id;
    }

    private List<Object> state() {
        return List.of(
                id,
                opening,
                choose,
                place,
                taken,
                grade,
                units,
                instrumentsByName(),
                site,
                heat,
                wayIn,
                supply(),
                ordered,
                declared,
                nominalWidthMm,
                nominalLengthMm,
                carry);
    }

    /** Gathers what a job is made of; not safe for use by many threads. */
    public static final class Builder {
        private final String id;
        private final OpeningFacts opening;
        private final Choices choose;
        private String place = "";
        private String taken = "";
        private Grade grade = Grade.SURVEY;
        private String units = "mm";
        private List<Instrument> instruments = List.of();
        private SiteFacts site = SiteFacts.UNKNOWN;
        private Heat heat = Heat.UNSTATED;
        private PassFacts wayIn = PassFacts.UNSTATED;
        private @Nullable Supply supply;
        private Map<String, Amount> ordered = Map.of();
        private Map<String, FigureValue> declared = Map.of();
        private double nominalWidthMm = Double.NaN;
        private double nominalLengthMm = Double.NaN;
        private String carry = "";

        private Builder(String id, OpeningFacts opening, Choices choose) {
            if (id.isEmpty()) {
                throw new IllegalArgumentException("job must have an id, got an empty text");
            }
            this.id = id;
            this.opening = Objects.requireNonNull(opening, "opening");
            this.choose = Objects.requireNonNull(choose, "choose");
        }

        /**
         * Sets where the opening is.
         *
         * @param value the value
         * @return this builder
         */
        public Builder place(String value) {
            this.place = Objects.requireNonNull(value, "place");
            return this;
        }

        /**
         * Sets the day it was measured, such as 2026-11-02.
         *
         * @param value the value
         * @return this builder
         */
        public Builder taken(String value) {
            this.taken = Objects.requireNonNull(value, "taken");
            return this;
        }

        /**
         * Sets survey or quote.
         *
         * @param value the value
         * @return this builder
         */
        public Builder grade(Grade value) {
            this.grade = Objects.requireNonNull(value, "grade");
            return this;
        }

        /**
         * Sets the unit of its bare numbers, mm or in.
         *
         * @param value the value
         * @return this builder
         */
        public Builder units(String value) {
            this.units = Objects.requireNonNull(value, "units");
            return this;
        }

        /**
         * Sets the instruments, each once.
         *
         * @param value the value
         * @return this builder
         */
        public Builder instruments(List<Instrument> value) {
            this.instruments = Objects.requireNonNull(value, "instruments");
            return this;
        }

        /**
         * Sets what is known of the site.
         *
         * @param value the value
         * @return this builder
         */
        public Builder site(SiteFacts value) {
            this.site = Objects.requireNonNull(value, "site");
            return this;
        }

        /**
         * What a box has to pass on its way in.
         *
         * @param value the measures
         * @return this builder
         */
        public Builder wayIn(PassFacts value) {
            this.wayIn = Objects.requireNonNull(value, "wayIn");
            return this;
        }

        /**
         * Sets its temperatures.
         *
         * @param value the value
         * @return this builder
         */
        public Builder heat(Heat value) {
            this.heat = Objects.requireNonNull(value, "heat");
            return this;
        }

        /**
         * Sets its supply.
         *
         * @param value the value
         * @return this builder
         */
        public Builder supply(Supply value) {
            this.supply = Objects.requireNonNull(value, "supply");
            return this;
        }

        /**
         * Sets sizes that replace a clause's result.
         *
         * @param value the value
         * @return this builder
         */
        public Builder ordered(Map<String, Amount> value) {
            this.ordered = Objects.requireNonNull(value, "ordered");
            return this;
        }

        /**
         * Sets figures the caller declares (site. or own.).
         *
         * @param value the value
         * @return this builder
         */
        public Builder declared(Map<String, FigureValue> value) {
            this.declared = Objects.requireNonNull(value, "declared");
            return this;
        }

        /**
         * Sets what the opening was drawn with: its nominal width and length.
         *
         * @param widthMm above 0 and at most 50 000 mm; NaN where not stated
         * @param lengthMm the same
         * @return this builder
         * @throws IllegalArgumentException if one of them is out of range
         */
        public Builder nominal(double widthMm, double lengthMm) {
            this.nominalWidthMm = nominal("width", widthMm);
            this.nominalLengthMm = nominal("length", lengthMm);
            return this;
        }

        private static double nominal(String what, double mm) {
            if (!Double.isNaN(mm) && !(mm > 0 && mm <= LONGEST_MM)) {
                throw new IllegalArgumentException(
                        "nominal " + what + " must be above 0 mm and at most 50000 mm, got " + mm + " mm");
            }
            return mm;
        }

        /**
         * Sets JSON text that is handed through unread.
         *
         * @param value the value
         * @return this builder
         */
        public Builder carry(String value) {
            this.carry = Objects.requireNonNull(value, "carry");
            return this;
        }

        /** {@return the job} */
        public Job build() {
            return new Job(this);
        }
    }
}
