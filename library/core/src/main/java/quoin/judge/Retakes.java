package quoin.judge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import quoin.measure.Estimate;
import quoin.measure.Influence;
import quoin.measure.Uncertain;

/**
 * What to read again so that an undecided finding is decided.
 *
 * <p>A reading repeated with the same instrument lessens only its fresh influences; what the instrument shares between
 * readings stays. To first order, sensitivities held: if s&sup2; is the share of the fresh influences in the variance of
 * the figure, k more values beside the n there are leave s&sup2; n/(n + k). The new estimate is normal about the present
 * one with the variance that goes away, and that gives the probability that the finding is decided afterwards. A least
 * or a greatest is taken by its governing part, which must be better by its share in the odds; so must a value with few degrees
 * of freedom.
 * No instances.
 */
public final class Retakes {
    private static final int MOST_SINGLES = 3;
    private static final int MOST_TIMES = 9;
    private static final int HALVINGS = 60;
    private static final double NOTHING = 1e-9;
    private static final double SUREST = 1 - 1e-12;

    private Retakes() {}

    /**
     * The readings worth repeating, the largest share of the variance first.
     *
     * <p>Single readings that can decide it; if there is none, the fewest readings that can together; if there is none,
     * all readings of one instrument by another one; if even that does not do, the reading with the largest share, with
     * u NaN: it may still shift the estimate.
     *
     * @param estimate the estimate of the undecided finding
     * @param bound its limits
     * @param rule its rule; the simple rule leaves nothing undecided
     * @param readings the readings that may be repeated
     * @return what to read again; empty where the finding is decided or hangs on none of the readings
     */
    public static List<Retake> suggest(Estimate estimate, Bound bound, DecisionRule rule, List<ReadingDoubt> readings) {
        Uncertain value = Verdicts.governing(estimate);
        Odds odds = Conformity.odds(estimate, bound);
        if (Verdicts.decide("retake", estimate, bound, rule, odds).verdict() != Verdict.UNDECIDED) {
            return List.of();
        }
        Goal goal = Goal.of(value, bound, demanded(odds.value(), value, bound, rule));
        List<Share> shares = new ArrayList<>();
        for (ReadingDoubt reading : readings) {
            Share share = Share.of(reading, value);
            if (share.variance() > 0) {
                shares.add(share);
            }
        }
        shares.sort(Comparator.comparingDouble((Share share) -> -share.variance()));
        return candidates(goal, value, shares, readings);
    }

    /**
     * The readings that an estimate hangs on, the largest share of its variance that may be read away first.
     *
     * @param estimate the estimate; of a least or a greatest the governing part counts
     * @param readings the readings that may be repeated
     * @return their names
     */
    public static List<String> byShare(Estimate estimate, List<ReadingDoubt> readings) {
        Uncertain value = Verdicts.governing(estimate);
        Set<String> names = new LinkedHashSet<>();
        readings.stream()
                .map(reading -> Share.of(reading, value))
                .filter(share -> share.variance() > 0)
                .sorted(Comparator.comparingDouble(share -> -share.variance()))
                .forEach(share -> names.add(share.reading()));
        return List.copyOf(names);
    }

    /**
     * Those worth taking, the least effort first: readings times values, half a reading more for an instrument that is
     * still to be found. What costs as much or more and settles no likelier is left out.
     *
     * @param retakes what may be read again
     * @return the ranked list; where none is worth taking, the one that settles likeliest alone
     */
    public static List<Retake> ranked(List<Retake> retakes) {
        Comparator<Retake> likeliest = Comparator.comparingDouble(retake -> -retake.settles());
        List<Retake> sorted = new ArrayList<>(retakes);
        sorted.sort(Comparator.comparingDouble(Retake::effort).thenComparing(likeliest));
        List<Retake> kept = new ArrayList<>();
        double best = 0;
        for (Retake retake : sorted) {
            if (retake.isWorthTaking() && retake.settles() > best) {
                kept.add(retake);
                best = retake.settles();
            }
        }
        if (kept.isEmpty()) {
            sorted.sort(likeliest);
            return List.copyOf(sorted.subList(0, Math.min(1, sorted.size())));
        }
        return List.copyOf(kept);
    }

    private static List<Retake> candidates(
            Goal goal, Uncertain value, List<Share> shares, List<ReadingDoubt> readings) {
        List<Retake> found = new ArrayList<>();
        for (Share share : shares) {
            if (found.size() < MOST_SINGLES) {
                addPossible(found, goal, List.of(share));
            }
        }
        for (int count = 2; found.isEmpty() && count <= shares.size(); count++) {
            addPossible(found, goal, shares.subList(0, count));
        }
        if (found.isEmpty()) {
            addOtherInstrument(found, goal, value, readings);
        }
        if (found.isEmpty() && !shares.isEmpty()) {
            found.add(again(goal, shares.subList(0, 1), 1, Double.NaN));
        }
        return found;
    }

    /**
     * The rule for the governing part taken as normal. Where other parts or the tails of few degrees of freedom make the
     * odds worse than that, its own odds must be better by as much.
     */
    private static DecisionRule demanded(double whole, Uncertain governing, Bound bound, DecisionRule rule) {
        if (!(rule instanceof DecisionRule.Guarded guarded)) {
            return rule;
        }
        double part = Marginal.normal(governing, bound);
        boolean passing = whole > 0.5;
        double share = passing ? (1 - part) / (1 - whole) : part / whole;
        double demanded = Math.min(SUREST, 1 - (1 - guarded.probability()) * share);
        return share > 0 && share < 1 ? DecisionRule.guarded(demanded) : rule;
    }

