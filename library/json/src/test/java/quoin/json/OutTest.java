package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quoin.judge.DecisionRule;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.parts.Declared;
import quoin.parts.Fastener;
import quoin.parts.Parts;
import quoin.parts.Pull;
import quoin.parts.Substrate;
import quoin.rulebook.Rulebook;

/** How numbers, quantities and texts are written, and what no document can hold. */
class OutTest {
    private static String written(double number) {
        Out out = Out.line();
        out.start();
        out.field("n", number);
        out.end();
        String text = out.text();
        return text.substring(5, text.length() - 1);
    }

    /** 8.41E21 and 2.0E-3 are what a JDK before 19 writes with digits too many or in another way (JDK-4511638). */
    @ParameterizedTest
    @CsvSource({
        "1495, 1495",
        "-0.0, 0",
        "0.1, 0.1",
        "1495.5, 1495.5",
        "-3, -3",
        "999999999999999, 999999999999999",
        "8.41E21, 8.41E21",
        "2.0E-3, 0.002",
        "4.9E-324, 4.9E-324",
        "1.7976931348623157E308, 1.7976931348623157E308"
    })
    void numbersAreShort(double number, String text) {
        assertThat(written(number)).isEqualTo(text);
    }

    @Property
    void everyNumberReadsBack(@ForAll double number) {
        assertThat(Double.parseDouble(written(number))).isEqualTo(number + 0.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNotFiniteIsNoNumber(double number) {
        assertThatThrownBy(() -> written(number))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("finite");
    }

    @ParameterizedTest
    @CsvSource({
        "1503, LENGTH, 1503 mm",
        "1503.3625, LENGTH, 1503.3625 mm",
        "0, LENGTH, 0 mm",
        "0.2, RATIO, 20 %",
        "2.3e-5, PER_KELVIN, 0.000023 /K",
        "1e-20, LENGTH, 1E-20 mm",
        "273.15, TEMPERATURE, 0 degC",
        "291.15, TEMPERATURE, 18 degC",
        "9000, TORQUE, 9 N.m"
    })
    void quantitiesAreShort(double base, Dimension dimension, String text) {
        assertThat(AmountWriter.text(new Amount(base, dimension))).isEqualTo(text);
    }

    /** A twelfth of a turn and so on: the value in radians is the one that the text in degrees gives. */
    @Test
    void anglesAreShort() {
        for (int degrees = 0; degrees <= 180; degrees++) {
            double rad = quoin.measure.AmountText.parse(degrees + " deg").value();
            assertThat(AmountWriter.text(new Amount(rad, Dimension.ANGLE))).isEqualTo(degrees + " deg");
        }
    }

    @Test
    void rawTextIsCompactAndEscaped() {
        assertThat(Raw.compact(" { \"a\\t\\u0001\" : [ 1.50 , -0 , true , false , null , \"\\\"\\\\/\" ] } "))
                .isEqualTo("{\"a\\u0009\\u0001\":[1.50,-0,true,false,null,\"\\\"\\\\/\"]}");
        assertThat(Raw.compact("\"\\ud83d\\ude00 \\ud83d \\ude00\"")).isEqualTo("\"😀 \\ud83d \\ude00\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "{\"a\":1,\"a\":2}", "NaN", "1 2"})
    void whatIsCarriedIsJson(String text) {
        assertThatThrownBy(() -> Raw.compact(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("carry must be JSON");
    }

    @Test
    void aFastenerHasOnePullInADocument() {
        Declared force = Declared.of(new Amount(450, Dimension.FORCE));
        Declared unknown = Declared.unknown(Dimension.LENGTH);
        Pull pull = new Pull(force, Substrate.Kind.TIMBER, unknown);
        Fastener fastener = new Fastener("screw", unknown, unknown, unknown, unknown, List.of(pull, pull));
        Parts parts = Parts.of("list", "1", List.of(), List.of(), List.of(), List.of(fastener));
        assertThatThrownBy(() -> PartsDocument.write(parts))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("got 2 for screw");
    }

    @Test
    void aDecisionRuleWithAGuardBandHasNoPlaceInADocument() {
        Rulebook book = Rulebook.of("a", "1", "2026-01-01", "", DecisionRule.guardBand(1));
        assertThatThrownBy(() -> RulebookDocument.write(book))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must be simple or guarded");
    }
}
