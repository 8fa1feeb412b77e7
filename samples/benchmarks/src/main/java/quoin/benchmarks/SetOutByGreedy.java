package quoin.benchmarks;

/**
 * The holes of four sides in one pass, the farthest allowed place first: what one does by hand, and wrong where the farthest
 * place leads nowhere.
 */
final class SetOutByGreedy implements Work {
    static final double[] SIDES = {1495, 2391, 1495, 2391};
    static final double AIM = 100;
    static final double MOST_PITCH = 400;
    static final double[][] BARRED = {{720, 780}, {1180, 1240}};

    private final double[] at = new double[64];

    @Override
    public double once(int time) {
        double sum = 0;
        for (double side : SIDES) {
            sum += side(side - (time & 3));
        }
        return sum;
    }

    private double side(double length) {
        int n = 0;
        at[n] = AIM;
        double last = length - AIM;
        while (at[n] < last) {
            double next = Math.min(last, at[n] + MOST_PITCH);
            for (double[] barred : BARRED) {
                if (next > barred[0] && next < barred[1]) {
                    next = barred[0];
                }
            }
            at[++n] = next;
        }
        double sum = 0;
        for (int i = 0; i <= n; i++) {
            sum += at[i];
        }
        return sum;
    }
}
