package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RepeatsTest {
    @Test
    void theTwentyTemperaturesOfTheGuide() {
        // standard: JCGM 100:2008, 4.4.3; mean 100.145, s 1.489; three printed decimals
        double[] values = {
            96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95,
            101.11, 101.20, 101.57, 101.84, 102.36, 102.72
        };
        Repeats repeats = Repeats.of(values, 1.5);
        assertThat(repeats.mean()).isCloseTo(100.145, within(5e-4));
        assertThat(repeats.standardDeviation()).isCloseTo(1.489, within(5e-4));
        assertThat(repeats.standardDeviation() / StrictMath.sqrt(20)).isCloseTo(0.333, within(5e-4));
        assertThat(repeats.isConsistent()).isTrue();
        assertThat(Repeats.of(values, 0.5).isConsistent()).isFalse();
    }

    @Test
    void aLargeMeanDoesNotEatTheScatter() {
        // standard: NIST StRD NumAcc1 (certified mean 10000002, sd 1, exact) and NumAcc4 (mean 10000000.2, sd 0.1).
        Repeats first = Repeats.of(new double[] {10000001, 10000003, 10000002}, 1);
        assertThat(first.mean()).isEqualTo(10000002);
        assertThat(first.standardDeviation()).isEqualTo(1);
        double[] fourth = new double[1001];
        fourth[0] = 10000000.2;
        for (int i = 1; i < fourth.length; i++) {
            fourth[i] = i % 2 == 1 ? 10000000.1 : 10000000.3;
        }
        // the data themselves carry an error of 1e-9 in 0.1, since 10000000.1 is no double
        assertThat(Repeats.of(fourth, 1).standardDeviation()).isCloseTo(0.1, within(1e-8));
        assertThat(Repeats.of(fourth, 1).mean()).isCloseTo(10000000.2, within(1e-8));
    }

    @Test
    void theCriticalValueIsChiSquareAtATenthOfAPercent() {
        // handbook (from memory): chi-square table, 0.999: 10.828, 13.816, 16.266; three printed decimals
        assertThat(Repeats.of(new double[] {1, 2}, 1).critical()).isCloseTo(10.828, within(5e-4));
        assertThat(Repeats.of(new double[] {1, 2, 3}, 1).critical()).isCloseTo(13.816, within(5e-4));
        assertThat(Repeats.of(new double[] {1, 2, 3, 4}, 1).critical()).isCloseTo(16.266, within(5e-4));
    }

    @Test
    void twoReadingsNoticeADifferenceOfFourAndAHalfUncertainties() {
        Repeats two = Repeats.of(new double[] {1503, 1504}, 0.8);
        double least = two.leastNoticed();
        // 3.2905 · sqrt 2 · 0.8: the normal value of 0.1 % two-sided, from memory
        assertThat(least).isCloseTo(3.2905 * StrictMath.sqrt(2) * 0.8, within(1e-4));
        assertThat(Repeats.of(new double[] {0, least * 1.000001}, 0.8).isConsistent())
                .isFalse();
        assertThat(Repeats.of(new double[] {0, least * 0.999999}, 0.8).isConsistent())
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource({"2, 75.6", "3, 52.3", "4, 42.2", "5, 36.3", "10, 23.9", "20, 16.3", "30, 13.2", "50, 10.1"})
    void howWellAScatterIsKnown(int n, double percent) {
        // standard (from memory): JCGM 100:2008, Table E.1; recomputed to one decimal
        double[] values = new double[n];
        values[0] = 1;
        assertThat(100 * Repeats.of(values, 1).scatterDoubt()).isCloseTo(percent, within(0.05));
    }

    @Test
    void whatAllReadingsShareCannotScatter() {
        Instrument tape = Instrument.of("tape", Instrument.Kind.TAPE)
                .withAccuracyClass(TapeClass.III)
                .withEach(List.of(Doubt.standard(0.5, Dimension.LENGTH)));
        Repeats repeats = Repeats.of(tape.read("width@foot", 1503, 1504, 1502));
        assertThat(repeats.statedUncertainty()).isCloseTo(0.5, within(1e-15));
        assertThat(repeats.statistic()).isCloseTo(8, within(1e-12));
    }

    @Test
    void badReadingsAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Repeats.of(new double[] {1}, 1))
                .withMessage("number of readings must be 2 or more, got 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Repeats.of(new double[] {1, 2}, 0))
                .withMessage("stated uncertainty must be more than 0 and finite, got 0");
        assertThatIllegalArgumentException().isThrownBy(() -> Repeats.of(new double[] {1, Double.NaN}, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Repeats.of(List.of()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Repeats.of(List.of(Uncertain.exact(1), Uncertain.exact(2))));
    }
}
