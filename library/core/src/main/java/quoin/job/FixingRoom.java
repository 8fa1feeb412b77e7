package quoin.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.fixing.Holes;
import quoin.fixing.Packers;
import quoin.fixing.SetOut;
import quoin.fixing.Spacing;
import quoin.judge.Args;
import quoin.judge.Caution;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Source;
import quoin.judge.Step;
import quoin.measure.Uncertain;
import quoin.opening.Corner;
import quoin.opening.Gaps;
import quoin.opening.KeepOut;
import quoin.opening.LineFit;
import quoin.opening.Opening;
import quoin.opening.Side;
import quoin.parts.Fastener;
import quoin.parts.Parts;
import quoin.parts.Substrate;
import quoin.rulebook.FixingRule;
import quoin.rulebook.Rulebook;
import quoin.rulebook.Sizes;

/**
 * The fixings of one job: where the holes of each side go, whether there is something to hold them, whether hole, thread and
 * length fit together.
 *
 * <p>Asked for where the rulebook has {@code fixings}. What lies along a side of the opening is moved to the frame as it is placed
 * balanced; the doubt of that place (2 u), half a marking step and half the countersink count against what is barred and
 * against timbers. What the fixings carry is not computed: that finding is not verified, never a pass.
 */
final class FixingRoom {
    static final String ROOM = "fixings";
    private static final double COVERAGE = 2;

    private final Job job;
    private final Parts parts;
    private final FixingRule rule;
    private final Opening opening;
    private final Sizes sizes;
    private final Optional<Gaps> gaps;
    private final List<Finding> findings = new ArrayList<>();
    private final List<SideHoles> setOut = new ArrayList<>();
    private final List<SidePacker> packers = new ArrayList<>();

    private FixingRoom(Job job, Parts parts, FixingRule rule, Opening opening, Sizes sizes, Optional<Gaps> gaps) {
        this.job = job;
        this.parts = parts;
        this.rule = rule;
        this.opening = opening;
        this.sizes = sizes;
        this.gaps = gaps;
    }

