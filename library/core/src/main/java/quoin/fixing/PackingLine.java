package quoin.fixing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import quoin.measure.Uncertain;
import quoin.opening.LineFit.Station;

/**
 * The straight line on which the back of a frame lies along a side, and what is left between that line and the side.
 *
 * <p>The line touches the side where it stands out furthest and nowhere cuts into it. An offset is how far the side stands
 * out at a place, from whatever straight line was held against it; a gap is how far the side lies behind the back of the
 * frame, 0 where they touch. Which places touch is decided by the estimates; the doubt of a gap is that of the offsets
 * it hangs on, to first order.
 *
 * <p>Immutable and safe for use by many threads.
 *
 * @param slope how much the line rises in each mm along the side, with its doubt
 * @param gaps the gap at each place where an offset was read, in the order of the offsets, in mm
 */
public record PackingLine(Uncertain slope, List<Station> gaps) {
    /** Equal sums of gaps may differ by rounding. */
    private static final double SAME_MM = 1e-9;

    /** Copies the list. */
    public PackingLine {
        gaps = List.copyOf(gaps);
    }

    /**
     * The line in a given fall; a level one has slope 0, where offsets were read from a level.
     *
     * @param offsets how far the side stands out, one or more, at places of their own
     * @param slope how much the line has to rise in each mm along the side
     * @return the line through the place that stands out furthest
     * @formula gapᵢ = max over t of (z_t − slope · x_t) + slope · xᵢ − zᵢ
     * @unit mm; slope in mm in each mm
     * @edge one gap of 0 where there is one offset
     * @source assumption: derived here; the back of a frame is straight
     * @throws IllegalArgumentException if there is no offset, two are at one place, or the slope is not finite
     */
    public static PackingLine inFall(List<Station> offsets, double slope) {
        requirePlaces(offsets, 1);
        if (!Double.isFinite(slope)) {
            throw new IllegalArgumentException("slope must be finite, got " + slope);
        }
        int at = 0;
        for (int i = 1; i < offsets.size(); i++) {
            if (above(offsets.get(i), slope) > above(offsets.get(at), slope)) {
                at = i;
            }
        }
        List<Station> gaps = new ArrayList<>();
        for (int i = 0; i < offsets.size(); i++) {
            double[] weights = new double[offsets.size()];
            weights[at] += 1;
            weights[i] -= 1;
            double run = offsets.get(i).alongMm() - offsets.get(at).alongMm();
            gaps.add(gap(offsets, i, weights, slope * run));
        }
        return new PackingLine(Uncertain.exact(slope), gaps);
    }

    /**
     * The straight line whose largest gap is least: no packer thicker than it must be.
     *
     * @param offsets how far the side stands out, two or more, at places of their own
     * @return the line; there is only one
     * @formula min over lines above all offsets of max gap: parallel to the line through two of the offsets
     * @unit mm
     * @edge all gaps 0 where all offsets lie on a line
     * @source assumption: derived here, a linear program in two unknowns; its value is the minimum zone straightness
     * @throws IllegalArgumentException if there are fewer than two offsets or two are at one place
     */
    public static PackingLine leastLargest(List<Station> offsets) {
        return best(offsets, Comparator.comparingDouble(PackingLine::rounded));
    }

    /**
     * The straight line whose gaps add up to least: the fewest mm of packing in all.
     *
     * @param offsets how far the side stands out, two or more, at places of their own
     * @return the line; among equals the one whose largest gap is least
     * @formula min over lines above all offsets of Σ gap: through two of the offsets
     * @unit mm
     * @edge all gaps 0 where all offsets lie on a line
     * @source assumption: derived here, a linear program in two unknowns
     * @throws IllegalArgumentException if there are fewer than two offsets or two are at one place
     */
    public static PackingLine leastTotal(List<Station> offsets) {
        return best(offsets, Comparator.comparingDouble(PackingLine::total).thenComparingDouble(PackingLine::rounded));
    }

    private static PackingLine best(List<Station> offsets, Comparator<PackingLine> order) {
        requirePlaces(offsets, 2);
        List<PackingLine> lines = new ArrayList<>();
        for (int j = 0; j < offsets.size(); j++) {
            for (int k = j + 1; k < offsets.size(); k++) {
                lines.add(along(offsets, j, k));
            }
        }
        PackingLine best = lines.get(0);
        for (PackingLine line : lines) {
            if (order.compare(line, best) < 0) {
                best = line;
            }
        }
        return best;
    }

    /** The line parallel to the one through two offsets. */
    private static PackingLine along(List<Station> offsets, int j, int k) {
        double from = offsets.get(j).alongMm();
        double run = offsets.get(k).alongMm() - from;
        double rise = offsets.get(k).offset().value() - offsets.get(j).offset().value();
        double slope = rise / run;
        int at = j;
        for (int i = 0; i < offsets.size(); i++) {
            if (above(offsets.get(i), slope) > above(offsets.get(at), slope) + SAME_MM) {
                at = i;
            }
        }
        double there = (offsets.get(at).alongMm() - from) / run;
        List<Station> gaps = new ArrayList<>();
        for (int i = 0; i < offsets.size(); i++) {
            double share = (offsets.get(i).alongMm() - from) / run - there;
            double[] weights = new double[offsets.size()];
            weights[at] += 1;
            weights[k] += share;
            weights[j] -= share;
            weights[i] -= 1;
            gaps.add(gap(offsets, i, weights, 0));
        }
        double[] up = {1 / run, -1 / run};
        List<Uncertain> ends = List.of(offsets.get(k).offset(), offsets.get(j).offset());
        return new PackingLine(Uncertain.combine(slope, up, ends), gaps);
    }

    private static Station gap(List<Station> offsets, int i, double[] weights, double rise) {
        List<Uncertain> numbers = new ArrayList<>();
        double sum = rise;
        for (int n = 0; n < weights.length; n++) {
            Uncertain offset = offsets.get(n).offset();
            numbers.add(offset);
            sum += weights[n] * offset.value();
        }
        double value = sum > -SAME_MM ? StrictMath.max(0, sum) : sum;
        return new Station(offsets.get(i).alongMm(), Uncertain.combine(value, weights, numbers));
    }

    private static double above(Station station, double slope) {
        return station.offset().value() - slope * station.alongMm();
    }

    private double total() {
        double sum = 0;
        for (Station gap : gaps) {
            sum += gap.offset().value();
        }
        return StrictMath.rint(sum / SAME_MM);
    }

    private double rounded() {
        return StrictMath.rint(largestMm() / SAME_MM);
    }

    /**
     * The largest gap.
     *
     * @return the largest gap in mm, 0 or more
     */
    public double largestMm() {
        double largest = 0;
        for (Station gap : gaps) {
            largest = StrictMath.max(largest, gap.offset().value());
        }
        return largest;
    }

    private static void requirePlaces(List<Station> offsets, int least) {
        if (offsets.size() < least) {
            throw new IllegalArgumentException(
                    "number of offsets must be " + least + " or more, got " + offsets.size());
        }
        for (int i = 0; i < offsets.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (offsets.get(i).alongMm() == offsets.get(j).alongMm()) {
                    throw new IllegalArgumentException("offsets must be at places of their own, got two at "
                            + offsets.get(i).alongMm() + " mm");
                }
            }
        }
    }
}
