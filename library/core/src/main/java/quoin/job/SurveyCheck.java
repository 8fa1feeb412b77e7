package quoin.job;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quoin.judge.Args;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Step;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Instrument;
import quoin.measure.Uncertain;
import quoin.opening.Cannot;
import quoin.opening.Corner;
import quoin.opening.Finish;
import quoin.opening.HeadTowards;
import quoin.opening.Opening;
import quoin.opening.OpeningFigures;
import quoin.opening.Plane;
import quoin.opening.Side;
import quoin.opening.Span;
import quoin.opening.Survey;
import quoin.opening.SurveyPlan;
import quoin.rulebook.Rulebook;

/** Whether the survey holds what it needs: what the job itself, the rulebook's survey and its figures ask for. */
final class SurveyCheck {
    private final Job job;
    private final Rulebook rulebook;
    private final Survey survey;
    private final List<Span> cannot;
    private final Tools tools;
    private final List<String> missing;
    private Optional<Step> unseen = Optional.empty();

    SurveyCheck(Job job, Rulebook rulebook, Opening opening) {
        this.job = job;
        this.rulebook = rulebook;
        this.survey = opening.survey();
        this.cannot = job.opening().cannot().stream().map(Cannot::of).toList();
        this.tools = new Tools(job);
        this.missing = look();
    }

    /** What the job itself, the rulebook and the shape need and do not have: facts, then readings in the order to take them. */
    List<String> missing() {
        return missing;
    }

    private List<String> look() {
        Set<String> facts = new LinkedHashSet<>();
        if (job.opening().headTowards() == HeadTowards.UNKNOWN) {
            facts.add("headTowards");
        }
        if (Double.isNaN(job.opening().straightWithinMm())) {
            facts.add("straightWithin");
        }
        Set<Survey.Place> needs = new LinkedHashSet<>();
        for (String need : rulebook.survey().needs()) {
            Optional<Survey.Place> place = place(need);
            place.ifPresent(needs::add);
            if (place.isEmpty() && !isStated(need)) {
                facts.add(need);
            }
        }
        if (isBareWithoutStill()) {
            facts.add("still");
        }
        Side roller = Side.find(job.choose().rollerAt()).orElse(Side.HEAD);
        for (String figure : rulebook.figures()) {
            needs.addAll(OpeningFigures.missing(survey, figure, roller, cannot));
        }
        List<String> all = new ArrayList<>(facts);
        List<Survey.Place> wanted = new ArrayList<>(readings(needs));
        tooDoubtful().stream().filter(place -> !wanted.contains(place)).forEach(wanted::add);
        for (Survey.Place place : survey.walk(wanted)) {
            all.add(place.text());
        }
        return List.copyOf(all);
    }

