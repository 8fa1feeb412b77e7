package quoin.opening;

import java.util.Optional;
import quoin.judge.Bound;
import quoin.judge.Conformity;
import quoin.measure.Influence;
import quoin.measure.Steps;
import quoin.measure.Uncertain;

/**
 * How large to make a frame, by its odds to go in: the largest that is likely enough, or the one that costs least.
 *
 * <p>Width and length are those of the largest rectangle that goes in, both taken back (or let out) by the same amount and
 * rounded down to a step. Functions of values, safe for use by many threads.
 */
public final class SizeByOdds {
    /** Sizes further than this many standard uncertainties from the largest rectangle are not looked at. */
    private static final double FAR = 8;

    /** More sizes than this are not looked at one by one: every so many first, then those beside the best. */
    private static final int MOST = 60;

    private SizeByOdds() {}

    /**
     * What a size has to keep to. Immutable and safe for use by many threads.
     *
     * @param gapAtLeastMm the least gap that counts as going in, in mm
     * @param stepMm sizes are multiples of it, in mm
     * @param cutWithinMm how well the saw cuts, ± that many mm
     */
    public record Terms(double gapAtLeastMm, double stepMm, double cutWithinMm) {
        /** Checks the ranges. */
        public Terms {
            require(
                    gapAtLeastMm >= 0 && Double.isFinite(gapAtLeastMm),
                    "gap must be 0 mm or more",
                    gapAtLeastMm,
                    " mm");
            require(stepMm > 0 && Double.isFinite(stepMm), "step must be above 0 mm", stepMm, " mm");
            require(
                    cutWithinMm >= 0 && Double.isFinite(cutWithinMm),
                    "cut must be within 0 mm or more",
                    cutWithinMm,
                    " mm");
        }
    }

    /**
     * A size with its odds. Immutable and safe for use by many threads.
     *
     * @param widthMm the width in mm
     * @param lengthMm the length in mm
     * @param odds the probability that it goes in, 0 to 1
     */
    public record Choice(double widthMm, double lengthMm, double odds) {}

    /**
     * A size with what it costs in the mean. Immutable and safe for use by many threads.
     *
     * @param choice the size
     * @param cost the expected cost, in the unit of the costs given
     */
    public record Costed(Choice choice, double cost) {}

    private static void require(boolean held, String rule, double got, String unit) {
        if (!held) {
            throw new IllegalArgumentException(rule + ", got " + got + unit);
        }
    }

    /**
     * The largest size whose odds to go in are at least p.
     *
     * @param opening the opening
     * @param held how the frame lies
     * @param terms what the size has to keep to
     * @param probability the odds it needs, above 0 and below 1
     * @return the size, or empty where there is no shape or no size of that step is likely enough
     * @throws IllegalArgumentException if the probability is out of range
     * @formula the least amount d, in steps, such that P(gap.least ≥ gapAtLeast) ≥ p for the largest rectangle less d
     * @unit mm
     * @edge no shape, or nothing above 0 mm: empty; the odds are those of all parts of the least gap together
     * @source standard: JCGM 106:2012, 8.3 (acceptance by a conformance probability)
     */
    public static Optional<Choice> largest(Opening opening, Held held, Terms terms, double probability) {
        require(probability > 0 && probability < 1, "probability must be above 0 and below 1", probability, "");
        return Fit.largest(opening, held).flatMap(fit -> new Sizes(opening, held, terms, fit).largest(probability));
    }

    /**
     * The size of least expected cost.
     *
     * @param opening the opening
     * @param held how the frame lies
     * @param terms what the size has to keep to
     * @param remake what a frame that does not go in costs, above 0
     * @param perMm what a millimetre of the widest gap costs, above 0, in the same unit
     * @return the size and its cost, or empty where there is no shape
     * @throws IllegalArgumentException if a cost is out of range
     * @formula the amount d, in steps, with the least remake·P(gap.least &lt; gapAtLeast) + perMm·max(0, gap.greatest) for
     *     the largest rectangle less d; gap.greatest at its estimate
     * @unit mm, and the unit of the costs
     * @edge no shape, or nothing above 0 mm: empty; of sizes that cost the same the smallest
     * @source handbook: expected loss (any textbook on decisions under uncertainty)
     */
    public static Optional<Costed> cheapest(Opening opening, Held held, Terms terms, double remake, double perMm) {
        require(remake > 0 && Double.isFinite(remake), "cost of a remake must be above 0", remake, "");
        require(perMm > 0 && Double.isFinite(perMm), "cost of a mm of gap must be above 0", perMm, "");
        return Fit.largest(opening, held).flatMap(fit -> new Sizes(opening, held, terms, fit).cheapest(remake, perMm));
    }

