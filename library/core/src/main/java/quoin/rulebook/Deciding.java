package quoin.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quoin.judge.Args;
import quoin.judge.Catalogue;
import quoin.judge.Figure;
import quoin.judge.Shortfall;
import quoin.judge.Source;
import quoin.judge.Stage;
import quoin.judge.Step;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Estimate;
import quoin.measure.Uncertain;

/** One size: base, items, rounding. The sizes it refers to have been decided or refused before. */
final class Deciding {
    private final Catalogue catalogue;
    private final FigureSource figures;
    private final Map<String, Size> decided;
    private final Set<String> refused;
    private final Picking picking;
    private final List<Step> steps = new ArrayList<>();
    private Uncertain deviation = Outcome.NO_DEVIATION;
    private double outside;

    Deciding(
            Catalogue catalogue,
            FigureSource survey,
            Map<String, String> choices,
            Map<String, Size> decided,
            Set<String> refused) {
        this.catalogue = catalogue;
        this.decided = decided;
        this.refused = refused;
        this.figures = new FigureSource() {
            @Override
            public Optional<Estimate> estimate(String figure) {
                return refused.contains(figure) ? Optional.empty() : survey.estimate(figure);
            }

            @Override
            public Optional<Estimate> forBands(String figure) {
                Size size = decided.get(figure);
                return size == null ? estimate(figure) : Optional.of(Uncertain.exact(size.value()));
            }
        };
        this.picking = new Picking(figures, choices);
    }

    Outcome decide(SizeClause clause) {
        Outcome base = base(clause);
        if (!(base instanceof Outcome.Found found)) {
            return base;
        }
        Dimension dimension = found.amount().dimension();
        double value = found.amount().value();
        for (int i = 0; i < clause.more().size(); i++) {
            Outcome term = term("more", clause, i, dimension);
            if (!(term instanceof Outcome.Found more)) {
                return term;
            }
            value += more.amount().value();
        }
        for (int i = 0; i < clause.less().size(); i++) {
            Outcome term = term("less", clause, i, dimension);
            if (!(term instanceof Outcome.Found less)) {
                return term;
            }
            value -= less.amount().value();
        }
        return finish(clause, value, dimension);
    }

    private Outcome finish(SizeClause clause, double value, Dimension dimension) {
        if (!Double.isFinite(value)) {
            return Picking.lost(Outcome.Cause.NOT_VERIFIED, "out-of-range", Args.of("size", clause.id()));
        }
        if (clause.cutWithin() < 0) {
            return range("cutWithin", clause.cutWithin(), Dimension.LENGTH);
        }
        if (!Double.isNaN(clause.cutWithin()) && dimension != Dimension.LENGTH) {
            return wrongDimension(Dimension.LENGTH, dimension);
        }
        Outcome rounded = round(clause.round(), value, dimension);
        if (rounded instanceof Outcome.Found found
                && dimension == Dimension.LENGTH
                && !(found.amount().value() > 0)) {
            return Picking.lost(
                    Outcome.Cause.NO_SIZE_FITS,
                    "not-positive",
                    shown("value", found.amount().value(), dimension));
        }
        return rounded instanceof Outcome.Found found ? new Outcome.Found(found.amount(), steps) : rounded;
    }

    private Outcome base(SizeClause clause) {
        if (clause.of() instanceof Base.OfQuota of) {
            Outcome outcome = pick(of.quota(), clause.id() + ".of");
            if (outcome instanceof Outcome.Found found) {
                Amount amount = found.amount();
                add(
                        "base-amount",
                        shown("amount", amount.value(), amount.dimension()),
                        found.source().isStated() ? found.source() : clause.source());
                join(found, 1);
            }
            return outcome;
        }
        if (clause.of() instanceof Base.OfShortfall of) {
            return figure(of.figure(), (estimate, dimension) -> shortfall(of, estimate, dimension, clause.source()));
        }
        Base.OfFigure of = (Base.OfFigure) clause.of();
        return figure(of.figure(), (estimate, dimension) -> {
            Args args = Args.of("figure", of.figure());
            add("base-figure", shown(args, "value", estimate.value(), dimension), clause.source());
            return found(estimate.value(), dimension);
        });
    }

