package quoin.measure;

import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Length;
import tech.units.indriya.unit.Units;

/** How numbers of one unit become numbers of another, in doubles: value · factor / divisor + offset. */
final class UnitScale {
    static final Unit<Length> MILLIMETRE = MetricPrefix.MILLI(Units.METRE);
    /** Large, so that the offset of a scale does not eat the digits of its steps. */
    private static final double SPAN = 0x1p20;

    private final double factor;
    private final double divisor;
    private final double offset;

    private UnitScale(double factor, double divisor, double offset) {
        this.factor = factor;
        this.divisor = divisor;
        this.offset = offset;
    }

    static <Q extends Quantity<Q>> UnitScale between(Unit<Q> from, Unit<Q> to) {
        UnitConverter there = from.getConverterTo(to);
        double offset = there.convert(0.0);
        double steps = there.isLinear() ? there.convert(1.0) : (there.convert(SPAN) - offset) / SPAN;
        if (StrictMath.abs(steps) >= 1) {
            return new UnitScale(steps, 1, offset);
        }
        // Dividing by 25.4 is exact where multiplying by its rounded inverse is not.
        UnitConverter back = to.getConverterTo(from);
        double inverse = back.isLinear() ? back.convert(1.0) : (back.convert(SPAN) - back.convert(0.0)) / SPAN;
        return new UnitScale(1, inverse, offset);
    }

    /** Whether nothing of it is 0 of it in every unit; not so for degrees Celsius. */
    static <Q extends Quantity<Q>> boolean startsAtZero(Unit<Q> unit) {
        return unit.getConverterTo(unit.getSystemUnit()).isLinear();
    }

    Uncertain convert(Uncertain amount) {
        return convertWidth(amount).plus(offset);
    }

    Uncertain convertWidth(Uncertain amount) {
        return divisor == 1 ? amount.times(factor) : amount.dividedBy(divisor);
    }
}
