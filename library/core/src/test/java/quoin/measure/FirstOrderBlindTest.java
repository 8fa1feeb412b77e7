package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class FirstOrderBlindTest {
    private static final Uncertain ZERO = Uncertain.of(0, Influence.normal("a", 1));
    private static final Uncertain ONE = Uncertain.of(1, Influence.normal("b", 1));
    private static final Uncertain EXACT = Uncertain.exact(0);

    @Test
    void aSlopeOfZeroInWhatHasDoubtIsMarked() {
        assertThat(ZERO.times(ZERO).isFirstOrderBlind()).isTrue();
        assertThat(ZERO.times(ONE).isFirstOrderBlind()).isTrue();
        assertThat(ONE.times(ZERO).isFirstOrderBlind()).isTrue();
        assertThat(ZERO.dividedBy(ONE).isFirstOrderBlind()).isTrue();
        assertThat(ZERO.cos().isFirstOrderBlind()).isTrue();
        assertThat(Uncertain.hypot(ONE, ZERO).isFirstOrderBlind()).isTrue();
        assertThat(Uncertain.hypot(ZERO, ONE).isFirstOrderBlind()).isTrue();
        assertThat(Uncertain.atan2(ZERO, ONE).isFirstOrderBlind()).isTrue();
        assertThat(Uncertain.atan2(ONE, ZERO).isFirstOrderBlind()).isTrue();
        // the slope in the first side is b cos γ − a = 0: a right angle between a and the third side
        assertThat(Uncertain.cosineRule(side("a", 3), side("b", 5), side("c", 4))
                        .isFirstOrderBlind())
                .isTrue();
    }

    @Test
    void whatIsExactlyZeroHidesNothing() {
        assertThat(EXACT.times(ONE).isFirstOrderBlind()).isFalse();
        assertThat(ONE.times(EXACT).isFirstOrderBlind()).isFalse();
        assertThat(EXACT.dividedBy(ONE).isFirstOrderBlind()).isFalse();
        assertThat(EXACT.cos().isFirstOrderBlind()).isFalse();
        assertThat(Uncertain.hypot(ONE, EXACT).isFirstOrderBlind()).isFalse();
        assertThat(Uncertain.atan2(EXACT, ONE).isFirstOrderBlind()).isFalse();
        assertThat(ONE.times(0).isFirstOrderBlind()).isFalse();
        assertThat(ZERO.plus(ONE).minus(ONE).isFirstOrderBlind()).isFalse();
    }

    @Test
    void theMarkIsHandedOn() {
        Uncertain blind = ZERO.times(ONE);
        assertThat(blind.plus(1).minus(2).times(3).dividedBy(4).negated().isFirstOrderBlind())
                .isTrue();
        assertThat(ONE.plus(blind).isFirstOrderBlind()).isTrue();
        assertThat(ONE.minus(blind).isFirstOrderBlind()).isTrue();
        assertThat(ONE.times(blind.plus(1)).isFirstOrderBlind()).isTrue();
        assertThat(blind.dividedBy(ONE).isFirstOrderBlind()).isTrue();
        assertThat(blind.plus(1).sqrt().isFirstOrderBlind()).isTrue();
        assertThat(blind.sin().isFirstOrderBlind()).isTrue();
        assertThat(blind.plus(1).cos().isFirstOrderBlind()).isTrue();
        assertThat(blind.acos().isFirstOrderBlind()).isTrue();
        assertThat(blind.onto(blind.influences().union(side("x", 1).influences()))
                        .isFirstOrderBlind())
                .isTrue();
        assertThat(Uncertain.hypot(blind.plus(1), ONE).isFirstOrderBlind()).isTrue();
        assertThat(Uncertain.combine(1, new double[] {1}, blind).isFirstOrderBlind())
                .isTrue();
        assertThat(Uncertain.combine(1, new double[] {0}, blind).isFirstOrderBlind())
                .isFalse();
        assertThat(blind.minus(blind)).isNotEqualTo(ZERO.minus(ZERO));
    }

    @Test
    void theMarkIsHandedOnWithinOneBasis() {
        Influences basis = ZERO.influences().union(ONE.influences());
        Uncertain zero = ZERO.onto(basis);
        Uncertain one = ONE.onto(basis);
        Uncertain blind = zero.times(one).plus(2);
        assertThat(blind.influences()).isSameAs(one.influences());
        assertThat(blind.isFirstOrderBlind()).isTrue();
        for (Uncertain marked : List.of(
                blind.plus(one),
                one.plus(blind),
                blind.minus(one),
                one.minus(blind),
                blind.times(one),
                one.times(blind),
                blind.dividedBy(one),
                one.dividedBy(blind),
                Uncertain.hypot(blind, one),
                Uncertain.hypot(one, blind),
                Uncertain.atan2(one, blind),
                Uncertain.cosineRule(blind, one.plus(1), one.plus(1)),
                Uncertain.cosineRule(one.plus(1), blind, one.plus(1)),
                Uncertain.cosineRule(one.plus(1), one.plus(1), blind))) {
            assertThat(marked.isFirstOrderBlind()).isTrue();
        }
        assertThat(one.plus(one).isFirstOrderBlind()).isFalse();
        assertThat(zero.dividedBy(one).isFirstOrderBlind()).isTrue();
    }

    private static Uncertain side(String id, double value) {
        return Uncertain.of(value, Influence.normal(id, 1));
    }
}