    /** What becomes of an estimate whose dimension is known. */
    private interface Use {
        Outcome of(Estimate estimate, Dimension dimension);
    }

    private Outcome figure(String name, Use use) {
        Size size = decided.get(name);
        if (size != null) {
            return use.of(size.asUncertain(), size.dimension());
        }
        Args args = Args.of("figure", name);
        if (refused.contains(name)) {
            return Picking.lost(Outcome.Cause.NOT_DETERMINED, "size-refused", Args.of("size", name));
        }
        Optional<Figure> figure = catalogue.find(name);
        if (figure.isEmpty()) {
            return Picking.lost(Outcome.Cause.NOT_VERIFIED, "unknown-figure", args);
        }
        if (figure.get().stage() == Stage.ORDER) {
            return Picking.lost(Outcome.Cause.NOT_VERIFIED, "order-figure-in-size", args);
        }
        Optional<Estimate> estimate = figures.estimate(name);
        return estimate.isEmpty()
                ? Picking.lost(Outcome.Cause.NOT_DETERMINED, "figure-not-determined", args)
                : use.of(estimate.get(), figure.get().dimension());
    }

    private Outcome shortfall(Base.OfShortfall of, Estimate estimate, Dimension dimension, Source source) {
        Args args = Args.of("figure", of.figure());
        if (!(of.probability() > 0 && of.probability() <= 0.5)) {
            return range("shortfall", of.probability(), Dimension.RATIO);
        }
        Optional<Shortfall> shortfall = Shortfall.of(estimate, of.probability());
        if (shortfall.isEmpty()) {
            return Picking.lost(Outcome.Cause.NOT_VERIFIED, "no-shortfall", args);
        }
        double value = shortfall.get().value();
        double error = shortfall.get().error();
        args = args.with("probability", of.probability()).with("estimate", dimension.toAnswer(estimate.value()));
        args = error > 0 ? args.with("error", dimension.widthToAnswer(error)) : args;
        add("base-shortfall", shown(args, "value", value, dimension), source);
        return found(value, dimension);
    }

    /** The amount at the estimate, with the odds of the others where its figure's doubt reaches an edge. */
    private Outcome pick(Quota quota, String place) {
        Outcome outcome = picking.pick(quota, place);
        List<Picking.Case> cases = picking.cases(quota, place);
        double lost = 0;
        for (Picking.Case open : cases) {
            lost += open.isOutside() ? open.odds() : 0;
        }
        List<Step> odds = Picking.oddsOf(quota, cases);
        if (outcome instanceof Outcome.Found found) {
            outside = StrictMath.max(outside, lost);
            steps.addAll(found.steps());
            steps.addAll(odds);
        } else if (outcome instanceof Outcome.Lost none && !cases.isEmpty()) {
            return new Outcome.Lost(none.cause(), none.why(), 1 - lost, odds);
        }
        return outcome;
    }

    private void join(Outcome.Found found, double times) {
        if (found.deviation().influences().size() > 0) {
            deviation = deviation.plus(found.deviation().times(times));
        }
    }

    /** How likely it is that a band which was picked does not hold, since the figure is above the last. */
    double outside() {
        return outside;
    }

    /** How far the numbers of the rule may be off together. */
    Uncertain deviation() {
        return deviation;
    }

