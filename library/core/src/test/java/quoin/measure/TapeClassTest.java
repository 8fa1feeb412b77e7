package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Standard: EU Directive 2014/32/EU, Annex X (MI-008): ± (a + b · L), L in metres rounded up, c at a terminal surface.
 * Tolerance 1e-12 mm: sums of a few decimal tenths, rounding of doubles only.
 */
class TapeClassTest {
    private static final double EXACT = 1e-12;

    @ParameterizedTest
    @CsvSource({
        "1000, 0.2, 0.5, 1.0",
        "2000, 0.3, 0.7, 1.4",
        "3000, 0.4, 0.9, 1.8",
        "5000, 0.6, 1.3, 2.6",
        "8000, 0.9, 1.9, 3.8",
        "10000, 1.1, 2.3, 4.6",
        "30000, 3.1, 6.3, 12.6"
    })
    void theErrorsOfTheThreeClasses(double mm, double one, double two, double three) {
        assertThat(TapeClass.I.maximumPermissibleErrorMm(mm)).isCloseTo(one, within(EXACT));
        assertThat(TapeClass.II.maximumPermissibleErrorMm(mm)).isCloseTo(two, within(EXACT));
        assertThat(TapeClass.III.maximumPermissibleErrorMm(mm)).isCloseTo(three, within(EXACT));
    }

    @ParameterizedTest
    @CsvSource({"2000, 2", "2001, 3", "400, 1", "2000.0000005, 2", "2000.00001, 3", "0, 0", "0.5, 1"})
    void theLengthIsRoundedUpToTheNextWholeMetre(double mm, int metres) {
        assertThat(TapeClass.II.maximumPermissibleErrorMm(mm)).isCloseTo(0.3 + 0.2 * metres, within(EXACT));
    }

    @ParameterizedTest
    @CsvSource({"I, 0.5", "II, 1.1", "III, 2.1"})
    void aHookOrAButtEndAddsC(TapeClass tapeClass, double error) {
        assertThat(tapeClass.maximumPermissibleErrorMm(3000, Instrument.End.HOOK))
                .isCloseTo(error, within(EXACT));
        assertThat(tapeClass.maximumPermissibleErrorMm(3000, Instrument.End.BUTT))
                .isCloseTo(error, within(EXACT));
        assertThat(tapeClass.maximumPermissibleErrorMm(3000, Instrument.End.UNSTATED))
                .isEqualTo(tapeClass.maximumPermissibleErrorMm(3000));
    }

    @Test
    void aNegativeOrUnknownLengthIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TapeClass.I.maximumPermissibleErrorMm(-1))
                .withMessage("length must be 0 mm or more and finite, got -1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TapeClass.I.maximumPermissibleErrorMm(Double.NaN))
                .withMessage("length must be 0 mm or more and finite, got NaN mm");
    }
}
