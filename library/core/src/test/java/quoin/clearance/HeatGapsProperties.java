package quoin.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import quoin.clearance.HeatGaps.Expansion;
import quoin.clearance.HeatGaps.Temperatures;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Extreme;
import quoin.measure.Influence;
import quoin.measure.Instrument;
import quoin.measure.Uncertain;
import quoin.opening.Gaps;
import quoin.opening.Held;
import quoin.opening.Opening;
import quoin.opening.Reading;
import quoin.opening.Survey;

/** The gaps of a frame in heat, against gaps worked by hand. */
class HeatGapsProperties {
    private static final double ZERO = 273.15;
    private static final Instrument TAPE =
            Instrument.of("tape", Instrument.Kind.STATED).withEach(List.of(Doubt.standard(0.5, Dimension.LENGTH)));

    /** A right-angled opening. */
    private static Opening opening(double width, double length) {
        double diagonal = StrictMath.hypot(width, length);
        List<Reading> readings = new ArrayList<>();
        readings.add(Reading.of("width@head", TAPE, width));
        readings.add(Reading.of("width@foot", TAPE, width));
        readings.add(Reading.of("length@left", TAPE, length));
        readings.add(Reading.of("length@right", TAPE, length));
        readings.add(Reading.of("diagonal@head-left", TAPE, diagonal));
        readings.add(Reading.of("diagonal@head-right", TAPE, diagonal));
        return Opening.of(Survey.finished(readings, Double.NaN));
    }

    private static Expansion expansion(double frame, double surround) {
        return new Expansion(Uncertain.exact(frame), Uncertain.exact(surround));
    }

    private static double least(double width, double length, Expansion expansion, Temperatures temperatures) {
        return HeatGaps.least(
                        opening(1500, 2400),
                        Held.TO_HEAD,
                        Uncertain.exact(width),
                        Uncertain.exact(length),
                        expansion,
                        temperatures)
                .orElseThrow()
                .value();
    }

    /**
     * Worked by hand: aluminium of 2390 mm in timber, measured at 15 degC, at 65 degC grows 2390 (23e-6 * 45 - 4e-6 * 50) =
     * 1.996 mm against it; the 10 mm that are left over at both ends become 8.004, half of it 4.002. Across, 1494 mm grow
     * 1.247 mm and 6 become 4.753: 2.376 each side. To 1e-6 mm: the adjusted shape of exact readings is exact to less.
     */
    @Example
    void aFrameGrowsIntoItsGaps() {
        Temperatures temperatures = new Temperatures(ZERO + 15, ZERO - 5, ZERO + 65);
        double strain = 23e-6 * 45 - 4e-6 * 50;
        double along = (10 - 2390 * strain) / 2;
        double across = (6 - 1494 * strain) / 2;
        assertThat(along).isCloseTo(4.002, within(0.001));
        assertThat(across).isCloseTo(2.376, within(0.001));
        assertThat(least(1494, 2390, expansion(23e-6, 4e-6), temperatures)).isCloseTo(across, within(1e-6));
        assertThat(least(1485, 2390, expansion(23e-6, 4e-6), temperatures)).isCloseTo(along, within(1e-6));
    }

    /** A surround that grows more than its frame is tightest in the cold, and then the names say so. */
    @Example
    void aSurroundThatGrowsMoreIsTightestInTheCold() {
        Temperatures temperatures = new Temperatures(ZERO + 20, ZERO - 5, ZERO + 65);
        Extreme least = HeatGaps.least(
                        opening(1500, 2400),
                        Held.TO_HEAD,
                        Uncertain.exact(1494),
                        Uncertain.exact(2390),
                        expansion(5e-6, 23e-6),
                        temperatures)
                .orElseThrow();
        assertThat(least.value()).isCloseTo((6 - 1494 * 18e-6 * 25) / 2, within(1e-6));
        assertThat(least.governing().names()).last().isEqualTo("coldest");
    }

