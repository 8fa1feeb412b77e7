package quoin.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import quoin.opening.Cannot;
import quoin.opening.Finish;
import quoin.opening.HeadTowards;
import quoin.opening.KeepOut;
import quoin.opening.Moving;
import quoin.opening.Obstacle;
import quoin.opening.Reading;
import quoin.opening.Side;
import quoin.parts.Substrate;

/**
 * All that the job says about its opening. Immutable and safe for use by many threads.
 *
 * @param fit {@code recess}
 * @param slopeRad the slope, in rad; NaN where not stated
 * @param headTowards which way the head lies
 * @param markedOnSite whether the head was marked on site
 * @param straightWithinMm how straight the sides are, limits in mm; NaN where not stated
 * @param finish whether anything is still to come
 * @param readings what was read
 * @param cannot what cannot be read
 * @param sides what the sides are made of
 * @param obstacles fixed things in the recess
 * @param moving sashes and flaps
 * @param keepOuts where nothing may be drilled
 */
public record OpeningFacts(
        String fit,
        double slopeRad,
        HeadTowards headTowards,
        boolean markedOnSite,
        double straightWithinMm,
        Finish finish,
        List<Reading> readings,
        List<Cannot> cannot,
        Map<Side, Substrate> sides,
        List<Obstacle> obstacles,
        List<Moving> moving,
        List<KeepOut> keepOuts) {
    /** Copies the lists. */
    public OpeningFacts {
        if (!fit.equals("recess")) {
            throw new IllegalArgumentException("fit must be recess, got " + fit);
        }
        Objects.requireNonNull(headTowards, "headTowards");
        Objects.requireNonNull(finish, "finish");
        if (straightWithinMm < 0) {
            throw new IllegalArgumentException("straightWithin must be 0 mm or more, got " + straightWithinMm + " mm");
        }
        readings = List.copyOf(readings);
        cannot = List.copyOf(cannot);
        Map<Side, Substrate> ordered = new LinkedHashMap<>();
        for (Side side : Side.values()) {
            Substrate value = sides.get(side);
            if (value != null) {
                ordered.put(side, value);
            }
        }
        sides = Collections.unmodifiableMap(ordered);
        obstacles = List.copyOf(obstacles);
        moving = List.copyOf(moving);
        keepOuts = List.copyOf(keepOuts);
    }

    /**
     * A finished recess of which only the readings are known.
     *
     * @param headTowards which way the head lies
     * @param straightWithinMm how straight the sides are, limits in mm
     * @param readings what was read
     * @return the facts
     */
    public static OpeningFacts finished(HeadTowards headTowards, double straightWithinMm, List<Reading> readings) {
        return new OpeningFacts(
                "recess",
                Double.NaN,
                headTowards,
                false,
                straightWithinMm,
                Finish.FINISHED,
                readings,
                List.of(),
                Map.of(),
                List.of(),
                List.of(),
                List.of());
    }
}
