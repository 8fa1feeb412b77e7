package quoin.job;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import quoin.chain.FrameFigures;
import quoin.judge.Catalogue;
import quoin.measure.Amount;
import quoin.measure.Estimate;
import quoin.measure.Uncertain;
import quoin.opening.Gaps;
import quoin.opening.Held;
import quoin.opening.Opening;
import quoin.opening.OpeningFigures;
import quoin.parts.Parts;
import quoin.rulebook.FigureSource;
import quoin.rulebook.Rulebook;
import quoin.rulebook.Size;
import quoin.rulebook.Sizes;
import quoin.rulebook.Sizing;

/**
 * The line of one job from its readings to what can be bounded: opening, survey figures, sizes, order figures. The same
 * for readings that were taken and for readings that may be. Not safe for use by many threads.
 */
final class Line {
    private static final String BY_THE_RULE = "gap.rule.least";
    private static final String TURNED = "gap.turned.";

    private final Job job;
    private final Rulebook rulebook;
    private final Parts parts;
    private final Catalogue catalogue;
    private final Surveyed surveyed;
    private final Map<String, Estimate> ordered = new LinkedHashMap<>();
    private final Sizes sizes;
    private final Optional<Gaps> gaps;
    private Optional<TradeRule> tradeRule = Optional.empty();
    private boolean compared;

    Line(Job job, Rulebook rulebook, Parts parts, Catalogue catalogue, Surveyed surveyed) {
        this(job, rulebook, parts, catalogue, surveyed, job.ordered());
    }

    /** With other sizes ordered than the job's. */
    Line(
            Job job,
            Rulebook rulebook,
            Parts parts,
            Catalogue catalogue,
            Surveyed surveyed,
            Map<String, Amount> sizesOrdered) {
        this.job = job;
        this.rulebook = rulebook;
        this.parts = parts;
        this.catalogue = catalogue;
        this.surveyed = surveyed;
        this.sizes =
                Sizing.decide(rulebook, catalogue, this::known, job.choose().parts(), sizesOrdered);
        this.gaps = orderFigures();
    }

    private Optional<Gaps> orderFigures() {
        Optional<Size> width = sizes.find("frame.width");
        Optional<Size> length = sizes.find("frame.length");
        if (width.isEmpty() || length.isEmpty()) {
            return Optional.empty();
        }
        Uncertain w = width.get().asUncertain();
        Uncertain l = length.get().asUncertain();
        ordered.put("frame.area", FrameFigures.area(w, l));
        Optional<Gaps> round = Gaps.of(opening(), surveyed.held(), w, l);
        round.ifPresent(g -> ordered.putAll(OpeningFigures.order(g)));
        if (rulebook.bounds().stream().anyMatch(bound -> bound.figure().startsWith(TURNED))) {
            Gaps.of(opening(), Held.FREELY, w, l).ifPresent(g -> ordered.putAll(OpeningFigures.turned(g)));
        }
        PassRoom.wayIn(job, opening()).ifPresent(way -> ordered.put(PassRoom.FIGURE, way.longest()));
        if (job.heat().isStated()) {
            new HeatRoom(job, parts)
                    .leastGap(opening(), surveyed.held(), w, l)
                    .ifPresent(gap -> ordered.put(HeatRoom.FIGURE, gap));
        }
        return round;
    }

    private Optional<Estimate> known(String figure) {
        if (figure.equals(BY_THE_RULE)) {
            tradeRule();
        }
        FigureValue declared = job.declared().get(figure);
        if (declared != null && catalogue.find(figure).isPresent()) {
            return Optional.of(declared.estimate());
        }
        Estimate value = surveyed.figures().get(figure);
        return Optional.ofNullable(value == null ? ordered.get(figure) : value);
    }

    /** The least gap over the temperatures of service, where it is known. */
    Optional<Estimate> leastGapInHeat() {
        return Optional.ofNullable(ordered.get(HeatRoom.FIGURE));
    }

    Opening opening() {
        return surveyed.opening();
    }

    Sizes sizes() {
        return sizes;
    }

    Optional<Gaps> gaps() {
        return gaps;
    }

    /** The frame by the least readings; worked out when asked for. */
    Optional<TradeRule> tradeRule() {
        if (!compared) {
            compared = true;
            tradeRule =
                    TradeRule.of(rulebook, catalogue, this::known, job.choose().parts(), surveyed);
            tradeRule.ifPresent(rule -> ordered.put(BY_THE_RULE, rule.leastGap()));
        }
        return tradeRule;
    }

    /** What a bound may name: figures and sizes. */
    FigureSource boundable() {
        return sizes.before(this::known);
    }

    /** Every figure that is determined, survey figures first. */
    Map<String, Estimate> figures() {
        tradeRule();
        Map<String, Estimate> all = new LinkedHashMap<>(surveyed.figures());
        all.putAll(ordered);
        return all;
    }
}
