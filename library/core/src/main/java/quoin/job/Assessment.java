package quoin.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.clearance.Cautions;
import quoin.clearance.SiteChecks;
import quoin.clearance.SiteFacts;
import quoin.judge.Args;
import quoin.judge.Catalogue;
import quoin.judge.Caution;
import quoin.judge.Finding;
import quoin.judge.Problem;
import quoin.judge.Reason;
import quoin.judge.Retake;
import quoin.judge.Step;
import quoin.judge.Verdict;
import quoin.measure.Estimate;
import quoin.measure.Uncertain;
import quoin.opening.AdjustedReading;
import quoin.opening.Adjustment;
import quoin.opening.Corner;
import quoin.opening.Gaps;
import quoin.opening.Opening;
import quoin.opening.OpeningFigures;
import quoin.opening.Plane;
import quoin.opening.PlaneTest;
import quoin.opening.Suspect;
import quoin.parts.Drive;
import quoin.parts.Parts;
import quoin.rulebook.Lint;
import quoin.rulebook.Rulebook;
import quoin.rulebook.Size;
import quoin.rulebook.Sizes;

/**
 * One job, all of it, as data: what was found, with what odds, and what to read again.
 *
 * <p>The same job, rulebook and parts give the same assessment. Immutable and safe for use by many threads.
 */
public final class Assessment {

    private final Job job;
    private final Rulebook rulebook;
    private final Parts parts;
    private final Catalogue catalogue;
    private final Opening opening;
    private final List<Suspect> suspects;
    private final Sizes sizes;
    private final Optional<Gaps> gaps;
    private final Optional<TradeRule> tradeRule;
    private final Map<String, FigureValue> figures;
    private final List<Finding> findings;
    private final List<SideHoles> setOut;
    private final List<SidePacker> packers;
    private final SurveyState survey;
    private final OptionalDouble probability;
    private final List<Problem> problems;

    private Assessment(Work work) {
        this.job = work.job;
        this.rulebook = work.rulebook;
        this.parts = work.parts;
        this.catalogue = work.catalogue;
        this.opening = work.opening;
        this.suspects = work.suspects;
        this.sizes = work.sizes;
        this.gaps = work.gaps;
        this.tradeRule = work.tradeRule;
        this.figures = Collections.unmodifiableMap(work.figures());
        this.findings = List.copyOf(work.findings);
        this.setOut = work.fixings.map(FixingRoom::setOut).orElse(List.of());
        this.packers = work.fixings.map(FixingRoom::packers).orElse(List.of());
        this.survey = work.survey;
        this.probability = work.probability;
        this.problems = work.problems;
    }

    /**
     * Assesses a job by a rulebook and a parts list.
     *
     * @param job the job
     * @param rulebook the rules
     * @param parts the parts; {@link Parts#NONE} where none are chosen
     * @return the assessment
     * @throws IllegalArgumentException if the rulebook has errors; see {@link Lint}
     */
    public static Assessment of(Job job, Rulebook rulebook, Parts parts) {
        return new Assessment(new Work(job, rulebook, parts, Surveyed.of(job, rulebook), true));
    }

    /** The same verdict, sizes and reasons, without figures, what to read again, and odds closer than verdicts take. */
    static Assessment brief(Job job, Rulebook rulebook, Parts parts, Surveyed surveyed) {
        return new Assessment(new Work(job, rulebook, parts, surveyed, false));
    }

    /** The way from readings to findings; not safe for use by many threads. */
    private static final class Work {
        private final Job job;
        private final Rulebook rulebook;
        private final Parts parts;
        private final Catalogue catalogue;
        private final List<Problem> problems;
        private final Opening opening;
        private final List<Suspect> suspects;
        private final Map<String, Estimate> estimates;
        private final Sizes sizes;
        private final Optional<Gaps> gaps;
        private final Optional<TradeRule> tradeRule;
        private final List<Finding> findings = new ArrayList<>();
        private final Optional<FixingRoom> fixings;
        private final SurveyState survey;
        private final OptionalDouble probability;

