package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Slips that people make on a tape. Mark: practice. */
class CommonSlipTest {
    /** What was read, what the others say, and what should have been read then. */
    @ParameterizedTest
    @CsvSource({
        "WHOLE_10_MM, 1513, 1502, 1503",
        "WHOLE_10_MM, 1513, 1524, 1523",
        "WHOLE_100_MM, 1603, 1502, 1503",
        "WHOLE_1000_MM, 2503, 1502, 1503",
        "BURNT_INCH, 1525.4, 1501, 1500",
        "SIX_FOR_NINE, 1499, 1496, 1496",
        "SIX_FOR_NINE, 1496, 1499, 1499",
        "SIX_FOR_NINE, 1693, 1994, 1993",
        "SIX_FOR_NINE, 1692, 1721, 1662",
        "ONE_FOR_SEVEN, 1507, 1500, 1501",
        "ONE_FOR_SEVEN, 2412, 2474, 2472",
        "THREE_FOR_EIGHT, 1508, 1502, 1503",
        "THREE_FOR_EIGHT, 2383, 2334, 2333",
        "SWAPPED_DIGITS, 1545, 1553, 1554",
        "SWAPPED_DIGITS, 1507, 1569, 1570",
        "SWAPPED_DIGITS_90, 1450, 1539, 1540",
        "SWAPPED_DIGITS_90, 1453, 4149, 4153",
        "COUNTED_BACK, 153, 146, 147"
    })
    void whatShouldHaveBeenRead(CommonSlip slip, double observed, double likely, double corrected) {
        assertThat(slip.corrected(observed, likely)).isEqualTo(corrected);
    }

    @ParameterizedTest
    @CsvSource({
        "SIX_FOR_NINE, 1475",
        "ONE_FOR_SEVEN, 2408",
        "THREE_FOR_EIGHT, 2409",
        "SWAPPED_DIGITS, 1455",
        "SWAPPED_DIGITS_90, 5556",
        "COUNTED_BACK, 1500",
        "COUNTED_BACK, 1508",
        "SIX_FOR_NINE, 1503.3625",
        "SWAPPED_DIGITS, 1503.3625",
        "COUNTED_BACK, 1503.3625",
        "ONE_FOR_SEVEN, -1701"
    })
    void digitsMustAllowIt(CommonSlip slip, double observed) {
        assertThat(slip.corrected(observed, observed + 3)).isNaN();
    }

    /** Half a millimetre and a tenth are read in millimetres, sixteenths of an inch are not. */
    @Test
    void decimalsOfAMillimetreKeepTheirDigits() {
        assertThat(CommonSlip.SIX_FOR_NINE.corrected(1499.5, 1496)).isEqualTo(1496.5);
        assertThat(CommonSlip.SWAPPED_DIGITS.corrected(1545.3, 1550)).isEqualTo(1554.3);
    }

    /** Every slip has a name that documents write, and a corrected value that is not what was read. */
    @ParameterizedTest
    @EnumSource(CommonSlip.class)
    void neverWhatWasRead(CommonSlip slip) {
        assertThat(slip.text()).matches("[a-z0-9-]+");
        for (int read = 1; read < 4000; read++) {
            assertThat(slip.corrected(read, read + 0.5)).isNotEqualTo(read);
            assertThat(slip.corrected(read, read - 0.5)).isNotEqualTo(read);
        }
    }

    /** A diagonal misread by 10 mm, all readings twice: one culprit, and what it looks like. */
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
