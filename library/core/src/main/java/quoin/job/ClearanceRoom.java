package quoin.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.judge.Args;
import quoin.judge.Bound;
import quoin.judge.Conformity;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Source;
import quoin.judge.Step;
import quoin.judge.Verdict;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Influence;
import quoin.measure.Uncertain;
import quoin.opening.Gaps;
import quoin.opening.Moving;
import quoin.opening.Obstacle;
import quoin.opening.Opening;
import quoin.opening.Side;
import quoin.rulebook.Rulebook;

/**
 * Things in the way of one job: whether what stands out of a side leaves room for the frame, whether the recess is deep enough,
 * whether sashes still swing.
 *
 * <p>Asked for where the job names obstacles or moving parts. The frame fills the depth that the rulebook states and lies balanced; an
 * obstacle beyond that depth is clear of it. How far an obstacle stands out is taken as known to 1 mm either way.
 */
final class ClearanceRoom {
    static final String ROOM = "clearance";
    private static final double WITHIN_MM = 1;
    private static final Source ASSUMED =
            Source.of(Source.Kind.ASSUMPTION, "how far an obstacle stands out is known to 1 mm either way");

    private final Rulebook rulebook;
    private final Opening opening;
    private final Optional<Gaps> gaps;

    private ClearanceRoom(Rulebook rulebook, Opening opening, Optional<Gaps> gaps) {
        this.rulebook = rulebook;
        this.opening = opening;
        this.gaps = gaps;
    }

    /** {@return a finding for each thing in the way and one for the depth; none where the job names nothing} */
    static List<Finding> findings(
            Job job, Rulebook rulebook, Opening opening, Optional<Gaps> gaps, Optional<Estimate> depth) {
        List<Obstacle> obstacles = job.opening().obstacles();
        List<Moving> moving = job.opening().moving();
        if (obstacles.isEmpty() && moving.isEmpty()) {
            return List.of();
        }
        ClearanceRoom room = new ClearanceRoom(rulebook, opening, gaps);
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < obstacles.size(); i++) {
            findings.add(room.obstacle(obstacles.get(i), i));
        }
        for (Moving part : moving) {
            findings.add(moving(part));
        }
        findings.add(room.depth(depth));
        return findings;
    }

    private Finding obstacle(Obstacle obstacle, int index) {
        Args what = Args.of("name", obstacle.name()).with("side", obstacle.on().text());
        List<Amount> depth = rulebook.frame().depth();
        double known =
                obstacle.fromMm() + obstacle.toMm() + obstacle.outMm() + obstacle.depthFromMm() + obstacle.depthToMm();
        if (depth.isEmpty() || Double.isNaN(known)) {
            return Finding.undecided(ROOM, Reason.NOT_VERIFIED)
                    .plusStep(Step.of(depth.isEmpty() ? "frame-depth-not-known" : "obstacle-not-known", what));
        }
        double nearest = depth.get(0).value();
        double farthest = depth.get(1).value();
        Args at = what.with("from", obstacle.depthFromMm(), "mm").with("to", obstacle.depthToMm());
        if (obstacle.depthToMm() < nearest || obstacle.depthFromMm() > farthest) {
            return Finding.pass(ROOM).plusStep(Step.of("obstacle-beyond-depth", at));
        }
        if (gaps.isEmpty()) {
            return Finding.undecided(ROOM, Reason.NOT_DETERMINED)
                    .plusStep(Step.of("figure-not-determined", Args.of("figure", "gap.least")));
        }
        Uncertain out = Uncertain.of(
                obstacle.outMm(), Influence.rectangular("obstacle.".concat(Integer.toString(index + 1)), WITHIN_MM));
        List<Extreme.Part> left = new ArrayList<>();
        for (Uncertain gap : gapsBeside(obstacle.on(), obstacle.fromMm(), obstacle.toMm(), gaps.get())) {
            left.add(new Extreme.Part(List.of(obstacle.name()), gap.minus(out)));
        }
        Finding finding = Conformity.check(
                        ROOM, Extreme.least(left), Dimension.LENGTH, Bound.atLeast(0), rulebook.decide())
                .plusStep(new Step("obstacle-and-gap", at.with("out", obstacle.outMm()), ASSUMED));
        return agreed(finding);
    }

    /** The gaps of the frame at both ends of a stretch of a side, and wherever that side comes nearer than its corners. */
    private List<Uncertain> gapsBeside(Side side, double fromMm, double toMm, Gaps placed) {
        Map<String, Uncertain> single = Gaps.single(placed);
        String prefix = "gap.".concat(side.text()).concat("@");
        Uncertain start = Optional.ofNullable(
                        single.get(prefix.concat(side.from().text())))
                .orElseThrow();
        Uncertain end =
                Optional.ofNullable(single.get(prefix.concat(side.to().text()))).orElseThrow();
        double length = length(side);
        List<Uncertain> beside = new ArrayList<>();
        for (double at : new double[] {fromMm, toMm}) {
            double share = Math.min(1, Math.max(0, at / length));
            beside.add(start.times(1 - share).plus(end.times(share)));
        }
        single.forEach((name, gap) -> {
            boolean corner =
                    name.endsWith(side.from().text()) || name.endsWith(side.to().text());
            if (name.startsWith(prefix) && !corner) {
                beside.add(gap);
            }
        });
        return beside;
    }

    private double length(Side side) {
        List<Uncertain> from = opening.corner(side.from());
        List<Uncertain> to = opening.corner(side.to());
        double x = to.get(0).value() - from.get(0).value();
        double y = to.get(1).value() - from.get(1).value();
        return StrictMath.sqrt(x * x + y * y);
    }

    private Finding agreed(Finding finding) {
        return opening.adjustment().isAccepted() ? finding : finding.asUndecided(Reason.READINGS_DISAGREE);
    }

    /** A part that opens into the room has to pass where the fabric runs: how it does is not in any document. */
    private static Finding moving(Moving part) {
        Args what = Args.of("name", part.name()).with("side", part.hinge().text());
        if (part.opens().equals("out") || part.mustWork().equals("closed")) {
            return Finding.pass(ROOM).plusStep(Step.of("moving-keeps-out", what));
        }
        return Finding.undecided(ROOM, Reason.NOT_VERIFIED).plusStep(Step.of("moving-meets-fabric", what));
    }

    private Finding depth(Optional<Estimate> least) {
        List<Amount> depth = rulebook.frame().depth();
        if (depth.isEmpty() || least.isEmpty()) {
            return Finding.undecided(ROOM, Reason.NOT_VERIFIED)
                    .plusStep(Step.of(depth.isEmpty() ? "frame-depth-not-known" : "depth-not-read", Args.NONE));
        }
        Finding finding = Conformity.check(
                        ROOM,
                        least.get(),
                        Dimension.LENGTH,
                        Bound.atLeast(depth.get(1).value()),
                        rulebook.decide())
                .withFigure("opening.depth.least");
        return finding.verdict() == Verdict.PASS ? finding : agreed(finding);
    }
}
