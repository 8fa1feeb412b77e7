package quoin.measure;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import tech.units.indriya.quantity.Quantities;

/**
 * A number with its doubt and a JSR-385 unit: the border between this library and code that speaks in quantities.
 *
 * <p>All arithmetic is in doubles. A width (an uncertainty, a difference) is converted by scale only: the difference of
 * 65 °C and 18 °C is 47 K. Immutable.
 *
 * @param <Q> the kind of quantity
 */
public final class Measured<Q extends Quantity<Q>> {
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
     * @param amount the number, in that unit
     * @param unit the unit
     * @return the measured quantity
     */
    public static <Q extends Quantity<Q>> Measured<Q> of(Uncertain amount, Unit<Q> unit) {
        return new Measured<>(amount, unit);
    }

    /**
     * A length in millimetres.
     *
     * @param amount the number of mm
     * @return the measured length
     */
    public static Measured<Length> ofMm(Uncertain amount) {
        return new Measured<>(amount, UnitScale.MILLIMETRE);
    }

    /**
     * The number.
     *
     * @return the number in {@link #unit()}
     */
    public Uncertain amount() {
        return amount;
    }

    /**
     * The unit.
     *
     * @return the unit of the number
     */
    public Unit<Q> unit() {
        return unit;
    }

    /**
     * The sum. A temperature on a scale and a difference of temperatures give a temperature.
     *
     * @param other what to add, in any unit of the same kind
     * @return the sum in this unit
     * @throws IllegalArgumentException if the other is a temperature on a scale: two of them have no sum
     */
    public Measured<Q> plus(Measured<Q> other) {
        if (!UnitScale.startsAtZero(other.unit)) {
            throw new IllegalArgumentException(
                    "what is added must be a difference, such as a number of kelvins, got " + other);
        }
        return new Measured<>(amount.plus(other.width(unit)), unit);
    }

    /**
     * The difference. Two temperatures on a scale give a difference in kelvins.
     *
     * @param other what to take away, in any unit of the same kind
     * @return the difference, in this unit; in the unit of the scale's steps where both are on a scale
     * @throws IllegalArgumentException if only the other is a temperature on a scale
     */
    public Measured<Q> minus(Measured<Q> other) {
        if (UnitScale.startsAtZero(other.unit)) {
            return new Measured<>(amount.minus(other.width(unit)), unit);
        }
        if (UnitScale.startsAtZero(unit)) {
            throw new IllegalArgumentException(
                    "what is taken from a difference must be a difference, such as a number of kelvins, got " + other);
        }
        Unit<Q> system = unit.getSystemUnit();
        return new Measured<>(to(system).amount.minus(other.to(system).amount), system);
    }

    /**
     * The product with a number.
     *
     * @param factor the number, finite
     * @return the product in this unit
     * @throws IllegalArgumentException if this is a temperature on a scale
     */
    public Measured<Q> times(double factor) {
        if (!UnitScale.startsAtZero(unit)) {
            throw new IllegalArgumentException("what is multiplied must start at zero, got " + this);
        }
        return new Measured<>(amount.times(factor), unit);
    }

    /**
     * The same quantity in another unit.
     *
     * @param target the unit
     * @return the quantity in that unit; its doubt by scale only
     */
    public Measured<Q> to(Unit<Q> target) {
        return unit.equals(target)
                ? this
                : new Measured<>(UnitScale.between(unit, target).convert(amount), target);
    }

    /**
     * The number of millimetres.
     *
     * @return the number in mm
     * @throws IllegalArgumentException if this is no length
     */
    public Uncertain toMm() {
        if (!unit.isCompatible(UnitScale.MILLIMETRE)) {
            throw new IllegalArgumentException("a number of mm must be one of a length, got " + this);
        }
        Unit<Length> length = unit.asType(Length.class);
        return length.equals(UnitScale.MILLIMETRE)
                ? amount
                : UnitScale.between(length, UnitScale.MILLIMETRE).convert(amount);
    }

    /**
     * The value without its doubt.
     *
     * @return the quantity
     */
    public Quantity<Q> quantity() {
        return Quantities.getQuantity(amount.value(), unit);
    }

    /** Exact: same number, same unit. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Measured<?> that && amount.equals(that.amount) && unit.equals(that.unit);
    }

    @Override
    public int hashCode() {
        return 31 * amount.hashCode() + unit.hashCode();
    }

    @Override
    public String toString() {
        return amount + " " + unit;
    }

    private Uncertain width(Unit<Q> target) {
        return unit.equals(target) ? amount : UnitScale.between(unit, target).convertWidth(amount);
    }
}
