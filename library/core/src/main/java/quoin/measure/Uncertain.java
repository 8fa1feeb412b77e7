package quoin.measure;

import java.util.List;
import java.util.Objects;

/**
 * A number with its doubt, to first order: a value and one contribution for each influence it depends on.
 *
 * <p>The contribution of an influence is the sensitivity of the value to it times its standard uncertainty. Influences
 * are independent, so the variance is the sum of the squares of the contributions (GUM 5.1.2); effects of a shared
 * influence are added with their signs before that. Correlated inputs are given over independent influences, too; see
 * {@link CorrelatedInputs}.
 *
 * <p>An operation whose value or partial derivative is not finite throws {@link ArithmeticException}. Two numbers on the
 * same {@link Influences} instance combine fastest. Immutable.
 */
public final class Uncertain implements Estimate {
    private static final double[] NOTHING = {};
    private static final double HYPOT_LEAST = 0x1p-500;
    private static final double HYPOT_GREATEST = 0x1p500;

    private final double value;
    private final Influences influences;
    /** Which contributions are kept; all others are 0. See {@link Packed}. */
    private final long places;

    private final double[] kept;
    private final boolean blind;

    private Uncertain(double value, Influences influences, long places, double[] kept, boolean blind) {
        this.value = value + 0.0;
        this.influences = influences;
        this.places = places;
        this.kept = kept;
        this.blind = blind;
    }

    /** A number of which all contributions are given, one for each influence. */
    private static Uncertain ofRow(double value, Influences influences, double[] row, boolean blind) {
        int width = influences.block();
        long places = Packed.places(row, width);
        return new Uncertain(value, influences, places, Packed.pack(row, places, width), blind);
    }

    /**
     * A number without doubt.
     *
     * @param value the number, finite
     * @return the number, depending on no influence
     */
    public static Uncertain exact(double value) {
        return new Uncertain(Require.finite("value", value, ""), Influences.NONE, 0, NOTHING, false);
    }

    /**
     * A number that depends on one influence with sensitivity 1.
     *
     * @param value the number, finite
     * @param influence the influence
     * @return the number, u that of the influence
     */
    public static Uncertain of(double value, Influence influence) {
        double[] contribution = {influence.standardUncertainty()};
        return new Uncertain(
                Require.finite("value", value, ""), Influences.of(List.of(influence)), 1, contribution, false);
    }

    /**
     * A number with its sensitivities.
     *
     * @param value the number, finite
     * @param basis the influences
     * @param sensitivities one for each influence, finite
     * @return the number; contribution = sensitivity · u
     */
    public static Uncertain of(double value, Influences basis, double[] sensitivities) {
        requireLength("sensitivities", sensitivities.length, basis.size());
        return checked(value, basis, basis.times(sensitivities));
    }

    /**
     * A number with two sensitivities: to an influence of its own and to a shared one. A reading and the scale it was
     * read on, say, as one leaf; the fastest way to state it.
     *
     * @param value the number, finite
     * @param basis the influences
     * @param own the position of the influence of its own
     * @param ownSensitivity the sensitivity to it, finite
     * @param shared the position of the shared influence
     * @param sharedSensitivity the sensitivity to it, finite
     * @return the number; its sensitivities to all other influences are 0
     * @throws IndexOutOfBoundsException if the basis has no such position
     */
    public static Uncertain ofReading(
            double value, Influences basis, int own, double ownSensitivity, int shared, double sharedSensitivity) {
        double one = ownSensitivity * basis.uncertainty(own);
        double two = sharedSensitivity * basis.uncertainty(shared);
        if (!isFinite(one + two)) {
            throw Require.refused("contributions", "finite", one + two, "");
        }
        Require.finite("value", value, "");
        if (basis.block() > 1 || own == shared) {
            double[] row = new double[basis.size()];
            row[own] += one;
            row[shared] += two;
            return ofRow(value, basis, row, false);
        }
        double[] kept = own < shared ? new double[] {one, two} : new double[] {two, one};
        return new Uncertain(value, basis, 1L << own | 1L << shared, kept, false);
    }

    /**
     * A number with its contributions.
     *
     * @param value the number, finite
     * @param basis the influences
     * @param contributions sensitivity · u, one for each influence, finite
     * @return the number
     */
    public static Uncertain ofContributions(double value, Influences basis, double[] contributions) {
        requireLength("contributions", contributions.length, basis.size());
        return checked(value, basis, contributions);
    }

