package quoin.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import quoin.fixing.Resistance.Method;
import quoin.fixing.Resistance.Standing;
import quoin.judge.Args;
import quoin.judge.Step;

/** Laws of what a fixing carries. */
class ResistanceProperties {
    private static final Nds2018.Service SERVICE = new Nds2018.Service(Nds2018.Duration.PERMANENT, false, 30);
    private static final En1995.Service CLASS_1 = new En1995.Service(En1995.Duration.PERMANENT, 1, 30);
    private static final Step WHY = Step.of("end-grain", Args.NONE);

    @Property
    void thickerDenserAndDeeperNeverHoldsLess(
            @ForAll @DoubleRange(min = 6, max = 9.4) double d,
            @ForAll @DoubleRange(min = 0, max = 2) double thicker,
            @ForAll @DoubleRange(min = 0.31, max = 0.7) double gravity,
            @ForAll @DoubleRange(min = 0, max = 0.02) double denser,
            @ForAll @DoubleRange(min = 75, max = 120) double thread,
            @ForAll @DoubleRange(min = 0, max = 50) double deeper) {
        double nds = Nds2018.withdrawal(gravity, d, thread, SERVICE).newtons();
        double more = Math.min(9.4, d + thicker);
        assertThat(Nds2018.withdrawal(gravity, more, thread, SERVICE).newtons()).isGreaterThanOrEqualTo(nds);
        assertThat(Nds2018.withdrawal(gravity + denser, d, thread, SERVICE).newtons())
                .isGreaterThanOrEqualTo(nds);
        assertThat(Nds2018.withdrawal(gravity, d, thread + deeper, SERVICE).newtons())
                .isGreaterThanOrEqualTo(nds);
        double ec = ec(d, gravity * 1000, thread);
        assertThat(ec(d + thicker, gravity * 1000, thread)).isGreaterThanOrEqualTo(ec);
        assertThat(ec(d, (gravity + denser) * 1000, thread)).isGreaterThanOrEqualTo(ec);
        assertThat(ec(d, gravity * 1000, thread + deeper)).isGreaterThanOrEqualTo(ec);
    }

    private static double ec(double d, double density, double thread) {
        return En1995.withdrawal(new En1995.Screw(d, 0.7 * d, thread, 90), density, 1, CLASS_1)
                .newtons();
    }

    @Property
    void theWeakerWayGoverns(
            @ForAll @DoubleRange(min = 0, max = 1e4) double one, @ForAll @DoubleRange(min = 0, max = 1e4) double two) {
        Resistance a = Resistance.of(Method.ALLOWABLE_LOAD, one, List.of());
        Resistance b = Resistance.of(Method.ALLOWABLE_LOAD, two, List.of());
        assertThat(a.and(b).newtons()).isEqualTo(Math.min(one, two));
        assertThat(b.and(a).newtons()).isEqualTo(Math.min(one, two));
    }

    /** A number beside an unknown one proves nothing, and beside a barred one even less. */
    @Example
    void whatIsUnknownOrBarredIsNeverCountedOn() {
        Resistance known = Resistance.of(Method.ALLOWABLE_LOAD, 100, List.of());
        Resistance unknown = Resistance.unknown(Method.ALLOWABLE_LOAD, WHY);
        Resistance barred = Resistance.barred(Method.ALLOWABLE_LOAD, WHY);
        assertThat(known.and(unknown).standing()).isEqualTo(Standing.UNKNOWN);
        assertThat(unknown.and(known).standing()).isEqualTo(Standing.UNKNOWN);
        assertThat(unknown.and(barred).standing()).isEqualTo(Standing.BARRED);
        assertThat(barred.and(known).steps()).containsExactly(WHY);
        assertThat(unknown.and(unknown).steps()).hasSize(2);
    }

    @Example
    void aNumberStandsOnlyWhereItIsEstablished() {
        assertThatThrownBy(() -> Resistance.of(Method.ALLOWABLE_LOAD, Double.NaN, List.of()))
                .hasMessage("newtons must be 0 N or more and finite where established and NaN elsewhere, got NaN N");
        assertThatThrownBy(() -> new Resistance(Standing.UNKNOWN, Method.ALLOWABLE_LOAD, 5, List.of()))
                .hasMessageEndingWith("got 5.0 N");
    }
}
