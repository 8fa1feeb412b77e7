package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class AmountTextTest {
    /** Definitions of the units (standard: SI brochure, from memory); one rounding of a double. */
    @ParameterizedTest
    @CsvSource({
        "12 deg, ANGLE, 0.20943951023931953",
        "180 deg, ANGLE, 3.141592653589793",
        "-5 degC, TEMPERATURE, 268.15",
        "65 degC, TEMPERATURE, 338.15",
        "47 K, TEMPERATURE_DIFFERENCE, 47",
        "2 kg, MASS, 2",
        "250 g, MASS, 0.25",
        "450 N, FORCE, 450",
        "1.2 kN, FORCE, 1200",
        "9 N.m, TORQUE, 9000",
        "30 s, TIME, 30",
        "5 min, TIME, 300",
        "230 V, VOLTAGE, 230",
        "0.6 A, CURRENT, 0.6",
        "140 W, POWER, 140",
        "15 rpm, TURNING_SPEED, 1.5707963267948966",
        "1.0 mm2, AREA, 1",
        "350 g/m2, AREA_MASS, 3.5e-7",
        "0.62 kg/m, LINE_MASS, 0.00062",
        "20 N/m, LINE_FORCE, 0.02",
        "23e-6 /K, PER_KELVIN, 0.000023",
        "23e-6/K, PER_KELVIN, 0.000023",
        "5 %, RATIO, 0.05"
    })
    void readsEveryUnit(String text, Dimension dimension, double base) {
        Amount amount = AmountText.parse(text);
        assertThat(amount.dimension()).isEqualTo(dimension);
        assertThat(amount.value()).isCloseTo(base, within(1e-15 * StrictMath.max(1, base)));
        assertThat(AmountText.parse(text, dimension)).isEqualTo(amount);
    }

    static java.util.List<UnitTable.Entry> units() {
        return UnitTable.all();
    }

    @ParameterizedTest
    @MethodSource("units")
    void writesEveryUnitBack(UnitTable.Entry unit) {
        Amount amount = AmountText.parse("12.5 " + unit.text());
        assertThat(AmountText.format(amount, unit.text(), 3, Locale.ROOT)).isEqualTo("12.500 " + unit.text());
        assertThat(AmountText.format(amount, unit.text(), 1, Locale.GERMANY)).isEqualTo("12,5 " + unit.text());
        assertThat(unit.toBase(12.5)).isCloseTo(amount.value(), within(1e-12 * amount.value()));
    }

    @Test
    void aTemperatureIsNoDifference() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AmountText.parse("20 K", Dimension.TEMPERATURE))
                .withMessage("\"20 K\" is an amount of temperature difference, wanted is one of temperature, such as a"
                        + " number of degC");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AmountText.parse("20 degC", Dimension.TEMPERATURE_DIFFERENCE));
    }

    @Test
    void aMissingUnitSuggestsOneOfTheWantedDimension() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AmountText.parse("12", Dimension.ANGLE))
                .withMessage("12 is a number without a unit: write 12 deg");
    }

    @Test
    void unitsOfAnotherDimensionAreRefused() {
        Amount amount = new Amount(1, Dimension.LENGTH);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AmountText.format(amount, "deg", 1, Locale.ROOT))
                .withMessage("unit must be one of length, got deg, a unit of angle");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AmountText.format(amount, "yd", 1, Locale.ROOT))
                .withMessageStartingWith("unit must be one of mm, cm, ");
    }

    @Test
    void anAmountIsFiniteAndHasNoNegativeZero() {
        assertThat(new Amount(-0.0, Dimension.LENGTH)).isEqualTo(new Amount(0.0, Dimension.LENGTH));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Amount(Double.NaN, Dimension.ANGLE))
                .withMessage("value must be finite, got NaN rad");
        assertThat(new Amount(StrictMath.PI / 2, Dimension.ANGLE).toAnswer()).isEqualTo(90);
    }
}
