package quoin.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.judge.Args;
import quoin.judge.Bound;
import quoin.judge.Conformity;
import quoin.judge.Constraint;
import quoin.judge.Source;
import quoin.judge.Step;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;

/** Which amount a quota states for one job, and which others its doubt leaves open. */
final class Picking {
    /** An estimate this close above an edge, in parts of the edge, counts as on it: an exact program is that exact. */
    private static final double EDGE = 1e-9;

    /** An outcome less likely than this is not looked into: odds are no better known. */
    static final double UNLIKELY = 1e-4;

    /** No edge further than this many standard uncertainties counts: 1 in 10 million. */
    private static final double FAR = 5.5;

    /** Tables have a dozen edges far apart; a doubt that reaches over more edges than this is not taken apart. */
    static final int MOST_EDGES = 16;

    private static final String TOO_MANY = "too-many-bands";

    private final FigureSource figures;
    private final Map<String, String> choices;

    Picking(FigureSource figures, Map<String, String> choices) {
        this.figures = figures;
        this.choices = choices;
    }

    /**
     * What a quota may be.
     *
     * @param when what must hold of the figure that picks the band; none where nothing is open
     * @param odds how likely that is
     * @param outcome the amount, or why there is none
     */
    record Case(List<Constraint> when, double odds, Outcome outcome) {
        /** Whether the figure is above the last band. */
        boolean isOutside() {
            return outcome instanceof Outcome.Lost lost && !lost.why().code().equals(TOO_MANY);
        }
    }

    /** The amount at the estimate. */
    Outcome pick(Quota quota, String place) {
        if (quota instanceof Quota.Fixed fixed) {
            return found(fixed.number(), place, List.of());
        }
        return quota instanceof Quota.Banded banded ? band(banded, place) : choice((Quota.ByChoice) quota, place);
    }

    private static Outcome found(Stated number, String place, List<Step> steps) {
        return new Outcome.Found(number.amount(), number.deviation(place), steps, number.source());
    }

    private Outcome band(Quota.Banded banded, String place) {
        Optional<Estimate> estimate = figures.forBands(banded.by());
        if (estimate.isEmpty()) {
            return lost(Outcome.Cause.NOT_DETERMINED, "figure-not-determined", Args.of("figure", banded.by()));
        }
        return band(banded, estimate.get().value(), place);
    }

    private static Outcome band(Quota.Banded banded, double value, String place) {
        int at = indexOf(banded.bands(), value);
        return at < 0 ? outside(banded, value) : in(banded, at, value, place);
    }

    private static Outcome in(Quota.Banded banded, int at, double value, String place) {
        Quota.Band band = banded.bands().get(at);
        String name = (banded.table().isEmpty() ? place : "table " + banded.table()) + "." + at;
        return found(band.number(), name, List.of(bandStep(banded.by(), value, band)));
    }

    /** The band that a value belongs to; &minus;1 for none. */
    static int indexOf(List<Quota.Band> bands, double value) {
        if (value > 0) {
            for (int i = 0; i < bands.size(); i++) {
                if (isUpTo(value, bands.get(i).upTo().value())) {
                    return i;
                }
            }
        }
        return -1;
    }

    /**
     * Every outcome that the doubt of the figure leaves open, in the order of the bands, the one above the last at the end;
     * none where the figure's doubt reaches no edge.
     */
    List<Case> cases(Quota quota, String place) {
        if (!(quota instanceof Quota.Banded banded)) {
            return List.of();
        }
        Optional<Estimate> estimate = figures.forBands(banded.by());
        int edges = estimate.isEmpty() ? 0 : edgesReached(banded.bands(), estimate.get());
        if (estimate.isEmpty() || edges == 0) {
            return List.of();
        }
        List<Case> cases = new ArrayList<>();
        if (edges > MOST_EDGES) {
            Args args = Args.of("by", banded.by()).with("edges", edges);
            cases.add(new Case(List.of(), 1, lost(Outcome.Cause.NOT_DETERMINED, TOO_MANY, args)));
            return cases;
        }
        double from = 0;
        double lowest = estimate.get().value() - FAR * widest(estimate.get());
        double highest = estimate.get().value() + FAR * widest(estimate.get());
        for (int i = 0; i < banded.bands().size(); i++) {
            double upTo = banded.bands().get(i).upTo().value();
            if (upTo > from && upTo > lowest && from < highest) {
                add(
                        cases,
                        estimate.get(),
                        new Bound(from, upTo),
                        in(banded, i, estimate.get().value(), place));
            }
            from = StrictMath.max(from, upTo);
        }
        add(
                cases,
                estimate.get(),
                Bound.atLeast(from),
                outside(banded, estimate.get().value()));
        return cases.size() > 1 ? cases : List.of();
    }

