package quoin.opening;

import java.util.ArrayList;
import java.util.List;

/** Which readings, beside those that determine the outline in front, a figure cannot do without. */
final class FigureNeeds {
    private static final At MIDDLE = At.parse("1/2");

    private final Survey survey;
    private final List<Span> cannot;

    FigureNeeds(Survey survey, List<Span> cannot) {
        this.survey = survey;
        this.cannot = List.copyOf(cannot);
    }

    /** What a figure hangs on and the survey does not have; nothing for a figure of the outline in front. */
    List<Survey.Place> of(String figure, Side roller) {
        return switch (figure) {
            case "opening.twist", "opening.flatness" -> cornerDepths();
            case "opening.depth.least" -> anyDepth();
            case "roller.fall" ->
                without(List.of(new Survey.Place(new Span.Fall(roller == Side.FOOT ? Side.FOOT : Side.HEAD))));
            default -> ofSide(figure);
        };
    }

    private List<Survey.Place> ofSide(String figure) {
        for (Side side : Side.values()) {
            boolean straight =
                    figure.equals("opening.bow." + side.text()) || figure.equals("opening.straight." + side.text());
            if (straight && !isTouched(side, Plane.FRONT)) {
                return firstOf(List.of(new Survey.Place(new Span.Bow(side, MIDDLE)), across(side, Plane.FRONT)));
            }
            if (figure.equals("opening.splay." + side.text()) && !isTouched(side, Plane.BACK)) {
                return List.of(across(side, Plane.BACK));
            }
        }
        return List.of();
    }

    private static Survey.Place across(Side side, Plane plane) {
        boolean upright = side == Side.LEFT || side == Side.RIGHT;
        return new Survey.Place(new Span.Across(upright ? Side.LEFT : Side.HEAD, MIDDLE), plane);
    }

    private List<Survey.Place> cornerDepths() {
        return without(depths());
    }

    /** One depth is enough for a least. */
    private List<Survey.Place> anyDepth() {
        if (survey.readings().stream().anyMatch(reading -> reading.of() instanceof Span.Depth)) {
            return List.of();
        }
        List<Survey.Place> any = new ArrayList<>(depths());
        any.add(new Survey.Place(new Span.Depth("middle")));
        return firstOf(any);
    }

    private static List<Survey.Place> depths() {
        List<Survey.Place> depths = new ArrayList<>();
        for (Corner corner : Corner.values()) {
            depths.add(new Survey.Place(new Span.Depth(corner.text())));
        }
        return depths;
    }

    private List<Survey.Place> without(List<Survey.Place> places) {
        return places.stream().filter(place -> !survey.has(place)).toList();
    }

    /** The first that can be read; the first where none can. */
    private List<Survey.Place> firstOf(List<Survey.Place> places) {
        return List.of(places.stream()
                .filter(place -> !cannot.contains(place.of()))
                .findFirst()
                .orElse(places.get(0)));
    }

    /** Whether a reading of that plane tells of a side away from its corners, or, behind, of its place at all. */
    private boolean isTouched(Side side, Plane plane) {
        return survey.outline(plane).stream()
                .anyMatch(reading -> Model.touchedBy(reading.of()).stream().anyMatch(point -> point.side() == side)
                        || (plane == Plane.BACK && reading.of() instanceof Span.Edge edge && ends(edge.side(), side)));
    }

    /** Whether the length of one side ends at the other. */
    private static boolean ends(Side edge, Side side) {
        return side.touches(edge.from()) != side.touches(edge.to());
    }
}
