package quoin.opening;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import quoin.judge.Catalogue;
import quoin.judge.Figure;
import quoin.judge.Source;
import quoin.measure.Dimension;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;

/** The figures of an opening: one function each, and the catalogue of them. */
public final class OpeningFigures {
    private OpeningFigures() {}

    /** The figures that this room computes. */
    public static final Catalogue CATALOGUE = catalogue();

    /** The figures that take four depths. */
    private static final Set<String> OF_FOUR_DEPTHS = Set.of("opening.twist", "opening.flatness");

    /** The figures that hang on depths and falls alone, whatever the outline. */
    private static final Set<String> OF_DEPTHS =
            Set.of("opening.twist", "opening.flatness", "opening.depth.least", "roller.fall");

    private static final double RIGHT_ANGLE = Math.PI / 2;

    private static Catalogue catalogue() {
        Source plane = Source.of(Source.Kind.STANDARD, "plane geometry of the adjusted outline");
        List<Figure> figures = new ArrayList<>();
        figures.add(Figure.survey(
                "opening.width.least", Dimension.LENGTH, "least width at any read place, in any plane", plane));
        figures.add(Figure.survey(
                "opening.length.least", Dimension.LENGTH, "least length at any read place, in any plane", plane));
        figures.add(Figure.survey(
                "opening.diagonal.difference",
                Dimension.LENGTH,
                "diagonal at head-left minus diagonal at head-right",
                plane));
        for (Corner corner : Corner.values()) {
            String name = "opening.corner." + corner.text();
            figures.add(Figure.survey(name + ".angle", Dimension.ANGLE, "angle between the two sides", plane));
            figures.add(Figure.survey(name + ".departure", Dimension.ANGLE, "angle minus 90 degrees", plane));
        }
        figures.add(Figure.survey(
                "opening.square.worst", Dimension.ANGLE, "the departure largest in size, with its sign", plane));
        for (Side side : Side.values()) {
            figures.add(Figure.survey(
                    "opening.bow." + side.text(), Dimension.LENGTH, "offset of the side from its chord", plane));
            figures.add(Figure.survey(
                    "opening.splay." + side.text(), Dimension.LENGTH, "how far the back stands further in", plane));
        }
        figures.add(Figure.survey("opening.twist", Dimension.LENGTH, "depths HL + FR - HR - FL", plane));
        figures.add(Figure.survey("opening.depth.least", Dimension.LENGTH, "least depth that was read", plane));
        figures.add(Figure.survey("roller.fall", Dimension.LENGTH, "fall of the side that the roller is at", plane));
        figures.add(Figure.survey("fit.width", Dimension.LENGTH, "width of the largest rectangle as held", plane));
        figures.add(Figure.survey("fit.length", Dimension.LENGTH, "length of the largest rectangle as held", plane));
        figures.add(Figure.survey(
                "fit.turned.width",
                Dimension.LENGTH,
                "width of the largest rectangle turned within 2 degrees of the head",
                plane));
        figures.add(Figure.survey(
                "fit.turned.length",
                Dimension.LENGTH,
                "length of the largest rectangle turned within 2 degrees of the head",
                plane));
        figures.add(Figure.survey("fit.rule.width", Dimension.LENGTH, "least width that was read", Source.PRACTICE));
        figures.add(Figure.survey("fit.rule.length", Dimension.LENGTH, "least length that was read", Source.PRACTICE));
        for (Corner corner : Corner.values()) {
            String name = "opening.corner." + corner.text() + ".offset";
            figures.add(Figure.survey(name, Dimension.LENGTH, "longer leg times sine of the departure", plane));
        }
        figures.add(Figure.survey(
                "opening.square.offset", Dimension.LENGTH, "the offset largest in size, with its sign", plane));
        figures.add(Figure.survey("opening.taper.width", Dimension.LENGTH, "width at head minus at foot", plane));
        figures.add(Figure.survey("opening.taper.length", Dimension.LENGTH, "length on the left minus right", plane));
        for (Side side : Side.values()) {
            figures.add(Figure.survey(
                    "opening.straight." + side.text(), Dimension.LENGTH, "minimum zone of the touched points", plane));
        }
        figures.add(Figure.survey("opening.flatness", Dimension.LENGTH, "minimum zone of the depths", plane));
        for (String way : List.of("width", "length")) {
            figures.add(Figure.survey(
                    "opening." + way + ".nominal",
                    Dimension.LENGTH,
                    way + " that the opening was drawn with",
                    Source.of(Source.Kind.DECLARED, "nominal of the job")));
            figures.add(Figure.survey(
                    "opening." + way + ".deviation",
                    Dimension.LENGTH,
                    way + " at any read place of the front minus the nominal, the largest in size with its sign",
                    plane));
        }
        figures.add(Figure.order("gap.least", Dimension.LENGTH, "largest least gap of any placement as held", plane));
        figures.add(Figure.order(
                "gap.greatest", Dimension.LENGTH, "widest gap of the balanced placement", Source.PRACTICE));
        figures.add(Figure.order(
                "gap.rule.least",
                Dimension.LENGTH,
                "gap.least of the frame that the least reading each way would give",
                Source.PRACTICE));
        figures.add(Figure.order(
                "gap.turned.least",
                Dimension.LENGTH,
                "largest least gap of any placement turned within 2 degrees of the head",
                plane));
        figures.add(Figure.order(
                "gap.turned.greatest",
                Dimension.LENGTH,
                "widest gap of the balanced placement at the best angle",
                Source.PRACTICE));
        for (Side side : Side.values()) {
            for (Corner corner : List.of(side.from(), side.to())) {
                String name = "gap." + side.text() + "@" + corner.text();
                figures.add(Figure.order(name, Dimension.LENGTH, "gap of the balanced placement", Source.PRACTICE));
            }
        }
        return Catalogue.of(figures);
    }

