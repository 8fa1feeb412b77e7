package quoin.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import quoin.judge.Args;
import quoin.judge.Catalogue;
import quoin.judge.Caution;
import quoin.judge.Conformity;
import quoin.judge.Constraint;
import quoin.judge.DecisionRule;
import quoin.judge.Figure;
import quoin.judge.Finding;
import quoin.judge.Odds;
import quoin.judge.ReadingDoubt;
import quoin.judge.Reason;
import quoin.judge.Retake;
import quoin.judge.Retakes;
import quoin.judge.Source;
import quoin.judge.Stage;
import quoin.judge.Step;
import quoin.judge.Verdict;
import quoin.measure.Dimension;
import quoin.measure.Estimate;
import quoin.opening.Corner;
import quoin.opening.Opening;
import quoin.opening.OpeningFigures;
import quoin.opening.Squareness;
import quoin.rulebook.BoundClause;
import quoin.rulebook.FigureSource;
import quoin.rulebook.Limits;
import quoin.rulebook.Rulebook;

/** Holds each bounded figure against its limits. Not safe for use by many threads. */
final class BoundChecks {
    private final Job job;
    private final Rulebook rulebook;
    private final Opening opening;
    private final FigureSource figures;
    private final Catalogue catalogue;

    BoundChecks(Job job, Rulebook rulebook, Opening opening, FigureSource figures, Catalogue catalogue) {
        this.job = job;
        this.rulebook = rulebook;
        this.opening = opening;
        this.figures = figures;
        this.catalogue = catalogue;
    }

    /** The finding of every bound. */
    List<Finding> findings() {
        return rulebook.bounds().stream()
                .map(clause -> check(clause).withFigure(clause.figure()))
                .toList();
    }

    /** The same verdicts and reasons, with odds no closer than that takes. */
    List<Finding> settled() {
        return rulebook.bounds().stream()
                .map(clause -> settled(clause).withFigure(clause.figure()))
                .toList();
    }

    /** The probability that all bounds hold together; empty where one of them cannot be judged or too much is open. */
    OptionalDouble joint() {
        List<BandCases> all = new ArrayList<>();
        for (BoundClause clause : rulebook.bounds()) {
            Optional<Estimate> estimate = figures.estimate(clause.figure());
            Optional<Limits.Stated> stated = stated(clause);
            if (estimate.isEmpty() || stated.isEmpty()) {
                return OptionalDouble.empty();
            }
            all.add(BandCases.of(estimate.get(), stated.get()));
        }
        return all.isEmpty() ? OptionalDouble.empty() : BandCases.joint(all);
    }

    /** The finding of one bound. */
    Finding check(BoundClause clause) {
        return check(clause, (sides, rule) -> Conformity.jointOdds(sides));
    }

    /** The finding of one bound, its odds no closer than its verdict takes. */
    Finding settled(BoundClause clause) {
        return check(clause, Conformity::jointOdds);
    }

    private Finding check(BoundClause clause, BiFunction<List<Constraint>, DecisionRule, Odds> odds) {
        Optional<Estimate> estimate = figures.estimate(clause.figure());
        if (estimate.isEmpty()) {
            return unknown(clause);
        }
        Limits limits = clause.bound(figures, job.choose().parts());
        if (limits instanceof Limits.NotStated none) {
            return none.finding();
        }
        Limits.Stated stated = (Limits.Stated) limits;
        DecisionRule rule = clause.decideOr(rulebook.decide());
        Dimension dimension = dimension(catalogue, clause.figure());
        Source source = stated.source().isStated() ? stated.source() : clause.source();
        List<Constraint> sides = stated.on(estimate.get());
        Odds kept = stated.cases().isEmpty()
                ? odds.apply(sides, rule)
                : BandCases.of(estimate.get(), stated).odds();
        Finding finding = Conformity.check(clause.id(), sides, kept, dimension, rule, source);
        for (Step step : stated.steps()) {
            finding = finding.plusStep(step);
        }
        List<Caution> cautions = new ArrayList<>(limitsOfTheMethod(clause.figure(), finding.verdict()));
        cautions.addAll(new SourceMarks(rulebook, job).of(clause.id(), clause.source(), finding.steps()));
        finding = finding.withCautions(cautions);
        if (!isAccepted(clause.figure())) {
            return finding.asUndecided(Reason.READINGS_DISAGREE);
        }
        return finding;
    }

