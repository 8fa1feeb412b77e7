package quoin.opening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Looks for the smallest part of a pool that does. Not safe for use by many threads. */
final class PlanSearch {
    private static final double CLOSE = 1e-9;
    private static final double MOST_LACK = 3;
    private static final int STARTS = 8;
    private static final int[] NONE = {};

    private final PlanPool pool;
    private final int taken;
    private final int fixed;
    private final double wanted;
    private final int mostSets;
    private int tried;

    /**
     * @param pool the readings: taken, then those that must be, then the easy ones
     * @param taken how many were taken
     * @param fixed how many of the pool are in any answer
     * @param wanted the slip to be noticed
     * @param mostSets after how many sets the search for a smaller one is given up
     */
    PlanSearch(PlanPool pool, int taken, int fixed, double wanted, int mostSets) {
        this.pool = pool;
        this.taken = taken;
        this.fixed = fixed;
        this.wanted = wanted;
        this.mostSets = mostSets;
    }

    SurveyPlan.Chosen find() {
        int[] able = able();
        if (!does(able)) {
            int[] all = first(pool.size());
            return answer(all, false, false);
        }
        int[] best = exchanged(leftOut(able), able);
        boolean proven = false;
        while (!proven && best.length > least(able)) {
            int[] smaller = smaller(able, best.length - 1);
            if (smaller.length == 0) {
                proven = tried <= mostSets;
                break;
            }
            best = smaller;
        }
        return answer(best, true, proven || best.length <= least(able));
    }

    private static int[] first(int n) {
        int[] all = new int[n];
        Arrays.setAll(all, i -> i);
        return all;
    }

    /** What may be in an answer: with all the others it is checked well enough. */
    private int[] able() {
        int[] able = first(pool.size());
        while (true) {
            double[] detectable = pool.detectable(able);
            int worst = -1;
            for (int i = fixed; i < able.length; i++) {
                if (!(detectable[i] <= wanted) && (worst < 0 || detectable[i] > detectable[worst])) {
                    worst = i;
                }
            }
            if (worst < 0) {
                return able;
            }
            able = without(able, worst);
        }
    }

    private boolean does(int[] chosen) {
        return worst(chosen) <= wanted;
    }

    private double worst(int[] chosen) {
        double worst = chosen.length == 0 ? Double.POSITIVE_INFINITY : 0;
        for (double detectable : pool.detectable(chosen)) {
            worst = Math.max(worst, detectable);
        }
        return worst;
    }

    /** Leaves out one after the other, each time the one that is missed least. */
    private int[] leftOut(int[] start) {
        int[] chosen = start;
        while (true) {
            int least = -1;
            double best = wanted;
            for (int i = chosen.length - 1; i >= fixed; i--) {
                double worst = worst(without(chosen, i));
                if (worst <= wanted && (least < 0 || worst < best - CLOSE)) {
                    least = i;
                    best = worst;
                }
            }
            if (least < 0) {
                return chosen;
            }
            chosen = without(chosen, least);
        }
    }

    /** One fewer, then one against another for as long as that helps, from many starts; again if that does. */
    private int[] exchanged(int[] start, int[] able) {
        int[] chosen = start;
        int[] fewer = chosen;
        while (fewer.length > 0) {
            chosen = fewer;
            fewer = NONE;
            for (int[] from : starts(chosen, able)) {
                int[] settled = settled(from, able);
                if (does(settled)) {
                    fewer = settled;
                    break;
                }
            }
        }
        return chosen;
    }

    /** Those without one of them, and some spread over all that may be. */
    private List<int[]> starts(int[] chosen, int[] able) {
        List<int[]> starts = new ArrayList<>();
        for (int i = chosen.length - 1; i >= fixed; i--) {
            starts.add(without(chosen, i));
        }
        int free = able.length - fixed;
        for (int step = 1; step <= STARTS && chosen.length > fixed; step++) {
            int[] spread = Arrays.copyOf(able, fixed);
            for (int at = step; spread.length < chosen.length - 1; at += step) {
                while (Arrays.binarySearch(spread, able[fixed + at % free]) >= 0) {
                    at++;
                }
                spread = with(spread, able[fixed + at % free]);
            }
            starts.add(spread);
        }
        return starts;
    }

    private int[] settled(int[] start, int[] able) {
        int[] chosen = start;
        double lacks = lack(chosen);
        boolean better = lacks > 0;
        while (better) {
            int[] best = chosen;
            for (int i = fixed; i < chosen.length; i++) {
                for (int candidate : able) {
                    if (candidate >= fixed && Arrays.binarySearch(chosen, candidate) < 0) {
                        int[] next = with(without(chosen, i), candidate);
                        double lack = lack(next);
                        if (lack < lacks - CLOSE) {
                            lacks = lack;
                            best = next;
                        }
                    }
                }
            }
            better = !Arrays.equals(best, chosen) && lacks > 0;
            chosen = best;
        }
        return chosen;
    }

