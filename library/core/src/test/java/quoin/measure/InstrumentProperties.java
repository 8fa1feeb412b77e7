package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

class InstrumentProperties {
    @Property
    void theScaleOfATapeCancelsInADifferenceWithinOneMetreStep(
            @ForAll TapeClass tapeClass,
            @ForAll Instrument.End end,
            @ForAll @IntRange(min = 0, max = 20) int metre,
            @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 1000) double one,
            @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 1000) double two) {
        Instrument tape = Instrument.of("tape", Instrument.Kind.TAPE)
                .withAccuracyClass(tapeClass)
                .withEnd(end);
        Uncertain a = tape.read("a", 1000 * metre + one).get(0);
        Uncertain b = tape.read("b", 1000 * metre + two).get(0);
        assertThat(a.minus(b).standardUncertainty()).isZero();
        assertThat(a.plus(b).standardUncertainty()).isEqualTo(2 * a.standardUncertainty());
    }

    @Property
    void aLongerReadingIsNeverBetter(
            @ForAll TapeClass tapeClass,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 30_000) double length,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 30_000) double more) {
        assertThat(tapeClass.maximumPermissibleErrorMm(length + more))
                .isGreaterThanOrEqualTo(tapeClass.maximumPermissibleErrorMm(length));
    }
}
