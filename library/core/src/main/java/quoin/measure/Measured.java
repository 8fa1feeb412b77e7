package quoin.measure;

import java.util.Objects;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Length;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * A number with doubt and its JSR-385 unit: the form that crosses the border of the library.
 *
 * <p>Arithmetic is done in doubles; units convert once, by scale and, for a temperature, shift. Immutable and safe for
 * use by many threads.
 *
 * @param <Q> the kind of quantity
 */
public final class Measured<Q extends Quantity<Q>> {
    private static final Unit<Length> MILLIMETRE = MetricPrefix.MILLI(Units.METRE);

    private final Uncertain amount;
    private final Unit<Q> unit;

    private Measured(Uncertain amount, Unit<Q> unit) {
        this.amount = Objects.requireNonNull(amount, "amount");
        this.unit = Objects.requireNonNull(unit, "unit");
    }

    /**
     * A number in a unit.
     *
     * @param <Q> the kind of quantity
     * @param amount the number
     * @param unit the unit
     * @return the measured quantity
     * @formula amount · unit
     * @unit the unit given
     * @edge a number without doubt is allowed
     * @source standard: JSR 385 (units of measurement)
     */
    public static <Q extends Quantity<Q>> Measured<Q> of(Uncertain amount, Unit<Q> unit) {
        return new Measured<>(amount, unit);
    }

    /**
     * A length in mm.
     *
     * @param mm the number of mm
     * @return the measured length
     * @formula amount · mm
     * @unit mm
     * @edge a number without doubt is allowed
     * @source standard: JSR 385 (units of measurement)
     */
    public static Measured<Length> ofMm(Uncertain mm) {
        return new Measured<>(mm, MILLIMETRE);
    }

    /** {@return the number} */
    public Uncertain amount() {
        return amount;
    }

    /** {@return the unit} */
    public Unit<Q> unit() {
        return unit;
    }

    /** {@return the best estimate as a quantity} */
    public Quantity<Q> quantity() {
        return Quantities.getQuantity(amount.value(), unit);
    }

    /**
     * The same quantity in another unit; the doubt converts by scale only.
     *
     * @param target the other unit
     * @return the same quantity
     */
    public Measured<Q> to(Unit<Q> target) {
        if (target.equals(unit)) {
            return this;
        }
        UnitConverter converter = unit.getConverterTo(target);
        double zero = converter.convert(0.0);
        double scale = (converter.convert(1e6) - zero) / 1e6;
        double value = converter.convert(amount.value());
        return new Measured<>(Uncertain.combine(value, new double[] {scale}, amount), target);
    }

    /**
     * The sum.
     *
     * @param other the other quantity
     * @return the sum in this unit
     */
    public Measured<Q> plus(Measured<Q> other) {
        return new Measured<>(amount.plus(other.to(unit).amount), unit);
    }

    /**
     * The difference.
     *
     * @param other the other quantity
     * @return the difference in this unit
     */
    public Measured<Q> minus(Measured<Q> other) {
        return new Measured<>(amount.minus(other.to(unit).amount), unit);
    }

    /**
     * A multiple.
     *
     * @param factor the factor
     * @return the multiple in this unit
     */
    public Measured<Q> times(double factor) {
        return new Measured<>(amount.times(factor), unit);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Measured<?> that && amount.equals(that.amount) && unit.equals(that.unit);
    }

    @Override
    public int hashCode() {
        return Objects.hash(amount, unit);
    }

    @Override
    public String toString() {
        return amount + " " + unit;
    }
}
