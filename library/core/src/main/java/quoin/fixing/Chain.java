package quoin.fixing;

import java.util.ArrayList;
import java.util.List;

/**
 * Holes in a row, in whole marking steps: the first in one set, the last in another, every one where it is allowed, each
 * from a least to a most pitch after the one before.
 *
 * <p>The k-th reach is exactly the set of places that a k-th hole can take: those allowed at one pitch after some place that
 * the hole before it can take. The first reach that meets the last set proves the fewest holes; an empty one proves
 * that there is no row at all.
 */
final class Chain {
    private final Zones allowed;
    private final Zones first;
    private final Zones last;

    Chain(Zones allowed, Zones first, Zones last) {
        this.allowed = allowed;
        this.first = first.and(allowed);
        this.last = last.and(allowed);
    }

    /** {@return the reaches up to the first that meets the last set, or up to an empty one} */
    List<Zones> shortest(int least, int most) {
        List<Zones> reaches = new ArrayList<>();
        Zones reach = first;
        reaches.add(reach);
        while (!reach.isEmpty() && reach.and(last).isEmpty()) {
            reach = next(reach, least, most);
            reaches.add(reach);
        }
        return reaches;
    }

    /** {@return the reaches of so many holes; empty where the last of them does not meet the last set} */
    List<Zones> of(int holes, int least, int most) {
        List<Zones> reaches = new ArrayList<>(holes);
        Zones reach = first;
        reaches.add(reach);
        for (int k = 1; k < holes && !reach.isEmpty(); k++) {
            reach = next(reach, least, most);
            reaches.add(reach);
        }
        return reach.and(last).isEmpty() ? List.of() : reaches;
    }

    private Zones next(Zones reach, int least, int most) {
        return reach.stepped(least, most).and(allowed);
    }

    boolean isEmpty() {
        return first.isEmpty() || last.isEmpty();
    }

    /** The least largest pitch of so many holes, two or more, one row of them being possible; mostly the even one. */
    int leastMost(int holes, int least, int most) {
        int even = -Math.floorDiv(first.greatest() - last.least(), holes - 1);
        int low = Math.max(least, even);
        int high = of(holes, least, low).isEmpty() ? most : low;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (of(holes, least, middle).isEmpty()) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** The greatest smallest pitch of so many holes, two or more, one row of them being possible; mostly the even one. */
    int greatestLeast(int holes, int least, int most) {
        int even = Math.floorDiv(last.greatest() - first.least(), holes - 1);
        int high = Math.min(most, even);
        int low = of(holes, high, most).isEmpty() ? least : high;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (of(holes, middle, most).isEmpty()) {
                high = middle - 1;
            } else {
                low = middle;
            }
        }
        return low;
    }

    /** A row of so many holes, walked back from the place nearest to one aim, as evenly as may be to the other. */
    int[] row(int holes, int least, int most, double firstAim, double lastAim) {
        List<Zones> reaches = of(holes, least, most);
        int[] at = new int[holes];
        at[holes - 1] = reaches.get(holes - 1).and(last).nearest(lastAim);
        for (int k = holes - 2; k >= 0; k--) {
            double even = k == 0 ? firstAim : at[k + 1] - (at[k + 1] - firstAim) / (k + 1);
            at[k] = reaches.get(k)
                    .and(Zones.of(at[k + 1] - most, at[k + 1] - least))
                    .nearest(even);
        }
        return at;
    }
}