    private static void addPossible(List<Retake> found, Goal goal, List<Share> shares) {
        double variance = 0;
        double squares = 0;
        for (Share share : shares) {
            variance += share.variance();
            squares += share.sensitivity() * share.sensitivity();
        }
        double left = variance - goal.excess();
        if (!(left > NOTHING * variance)) {
            return;
        }
        double times = 1;
        for (Share share : shares) {
            times = Math.max(times, StrictMath.ceil(share.values() * (variance / left - 1) - NOTHING));
        }
        if (times <= MOST_TIMES) {
            found.add(again(goal, shares, (int) times, StrictMath.sqrt(left / squares)));
        }
    }

    private static Retake again(Goal goal, List<Share> shares, int times, double u) {
        List<String> names = new ArrayList<>();
        Set<String> instruments = new LinkedHashSet<>();
        double removed = 0;
        for (Share share : shares) {
            names.add(share.reading());
            instruments.add(share.by());
            removed += share.variance() * times / (times + share.values());
        }
        String by = instruments.size() == 1 ? instruments.iterator().next() : "";
        return new Retake(names, by, times, u, goal.settles(removed));
    }

    private static void addOtherInstrument(
            List<Retake> found, Goal goal, Uncertain value, List<ReadingDoubt> readings) {
        Set<String> instruments = new LinkedHashSet<>();
        for (ReadingDoubt reading : readings) {
            instruments.add(reading.by());
        }
        double best = 0;
        for (String by : instruments) {
            List<String> names = new ArrayList<>();
            Set<Influence> all = new LinkedHashSet<>();
            double squares = 0;
            for (ReadingDoubt reading : bySensitivity(readings, value)) {
                Share share = Share.of(reading, value);
                if (reading.by().equals(by) && share.variance() > 0) {
                    names.add(reading.reading());
                    all.addAll(reading.fresh());
                    all.addAll(reading.shared());
                    squares += share.sensitivity() * share.sensitivity();
                }
            }
            double variance = Share.variance(all, value);
            double left = variance - goal.excess();
            if (left > NOTHING * variance && left > best) {
                best = left;
                found.clear();
                found.add(new Retake(names, "", 1, StrictMath.sqrt(left / squares), goal.settles(goal.excess())));
            }
        }
    }

    private static List<ReadingDoubt> bySensitivity(List<ReadingDoubt> readings, Uncertain value) {
        List<ReadingDoubt> sorted = new ArrayList<>(readings);
        sorted.sort(
                Comparator.comparingDouble(reading -> -Share.of(reading, value).sensitivity()));
        return sorted;
    }

    /**
     * What one reading does to the figure.
     *
     * @param variance the part of the figure's variance that its fresh influences make
     * @param sensitivity of the figure to the mean of its values
     */
    private record Share(String reading, String by, int values, double variance, double sensitivity) {
        static Share of(ReadingDoubt doubt, Uncertain value) {
            double variance = variance(doubt.fresh(), value);
            double squares = 0;
            for (Influence influence : doubt.fresh()) {
                squares += influence.standardUncertainty() * influence.standardUncertainty();
            }
            double sensitivity = squares > 0 ? doubt.values() * StrictMath.sqrt(variance / squares) : 0;
            return new Share(doubt.reading(), doubt.by(), doubt.values(), variance, sensitivity);
        }

        static double variance(Iterable<Influence> influences, Uncertain value) {
            double sum = 0;
            for (Influence influence : influences) {
                int at = value.influences().indexOf(influence);
                double part = at < 0 ? 0 : value.contribution(at);
                sum += part * part;
            }
            return sum;
        }
    }

    /**
     * The estimate as it is and what it must become.
     *
     * @param variance its present variance
     * @param excess the variance that must go away so that the present estimate is decided; infinite where none suffices
     */
    private record Goal(double value, double variance, double excess, Bound bound, DecisionRule rule) {
        static Goal of(Uncertain estimate, Bound bound, DecisionRule rule) {
            double variance = estimate.variance();
            Goal open = new Goal(estimate.value(), variance, Double.POSITIVE_INFINITY, bound, rule);
            double enough = 0;
            double much = StrictMath.sqrt(variance);
            double least = NOTHING * much;
            if (!open.decidedWith(least * least)) {
                return open;
            }
            for (int i = 0; i < HALVINGS; i++) {
                double u = 0.5 * (enough + much);
                if (open.decidedWith(u * u)) {
                    enough = u;
                } else {
                    much = u;
                }
            }
            return new Goal(estimate.value(), variance, variance - enough * enough, bound, rule);
        }

        boolean decidedWith(double anyVariance) {
            return Zones.of(rule, bound, StrictMath.sqrt(anyVariance)).decides(value);
        }

        /** The probability that the finding is decided once so much variance has gone. */
        double settles(double removed) {
            double left = StrictMath.sqrt(Math.max(0, variance - removed));
            return Zones.of(rule, bound, left).decides(value, StrictMath.sqrt(Math.min(removed, variance)));
        }
    }
}
