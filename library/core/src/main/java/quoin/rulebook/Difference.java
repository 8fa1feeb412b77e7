package quoin.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * How two pieces differ: the new one less the old one.
 *
 * @param kind what differs
 * @param along the figure that the stretches are of; empty where the difference is the same everywhere
 * @param period after what distance the stretches repeat; 0 where they do not
 * @param stretches where the two differ, and by how much; empty where they are the same
 */
record Difference(Kind kind, String along, long period, List<Stretch> stretches) implements Piece {
    /** What differs. */
    enum Kind {
        /** A number. */
        CHANGED,
        /** There is a number where there was none. */
        DECIDED,
        /** There is none where there was one. */
        REFUSED,
        /** It cannot be said where a number differs; the least and the greatest difference are bounds. */
        OPEN
    }

    /**
     * Where two pieces differ.
     *
     * @param from the cut below
     * @param to the cut above
     * @param first the difference at the first point, as a point; the end of the line where it has no bound
     * @param last the difference at the last point; between the two it goes evenly, or in steps one way
     */
    record Stretch(long from, long to, long first, long last) {}

    static final Difference NONE = new Difference(Kind.CHANGED, "", 0, List.of());

    /** More jumps than this in one period are not told apart. */
    private static final long MOST_JUMPS = 20_000;

    private static final long LONGEST_PERIOD = 1_000_000_000_000_000L;

    Difference {
        stretches = List.copyOf(stretches);
    }

    @Override
    public boolean follows(String figure) {
        return along.equals(figure);
    }

    boolean isNone() {
        return kind == Kind.CHANGED && stretches.isEmpty();
    }

    /** How two pieces differ inside a box. */
    static Difference between(Piece old, Piece now, Regions.Box box) {
        if (old instanceof Refused || now instanceof Refused) {
            boolean none = old instanceof Refused && now instanceof Refused;
            return none ? NONE : all(old instanceof Refused ? Kind.DECIDED : Kind.REFUSED, 0, 0);
        }
        if (old instanceof Constant a && now instanceof Constant b) {
            return shift(b.value() - a.value());
        }
        if (old instanceof Chain a && now instanceof Chain b) {
            return a.figure().equals(b.figure())
                    ? new Pair(a, b).difference()
                    : all(Kind.OPEN, Cut.BELOW_ALL, Cut.ABOVE_ALL);
        }
        return old instanceof Chain chain
                ? against(chain, ((Constant) now).value(), false, box)
                : against((Chain) now, ((Constant) old).value(), true, box);
    }

    private static Difference all(Kind kind, long first, long last) {
        return new Difference(kind, "", 0, List.of(new Stretch(Cut.BELOW_ALL, Cut.ABOVE_ALL, first, last)));
    }

    private static Difference shift(long by) {
        return by == 0 ? NONE : all(Kind.CHANGED, Cut.point(by), Cut.point(by));
    }

    /** A chain crosses a constant once. */
    private static Difference against(Chain chain, long constant, boolean isNew, Regions.Box box) {
        long low = box.low(chain.figure());
        long high = box.high(chain.figure());
        long reaches = chain.back(Cut.before(constant));
        long passes = chain.back(Cut.after(constant));
        List<Stretch> stretches = new ArrayList<>();
        if (low < reaches) {
            stretches.add(stretch(chain, constant, isNew, low, StrictMath.min(high, reaches)));
        }
        if (passes < high) {
            stretches.add(stretch(chain, constant, isNew, StrictMath.max(low, passes), high));
        }
        return stretches.isEmpty() ? NONE : new Difference(Kind.CHANGED, chain.figure(), 0, stretches);
    }

    private static Stretch stretch(Chain chain, long constant, boolean isNew, long from, long to) {
        long first = from == Cut.BELOW_ALL ? Cut.BELOW_ALL : chain.at(Cut.firstAbove(from)) - Cut.point(constant);
        long last = to == Cut.ABOVE_ALL ? Cut.ABOVE_ALL : chain.at(Cut.lastBelow(to)) - Cut.point(constant);
        return isNew ? new Stretch(from, to, first, last) : new Stretch(from, to, minus(first), minus(last));
    }

    private static long minus(long point) {
        if (Cut.isEnd(point)) {
            return point == Cut.BELOW_ALL ? Cut.ABOVE_ALL : Cut.BELOW_ALL;
        }
        return -point;
    }

    /** Two chains on one figure. Whole periods pass through both, so one period tells all. */
    private record Pair(Chain old, Chain now) {
        Difference difference() {
            long period = lcm(lcm(1, old.rounds()), now.rounds());
            if (old.rounds().isEmpty() && now.rounds().isEmpty()) {
                return shift(now.add() - old.add());
            }
            long jumps = jumps(old, period) + jumps(now, period);
            return period == 0 || jumps > MOST_JUMPS ? bounds() : inOne(period);
        }

