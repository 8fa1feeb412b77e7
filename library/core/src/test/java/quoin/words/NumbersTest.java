package quoin.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class NumbersTest {
    @Test
    void plainNumbersHaveNoTrailingZeros() {
        assertThat(Numbers.plain(1503.0)).isEqualTo("1503");
        assertThat(Numbers.plain(0.1 + 0.2)).isEqualTo("0.3");
        assertThat(Numbers.plain(1503.4567)).isEqualTo("1503.46");
        assertThat(Numbers.plain(0)).isEqualTo("0");
        assertThat(Numbers.plain(-0.0)).isEqualTo("0");
        assertThat(Numbers.plain(1e300)).isEqualTo("1E+300");
        assertThat(Numbers.plain(2.3e-5)).isEqualTo("0.000023");
    }

    @Test
    void halvesAreRoundedAsSaid() {
        assertThat(Numbers.nearestHalf(3.24)).isEqualTo("3");
        assertThat(Numbers.nearestHalf(3.25)).isEqualTo("3½");
        assertThat(Numbers.nearestHalf(0.3)).isEqualTo("½");
        assertThat(Numbers.halfUp(1.01)).isEqualTo("1½");
        assertThat(Numbers.halfUp(1.0000000000001)).isEqualTo("1");
    }

    @Test
    void decimalsAreRoundedHalvesAway() {
        assertThat(Numbers.rounded(2.25, 1)).isEqualTo("2.3");
        assertThat(Numbers.rounded(-2.25, 1)).isEqualTo("-2.3");
        assertThat(Numbers.rounded(1500.04, 1)).isEqualTo("1500");
        assertThat(Numbers.rounded(-0.01, 1)).isEqualTo("0");
    }
}
