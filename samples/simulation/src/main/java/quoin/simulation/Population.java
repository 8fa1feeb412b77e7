package quoin.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;
import quoin.opening.Opening;
import quoin.opening.Reading;
import quoin.opening.Survey;

/** Openings about 1500 by 2400 mm, each corner out of its place by so much, and readings of them. */
final class Population {
    static final double FRESH = 0.5;
    private static final double WIDTH = 1500;
    private static final double LENGTH = 2400;
    private static final List<String> SIX = List.of(
            "width@head", "length@right", "width@foot", "length@left", "diagonal@head-left", "diagonal@head-right");
    private static final int[][] BETWEEN = {{0, 1}, {1, 2}, {3, 2}, {0, 3}, {0, 2}, {1, 3}};
    private static final Instrument TAPE = instrument("tape", FRESH);
    private static final Instrument TRUTH = instrument("truth", 1e-3);

    private final double spread;
    private final SplittableRandom random;
    private final double[][] corners = new double[4][2];

    /**
     * @param spread the standard deviation of each of the five unknowns, in mm
     * @param seed of everything that is drawn
     */
    Population(double spread, long seed) {
        this.spread = spread;
        this.random = new SplittableRandom(seed);
    }

    private static Instrument instrument(String id, double u) {
        return Instrument.of(id, Instrument.Kind.STATED).withEach(List.of(Doubt.standard(u, Dimension.LENGTH)));
    }

    /** The next opening: head-left in the origin, head-right on the x axis. */
    void next() {
        corners[1][0] = WIDTH + spread * normal();
        corners[2][0] = WIDTH + spread * normal();
        corners[2][1] = LENGTH + spread * normal();
        corners[3][0] = spread * normal();
        corners[3][1] = LENGTH + spread * normal();
    }

    double normal() {
        double u;
        double v;
        double square;
        do {
            u = 2 * random.nextDouble() - 1;
            v = 2 * random.nextDouble() - 1;
            square = u * u + v * v;
        } while (square >= 1 || square == 0);
        return u * StrictMath.sqrt(-2 * StrictMath.log(square) / square);
    }

    int upTo(int bound) {
        return random.nextInt(bound);
    }

    /** The opening as it is, to a thousandth. */
    Opening truth() {
        return opening(TRUTH, 0, -1, 0);
    }

    /** The opening as it was read, one reading misread by so much. */
    Opening read(int misread, double slip) {
        return opening(TAPE, FRESH, misread, slip);
    }

    private Opening opening(Instrument by, double doubt, int misread, double slip) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < SIX.size(); i++) {
            double[] a = corners[BETWEEN[i][0]];
            double[] b = corners[BETWEEN[i][1]];
            double length = StrictMath.hypot(b[0] - a[0], b[1] - a[1]);
            double error = doubt > 0 ? doubt * normal() : 0;
            readings.add(Reading.of(SIX.get(i), by, length + error + (i == misread ? slip : 0)));
        }
        return Opening.of(Survey.finished(readings, Double.NaN));
    }
}
