package quoin.opening;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Groups readings that cannot be told apart, and ranks the groups by how far they stand out. */
final class Suspects {
    /** From here on two tests say the same. */
    private static final double TOLD_APART = 0.99;

    private Suspects() {}

    /**
     * The groups of which one slip alone explains the disagreement: without one of its readings the statistic falls by w
     * squared, and what is left would be accepted.
     */
    static List<Suspect> of(List<AdjustedReading> readings, double[][] confusion, double statistic, int redundancy) {
        List<List<AdjustedReading>> groups = groups(readings, confusion);
        groups.sort(Comparator.comparingDouble((List<AdjustedReading> g) -> -largest(g)));
        double explained = redundancy > 1 ? GlobalTest.critical(redundancy - 1) : Double.POSITIVE_INFINITY;
        List<Suspect> suspects = new ArrayList<>();
        for (List<AdjustedReading> group : groups) {
            double w = largest(group);
            if (statistic - w * w <= explained) {
                suspects.add(suspect(group));
            }
        }
        return suspects.isEmpty() ? standingOut(groups) : suspects;
    }

    /** No single slip explains the disagreement: everything that stands out, the furthest first. */
    private static List<Suspect> standingOut(List<List<AdjustedReading>> groups) {
        List<Suspect> suspects = new ArrayList<>();
        for (List<AdjustedReading> group : groups) {
            if (suspects.isEmpty() || largest(group) > Adjustment.CRITICAL_W) {
                suspects.add(suspect(group));
            }
        }
        return suspects;
    }

    private static double largest(List<AdjustedReading> group) {
        double most = 0;
        for (AdjustedReading reading : group) {
            most = Math.max(most, Double.isNaN(reading.w()) ? 0 : Math.abs(reading.w()));
        }
        return most;
    }

    /** Connected components: whoever is bound to a member belongs to the group. */
    private static List<List<AdjustedReading>> groups(List<AdjustedReading> readings, double[][] confusion) {
        List<List<AdjustedReading>> groups = new ArrayList<>();
        boolean[] taken = new boolean[readings.size()];
        for (int i = 0; i < taken.length; i++) {
            if (taken[i] || Double.isNaN(readings.get(i).w())) {
                continue;
            }
            List<Integer> members = new ArrayList<>(List.of(i));
            taken[i] = true;
            for (int at = 0; at < members.size(); at++) {
                for (int j = 0; j < taken.length; j++) {
                    if (!taken[j] && Math.abs(confusion[members.get(at)][j]) >= TOLD_APART) {
                        taken[j] = true;
                        members.add(j);
                    }
                }
            }
            List<AdjustedReading> group = new ArrayList<>();
            for (int member : members) {
                group.add(readings.get(member));
            }
            groups.add(group);
        }
        return groups;
    }

    private static Suspect suspect(List<AdjustedReading> group) {
        List<AdjustedReading> ranked = new ArrayList<>(group);
        ranked.sort(Comparator.comparingInt((AdjustedReading r) -> looksLike(r).isEmpty() ? 1 : 0)
                .thenComparingDouble(r -> -Math.abs(r.w()))
                .thenComparingInt(AdjustedReading::entry));
        List<String> names = new ArrayList<>();
        List<Suspect.Slip> slips = new ArrayList<>();
        for (AdjustedReading reading : ranked) {
            if (!names.contains(reading.name())) {
                names.add(reading.name());
                slips.add(new Suspect.Slip(reading.name(), reading.slip(), looksLike(reading)));
            }
        }
        return new Suspect(names, slips, ranked.get(0).of());
    }

    /** The common slip whose size lies within 2.5 standard deviations; a hint, not a proof. */
    private static String looksLike(AdjustedReading reading) {
        double size = Math.abs(reading.slip());
        double reach = 2.5 * reading.slipU();
        String best = "";
        double nearest = reach;
        for (CommonSlip common : CommonSlip.values()) {
            double off = Math.abs(size - common.mm());
            if (off <= nearest && common.fits(reading.observed())) {
                nearest = off;
                best = common.text();
            }
        }
        return best;
    }
}