    /** All sizes near the largest rectangle, in steps taken back from it. Not safe for use by many threads. */
    private static final class Sizes {
        private final Opening opening;
        private final Held held;
        private final Terms terms;
        private final double width;
        private final double length;
        private final int outermost;
        private final int innermost;

        Sizes(Opening opening, Held held, Terms terms, Fit.Rectangle fit) {
            this.opening = opening;
            this.held = held;
            this.terms = terms;
            this.width = Steps.down(fit.width().value(), terms.stepMm());
            this.length = Steps.down(fit.length().value(), terms.stepMm());
            double u = Math.max(fit.width().standardUncertainty(), fit.length().standardUncertainty());
            double far = FAR * u + 2 * terms.cutWithinMm();
            this.outermost = -steps(far);
            this.innermost = steps(far + 2 * terms.gapAtLeastMm()) + 1;
        }

        private int steps(double mm) {
            return (int) Math.min(1e6, Math.ceil(mm / terms.stepMm()));
        }

        private double size(double largest, int back) {
            return Steps.nearest(largest - back * terms.stepMm(), terms.stepMm());
        }

        private boolean isSize(int back) {
            return size(Math.min(width, length), back) > 0;
        }

        private Optional<Gaps> gaps(int back) {
            return Gaps.of(opening, held, cut("width", size(width, back)), cut("length", size(length, back)));
        }

        private Uncertain cut(String what, double size) {
            return terms.cutWithinMm() > 0
                    ? Uncertain.of(size, Influence.rectangular("cut/frame." + what, terms.cutWithinMm()))
                    : Uncertain.exact(size);
        }

        private double odds(Gaps gaps) {
            return Conformity.odds(Gaps.least(gaps), Bound.atLeast(terms.gapAtLeastMm()))
                    .value();
        }

        private double odds(int back) {
            return isSize(back) ? gaps(back).map(this::odds).orElse(0.0) : 0;
        }

        private Choice choice(int back, double odds) {
            return new Choice(size(width, back), size(length, back), odds);
        }

        /** A smaller frame is never less likely to go in: halving finds the first that is likely enough. */
        Optional<Choice> largest(double probability) {
            int unlikely = outermost - 1;
            int likely = innermost;
            double best = odds(likely);
            if (!(best >= probability)) {
                return Optional.empty();
            }
            while (likely - unlikely > 1) {
                int middle = unlikely + (likely - unlikely) / 2;
                double odds = odds(middle);
                if (odds >= probability) {
                    likely = middle;
                    best = odds;
                } else {
                    unlikely = middle;
                }
            }
            return Optional.of(choice(likely, best));
        }

        Optional<Costed> cheapest(double remake, double perMm) {
            int stride = Math.max(1, (innermost - outermost) / MOST);
            Optional<Costed> best = cheapest(remake, perMm, outermost, innermost, stride);
            if (best.isEmpty() || stride == 1) {
                return best;
            }
            int near = (int) Math.rint((width - best.get().choice().widthMm()) / terms.stepMm());
            return cheapest(remake, perMm, near - stride, near + stride, 1);
        }

        private Optional<Costed> cheapest(double remake, double perMm, int from, int to, int stride) {
            Optional<Costed> best = Optional.empty();
            for (int back = to; back >= from; back -= stride) {
                Optional<Gaps> gaps = isSize(back) ? gaps(back) : Optional.empty();
                if (gaps.isPresent()) {
                    double odds = odds(gaps.get());
                    double widest = Math.max(0, Gaps.greatest(gaps.get()).value());
                    double cost = remake * (1 - odds) + perMm * widest;
                    if (best.isEmpty() || cost < best.get().cost()) {
                        best = Optional.of(new Costed(choice(back, odds), cost));
                    }
                }
            }
            return best;
        }
    }
}
