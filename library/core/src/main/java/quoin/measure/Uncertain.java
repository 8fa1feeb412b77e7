package quoin.measure;

import java.util.Arrays;
import java.util.List;

/**
 * A number with its doubt, to first order: a value and what each influence contributes to it.
 *
 * <p>The contribution of an influence is its sensitivity times its standard uncertainty; influences are independent of
 * each other, so the variance is the sum of the squares of the contributions. Two numbers that rest on the same influence
 * vary together: contributions add before they are squared. Operations carry the contributions forward with closed-form
 * partial derivatives.
 *
 * <p>Immutable and safe for use by many threads.
 *
 * @see <a href="https://doi.org/10.59161/JCGM100-2008E">JCGM 100:2008, 5.1 and 5.2</a>
 */
@SuppressWarnings("ReferenceEquality") // the very same list of influences is the short way; other lists are joined
public final class Uncertain implements Estimate {
    private static final double[] NOTHING = new double[0];

    private final double value;
    private final Influences basis;
    private final double[] parts;

    private Uncertain(double value, Influences basis, double[] parts) {
        this.value = value;
        this.basis = basis;
        this.parts = parts;
    }

    private static Uncertain checked(String operation, double value, Influences basis, double[] parts) {
        double sum = value;
        for (double part : parts) {
            sum += part;
        }
        if (!Double.isFinite(sum) && !isFinite(value, parts)) {
            throw new ArithmeticException(operation + " must give a finite number with a finite doubt, got " + value);
        }
        return new Uncertain(value + 0.0, basis, parts);
    }

    private static boolean isFinite(double value, double[] parts) {
        boolean finite = Double.isFinite(value);
        for (double part : parts) {
            finite &= Double.isFinite(part);
        }
        return finite;
    }

