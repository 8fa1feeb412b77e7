package quoin.opening;

/** What a slip in one reading does to the outline, to first order. Not safe for use by many threads. */
final class Reach {
    private static final double NOTHING = 1e-12;
    private final double[][] gain;
    private final double[][] widths;
    private final double[][] lengths;
    private final double[][] angles;

    Reach(Model model, double[] at, double[][] gain) {
        this.gain = gain;
        this.widths = new double[2][model.size()];
        this.lengths = new double[2][model.size()];
        this.angles = new double[4][model.size()];
        model.observe(new Span.Edge(Side.HEAD), at, widths[0]);
        model.observe(new Span.Edge(Side.FOOT), at, widths[1]);
        model.observe(new Span.Edge(Side.LEFT), at, lengths[0]);
        model.observe(new Span.Edge(Side.RIGHT), at, lengths[1]);
        int next = 0;
        for (Corner corner : Corner.values()) {
            model.angle(corner, at, angles[next++]);
        }
    }

    /** What a slip of that size in the i-th reading does. */
    AdjustedReading.Effect of(int i, double slip) {
        return new AdjustedReading.Effect(
                most(widths, gain[i], slip), most(lengths, gain[i], slip), most(angles, gain[i], slip));
    }

    private static double most(double[][] rows, double[] gain, double slip) {
        double most = 0;
        for (double[] row : rows) {
            double follows = 0;
            for (int k = 0; k < row.length; k++) {
                follows += row[k] * gain[k];
            }
            most = Math.max(most, Math.abs(follows));
        }
        return most > NOTHING ? most * slip : 0;
    }
}
