package quoin.rulebook;

import java.util.ArrayList;
import java.util.List;

/** What a size is inside one box of figures. Values of it are immutable. */
sealed interface Piece permits Piece.Constant, Piece.Refused, Piece.Chain, Difference {
    /** Whether it moves with a figure. */
    default boolean follows(String figure) {
        return this instanceof Chain chain && chain.figure().equals(figure);
    }

    /** Always the same. */
    record Constant(long value) implements Piece {}

    /** There is no size, for this reason. */
    record Refused(String code) implements Piece {}

    /**
     * Made from one figure: add, then round and add, as often as there are roundings. It never falls as the figure grows.
     *
     * @param figure the figure it is made from
     * @param add what is added first
     * @param rounds the roundings, in their order
     */
    record Chain(String figure, long add, List<Round> rounds) implements Piece {
        public Chain {
            rounds = List.copyOf(rounds);
        }

        static Chain of(String figure) {
            return new Chain(figure, 0, List.of());
        }

        Chain plus(long more) {
            if (rounds.isEmpty()) {
                return new Chain(figure, add + more, rounds);
            }
            List<Round> changed = new ArrayList<>(rounds);
            Round last = changed.remove(changed.size() - 1);
            changed.add(new Round(last.up(), last.step(), last.then() + more));
            return new Chain(figure, add, changed);
        }

        /** Whole steps pass through a rounding unchanged, so they are added behind it: equal chains look equal. */
        Chain round(boolean up, long step) {
            long sum = rounds.isEmpty() ? add : rounds.get(rounds.size() - 1).then();
            long through = sum - StrictMath.floorMod(sum, step);
            Chain rest = plus(-through);
            boolean whole = !rounds.isEmpty() && rounds.get(rounds.size() - 1).step() % step == 0 && sum == through;
            if (whole) {
                return this;
            }
            List<Round> changed = new ArrayList<>(rest.rounds());
            changed.add(new Round(up, step, through));
            return new Chain(figure, rest.add(), changed);
        }

        /** The point of the size at a point of the figure. */
        long at(long point) {
            long at = point + 4 * add;
            for (Round round : rounds) {
                at = round.at(at);
            }
            return at;
        }

        /** The cut of the figure that a cut of the size comes from. */
        long back(long cut) {
            long at = cut;
            for (int i = rounds.size() - 1; i >= 0; i--) {
                at = rounds.get(i).back(at);
            }
            return at - 2 * add;
        }
    }

    /**
     * To a multiple, then more.
     *
     * @param up whether to the least multiple that is not below, else to the greatest that is not above
     * @param step the step
     * @param then what is added to the multiple
     */
    record Round(boolean up, long step, long then) {
        long at(long point) {
            long value = Cut.valueOf(point);
            int side = Cut.sideOf(point);
            long count = up
                    ? -StrictMath.floorDiv(-(side > 0 ? value + 1 : value), step)
                    : StrictMath.floorDiv(side < 0 ? value - 1 : value, step);
            return Cut.point(count * step + then);
        }

        long back(long cut) {
            long value = Cut.value(cut - 2 * then);
            long least = Cut.isBefore(cut)
                    ? -StrictMath.floorDiv(-value, step) * step
                    : (StrictMath.floorDiv(value, step) + 1) * step;
            return up ? Cut.after(least - step) : Cut.before(least);
        }
    }
}
