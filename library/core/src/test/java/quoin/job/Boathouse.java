package quoin.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import quoin.clearance.SiteFacts;
import quoin.judge.DecisionRule;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;
import quoin.measure.TapeClass;
import quoin.opening.HeadTowards;
import quoin.opening.KeepOut;
import quoin.opening.Moving;
import quoin.opening.Obstacle;
import quoin.opening.Reading;
import quoin.opening.Side;
import quoin.parts.Substrate;
import quoin.rulebook.Base;
import quoin.rulebook.BoundClause;
import quoin.rulebook.Item;
import quoin.rulebook.Quota;
import quoin.rulebook.Rounding;
import quoin.rulebook.Rulebook;
import quoin.rulebook.SizeClause;
import quoin.rulebook.SurveyRule;

/** The invented boathouse reading room, as values. */
final class Boathouse {
    static final Instrument TAPE = Instrument.of("tape", Instrument.Kind.TAPE)
            .withAccuracyClass(TapeClass.II)
            .withEnd(Instrument.End.HOOK)
            .withStep(1)
            .withEach(List.of(Doubt.standard(0.8, Dimension.LENGTH)));

    static final List<String> NEEDS = List.of(
            "headTowards",
            "width@head",
            "width@foot",
            "length@left",
            "length@right",
            "diagonal@head-left",
            "diagonal@head-right");

    private Boathouse() {}

    static Amount mm(double value) {
        return new Amount(value, Dimension.LENGTH);
    }

    private static SizeClause frame(String id, String of) {
        Item gap = new Item(Quota.fixed(mm(4)), 2, "gap allowance", Source.of(Source.Kind.ASSUMPTION, ""));
        return SizeClause.of(id, new Base.OfFigure(of))
                .withLess(gap)
                .withRound(new Rounding.Step(Rounding.Mode.DOWN, mm(1)))
                .withCutWithin(0.5)
                .withBecause("frame must enter", Source.of(Source.Kind.ASSUMPTION, ""));
    }

    static Rulebook rules(BoundClause... more) {
        List<BoundClause> bounds = new ArrayList<>();
        bounds.add(BoundClause.of("goes-in", "gap.least")
                .withAtLeast(Quota.fixed(mm(1)))
                .withDecide(DecisionRule.guarded(0.99))
                .withBecause("must enter without force", Source.PRACTICE));
        bounds.addAll(List.of(more));
        return Rulebook.of("heron-frame", "1.2.0", "2026-01-01", "Invented rules", DecisionRule.guarded(0.95))
                .withSizes(List.of(frame("frame.width", "fit.width"), frame("frame.length", "fit.length")))
                .withBounds(bounds)
                .withSurvey(new SurveyRule(NEEDS));
    }

    /** A nearly true opening, 1503 by 2400 mm, read with a few tenths of error. */
    static List<Reading> readings() {
        return new ArrayList<>(List.of(
                Reading.of("width@head", TAPE, 1503, 1503),
                Reading.of("width@1/2", TAPE, 1503),
                Reading.of("width@foot", TAPE, 1504, 1503),
                Reading.of("length@left", TAPE, 2400, 2400),
                Reading.of("length@1/2", TAPE, 2400),
                Reading.of("length@right", TAPE, 2399, 2400),
                Reading.of("diagonal@head-left", TAPE, 2832, 2832),
                Reading.of("diagonal@head-right", TAPE, 2832, 2831)));
    }

    static SiteFacts goodSite() {
        return SiteFacts.of(Map.of(
                "role", "light",
                "glazed", "yes",
                "glassMakerAsked", "yes",
                "structure", "rafter",
                "below", "floor",
                "platform", "tower"));
    }

    static Job.Builder job(List<Reading> readings) {
        return job(OpeningFacts.finished(HeadTowards.RIDGE, 2, readings));
    }

    static Job.Builder job(OpeningFacts opening) {
        return Job.named("reading-room", opening, Choices.rulebook("heron-frame"))
                .instruments(List.of(TAPE))
                .site(goodSite());
    }

    /** The opening of those readings, with what else is known of it. */
    static OpeningFacts facts(
            List<Reading> readings,
            Map<Side, Substrate> sides,
            List<Obstacle> obstacles,
            List<Moving> moving,
            List<KeepOut> keepOuts) {
        OpeningFacts plain = OpeningFacts.finished(HeadTowards.RIDGE, 2, readings);
        return new OpeningFacts(
                plain.fit(),
                plain.slopeRad(),
                plain.headTowards(),
                plain.markedOnSite(),
                plain.straightWithinMm(),
                plain.finish(),
                plain.readings(),
                plain.cannot(),
                sides,
                obstacles,
                moving,
                keepOuts);
    }
}
