package quoin.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.judge.Args;
import quoin.judge.Bound;
import quoin.judge.Catalogue;
import quoin.judge.Caution;
import quoin.judge.Conformity;
import quoin.judge.Constraint;
import quoin.judge.DecisionRule;
import quoin.judge.Figure;
import quoin.judge.Finding;
import quoin.judge.ReadingDoubt;
import quoin.judge.Reason;
import quoin.judge.Retake;
import quoin.judge.Retakes;
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
        List<Finding> findings = new ArrayList<>();
        for (BoundClause clause : rulebook.bounds()) {
            findings.add(check(clause).withFigure(clause.figure()));
        }
        return findings;
    }

    /** The bounds that could be judged, for their odds together. */
    List<Constraint> constraints() {
        List<Constraint> constraints = new ArrayList<>();
        for (BoundClause clause : rulebook.bounds()) {
            Optional<Estimate> estimate = figures.estimate(clause.figure());
            Optional<Bound> bound = bound(clause);
            if (estimate.isPresent() && bound.isPresent()) {
                constraints.add(new Constraint(estimate.get(), bound.get()));
            }
        }
        return constraints;
    }

    private Finding check(BoundClause clause) {
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
        Finding finding =
                Conformity.check(clause.id(), estimate.get(), dimension, stated.bound(), rule, clause.source());
        for (Step step : stated.steps()) {
            finding = finding.plusStep(step);
        }
        finding = finding.withCautions(limitsOfTheMethod(clause.figure(), finding.verdict()));
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
        return bound(clause)
                .map(bound -> Conformity.roughVerdict(estimate.get(), bound, clause.decideOr(rulebook.decide())))
                .orElse(Verdict.UNDECIDED);
    }

    /** First order, sensitivities held: which readings by which of the instruments used would leave too little doubt. */
    List<Retake> candidates(BoundClause clause, List<ReadingDoubt> readings) {
        Optional<Estimate> estimate = figures.estimate(clause.figure());
        Optional<Bound> bound = bound(clause);
        return estimate.isEmpty() || bound.isEmpty()
                ? List.of()
                : Retakes.suggest(estimate.get(), bound.get(), clause.decideOr(rulebook.decide()), readings);
    }

    /** The readings that the figure of a clause hangs on, the largest share of its variance first. */
    List<String> byShare(BoundClause clause, List<ReadingDoubt> readings) {
        return figures.estimate(clause.figure())
                .map(estimate -> Retakes.byShare(estimate, readings))
                .orElse(List.of());
    }

    private Optional<Bound> bound(BoundClause clause) {
        return clause.bound(figures, job.choose().parts()) instanceof Limits.Stated stated
                ? Optional.of(stated.bound())
                : Optional.empty();
    }

    private boolean isAccepted(String figure) {
        return isDeclared(figure) || OpeningFigures.isAccepted(opening, figure);
    }

    static Dimension dimension(Catalogue catalogue, String figure) {
        return catalogue.find(figure).map(Figure::dimension).orElse(Dimension.LENGTH);
    }
}
