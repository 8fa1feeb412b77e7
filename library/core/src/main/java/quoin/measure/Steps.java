package quoin.measure;

/**
 * Rounding to multiples of a step.
 *
 * <p>A value within 1e-6 of a step of a multiple counts as that multiple, since a computation that should give 1500
 * may give 1499.9999999997. Stateless.
 */
public final class Steps {
    private static final double CLOSE = 1e-6;

    private Steps() {}

    /**
     * The greatest multiple of the step that is not above the value.
     *
     * @formula step · ⌊value / step⌋; a value within 1e-6 · step of a multiple is that multiple
     * @unit any, value and step in the same unit; step above 0
     * @edge a multiple of the step is returned as it is
     * @source assumption: rounding rule of the project, 1e-6 of a step
     * @param value what to round, finite
     * @param step the step, above 0
     * @return the multiple
     * @throws IllegalArgumentException if the value is not finite, the step is not above 0, or the value has more than
     *     2^53 steps
     */
    public static double down(double value, double step) {
        double count = count(value, step);
        double near = StrictMath.rint(count);
        return multiple(StrictMath.abs(count - near) <= CLOSE ? near : StrictMath.floor(count), step);
    }

    /**
     * The least multiple of the step that is not below the value.
     *
     * @formula step · ⌈value / step⌉; a value within 1e-6 · step of a multiple is that multiple
     * @unit any, value and step in the same unit; step above 0
     * @edge a multiple of the step is returned as it is
     * @source assumption: rounding rule of the project, 1e-6 of a step
     * @param value what to round, finite
     * @param step the step, above 0
     * @return the multiple
     * @throws IllegalArgumentException if the value is not finite, the step is not above 0, or the value has more than
     *     2^53 steps
     */
    public static double up(double value, double step) {
        double count = count(value, step);
        double near = StrictMath.rint(count);
        return multiple(StrictMath.abs(count - near) <= CLOSE ? near : StrictMath.ceil(count), step);
    }

    /**
     * The multiple of the step that is nearest to the value, halves away from zero.
     *
     * @formula step · sgn(value) · ⌊|value| / step + 1/2⌋
     * @unit any, value and step in the same unit; step above 0
     * @edge an exact half goes away from zero: 0.5 steps give 1, −0.5 steps give −1
     * @source assumption: rounding rule of the project
     * @param value what to round, finite
     * @param step the step, above 0
     * @return the multiple
     * @throws IllegalArgumentException if the value is not finite, the step is not above 0, or the value has more than
     *     2^53 steps
     */
    public static double nearest(double value, double step) {
        return multiple(nearestCount(count(value, step)), step);
    }

    /** Halves away from zero. Adding a half and flooring would lift 0.49999999999999994 to 1. */
    static double nearestCount(double count) {
        double whole = count < 0 ? StrictMath.ceil(count) : StrictMath.floor(count);
        double rest = StrictMath.abs(count - whole);
        return rest >= 0.5 ? whole + StrictMath.signum(count) : whole;
    }

    private static double multiple(double count, double step) {
        return count * step + 0.0;
    }

    private static double count(double value, double step) {
        Require.finite("value", value, "");
        Require.aboveZero("step", step, "");
        double count = value / step;
        if (!(StrictMath.abs(count) <= 0x1p53)) {
            throw Require.refused("value", "at most 2^53 steps", value, "");
        }
        return count;
    }
}
