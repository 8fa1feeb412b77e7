package quoin.opening;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Groups readings that cannot be told apart, and ranks the groups by how far they stand out. */
final class Suspects {
    /** From here on two tests say the same. */
    static final double TOLD_APART = 0.99;

    private static final double REACH = 2.5;

    private final List<AdjustedReading> readings;
    private final Tests tests;
    private final int redundancy;

    private Suspects(List<AdjustedReading> readings, Tests tests, int redundancy) {
        this.readings = readings;
        this.tests = tests;
        this.redundancy = redundancy;
    }

    /**
     * The groups of which one slip alone explains the disagreement: without one of its readings the statistic falls by w
     * squared, and what is left would be accepted.
     */
    static List<Suspect> of(List<AdjustedReading> readings, Tests tests, int redundancy, NextReading next) {
        List<List<Integer>> groups = named(readings, tests, redundancy);
        List<Integer> named = groups.stream().flatMap(List::stream).toList();
        return groups.stream()
                .map(group -> suspect(group, named, readings, next))
                .toList();
    }

    /** The groups by the places of their members, the one that stands out most first. */
    static List<List<Integer>> named(List<AdjustedReading> readings, Tests tests, int redundancy) {
        return new Suspects(readings, tests, redundancy).named();
    }

    private List<List<Integer>> named() {
        List<List<Integer>> groups = groups();
        groups.sort(Comparator.comparingDouble((List<Integer> group) -> -largest(group)));
        double explained = redundancy > 1 ? GlobalTest.critical(redundancy - 1) : Double.POSITIVE_INFINITY;
        List<List<Integer>> named = new ArrayList<>();
        for (List<Integer> group : groups) {
            double w = largest(group);
            if (tests.statistic() - w * w <= explained) {
                named.add(ranked(group));
            }
        }
        return named.isEmpty() ? standingOut(groups) : named;
    }

    /** No single slip explains the disagreement: everything that stands out, the furthest first. */
    private List<List<Integer>> standingOut(List<List<Integer>> groups) {
        List<List<Integer>> named = new ArrayList<>();
        for (List<Integer> group : groups) {
            if (named.isEmpty() || largest(group) > Adjustment.CRITICAL_W) {
                named.add(ranked(group));
            }
        }
        return named;
    }

    private double largest(List<Integer> group) {
        double most = 0;
        for (int i : group) {
            double w = readings.get(i).w();
            most = Math.max(most, Double.isNaN(w) ? 0 : Math.abs(w));
        }
        return most;
    }

    /** Connected components: whoever is bound to a member belongs to the group. */
    private List<List<Integer>> groups() {
        List<List<Integer>> groups = new ArrayList<>();
        boolean[] taken = new boolean[readings.size()];
        for (int i = 0; i < taken.length; i++) {
            if (taken[i] || Double.isNaN(readings.get(i).w())) {
                continue;
            }
            List<Integer> group = new ArrayList<>(List.of(i));
            taken[i] = true;
            for (int at = 0; at < group.size(); at++) {
                for (int j = 0; j < taken.length; j++) {
                    if (!taken[j] && Math.abs(tests.correlation(group.get(at), j)) >= TOLD_APART) {
                        taken[j] = true;
                        group.add(j);
                    }
                }
            }
            groups.add(group);
        }
        return groups;
    }

    /** Whose slip looks most like one that people make; the tests of a group say the same of all its members. */
    private List<Integer> ranked(List<Integer> group) {
        List<Integer> ranked = new ArrayList<>(group);
        ranked.sort(Comparator.comparingDouble((Integer i) -> farFromCommon(readings.get(i)))
                .thenComparingInt(i -> readings.get(i).entry()));
        return ranked;
    }

    private static double farFromCommon(AdjustedReading reading) {
        Suspect.Slip slip = slip(reading);
        double off = reading.observed() - slip.by() - slip.corrected();
        return slip.looksLike().isEmpty() ? Double.MAX_VALUE : Math.abs(off) / reading.slipU();
    }

    private static Suspect suspect(
            List<Integer> ranked, List<Integer> named, List<AdjustedReading> readings, NextReading next) {
        List<String> names = new ArrayList<>();
        List<Suspect.Slip> slips = new ArrayList<>();
        for (int i : ranked) {
            AdjustedReading reading = readings.get(i);
            if (!names.contains(reading.name())) {
                names.add(reading.name());
                slips.add(slip(reading));
            }
        }
        return new Suspect(names, slips, next.thatTellsMost(ranked, named));
    }

    /** The common slip that leaves what is nearest to the other readings, within 2.5 standard deviations. */
    private static Suspect.Slip slip(AdjustedReading reading) {
        double likely = reading.observed() - reading.slip();
        double nearest = REACH * reading.slipU();
        String looksLike = "";
        double corrected = likely;
        for (CommonSlip common : isLength(reading) ? CommonSlip.values() : new CommonSlip[0]) {
            double should = common.corrected(reading.observed(), likely);
            double off = Math.abs(should - likely);
            if (off < nearest) {
                nearest = off;
                looksLike = common.text();
                corrected = should;
            }
        }
        return new Suspect.Slip(reading.name(), reading.slip(), looksLike, corrected);
    }

    private static boolean isLength(AdjustedReading reading) {
        return !reading.of().startsWith("angle@");
    }
}