    /**
     * Whether the readings that a figure hangs on can be right together.
     *
     * @param opening the opening
     * @param figure a figure of the opening, of what fits in it, or of a frame in it
     * @return false where they disagree
     */
    public static boolean isAccepted(Opening opening, String figure) {
        boolean outline = OF_DEPTHS.contains(figure)
                || !opening.hasShape()
                || opening.adjustment().isAccepted();
        return outline && planes(opening, figure).allMatch(PlaneTest::isAccepted);
    }

    /**
     * Whether four depths are all that a figure hangs on: no one of them is then checked by the others, and a misread one
     * looks like a twist.
     *
     * @param opening the opening
     * @param figure a figure
     * @return true for {@code opening.twist} and {@code opening.flatness} where nothing checks the depths
     */
    public static boolean hangsOnUncheckedDepths(Opening opening, String figure) {
        return OF_FOUR_DEPTHS.contains(figure) && planes(opening, figure).allMatch(plane -> plane.redundancy() == 0);
    }

    /**
     * The readings, beside those that determine the outline in front, that a figure cannot do without and that were not
     * taken: depths at the corners for a twist, the fall at the roller, a reading that touches the side for a bow, one behind
     * for a splay.
     *
     * @param survey what was read
     * @param figure a figure
     * @param roller the side the roller is at
     * @param cannot what cannot be read, in either plane; where something else does as well, that is named
     * @return what is missing for it; empty where nothing is, and for figures of the outline in front
     */
    public static List<Survey.Place> missing(Survey survey, String figure, Side roller, List<Span> cannot) {
        return new FigureNeeds(survey, cannot).of(figure, roller);
    }

    /** The planes besides the front that a figure hangs on. */
    private static Stream<PlaneTest> planes(Opening opening, String figure) {
        boolean depths = OF_DEPTHS.contains(figure);
        return opening.planes().stream().filter(plane -> plane.plane().equals(DepthPlane.NAME) == depths);
    }