    /**
     * The value of a function of some numbers, of which value and partial derivatives are known in closed form.
     *
     * <p>contribution = Σ partialₖ · contributionₖ, influence by influence.
     *
     * @param value the value of the function, finite
     * @param partials its partial derivatives, one for each input, finite
     * @param inputs the inputs
     * @return the number, on the union of the influences of the inputs
     */
    public static Uncertain combine(double value, double[] partials, Uncertain... inputs) {
        requireLength("partials", partials.length, inputs.length);
        Require.finite("value", value, "");
        for (double partial : partials) {
            Require.finite("partial", partial, "");
        }
        return linear(value, partials, inputs);
    }

    /**
     * The value of a function of some numbers, of which value and partial derivatives are known in closed form.
     *
     * @param value the value of the function, finite
     * @param partials its partial derivatives, one for each input, finite
     * @param inputs the inputs
     * @return the number, on the union of the influences of the inputs
     */
    public static Uncertain combine(double value, double[] partials, List<Uncertain> inputs) {
        return combine(value, partials, inputs.toArray(Uncertain[]::new));
    }

    /**
     * The direction of a point, atan2(y, x).
     *
     * @param y the second coordinate
     * @param x the first coordinate
     * @return the angle in rad, from −π to π
     * @throws ArithmeticException at the origin, which has no direction
     */
    public static Uncertain atan2(Uncertain y, Uncertain x) {
        double square = x.value * x.value + y.value * y.value;
        if (!(square > 0)) {
            throw noFirstOrder("atan2", y.value, x.value);
        }
        double[] partials = {x.value / square, -y.value / square};
        boolean unseen = (x.value == 0 || y.value == 0) && !x.isExact() && !y.isExact();
        return result("atan2", StrictMath.atan2(y.value, x.value), partials, y, x)
                .orBlind(unseen);
    }

    /**
     * The length of the hypotenuse, √(a² + b²).
     *
     * @param a one side
     * @param b the other side
     * @return the length; exactly 0 for two exact zeros
     * @throws ArithmeticException if both are 0 and not exact
     */
    public static Uncertain hypot(Uncertain a, Uncertain b) {
        double length = length(a.value, b.value);
        if (length == 0) {
            if (a.isExact() && b.isExact()) {
                return exact(0);
            }
            throw noFirstOrder("hypot", a.value, b.value);
        }
        double pa = a.value / length;
        double pb = b.value / length;
        boolean unseen = (pa == 0 && !a.isExact()) || (pb == 0 && !b.isExact());
        if (same(a.influences, b.influences) && StrictMath.abs(length) <= Double.MAX_VALUE) {
            return sum(length, pa, a, pb, b, unseen);
        }
        return result("hypot", length, new double[] {pa, pb}, a, b).orBlind(unseen);
    }

    /**
     * The angle between two sides of a triangle, by the cosine rule, as one operation.
     *
     * <p>γ = acos((a² + b² − c²) / (2ab)); ∂γ/∂a = (b cos γ − a) / (ab sin γ), ∂γ/∂b alike, ∂γ/∂c = c / (ab sin γ).
     *
     * @param adjacent1 one side at the angle, above 0
     * @param adjacent2 the other side at the angle, above 0
     * @param opposite the side opposite
     * @return the angle in rad, between 0 and π
     * @throws ArithmeticException if the three lengths make no open triangle
     */
    public static Uncertain cosineRule(Uncertain adjacent1, Uncertain adjacent2, Uncertain opposite) {
        double a = adjacent1.value;
        double b = adjacent2.value;
        double c = opposite.value;
        double cos = cosine(a, b, c);
        double over = 1 / (a * b * StrictMath.sqrt((1 - cos) * (1 + cos)));
        double pa = (b * cos - a) * over;
        double pb = (a * cos - b) * over;
        double pc = c * over;
        double angle = StrictMath.acos(cos);
        boolean unseen = (pa == 0 && !adjacent1.isExact()) || (pb == 0 && !adjacent2.isExact());
        if (same(adjacent1.influences, adjacent2.influences)
                && same(adjacent1.influences, opposite.influences)
                && isFinite(pa + pb + pc)) {
            return sum(angle, pa, adjacent1, pb, adjacent2, pc, opposite, unseen);
        }
        double[] partials = {pa, pb, pc};
        return result("cosine rule", angle, partials, adjacent1, adjacent2, opposite)
                .orBlind(unseen);
    }

