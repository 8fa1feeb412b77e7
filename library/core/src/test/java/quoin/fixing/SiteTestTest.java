package quoin.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.fixing.SiteTest.Share;

class SiteTestTest {
    /** BS 8539:2012, annex B (secondary source): 2.5 % and at least 3; of two anchors both. */
    @ParameterizedTest
    @CsvSource({"2, 2, 2", "4, 3, 3", "40, 3, 3", "120, 3, 6", "121, 4, 7", "200, 5, 10", "60, 3, 3", "61, 3, 4"})
    void counts(int anchors, int inForty, int inTwenty) {
        assertThat(SiteTest.count(anchors, Share.ONE_IN_FORTY)).isEqualTo(inForty);
        assertThat(SiteTest.count(anchors, Share.ONE_IN_TWENTY)).isEqualTo(inTwenty);
    }

    /** The same source: 0.30 kN times 1.5 is 0.45 kN; times 1.25 it is 0.375 kN. */
    @Test
    void proofLoads() {
        assertThat(SiteTest.proofLoadN(300, Share.ONE_IN_FORTY)).isCloseTo(450, within(1e-9));
        assertThat(SiteTest.proofLoadN(300, Share.ONE_IN_TWENTY)).isCloseTo(375, within(1e-9));
    }

    /** The same source: five tests to failure, their mean divided by four; numbers invented, 1000 / 4. */
    @Test
    void fiveTestsToFailureGiveAnAllowableLoad() {
        Resistance resistance = SiteTest.allowable(List.of(900.0, 950.0, 1000.0, 1050.0, 1100.0));
        assertThat(resistance.newtons()).isCloseTo(250, within(1e-9));
        assertThat(resistance.method()).isEqualTo(Resistance.Method.ALLOWABLE_LOAD);
        assertThat(SiteTest.allowable(List.of(900.0, 950.0, 1000.0, 1050.0)).standing())
                .isEqualTo(Resistance.Standing.UNKNOWN);
    }

    @Test
    void whatIsNoTestIsRefused() {
        assertThatThrownBy(() -> SiteTest.count(0, Share.ONE_IN_FORTY)).hasMessage("anchors must be 1 or more, got 0");
        assertThatThrownBy(() -> SiteTest.proofLoadN(Double.NaN, Share.ONE_IN_FORTY))
                .hasMessage("load must be above 0 N and finite, got NaN N");
        assertThatThrownBy(() -> SiteTest.allowable(List.of(1.0, 0.0)))
                .hasMessage("load must be above 0 N and finite, got 0.0 N");
    }
}
