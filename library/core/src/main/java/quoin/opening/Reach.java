package quoin.opening;

/** What a slip in one reading does to the outline, to first order. Immutable and safe for use by many threads. */
final class Reach {
    private static final double NOTHING = 1e-12;

    private final int unknowns;
    private final double[] at;
    private final LeastSquares estimate;

    /** @param at where the rows of the estimate were taken; not to be written to */
    Reach(Model model, double[] at, LeastSquares estimate) {
        this.unknowns = model.size();
        this.at = at;
        this.estimate = estimate;
    }

    /** What a slip of that size in the i-th reading does to the width of head or foot. */
    double ofWidths(int i, double slip) {
        return ofSides(i, slip, Side.HEAD, Side.FOOT);
    }

    /** What it does to the length of the left or the right side. */
    double ofLengths(int i, double slip) {
        return ofSides(i, slip, Side.LEFT, Side.RIGHT);
    }

    private double ofSides(int i, double slip, Side... sides) {
        double[] gain = estimate.gain(i);
        double[] row = new double[unknowns];
        double most = 0;
        for (Side side : sides) {
            Model.between(side.from(), side.to(), at, row);
            most = Math.max(most, follows(row, gain));
        }
        return times(most, slip);
    }

    /** What it does to the angle of a corner. */
    double ofAngles(int i, double slip) {
        double[] gain = estimate.gain(i);
        double[] row = new double[unknowns];
        double most = 0;
        for (Corner corner : Corner.values()) {
            Model.turns(corner, at, row);
            most = Math.max(most, follows(row, gain));
        }
        return times(most, slip);
    }

    private static double follows(double[] row, double[] gain) {
        double follows = 0;
        for (int k = 0; k < row.length; k++) {
            follows += row[k] * gain[k];
        }
        return Math.abs(follows);
    }

    private static double times(double most, double slip) {
        return most > NOTHING ? most * slip : 0;
    }
}