        Work(Job job, Rulebook rulebook, Parts parts, Surveyed surveyed, boolean whole) {
            this.job = job;
            this.rulebook = rulebook;
            this.parts = parts;
            Declarations declared = Declarations.of(job, rulebook, parts);
            this.catalogue = declared.catalogue();
            this.problems = declared.problems();
            Line line = new Line(job, rulebook, parts, catalogue, surveyed);
            this.opening = line.opening();
            this.suspects = whole
                    ? opening.adjustment()
                            .suspects(job.opening().cannot().stream()
                                    .map(cannot -> cannot.of())
                                    .toList())
                    : List.of();
            this.sizes = line.sizes();
            this.gaps = line.gaps();
            this.tradeRule = whole ? line.tradeRule() : Optional.empty();
            this.estimates = whole ? line.figures() : Map.of();
            SurveyCheck check = new SurveyCheck(job, rulebook, opening);
            List<String> missing = check.missing();
            findings.add(check.finding());
            findings.add(adjustment());
            straight().ifPresent(findings::add);
            check.finish().ifPresent(findings::add);
            planes().ifPresent(findings::add);
            findings.addAll(declared.findings());
            findings.addAll(sizes.refused());
            findings.addAll(sizes.atEdges());
            BoundChecks bounds = new BoundChecks(job, rulebook, opening, line.boundable(), catalogue);
            findings.addAll(
                    whole
                            ? new Prospects(job, rulebook, parts, catalogue, opening, bounds).findings(missing)
                            : bounds.settled());
            findings.addAll(SiteChecks.findings(job.site(), siteAsks()));
            new HeatRoom(job, parts)
                    .finding(rulebook, line.leastGapInHeat(), OpeningFigures.isAccepted(opening, HeatRoom.FIGURE))
                    .ifPresent(findings::add);
            findings.addAll(ClearanceRoom.findings(
                    job,
                    rulebook,
                    opening,
                    gaps,
                    Optional.ofNullable(surveyed.figures().get("opening.depth.least"))));
            PassRoom.finding(job, rulebook, opening, sizes, OpeningFigures.isAccepted(opening, PassRoom.FIGURE))
                    .ifPresent(findings::add);
            this.fixings = FixingRoom.of(job, rulebook, parts, opening, sizes, gaps);
            fixings.ifPresent(room -> findings.addAll(room.findings()));
            findings.addAll(Rooms.findings(job, rulebook));
            grade().ifPresent(findings::add);
            Optional<Next> next =
                    whole ? new NextReading(job, opening).of(missing, suspects, findings) : Optional.empty();
            this.survey = new SurveyState(missing, next, NextReading.agrees(opening));
            this.probability = whole ? bounds.joint() : OptionalDouble.empty();
        }

        private Finding adjustment() {
            Adjustment adjustment = opening.adjustment();
            if (adjustment.state() == Adjustment.State.NOT_DETERMINED) {
                return Finding.undecided("adjustment", Reason.NOT_DETERMINED);
            }
            if (!adjustment.isSolved()) {
                Finding finding = Finding.undecided("adjustment", Reason.READINGS_DISAGREE);
                for (Suspect suspect : suspects) {
                    finding = finding.plusStep(Step.of("cannot-close", Args.of("readings", suspect.readings())));
                }
                return finding.withRetakes(again());
            }
            Args args = Args.of("statistic", adjustment.statistic()).with("redundancy", adjustment.redundancy());
            if (adjustment.redundancy() > 0) {
                args = args.with("critical", adjustment.critical());
            }
            Step step = Step.of(adjustment.redundancy() > 0 ? "tested" : "nothing-to-test", args);
            if (adjustment.isAccepted()) {
                return Finding.pass("adjustment").plusStep(step);
            }
            return Finding.undecided("adjustment", Reason.READINGS_DISAGREE)
                    .plusStep(step)
                    .withRetakes(again());
        }

        /** Sides that are not as straight as stated: the readings are right then, and the statement is not. */
        private Optional<Finding> straight() {
            List<Adjustment.Bulge> bulges = opening.adjustment().bulges();
            if (bulges.isEmpty()) {
                return Optional.empty();
            }
            Finding finding = Finding.undecided("straight", Reason.READINGS_DISAGREE);
            for (Adjustment.Bulge bulge : bulges) {
                finding = finding.plusStep(NextReading.step(bulge, job.opening().straightWithinMm()));
            }
            return Optional.of(finding);
        }

        /** What tells which reading is wrong. */
        private List<Retake> again() {
            return suspects.stream()
                    .map(Suspect::askFor)
                    .distinct()
                    .map(askFor -> new Retake(List.of(askFor), "", 1, Double.NaN, Double.NaN))
                    .toList();
        }

        private Optional<Finding> planes() {
            Optional<PlaneTest> wrong = opening.planes().stream()
                    .filter(plane -> !plane.isAccepted())
                    .findFirst();
            if (wrong.isPresent()) {
                return Optional.of(
                        Finding.undecided("planes", Reason.READINGS_DISAGREE).plusStep(disagreement(wrong.get())));
            }
            List<String> unused = opening.unusedBehind();
            return unused.isEmpty()
                    ? Optional.empty()
                    : Optional.of(Finding.undecided("planes", Reason.NOT_DETERMINED)
                            .plusStep(Step.of("back-not-determined", Args.of("readings", unused))));
        }

        private static Step disagreement(PlaneTest plane) {
            if (plane.plane().equals(Plane.BACK.text())) {
                return Step.of("back-leans-too-far", Args.NONE);
            }
            return Step.of(
                    "depths-disagree",
                    Args.of(
                            "readings",
                            plane.readings().stream()
                                    .filter(reading -> Double.isFinite(reading.w()))
                                    .map(AdjustedReading::name)
                                    .distinct()
                                    .toList()));
        }

        private List<String> siteAsks() {
            return rulebook.siteAsks().orElse(List.copyOf(SiteFacts.ANSWERS.keySet()));
        }

        /** Sizes for a price are never sizes to cut by. */
        private Optional<Finding> grade() {
            return job.grade() == Job.Grade.QUOTE
                    ? Optional.of(Finding.undecided("grade", Reason.NOT_VERIFIED)
                            .plusStep(Step.of("not-for-cutting", Args.NONE)))
                    : Optional.empty();
        }

