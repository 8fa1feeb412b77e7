package quoin.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The doubt of a function of some numbers with the terms of second order, for a check on first order.
 *
 * <p>u² = Σ gᵢ² + Σᵢⱼ (½ gᵢⱼ² + gᵢ gᵢⱼⱼ), value + ½ Σ gᵢᵢ, with g as a function of the influences in units of their standard
 * uncertainty (JCGM 100:2008, note to 5.1.2, from memory). Derivatives are central differences over ⅛ u, exact for
 * polynomials of third degree. Immutable.
 *
 * @param value the value with its shift of second order
 * @param firstOrder the value at the inputs, without the shift
 * @param firstOrderUncertainty u to first order
 * @param standardUncertainty u to second order
 * @param unseen the influences that first order does not see at all although they matter
 */
public record SecondOrder(
        double value,
        double firstOrder,
        double firstOrderUncertainty,
        double standardUncertainty,
        List<Influence> unseen) {
    private static final double STEP = 0.125;
    private static final double NOTHING = 1e-9;

    /** Checks the numbers and copies the list. */
    public SecondOrder {
        value = Require.finite("value", value, "");
        firstOrder = Require.finite("value of first order", firstOrder, "");
        firstOrderUncertainty = Require.atLeastZero("standard uncertainty of first order", firstOrderUncertainty, "");
        standardUncertainty = Require.atLeastZero("standard uncertainty", standardUncertainty, "");
        unseen = List.copyOf(unseen);
    }

    /**
     * Whether first order misses some influence altogether: its slope is zero, its curvature is not.
     *
     * @return true if {@link #unseen()} has any
     */
    public boolean isFirstOrderBlind() {
        return !unseen.isEmpty();
    }

    /**
     * Value and doubt of a function to second order.
     *
     * @param inputs the numbers it depends on
     * @param function the function of their values
     * @return value and doubt
     * @throws ArithmeticException if the function is not finite near the inputs, or the terms of second order do not
     *     leave a variance: then only Monte Carlo helps
     */
    public static SecondOrder of(List<Uncertain> inputs, ToDoubleFunction<double[]> function) {
        Standardised g = new Standardised(inputs, function);
        int n = g.size();
        double middle = g.at(0, 0, 0, 0);
        double first = 0;
        double second = 0;
        double shift = 0;
        double[] slopes = new double[n];
        double[] curvatures = new double[n];
        for (int i = 0; i < n; i++) {
            slopes[i] = g.slope(i);
            first += slopes[i] * slopes[i];
            for (int j = 0; j < n; j++) {
                double mixed = i == j ? g.curvature(i, middle) : g.mixed(i, j);
                double term = 0.5 * mixed * mixed;
                second += term + slopes[i] * (i == j ? g.third(i) : g.third(i, j));
                curvatures[i] += term;
                shift += i == j ? 0.5 * mixed : 0;
            }
        }
        if (!(first + second >= 0)) {
            throw new ArithmeticException("second order leaves no variance: use Monte Carlo");
        }
        double u = StrictMath.sqrt(first + second);
        List<Influence> unseen = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            boolean flat = StrictMath.abs(slopes[i]) <= NOTHING * u;
            if (flat && StrictMath.sqrt(curvatures[i]) > NOTHING * u) {
                unseen.add(g.influence(i));
            }
        }
        return new SecondOrder(middle + shift, middle, StrictMath.sqrt(first), u, unseen);
    }

    /** The function of the influences that contribute, each in units of its standard uncertainty. */
    private static final class Standardised {
        private final List<Uncertain> inputs = new ArrayList<>();
        private final Influences basis;
        private final int[] used;
        private final ToDoubleFunction<double[]> function;

        Standardised(List<Uncertain> inputs, ToDoubleFunction<double[]> function) {
            Influences all = Influences.NONE;
            for (Uncertain input : inputs) {
                all = all.union(input.influences());
            }
            for (Uncertain input : inputs) {
                this.inputs.add(input.onto(all));
            }
            this.basis = all;
            this.function = function;
            int[] positions = new int[all.size()];
            int count = 0;
            for (int i = 0; i < all.size(); i++) {
                positions[count] = i;
                count += contributes(i) ? 1 : 0;
            }
            this.used = java.util.Arrays.copyOf(positions, count);
        }

        private boolean contributes(int i) {
            for (Uncertain input : inputs) {
                if (input.contribution(i) != 0) {
                    return true;
                }
            }
            return false;
        }

        int size() {
            return used.length;
        }

        Influence influence(int i) {
            return basis.get(used[i]);
        }

        /** The function with influence i moved by a and influence j by b. */
        double at(int i, double a, int j, double b) {
            double[] values = new double[inputs.size()];
            for (int k = 0; k < values.length; k++) {
                Uncertain input = inputs.get(k);
                values[k] = input.value();
                if (used.length > 0) {
                    values[k] += a * input.contribution(used[i]) + b * input.contribution(used[j]);
                }
            }
            double result = function.applyAsDouble(values);
            if (!Double.isFinite(result)) {
                throw new ArithmeticException("the function is not finite near its inputs, got " + result);
            }
            return result;
        }

        /** Two steps combined, so that a third derivative does not spoil the first. */
        double slope(int i) {
            double near = (at(i, STEP, i, 0) - at(i, -STEP, i, 0)) / (2 * STEP);
            double far = (at(i, 2 * STEP, i, 0) - at(i, -2 * STEP, i, 0)) / (4 * STEP);
            return (4 * near - far) / 3;
        }

        double curvature(int i, double middle) {
            return (at(i, STEP, i, 0) - 2 * middle + at(i, -STEP, i, 0)) / (STEP * STEP);
        }

        double mixed(int i, int j) {
            return (at(i, STEP, j, STEP) - at(i, STEP, j, -STEP) - at(i, -STEP, j, STEP) + at(i, -STEP, j, -STEP))
                    / (4 * STEP * STEP);
        }

        double third(int i) {
            return (at(i, 2 * STEP, i, 0) - 2 * at(i, STEP, i, 0) + 2 * at(i, -STEP, i, 0) - at(i, -2 * STEP, i, 0))
                    / (2 * STEP * STEP * STEP);
        }

        /** The derivative by i of the curvature in j. */
        double third(int i, int j) {
            double up = at(i, STEP, j, STEP) - 2 * at(i, STEP, j, 0) + at(i, STEP, j, -STEP);
            double down = at(i, -STEP, j, STEP) - 2 * at(i, -STEP, j, 0) + at(i, -STEP, j, -STEP);
            return (up - down) / (2 * STEP * STEP * STEP);
        }
    }
}
