package quoin.chain;

import java.util.List;
import quoin.judge.Catalogue;
import quoin.judge.Figure;
import quoin.judge.Source;
import quoin.measure.Dimension;
import quoin.measure.Uncertain;

/** The figures of a frame: one function each, and the catalogue of them. */
public final class FrameFigures {
    private FrameFigures() {}

    /** The figures that this room computes. */
    public static final Catalogue CATALOGUE = Catalogue.of(List.of(Figure.order(
            "frame.area",
            Dimension.AREA,
            "frame.width times frame.length",
            Source.of(Source.Kind.STANDARD, "plane geometry"),
            "frame.width",
            "frame.length")));

    /**
     * The area a frame covers.
     *
     * @param width its width in mm
     * @param length its length in mm
     * @return the area
     * @figure frame.area
     * @formula width · length
     * @unit mm2
     * @edge carries the doubt of the cut of both
     * @source standard: plane geometry
     */
    public static Uncertain area(Uncertain width, Uncertain length) {
        return width.times(length);
    }
}