        private Map<String, FigureValue> figures() {
            Map<String, FigureValue> all = new LinkedHashMap<>();
            estimates.forEach((id, value) -> put(all, id, value));
            all.putAll(job.declared());
            return all;
        }

        private void put(Map<String, FigureValue> all, String id, Estimate value) {
            all.put(id, new FigureValue(value, BoundChecks.dimension(catalogue, id)));
        }
    }

    /** {@return the holes of each side that has a row of them; none where the rulebook asks for no fixings} */
    public List<SideHoles> setOut() {
        return setOut;
    }

    /** {@return what fills the gaps at the holes; none where the rulebook asks for no packers} */
    public List<SidePacker> packers() {
        return packers;
    }

    /** {@return the job} */
    public Job job() {
        return job;
    }

    /** {@return the rules it was assessed by} */
    public Rulebook rulebook() {
        return rulebook;
    }

    /** {@return the parts it was assessed with} */
    public Parts parts() {
        return parts;
    }

    /** {@return what it was made from} */
    public Receipt receipt() {
        return Receipt.of(job, rulebook, parts);
    }

    /** {@return the worst verdict of all findings} */
    public Verdict verdict() {
        Verdict worst = Verdict.PASS;
        for (Finding finding : findings) {
            worst = worst.worse(finding.verdict());
        }
        return worst;
    }

    /** {@return the probability that all bounds hold together; empty where one of them could not be judged} */
    public OptionalDouble probability() {
        return probability;
    }

    /** {@return where the survey stands} */
    public SurveyState survey() {
        return survey;
    }

    /** {@return the adjusted opening; empty where the readings determine none} */
    public Optional<Shape> shape() {
        if (!opening.hasShape()) {
            return Optional.empty();
        }
        Map<Corner, Shape.Point> corners = new LinkedHashMap<>();
        for (Corner corner : Corner.values()) {
            List<Uncertain> at = opening.corner(corner);
            corners.put(corner, new Shape.Point(at.get(0).value(), at.get(1).value()));
        }
        return Optional.of(new Shape(
                corners, gaps.map(g -> new Shape.Placed(new Shape.Point(g.placedX(), g.placedY()), g.turnedRad()))));
    }

    /** {@return whether the readings can be right together} */
    public AdjustmentReport adjustment() {
        Adjustment adjustment = opening.adjustment();
        return new AdjustmentReport(
                adjustment.isSolved(),
                adjustment.redundancy(),
                adjustment.statistic(),
                adjustment.critical(),
                adjustment.isAccepted(),
                adjustment.readings(),
                suspects,
                opening.planes());
    }

    /** {@return every figure that is determined, by name} */
    public Map<String, FigureValue> figures() {
        return figures;
    }

    /** {@return the sizes, and those that could not be decided} */
    public Sizes sizes() {
        return sizes;
    }

    /** {@return the frame that the least reading each way would have given, and how it fares; empty without sizes} */
    public Optional<TradeRule> tradeRule() {
        return tradeRule;
    }

    /** {@return what goes to the workshop; empty where the frame's sizes are not decided} */
    public Optional<Order> order() {
        Optional<Size> width = sizes.find("frame.width");
        Optional<Size> length = sizes.find("frame.length");
        Choices choose = job.choose();
        return width.isEmpty() || length.isEmpty()
                ? Optional.empty()
                : Optional.of(new Order(
                        width.get().value(),
                        length.get().value(),
                        choose.rollerAt(),
                        choose.rollerDrive(),
                        choose.cableLeaves()));
    }

    /** {@return what was found, clause by clause} */
    public List<Finding> findings() {
        return findings;
    }

    /** {@return the cautions that apply, worst first} */
    public List<Caution> cautions() {
        String chosen = job.choose().parts().getOrDefault("drive", "");
        Drive drive = parts.drives().get(chosen);
        double volts = drive == null ? Double.NaN : drive.voltage().value();
        double supplied = job.supply().map(supply -> supply.voltage().value()).orElse(volts);
        double highest = Double.isNaN(volts) ? supplied : Double.isNaN(supplied) ? volts : Math.max(volts, supplied);
        List<Caution> all = new ArrayList<>(Cautions.of(job.site(), new Cautions.Power(!chosen.isEmpty(), highest)));
        SourceMarks marks = new SourceMarks(rulebook, job);
        sizes.all().forEach(size -> all.addAll(marks.of(size.id(), size.source(), size.steps())));
        all.addAll(marks.of(parts));
        return all;
    }

    /** The figures that its rules could name. */
    Catalogue catalogue() {
        return catalogue;
    }

    /** {@return the rooms that nobody asked for} */
    public List<String> notChecked() {
        return Rooms.notChecked(job, rulebook);
    }

    /** {@return what somebody should look at in the rulebook} */
    public List<Problem> problems() {
        return problems;
    }

    /** {@return the text that is handed through unread; empty where there is none} */
    public String carry() {
        return job.carry();
    }

    @Override
    public String toString() {
        return job.id() + ": " + verdict().text();
    }
}
