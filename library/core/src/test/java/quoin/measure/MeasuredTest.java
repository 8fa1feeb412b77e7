package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import javax.measure.MetricPrefix;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import tech.units.indriya.unit.Units;

class MeasuredTest {
    private static final Unit<Length> MM = MetricPrefix.MILLI(Units.METRE);
    private static final Unit<Length> INCH = MM.multiply(25.4);
    private static final Influence READING = Influence.normal("reading", 0.5);

    @Test
    void aLengthChangesItsUnitWithItsDoubt() {
        Measured<Length> length = Measured.ofMm(Uncertain.of(1503, READING));
        Measured<Length> metres = length.to(Units.METRE);
        assertThat(metres.amount().value()).isEqualTo(1.503);
        assertThat(metres.amount().standardUncertainty()).isEqualTo(0.0005);
        assertThat(metres.toMm()).isEqualTo(length.amount());
        assertThat(length.to(MM)).isSameAs(length);
        assertThat(length.toMm()).isSameAs(length.amount());
    }

    @Test
    void inchesAreExactWhereTheyCan() {
        assertThat(Measured.ofMm(Uncertain.exact(1511.3)).to(INCH).amount().value())
                .isEqualTo(59.5);
        assertThat(Measured.of(Uncertain.exact(59.5), INCH).toMm().value()).isEqualTo(1511.3);
    }

    @Test
    void sumsAndDifferencesConvertTheOther() {
        Measured<Length> one = Measured.of(Uncertain.of(1.5, READING), Units.METRE);
        Measured<Length> two = Measured.ofMm(Uncertain.exact(3));
        assertThat(one.plus(two).amount().value()).isCloseTo(1.503, within(1e-15));
        assertThat(one.minus(two).amount().value()).isCloseTo(1.497, within(1e-15));
        assertThat(one.minus(one).amount().standardUncertainty()).isZero();
        assertThat(one.times(2).amount().value()).isEqualTo(3);
        assertThat(one.plus(one).unit()).isEqualTo(Units.METRE);
    }

    @Test
    void aDifferenceOfTwoTemperaturesIsNoTemperature() {
        // a quantity library gives −226 °C for 65 °C − 18 °C
        Measured<Temperature> hot = celsius(65);
        Measured<Temperature> cold = celsius(18);
        Measured<Temperature> difference = hot.minus(cold);
        assertThat(difference.unit()).isEqualTo(Units.KELVIN);
        assertThat(difference.amount().value()).isEqualTo(47);
        assertThat(cold.plus(difference).amount().value()).isEqualTo(65);
        assertThat(cold.plus(difference).unit()).isEqualTo(Units.CELSIUS);
        assertThat(hot.minus(difference).amount().value()).isEqualTo(18);
    }

    @Test
    void theDoubtOfATemperatureConvertsByScaleOnly() {
        Measured<Temperature> warm = Measured.of(Uncertain.of(20, READING), Units.CELSIUS);
        assertThat(warm.to(Units.KELVIN).amount().value()).isEqualTo(293.15);
        assertThat(warm.to(Units.KELVIN).amount().standardUncertainty()).isEqualTo(0.5);
        assertThat(warm.to(Units.KELVIN).to(Units.CELSIUS).amount().value()).isCloseTo(20, within(1e-12));
    }

    @Test
    void aScaleWithItsOwnStepsConvertsByBoth() {
        // definition: t/°F = 1.8 · t/°C + 32 (standard, from memory); one rounding of a double at 500
        Unit<Temperature> fahrenheit = Units.KELVIN.multiply(5).divide(9).shift(459.67);
        Measured<Temperature> boiling = Measured.of(Uncertain.of(212, READING), fahrenheit);
        assertThat(boiling.to(Units.CELSIUS).amount().value()).isCloseTo(100, within(1e-12));
        assertThat(boiling.to(Units.CELSIUS).amount().standardUncertainty()).isCloseTo(0.5 / 1.8, within(1e-12));
    }

    @Test
    void whatMakesNoSenseIsRefused() {
        Measured<Temperature> warm = celsius(20);
        Measured<Temperature> step = Measured.of(Uncertain.exact(5), Units.KELVIN);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> warm.plus(warm))
                .withMessageStartingWith("what is added must be a difference");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> step.minus(warm))
                .withMessageStartingWith("what is taken from a difference must be a difference");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> warm.times(2))
                .withMessageStartingWith("what is multiplied must start at zero");
        assertThatIllegalArgumentException()
                .isThrownBy(warm::toMm)
                .withMessageStartingWith("a number of mm must be one of a length");
    }

    @Test
    void theValueLeavesAsAQuantity() {
        Measured<Length> length = Measured.ofMm(Uncertain.exact(1503));
        assertThat(length.quantity().to(Units.METRE).getValue().doubleValue()).isEqualTo(1.503);
        assertThat(length.unit()).isEqualTo(MM);
    }

    @Test
    void measuredQuantitiesAreEqualByNumberAndUnit() {
        assertThat(celsius(20))
                .isEqualTo(celsius(20))
                .hasSameHashCodeAs(celsius(20))
                .isNotEqualTo(celsius(21))
                .isNotEqualTo(Measured.of(Uncertain.exact(20), Units.KELVIN))
                .isNotEqualTo(new Object());
    }

    private static Measured<Temperature> celsius(double value) {
        return Measured.of(Uncertain.exact(value), Units.CELSIUS);
    }
}