    /** By how much those fall short of what is wanted, all together. */
    private double lack(int[] chosen) {
        double sum = 0;
        for (double detectable : pool.detectable(chosen)) {
            sum += Math.min(MOST_LACK, Math.max(0, detectable / wanted - 1));
        }
        return sum;
    }

    /** Redundancy numbers add up to no more than readings less five: fewer readings cannot be checked so well. */
    private int least(int[] able) {
        double share = GlobalTest.DELTA * GlobalTest.DELTA / (wanted * wanted);
        double[] fresh = new double[able.length];
        Arrays.setAll(fresh, i -> pool.fresh(able[i]));
        Arrays.sort(fresh, fixed, fresh.length);
        double sum = 0;
        for (int n = 1; n <= fresh.length; n++) {
            sum += fresh[n - 1];
            if (n >= fixed && n - pool.unknowns() >= share * sum - CLOSE) {
                return n;
            }
        }
        return fresh.length;
    }

    /** Any part of that size that does; empty where there is none, or too many were tried. */
    private int[] smaller(int[] able, int size) {
        return size < fixed
                ? NONE
                : grown(Arrays.copyOf(able, fixed), Arrays.copyOfRange(able, fixed, able.length), size);
    }

    private int[] grown(int[] chosen, int[] rest, int size) {
        if (++tried > mostSets || chosen.length + rest.length < size) {
            return NONE;
        }
        if (chosen.length == size) {
            return does(chosen) ? chosen : NONE;
        }
        if (!mayDo(chosen, rest)) {
            return NONE;
        }
        for (int i = 0; i < rest.length; i++) {
            if (isSecond(rest, i)) {
                continue;
            }
            int[] found = grown(with(chosen, rest[i]), Arrays.copyOfRange(rest, i + 1, rest.length), size);
            if (found.length > 0) {
                return found;
            }
        }
        return NONE;
    }

    /** The same place again stands for nothing that its first could not. */
    private boolean isSecond(int[] rest, int at) {
        for (int i = 0; i < at; i++) {
            if (pool.span(rest[i]).equals(pool.span(rest[at]))) {
                return true;
            }
        }
        return false;
    }

    /** Whether everything together checks what is chosen. */
    private boolean mayDo(int[] chosen, int[] rest) {
        int[] all = Arrays.copyOf(chosen, chosen.length + rest.length);
        System.arraycopy(rest, 0, all, chosen.length, rest.length);
        double[] detectable = pool.detectable(all);
        for (int i = 0; i < chosen.length; i++) {
            if (!(detectable[i] <= wanted)) {
                return false;
            }
        }
        return true;
    }

    private SurveyPlan.Chosen answer(int[] chosen, boolean reached, boolean smallest) {
        List<Span> ordered = new ArrayList<>();
        int[] had = Arrays.copyOf(chosen, taken);
        int[] left = Arrays.copyOfRange(chosen, taken, chosen.length);
        while (left.length > 0) {
            int next = next(had, left);
            ordered.add(pool.span(left[next]));
            had = with(had, left[next]);
            left = without(left, next);
        }
        return new SurveyPlan.Chosen(ordered, worst(chosen), reached, smallest);
    }

    /** First what holds the outline one way more, then what lets most slips be noticed; the first of equals. */
    private int next(int[] had, int[] left) {
        int rank = pool.rank(had);
        int best = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < left.length; i++) {
            int[] then = with(had, left[i]);
            double worth = pool.rank(then) > rank ? pool.size() : noticed(then);
            if (worth > most + CLOSE) {
                most = worth;
                best = i;
            }
        }
        return best;
    }

    private double noticed(int[] chosen) {
        double sum = 0;
        for (double detectable : pool.detectable(chosen)) {
            sum += Math.min(1, wanted / detectable);
        }
        return sum;
    }

    private static int[] without(int[] chosen, int at) {
        int[] rest = new int[chosen.length - 1];
        System.arraycopy(chosen, 0, rest, 0, at);
        System.arraycopy(chosen, at + 1, rest, at, rest.length - at);
        return rest;
    }

    /** In the order of the pool: what is fixed stays in front. */
    private static int[] with(int[] chosen, int one) {
        int[] more = Arrays.copyOf(chosen, chosen.length + 1);
        more[chosen.length] = one;
        Arrays.sort(more);
        return more;
    }
}
