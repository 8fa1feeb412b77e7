package quoin.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.measure.Estimate;
import quoin.measure.Uncertain;

/** How straight the sides are and how flat the depths lie, by the closest parallel lines or planes that hold them. */
final class Straightness {
    private Straightness() {}

    /** The side through its corners and the points that readings touch; empty where none is touched. */
    static Optional<Estimate> of(Opening opening, Side side) {
        Adjustment adjustment = opening.adjustment();
        Model model = adjustment.model();
        List<Uncertain> unknowns = adjustment.unknowns();
        double length = opening.front().length(side);
        List<LineFit.Station> stations = new ArrayList<>();
        for (TouchedPoint point : model.touched()) {
            if (point.side() == side && point.read()) {
                Uncertain offset = unknowns.get(model.offsetIndex(point));
                stations.add(new LineFit.Station(point.on(length) * length, offset));
            }
        }
        if (stations.isEmpty()) {
            return Optional.empty();
        }
        stations.add(new LineFit.Station(0, Uncertain.exact(0)));
        stations.add(new LineFit.Station(length, Uncertain.exact(0)));
        return Optional.of(LineFit.minimumZone(stations));
    }

    /** The depths that were read, at the corners and in the middle; empty where there are fewer than four. */
    static Optional<Estimate> flatness(Opening opening) {
        List<PlaneFit.Point> points = new ArrayList<>();
        double x = 0;
        double y = 0;
        for (Corner corner : Corner.values()) {
            Outline.Vertex at = opening.front().corner(corner);
            x += at.x().value() / 4;
            y += at.y().value() / 4;
            add(points, opening, corner.text(), at.x().value(), at.y().value());
        }
        add(points, opening, "middle", x, y);
        return points.size() < 4 ? Optional.empty() : Optional.of(PlaneFit.minimumZone(points));
    }

    private static void add(List<PlaneFit.Point> points, Opening opening, String place, double x, double y) {
        opening.survey().mean(new Span.Depth(place)).ifPresent(depth -> points.add(new PlaneFit.Point(x, y, depth)));
    }
}
