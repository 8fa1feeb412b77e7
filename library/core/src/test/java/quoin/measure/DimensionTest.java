package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DimensionTest {
    @ParameterizedTest
    @EnumSource
    void anAnswerComesBack(Dimension dimension) {
        // one multiplication and one division of doubles; a temperature also loses the digits of its offset
        assertThat(dimension.toAnswer(dimension.fromAnswer(12.34))).isCloseTo(12.34, within(1e-12));
        assertThat(dimension.widthToAnswer(dimension.widthFromAnswer(12.34))).isCloseTo(12.34, within(1e-14));
    }

    @ParameterizedTest
    @EnumSource
    void theUnitTableAgrees(Dimension dimension) {
        UnitTable.find(dimension.answerUnit())
                .ifPresent(unit -> assertThat(unit.toBase(12.34)).isEqualTo(dimension.fromAnswer(12.34)));
        assertThat(UnitTable.find(dimension.answerUnit()).isPresent() || dimension == Dimension.RATIO)
                .isTrue();
    }

    @Test
    void theDoubtOfACelsiusTemperatureConvertsByScaleOnly() {
        assertThat(Dimension.TEMPERATURE.widthToAnswer(2)).isEqualTo(2);
        assertThat(Dimension.TEMPERATURE.toAnswer(273.15)).isEqualTo(0);
        assertThat(Dimension.TEMPERATURE.fromAnswer(-5)).isEqualTo(268.15);
    }

    @Test
    void wordsAndUnits() {
        assertThat(Dimension.TEMPERATURE_DIFFERENCE.label()).isEqualTo("temperature difference");
        assertThat(Dimension.ANGLE.baseUnit()).isEqualTo("rad");
        assertThat(Dimension.ANGLE.answerUnit()).isEqualTo("deg");
    }
}
