package quoin.measure;

/** Mean and scatter in one pass that keeps its digits (Welford), so that 1e7 ± 0.1 comes out right. */
record Scatter(int count, double mean, double squares) {
    /** Of 2 or more finite readings. */
    static Scatter of(double[] values) {
        Require.atLeast("number of readings", values.length, 2);
        double mean = 0;
        double squares = 0;
        for (int i = 0; i < values.length; i++) {
            double delta = Require.finite("reading", values[i], "") - mean;
            mean += delta / (i + 1);
            squares += delta * (values[i] - mean);
        }
        return new Scatter(values.length, mean, squares);
    }

    double standardDeviation() {
        return StrictMath.sqrt(squares / (count - 1));
    }
}
