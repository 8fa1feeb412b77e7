package quoin.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.judge.Bound;
import quoin.measure.Estimate;
import quoin.measure.Uncertain;
import quoin.rulebook.BoundClause;
import quoin.rulebook.FigureSource;
import quoin.rulebook.Interval;
import quoin.rulebook.Limits;
import quoin.rulebook.Rulebook;

/**
 * Which rectangular openings a frame that is made already suits, by the bounds on its gaps.
 *
 * <p>In a rectangle W by L a frame w by l in the middle has the gaps (W &minus; w)/2 and (L &minus; l)/2; the least and the
 * greatest of them are held against the limits themselves, without doubt. An opening that is no rectangle suits less. Immutable
 * and safe for use by many threads.
 *
 * @param width the widths of the openings, in mm
 * @param length their lengths, in mm
 * @param by the bounds that the ends come from
 */
public record StockOpenings(Interval width, Interval length, List<String> by) {
    /** Copies the list. */
    public StockOpenings {
        by = List.copyOf(by);
    }

    /**
     * The rectangles that a frame suits.
     *
     * @formula w + 2 a &le; W &le; w + 2 b, l + 2 a &le; L &le; l + 2 b, with a the largest least value of {@code gap.least} and b
     *     the smallest greatest value of {@code gap.greatest}
     * @unit mm
     * @edge an end is infinite where no bound sets it; an interval is empty where the bounds exclude each other; the greatest value
     *     of a least gap and the least value of a greatest are not used, nor limits that hang on a figure of the opening
     * @source practice: a rectangle, the frame in its middle
     * @param rulebook the rules, without errors
     * @param widthMm the frame's width, above 0 mm
     * @param lengthMm the frame's length, above 0 mm
     * @param choices the chosen part by kind
     * @return the openings
     */
    public static StockOpenings of(Rulebook rulebook, double widthMm, double lengthMm, Map<String, String> choices) {
        FigureSource known = figure -> switch (figure) {
            case "frame.width" -> Optional.<Estimate>of(Uncertain.exact(widthMm));
            case "frame.length" -> Optional.<Estimate>of(Uncertain.exact(lengthMm));
            default -> Optional.empty();
        };
        double least = Double.NEGATIVE_INFINITY;
        double most = Double.POSITIVE_INFINITY;
        List<String> by = new ArrayList<>();
        for (BoundClause clause : rulebook.bounds()) {
            boolean below = clause.figure().equals("gap.least");
            boolean above = clause.figure().equals("gap.greatest");
            if ((below || above) && clause.bound(known, choices) instanceof Limits.Stated stated) {
                Bound bound = stated.bound();
                least = below ? Math.max(least, bound.atLeast()) : least;
                most = above ? Math.min(most, bound.atMost()) : most;
                if (below ? bound.hasAtLeast() : bound.hasAtMost()) {
                    by.add(clause.id());
                }
            }
        }
        return new StockOpenings(
                new Interval(widthMm + 2 * least, true, widthMm + 2 * most, true),
                new Interval(lengthMm + 2 * least, true, lengthMm + 2 * most, true),
                by);
    }
}
