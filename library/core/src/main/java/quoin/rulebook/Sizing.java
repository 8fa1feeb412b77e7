package quoin.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.judge.Args;
import quoin.judge.Catalogue;
import quoin.judge.DecisionRule;
import quoin.judge.Finding;
import quoin.judge.Odds;
import quoin.judge.Reason;
import quoin.judge.Source;
import quoin.judge.Step;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Uncertain;

/**
 * How big the parts are made: the sizes of a rulebook, decided for one job.
 *
 * <p>A size is a constant once it is decided; {@link Size#asUncertain()} adds the doubt of the cut and nothing of the
 * readings. A function of values, safe for use by many threads.
 */
public final class Sizing {
    private final Catalogue catalogue;
    private final FigureSource survey;
    private final Map<String, String> choices;
    private final Map<String, Amount> ordered;
    private final DecisionRule rule;
    private final List<Finding> atEdges = new ArrayList<>();
    private final Map<String, Size> decided = new LinkedHashMap<>();
    private final Map<String, Finding> refused = new LinkedHashMap<>();

    private Sizing(
            Catalogue catalogue,
            FigureSource survey,
            Map<String, String> choices,
            Map<String, Amount> ordered,
            DecisionRule rule) {
        this.rule = rule;
        this.catalogue = catalogue;
        this.survey = survey;
        this.choices = choices;
        this.ordered = ordered;
    }

    /**
     * Decides every size of a rulebook, each after those it refers to, whatever their order.
     *
     * <p>A size that cannot be decided is a finding under its name: fail where no size fits (above the last band, at or
     * below zero, below the shortest of a list), undecided where something is not determined or not known, and where the
     * doubt of a figure reaches the last edge of its bands ({@link Sizes#atEdges()}). Where it reaches an edge between two
     * bands, the size is decided at the estimate and its steps show both amounts with their odds.
     *
     * @param rulebook the rules
     * @param catalogue the figures with their dimensions, the job's declared ones included
     * @param survey the estimates of the survey figures
     * @param choices the chosen part by kind
     * @param ordered sizes that are fixed already, by name; they replace what the clause would give, and the steps show
     *     both
     * @return the sizes and the findings
     */
    public static Sizes decide(
            Rulebook rulebook,
            Catalogue catalogue,
            FigureSource survey,
            Map<String, String> choices,
            Map<String, Amount> ordered) {
        return new Sizing(catalogue, survey, choices, ordered, rulebook.decide()).all(rulebook);
    }

    private Sizes all(Rulebook rulebook) {
        rulebook.order().sorted().forEach(this::one);
        List<Size> sizes = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        Map<String, Integer> count = rulebook.order().counts();
        count.forEach((id, times) -> {
            Size size = decided.get(id);
            if (times > 1) {
                findings.add(unknown(id, "duplicate-id"));
            } else if (size != null) {
                sizes.add(size);
            } else {
                findings.add(refused.getOrDefault(id, unknown(id, "cycle")));
            }
        });
        ordered.keySet().stream()
                .filter(id -> !count.containsKey(id))
                .forEach(id -> findings.add(unknown(id, "unknown-size")));
        return new Sizes(sizes, findings, atEdges);
    }

    private static Finding unknown(String id, String code) {
        return Finding.undecided(id, Reason.NOT_VERIFIED).plusStep(Step.of(code, Args.of("size", id)));
    }

    private void one(SizeClause clause) {
        Deciding deciding = new Deciding(catalogue, survey, choices, decided, refused.keySet());
        Outcome outcome = deciding.decide(clause);
        Outcome settled = Optional.ofNullable(ordered.get(clause.id()))
                .map(amount -> override(outcome, amount))
                .orElse(outcome);
        if (settled instanceof Outcome.Found found) {
            boolean made = !ordered.containsKey(clause.id());
            decided.put(clause.id(), size(clause, found, made ? deciding.deviation() : Outcome.NO_DEVIATION));
            if (made && deciding.outside() > 0) {
                atEdges.add(atEdge(clause.id(), deciding.outside(), found.steps()));
            }
        } else if (settled instanceof Outcome.Lost lost) {
            refused.put(clause.id(), lost.ofSize(clause.id(), rule));
        }
    }

    /** There may be no band for it: by the odds that there is one. */
    private Finding atEdge(String id, double outside, List<Step> steps) {
        boolean sure = !(rule instanceof DecisionRule.Guarded guarded) || 1 - outside >= guarded.probability();
        Finding finding = sure ? Finding.pass(id) : Finding.undecided(id, Reason.DOUBT);
        for (Step step : steps) {
            finding = step.code().endsWith("-odds") ? finding.plusStep(step) : finding;
        }
        return finding.withOdds(Odds.firstOrder(1 - outside));
    }

    private static Size size(SizeClause clause, Outcome.Found found, Uncertain deviation) {
        double within = Double.isNaN(clause.cutWithin()) ? 0 : clause.cutWithin();
        Amount amount = found.amount();
        return new Size(
                clause.id(), amount.value(), amount.dimension(), within, deviation, found.steps(), clause.source());
    }

    private static Outcome override(Outcome outcome, Amount amount) {
        Dimension dimension = amount.dimension();
        Args args = Args.of("value", dimension.toAnswer(amount.value())).with("unit", dimension.answerUnit());
        if (!(amount.value() > 0)) {
            return Picking.lost(Outcome.Cause.NOT_VERIFIED, "number-range", args);
        }
        List<Step> steps = new ArrayList<>();
        if (outcome instanceof Outcome.Found found) {
            if (found.amount().dimension() != dimension) {
                return Deciding.wrongDimension(found.amount().dimension(), dimension);
            }
            steps.addAll(found.steps());
            args = args.with("decided", dimension.toAnswer(found.amount().value()));
        } else if (outcome instanceof Outcome.Lost lost) {
            steps.add(lost.why());
        }
        steps.add(new Step("ordered", args, Source.UNSTATED));
        return new Outcome.Found(amount, steps);
    }
}
