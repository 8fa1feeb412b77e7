package quoin.rulebook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.judge.Args;
import quoin.judge.Source;
import quoin.judge.Step;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Estimate;

/** Which amount a quota states for one job. */
final class Picking {
    /** An estimate this close above an edge, in parts of the edge, counts as on it: an exact program is that exact. */
    private static final double EDGE = 1e-9;

    private final FigureSource figures;
    private final Map<String, String> choices;

    Picking(FigureSource figures, Map<String, String> choices) {
        this.figures = figures;
        this.choices = choices;
    }

    Outcome pick(Quota quota) {
        if (quota instanceof Quota.Fixed fixed) {
            return new Outcome.Found(fixed.amount(), List.of());
        }
        return quota instanceof Quota.Banded banded ? band(banded) : choice((Quota.ByChoice) quota);
    }

    private Outcome band(Quota.Banded banded) {
        Optional<Estimate> estimate = figures.estimate(banded.by());
        if (estimate.isEmpty()) {
            return lost(Outcome.Cause.NOT_DETERMINED, "figure-not-determined", Args.of("figure", banded.by()));
        }
        double value = estimate.get().value();
        if (value > 0) {
            for (Quota.Band band : banded.bands()) {
                if (isUpTo(value, band.upTo().value())) {
                    return new Outcome.Found(band.amount(), List.of(bandStep(banded.by(), value, band)));
                }
            }
        }
        return outside(banded, value);
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
        return Step.of("band", with(args, "amount", band.amount()));
    }

    private Outcome choice(Quota.ByChoice by) {
        String part = choices.getOrDefault(by.choice(), "");
        if (part.isEmpty()) {
            return lost(Outcome.Cause.NOT_VERIFIED, "choice-not-made", Args.of("choice", by.choice()));
        }
        Args args = Args.of("choice", by.choice()).with("part", part);
        Amount amount = by.amounts().get(part);
        if (amount == null) {
            return lost(Outcome.Cause.NOT_VERIFIED, "choice-not-covered", args);
        }
        return new Outcome.Found(amount, List.of(Step.of("choice", with(args, "amount", amount))));
    }

    private static Args with(Args args, String name, Amount amount) {
        return args.with(name, amount.dimension().toAnswer(amount.value()))
                .with(name + "Unit", amount.dimension().answerUnit());
    }

    static Outcome.Lost lost(Outcome.Cause cause, String code, Args args) {
        return new Outcome.Lost(cause, new Step(code, args, Source.UNSTATED));
    }
}
