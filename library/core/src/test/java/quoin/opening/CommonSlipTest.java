package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slips that people make on a tape. Mark: practice. */
class CommonSlipTest {
    @ParameterizedTest
    @CsvSource({
        "WHOLE_10_MM, 10, whole-10-mm",
        "WHOLE_100_MM, 100, whole-100-mm",
        "WHOLE_1000_MM, 1000, whole-1000-mm",
        "BURNT_INCH, 25.4, burnt-inch",
        "SIX_FOR_NINE, 3, six-for-nine",
        "ONE_FOR_SEVEN, 6, one-for-seven",
        "THREE_FOR_EIGHT, 5, three-for-eight",
        "SWAPPED_DIGITS, 9, swapped-digits",
        "SWAPPED_DIGITS_90, 90, swapped-digits-90"
    })
    void sizesAndNames(CommonSlip slip, double mm, String text) {
        assertThat(slip.mm()).isEqualTo(mm);
        assertThat(slip.text()).isEqualTo(text);
    }

    /** 1496 for 1499; 1501 for 1507; 1503 for 1508; 1545 for 1554 differs by 9, 1450 for 1540 by 90. */
    @ParameterizedTest
    @CsvSource({
        "SIX_FOR_NINE, 1496, true",
        "SIX_FOR_NINE, 1499, true",
        "SIX_FOR_NINE, 1495, false",
        "ONE_FOR_SEVEN, 1501, true",
        "ONE_FOR_SEVEN, 1507, true",
        "ONE_FOR_SEVEN, 1500, false",
        "THREE_FOR_EIGHT, 1503, true",
        "THREE_FOR_EIGHT, 1508, true",
        "THREE_FOR_EIGHT, 1509, false",
        "SWAPPED_DIGITS, 1545, true",
        "SWAPPED_DIGITS, 1554, true",
        "SWAPPED_DIGITS, 1555, false",
        "SWAPPED_DIGITS_90, 1450, true",
        "SWAPPED_DIGITS_90, 1550, false",
        "WHOLE_10_MM, 1234.5, true",
        "BURNT_INCH, 0, true"
    })
    void digitsMustAllowIt(CommonSlip slip, double observed, boolean fits) {
        assertThat(slip.fits(observed)).isEqualTo(fits);
    }

    /** A diagonal misread by 100 mm, all readings twice: one culprit, and what it looks like. */
    @Test
    void aMisreadDiagonalIsNamed() {
        double d = Math.sqrt(2400.0 * 2400 + 1500 * 1500);
        Adjustment net = Surveys.adjust(List.of(
                Surveys.read("width@head", 1, 2400, 2400),
                Surveys.read("width@foot", 1, 2400, 2400),
                Surveys.read("length@left", 1, 1500, 1500),
                Surveys.read("length@right", 1, 1500, 1500),
                Surveys.read("diagonal@head-left", 1, d + 10, d),
                Surveys.read("diagonal@head-right", 1, d, d)));
        assertThat(net.isAccepted()).isFalse();
        Suspect suspect = net.suspects().get(0);
        assertThat(suspect.readings()).containsExactly("diagonal@head-left");
        assertThat(suspect.askFor()).isEqualTo("diagonal@head-left");
        assertThat(suspect.slips().get(0).looksLike()).isEqualTo("whole-10-mm");
        assertThat(suspect.slips().get(0).by()).isBetween(9.0, 11.0);
    }

    /** Quarter widths and lengths and a corner-to-middle tell every one of the six; two wrong readings are two groups. */
    @Test
    void oneWrongReadingOfManyIsNamedAlone() {
        for (String wrong : Surveys.SIX) {
            Adjustment net = Surveys.adjust(rich(wrong, 40));
            assertThat(net.isAccepted()).isFalse();
            assertThat(net.suspects().get(0).readings()).as(wrong).containsExactly(wrong);
            assertThat(net.suspects().get(0).slips().get(0).by()).isBetween(36.0, 44.0);
        }
    }

    /** Two wrong readings that no single slip explains: everything that stands out, nobody alone acquitted. */
    @Test
    void twoWrongReadings() {
        List<Reading> readings = new java.util.ArrayList<>(rich("width@head", 60));
        readings.set(3, Surveys.read("length@left", 1, 1540));
        Adjustment net = Surveys.adjust(readings);
        assertThat(net.isAccepted()).isFalse();
        assertThat(net.suspects()).flatExtracting(Suspect::readings).contains("width@head", "length@left");
        assertThat(net.suspects().get(0).readings()).containsExactly("width@head");
    }

    /** The slip keeps its sign: observed minus true. */
    @Test
    void aReadingTooShort() {
        Adjustment net = Surveys.adjust(rich("length@left", -25.4));
        Suspect.Slip slip = net.suspects().get(0).slips().get(0);
        assertThat(slip.reading()).isEqualTo("length@left");
        assertThat(slip.by()).isBetween(-27.0, -24.0);
        assertThat(slip.looksLike()).isEqualTo("burnt-inch");
    }

    private static List<Reading> rich(String wrong, double by) {
        double[] size = {2400, 1500, 2400, 1500, Math.hypot(2400, 1500), Math.hypot(2400, 1500)};
        for (int i = 0; i < 6; i++) {
            size[i] += Surveys.SIX.get(i).equals(wrong) ? by : 0;
        }
        return Surveys.join(
                Surveys.six(1, size),
                Surveys.read("width@1/4", 1, 2400),
                Surveys.read("width@3/4", 1, 2400),
                Surveys.read("length@1/4", 1, 1500),
                Surveys.read("length@3/4", 1, 1500),
                Surveys.read("cross@head-left:right:1/2", 1, Math.hypot(2400, 750)));
    }
}
