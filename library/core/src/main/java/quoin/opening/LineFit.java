package quoin.opening;

import java.util.ArrayList;
import java.util.List;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;

/**
 * How straight a line of offsets is.
 *
 * <p>Immutable and safe for use by many threads.
 *
 * @param intercept where the fitted line is at 0
 * @param slope how much it rises in each mm along
 * @param departures how far each offset lies above the fitted line
 */
public record LineFit(Uncertain intercept, Uncertain slope, List<Uncertain> departures) {
    /** Copies the list. */
    public LineFit {
        departures = List.copyOf(departures);
    }

    /**
     * An offset from a string or a level, at a place along a side.
     *
     * @param alongMm how far along the side, in mm
     * @param offset the offset there, in mm
     */
    public record Station(double alongMm, Uncertain offset) {
        /** Checks the place. */
        public Station {
            if (!Double.isFinite(alongMm)) {
                throw new IllegalArgumentException("along must be finite, got " + alongMm + " mm");
            }
        }
    }

    /**
     * The line that fits best by least squares, every offset alike.
     *
     * @param stations two or more, not all at one place
     * @return the line, its doubt that of the offsets
     * @formula slope = Σ(x − x̄)z / Σ(x − x̄)²; intercept = z̄ − slope · x̄
     * @unit mm and mm in each mm
     * @edge through both where there are two
     * @source handbook: straight line by least squares; sd of the slope σ/√Σ(x − x̄)²
     * @throws IllegalArgumentException if there are fewer than two stations or all are at one place
     */
    public static LineFit leastSquares(List<Station> stations) {
        int n = stations.size();
        double mean = 0;
        List<Uncertain> offsets = new ArrayList<>();
        for (Station station : stations) {
            mean += station.alongMm() / n;
            offsets.add(station.offset());
        }
        double squares = 0;
        for (Station station : stations) {
            squares += (station.alongMm() - mean) * (station.alongMm() - mean);
        }
        if (n < 2 || !(squares > 0)) {
            throw new IllegalArgumentException("stations must be at 2 places or more, got " + n + " stations");
        }
        double[] rise = new double[n];
        double[] level = new double[n];
        for (int i = 0; i < n; i++) {
            rise[i] = (stations.get(i).alongMm() - mean) / squares;
            level[i] = 1.0 / n - rise[i] * mean;
        }
        Uncertain slope = Weighted.sum(rise, offsets);
        Uncertain intercept = Weighted.sum(level, offsets);
        List<Uncertain> departures = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double[] weights = new double[n];
            for (int j = 0; j < n; j++) {
                weights[j] =
                        (i == j ? 1 : 0) - level[j] - rise[j] * stations.get(i).alongMm();
            }
            departures.add(Weighted.sum(weights, offsets));
        }
        return new LineFit(intercept, slope, departures);
    }

    /**
     * How straight: the distance of the two closest parallel lines that hold all offsets between them.
     *
     * <p>That distance is the greatest departure of any station from the string between any two on either side of it: the
     * parts stand for these, so that the odds of a limit count all of them.
     *
     * @param stations three or more at places of their own
     * @return the signed departure largest in size; positive above its string
     * @formula max over i between j and k of |zᵢ − (λzⱼ + (1 − λ)zₖ)|, λ = (xₖ − xᵢ)/(xₖ − xⱼ)
     * @unit mm
     * @edge a single departure where there are three stations; 0 where all lie on a line
     * @source standard: minimum zone straightness as ISO 1101 defines it (from memory); by the dual of its linear program
     * @throws IllegalArgumentException if there are fewer than three stations or two at one place
     */
    public static Estimate minimumZone(List<Station> stations) {
        List<Station> along = new ArrayList<>(stations);
        along.sort((a, b) -> Double.compare(a.alongMm(), b.alongMm()));
        int n = along.size();
        if (n < 3) {
            throw new IllegalArgumentException("stations must be 3 or more, got " + n);
        }
        for (int i = 1; i < n; i++) {
            if (along.get(i).alongMm() == along.get(i - 1).alongMm()) {
                throw new IllegalArgumentException("stations must be at places of their own, got two at "
                        + along.get(i).alongMm() + " mm");
            }
        }
        List<Extreme.Part> parts = new ArrayList<>();
        for (int i = 1; i < n - 1; i++) {
            for (int j = 0; j < i; j++) {
                for (int k = i + 1; k < n; k++) {
                    parts.add(departure(along.get(j), along.get(i), along.get(k)));
                }
            }
        }
        return parts.size() == 1 ? parts.get(0).value() : Extreme.largestInSize(parts);
    }

    private static Extreme.Part departure(Station before, Station at, Station after) {
        double share = (after.alongMm() - at.alongMm()) / (after.alongMm() - before.alongMm());
        Uncertain departure = Weighted.sum(
                new double[] {1, -share, share - 1}, List.of(at.offset(), before.offset(), after.offset()));
        String name = at.alongMm() + "-from-" + before.alongMm() + "-to-" + after.alongMm();
        return new Extreme.Part(List.of(name), departure);
    }
}
