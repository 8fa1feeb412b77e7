package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class UncertainProperties {
    private static final Influence A = Influence.normal("a", 1);
    private static final Influence B = Influence.normal("b", 1);
    private static final Influence C = Influence.normal("c", 1);
    private static final Influences BASIS = Influences.of(List.of(A, B, C));
    private static final double STEP = 0x1p-17;

    /** A central difference with steps of 1e-5 is good to about 1e-9 of the largest derivative met here. */
    private static final double DIFFERENCE = 1e-6;

    /** A few roundings of doubles. */
    private static final double EXACT = 1e-12;

    /** Lengths away from zero, of either sign. */
    @Provide
    Arbitrary<Double> sizes() {
        return Arbitraries.doubles().between(0.5, 10).ofScale(9);
    }

    @Property
    void slopesOfOneArgument(@ForAll("sizes") double x) {
        slope(Uncertain::sqrt, StrictMath::sqrt, x);
        slope(Uncertain::sin, StrictMath::sin, x);
        slope(Uncertain::cos, StrictMath::cos, x);
        slope(Uncertain::acos, StrictMath::acos, x / 11);
        slope(Uncertain::acos, StrictMath::acos, -x / 11);
        slope(Uncertain::negated, v -> -v, x);
        slope(u -> u.times(3), v -> v * 3, x);
        slope(u -> u.dividedBy(3), v -> v / 3, x);
        slope(u -> u.plus(3).minus(5), v -> v - 2, x);
    }

    @Property
    void slopesOfTwoArguments(
            @ForAll("sizes") double x, @ForAll("sizes") double y, @ForAll boolean left, @ForAll boolean down) {
        double a = left ? -x : x;
        double b = down ? -y : y;
        slopes(Uncertain::plus, (p, q) -> p + q, a, b);
        slopes(Uncertain::minus, (p, q) -> p - q, a, b);
        slopes(Uncertain::times, (p, q) -> p * q, a, b);
        slopes(Uncertain::dividedBy, (p, q) -> p / q, a, b);
        slopes(Uncertain::hypot, StrictMath::hypot, a, b);
        if (x > 0.5 + STEP || !left) {
            slopes((p, q) -> Uncertain.atan2(p, q), StrictMath::atan2, a, b);
        }
    }

    @Property
    void slopesOfTheCosineRule(
            @ForAll("sizes") double a,
            @ForAll("sizes") double b,
            @ForAll @Scale(9) @DoubleRange(min = 0.2, max = 2.9) double angle) {
        double c = StrictMath.sqrt(a * a + b * b - 2 * a * b * StrictMath.cos(angle));
        Uncertain result = Uncertain.cosineRule(on(a, A), on(b, B), on(c, C));
        assertThat(result.value()).isCloseTo(angle, within(1e-9));
        assertThat(result.contribution(0)).isCloseTo(difference(v -> angle(v, b, c), a), closeTo(result, 0));
        assertThat(result.contribution(1)).isCloseTo(difference(v -> angle(a, v, c), b), closeTo(result, 1));
        assertThat(result.contribution(2)).isCloseTo(difference(v -> angle(a, b, v), c), closeTo(result, 2));
        Uncertain apart = Uncertain.cosineRule(Uncertain.of(a, A), Uncertain.of(b, B), Uncertain.of(c, C));
        assertThat(apart.isCloseTo(result, 0)).isTrue();
    }

    @Property
    void anInfluenceInProportionCancelsInARatio(
            @ForAll @Scale(9) @DoubleRange(min = 1, max = 1e4) double x,
            @ForAll @Scale(9) @DoubleRange(min = 1, max = 1e4) double y,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.01) double share) {
        Influence scale = Influence.normal("scale", share);
        Influences basis = Influences.of(List.of(scale));
        Uncertain one = Uncertain.of(x, basis, new double[] {x});
        Uncertain two = Uncertain.of(y, basis, new double[] {y});
        // two products that are equal but for rounding
        assertThat(one.dividedBy(two).standardUncertainty()).isLessThan(EXACT * x / y);
    }

    @Property
    void aChangeOfUnitChangesNothingButTheUnit(
            @ForAll("sizes") double x,
            @ForAll("sizes") double y,
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 100) double k) {
        Uncertain a = on(x, A);
        Uncertain b = on(y, B);
        Uncertain inMm = Uncertain.hypot(a, b).plus(a);
        Uncertain inOther = Uncertain.hypot(a.times(k), b.times(k)).plus(a.times(k));
        assertThat(inOther.isCloseTo(inMm.times(k), EXACT * k * (x + y))).isTrue();
        assertThat(Uncertain.atan2(a.times(k), b.times(k)).isCloseTo(Uncertain.atan2(a, b), EXACT))
                .isTrue();
        assertThat(Uncertain.cosineRule(
                                a.times(k), b.times(k), Uncertain.hypot(a, b).times(k))
                        .isCloseTo(Uncertain.cosineRule(a, b, Uncertain.hypot(a, b)), EXACT))
                .isTrue();
    }

    @Property
    void aLargerBasisKeepsTheNumber(@ForAll("sizes") double x, @ForAll("sizes") double y) {
        Uncertain a = Uncertain.of(x, B);
        Uncertain b = Uncertain.of(y, A);
        Uncertain moved = a.onto(BASIS);
        assertThat(moved.value()).isEqualTo(a.value());
        assertThat(moved.variance()).isEqualTo(a.variance());
        assertThat(moved.isCloseTo(a, 0)).isTrue();
        assertThat(moved.onto(BASIS)).isSameAs(moved);
        assertThat(moved.plus(b.onto(BASIS)).isCloseTo(a.plus(b), 0)).isTrue();
        assertThat(moved.times(b.onto(BASIS)).isCloseTo(a.times(b), 0)).isTrue();
        assertThat(moved.dividedBy(b.onto(BASIS)).isCloseTo(a.dividedBy(b), EXACT))
                .isTrue();
        assertThat(moved.minus(b).isCloseTo(a.minus(b), 0)).isTrue();
        assertThat(moved.covariance(b.plus(a))).isEqualTo(a.covariance(b.plus(a)));
    }

    @Property
    void theDoubtOfASumIsThatOfItsCovariance(
            @ForAll("sizes") double p, @ForAll("sizes") double q, @ForAll("sizes") double r) {
        Uncertain x = Uncertain.ofContributions(1, BASIS, new double[] {p, q, 0});
        Uncertain y = Uncertain.ofContributions(2, BASIS, new double[] {0, r, -p});
        double expected = x.variance() + y.variance() + 2 * x.covariance(y);
        assertThat(x.plus(y).variance()).isCloseTo(expected, within(EXACT * expected));
        assertThat(x.correlation(y)).isBetween(-1.0, 1.0);
    }

    private static Uncertain on(double value, Influence influence) {
        return Uncertain.of(value, influence).onto(BASIS);
    }

    private static double angle(double a, double b, double c) {
        return StrictMath.acos((a * a + b * b - c * c) / (2 * a * b));
    }

    private static double difference(DoubleUnaryOperator f, double x) {
        return (f.applyAsDouble(x + STEP) - f.applyAsDouble(x - STEP)) / (2 * STEP);
    }

    private static org.assertj.core.data.Offset<Double> closeTo(Uncertain number, int i) {
        return within(DIFFERENCE * (1 + number.variance() * StrictMath.abs(number.contribution(i))));
    }

    private static void slope(java.util.function.UnaryOperator<Uncertain> f, DoubleUnaryOperator g, double x) {
        Uncertain result = f.apply(on(x, A));
        assertThat(result.value()).isCloseTo(g.applyAsDouble(x), within(EXACT * 10));
        assertThat(result.contribution(0)).isCloseTo(difference(g, x), within(DIFFERENCE));
    }

    private static void slopes(
            java.util.function.BinaryOperator<Uncertain> f, DoubleBinaryOperator g, double x, double y) {
        Uncertain result = f.apply(on(x, A), on(y, B));
        assertThat(result.value()).isCloseTo(g.applyAsDouble(x, y), within(EXACT * 100));
        assertThat(result.contribution(0)).isCloseTo(difference(v -> g.applyAsDouble(v, y), x), within(DIFFERENCE));
        assertThat(result.contribution(1)).isCloseTo(difference(v -> g.applyAsDouble(x, v), y), within(DIFFERENCE));
        assertThat(f.apply(Uncertain.of(x, A), Uncertain.of(y, B)).isCloseTo(result, 0))
                .isTrue();
    }
}