    /** The cosine of the angle between two sides of an open triangle. */
    static double cosine(double a, double b, double c) {
        double cos = (a * a + b * b - c * c) / (2 * (a * b));
        if (!(a > 0 && b > 0 && c > 0 && cos > -1 && cos < 1)) {
            throw new ArithmeticException("cosine rule: lengths " + Require.show(a) + ", " + Require.show(b) + " and "
                    + Require.show(c) + " make no open triangle");
        }
        return cos;
    }

    @Override
    public double value() {
        return value;
    }

    /**
     * The combined standard uncertainty, √variance.
     *
     * @return u, 0 or more, in the unit of the value
     */
    public double standardUncertainty() {
        return StrictMath.sqrt(variance());
    }

    /**
     * The variance: the sum of the squares of the contributions.
     *
     * @return u², 0 or more
     * @throws ArithmeticException if the contributions are too large to be squared
     */
    public double variance() {
        double sum = 0;
        for (double c : kept) {
            sum += c * c;
        }
        if (!isFinite(sum)) {
            throw new ArithmeticException("variance of " + Require.show(value) + " is not finite");
        }
        return sum;
    }

    /**
     * Whether first order misses a doubt on the way to this number: an operation had slope zero in an argument that has
     * doubt (a square at 0, a product of two numbers of which one is 0, a cosine at 0). Its standard uncertainty is then
     * too small; see {@link SecondOrder} and {@link MonteCarlo}.
     *
     * <p>{@code combine} takes its partial derivatives as given and hands the mark of its inputs on.
     *
     * @return true if a doubt is missed
     */
    public boolean isFirstOrderBlind() {
        return blind;
    }

    /**
     * The influences it depends on.
     *
     * @return the basis of the contributions
     */
    public Influences influences() {
        return influences;
    }

    /**
     * The contribution of an influence: sensitivity · u, with its sign.
     *
     * @param i the position of the influence in the basis
     * @return the contribution in the unit of the value
     */
    public double contribution(int i) {
        Objects.checkIndex(i, influences.size());
        int at = Packed.indexOf(i, places, influences.block());
        return at < 0 ? 0 : kept[at] + 0.0;
    }

    /**
     * The contributions, one for each influence of the basis.
     *
     * @return a copy
     */
    public double[] contributions() {
        double[] row = new double[influences.size()];
        Packed.addTo(row, 1, places, kept, influences.block());
        return row;
    }

    /**
     * The sensitivity to an influence, contribution / u.
     *
     * @param influence the influence
     * @return the partial derivative; 0 if it does not depend on the influence or the influence has u = 0
     */
    public double sensitivity(Influence influence) {
        int at = influences.indexOf(influence);
        double u = influence.standardUncertainty();
        return at < 0 || u == 0 ? 0 : contribution(at) / u + 0.0;
    }

    /**
     * The same number on a larger basis.
     *
     * @param basis a basis that has every influence of this number
     * @return the same number; this very instance if the basis is the same instance
     * @throws IllegalArgumentException if the basis lacks an influence of this number
     */
    public Uncertain onto(Influences basis) {
        if (same(basis, influences)) {
            return this;
        }
        return ofRow(value, basis, spread(basis), blind);
    }

    /**
     * The sum, this + other.
     *
     * @param other what to add
     * @return the sum
     */
    public Uncertain plus(Uncertain other) {
        double sum = value + other.value;
        if (!same(influences, other.influences) || !isFinite(sum)) {
            return result("plus", sum, new double[] {1, 1}, this, other);
        }
        return sum(sum, 1, this, 1, other, false);
    }

    /**
     * The sum, this + other.
     *
     * @param other what to add, finite
     * @return the sum
     */
    public Uncertain plus(double other) {
        return with(finite("plus", value + other, value, other), kept, blind);
    }