    /**
     * Every survey figure that the readings determine, the frame held parallel to the head.
     *
     * @param opening the opening
     * @param roller the side the roller is at
     * @return the figures by name, in the order of the catalogue
     */
    public static Map<String, Estimate> survey(Opening opening, Side roller) {
        return survey(opening, roller, Held.TO_HEAD);
    }

    /**
     * Every survey figure that the readings determine.
     *
     * @param opening the opening
     * @param roller the side the roller is at
     * @param held how the frame lies, for {@code fit.width} and {@code fit.length}
     * @return the figures by name, in the order of the catalogue
     */
    public static Map<String, Estimate> survey(Opening opening, Side roller, Held held) {
        Map<String, Estimate> figures = new LinkedHashMap<>();
        if (opening.hasShape()) {
            figures.put("opening.width.least", leastWidth(opening));
            figures.put("opening.length.least", leastLength(opening));
            figures.put("opening.diagonal.difference", diagonalDifference(opening));
            for (Corner corner : Corner.values()) {
                figures.put("opening.corner." + corner.text() + ".angle", cornerAngle(opening, corner));
                figures.put("opening.corner." + corner.text() + ".departure", departure(opening, corner));
            }
            figures.put("opening.square.worst", worstDeparture(opening));
            for (Side side : Side.values()) {
                bow(opening, side).ifPresent(bow -> figures.put("opening.bow." + side.text(), bow));
                splay(opening, side).ifPresent(splay -> figures.put("opening.splay." + side.text(), splay));
            }
            for (Corner corner : Corner.values()) {
                figures.put("opening.corner." + corner.text() + ".offset", Squareness.offset(opening, corner));
            }
            figures.put("opening.square.offset", Squareness.worstOffset(opening));
            figures.put("opening.taper.width", Squareness.taperOfWidth(opening));
            figures.put("opening.taper.length", Squareness.taperOfLength(opening));
            for (Side side : Side.values()) {
                Straightness.of(opening, side).ifPresent(zone -> figures.put("opening.straight." + side.text(), zone));
            }
            Straightness.flatness(opening).ifPresent(zone -> figures.put("opening.flatness", zone));
            Fit.largest(opening, held).ifPresent(rectangle -> {
                figures.put("fit.width", rectangle.width());
                figures.put("fit.length", rectangle.length());
            });
            Fit.largest(opening, Held.FREELY).ifPresent(rectangle -> {
                figures.put("fit.turned.width", rectangle.width());
                figures.put("fit.turned.length", rectangle.length());
            });
        }
        twist(opening.survey()).ifPresent(twist -> figures.put("opening.twist", twist));
        leastDepth(opening.survey()).ifPresent(depth -> figures.put("opening.depth.least", depth));
        fall(opening.survey(), roller).ifPresent(fall -> figures.put("roller.fall", fall));
        leastRead(opening.survey(), Side.LEFT).ifPresent(least -> figures.put("fit.rule.width", least));
        leastRead(opening.survey(), Side.HEAD).ifPresent(least -> figures.put("fit.rule.length", least));
        return figures;
    }

    /**
     * The least width of the opening.
     *
     * @param opening an opening with a shape
     * @return a least over the corners and every touched place, in every plane that was read
     * @figure opening.width.least
     * @formula min over places of the distance between left and right side
     * @unit mm
     * @edge without a touched place: at the head, the foot and the middle
     * @source standard: distance between two points
     */
    public static Extreme leastWidth(Opening opening) {
        return leastAcross(opening, Side.LEFT, Side.RIGHT, "width@");
    }

    /**
     * The least length of the opening.
     *
     * @param opening an opening with a shape
     * @return a least over the corners and every touched place, in every plane that was read
     * @figure opening.length.least
     * @formula min over places of the distance between head and foot
     * @unit mm
     * @edge without a touched place: at the left, the right and the middle
     * @source standard: distance between two points
     */
    public static Extreme leastLength(Opening opening) {
        return leastAcross(opening, Side.HEAD, Side.FOOT, "length@");
    }

