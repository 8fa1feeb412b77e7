package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Scale;

class LengthTextProperties {
    @Provide
    Arbitrary<Integer> denominators() {
        return Arbitraries.of(1, 2, 4, 8, 16, 32, 64);
    }

    @Provide
    Arbitrary<Locale> locales() {
        return Arbitraries.of(Locale.ROOT, Locale.ENGLISH, Locale.GERMANY, Locale.FRANCE);
    }

    @Property
    void everyFractionOfAnInchComesBackExactly(
            @ForAll("denominators") int denominator, @ForAll @LongRange(min = -1_000_000, max = 1_000_000) long parts) {
        double mm = LengthText.parseMm(parts + "/" + denominator + " in");
        assertThat(LengthText.parseMm(LengthText.inches(mm, denominator))).isEqualTo(mm);
        assertThat(LengthText.parseMm(LengthText.feetAndInches(mm, denominator)))
                .isEqualTo(mm);
    }

    @Property
    void everyLengthComesBackToItsNearestStepOfAnInch(
            @ForAll("denominators") int denominator,
            @ForAll @Scale(9) @DoubleRange(min = -100_000, max = 100_000) double mm) {
        double half = 25.4 / denominator / 2;
        // half a step, and the rounding of doubles at 100 m
        assertThat(LengthText.parseMm(LengthText.inches(mm, denominator))).isCloseTo(mm, within(half + 1e-10));
        assertThat(LengthText.parseMm(LengthText.feetAndInches(mm, denominator)))
                .isCloseTo(mm, within(half + 1e-10));
    }

    @Property
    void everyMetricLengthComesBackToItsDecimals(
            @ForAll @Scale(9) @DoubleRange(min = -100_000, max = 100_000) double mm,
            @ForAll @IntRange(min = 0, max = 9) int decimals,
            @ForAll("locales") Locale locale) {
        double half = 0.5 * StrictMath.pow(10, -decimals);
        String text = LengthText.millimetres(mm, decimals, locale);
        double back = LengthText.parseMm(text, locale);
        assertThat(back).isCloseTo(mm, within(half + 1e-10));
        assertThat(LengthText.millimetres(back, decimals, locale)).isEqualTo(text);
        assertThat(LengthText.parseMm(LengthText.metres(mm, decimals, locale), locale))
                .isCloseTo(mm, within(1000 * half + 1e-10));
    }

    @Property
    void decimalsOfMetresAndMillimetresAreTheSameLength(@ForAll @IntRange(min = -99_999, max = 99_999) int mm) {
        String metres = LengthText.metres(mm, 3, Locale.ROOT);
        assertThat(LengthText.parseMm(metres)).isEqualTo(LengthText.parseMm(mm + " mm"));
    }
}