    /**
     * The difference, this − other.
     *
     * @param other what to take away
     * @return the difference
     */
    public Uncertain minus(Uncertain other) {
        double difference = value - other.value;
        if (!same(influences, other.influences) || !isFinite(difference)) {
            return result("minus", difference, new double[] {1, -1}, this, other);
        }
        return sum(difference, 1, this, -1, other, false);
    }

    /**
     * The difference, this − other.
     *
     * @param other what to take away, finite
     * @return the difference
     */
    public Uncertain minus(double other) {
        return with(finite("minus", value - other, value, other), kept, blind);
    }

    /**
     * The product, this · other.
     *
     * @param other the factor
     * @return the product
     */
    public Uncertain times(Uncertain other) {
        double product = value * other.value;
        boolean unseen = (value == 0 || other.value == 0) && !isExact() && !other.isExact();
        if (!same(influences, other.influences) || !isFinite(product)) {
            return result("times", product, new double[] {other.value, value}, this, other)
                    .orBlind(unseen);
        }
        return sum(product, other.value, this, value, other, unseen);
    }

    /**
     * The product, this · other.
     *
     * @param other the factor, finite
     * @return the product
     */
    public Uncertain times(double other) {
        return with(finite("times", value * other, value, other), scaled(other), blind);
    }

    /**
     * The quotient, this / other.
     *
     * @param other the divisor
     * @return the quotient
     * @throws ArithmeticException if the divisor is 0
     */
    public Uncertain dividedBy(Uncertain other) {
        double quotient = value / other.value;
        double one = 1 / other.value;
        double two = -quotient / other.value;
        boolean unseen = value == 0 && !isExact() && !other.isExact();
        if (!same(influences, other.influences) || !isFinite(quotient) || !isFinite(one + two)) {
            if (!isFinite(quotient) || !isFinite(one + two)) {
                throw notFinite("dividedBy", value, other.value);
            }
            return result("dividedBy", quotient, new double[] {one, two}, this, other)
                    .orBlind(unseen);
        }
        return sum(quotient, one, this, two, other, unseen);
    }

    /**
     * The quotient, this / other.
     *
     * @param other the divisor, finite
     * @return the quotient
     * @throws ArithmeticException if the divisor is 0
     */
    public Uncertain dividedBy(double other) {
        double quotient = finite("dividedBy", isFinite(other) ? value / other : Double.NaN, value, other);
        double factor = finite("dividedBy", 1 / other, value, other);
        return with(quotient, scaled(factor), blind);
    }

    /**
     * The number with the other sign.
     *
     * @return −this
     */
    public Uncertain negated() {
        return with(-value, scaled(-1), blind);
    }

    /**
     * The square root.
     *
     * @return √this; exactly 0 for an exact 0
     * @throws ArithmeticException below 0, and at 0 unless it is exact: the slope is infinite there
     */
    public Uncertain sqrt() {
        if (value == 0 && isExact()) {
            return this;
        }
        if (!(value > 0)) {
            throw noFirstOrder("sqrt", value);
        }
        double root = StrictMath.sqrt(value);
        return with(root, scaled(finite("sqrt", 0.5 / root, value)), blind);
    }

    /**
     * The sine of an angle in rad.
     *
     * @return sin this
     */
    public Uncertain sin() {
        return with(StrictMath.sin(value), scaled(StrictMath.cos(value)), blind);
    }

    /**
     * The cosine of an angle in rad.
     *
     * @return cos this
     */
    public Uncertain cos() {
        boolean unseen = value == 0 && !isExact();
        return with(StrictMath.cos(value), scaled(-StrictMath.sin(value)), blind || unseen);
    }

    /**
     * The angle in rad whose cosine this is.
     *
     * @return acos this, from 0 to π; 0 or π for an exact 1 or −1
     * @throws ArithmeticException beyond ±1, and at ±1 unless it is exact: the slope is infinite there
     */
    public Uncertain acos() {
        if (StrictMath.abs(value) == 1 && isExact()) {
            return with(StrictMath.acos(value), kept, blind);
        }
        if (!(value > -1 && value < 1)) {
            throw noFirstOrder("acos", value);
        }
        double slope = -1 / StrictMath.sqrt((1 - value) * (1 + value));
        return with(StrictMath.acos(value), scaled(slope), blind);
    }