    /**
     * What the opening was drawn with and how far it departs from that.
     *
     * @param opening the opening
     * @param widthMm its nominal width in mm; NaN where not stated
     * @param lengthMm its nominal length in mm; NaN where not stated
     * @return {@code opening.width.nominal}, {@code .deviation} and those of the length, as far as they are stated and the
     *     readings determine a shape
     */
    public static Map<String, Estimate> againstNominal(Opening opening, double widthMm, double lengthMm) {
        Map<String, Estimate> figures = new LinkedHashMap<>();
        if (!Double.isNaN(widthMm)) {
            figures.put("opening.width.nominal", Uncertain.exact(widthMm));
        }
        if (!Double.isNaN(lengthMm)) {
            figures.put("opening.length.nominal", Uncertain.exact(lengthMm));
        }
        if (!Double.isNaN(widthMm) && opening.hasShape()) {
            figures.put("opening.width.deviation", widthDeviation(opening, widthMm));
        }
        if (!Double.isNaN(lengthMm) && opening.hasShape()) {
            figures.put("opening.length.deviation", lengthDeviation(opening, lengthMm));
        }
        return figures;
    }

    /**
     * How far the width of the opening departs from what it was drawn with.
     *
     * @param opening an opening with a shape
     * @param nominalMm the nominal width in mm
     * @return the departure largest in size over the corners and every touched place of the front, with its sign; its odds
     *     are those of all places together
     * @figure opening.width.deviation
     * @formula the (width at a place − nominal) of largest absolute value
     * @unit mm
     * @edge without a touched place: at the head, the foot and the middle; no nominal: not determined
     * @source standard: deviation from a target size (ISO 1803:1997, from its abstract); limits of it, by nominal size, are
     *     tables of a rulebook
     */
    public static Extreme widthDeviation(Opening opening, double nominalMm) {
        return deviation(across(opening.front(), Side.LEFT, Side.RIGHT, "width@", ""), nominalMm);
    }

    /**
     * How far the length of the opening departs from what it was drawn with.
     *
     * @param opening an opening with a shape
     * @param nominalMm the nominal length in mm
     * @return the departure largest in size over the corners and every touched place of the front, with its sign; its odds
     *     are those of all places together
     * @figure opening.length.deviation
     * @formula the (length at a place − nominal) of largest absolute value
     * @unit mm
     * @edge without a touched place: at the left, the right and the middle; no nominal: not determined
     * @source standard: deviation from a target size (ISO 1803:1997, from its abstract); limits of it, by nominal size, are
     *     tables of a rulebook
     */
    public static Extreme lengthDeviation(Opening opening, double nominalMm) {
        return deviation(across(opening.front(), Side.HEAD, Side.FOOT, "length@", ""), nominalMm);
    }

    private static Extreme deviation(List<Extreme.Part> across, double nominalMm) {
        return Extreme.largestInSize(across.stream()
                .map(part -> new Extreme.Part(part.names(), part.value().minus(nominalMm)))
                .toList());
    }

    private static Extreme leastAcross(Opening opening, Side start, Side end, String prefix) {
        List<Extreme.Part> parts = new ArrayList<>();
        for (Outline outline : opening.outlines()) {
            parts.addAll(across(outline, start, end, prefix, parts.isEmpty() ? "" : "/back"));
        }
        return Extreme.least(parts);
    }

    private static List<Extreme.Part> across(Outline outline, Side start, Side end, String prefix, String suffix) {
        List<Extreme.Part> parts = new ArrayList<>();
        TreeSet<Double> places = new TreeSet<>();
        outline.side(start).forEach(v -> places.add(v.along()));
        outline.side(end).forEach(v -> places.add(v.along()));
        for (double along : places) {
            Outline.Vertex a = outline.on(start, along, "");
            Outline.Vertex b = outline.on(end, along, "");
            parts.add(new Extreme.Part(List.of(prefix + name(outline, start, end, along) + suffix), a.distanceTo(b)));
        }
        return parts;
    }

