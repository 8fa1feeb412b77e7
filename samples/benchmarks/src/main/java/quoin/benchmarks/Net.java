package quoin.benchmarks;

import java.util.ArrayList;
import java.util.List;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;
import quoin.measure.TapeClass;
import quoin.opening.Reading;
import quoin.opening.Survey;

/**
 * One opening of 2400 by 1500 mm, a little out of square: the six usual readings, or twelve with widths and lengths at
 * the quarters. Sides are straight, so that the outline has five unknowns, unless a survey says otherwise.
 *
 * <p>A reading joins two points of the outline, each a mean of two corners: what it joins is a weighted sum of corners.
 */
final class Net {
    static final int SIX = 6;
    static final int TWELVE = 12;

    /** How many sets of readings take turns. */
    static final int SETS = 64;

    /** The standard uncertainty of a reading in mm. */
    static final double U = 1;

    /** Sides that are straight within this, in mm, where they may bulge. */
    static final double BOW = 2;

    private static final List<String> OF = List.of(
            "width@head",
            "length@right",
            "width@foot",
            "length@left",
            "diagonal@head-left",
            "diagonal@head-right",
            "width@1/4",
            "width@1/2",
            "width@3/4",
            "length@1/4",
            "length@1/2",
            "length@3/4");

    /** Of head-right, foot-right and foot-left; head-left is the origin. */
    private static final double[][] CORNERS = {
        {1, 0, 0},
        {-1, 1, 0},
        {0, 1, -1},
        {0, 0, 1},
        {0, 1, 0},
        {-1, 0, 1},
        {0.75, 0.25, -0.25},
        {0.5, 0.5, -0.5},
        {0.25, 0.75, -0.75},
        {-0.25, 0.25, 0.75},
        {-0.5, 0.5, 0.5},
        {-0.75, 0.75, 0.25}
    };

    private static final double[] READ = {2400, 1503, 2411, 1498, 2838, 2833, 2403, 2405, 2409, 1499, 1501, 1502};

    private Net() {}

    /** The weights of the corners in each of the first readings. */
    static double[][] corners(int count) {
        double[][] weights = new double[count][];
        for (int i = 0; i < count; i++) {
            weights[i] = CORNERS[i].clone();
        }
        return weights;
    }

    /** The readings, the first a little longer each time. */
    static void read(double[] into, int time) {
        System.arraycopy(READ, 0, into, 0, into.length);
        into[0] += time % SETS * 1e-3;
    }

    /** The same as surveys: 1 mm for each reading and nothing shared, straight sides. */
    static List<Survey> straight(int count) {
        Doubt doubt = Doubt.standard(U, Dimension.LENGTH);
        Instrument by = Instrument.of("rule", Instrument.Kind.STATED).withEach(List.of(doubt));
        return surveys(count, by, 0);
    }

    /** The usual survey: a tape of class II that is read to 1 mm, sides straight within some mm. */
    static List<Survey> usual(int count, double straightWithinMm) {
        Instrument by = Instrument.of("tape", Instrument.Kind.TAPE)
                .withAccuracyClass(TapeClass.II)
                .withEach(List.of(Doubt.standard(0.8, Dimension.LENGTH)))
                .withStep(1);
        return surveys(count, by, straightWithinMm);
    }

    private static List<Survey> surveys(int count, Instrument by, double straightWithinMm) {
        List<Survey> surveys = new ArrayList<>();
        double[] values = new double[count];
        for (int time = 0; time < SETS; time++) {
            read(values, time);
            List<Reading> readings = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                readings.add(Reading.of(OF.get(i), by, values[i]));
            }
            surveys.add(Survey.finished(readings, straightWithinMm));
        }
        return surveys;
    }
}
