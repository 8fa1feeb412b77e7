package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class InstrumentTest {
    /** Rounding of doubles only. */
    private static final double EXACT = 1e-12;

    private static final Instrument TAPE = Instrument.of("tape", Instrument.Kind.TAPE)
            .withAccuracyClass(TapeClass.II)
            .withEnd(Instrument.End.HOOK)
            .withStep(1)
            .withEach(List.of(Doubt.standard(0.8, Dimension.LENGTH)));

    @Test
    void aTapeClassIsOneInfluenceOfAllReadings() {
        // standard: EU Directive 2014/32/EU, Annex X; class II, hook, 3 m: 1.1 / sqrt 3 = 0.635 mm
        Uncertain reading = TAPE.read("width@head", 3000).get(0);
        Influence scale = reading.influences().get(0);
        assertThat(scale.id()).isEqualTo("tape/scale");
        assertThat(scale.shape()).isEqualTo(Shape.RECTANGULAR);
        assertThat(scale.standardUncertainty()).isEqualTo(1);
        assertThat(reading.contribution(0)).isCloseTo(0.635, within(5e-4));
        assertThat(reading.sensitivity(scale)).isCloseTo(1.1 / StrictMath.sqrt(3), within(EXACT));
    }

    @Test
    void withoutAnEndNothingIsAdded() {
        Instrument tape = Instrument.of("tape", Instrument.Kind.TAPE).withAccuracyClass(TapeClass.II);
        // class II at 3 m and 5 m: 0.520 and 0.751 mm, three printed digits
        assertThat(tape.read("a", 3000).get(0).standardUncertainty()).isCloseTo(0.520, within(5e-4));
        assertThat(tape.read("a", 5000).get(0).standardUncertainty()).isCloseTo(0.751, within(5e-4));
    }

    @Test
    void eachValueHasItsOwnDoubtAndRounding() {
        List<Uncertain> readings = TAPE.read("width@foot", 1503, 1504);
        assertThat(readings).hasSize(2);
        assertThat(ids(readings.get(0)))
                .containsExactly(
                        "tape/scale",
                        "width@foot#1/each1",
                        "width@foot#1/step",
                        "width@foot#2/each1",
                        "width@foot#2/step");
        assertThat(readings.get(0).influences()).isSameAs(readings.get(1).influences());
        assertThat(readings.get(0).contributions())
                .containsExactly(
                        new double[] {(0.3 + 0.4 + 0.2) / StrictMath.sqrt(3), 0.8, 0.5 / StrictMath.sqrt(3), 0, 0},
                        within(EXACT));
        assertThat(readings.get(1).contribution(1)).isZero();
        assertThat(readings.get(1).contribution(3)).isEqualTo(0.8);
    }

    @Test
    void aCoarseStepIsOneRoundingForAllValuesOfACall() {
        Instrument fine = Instrument.of("fine", Instrument.Kind.STATED)
                .withStep(1)
                .withEach(List.of(Doubt.standard(0.49, Dimension.LENGTH)));
        List<Uncertain> readings = fine.read("width@foot", 1503, 1504);
        assertThat(ids(readings.get(0))).containsExactly("width@foot#1/each1", "width@foot#2/each1", "width@foot/step");
        // the mean keeps the whole of the rounding: 0.49² / 2 + 1/12
        Uncertain mean = readings.get(0).plus(readings.get(1)).times(0.5);
        assertThat(mean.variance()).isCloseTo(0.49 * 0.49 / 2 + 1.0 / 12, within(EXACT));
    }

    @Test
    void aFineStepIsAveraged() {
        Instrument half = Instrument.of("half", Instrument.Kind.STATED)
                .withStep(1)
                .withEach(List.of(Doubt.standard(0.5, Dimension.LENGTH)));
        List<Uncertain> readings = half.read("width@foot", 1503, 1504);
        Uncertain mean = readings.get(0).plus(readings.get(1)).times(0.5);
        assertThat(mean.variance()).isCloseTo((0.25 + 1.0 / 12) / 2, within(EXACT));
    }

    @Test
    void anAllDoubtAddsInASumAndCancelsInADifference() {
        Instrument laser = Instrument.of("laser", Instrument.Kind.LASER)
                .withAll(List.of(Doubt.limits(StrictMath.sqrt(3), Dimension.LENGTH)));
        Uncertain one = laser.read("a", 2833).get(0);
        Uncertain two = laser.read("b", 2830).get(0);
        assertThat(one.plus(two).standardUncertainty()).isCloseTo(2, within(EXACT));
        assertThat(one.minus(two).standardUncertainty()).isZero();
    }

    @Test
    void differentReadingsAreFreshAndOtherInstrumentsAreOthers() {
        Instrument other = Instrument.of("other", Instrument.Kind.TAPE).withAccuracyClass(TapeClass.II);
        Uncertain one = TAPE.read("a", 1500).get(0);
        assertThat(one.covariance(other.read("b", 1500).get(0))).isZero();
        assertThat(one.covariance(TAPE.read("b", 1500).get(0))).isCloseTo(0.9 * 0.9 / 3, within(EXACT));
    }

    @Test
    void doubtsDecideTheDimension() {
        Instrument level =
                Instrument.of("level", Instrument.Kind.STATED).withEach(List.of(Doubt.standard(0.01, Dimension.ANGLE)));
        assertThat(level.dimension()).isEqualTo(Dimension.ANGLE);
        assertThat(level.withEach(List.of()).dimension()).isEqualTo(Dimension.ANGLE);
        assertThat(TAPE.dimension()).isEqualTo(Dimension.LENGTH);
        assertThat(Instrument.of("x", Instrument.Kind.STATED)
                        .withDimension(Dimension.TIME)
                        .dimension())
                .isEqualTo(Dimension.TIME);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> level.withAll(List.of(Doubt.standard(1, Dimension.LENGTH))))
                .withMessage("doubts of level must be of one dimension, got length and angle");
        assertThatIllegalArgumentException().isThrownBy(() -> level.withDimension(Dimension.LENGTH));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> level.withAll(List.of(Doubt.standard(1, Dimension.ANGLE)))
                        .withDimension(Dimension.TIME));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TAPE.withEach(List.of(Doubt.standard(1, Dimension.ANGLE))))
                .withMessage("doubts of tape must be lengths, got angle");
    }

    @Test
    void onlyATapeHasAClassAndAnEnd() {
        Instrument laser = Instrument.of("laser", Instrument.Kind.LASER);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> laser.withAccuracyClass(TapeClass.I))
                .withMessage("an accuracy class must be one of a tape, got one for the laser laser");
        assertThatIllegalArgumentException().isThrownBy(() -> laser.withEnd(Instrument.End.HOOK));
    }

    @Test
    void itSaysWhetherAnythingIsKnownOfItsDoubt() {
        Instrument bare = Instrument.of("rule", Instrument.Kind.STATED);
        assertThat(bare.hasDoubt()).isFalse();
        assertThat(bare.withStep(1).hasDoubt()).isTrue();
        assertThat(bare.withEach(List.of(Doubt.standard(1, Dimension.LENGTH))).hasDoubt())
                .isTrue();
        assertThat(bare.withAll(List.of(Doubt.standard(1, Dimension.LENGTH))).hasDoubt())
                .isTrue();
        assertThat(TAPE.hasDoubt()).isTrue();
        assertThat(bare.read("a", 5).get(0)).isEqualTo(Uncertain.exact(5));
    }

    @Test
    void itTellsWhatWasStated() {
        assertThat(TAPE.id()).isEqualTo("tape");
        assertThat(TAPE.kind()).isEqualTo(Instrument.Kind.TAPE);
        assertThat(TAPE.accuracyClass()).contains(TapeClass.II);
        assertThat(TAPE.end()).isEqualTo(Instrument.End.HOOK);
        assertThat(TAPE.step()).isEqualTo(1);
        assertThat(TAPE.each()).hasSize(1);
        assertThat(TAPE.all()).isEmpty();
        assertThat(TAPE.shared().size()).isEqualTo(1);
    }

    @Test
    void instrumentsAreEqualByWhatWasStated() {
        assertThat(TAPE.withStep(1)).isEqualTo(TAPE).hasSameHashCodeAs(TAPE);
        assertThat(TAPE.withStep(2)).isNotEqualTo(TAPE);
        assertThat(TAPE).isNotEqualTo(new Object()).hasToString(TAPE.withStep(1).toString());
    }

    @Test
    void badReadingsAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TAPE.read("a", Double.NaN))
                .withMessage("reading must be finite, got NaN mm");
        assertThatIllegalArgumentException().isThrownBy(() -> TAPE.read("a", Double.POSITIVE_INFINITY));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TAPE.read("a"))
                .withMessage("number of values must be 1 or more, got 0");
        assertThatIllegalArgumentException().isThrownBy(() -> TAPE.read(" ", 1));
        assertThatIllegalArgumentException().isThrownBy(() -> TAPE.withStep(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> Instrument.of("", Instrument.Kind.TAPE));
    }

    private static List<String> ids(Uncertain number) {
        return number.influences().asList().stream().map(Influence::id).toList();
    }
}