    /** The place that a need names; empty where it is a fact. */
    static Optional<Survey.Place> place(String need) {
        try {
            return Optional.of(Survey.Place.parse(need));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private boolean isStated(String need) {
        return switch (need) {
            case "headTowards" -> job.opening().headTowards() != HeadTowards.UNKNOWN;
            case "straightWithin" -> !Double.isNaN(job.opening().straightWithinMm());
            case "slope" -> !Double.isNaN(job.opening().slopeRad());
            case "finish" -> job.opening().finish().state() != Finish.State.UNSTATED;
            case "markedOnSite" -> job.opening().markedOnSite();
            default -> false;
        };
    }

    private boolean isBareWithoutStill() {
        Finish finish = job.opening().finish();
        return finish.state() == Finish.State.BARE && finish.still().isEmpty();
    }

    /** Places that were read, yet not as well as the rulebook asks. */
    private List<Survey.Place> tooDoubtful() {
        List<Survey.Place> places = new ArrayList<>();
        for (String need : rulebook.survey().goodTo().keySet()) {
            place(need).filter(place -> isTooDoubtful(need, place)).ifPresent(places::add);
        }
        return places;
    }

    private boolean isTooDoubtful(String need, Survey.Place place) {
        Amount most = rulebook.survey().goodTo().get(need);
        return most != null && survey.has(place) && !(u(place) <= most.value());
    }

    /** The standard uncertainty of the mean of all that was read at a place. */
    private double u(Survey.Place place) {
        return survey.mean(place).map(Uncertain::standardUncertainty).orElse(Double.POSITIVE_INFINITY);
    }

    /** The readings to take: in front as the plan has them, behind and angles nobody has a square for as they stand. */
    private List<Survey.Place> readings(Set<Survey.Place> needs) {
        SurveyPlan plan = SurveyPlan.of(survey, tools.lengths()).withCannot(cannot);
        plan = tools.forReading(new Span.Depth("middle")).map(plan::withRule).orElse(plan);
        Optional<Instrument> square = tools.forReading(new Span.Angle(Corner.HEAD_LEFT));
        plan = square.map(plan::withSquare).orElse(plan);
        List<Span> planned = new ArrayList<>();
        List<Survey.Place> apart = new ArrayList<>();
        for (Survey.Place place : needs) {
            boolean readable = !(place.of() instanceof Span.Angle) || square.isPresent();
            if (place.in() == Plane.FRONT && readable) {
                planned.add(place.of());
            } else if (!survey.has(place)) {
                apart.add(place);
            }
        }
        List<Span> missingInFront = new ArrayList<>(plan.withNeeds(planned).missing());
        planned.addAll(missingInFront);
        missingInFront.addAll(checks(plan.withNeeds(planned), missingInFront));
        missingInFront.forEach(span -> apart.add(new Survey.Place(span)));
        return apart;
    }

    /** What else it takes so that no slip above what the rules state stays unnoticed. */
    private List<Span> checks(SurveyPlan plan, List<Span> already) {
        double detects = rulebook.survey().detectsMm();
        if (Double.isNaN(detects)) {
            return List.of();
        }
        SurveyPlan.Chosen chosen = plan.small(detects);
        if (!chosen.isReached()) {
            Args args = Args.of("detects", detects).with("unit", "mm");
            double least = chosen.detectableMm();
            unseen = Optional.of(Step.of("slip-unseen", Double.isFinite(least) ? args.with("least", least) : args));
            return List.of();
        }
        List<Span> more = new ArrayList<>(chosen.readings());
        already.forEach(more::remove);
        return more;
    }

    Finding finding() {
        Finding finding = missing.isEmpty() && unseen.isEmpty()
                ? Finding.pass("survey")
                : Finding.undecided("survey", Reason.INCOMPLETE);
        for (String need : missing) {
            finding = finding.plusStep(missing(need));
        }
        if (unseen.isPresent()) {
            finding = finding.plusStep(unseen.get());
        }
        for (Cannot one : job.opening().cannot()) {
            finding = finding.plusStep(
                    Step.of("cannot", Args.of("what", one.of().text()).with("because", one.because())));
        }
        if (job.opening().finish().state() == Finish.State.UNSTATED) {
            finding = finding.plusStep(Step.of("taken-as-finished", Args.NONE));
        }
        return finding;
    }

    private Step missing(String need) {
        Amount most = rulebook.survey().goodTo().get(need);
        Optional<Survey.Place> place = place(need).filter(read -> isTooDoubtful(need, read));
        if (most == null || place.isEmpty()) {
            return Step.of("missing", Args.of("what", need));
        }
        Dimension dimension = most.dimension();
        return Step.of(
                "too-doubtful",
                Args.of("what", need)
                        .with("u", dimension.widthToAnswer(u(place.get())))
                        .with("atMost", dimension.widthToAnswer(most.value()))
                        .with("unit", dimension.answerUnit()));
    }

    /** Something is still to come on the sides, and nobody said how much. */
    Optional<Finding> finish() {
        return isBareWithoutStill()
                ? Optional.of(Finding.undecided("finish", Reason.INCOMPLETE)
                        .plusStep(Step.of("missing", Args.of("what", "still"))))
                : Optional.empty();
    }
}
