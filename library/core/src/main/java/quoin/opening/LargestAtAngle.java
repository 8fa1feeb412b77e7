package quoin.opening;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The largest area at one angle, fast: each set of gaps whose pushes cancel allows a·width + b·length ≤ c, and the most
 * that these allow is found by taking in the one that is broken most, until none is. Not safe for use by many threads.
 */
final class LargestAtAngle {
    private static final double SMALL = 1e-12;

    /** In mm. */
    private static final double KEPT = 1e-10;

    private static final int MOST_STEPS = 200;

    private final Contacts contacts;
    private List<Cancelling.Set> sets = List.of();
    private double[] a = {};
    private double[] b = {};
    private double[] c = {};

    LargestAtAngle(Contacts contacts) {
        this.contacts = contacts;
    }

    /**
     * What can be had at one angle.
     *
     * @param angle the angle in rad
     * @param value the side of a square of the largest area in mm
     * @param slope the change of the value for a turn, per rad
     * @param curve what bounds its second derivative
     */
    record Area(double angle, double value, double slope, AreaCurve curve) implements AngleSearch.Peak {
        /** Two limits may hold it in turn; that the curve of both turns only once is not proved. */
        @Override
        public boolean isHeldAs(AngleSearch.Peak other) {
            return false;
        }

        @Override
        public double bend(double within) {
            return curve.bend(within);
        }
    }

    /** A width and a length, the two limits that hold them, and what these are worth; the second may be -1. */
    private record Corner(double w, double l, int i, int j, double worthI, double worthJ) {}

    /** The largest area at that angle, or null where nothing goes in. */
    @Nullable
    Area at(double angle) {
        if (!contacts.turnTo(angle)) {
            return null;
        }
        limits();
        Corner best = largest();
        if (best == null) {
            return null;
        }
        Squeeze.@Nullable Tight place =
                Squeeze.clearance(contacts, best.w, best.l).at(angle);
        if (place == null) {
            return null;
        }
        double[] z = {place.x() - best.w / 2, place.x() + best.w / 2, place.y() - best.l / 2, place.y() + best.l / 2};
        double value = Math.sqrt(best.w * best.l);
        double slope = best.worthI * turn(best.i, z) + (best.j < 0 ? 0 : best.worthJ * turn(best.j, z));
        return new Area(angle, value, slope * value / 2, curve(best, place));
    }

    private AreaCurve curve(Corner at, Squeeze.Tight place) {
        double far = StrictMath.hypot(at.w, at.l) / 2;
        double weights = 0;
        double turning = 0;
        for (int set : new int[] {at.i, at.j}) {
            double worth = set == at.i ? at.worthI : at.worthJ;
            if (set >= 0 && worth > 0) {
                Cancelling.Set of = sets.get(set);
                double sum = 0;
                for (int k = 0; k < of.of().length; k++) {
                    int i = of.of()[k];
                    sum += of.weight()[k] * StrictMath.sqrt(1 + contacts.lean(i) * contacts.lean(i));
                    far = contacts.isLine(i) ? far : Math.max(far, contacts.far(i, place.x(), place.y()));
                }
                Normals normals = Normals.of(contacts, of.of());
                weights += worth * sum;
                turning += worth * sum * normals.turning() / normals.sines();
            }
        }
        return new AreaCurve(at.w, at.l, far, weights, turning);
    }

    private double turn(int set, double[] z) {
        Cancelling.Set of = sets.get(set);
        double turn = 0;
        for (int k = 0; k < of.of().length; k++) {
            turn += of.weight()[k] * contacts.turn(of.of()[k], z);
        }
        return turn;
    }

    private void limits() {
        int n = contacts.size();
        double[][] push = new double[n][];
        double[] wide = new double[n];
        double[] far = new double[n];
        double[] constant = new double[n];
        for (int i = 0; i < n; i++) {
            push[i] = new double[] {contacts.pushX(i), contacts.pushY(i)};
            double[] own = contacts.pushes(i);
            wide[i] = (own[0] - own[1]) / 2;
            far[i] = (own[2] - own[3]) / 2;
            constant[i] = contacts.constant(i);
        }
        sets = Cancelling.inPlace(push);
        int m = sets.size();
        a = new double[m];
        b = new double[m];
        c = new double[m];
        for (int i = 0; i < m; i++) {
            a[i] = sets.get(i).sum(wide);
            b[i] = sets.get(i).sum(far);
            c[i] = sets.get(i).sum(constant);
        }
    }

    private @Nullable Corner largest() {
        int first = -1;
        int second = -1;
        for (int i = 0; i < a.length; i++) {
            boolean narrower = a[i] > SMALL && (first < 0 || c[i] * a[first] < c[first] * a[i]);
            boolean shorter = b[i] > SMALL && (second < 0 || c[i] * b[second] < c[second] * b[i]);
            first = narrower ? i : first;
            second = shorter ? i : second;
        }
        Corner best = first < 0 || second < 0 ? null : most(first, second, -1);
        for (int step = 0; best != null && step < MOST_STEPS; step++) {
            int broken = broken(best);
            if (broken < 0) {
                return best;
            }
            best = most(best.i, best.j, broken);
        }
        return null;
    }

    private int broken(Corner at) {
        int broken = -1;
        double most = KEPT;
        for (int i = 0; i < a.length; i++) {
            double over = a[i] * at.w + b[i] * at.l - c[i];
            if (over > most) {
                most = over;
                broken = i;
            }
        }
        return broken;
    }

    /** The largest area under two or three limits. */
    private @Nullable Corner most(int i, int j, int k) {
        int[] all = {i, j, k};
        for (int one : all) {
            Corner corner = one < 0 ? null : touching(one);
            if (corner != null && keeps(corner, all)) {
                return corner;
            }
        }
        for (int p = 0; p < 3; p++) {
            int one = all[p];
            int other = all[(p + 1) % 3];
            Corner corner = one < 0 || other < 0 ? null : crossing(one, other);
            if (corner != null && keeps(corner, all)) {
                return corner;
            }
        }
        return null;
    }

    private boolean keeps(Corner at, int[] limits) {
        for (int i : limits) {
            if (i >= 0 && i != at.i && i != at.j && !(a[i] * at.w + b[i] * at.l <= c[i])) {
                return false;
            }
        }
        return true;
    }

    private @Nullable Corner touching(int i) {
        boolean bounded = a[i] > SMALL && b[i] > SMALL && c[i] > 0;
        return bounded ? new Corner(c[i] / (2 * a[i]), c[i] / (2 * b[i]), i, -1, 2 / c[i], 0) : null;
    }

    private @Nullable Corner crossing(int i, int j) {
        double det = a[i] * b[j] - a[j] * b[i];
        if (Math.abs(det) < SMALL) {
            return null;
        }
        double w = (c[i] * b[j] - c[j] * b[i]) / det;
        double l = (a[i] * c[j] - a[j] * c[i]) / det;
        double worthI = (b[j] / w - a[j] / l) / det;
        double worthJ = (a[i] / l - b[i] / w) / det;
        boolean largest = w > 0 && l > 0 && worthI >= 0 && worthJ >= 0;
        return largest ? new Corner(w, l, i, j, worthI, worthJ) : null;
    }
}
