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
            inputs.add(reading(i));
        }
        inputs.add(offWidth);
        inputs.add(offLength);
        return inputs;
    }

    @Override
    public double once(int time) {
        double sum = 0;
        for (Uncertain output : outputs(time)) {
            sum += output.value() + output.standardUncertainty();
        }
        return sum;
    }

    /** In a new array, as a caller has them: stored in an old one, each would cost the barrier of the collector. */
    Uncertain[] outputs(int time) {
        Room.read(v, time);
        Uncertain side1 = reading(0);
        Uncertain side2 = reading(1);
        Uncertain side3 = reading(2);
        Uncertain side4 = reading(3);
        Uncertain diagonal1 = reading(4);
        Uncertain diagonal2 = reading(5);
        Uncertain leastWidth = least(reading(6), least(reading(7), reading(8)));
        Uncertain leastLength = least(reading(9), least(reading(10), reading(11)));
        Uncertain corner1 = Uncertain.cosineRule(side1, side4, diagonal2);
        Uncertain corner2 = Uncertain.cosineRule(side1, side2, diagonal1);
        Uncertain corner3 = Uncertain.cosineRule(side2, side3, diagonal2);
        Uncertain corner4 = Uncertain.cosineRule(side3, side4, diagonal1);
        Uncertain difference = diagonal1.minus(diagonal2);
        Uncertain width = leastWidth.minus(offWidth);
        Uncertain length = leastLength.minus(offLength);
        Uncertain beyondWidth = width.minus(Room.SIZE_WIDTH);
        Uncertain beyondLength = length.minus(Room.SIZE_LENGTH);
        Uncertain toWidth = width.negated().plus(Room.MOST_WIDTH);
        Uncertain toLength = length.negated().plus(Room.MOST_LENGTH);
        Uncertain toArea = width.times(length).negated().plus(Room.MOST_AREA);
        return new Uncertain[] {
            corner1,
            corner2,
            corner3,
            corner4,
            difference,
            leastWidth,
            leastLength,
            beyondWidth,
            beyondLength,
            toWidth,
            toLength,
            toArea
        };
    }

    private Uncertain reading(int i) {
        return Uncertain.ofReading(v[i], basis, i, 1, SCALE, v[i]);
    }

    private static Uncertain least(Uncertain a, Uncertain b) {
        return a.value() <= b.value() ? a : b;
    }
}
