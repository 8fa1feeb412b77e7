package quoin.rulebook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.judge.Catalogue;
import quoin.judge.DecisionRule;
import quoin.judge.Figure;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Estimate;
import quoin.measure.Influence;
import quoin.measure.Uncertain;
import quoin.parts.Declared;
import quoin.parts.Drive;
import quoin.parts.Fastener;
import quoin.parts.Parts;
import quoin.parts.Pull;
import quoin.parts.Substrate;

/** The invented rulebook of the demonstration, built by hand, and figures to decide it with. */
final class Sample {
    static final Source ASSUMED = Source.of(Source.Kind.ASSUMPTION, "");
    static final Map<String, String> CHOICES = Map.of("drive", "drive-m");

    static final Catalogue CATALOGUE = Catalogue.of(List.of(
            Figure.survey("fit.width", Dimension.LENGTH, "w", Source.PRACTICE),
            Figure.survey("fit.length", Dimension.LENGTH, "l", Source.PRACTICE),
            Figure.survey("opening.diagonal.difference", Dimension.LENGTH, "d1 - d2", Source.PRACTICE),
            Figure.survey("opening.corner.head-left.angle", Dimension.ANGLE, "a", Source.PRACTICE),
            Figure.order("gap.least", Dimension.LENGTH, "g", Source.PRACTICE),
            Figure.order("gap.greatest", Dimension.LENGTH, "g", Source.PRACTICE),
            Figure.order("frame.area", Dimension.AREA, "w l", Source.PRACTICE)));

    private Sample() {}

    static Amount mm(double value) {
        return new Amount(value, Dimension.LENGTH);
    }

    static Quota fixed(double mm) {
        return Quota.fixed(mm(mm));
    }

    static Item item(double mm, double times) {
        return new Item(fixed(mm), times, "", Source.UNSTATED);
    }

    static Item item(Quota quota) {
        return new Item(quota, 1, "", Source.UNSTATED);
    }

    /** Bands from pairs of an upper edge and an amount, in mm. */
    static Quota.Banded bands(String by, double... upToAndAmount) {
        List<Quota.Band> bands = new java.util.ArrayList<>();
        for (int i = 0; i < upToAndAmount.length; i += 2) {
            bands.add(new Quota.Band(mm(upToAndAmount[i]), mm(upToAndAmount[i + 1])));
        }
        return new Quota.Banded(by, bands);
    }

    static Rounding down(double step) {
        return new Rounding.Step(Rounding.Mode.DOWN, mm(step));
    }

    static SizeClause size(String id, String of) {
        return SizeClause.of(id, new Base.OfFigure(of)).withBecause("because", ASSUMED);
    }

    static SizeClause size(String id, Quota of) {
        return SizeClause.of(id, new Base.OfQuota(of)).withBecause("because", ASSUMED);
    }

    static SizeClause frame(String id, String of) {
        return size(id, of).withLess(item(4, 2)).withRound(down(1)).withCutWithin(0.5);
    }

    static List<SizeClause> frame() {
        return List.of(frame("frame.width", "fit.width"), frame("frame.length", "fit.length"));
    }

    static Quota.ByChoice endPlates() {
        return Quota.byChoice("drive", Map.of("drive-m", mm(4)));
    }

    static List<SizeClause> sizes() {
        return List.of(
                frame("frame.width", "fit.width"),
                frame("frame.length", "fit.length"),
                size("headbox.length", "frame.width").withLess(item(endPlates())),
                size("tube.diameter", bands("frame.width", 1800, 50, 3000, 63)),
                size("fabric.length", "frame.length").withMore(item(350, 1)));
    }

    static List<BoundClause> bounds() {
        return List.of(
                BoundClause.of("goes-in", "gap.least")
                        .withAtLeast(fixed(1))
                        .withDecide(DecisionRule.guarded(0.99))
                        .withBecause("must enter without force", ASSUMED),
                BoundClause.of("light-strip", "gap.greatest")
                        .withAtMost(fixed(10))
                        .withBecause("the cover strip hides no more", ASSUMED),
                BoundClause.of("out-of-square", "opening.diagonal.difference")
                        .withWithin(fixed(6))
                        .withBecause("the gap becomes a wedge", Source.PRACTICE));
    }

    static FixingRule fixings() {
        return new FixingRule(
                mm(100), mm(50), mm(150), mm(25), mm(60), mm(400), mm(1), "reveal", "screw-8", Source.PRACTICE);
    }

    static Rulebook empty() {
        return Rulebook.of("heron-frame", "1.2.0", "2026-01-01", "Invented rules", DecisionRule.guarded(0.95));
    }

    static Rulebook rulebook() {
        return empty().withFrame(new FrameRule(FrameRule.Hold.HEAD, "area", List.of(mm(20), mm(110))))
                .withSizes(sizes())
                .withBounds(bounds())
                .withSurvey(new SurveyRule(List.of("headTowards", "width@head")))
                .withFixings(fixings())
                .withSiteAsks(List.of("role", "glazed"));
    }

    static Rulebook with(SizeClause... more) {
        List<SizeClause> sizes = new java.util.ArrayList<>(frame());
        sizes.addAll(List.of(more));
        return empty().withSizes(sizes);
    }

    static Parts parts() {
        return Parts.of(
                "heron-parts", "1.0.0", List.of(), List.of(drive("drive-m")), List.of(), List.of(fastener(4.1)));
    }

    static Drive drive(String id) {
        return new Drive(
                id,
                declared(9000, Dimension.TORQUE),
                declared(1.5, Dimension.TURNING_SPEED),
                declared(300, Dimension.TIME),
                declared(30, Dimension.RATIO),
                declared(230, Dimension.VOLTAGE),
                declared(0.6, Dimension.CURRENT),
                declared(323.15, Dimension.TEMPERATURE));
    }

    static Fastener fastener(double hole) {
        Pull pull = new Pull(declared(450, Dimension.FORCE), Substrate.Kind.TIMBER, declared(25, Dimension.LENGTH));
        return new Fastener(
                "screw-8",
                declared(4, Dimension.LENGTH),
                declared(40, Dimension.LENGTH),
                declared(hole, Dimension.LENGTH),
                declared(10, Dimension.LENGTH),
                List.of(pull));
    }

    static Declared declared(double value, Dimension dimension) {
        return Declared.of(new Amount(value, dimension));
    }

    static Uncertain width(double value) {
        return Uncertain.of(value, Influence.normal("width", 0.8));
    }

    /** A survey that determined the width and the length of what goes in. */
    static FigureSource survey(double width, double length) {
        Map<String, Estimate> figures = new LinkedHashMap<>();
        figures.put("fit.width", width(width));
        figures.put("fit.length", Uncertain.of(length, Influence.normal("length", 0.8)));
        return name -> Optional.ofNullable(figures.get(name));
    }

    static FigureSource only(String figure, Estimate estimate) {
        return name -> name.equals(figure) ? Optional.of(estimate) : Optional.empty();
    }

    static Sizes decide(Rulebook rulebook, FigureSource survey) {
        return Sizing.decide(rulebook, CATALOGUE, survey, CHOICES, Map.of());
    }

    static double mm(Sizes sizes, String id) {
        return sizes.find(id).orElseThrow().value();
    }
}
