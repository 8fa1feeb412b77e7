package quoin.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.judge.Catalogue;
import quoin.judge.Figure;
import quoin.judge.Source;
import quoin.measure.Dimension;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;
import quoin.opening.Gaps;
import quoin.opening.Held;
import quoin.opening.Opening;

/**
 * The gaps round a frame at the temperatures of service.
 *
 * <p>A frame that grows against its surround takes from the gaps as a larger frame would. Its sizes are meant at 20 &deg;C; the
 * opening was measured at a temperature of its own, by a tape that is taken to be right there. Stateless.
 */
public final class HeatGaps {
    private static final Source SOURCE =
            Source.of(Source.Kind.HANDBOOK, "linear thermal expansion (any handbook of physics)");

    private HeatGaps() {}

    /** The figure that this class computes. */
    public static final Catalogue CATALOGUE = Catalogue.of(List.of(Figure.order(
            "heat.gap.least",
            Dimension.LENGTH,
            "gap.least of the frame as it has grown against its surround, coldest or hottest",
            SOURCE,
            "gap.least",
            "frame.width",
            "frame.length")));

    /**
     * What frame and surround are made of.
     *
     * @param frame the frame's coefficient of expansion, in 1/K
     * @param surround that of the opening, in 1/K
     */
    public record Expansion(Uncertain frame, Uncertain surround) {}

    /**
     * The temperatures of a job.
     *
     * @param measuredK of the opening when it was measured, in K, above 0
     * @param fromK the coldest in service, in K, above 0 and not above the hottest
     * @param toK the hottest in service, in K
     */
    public record Temperatures(double measuredK, double fromK, double toK) {
        /** Refuses what is no temperature, and a range that is none. */
        public Temperatures {
            Thermal.requireTemperature("temperature of measuring", measuredK);
            Thermal.requireRange(fromK, toK);
        }
    }

    /**
     * The least gap over the temperatures of service.
     *
     * @param opening the opening as measured
     * @param held how the frame lies
     * @param width the frame's width at 20 &deg;C, in mm, a decided size with its cutting tolerance
     * @param length the frame's length at 20 &deg;C, in mm
     * @param expansion what frame and surround are made of
     * @param temperatures of measuring and of service
     * @return a least whose parts are those of the coldest and of the hottest, or empty where the readings determine no shape
     * @figure heat.gap.least
     * @formula gap.least of the sizes w + w &middot; &alpha;_frame (T &minus; 293.15 K) &minus; w &middot; &alpha;_surround (T &minus; T_measured), at both
     *     ends of the range: growth is linear, and so one of them is the least
     * @unit mm
     * @edge gap.least itself where nothing grows; what the gap itself grows (0.03 mm for 10 mm at worst) is left out
     * @source handbook: linear thermal expansion (any handbook of physics)
     * @throws IllegalArgumentException if a size is not above 0 mm
     */
    public static Optional<Extreme> least(
            Opening opening,
            Held held,
            Uncertain width,
            Uncertain length,
            Expansion expansion,
            Temperatures temperatures) {
        List<Extreme.Part> parts = new ArrayList<>();
        double[] ends = {temperatures.fromK(), temperatures.toK()};
        for (int i = 0; i < (ends[0] == ends[1] ? 1 : 2); i++) {
            Uncertain strain = expansion
                    .frame()
                    .times(ends[i] - Thermal.REFERENCE_K)
                    .minus(expansion.surround().times(ends[i] - temperatures.measuredK()));
            Optional<Gaps> gaps = Gaps.of(opening, held, grown(width, strain), grown(length, strain));
            if (gaps.isEmpty()) {
                return Optional.empty();
            }
            for (Extreme.Part part : Gaps.least(gaps.get()).parts()) {
                List<String> names = new ArrayList<>(part.names());
                names.add(i == 0 ? "coldest" : "hottest");
                parts.add(new Extreme.Part(names, part.value()));
            }
        }
        return Optional.of(Extreme.least(parts));
    }

    private static Uncertain grown(Uncertain size, Uncertain strain) {
        return size.plus(strain.times(size.value()));
    }
}