    /** No change of temperature, or the same growth measured at 20 degC, changes nothing. */
    @Property(tries = 30)
    void heatZeroChangesNothing(
            @ForAll @DoubleRange(min = 1480, max = 1499) double width,
            @ForAll @DoubleRange(min = -20, max = 20) double colder) {
        Opening opening = opening(1500, 2400);
        Uncertain w = Uncertain.of(width, Influence.rectangular("cut", 0.5));
        Uncertain l = Uncertain.exact(2390);
        Extreme plain = Gaps.least(Gaps.of(opening, w, l).orElseThrow());
        Temperatures same = new Temperatures(ZERO + 20, ZERO + 20, ZERO + 20);
        Extreme none = HeatGaps.least(opening, Held.TO_HEAD, w, l, expansion(23e-6, 5e-6), same)
                .orElseThrow();
        assertThat(none.value()).isEqualTo(plain.value());
        assertThat(none.parts()).hasSameSizeAs(plain.parts());
        assertThat(none.governing().value().standardUncertainty())
                .isCloseTo(plain.governing().value().standardUncertainty(), within(1e-12));
        Temperatures range = new Temperatures(ZERO + 20, ZERO + 20 - Math.abs(colder), ZERO + 20 + Math.abs(colder));
        Extreme alike = HeatGaps.least(opening, Held.TO_HEAD, w, l, expansion(9e-6, 9e-6), range)
                .orElseThrow();
        assertThat(alike.value()).isCloseTo(plain.value(), within(1e-9));
    }

    /** A wider range of temperatures never leaves a larger least gap. */
    @Property(tries = 30)
    void aWiderRangeIsNeverBetter(
            @ForAll @DoubleRange(min = 0, max = 30) double colder,
            @ForAll @DoubleRange(min = 0, max = 30) double hotter) {
        Temperatures narrow = new Temperatures(ZERO + 12, ZERO + 5, ZERO + 35);
        Temperatures wide = new Temperatures(ZERO + 12, ZERO + 5 - colder, ZERO + 35 + hotter);
        Expansion expansion = expansion(23e-6, 5e-6);
        assertThat(least(1494, 2390, expansion, wide)).isLessThanOrEqualTo(least(1494, 2390, expansion, narrow) + 1e-9);
    }

    /** The doubt of a coefficient moves a gap by half the size times the temperature: 1494 * 45 * 1e-6 / 2. */
    @Example
    void theDoubtOfACoefficientCounts() {
        Temperatures temperatures = new Temperatures(ZERO + 15, ZERO - 5, ZERO + 65);
        Expansion doubtful =
                new Expansion(Uncertain.of(23e-6, Influence.normal("expansion.flange", 1e-6)), Uncertain.exact(4e-6));
        Extreme least = HeatGaps.least(
                        opening(1500, 2400),
                        Held.TO_HEAD,
                        Uncertain.exact(1494),
                        Uncertain.exact(2390),
                        doubtful,
                        temperatures)
                .orElseThrow();
        Uncertain governing = least.governing().value();
        double effect = governing.sensitivity(Influence.normal("expansion.flange", 1e-6)) * 1e-6;
        assertThat(effect).isCloseTo(-1494 * 45 * 1e-6 / 2, within(1e-6));
    }

    @Example
    void withoutAShapeThereIsNone() {
        Opening none = Opening.of(Survey.finished(List.of(Reading.of("width@head", TAPE, 1500)), Double.NaN));
        assertThat(HeatGaps.least(
                        none,
                        Held.TO_HEAD,
                        Uncertain.exact(1494),
                        Uncertain.exact(2390),
                        expansion(23e-6, 5e-6),
                        new Temperatures(290, 270, 330)))
                .isEmpty();
        assertThatThrownBy(() -> new Temperatures(Double.NaN, 270, 330))
                .hasMessage("temperature of measuring must be above 0 K and finite, got NaN K");
        assertThatThrownBy(() -> new Temperatures(290, 340, 330))
                .hasMessage("coldest must not be above the hottest of 330.0 K, got 340.0 K");
    }
}