    /** What a figure cannot tell however well it is read: a taper by its diagonals, a twist by four depths. */
    private List<Caution> limitsOfTheMethod(String figure, Verdict verdict) {
        if (figure.equals("opening.diagonal.difference") && verdict == Verdict.PASS) {
            return Squareness.hiddenByEqualDiagonals(opening).stream()
                    .map(this::proveLittle)
                    .toList();
        }
        return OpeningFigures.hangsOnUncheckedDepths(opening, figure)
                ? List.of(Caution.of("twist-or-misread-depth", Caution.Severity.NOTE))
                : List.of();
    }

    private Caution proveLittle(Corner corner) {
        double offset = Squareness.offset(opening, corner).value();
        return new Caution(
                "equal-diagonals-prove-little",
                Caution.Severity.NOTE,
                Args.of("corner", corner.text())
                        .with("offset", Math.abs(offset))
                        .with("unit", "mm"));
    }

    private boolean isDeclared(String figure) {
        return catalogue.find(figure).filter(f -> f.stage() == Stage.DECLARED).isPresent();
    }

    private Finding unknown(BoundClause clause) {
        boolean planned = Figures.PLANNED.find(clause.figure()).isPresent();
        boolean known = catalogue.find(clause.figure()).isPresent();
        Args args = Args.of("figure", clause.figure());
        if (opening.hasShape() && Figures.OF_FACTS.find(clause.figure()).isPresent()) {
            return Finding.undecided(clause.id(), Reason.NOT_VERIFIED).plusStep(Step.of("facts-not-known", args));
        }
        return planned || !known
                ? Finding.undecided(clause.id(), Reason.NOT_VERIFIED)
                        .plusStep(Step.of(planned ? "figure-not-built" : "figure-not-declared", args))
                : Finding.undecided(clause.id(), Reason.NOT_DETERMINED)
                        .plusStep(Step.of("figure-not-determined", args));
    }

    /** The verdict of one clause, good to a few thousandths of its odds. */
    Verdict verdict(BoundClause clause) {
        Optional<Estimate> estimate = figures.estimate(clause.figure());
        if (estimate.isEmpty() || !isAccepted(clause.figure())) {
            return Verdict.UNDECIDED;
        }
        Optional<Limits.Stated> stated = stated(clause);
        if (stated.isEmpty()) {
            return Verdict.UNDECIDED;
        }
        List<Constraint> sides = stated.get().on(estimate.get());
        return stated.get().cases().isEmpty() && sides.size() == 1
                ? Conformity.roughVerdict(
                        sides.get(0).estimate(), sides.get(0).bound(), clause.decideOr(rulebook.decide()))
                : check(clause).verdict();
    }

    /** First order, sensitivities held: which readings by which of the instruments used would leave too little doubt. */
    List<Retake> candidates(BoundClause clause, List<ReadingDoubt> readings) {
        Optional<Estimate> estimate = figures.estimate(clause.figure());
        Optional<Limits.Stated> stated = stated(clause);
        if (estimate.isEmpty() || stated.isEmpty()) {
            return List.of();
        }
        for (Constraint side : stated.get().on(estimate.get())) {
            List<Retake> retakes =
                    Retakes.suggest(side.estimate(), side.bound(), clause.decideOr(rulebook.decide()), readings);
            if (!retakes.isEmpty()) {
                return retakes;
            }
        }
        return List.of();
    }

    /** The readings that the figure of a clause hangs on, the largest share of its variance first. */
    List<String> byShare(BoundClause clause, List<ReadingDoubt> readings) {
        return figures.estimate(clause.figure())
                .map(estimate -> Retakes.byShare(estimate, readings))
                .orElse(List.of());
    }

    private Optional<Limits.Stated> stated(BoundClause clause) {
        return clause.bound(figures, job.choose().parts()) instanceof Limits.Stated stated
                ? Optional.of(stated)
                : Optional.empty();
    }

    private boolean isAccepted(String figure) {
        return isDeclared(figure) || OpeningFigures.isAccepted(opening, figure);
    }

    static Dimension dimension(Catalogue catalogue, String figure) {
        return catalogue.find(figure).map(Figure::dimension).orElse(Dimension.LENGTH);
    }
}
