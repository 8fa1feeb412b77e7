package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class UncertainTest {
    /** Rounding of a few doubles. */
    private static final double EXACT = 1e-14;

    private static final Influence A = Influence.normal("a", 0.3);
    private static final Influence B = Influence.normal("b", 0.4);

    @Test
    void independentInfluencesAddInSquares() {
        Uncertain sum = Uncertain.of(3, A).plus(Uncertain.of(4, B));
        assertThat(sum.value()).isEqualTo(7);
        assertThat(sum.standardUncertainty()).isCloseTo(0.5, within(EXACT));
    }

    @Test
    void aSharedInfluenceAddsBeforeItIsSquared() {
        Uncertain one = Uncertain.of(3, A);
        Uncertain two = Uncertain.of(5, A);
        assertThat(one.plus(two).standardUncertainty()).isCloseTo(0.6, within(EXACT));
        assertThat(one.minus(two).standardUncertainty()).isZero();
        assertThat(one.correlation(two)).isEqualTo(1);
        assertThat(one.correlation(two.negated())).isEqualTo(-1);
        assertThat(one.correlation(Uncertain.exact(1))).isZero();
        assertThat(one.covariance(two.plus(Uncertain.of(1, B)))).isCloseTo(0.09, within(EXACT));
        assertThat(Uncertain.of(1, B).covariance(one)).isZero();
    }

    @Test
    void theSlopesOfTheOneWayClutch() {
        // practice (recomputed from the closed form): φ = acos((a + c) / (e − c)), a 27.645, c 11.43, e 50.8 mm;
        // 7.018389803367606°; sensitivities printed to ten decimals
        Influence ua = Influence.normal("ua", 1);
        Influence uc = Influence.normal("uc", 1);
        Influence ue = Influence.normal("ue", 1);
        Uncertain a = Uncertain.of(27.645, ua);
        Uncertain c = Uncertain.of(11.43, uc);
        Uncertain e = Uncertain.of(50.8, ue);
        Uncertain angle = a.plus(c).dividedBy(e.minus(c)).acos();
        assertThat(StrictMath.toDegrees(angle.value())).isCloseTo(7.018389803367606, within(1e-12));
        assertThat(angle.sensitivity(ua)).isCloseTo(-0.2078769606, within(5e-11));
        assertThat(angle.sensitivity(uc)).isCloseTo(-0.4141962960, within(5e-11));
        assertThat(angle.sensitivity(ue)).isCloseTo(0.2063193354, within(5e-11));
    }

    @Test
    void theCosineRuleOfThreeFourFive() {
        Uncertain right =
                Uncertain.cosineRule(Uncertain.of(3, A), Uncertain.of(4, B), Uncertain.of(5, Influence.normal("c", 1)));
        // geometry: at a right angle ∂γ/∂c = c/(ab) = 5/12, ∂γ/∂a = −1/b, ∂γ/∂b = −1/a
        assertThat(right.value()).isCloseTo(StrictMath.PI / 2, within(EXACT));
        assertThat(right.sensitivity(A)).isCloseTo(-1.0 / 4, within(EXACT));
        assertThat(right.sensitivity(B)).isCloseTo(-1.0 / 3, within(EXACT));
        assertThat(right.contribution(2)).isCloseTo(5.0 / 12, within(EXACT));
    }

    @Test
    void aTriangleThatIsNoneHasNoAngle() {
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Uncertain.cosineRule(exact(1), exact(2), exact(4)))
                .withMessage("cosine rule: lengths 1, 2 and 4 make no open triangle");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Uncertain.cosineRule(exact(1), exact(2), exact(3)));
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Uncertain.cosineRule(exact(0), exact(2), exact(2)));
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Uncertain.cosineRule(exact(-3), exact(-4), exact(5)));
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Uncertain.cosineRule(exact(1e-320), exact(1e-320), exact(1e-320)));
    }

    @Test
    void anExactNumberStaysExact() {
        Uncertain x = exact(0.25);
        assertThat(x.sqrt()).isEqualTo(exact(0.5));
        assertThat(x.plus(1).minus(0.25).times(2).dividedBy(4)).isEqualTo(exact(0.5));
        assertThat(exact(0).sqrt()).isEqualTo(exact(0));
        assertThat(exact(1).acos()).isEqualTo(exact(0));
        assertThat(exact(-1).acos()).isEqualTo(exact(StrictMath.PI));
        assertThat(Uncertain.hypot(exact(0), exact(0))).isEqualTo(exact(0));
        assertThat(Uncertain.atan2(exact(0), exact(-1))).isEqualTo(exact(StrictMath.PI));
        assertThat(x.standardUncertainty()).isZero();
    }

    @Test
    void aZeroUncertaintyIsAValue() {
        Influence none = Influence.normal("none", 0);
        Uncertain x = Uncertain.of(0, none);
        assertThat(x.standardUncertainty()).isZero();
        assertThat(x.sensitivity(none)).isZero();
        assertThat(x.sqrt()).isEqualTo(x);
        assertThat(x.plus(1).acos().value()).isZero();
        assertThat(x.correlation(x)).isZero();
    }

    @Test
    void whereThereIsNoSlopeThereIsNoAnswer() {
        Uncertain zero = Uncertain.of(0, A);
        refused("sqrt has no value or no slope at 0", zero::sqrt);
        refused("sqrt has no value or no slope at -1", () -> zero.minus(1).sqrt());
        refused("sqrt has no value or no slope at -1", () -> exact(-1).sqrt());
        refused("acos has no value or no slope at 1", () -> zero.plus(1).acos());
        refused("acos has no value or no slope at -1", () -> zero.minus(1).acos());
        refused("acos has no value or no slope at 1.5", () -> exact(1.5).acos());
        refused("atan2 has no value or no slope at 0 and 0", () -> Uncertain.atan2(zero, zero));
        refused("atan2 has no value or no slope at 0 and 0", () -> Uncertain.atan2(exact(0), exact(0)));
        refused("hypot has no value or no slope at 0 and 0", () -> Uncertain.hypot(zero, exact(0)));
        refused("hypot has no value or no slope at 0 and 0", () -> Uncertain.hypot(exact(0), zero));
        refused("dividedBy has no finite result for 1 and 0", () -> exact(1).dividedBy(zero));
        refused("dividedBy has no finite result for 0 and 0", () -> zero.dividedBy(zero));
        refused("dividedBy has no finite result for 0 and 0", () -> zero.dividedBy(0));
    }

    @Test
    void overflowIsNamedAndNeverInfinite() {
        Uncertain large = Uncertain.of(1e308, A);
        refused("plus has no finite result for 1.0E308 and 1.0E308", () -> large.plus(large));
        refused("plus has no finite result for 1.0E308 and 1.0E308", () -> large.plus(1e308));
        refused("minus has no finite result for 1.0E308 and -1.0E308", () -> large.minus(large.negated()));
        refused("minus has no finite result for 1.0E308 and -1.0E308", () -> large.minus(-1e308));
        refused("times has no finite result for 1.0E308 and 1.0E308", () -> large.times(large));
        refused("times has no finite result for 1.0E308 and NaN", () -> large.times(Double.NaN));
        refused("plus has no finite result for 1.0E308 and NaN", () -> large.plus(Double.NaN));
        refused("dividedBy has no finite result for 1.0E308 and 1.0E-9", () -> large.dividedBy(1e-9));
        refused(
                "dividedBy has no finite result for 1 and 1.0E-200",
                () -> exact(1).dividedBy(Uncertain.of(1e-200, B).onto(Influences.of(List.of(B)))));
        refused("hypot has no finite result for 1.7E308 and 1.7E308", () -> {
            Uncertain huge = Uncertain.of(1.7e308, A);
            Uncertain.hypot(huge, huge);
        });
        refused(
                "variance of 0 is not finite",
                () -> Uncertain.of(0, Influence.normal("u", 1e200)).standardUncertainty());
    }

    @Test
    void hypotIsRightFarFromOne() {
        assertThat(Uncertain.hypot(exact(3e200), exact(4e200)).value()).isCloseTo(5e200, within(1e186));
        assertThat(Uncertain.hypot(exact(3e-200), exact(4e-200)).value()).isCloseTo(5e-200, within(1e-214));
    }

    @Test
    void badPartsAreRefused() {
        Influences ab = Influences.of(List.of(A, B));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> exact(Double.NaN))
                .withMessage("value must be finite, got NaN");
        assertThatIllegalArgumentException().isThrownBy(() -> Uncertain.of(Double.NEGATIVE_INFINITY, A));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Uncertain.of(1, ab, new double[] {1}))
                .withMessage("number of sensitivities must be 2, got 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Uncertain.ofContributions(1, ab, new double[] {1, Double.NaN}))
                .withMessage("contribution must be finite, got NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Uncertain.ofContributions(1, ab, new double[3]))
                .withMessage("number of contributions must be 2, got 3");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Uncertain.combine(1, new double[] {1}, exact(1), exact(2)))
                .withMessage("number of partials must be 2, got 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Uncertain.combine(Double.NaN, new double[] {1}, exact(1)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Uncertain.combine(1, new double[] {Double.NaN}, exact(1)))
                .withMessage("partial must be finite, got NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Uncertain.of(1, A).onto(Influences.of(List.of(B))))
                .withMessage("basis must have every influence of the number, lacks a");
    }

    @Test
    void equalityIsExactAndKnowsNoNegativeZero() {
        Influences ab = Influences.of(List.of(A, B));
        Uncertain x = Uncertain.ofContributions(-0.0, ab, new double[] {-0.0, 1});
        Uncertain y = Uncertain.ofContributions(0.0, ab, new double[] {0.0, 1});
        assertThat(x).isEqualTo(y).hasSameHashCodeAs(y);
        assertThat(Double.doubleToLongBits(x.value())).isZero();
        assertThat(Double.doubleToLongBits(x.contribution(0))).isZero();
        assertThat(x.negated().negated()).isEqualTo(y).hasSameHashCodeAs(y);
        assertThat(x)
                .isNotEqualTo(y.plus(1e-300))
                .isNotEqualTo(y.times(1 + 1e-15))
                .isNotEqualTo(Uncertain.of(0, B))
                .isNotEqualTo(new Object());
        assertThat(x).hasToString("0 (u 1)");
    }

    @Test
    void closenessTakesItsTolerance() {
        Uncertain x = Uncertain.of(1, A).plus(Uncertain.of(1, B));
        Uncertain y = Uncertain.of(1, B).plus(Uncertain.of(1 + 1e-9, A));
        assertThat(x.isCloseTo(y, 1e-8)).isTrue();
        assertThat(x.isCloseTo(y, 1e-10)).isFalse();
        assertThat(x.isCloseTo(y.plus(Uncertain.of(0, Influence.normal("c", 1))), 0.5))
                .isFalse();
        assertThatIllegalArgumentException().isThrownBy(() -> x.isCloseTo(y, Double.NaN));
    }

    @Test
    void aReadingIsOneLeaf() {
        Influences ab = Influences.of(List.of(A, B));
        assertThat(Uncertain.ofReading(7, ab, 0, 1, 1, 2)).isEqualTo(Uncertain.of(7, ab, new double[] {1, 2}));
        assertThat(Uncertain.ofReading(7, ab, 1, 1, 1, 2)).isEqualTo(Uncertain.of(7, ab, new double[] {0, 3}));
        assertThatIllegalArgumentException().isThrownBy(() -> Uncertain.ofReading(7, ab, 0, Double.NaN, 1, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> Uncertain.ofReading(Double.NaN, ab, 0, 1, 1, 2));
        assertThatExceptionOfType(IndexOutOfBoundsException.class)
                .isThrownBy(() -> Uncertain.ofReading(7, ab, 0, 1, 2, 2));
    }

    @Test
    void contributionsAreCopied() {
        double[] contributions = {1};
        Uncertain x = Uncertain.ofContributions(0, Influences.of(List.of(A)), contributions);
        contributions[0] = 9;
        x.contributions()[0] = 9;
        assertThat(x.contribution(0)).isEqualTo(1);
    }

    @Test
    void combineTakesAList() {
        Uncertain x = Uncertain.of(2, A);
        Uncertain y = Uncertain.of(3, B);
        assertThat(Uncertain.combine(6, new double[] {3, 2}, List.of(x, y))).isEqualTo(x.times(y));
    }

    private static Uncertain exact(double value) {
        return Uncertain.exact(value);
    }

    private static void refused(String message, Runnable operation) {
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(operation::run)
                .withMessage(message);
    }

    /** Reference: contribution = Σ partial · contribution, influence by influence, added up in the test. */
    @Test
    void combineAddsUpWhateverItsInputsKeep() {
        for (int size : new int[] {3, 64, 65, 200}) {
            Influence[] all = new Influence[size];
            for (int i = 0; i < size; i++) {
                all[i] = Influence.normal("i" + i, 1 + i);
            }
            Influences basis = Influences.of(List.of(all));
            double[] partials = {2, -1, 0, 0.5, 3, 0};
            Uncertain[] inputs = new Uncertain[partials.length];
            double[] expected = new double[size];
            for (int k = 0; k < inputs.length; k++) {
                double[] row = new double[size];
                for (int i = k; i < size; i += k + 1) {
                    row[i] = i - 4 * k + 0.25;
                }
                inputs[k] = k == 4 ? exact(7) : Uncertain.ofContributions(k, basis, row);
                for (int i = 0; i < size && k != 4; i++) {
                    expected[i] += partials[k] * row[i];
                }
            }
            Uncertain sum = Uncertain.combine(11, partials, inputs);
            assertThat(sum.contributions()).containsExactly(expected, within(1e-12 * size));
            assertThat(sum.influences()).isSameAs(basis);
            Uncertain elsewhere = Uncertain.of(1, Influence.normal("elsewhere", 2));
            Uncertain wider = Uncertain.combine(0, new double[] {1, -2}, sum, elsewhere);
            assertThat(wider.contribution(size)).isEqualTo(-4);
            assertThat(wider.contribution(1)).isCloseTo(expected[1], within(1e-12 * size));
        }
    }
}
