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
import quoin.judge.Reason;
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
    private final List<Finding> findings = new ArrayList<>();
    private final List<Constraint> constraints = new ArrayList<>();

    BoundChecks(Job job, Rulebook rulebook, Opening opening, FigureSource figures, Catalogue catalogue) {
        this.job = job;
        this.rulebook = rulebook;
        this.opening = opening;
        this.figures = figures;
        this.catalogue = catalogue;
        for (BoundClause clause : rulebook.bounds()) {
            findings.add(check(clause).withFigure(clause.figure()));
        }
    }

    List<Finding> findings() {
        return findings;
    }

    /** The bounds that could be judged, for their odds together. */
    List<Constraint> constraints() {
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
        constraints.add(new Constraint(estimate.get(), stated.bound()));
        Finding finding =
                Conformity.check(clause.id(), estimate.get(), dimension, stated.bound(), rule, clause.source());
        for (Step step : stated.steps()) {
            finding = finding.plusStep(step);
        }
        finding = finding.withCautions(limitsOfTheMethod(clause.figure(), finding.verdict()));
        if (!isDeclared(clause.figure()) && !OpeningFigures.isAccepted(opening, clause.figure())) {
            return finding.asUndecided(Reason.READINGS_DISAGREE);
        }
        return finding.verdict() == Verdict.UNDECIDED
                ? withRetakes(finding, estimate.get(), stated.bound(), rule)
                : finding;
    }

    /** What a figure cannot tell however well it is read: a taper by its diagonals, a twist by four depths. */
    private List<Caution> limitsOfTheMethod(String figure, Verdict verdict) {
        if (figure.equals("opening.diagonal.difference") && verdict == Verdict.PASS) {
            return Squareness.hiddenByEqualDiagonals(opening).stream()
                    .map(this::proveLittle)
                    .toList();
        }
        boolean ofDepths = figure.equals("opening.twist") || figure.equals("opening.flatness");
        return ofDepths && opening.planes().stream().allMatch(plane -> plane.redundancy() == 0)
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

    private Finding withRetakes(Finding finding, Estimate estimate, Bound bound, DecisionRule rule) {
        return finding.withRetakes(
                Retakes.suggest(estimate, bound, rule, opening.survey().readingDoubts()));
    }

    static Dimension dimension(Catalogue catalogue, String figure) {
        return catalogue.find(figure).map(Figure::dimension).orElse(Dimension.LENGTH);
    }
}
