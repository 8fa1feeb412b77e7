package quoin.benchmarks;

import org.apache.commons.math3.analysis.differentiation.DerivativeStructure;

/** The same through the derivative structures of commons-math3, one free parameter for each influence. */
final class ByDerivatives implements Work {
    private static final int PARAMETERS = Room.READINGS + 3;
    private static final int SCALE = Room.READINGS;

    private final double[] v = new double[Room.READINGS];
    private final DerivativeStructure[] r = new DerivativeStructure[Room.READINGS];
    final DerivativeStructure[] y = new DerivativeStructure[Room.OUTPUTS];

    @Override
    public double once(int time) {
        Room.read(v, time);
        for (int i = 0; i < Room.READINGS; i++) {
            r[i] = reading(i, v[i]);
        }
        y[0] = angle(r[0], r[3], r[5]);
        y[1] = angle(r[0], r[1], r[4]);
        y[2] = angle(r[1], r[2], r[5]);
        y[3] = angle(r[2], r[3], r[4]);
        y[4] = r[4].subtract(r[5]);
        y[5] = least(r[6], least(r[7], r[8]));
        y[6] = least(r[9], least(r[10], r[11]));
        DerivativeStructure width = y[5].subtract(parameter(SCALE + 1, Room.OFF_WIDTH));
        DerivativeStructure length = y[6].subtract(parameter(SCALE + 2, Room.OFF_LENGTH));
        y[7] = width.subtract(Room.SIZE_WIDTH);
        y[8] = length.subtract(Room.SIZE_LENGTH);
        y[9] = width.negate().add(Room.MOST_WIDTH);
        y[10] = length.negate().add(Room.MOST_LENGTH);
        y[11] = width.multiply(length).negate().add(Room.MOST_AREA);
        double sum = 0;
        for (DerivativeStructure output : y) {
            sum += output.getValue() + standardUncertainty(output);
        }
        return sum;
    }

    /** Stated with both its slopes at once, the cheapest way here too. */
    private static DerivativeStructure reading(int own, double value) {
        double[] derivatives = new double[PARAMETERS + 1];
        derivatives[0] = value;
        derivatives[1 + own] = 1;
        derivatives[1 + SCALE] = value;
        return new DerivativeStructure(PARAMETERS, 1, derivatives);
    }

    private static DerivativeStructure parameter(int index, double value) {
        return new DerivativeStructure(PARAMETERS, 1, index, value);
    }

    private static DerivativeStructure least(DerivativeStructure a, DerivativeStructure b) {
        return a.getValue() <= b.getValue() ? a : b;
    }

    private static DerivativeStructure angle(DerivativeStructure a, DerivativeStructure b, DerivativeStructure c) {
        return a.multiply(a)
                .add(b.multiply(b))
                .subtract(c.multiply(c))
                .divide(a.multiply(b).multiply(2))
                .acos();
    }

    static double standardUncertainty(DerivativeStructure output) {
        double[] all = output.getAllDerivatives();
        double sum = 0;
        for (int i = 0; i < PARAMETERS; i++) {
            double u = i < SCALE
                    ? Room.FRESH
                    : i == SCALE ? Room.SCALE : i == SCALE + 1 ? Room.OFF_WIDTH_U : Room.OFF_LENGTH_U;
            sum += all[i + 1] * u * all[i + 1] * u;
        }
        return StrictMath.sqrt(sum);
    }
}
