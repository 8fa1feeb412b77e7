package quoin.benchmarks;

import quoin.measure.Evaluator;

/** The same through the reusable evaluator of the library. */
final class ByEvaluator implements Work {
    private static final int SCALE = Room.READINGS;
    private static final int OFF_WIDTH = 12;
    private static final int OFF_LENGTH = 13;
    private static final int WIDTH = 14;
    private static final int LENGTH = 15;
    private static final int Y = 16;

    private final double[] v = new double[Room.READINGS];
    final Evaluator rows = new Evaluator(ByNumbers.influences(), Y + Room.OUTPUTS);

    /** Where the outputs stand. */
    final int[] at = new int[Room.OUTPUTS];

    ByEvaluator() {
        for (int i = 0; i < at.length; i++) {
            at[i] = Y + i;
        }
        rows.reading(OFF_WIDTH, Room.OFF_WIDTH, SCALE + 1, 1, SCALE + 1, 0);
        rows.reading(OFF_LENGTH, Room.OFF_LENGTH, SCALE + 2, 1, SCALE + 2, 0);
    }

    @Override
    public double once(int time) {
        Room.read(v, time);
        for (int i = 0; i < Room.READINGS; i++) {
            rows.reading(i, v[i], i, 1, SCALE, v[i]);
        }
        rows.cosineRule(Y, 0, 3, 5);
        rows.cosineRule(Y + 1, 0, 1, 4);
        rows.cosineRule(Y + 2, 1, 2, 5);
        rows.cosineRule(Y + 3, 2, 3, 4);
        rows.minus(Y + 4, 4, 5);
        at[5] = least(6, least(7, 8));
        at[6] = least(9, least(10, 11));
        rows.minus(WIDTH, at[5], OFF_WIDTH);
        rows.minus(LENGTH, at[6], OFF_LENGTH);
        rows.linear(Y + 7, 1, WIDTH, -Room.SIZE_WIDTH);
        rows.linear(Y + 8, 1, LENGTH, -Room.SIZE_LENGTH);
        rows.linear(Y + 9, -1, WIDTH, Room.MOST_WIDTH);
        rows.linear(Y + 10, -1, LENGTH, Room.MOST_LENGTH);
        rows.times(Y + 11, WIDTH, LENGTH);
        rows.linear(Y + 11, -1, Y + 11, Room.MOST_AREA);
        double sum = 0;
        for (int row : at) {
            sum += rows.value(row) + rows.standardUncertainty(row);
        }
        return sum;
    }

    private int least(int a, int b) {
        return rows.value(a) <= rows.value(b) ? a : b;
    }
}