    private Outcome term(String code, SizeClause clause, int at, Dimension dimension) {
        boolean more = code.equals("more");
        Item item = (more ? clause.more() : clause.less()).get(at);
        Outcome outcome = pick(item.quota(), clause.id() + "." + code + "." + at);
        if (!(outcome instanceof Outcome.Found found)) {
            return outcome;
        }
        Amount amount = found.amount();
        if (amount.dimension() != dimension) {
            return wrongDimension(dimension, amount.dimension());
        }
        Args args = shown("amount", amount.value(), dimension).with("times", item.times());
        double u = found.deviation().standardUncertainty();
        args = u > 0 ? args.with("u", dimension.widthToAnswer(u)) : args;
        if (!item.because().isEmpty()) {
            args = args.with("because", item.because());
        }
        add(code, args, source(item, found.source(), clause.source()));
        join(found, more ? item.times() : -item.times());
        double value = amount.value() * item.times();
        return Double.isFinite(value)
                ? found(value, dimension)
                : Picking.lost(Outcome.Cause.NOT_VERIFIED, "out-of-range", args);
    }

    private static Source source(Item item, Source number, Source clause) {
        return item.source().isStated() ? item.source() : number.isStated() ? number : clause;
    }

    private Outcome round(Rounding rounding, double value, Dimension dimension) {
        if (rounding instanceof Rounding.Step step) {
            return toStep(step, value, dimension);
        }
        return rounding instanceof Rounding.DownTo downTo ? downTo(downTo, value, dimension) : found(value, dimension);
    }

    private Outcome toStep(Rounding.Step rounding, double value, Dimension dimension) {
        double step = rounding.amount().value();
        if (rounding.amount().dimension() != dimension) {
            return wrongDimension(dimension, rounding.amount().dimension());
        }
        if (!(step > 0)) {
            return range(rounding.mode().text(), step, dimension);
        }
        if (!(StrictMath.abs(value / step) <= 0x1p53)) {
            return Picking.lost(Outcome.Cause.NOT_VERIFIED, "out-of-range", shown("value", value, dimension));
        }
        double rounded = Roundings.toStep(rounding.mode(), value, step);
        Args args = Args.of("mode", rounding.mode().text()).with("step", dimension.widthToAnswer(step));
        add("round", rounded(args, value, rounded, dimension), Source.UNSTATED);
        return found(rounded, dimension);
    }

    private Outcome downTo(Rounding.DownTo rounding, double value, Dimension dimension) {
        for (Amount amount : rounding.list()) {
            if (amount.dimension() != dimension) {
                return wrongDimension(dimension, amount.dimension());
            }
        }
        Optional<Amount> best = Roundings.downTo(rounding.list(), value);
        if (best.isEmpty()) {
            return Picking.lost(Outcome.Cause.NO_SIZE_FITS, "below-list", shown("value", value, dimension));
        }
        double rounded = best.get().value();
        add("round", rounded(Args.of("mode", "down-to"), value, rounded, dimension), Source.UNSTATED);
        return found(rounded, dimension);
    }

    private static Args rounded(Args args, double from, double to, Dimension dimension) {
        return shown(args.with("from", dimension.toAnswer(from)), "to", to, dimension)
                .with("residual", dimension.widthToAnswer(from - to));
    }

    /** On the way: the steps are handed out at the end. */
    private static Outcome found(double value, Dimension dimension) {
        return new Outcome.Found(new Amount(value, dimension), List.of());
    }

    private void add(String code, Args args, Source source) {
        steps.add(new Step(code, args, source));
    }

    private static Args shown(String name, double value, Dimension dimension) {
        return shown(Args.NONE, name, value, dimension);
    }

    private static Args shown(Args args, String name, double value, Dimension dimension) {
        return args.with(name, dimension.toAnswer(value), dimension.answerUnit());
    }

    private static Outcome range(String field, double got, Dimension dimension) {
        Args args = Args.of("field", field);
        return Picking.lost(Outcome.Cause.NOT_VERIFIED, "number-range", shown(args, "got", got, dimension));
    }

    static Outcome wrongDimension(Dimension expected, Dimension got) {
        Args args = Args.of("expected", expected.label()).with("got", got.label());
        return Picking.lost(Outcome.Cause.NOT_VERIFIED, "wrong-dimension", args);
    }
}