        /** The least common multiple of all steps; 0 where it is too long. */
        private static long lcm(long start, List<Round> rounds) {
            long lcm = start;
            for (Round round : rounds) {
                long a = lcm;
                long b = round.step();
                while (b != 0) {
                    long rest = a % b;
                    a = b;
                    b = rest;
                }
                if (lcm == 0 || lcm / a > LONGEST_PERIOD / round.step()) {
                    return 0;
                }
                lcm = lcm / a * round.step();
            }
            return lcm;
        }

        /** A chain jumps at most where its first rounding does. */
        private static long jumps(Chain chain, long period) {
            return chain.rounds().isEmpty() ? 0 : period / chain.rounds().get(0).step();
        }

        private static void jumps(Chain chain, long period, TreeSet<Long> into) {
            if (!chain.rounds().isEmpty()) {
                Round first = chain.rounds().get(0);
                long jump = first.up() ? Cut.after(-chain.add()) : Cut.before(-chain.add());
                for (long at = StrictMath.floorMod(jump, 2 * first.step()); at < 2 * period; at += 2 * first.step()) {
                    into.add(at);
                }
            }
        }

        private Difference inOne(long period) {
            TreeSet<Long> jumps = new TreeSet<>();
            jumps(old, period, jumps);
            jumps(now, period, jumps);
            List<Long> cuts = new ArrayList<>(jumps);
            cuts.add(jumps.first() + 2 * period);
            List<Stretch> stretches = new ArrayList<>();
            for (int i = 1; i < cuts.size(); i++) {
                add(stretches, cuts.get(i - 1), cuts.get(i));
            }
            close(stretches, period);
            if (stretches.isEmpty()) {
                return NONE;
            }
            Stretch one = stretches.get(0);
            boolean everywhere = stretches.size() == 1 && one.to() - one.from() == 2 * period && isEven(one);
            return everywhere
                    ? all(Kind.CHANGED, one.first(), one.last())
                    : new Difference(Kind.CHANGED, old.figure(), period, stretches);
        }

        private static boolean isEven(Stretch stretch) {
            return stretch.first() == stretch.last();
        }

        private void add(List<Stretch> stretches, long from, long to) {
            long first = at(Cut.firstAbove(from));
            long last = at(Cut.lastBelow(to));
            if (first != last) {
                slope(stretches, from, to);
            } else if (first != 0) {
                join(stretches, new Stretch(from, to, first, last));
            }
        }

        private long at(long point) {
            return now.at(point) - old.at(point);
        }

        /** One of the two is not rounded: they are the same at one point at most, which is left out. */
        private void slope(List<Stretch> stretches, long from, long to) {
            long start = Cut.firstAbove(from);
            long rest = Cut.valueOf(at(start));
            long zero = Cut.valueOf(start) + (now.rounds().isEmpty() ? -rest : rest);
            boolean inside = Cut.before(zero) >= from && Cut.after(zero) <= to;
            cut(stretches, from, inside ? Cut.before(zero) : to);
            if (inside) {
                cut(stretches, Cut.after(zero), to);
            }
        }

        private void cut(List<Stretch> stretches, long from, long to) {
            if (from < to) {
                stretches.add(new Stretch(from, to, at(Cut.firstAbove(from)), at(Cut.lastBelow(to))));
            }
        }

        private static void join(List<Stretch> stretches, Stretch next) {
            int end = stretches.size() - 1;
            if (end >= 0
                    && stretches.get(end).to() == next.from()
                    && isEven(stretches.get(end))
                    && stretches.get(end).last() == next.first()) {
                stretches.set(end, new Stretch(stretches.get(end).from(), next.to(), next.first(), next.last()));
            } else {
                stretches.add(next);
            }
        }

        /** What ends where the next period begins, and what begins there, are one. */
        private static void close(List<Stretch> stretches, long period) {
            int end = stretches.size() - 1;
            if (end < 1) {
                return;
            }
            Stretch first = stretches.get(0);
            Stretch last = stretches.get(end);
            if (last.to() == first.from() + 2 * period
                    && isEven(first)
                    && isEven(last)
                    && first.first() == last.first()) {
                stretches.remove(end);
                stretches.remove(0);
                stretches.add(new Stretch(last.from(), first.to() + 2 * period, last.first(), last.first()));
            }
        }

        private Difference bounds() {
            long[] a = range(old);
            long[] b = range(now);
            return all(Kind.OPEN, Cut.point(b[0] - a[1]), Cut.point(b[1] - a[0]));
        }

        /** Between what a chain lies, less its figure. */
        private static long[] range(Chain chain) {
            long least = chain.add();
            long most = chain.add();
            for (Round round : chain.rounds()) {
                least += round.then() - (round.up() ? 0 : round.step());
                most += round.then() + (round.up() ? round.step() : 0);
            }
            return new long[] {least, most};
        }
    }
}
