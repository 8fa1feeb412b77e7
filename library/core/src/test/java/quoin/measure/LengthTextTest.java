package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** 1 in = 25.4 mm exactly (standard, from memory: international agreement of 1959). */
class LengthTextTest {
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            value = {
                "1503 mm, 1503",
                "1503.25 mm, 1503.25",
                "150.3 cm, 1503",
                "1.1 cm, 11",
                "1.503 m, 1503",
                "59 3/16 in, 1503.3625",
                "59 in, 1498.6",
                "59.5 in, 1511.3",
                "3/16 in, 4.7625",
                "-3/16 in, -4.7625",
                "-59 3/16 in, -1503.3625",
                "4' 11 3/16\", 1503.3625",
                "4'11 3/16\", 1503.3625",
                "-4' 11 3/16\", -1503.3625",
                "4', 1219.2",
                "4' 0\", 1219.2",
                "4 1/2', 1371.6",
                "11 3/16\", 284.1625",
                "0.5\", 12.7",
                "4.5 ft, 1371.6",
                "1e3 mm, 1000",
                "1.5E+3 mm, 1500",
                "+5 mm, 5",
                ".5 in, 12.7",
                "1503mm, 1503",
                "-0 mm, 0"
            })
    void readsEveryStyle(String text, double mm) {
        assertThat(LengthText.parseMm(text)).isEqualTo(mm);
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            value = {
                "1503.3625, 16, 59 3/16 in, 4' 11 3/16\"",
                "1498.6, 16, 59 in, 4' 11\"",
                "4.7625, 16, 3/16 in, 3/16\"",
                "-4.7625, 16, -3/16 in, -3/16\"",
                "-1503.3625, 16, -59 3/16 in, -4' 11 3/16\"",
                "1219.2, 16, 48 in, 4' 0\"",
                "0, 16, 0 in, 0\"",
                "12.7, 64, 1/2 in, 1/2\"",
                "12.7, 1, 1 in, 1\"",
                "-12.7, 1, -1 in, -1\"",
                "304.79, 1, 12 in, 1' 0\""
            })
    void writesInches(double mm, int denominator, String inches, String feet) {
        assertThat(LengthText.inches(mm, denominator)).isEqualTo(inches);
        assertThat(LengthText.feetAndInches(mm, denominator)).isEqualTo(feet);
    }

    @Test
    void writesMetricInALocale() {
        assertThat(LengthText.millimetres(1503.25, 1, Locale.ROOT)).isEqualTo("1503.3 mm");
        assertThat(LengthText.millimetres(-1503.25, 1, Locale.ROOT)).isEqualTo("-1503.3 mm");
        assertThat(LengthText.millimetres(1503, 0, Locale.ROOT)).isEqualTo("1503 mm");
        assertThat(LengthText.millimetres(-0.04, 1, Locale.ROOT)).isEqualTo("0.0 mm");
        assertThat(LengthText.metres(1503, 3, Locale.ROOT)).isEqualTo("1.503 m");
        assertThat(LengthText.metres(1503, 3, Locale.GERMANY)).isEqualTo("1,503 m");
        assertThat(LengthText.parseMm("1,503 m", Locale.GERMANY)).isEqualTo(1503);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1503 | 1503 is a number without a unit: write 1503 mm or another length unit",
                "'' | the text is empty: write a number and a unit, such as 1503 mm",
                "NaN | \"NaN\" cannot be read as a quantity: write a number and a unit, such as 1503 mm",
                "Infinity mm | \"Infinity mm\" cannot be read as a quantity: write a number and a unit, such as 1503"
                        + " mm",
                "12 deg | \"12 deg\" is an amount of angle, wanted is one of length, such as a number of mm",
                "1,503 m | \"1,503 m\" cannot be read as a quantity: write the number with '.' before its decimals and"
                        + " nothing between thousands",
                "3/16 mm | \"3/16 mm\" cannot be read as a quantity: fractions are for inches and feet, write a decimal"
                        + " number of mm",
                "3/0 in | \"3/0 in\" cannot be read as a quantity: a fraction is divided by a whole number above 0",
                "4' 13\" | \"4' 13\"\" cannot be read as a quantity: inches behind feet are less than 12",
                "4.5' 3\" | \"4.5' 3\"\" cannot be read as a quantity: feet before inches are a whole number",
                "4' 3 | \"4' 3\" cannot be read as a quantity: inches end with \", as in 4' 11 3/16\"",
                "59 3 in | \"59 3 in\" cannot be read as a quantity: after the number stands a unit or a fraction, as"
                        + " in 59 3/16 in",
                "1e9999 mm | \"1e9999 mm\" cannot be read as a quantity: a power of ten has at most 3 digits",
                "1e999 mm | \"1e999 mm\" cannot be read as a quantity: the number is too large",
            })
    void saysWhatWouldBeRight(String text, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LengthText.parseMm(text))
                .withMessage(message);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1.5.3 mm",
                "--5 mm",
                "5 MM",
                "5 mm mm",
                "1d mm",
                "0x10 mm",
                "5e mm",
                "1 1/2.5 in",
                "1.5/2 mm",
                "−5 mm",
                "٣ mm",
                "5. mm",
                "4'' ",
                "4' 3\" x",
                "1.5 1/2 in",
                "- mm",
                "/2 in",
                "' 3\"",
                "4' -3\""
            })
    void everythingElseIsRefused(String text) {
        assertThatIllegalArgumentException().isThrownBy(() -> LengthText.parseMm(text));
    }

    @Test
    void anUnknownUnitListsTheOnesKnown() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LengthText.parseMm("5 yd"))
                .withMessageContaining("unknown unit \"yd\", known are mm, cm, m, in, ft, ");
    }

    @Test
    void aVeryLongTextIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LengthText.parseMm("1".repeat(65)))
                .withMessage("a quantity has at most 64 characters, got 65");
    }

    @Test
    void badArgumentsAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LengthText.inches(1, 3))
                .withMessage("denominator must be 1, 2, 4, 8, 16, 32 or 64, got 3");
        assertThatIllegalArgumentException().isThrownBy(() -> LengthText.inches(1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> LengthText.inches(1, 128));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LengthText.millimetres(1, -1, Locale.ROOT))
                .withMessage("decimals must be from 0 to 12, got -1");
        assertThatIllegalArgumentException().isThrownBy(() -> LengthText.millimetres(1, 13, Locale.ROOT));
        assertThatIllegalArgumentException().isThrownBy(() -> LengthText.metres(Double.NaN, 1, Locale.ROOT));
        assertThatIllegalArgumentException().isThrownBy(() -> LengthText.feetAndInches(1e13, 16));
    }
}
