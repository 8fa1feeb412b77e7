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
        DerivativeStructure scale = parameter(SCALE, 1);
        for (int i = 0; i < Room.READINGS; i++) {
            r[i] = parameter(i, v[i]).multiply(scale);
        }
        y[0] = angle(r[0], r[3], r[5]);
        y[1] = angle(r[0], r[1], r[4]);
        y[2] = angle(r[1], r[2], r[5]);
        y[3] = angle(r[2], r[3], r[4]);
        y[4] = r[4].subtract(r[5]);
        y[5] = least(r[6], least(r[7], r[8]));
        y[6] = least(r[9], least(r[10], r[11]));
        y[7] = y[5].subtract(parameter(SCALE + 1, Room.OFF_WIDTH));
        y[8] = y[6].subtract(parameter(SCALE + 2, Room.OFF_LENGTH));
        y[9] = y[7].negate().add(Room.MOST_WIDTH);
        y[10] = y[8].negate().add(Room.MOST_LENGTH);
        y[11] = y[7].multiply(y[8]).negate().add(Room.MOST_AREA);
        double sum = 0;
        for (DerivativeStructure output : y) {
            sum += output.getValue() + standardUncertainty(output);
        }
        return sum;
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
