package quoin.job;

import java.util.List;
import quoin.chain.FrameFigures;
import quoin.clearance.HeatGaps;
import quoin.clearance.WayIn;
import quoin.judge.Catalogue;
import quoin.judge.Figure;
import quoin.judge.Source;
import quoin.measure.Dimension;
import quoin.opening.OpeningFigures;

/** The union of the catalogues: every figure that the library can name. */
public final class Figures {
    private Figures() {}

    private static final Source LATER =
            Source.of(Source.Kind.ASSUMPTION, "named from the start, computed by no room yet");

    /** Figures that are named from the start and that no room computes yet. */
    public static final Catalogue PLANNED = Catalogue.of(List.of(
            planned("frame.mass", Dimension.MASS, "mass of frame, head box, bar and fabric"),
            planned("fixing.load.worst", Dimension.FORCE, "load on the worst fixing"),
            planned("roll.diameter", Dimension.LENGTH, "diameter of the full roll"),
            planned("tube.deflection", Dimension.LENGTH, "deflection of the tube"),
            planned("fabric.sag", Dimension.LENGTH, "sag of the fabric"),
            planned("drive.torque", Dimension.TORQUE, "torque the drive needs"),
            planned("drive.runs", Dimension.RATIO, "runs within the rated time"),
            planned("cable.drop", Dimension.VOLTAGE, "voltage lost in the cable")));

    /** Figures that hang on facts of the job beside its readings: without these they are not verified. */
    static final Catalogue OF_FACTS = HeatGaps.CATALOGUE.union(WayIn.CATALOGUE);

    /** Every figure that the library can name, computed or planned. */
    public static final Catalogue CATALOGUE = OpeningFigures.CATALOGUE
            .union(FrameFigures.CATALOGUE)
            .union(OF_FACTS)
            .union(PLANNED);

    private static Figure planned(String id, Dimension dimension, String formula) {
        return Figure.order(id, dimension, formula, LATER);
    }
}