    /** {@return the fixings that the rulebook asks for; empty where it asks for none} */
    static Optional<FixingRoom> of(
            Job job, Rulebook rulebook, Parts parts, Opening opening, Sizes sizes, Optional<Gaps> gaps) {
        return rulebook.fixings().map(rule -> new FixingRoom(job, parts, rule, opening, sizes, gaps).work());
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    List<SideHoles> setOut() {
        return List.copyOf(setOut);
    }

    List<SidePacker> packers() {
        return List.copyOf(packers);
    }

    private FixingRoom work() {
        Optional<Fastener> fastener = Optional.ofNullable(parts.fasteners().get(rule.fastener()));
        if (fastener.isEmpty() || !fastener.get().hole().isKnown()) {
            findings.add(Finding.undecided("fixing.fastener", Reason.NOT_VERIFIED)
                    .plusStep(Step.of("fastener-not-known", Args.of("fastener", rule.fastener()))));
        } else if (gaps.isEmpty()) {
            findings.add(Finding.undecided(ROOM, Reason.NOT_DETERMINED)
                    .plusStep(Step.of("figure-not-determined", Args.of("figure", "gap.least"))));
        } else {
            for (Side side : Side.values()) {
                findings.add(side(side, fastener.get(), gaps.get()));
            }
            findings.addAll(holes(fastener.get()));
        }
        findings.add(Finding.undecided("fixing.capacity", Reason.NOT_VERIFIED)
                .plusStep(Step.of("load-not-computed", Args.NONE))
                .withCautions(List.of(Caution.of("overhead-capacity", Caution.Severity.WARN))));
        return this;
    }

    /** Hole and thread; the sheet and the thread needed are known to no document yet. */
    private static List<Finding> holes(Fastener fastener) {
        return Holes.check(fastener, new Holes.Through(Double.NaN, 0, Double.NaN, Double.NaN)).stream()
                .filter(finding -> finding.clause().equals("fixing.hole"))
                .toList();
    }

    private Finding side(Side side, Fastener fastener, Gaps placed) {
        String clause = "fixing.".concat(side.text());
        Substrate substrate = job.opening().sides().getOrDefault(side, Substrate.UNKNOWN);
        Args what =
                Args.of("side", side.text()).with("substrate", substrate.kind().text());
        switch (substrate.kind()) {
            case UNKNOWN -> {
                return Finding.undecided(clause, Reason.NOT_VERIFIED).plusStep(Step.of("substrate-not-known", what));
            }
            case BOARD, PLASTERBOARD -> {
                return Finding.fail(clause)
                        .plusStep(new Step(
                                "board-alone", what, Source.of(Source.Kind.MEMORY, "board has no hold of its own")));
            }
            default -> {
                if (substrate.kind() == Substrate.Kind.BOARD_ON_TIMBER && !areTimbersKnown(substrate)) {
                    return Finding.undecided(clause, Reason.NOT_VERIFIED).plusStep(Step.of("timbers-not-known", what));
                }
            }
        }
        return row(clause, side, fastener, placed, substrate);
    }

    private static boolean areTimbersKnown(Substrate substrate) {
        return !substrate.timbers().isEmpty()
                && substrate.timbers().stream().noneMatch(timber -> Double.isNaN(timber.uMm()));
    }

    private Finding row(String clause, Side side, Fastener fastener, Gaps placed, Substrate substrate) {
        double start = start(side, placed);
        double half =
                Math.max(fastener.hole().value(), known(fastener.countersink().value())) / 2;
        double margin = half + rule.mark().value() / 2 + COVERAGE * placeDoubt(side, placed);
        List<Spacing.Stretch> barred = new ArrayList<>();
        for (KeepOut keepOut : job.opening().keepOuts()) {
            if (keepOut.side() == side) {
                barred.add(new Spacing.Stretch(keepOut.fromMm() - start, keepOut.toMm() - start, keepOut.because()));
            }
        }
        List<Spacing.Stretch> timbers = new ArrayList<>();
        if (substrate.kind() == Substrate.Kind.BOARD_ON_TIMBER) {
            for (Substrate.Timber timber : substrate.timbers()) {
                double reach = Math.max(0, timber.widthMm() / 2 - COVERAGE * timber.uMm());
                timbers.add(new Spacing.Stretch(
                        timber.atMm() - start - reach, timber.atMm() - start + reach, Spacing.TIMBERS));
            }
        }
        Spacing spacing = Spacing.of(
                        length(side),
                        new Spacing.Ends(
                                rule.fromEndAim().value(),
                                rule.atLeast().value(),
                                rule.atMost().value()),
                        new Spacing.Pitch(
                                rule.pitchAtLeast().value(), rule.pitchAtMost().value()),
                        rule.mark().value())
                .withBarred(barred)
                .withTimbers(timbers)
                .withMarginMm(margin);
        return judged(clause, side, start, spacing.setOut());
    }

    private Finding judged(String clause, Side side, double start, SetOut result) {
        if (result instanceof SetOut.Blocked blocked) {
            Args args = Args.of("side", side.text())
                    .with("from", blocked.fromMm(), "mm")
                    .with("to", blocked.toMm());
            // timbers that were found are no proof that there are no others
            boolean found = blocked.because().contains(Spacing.TIMBERS);
            return (found ? Finding.undecided(clause, Reason.NOT_VERIFIED) : Finding.fail(clause))
                    .plusStep(Step.of(
                            "no-place-for-a-hole",
                            blocked.because().isEmpty() ? args : args.with("because", blocked.because())));
        }
        SetOut.Holes holes = (SetOut.Holes) result;
        List<Double> inOpening = new ArrayList<>();
        for (double at : holes.atMm()) {
            inOpening.add(at + start);
        }
        pack(side, holes.atMm());
        setOut.add(new SideHoles(side, holes, inOpening, rule.fromEdge().value(), rule.fastener()));
        Finding finding = Finding.pass(clause)
                .plusStep(new Step(
                        "holes",
                        Args.of("side", side.text())
                                .with("count", holes.atMm().size())
                                .with("pitch", holes.greatestPitchMm(), "mm"),
                        rule.source()));
        return opening.adjustment().isAccepted() ? finding : finding.asUndecided(Reason.READINGS_DISAGREE);
    }

    /** The stacks that fill the gaps of the balanced frame at its holes, none where the frame does not go in. */
    private void pack(Side side, List<Double> holes) {
        List<LineFit.Station> beside =
                gaps.map(placed -> Gaps.beside(placed, side)).orElse(List.of());
        if (rule.packers().isEmpty() || beside.size() < 2) {
            return;
        }
        List<LineFit.Station> at = new ArrayList<>();
        for (double hole : holes) {
            Uncertain gap = between(beside, hole);
            if (gap.value() <= Packers.MOST_MM) {
                at.add(new LineFit.Station(hole, gap));
            }
        }
        // inches are no whole thousandths of a millimetre
        Packers stacks = Packers.of(rule.packers().stream()
                .map(packer -> Math.rint(packer.value() * 1e3) / 1e3)
                .toList());
        stacks.fill(at).forEach(packer -> packers.add(new SidePacker(side, packer)));
    }

    /** The gap at a place of a side that is straight between its stations. */
    private static Uncertain between(List<LineFit.Station> beside, double at) {
        int next = 1;
        while (next < beside.size() - 1 && beside.get(next).alongMm() < at) {
            next++;
        }
        LineFit.Station before = beside.get(next - 1);
        LineFit.Station after = beside.get(next);
        double share = (at - before.alongMm()) / (after.alongMm() - before.alongMm());
        return before.offset().times(1 - share).plus(after.offset().times(share));
    }

    private double length(Side side) {
        String size = side == Side.HEAD || side == Side.FOOT ? "frame.width" : "frame.length";
        return sizes.find(size).orElseThrow().value();
    }

    /** How far the start of a side of the frame lies along the side of the opening from its corner, in mm. */
    private double start(Side side, Gaps placed) {
        Corner from = side.from();
        double across = from.isLeft() ? 0 : length(Side.HEAD);
        double down = from.isHead() ? 0 : length(Side.LEFT);
        double cos = StrictMath.cos(placed.turnedRad());
        double sin = StrictMath.sin(placed.turnedRad());
        double x = placed.placedX() + across * cos - down * sin - value(from, 0);
        double y = placed.placedY() + across * sin + down * cos - value(from, 1);
        double runX = value(side.to(), 0) - value(from, 0);
        double runY = value(side.to(), 1) - value(from, 1);
        return (x * runX + y * runY) / StrictMath.sqrt(runX * runX + runY * runY);
    }

    private double value(Corner corner, int axis) {
        return opening.corner(corner).get(axis).value();
    }

    /** The standard uncertainty of where the frame starts along a side: that of the gap at its start. */
    private static double placeDoubt(Side side, Gaps placed) {
        String across = side == Side.HEAD || side == Side.FOOT ? "left" : "head";
        return Optional.ofNullable(Gaps.single(placed)
                        .get("gap." + across + "@" + side.from().text()))
                .orElseThrow()
                .standardUncertainty();
    }

    private static double known(double value) {
        return Double.isNaN(value) ? 0 : value;
    }
}
