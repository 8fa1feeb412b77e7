package quoin.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.clearance.WayIn;
import quoin.judge.Args;
import quoin.judge.Bound;
import quoin.judge.Conformity;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Source;
import quoin.judge.Step;
import quoin.measure.Dimension;
import quoin.measure.Extreme;
import quoin.measure.Influence;
import quoin.measure.Uncertain;
import quoin.opening.Corner;
import quoin.opening.Opening;
import quoin.rulebook.Rulebook;
import quoin.rulebook.Size;
import quoin.rulebook.Sizes;

/**
 * The way in of one job: whether the box that was decided passes the lips of the recess.
 *
 * <p>Asked for where the job says what has to be passed. The clear length is the head as adjusted; the box must be no longer
 * than the longest that goes in, decided as the rulebook decides.
 */
final class PassRoom {
    static final String ROOM = "way-in";
    static final String FIGURE = "wayin.longest";

    private PassRoom() {}

    /** {@return the longest box that goes in; empty where something for it is not known} */
    static Optional<WayIn> wayIn(Job job, Opening opening) {
        PassFacts facts = job.wayIn();
        if (!facts.isComplete() || !opening.hasShape()) {
            return Optional.empty();
        }
        Uncertain left = opening.corner(Corner.HEAD_LEFT).get(0);
        Uncertain right = opening.corner(Corner.HEAD_RIGHT).get(0);
        WayIn.Recess recess = new WayIn.Recess(
                right.minus(left),
                number("depth", facts.depthMm(), facts),
                number("left-lip", facts.leftLipMm(), facts),
                number("right-lip", facts.rightLipMm(), facts));
        return Optional.of(WayIn.of(recess, Uncertain.exact(facts.thicknessMm()), facts.playMm()));
    }

    private static Uncertain number(String what, double mm, PassFacts facts) {
        return Uncertain.of(mm, Influence.normal("wayin.".concat(what), facts.uMm()));
    }

    /** {@return whether the box goes in; empty where the job does not ask} */
    static Optional<Finding> finding(Job job, Rulebook rulebook, Opening opening, Sizes sizes, boolean agrees) {
        PassFacts facts = job.wayIn();
        if (!facts.isStated()) {
            return Optional.empty();
        }
        Optional<Size> box = sizes.find(facts.box());
        if (!facts.isComplete() || box.isEmpty()) {
            Args args = Args.of("box", facts.box());
            return Optional.of(Finding.undecided(ROOM, Reason.NOT_VERIFIED)
                    .plusStep(Step.of(box.isEmpty() ? "box-not-decided" : "way-in-not-known", args)));
        }
        Optional<WayIn> way = wayIn(job, opening);
        if (way.isEmpty()) {
            return Optional.of(Finding.undecided(ROOM, Reason.NOT_DETERMINED)
                    .plusStep(Step.of("figure-not-determined", Args.of("figure", FIGURE))));
        }
        Uncertain length = box.get().asUncertain();
        Uncertain cut = length.minus(box.get().value());
        List<Extreme.Part> longest = new ArrayList<>();
        for (Extreme.Part part : way.get().longest().parts()) {
            longest.add(new Extreme.Part(part.names(), part.value().minus(cut)));
        }
        Finding finding = Conformity.check(
                        ROOM,
                        Extreme.least(longest),
                        Dimension.LENGTH,
                        Bound.atLeast(box.get().value()),
                        rulebook.decide())
                .withFigure(FIGURE)
                .plusStep(step(way.get(), box.get()));
        return Optional.of(agrees ? finding : finding.asUndecided(Reason.READINGS_DISAGREE));
    }

    private static Step step(WayIn way, Size box) {
        Args args = Args.of("box", box.id())
                .with("length", box.value(), "mm")
                .with("longest", way.longest().value());
        if (way.first() == WayIn.First.NEITHER) {
            return new Step("way-in-straight", args, Source.of(Source.Kind.ASSUMPTION, "plane geometry"));
        }
        return new Step(
                "way-in-tilted",
                args.with("end", way.first() == WayIn.First.LEFT ? "left" : "right")
                        .with("rise", Math.rint(1000 * StrictMath.sin(way.tiltRad()))),
                Source.of(Source.Kind.ASSUMPTION, "plane geometry"));
    }
}