    /**
     * The covariance with another number: the sum of the products of the contributions.
     *
     * @param other the other number
     * @return the covariance, in the product of both units
     */
    public double covariance(Uncertain other) {
        if (same(influences, other.influences)) {
            return Packed.ofProducts(places, kept, other.places, other.kept, influences.block()) + 0.0;
        }
        double[] a = contributions();
        double[] b = other.contributions();
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            int at = other.influences.indexOf(influences.get(i), i);
            sum += at < 0 ? 0 : a[i] * b[at];
        }
        return sum + 0.0;
    }

    /**
     * The correlation with another number, covariance / (u · u).
     *
     * @param other the other number
     * @return from −1 to 1; 0 if either has no doubt
     */
    public double correlation(Uncertain other) {
        double product = standardUncertainty() * other.standardUncertainty();
        if (product == 0) {
            return 0;
        }
        return StrictMath.max(-1, StrictMath.min(1, covariance(other) / product));
    }

    /**
     * Whether value and contributions are all within a tolerance of another number's.
     *
     * @param other the other number; its influences may stand in another order
     * @param tolerance the greatest difference allowed, 0 or more, in the unit of the value
     * @return true if nothing differs by more
     */
    public boolean isCloseTo(Uncertain other, double tolerance) {
        Require.atLeastZero("tolerance", tolerance, "");
        Influences all = influences.union(other.influences);
        double[] one = onto(all).contributions();
        double[] two = other.onto(all).contributions();
        boolean close = StrictMath.abs(value - other.value) <= tolerance;
        for (int i = 0; i < one.length; i++) {
            close &= StrictMath.abs(one[i] - two[i]) <= tolerance;
        }
        return close;
    }

    /** Exact: same value, same influences in the same order, same contributions. */
    @Override
    public boolean equals(Object other) {
        if (!(other instanceof Uncertain that)
                || value != that.value
                || blind != that.blind
                || !influences.equals(that.influences)) {
            return false;
        }
        double[] a = contributions();
        double[] b = that.contributions();
        for (int i = 0; i < a.length; i++) {
            if (a[i] != b[i]) {
                return false;
            }
        }
        return true;
    }

    @Override
    public int hashCode() {
        int hash = Double.hashCode(value);
        for (double c : contributions()) {
            hash = 31 * hash + Double.hashCode(c + 0.0);
        }
        return hash;
    }

    @Override
    public String toString() {
        return Require.show(value) + " (u " + Require.show(standardUncertainty()) + ")";
    }

    Uncertain orBlind(boolean unseen) {
        return unseen && !blind ? with(value, kept, true) : this;
    }

    /** Another value and other contributions at the same places. */
    private Uncertain with(double other, double[] changed, boolean marked) {
        return new Uncertain(other, influences, places, changed, marked);
    }

    /** {@return whether it depends on no influence at all} */
    public boolean isExact() {
        for (double c : kept) {
            if (c != 0) {
                return false;
            }
        }
        return true;
    }

    private double[] scaled(double factor) {
        double[] r = new double[kept.length];
        for (int i = 0; i < r.length; i++) {
            r[i] = factor * kept[i];
        }
        return r;
    }

    private void addTo(double[] r, long all, double factor) {
        Packed.add(r, all, factor, places, kept, influences.block());
    }

    private double[] spread(Influences basis) {
        double[] r = new double[basis.size()];
        double[] a = contributions();
        for (int i = 0; i < a.length; i++) {
            int at = basis.indexOf(influences.get(i), i);
            if (at < 0) {
                throw new IllegalArgumentException("basis must have every influence of the number, lacks "
                        + influences.get(i).id());
            }
            r[at] = a[i];
        }
        return r;
    }

    /** Value, and p · a + q · b of two numbers on the same basis. */
    private static Uncertain sum(double value, double p, Uncertain a, double q, Uncertain b, boolean unseen) {
        long places = a.places | b.places;
        double[] r = new double[Packed.count(places, a.influences.block())];
        a.addTo(r, places, p);
        b.addTo(r, places, q);
        return new Uncertain(value, a.influences, places, r, a.blind || b.blind || unseen);
    }

    /** Value, and p · a + q · b + s · c of three numbers on the same basis. */
    private static Uncertain sum(
            double value, double p, Uncertain a, double q, Uncertain b, double s, Uncertain c, boolean unseen) {
        long places = a.places | b.places | c.places;
        double[] r = new double[Packed.count(places, a.influences.block())];
        a.addTo(r, places, p);
        b.addTo(r, places, q);
        c.addTo(r, places, s);
        return new Uncertain(value, a.influences, places, r, a.blind || b.blind || c.blind || unseen);
    }

    private static Uncertain result(String operation, double value, double[] partials, Uncertain... inputs) {
        boolean finite = isFinite(value);
        for (double partial : partials) {
            finite &= isFinite(partial);
        }
        if (!finite) {
            double[] operands = new double[inputs.length];
            for (int i = 0; i < operands.length; i++) {
                operands[i] = inputs[i].value;
            }
            throw notFinite(operation, operands);
        }
        return linear(value, partials, inputs);
    }

    private static Uncertain linear(double value, double[] partials, Uncertain[] inputs) {
        Influences basis = Influences.NONE;
        for (Uncertain input : inputs) {
            basis = basis.union(input.influences);
        }
        boolean unseen = false;
        boolean onOne = true;
        long places = 0;
        for (int k = 0; k < inputs.length; k++) {
            Uncertain input = inputs[k];
            if (partials[k] != 0) {
                unseen |= input.blind;
                onOne &= input.places == 0 || same(input.influences, basis);
                places |= input.places;
            }
        }
        if (onOne) {
            return onOneBasis(value, basis, places, partials, inputs, unseen);
        }
        double[] r = new double[basis.size()];
        for (int k = 0; k < inputs.length; k++) {
            inputs[k].addTo(r, basis, partials[k]);
        }
        return ofRow(value, basis, r, unseen);
    }

    /** Where all inputs that count are on one basis: only what they keep between them is touched. */
    private static Uncertain onOneBasis(
            double value, Influences basis, long places, double[] partials, Uncertain[] inputs, boolean unseen) {
        double[] r = new double[Packed.count(places, basis.block())];
        for (int k = 0; k < inputs.length; k++) {
            if (partials[k] != 0) {
                inputs[k].addTo(r, places, partials[k]);
            }
        }
        return new Uncertain(value, basis, places, r, unseen);
    }

    private void addTo(double[] r, Influences basis, double factor) {
        if (same(basis, influences)) {
            Packed.addTo(r, factor, places, kept, basis.block());
            return;
        }
        double[] a = contributions();
        for (int i = 0; i < a.length; i++) {
            r[basis.indexOf(influences.get(i), i)] += factor * a[i];
        }
    }

    private static Uncertain checked(double value, Influences basis, double[] contributions) {
        for (double c : contributions) {
            if (!isFinite(c)) {
                throw Require.refused("contribution", "finite", c, "");
            }
        }
        return ofRow(Require.finite("value", value, ""), basis, contributions, false);
    }

    private static void requireLength(String name, int got, int wanted) {
        if (got != wanted) {
            throw new IllegalArgumentException("number of " + name + " must be " + wanted + ", got " + got);
        }
    }

    private static double length(double a, double b) {
        double square = a * a + b * b;
        return square > HYPOT_LEAST && square < HYPOT_GREATEST ? StrictMath.sqrt(square) : StrictMath.hypot(a, b);
    }

    /** The same instance: equal bases would do as well, but asking costs more than the slow path saves. */
    @SuppressWarnings("ReferenceEquality")
    private static boolean same(Influences one, Influences other) {
        return one == other;
    }

    private static boolean isFinite(double value) {
        return StrictMath.abs(value) <= Double.MAX_VALUE;
    }

    private static double finite(String operation, double result, double operand) {
        if (!isFinite(result)) {
            throw notFinite(operation, operand);
        }
        return result;
    }

    private static double finite(String operation, double result, double one, double other) {
        if (!isFinite(result)) {
            throw notFinite(operation, one, other);
        }
        return result;
    }

    private static ArithmeticException notFinite(String operation, double... operands) {
        return new ArithmeticException(operation + " has no finite result for " + list(operands));
    }

    private static ArithmeticException noFirstOrder(String operation, double... operands) {
        return new ArithmeticException(operation + " has no value or no slope at " + list(operands));
    }

    private static String list(double[] operands) {
        StringBuilder text = new StringBuilder();
        for (double operand : operands) {
            text.append(text.length() == 0 ? "" : " and ").append(Require.show(operand));
        }
        return text.toString();
    }
}