    private static double requireFinite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a finite number, got " + value);
        }
        return value + 0.0;
    }

    /**
     * A number without doubt.
     *
     * @param value the number
     * @return the number
     */
    public static Uncertain exact(double value) {
        return new Uncertain(requireFinite("value", value), Influences.NONE, NOTHING);
    }

    /**
     * A number with one influence, to which it responds one to one.
     *
     * @param value the number
     * @param influence the influence
     * @return the number
     */
    public static Uncertain of(double value, Influence influence) {
        double[] parts = {influence.standardUncertainty()};
        return new Uncertain(requireFinite("value", value), Influences.single(influence), parts);
    }

    /**
     * A number with its sensitivities.
     *
     * @param value the number
     * @param basis the influences
     * @param sensitivities the change of the number for a change of each influence
     * @return the number
     */
    public static Uncertain of(double value, Influences basis, double[] sensitivities) {
        double[] contributions = sensitivities.clone();
        for (int i = 0; i < contributions.length && i < basis.size(); i++) {
            contributions[i] *= basis.get(i).standardUncertainty();
        }
        return ofContributions(value, basis, contributions);
    }

    /**
     * A number with the contribution of each influence.
     *
     * @param value the number
     * @param basis the influences
     * @param contributions sensitivity times standard uncertainty of each
     * @return the number
     */
    public static Uncertain ofContributions(double value, Influences basis, double[] contributions) {
        if (contributions.length != basis.size()) {
            throw new IllegalArgumentException("contributions must be one for each of " + basis.size()
                    + " influences, got " + contributions.length);
        }
        for (double contribution : contributions) {
            requireFinite("contribution", contribution);
        }
        return new Uncertain(requireFinite("value", value), basis, contributions.clone());
    }

    @Override
    public double value() {
        return value;
    }

    /** {@return the standard uncertainty: the root of the sum of the squares of the contributions} */
    public double standardUncertainty() {
        return Math.sqrt(variance());
    }

    /** {@return the square of the standard uncertainty} */
    public double variance() {
        double sum = 0;
        for (double part : parts) {
            sum += part * part;
        }
        return sum;
    }

    /** {@return the influences it rests on; some may contribute nothing} */
    public Influences influences() {
        return basis;
    }

    /**
     * What one influence contributes: sensitivity times standard uncertainty, signed.
     *
     * @param index the index of the influence in {@link #influences()}
     * @return the contribution; 0 beyond the end
     */
    public double contribution(int index) {
        return index < parts.length ? parts[index] : 0;
    }

    /**
     * The change of the number for a change of an influence.
     *
     * @param influence the influence
     * @return the sensitivity; 0 where the influence has no part in it or no doubt
     */
    public double sensitivity(Influence influence) {
        int index = basis.indexOf(influence);
        return index < 0 || influence.standardUncertainty() == 0
                ? 0
                : parts[index] / influence.standardUncertainty();
    }

    /**
     * The same number on a larger list of influences.
     *
     * @param wider a list that holds all of this number's influences
     * @return the same number
     */
    public Uncertain onto(Influences wider) {
        if (wider == basis) {
            return this;
        }
        double[] moved = new double[wider.size()];
        for (int i = 0; i < parts.length; i++) {
            Influence influence = basis.get(i);
            int at = i < wider.size() && wider.get(i) == influence ? i : wider.indexOf(influence);
            if (at < 0) {
                throw new IllegalArgumentException("influences must include " + influence.id() + ", got " + wider);
            }
            moved[at] = parts[i];
        }
        return new Uncertain(value, wider, moved);
    }

    private static Uncertain join(
            String operation, double value, Uncertain a, double byA, Uncertain b, double byB) {
        if (a.basis != b.basis) {
            Influences joint = a.basis.union(b.basis);
            return join(operation, value, a.onto(joint), byA, b.onto(joint), byB);
        }
        double[] parts = new double[a.parts.length];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = byA * a.parts[i] + byB * b.parts[i];
        }
        return checked(operation, value, a.basis, parts);
    }

    private Uncertain scaled(String operation, double result, double by) {
        double[] scaled = new double[parts.length];
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] = by * parts[i];
        }
        return checked(operation, result, basis, scaled);
    }

    /**
     * The sum.
     *
     * @param other the other number
     * @return this plus the other
     */
    public Uncertain plus(Uncertain other) {
        return join("sum", value + other.value, this, 1, other, 1);
    }

    /**
     * The sum with an exact number.
     *
     * @param other the other number
     * @return this plus the other
     */
    public Uncertain plus(double other) {
        return checked("sum", value + other, basis, parts);
    }

    /**
     * The difference.
     *
     * @param other the other number
     * @return this minus the other
     */
    public Uncertain minus(Uncertain other) {
        return join("difference", value - other.value, this, 1, other, -1);
    }

    /**
     * The difference to an exact number.
     *
     * @param other the other number
     * @return this minus the other
     */
    public Uncertain minus(double other) {
        return checked("difference", value - other, basis, parts);
    }

    /** {@return the number with the other sign} */
    public Uncertain negated() {
        return scaled("negation", -value, -1);
    }

    /**
     * The product.
     *
     * @param other the other number
     * @return this times the other
     */
    public Uncertain times(Uncertain other) {
        return join("product", value * other.value, this, other.value, other, value);
    }

    /**
     * The product with an exact number.
     *
     * @param factor the other number
     * @return this times the other
     */
    public Uncertain times(double factor) {
        return scaled("product", value * factor, factor);
    }

    /**
     * The quotient.
     *
     * @param divisor the divisor
     * @return this over the divisor
     * @throws ArithmeticException if the divisor is zero
     */
    public Uncertain dividedBy(Uncertain divisor) {
        double d = divisor.value;
        return join("quotient", value / d, this, 1 / d, divisor, -value / (d * d));
    }

    /**
     * The quotient by an exact number.
     *
     * @param divisor the divisor
     * @return this over the divisor
     * @throws ArithmeticException if the divisor is zero
     */
    public Uncertain dividedBy(double divisor) {
        return scaled("quotient", value / divisor, 1 / divisor);
    }

    /**
     * The square root.
     *
     * @return the root
     * @throws ArithmeticException if the number is below zero, or zero with a doubt
     */
    public Uncertain sqrt() {
        double root = Math.sqrt(value);
        return root == 0 && variance() == 0 ? this : scaled("square root", root, 0.5 / root);
    }

    /** {@return the sine of an angle in rad} */
    public Uncertain sin() {
        return scaled("sine", StrictMath.sin(value), StrictMath.cos(value));
    }

    /** {@return the cosine of an angle in rad} */
    public Uncertain cos() {
        return scaled("cosine", StrictMath.cos(value), -StrictMath.sin(value));
    }

    /**
     * The angle of a cosine.
     *
     * @return the angle in rad, 0 to π
     * @throws ArithmeticException if the number is outside −1 to 1, or at either end with a doubt
     */
    public Uncertain acos() {
        double angle = StrictMath.acos(value);
        double slope = -1 / Math.sqrt((1 - value) * (1 + value));
        return Double.isInfinite(slope) && variance() == 0
                ? exact(angle).onto(basis)
                : scaled("arc cosine", angle, slope);
    }

    /**
     * The angle of a direction.
     *
     * @param y the part across
     * @param x the part along
     * @return the angle in rad, −π to π
     * @throws ArithmeticException if both are zero
     * @formula atan2(y, x)
     * @unit rad
     * @edge both zero: refused
     * @source standard: JCGM 100:2008, 5.1.2 (first-order propagation)
     */
    public static Uncertain atan2(Uncertain y, Uncertain x) {
        double square = x.value * x.value + y.value * y.value;
        return join("angle", StrictMath.atan2(y.value, x.value), y, x.value / square, x, -y.value / square);
    }

    /**
     * The hypotenuse of a right triangle.
     *
     * @param a one leg
     * @param b the other leg
     * @return the hypotenuse
     * @throws ArithmeticException if both are zero
     * @formula √(a² + b²)
     * @unit that of the legs
     * @edge both zero: refused
     * @source standard: JCGM 100:2008, 5.1.2 (first-order propagation)
     */
    public static Uncertain hypot(Uncertain a, Uncertain b) {
        double h = Math.sqrt(a.value * a.value + b.value * b.value);
        return join("hypotenuse", h, a, a.value / h, b, b.value / h);
    }

    /**
     * The angle of a triangle between two sides.
     *
     * @param first one side at the angle
     * @param second the other side at the angle
     * @param opposite the side opposite the angle
     * @return the angle in rad
     * @throws ArithmeticException if the three sides do not make a triangle
     * @formula acos((a² + b² − c²) / (2ab))
     * @unit rad
     * @edge a flat triangle: refused
     * @source standard: the law of cosines
     */
    public static Uncertain cosineRule(Uncertain first, Uncertain second, Uncertain opposite) {
        double a = first.value;
        double b = second.value;
        double c = opposite.value;
        double cos = (a * a + b * b - c * c) / (2 * a * b);
        double angle = StrictMath.acos(cos);
        double sin = Math.sqrt((1 - cos) * (1 + cos));
        double area = a * b * sin;
        double byC = c / area;
        double byA = -(a - b * cos) / area;
        double byB = -(b - a * cos) / area;
        if (first.basis != second.basis || first.basis != opposite.basis) {
            return combine(angle, new double[] {byA, byB, byC}, first, second, opposite);
        }
        double[] parts = new double[first.parts.length];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = byA * first.parts[i] + byB * second.parts[i] + byC * opposite.parts[i];
        }
        return checked("cosine rule", angle, first.basis, parts);
    }

    /**
     * A composite operation whose partial derivatives are known.
     *
     * @param value the result
     * @param partials its derivative by each input
     * @param inputs the inputs
     * @return the result with its doubt
     * @formula contributions = Σ partialₖ · contributionsₖ
     * @unit that of the result
     * @edge no inputs: a number without doubt
     * @source standard: JCGM 100:2008, 5.1.2 (first-order propagation)
     */
    public static Uncertain combine(double value, double[] partials, Uncertain... inputs) {
        return combine(value, partials, Arrays.asList(inputs));
    }

    /**
     * A composite operation whose partial derivatives are known.
     *
     * @param value the result
     * @param partials its derivative by each input
     * @param inputs the inputs
     * @return the result with its doubt
     * @formula contributions = Σ partialₖ · contributionsₖ
     * @unit that of the result
     * @edge no inputs: a number without doubt
     * @source standard: JCGM 100:2008, 5.1.2 (first-order propagation)
     */
    public static Uncertain combine(double value, double[] partials, List<Uncertain> inputs) {
        if (partials.length != inputs.size()) {
            throw new IllegalArgumentException(
                    "partials must be one for each of " + inputs.size() + " inputs, got " + partials.length);
        }
        Influences joint = Influences.NONE;
        for (int k = 0; k < partials.length; k++) {
            joint = joint.union(inputs.get(k).basis);
        }
        double[] parts = new double[joint.size()];
        for (int k = 0; k < partials.length; k++) {
            double[] own = inputs.get(k).onto(joint).parts;
            double by = partials[k];
            for (int i = 0; i < parts.length; i++) {
                parts[i] += by * own[i];
            }
        }
        return checked("operation", value, joint, parts);
    }

    /**
     * The covariance with another number: what they share, added before it is squared.
     *
     * @param other the other number
     * @return the covariance
     */
    public double covariance(Uncertain other) {
        if (basis != other.basis) {
            Influences joint = basis.union(other.basis);
            return onto(joint).covariance(other.onto(joint));
        }
        double sum = 0;
        for (int i = 0; i < parts.length; i++) {
            sum += parts[i] * other.parts[i];
        }
        return sum;
    }

    /**
     * The correlation with another number.
     *
     * @param other the other number
     * @return the correlation, −1 to 1; 0 where either has no doubt
     */
    public double correlation(Uncertain other) {
        double scale = Math.sqrt(variance() * other.variance());
        return scale == 0 ? 0 : Math.max(-1, Math.min(1, covariance(other) / scale));
    }

    /**
     * Whether value and standard uncertainty are close to another's.
     *
     * @param other the other number
     * @param tolerance how far each may be off
     * @return whether both are within the tolerance
     */
    public boolean isCloseTo(Uncertain other, double tolerance) {
        return Math.abs(value - other.value) <= tolerance
                && Math.abs(standardUncertainty() - other.standardUncertainty()) <= tolerance;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Uncertain that
                && value == that.value
                && basis.equals(that.basis)
                && Arrays.equals(parts, that.parts);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * Double.hashCode(value) + basis.hashCode()) + Arrays.hashCode(parts);
    }

    @Override
    public String toString() {
        return value + " (u " + standardUncertainty() + ")";
    }
}
