package quoin.opening;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quoin.measure.Instrument;

/**
 * The one more reading that tells the members of a suspect group apart best.
 *
 * <p>Each candidate is added to the survey as it would be read if the outline is as adjusted. Then, for each member as
 * the culprit with the slip it would have, it is asked how many other readings would still be named beside it: those
 * bound to it at |ρ| ≥ 0.99, and those without which the rest is accepted, with the odds of that. The fewest on average is
 * best; of those that are as good, the least effort. Members are taken as equally likely. Not safe for use by many
 * threads.
 */
final class NextReading {
    /** Half a reading in ten is no reason to mark out a place. */
    private static final double AS_GOOD = 0.05;

    private static final double[][] CHECKS = {{600, 800}, {300, 400}};
    private static final double ROOM = 0.9;

    private final Adjustment adjustment;
    private final List<AdjustedReading> readings;
    private final List<Span> cannot;

    NextReading(Adjustment adjustment, List<Span> cannot) {
        this.adjustment = adjustment;
        this.readings = List.copyOf(adjustment.readings());
        this.cannot = List.copyOf(cannot);
    }

    /**
     * The place of it, as documents write it.
     *
     * @param group the places of the members among the readings, the likeliest first
     * @param named the members of every group that is named
     */
    String thatTellsMost(List<Integer> group, List<Integer> named) {
        Span likeliest = adjustment.observations().span(group.get(0));
        Observations observations = adjustment.observations();
        String name = observations.name(group.get(0));
        boolean alone = group.stream().allMatch(i -> observations.name(i).equals(name));
        if (alone && !cannot.contains(likeliest)) {
            return likeliest.text();
        }
        Map<Span, Double> left = new LinkedHashMap<>();
        candidates(group).forEach((span, by) -> left.put(span, stillNamed(span, by, group, named)));
        double least =
                left.values().stream().mapToDouble(Double::doubleValue).min().orElse(0);
        return left.keySet().stream()
                .filter(span -> left.getOrDefault(span, Double.NaN) <= least + AS_GOOD)
                .findFirst()
                .orElse(likeliest)
                .text();
    }

    /** What could be read, the least effort first: one of the group again, any other again, a new place. */
    private Map<Span, Instrument> candidates(List<Integer> group) {
        Map<Span, Instrument> candidates = new LinkedHashMap<>();
        for (int i : group) {
            add(candidates, i);
        }
        for (int i = 0; i < adjustment.observations().size(); i++) {
            add(candidates, i);
        }
        Instrument by = lengths(group);
        for (Span span : newPlaces()) {
            if (!cannot.contains(span)) {
                candidates.putIfAbsent(span, by);
            }
        }
        return candidates;
    }

    private void add(Map<Span, Instrument> candidates, int i) {
        Span span = adjustment.observations().span(i);
        if (!cannot.contains(span)) {
            candidates.putIfAbsent(span, reading(i).by());
        }
    }

    private Reading reading(int i) {
        return adjustment.survey().readings().get(adjustment.observations().entry(i));
    }

    /** The instrument of the first of the group that is a length; an angle says nothing of how lengths are read. */
    private Instrument lengths(List<Integer> group) {
        List<Integer> all = new ArrayList<>(group);
        for (int i = 0; i < adjustment.observations().size(); i++) {
            all.add(i);
        }
        return all.stream()
                .map(this::reading)
                .filter(reading -> reading.of().dimension() == new Span.Edge(Side.HEAD).dimension())
                .findFirst()
                .orElseGet(() -> reading(group.get(0)))
                .by();
    }

    private List<Span> newPlaces() {
        List<Span> places = new ArrayList<>();
        for (Side side : List.of(Side.HEAD, Side.FOOT, Side.LEFT, Side.RIGHT)) {
            places.add(new Span.Edge(side));
        }
        places.add(new Span.Diagonal(Corner.HEAD_LEFT));
        places.add(new Span.Diagonal(Corner.HEAD_RIGHT));
        for (String at : List.of("1/2", "1/4", "3/4", "1/3")) {
            places.add(new Span.Across(Side.LEFT, At.parse(at)));
            places.add(new Span.Across(Side.HEAD, At.parse(at)));
        }
        for (Corner corner : Corner.values()) {
            for (Side side : Side.values()) {
                if (!side.touches(corner)) {
                    places.add(new Span.Cross(corner, side, At.parse("1/2")));
                }
            }
        }
        double[] x = adjustment.values();
        for (Corner corner : Corner.values()) {
            check(corner, Math.min(x[0], x[1] - x[3]), Math.min(x[2], x[4])).forEach(places::add);
        }
        return places;
    }

    /** The largest 3-4-5 triangle for which the sides have room. */
    static List<Span> check(Corner corner, double width, double length) {
        for (double[] legs : CHECKS) {
            if (legs[0] < ROOM * width && legs[1] < ROOM * length) {
                return List.of(new Span.Check(corner, distance(legs[0]), distance(legs[1])));
            }
        }
        return List.of();
    }

    private static At distance(double mm) {
        return At.parse(Math.round(mm) + " mm");
    }

    /** How many others would still be named beside a culprit of the group, on average. */
    private double stillNamed(Span span, Instrument by, List<Integer> group, List<Integer> named) {
        Hypothesis after = Hypothesis.of(adjustment, span, by);
        if (!after.isDetermined()) {
            return Double.MAX_VALUE;
        }
        List<Integer> others = new ArrayList<>(named);
        others.add(after.size() - 1);
        double sum = 0;
        for (int culprit : group) {
            double slip = readings.get(culprit).slip();
            String name = after.name(culprit);
            for (int other : others) {
                sum += after.name(other).equals(name) ? 0 : after.named(culprit, slip, other);
            }
        }
        return sum / group.size();
    }
}