    private static String name(Outline outline, Side start, Side end, double along) {
        if (along == 0 || along == 1) {
            boolean first = along == 0;
            return start == Side.LEFT ? (first ? "head" : "foot") : (first ? "left" : "right");
        }
        for (Side side : List.of(start, end)) {
            for (Outline.Vertex v : outline.side(side)) {
                if (v.along() == along) {
                    return v.at();
                }
            }
        }
        return Double.toString(along);
    }

    /**
     * How much longer the diagonal from head-left is than the one from head-right.
     *
     * @param opening an opening with a shape
     * @return the difference, signed
     * @figure opening.diagonal.difference
     * @formula |HL−FR| − |HR−FL|
     * @unit mm
     * @edge equal diagonals do not prove a rectangle: a symmetric taper has them too
     * @source standard: plane geometry
     */
    public static Uncertain diagonalDifference(Opening opening) {
        return diagonal(opening, Corner.HEAD_LEFT).minus(diagonal(opening, Corner.HEAD_RIGHT));
    }

    private static Uncertain diagonal(Opening opening, Corner from) {
        return opening.front().corner(from).distanceTo(opening.front().corner(from.opposite()));
    }

    /**
     * The angle inside a corner, between the chords of its two sides.
     *
     * @param opening an opening with a shape
     * @param corner the corner
     * @return the angle
     * @figure opening.corner.CORNER.angle
     * @formula atan2(cross, dot) of the two chords
     * @unit rad
     * @edge the four angles add up to 360 degrees
     * @source standard: plane geometry
     */
    public static Uncertain cornerAngle(Opening opening, Corner corner) {
        Outline.Vertex at = opening.front().corner(corner);
        Outline.Vertex after = opening.front().corner(corner.next());
        Outline.Vertex before = opening.front().corner(corner.previous());
        Uncertain px = after.x().minus(at.x());
        Uncertain py = after.y().minus(at.y());
        Uncertain qx = before.x().minus(at.x());
        Uncertain qy = before.y().minus(at.y());
        Uncertain cross = px.times(qy).minus(py.times(qx));
        Uncertain dot = px.times(qx).plus(py.times(qy));
        return Uncertain.atan2(cross, dot);
    }

    /**
     * How far a corner is from a right angle.
     *
     * @param opening an opening with a shape
     * @param corner the corner
     * @return the angle minus 90 degrees, signed: positive is open
     * @figure opening.corner.CORNER.departure
     * @formula angle − π/2
     * @unit rad
     * @edge 0 for a right angle
     * @source standard: plane geometry
     */
    public static Uncertain departure(Opening opening, Corner corner) {
        return cornerAngle(opening, corner).minus(RIGHT_ANGLE);
    }

    /**
     * The departure from a right angle that is largest in size.
     *
     * @param opening an opening with a shape
     * @return all four departures; its value is the one largest in size, with its sign
     * @figure opening.square.worst
     * @formula the departure of largest absolute value
     * @unit rad
     * @edge its odds are those of all four corners together
     * @source standard: plane geometry
     */
    public static Extreme worstDeparture(Opening opening) {
        List<Extreme.Part> parts = new ArrayList<>();
        for (Corner corner : Corner.values()) {
            String name = "opening.corner." + corner.text() + ".departure";
            parts.add(new Extreme.Part(List.of(name), departure(opening, corner)));
        }
        return Extreme.largestInSize(parts);
    }

    private static Optional<Estimate> bow(Opening opening, Side side) {
        Adjustment adjustment = opening.adjustment();
        List<Uncertain> unknowns = adjustment.unknowns();
        List<Extreme.Part> parts = new ArrayList<>();
        for (TouchedPoint point : adjustment.model().touched()) {
            if (point.side() == side && point.read()) {
                Uncertain offset = unknowns.get(adjustment.model().offsetIndex(point));
                parts.add(new Extreme.Part(
                        List.of("bow@" + side.text() + ":" + point.at().text()), offset));
            }
        }
        return largest(parts);
    }

