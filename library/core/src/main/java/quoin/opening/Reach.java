package quoin.opening;

/** What a slip in one reading does to the outline, to first order. Not safe for use by many threads. */
final class Reach {
    private static final double NOTHING = 1e-12;

    /** Two widths, two lengths, four angles. */
    private static final int[] ENDS = {0, 2, 4, 8};

    private final LeastSquares estimate;

    /** How each of those follows the corners. */
    private final double[] rows = new double[8 * Five.SIZE];

    /** @param at where the rows of the estimate were taken */
    Reach(Model model, double[] at, LeastSquares estimate) {
        this.estimate = estimate;
        double[] row = new double[model.size()];
        Side[] sides = {Side.HEAD, Side.FOOT, Side.LEFT, Side.RIGHT};
        for (int k = 0; k < 4; k++) {
            Model.between(sides[k].from(), sides[k].to(), at, row);
            System.arraycopy(row, 0, rows, k * Five.SIZE, Five.SIZE);
        }
        for (Corner corner : Corner.values()) {
            Model.turns(corner, at, row);
            System.arraycopy(row, 0, rows, (4 + corner.ordinal()) * Five.SIZE, Five.SIZE);
        }
    }

    /** What a slip of that size in the i-th reading does. */
    AdjustedReading.Effect of(int i, double slip) {
        double[] gain = estimate.gain(i);
        return new AdjustedReading.Effect(most(gain, 0, slip), most(gain, 1, slip), most(gain, 2, slip));
    }

    private double most(double[] gain, int kind, double slip) {
        double most = 0;
        for (int k = ENDS[kind]; k < ENDS[kind + 1]; k++) {
            most = Math.max(most, Math.abs(Five.product(rows, k * Five.SIZE, gain)));
        }
        return most > NOTHING ? most * slip : 0;
    }
}