    private static void add(List<Case> cases, Estimate estimate, Bound bound, Outcome outcome) {
        double odds = Conformity.odds(estimate, bound).value();
        if (odds >= UNLIKELY) {
            cases.add(new Case(List.of(new Constraint(estimate, bound)), odds, outcome));
        }
    }

    private static int edgesReached(List<Quota.Band> bands, Estimate estimate) {
        double reach = FAR * widest(estimate);
        double value = estimate.value();
        int count = 0;
        for (Quota.Band band : bands) {
            count += StrictMath.abs(value - band.upTo().value()) < reach ? 1 : 0;
        }
        return count;
    }

    private static double widest(Estimate estimate) {
        if (estimate instanceof Uncertain value) {
            return value.standardUncertainty();
        }
        double widest = 0;
        for (Extreme.Part part : ((Extreme) estimate).parts()) {
            widest = StrictMath.max(widest, part.value().standardUncertainty());
        }
        return widest;
    }

    /** What the outcomes are and how likely each is. */
    static List<Step> oddsOf(Quota quota, List<Case> cases) {
        List<Step> steps = new ArrayList<>();
        for (Case open : cases) {
            Args args = Args.of("by", ((Quota.Banded) quota).by());
            if (open.outcome() instanceof Outcome.Found found) {
                steps.add(Step.of(
                        "band-odds", with(args, "amount", found.amount()).with("odds", open.odds())));
            } else if (open.isOutside()) {
                steps.add(Step.of("outside-odds", args.with("odds", open.odds())));
            } else if (open.outcome() instanceof Outcome.Lost lost) {
                steps.add(lost.why());
            }
        }
        return steps;
    }

    /** Whether a value belongs to what ends at an edge; the edge itself does. NaN belongs nowhere. */
    static boolean isUpTo(double value, double edge) {
        return value <= edge + EDGE * StrictMath.abs(edge);
    }

    private static Outcome outside(Quota.Banded banded, double value) {
        Args args = Args.of("by", banded.by());
        if (banded.bands().isEmpty()) {
            return lost(Outcome.Cause.NOT_VERIFIED, "no-band", args);
        }
        Amount last = banded.bands().get(banded.bands().size() - 1).upTo();
        Dimension dimension = last.dimension();
        args = args.with("value", dimension.toAnswer(value))
                .with("above", 0.0)
                .with("upTo", dimension.toAnswer(last.value()))
                .with("unit", dimension.answerUnit());
        return lost(Outcome.Cause.NO_SIZE_FITS, "outside-bands", args);
    }

    private static Step bandStep(String by, double value, Quota.Band band) {
        Dimension dimension = band.upTo().dimension();
        Args args = Args.of("by", by)
                .with("value", dimension.toAnswer(value))
                .with("upTo", dimension.toAnswer(band.upTo().value()))
                .with("unit", dimension.answerUnit());
        return new Step(
                "band", with(args, "amount", band.amount()), band.number().source());
    }

    private Outcome choice(Quota.ByChoice by, String place) {
        String part = choices.getOrDefault(by.choice(), "");
        if (part.isEmpty()) {
            return lost(Outcome.Cause.NOT_VERIFIED, "choice-not-made", Args.of("choice", by.choice()));
        }
        Args args = Args.of("choice", by.choice()).with("part", part);
        Stated number = by.numbers().get(part);
        if (number == null) {
            return lost(Outcome.Cause.NOT_VERIFIED, "choice-not-covered", args);
        }
        Step step = new Step("choice", with(args, "amount", number.amount()), number.source());
        return found(number, place + "." + part, List.of(step));
    }

    private static Args with(Args args, String name, Amount amount) {
        return args.with(name, amount.dimension().toAnswer(amount.value()))
                .with(name + "Unit", amount.dimension().answerUnit());
    }

    static Outcome.Lost lost(Outcome.Cause cause, String code, Args args) {
        return new Outcome.Lost(cause, new Step(code, args, Source.UNSTATED));
    }
}