    private static Optional<Estimate> splay(Opening opening, Side side) {
        List<Extreme.Part> parts = new ArrayList<>();
        opening.back().ifPresent(back -> {
            Uncertain[] normal = opening.front().inward(side);
            for (Outline.Vertex v : back.outline().side(side)) {
                Outline.Vertex ahead = opening.front().on(side, v.along(), v.at());
                Uncertain in = v.x().minus(ahead.x())
                        .times(normal[0])
                        .plus(v.y().minus(ahead.y()).times(normal[1]));
                parts.add(new Extreme.Part(List.of(side.text() + "@" + v.at() + "/back"), in));
            }
        });
        return largest(parts);
    }

    private static Optional<Estimate> largest(List<Extreme.Part> parts) {
        if (parts.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(parts.size() == 1 ? parts.get(0).value() : Extreme.largestInSize(parts));
    }

    /** Depths at four corners; their alternating sum tells a twist from a tilt. */
    private static Optional<Uncertain> twist(Survey survey) {
        Uncertain sum = Uncertain.exact(0);
        for (Corner corner : Corner.values()) {
            Optional<Uncertain> depth = survey.mean(new Span.Depth(corner.text()));
            if (depth.isEmpty()) {
                return Optional.empty();
            }
            boolean plus = corner == Corner.HEAD_LEFT || corner == Corner.FOOT_RIGHT;
            sum = plus ? sum.plus(depth.get()) : sum.minus(depth.get());
        }
        return Optional.of(sum);
    }

    private static Optional<Extreme> leastDepth(Survey survey) {
        List<Extreme.Part> parts = new ArrayList<>();
        for (Reading reading : survey.readings()) {
            String name = reading.of().text();
            boolean known = parts.stream().anyMatch(part -> part.names().get(0).equals(name));
            if (reading.of() instanceof Span.Depth && !known) {
                survey.mean(reading.of()).ifPresent(mean -> parts.add(new Extreme.Part(List.of(name), mean)));
            }
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of(Extreme.least(parts));
    }

    private static Optional<Uncertain> fall(Survey survey, Side roller) {
        return survey.mean(new Span.Fall(roller == Side.FOOT ? Side.FOOT : Side.HEAD));
    }

    /** What people go by: the least of all readings across, whatever the shape. */
    private static Optional<Extreme> leastRead(Survey survey, Side across) {
        List<Extreme.Part> parts = new ArrayList<>();
        for (int i = 0; i < survey.readings().size(); i++) {
            Reading reading = survey.readings().get(i);
            boolean edge = reading.of() instanceof Span.Edge e
                    && (e.side() == Side.HEAD || e.side() == Side.FOOT) == (across == Side.LEFT);
            boolean inside = reading.of() instanceof Span.Across a && a.across() == across;
            if (edge || inside) {
                for (Uncertain value : survey.observed(i)) {
                    parts.add(new Extreme.Part(List.of(reading.name()), value));
                }
            }
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of(Extreme.least(parts));
    }

    /**
     * Every gap round a frame that has a name.
     *
     * @param gaps the gaps round a frame
     * @return the figures by name
     */
    public static Map<String, Estimate> order(Gaps gaps) {
        Map<String, Estimate> figures = new LinkedHashMap<>();
        figures.put("gap.least", Gaps.least(gaps));
        figures.put("gap.greatest", Gaps.greatest(gaps));
        figures.putAll(Gaps.single(gaps));
        return figures;
    }

    /**
     * The least and the widest gap round a frame that may turn.
     *
     * @param gaps the gaps round a frame that is turned freely
     * @return the figures by name
     */
    public static Map<String, Estimate> turned(Gaps gaps) {
        Map<String, Estimate> figures = new LinkedHashMap<>();
        figures.put("gap.turned.least", Gaps.least(gaps));
        figures.put("gap.turned.greatest", Gaps.greatest(gaps));
        return figures;
    }
}
