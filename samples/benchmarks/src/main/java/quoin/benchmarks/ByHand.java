package quoin.benchmarks;

/** The twelve outputs and their standard uncertainties as a careful engineer would derive and type them. */
final class ByHand implements Work {
    private final double[] v = new double[Room.READINGS];
    final double[] y = new double[Room.OUTPUTS];
    final double[] u = new double[Room.OUTPUTS];

    @Override
    public double once(int time) {
        Room.read(v, time);
        evaluate();
        double sum = 0;
        for (int i = 0; i < Room.OUTPUTS; i++) {
            sum += y[i] + u[i];
        }
        return sum;
    }

    private void evaluate() {
        angle(0, v[0], v[3], v[5]);
        angle(1, v[0], v[1], v[4]);
        angle(2, v[1], v[2], v[5]);
        angle(3, v[2], v[3], v[4]);
        double fresh = Room.FRESH * Room.FRESH;
        y[4] = v[4] - v[5];
        double scale = Room.SCALE * y[4];
        u[4] = StrictMath.sqrt(2 * fresh + scale * scale);
        double w = Math.min(v[6], Math.min(v[7], v[8]));
        double l = Math.min(v[9], Math.min(v[10], v[11]));
        double ofWidth = fresh + Room.SCALE * Room.SCALE * w * w;
        double ofLength = fresh + Room.SCALE * Room.SCALE * l * l;
        y[5] = w;
        u[5] = StrictMath.sqrt(ofWidth);
        y[6] = l;
        u[6] = StrictMath.sqrt(ofLength);
        double width = w - Room.OFF_WIDTH;
        y[7] = width - Room.SIZE_WIDTH;
        u[7] = StrictMath.sqrt(ofWidth + Room.OFF_WIDTH_U * Room.OFF_WIDTH_U);
        double length = l - Room.OFF_LENGTH;
        y[8] = length - Room.SIZE_LENGTH;
        u[8] = StrictMath.sqrt(ofLength + Room.OFF_LENGTH_U * Room.OFF_LENGTH_U);
        y[9] = Room.MOST_WIDTH - width;
        u[9] = u[7];
        y[10] = Room.MOST_LENGTH - length;
        u[10] = u[8];
        y[11] = Room.MOST_AREA - width * length;
        double both = Room.SCALE * (w * length + l * width);
        u[11] = StrictMath.sqrt(length * length * (fresh + Room.OFF_WIDTH_U * Room.OFF_WIDTH_U)
                + width * width * (fresh + Room.OFF_LENGTH_U * Room.OFF_LENGTH_U)
                + both * both);
    }

    /** An error of the scale leaves an angle as it is. */
    private void angle(int i, double a, double b, double c) {
        double ab = a * b;
        double cos = (a * a + b * b - c * c) / (2 * ab);
        double over = 1 / (ab * StrictMath.sqrt((1 - cos) * (1 + cos)));
        double pa = b * cos - a;
        double pb = a * cos - b;
        y[i] = StrictMath.acos(cos);
        u[i] = Room.FRESH * over * StrictMath.sqrt(pa * pa + pb * pb + c * c);
    }
}
