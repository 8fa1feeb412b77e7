package quoin.measure;

/**
 * Rounding to a step. A value within a millionth of a step of a multiple counts as that multiple, so that the last digit
 * of a computation decides nothing.
 */
public final class Steps {
    private static final double CLOSE = 1e-6;

    private Steps() {}

    /**
     * The multiple of a step that is not above a value.
     *
     * @param value the value
     * @param step the step, above 0
     * @return the multiple
     * @formula step · ⌊value/step⌋
     * @unit that of the value
     * @edge a value within 1e-6 of a step of a multiple is that multiple
     * @source assumption: the millionth of a step
     */
    public static double down(double value, double step) {
        double count = count(value, step);
        double near = Math.rint(count);
        return exact(Math.abs(count - near) <= CLOSE ? near : Math.floor(count), step);
    }

    /**
     * The multiple of a step that is not below a value.
     *
     * @param value the value
     * @param step the step, above 0
     * @return the multiple
     * @formula step · ⌈value/step⌉
     * @unit that of the value
     * @edge a value within 1e-6 of a step of a multiple is that multiple
     * @source assumption: the millionth of a step
     */
    public static double up(double value, double step) {
        return -down(-value, step) + 0.0;
    }

    /**
     * The nearest multiple of a step.
     *
     * @param value the value
     * @param step the step, above 0
     * @return the multiple; halves go away from zero
     * @formula step · sign(value) · ⌊|value|/step + 1/2⌋
     * @unit that of the value
     * @edge a value within 1e-6 of a step of a half counts as the half
     * @source assumption: the millionth of a step
     */
    public static double nearest(double value, double step) {
        double size = down(Math.abs(count(value, step)) + 0.5, 1);
        return exact(value < 0 ? -size : size, step);
    }

    private static double count(double value, double step) {
        if (!(step > 0) || !Double.isFinite(step)) {
            throw new IllegalArgumentException("step must be above 0, got " + step);
        }
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value must be a finite number, got " + value);
        }
        return value / step;
    }

    private static double exact(double count, double step) {
        return count * step + 0.0;
    }
}
