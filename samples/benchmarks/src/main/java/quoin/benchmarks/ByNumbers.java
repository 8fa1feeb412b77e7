package quoin.benchmarks;

import java.util.ArrayList;
import java.util.List;
import quoin.measure.Influence;
import quoin.measure.Influences;
import quoin.measure.Uncertain;

/** The same through the immutable numbers of the library. */
final class ByNumbers implements Work {
    static final int SCALE = Room.READINGS;

    private final double[] v = new double[Room.READINGS];
    private final Uncertain[] r = new Uncertain[Room.READINGS];
    final Uncertain[] y = new Uncertain[Room.OUTPUTS];
    private final Influences basis = influences();
    private final Uncertain offWidth = number(Room.OFF_WIDTH, SCALE + 1);
    private final Uncertain offLength = number(Room.OFF_LENGTH, SCALE + 2);

    static Influences influences() {
        List<Influence> all = new ArrayList<>();
        for (int i = 0; i < Room.READINGS; i++) {
            all.add(Influence.normal("r".concat(Integer.toString(i)), Room.FRESH));
        }
        all.add(Influence.normal("scale", Room.SCALE));
        all.add(Influence.normal("off-width", Room.OFF_WIDTH_U));
        all.add(Influence.normal("off-length", Room.OFF_LENGTH_U));
        return Influences.of(all);
    }

    private Uncertain number(double value, int own) {
        return Uncertain.ofReading(value, basis, own, 1, SCALE, 0);
    }

    /** The readings and the two deductions. */
    List<Uncertain> inputs() {
        Room.read(v, 0);
        List<Uncertain> inputs = new ArrayList<>();
        for (int i = 0; i < Room.READINGS; i++) {
            inputs.add(Uncertain.ofReading(v[i], basis, i, 1, SCALE, v[i]));
        }
        inputs.add(offWidth);
        inputs.add(offLength);
        return inputs;
    }

    @Override
    public double once(int time) {
        Room.read(v, time);
        for (int i = 0; i < Room.READINGS; i++) {
            r[i] = Uncertain.ofReading(v[i], basis, i, 1, SCALE, v[i]);
        }
        y[0] = Uncertain.cosineRule(r[0], r[3], r[5]);
        y[1] = Uncertain.cosineRule(r[0], r[1], r[4]);
        y[2] = Uncertain.cosineRule(r[1], r[2], r[5]);
        y[3] = Uncertain.cosineRule(r[2], r[3], r[4]);
        y[4] = r[4].minus(r[5]);
        y[5] = least(r[6], least(r[7], r[8]));
        y[6] = least(r[9], least(r[10], r[11]));
        Uncertain width = y[5].minus(offWidth);
        Uncertain length = y[6].minus(offLength);
        y[7] = width.minus(Room.SIZE_WIDTH);
        y[8] = length.minus(Room.SIZE_LENGTH);
        y[9] = width.negated().plus(Room.MOST_WIDTH);
        y[10] = length.negated().plus(Room.MOST_LENGTH);
        y[11] = width.times(length).negated().plus(Room.MOST_AREA);
        double sum = 0;
        for (Uncertain output : y) {
            sum += output.value() + output.standardUncertainty();
        }
        return sum;
    }

    private static Uncertain least(Uncertain a, Uncertain b) {
        return a.value() <= b.value() ? a : b;
    }
}
