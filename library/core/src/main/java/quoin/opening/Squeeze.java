package quoin.opening;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How far a frame can grow, or how large its least gap can be made, at a fixed angle: a linear programme in the frame's
 * place and one number, solved by looking at all gaps that can hold it.
 *
 * <p>Two or three gaps hold a frame when weighted sums of their pushes cancel: moving the frame cannot widen all of them.
 * The least that any of these sums allows is what can be had (duality). Not safe for use by many threads.
 */
final class Squeeze {
    /** Two pushes are one direction below this. */
    private static final double PARALLEL = 1e-12;

    /** In mm; sums this close are alike. */
    private static final double ALIKE = 1e-10;

    /** In mm; a place keeps all gaps open that are open by more than minus this. */
    private static final double KEPT = 1e-8;

    private final Contacts contacts;
    private final double[] start;
    private final double[] grow;
    private final boolean clearance;
    private final double half;
    private final int n;
    private final double[] gap;
    private final double[] loss;
    private final double[] px;
    private final double[] py;
    private final int[] facing;
    private final double[] cross;
    private int faces;
    private double lowest;

    private Squeeze(Contacts contacts, double[] start, double[] grow, boolean clearance) {
        this.contacts = contacts;
        this.start = start;
        this.grow = grow;
        this.clearance = clearance;
        this.half = StrictMath.hypot(start[1], start[3]);
        this.n = contacts.size();
        this.gap = new double[n];
        this.loss = new double[n];
        this.px = new double[n];
        this.py = new double[n];
        this.facing = new int[n];
        this.cross = new double[n * n];
    }

    /** The largest least gap round a frame of that size. */
    static Squeeze clearance(Contacts contacts, double width, double length) {
        return new Squeeze(contacts, frame(width, length), frame(0, 0), true);
    }

    /** How often a frame of some size can be made larger by some amounts. */
    static Squeeze growth(Contacts contacts, double width, double length, double wider, double longer) {
        return new Squeeze(contacts, frame(width, length), frame(wider, longer), false);
    }

    private static double[] frame(double width, double length) {
        return new double[] {-width / 2, width / 2, -length / 2, length / 2};
    }

    /**
     * What can be had at one angle.
     *
     * @param angle the angle in rad
     * @param value the least gap in mm, or how often the frame can grow
     * @param slope the change of the value for a turn, per rad
     * @param of the gaps that hold the frame
     * @param weight their weights
     * @param x where the middle of the frame is, in its own axes from the middle of the opening
     * @param y the same, towards its foot
     * @param curve what bounds its second derivative
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared, never handed out
    record Tight(double angle, double value, double slope, int[] of, double[] weight, double x, double y, Curve curve)
            implements AngleSearch.Peak {
        /** Of lines alone, or of two points alone, the curve turns once in a piece: see {@link Curve}. */
        @Override
        public boolean isHeldAs(AngleSearch.Peak other) {
            return curve.normals().turning() == 0
                    && other instanceof Tight tight
                    && java.util.Arrays.equals(of, tight.of);
        }

        @Override
        public double bend(double within) {
            return curve.bend(value, within);
        }
    }

    /** What can be had at that angle, or null where nothing goes in however small. */
    @Nullable
    Tight at(double angle) {
        if (!contacts.turnTo(angle)) {
            return null;
        }
        for (int i = 0; i < n; i++) {
            gap[i] = contacts.gap(i, start);
            loss[i] = clearance ? 1 : -grown(i);
            px[i] = contacts.pushX(i);
            py[i] = contacts.pushY(i);
        }
        face();
        lowest = Double.POSITIVE_INFINITY;
        List<Hold> holds = holds();
        return Double.isFinite(lowest) ? tight(holds, lowest) : null;
    }

    private double grown(int i) {
        double grown = 0;
        for (int k = 0; k < 4; k++) {
            grown += contacts.push(i, k) * grow[k];
        }
        return grown;
    }

    /** Gaps whose pushes cancel, with weights, and what they allow. */
    private record Hold(int i, int j, int k, double wi, double wj, double wk, double value) {}

    /**
     * Lists the gaps that can hold the frame: of those that push exactly alike and lose alike one that is wider than another
     * cannot, since there the other would be less than the least. Where both are within what counts as open, both stay.
     */
    private void face() {
        double largest = 0;
        for (int i = 0; i < n; i++) {
            largest = Math.max(largest, Math.abs(gap[i]));
        }
        double margin = KEPT * (1 + largest);
        faces = 0;
        for (int i = 0; i < n; i++) {
            if (!clearance || !isBehindAnother(i, margin)) {
                facing[faces++] = i;
            }
        }
        for (int a = 0; a < faces; a++) {
            for (int b = a + 1; b < faces; b++) {
                cross[a * n + b] = cross(facing[a], facing[b]);
            }
        }
    }

    private boolean isBehindAnother(int i, double margin) {
        double least = gap[i] - margin;
        for (int j = 0; j < n; j++) {
            if (gap[j] < least && px[j] == px[i] && py[j] == py[i]) {
                return true;
            }
        }
        return false;
    }

    /** Those among which the least are. */
    private List<Hold> holds() {
        List<Hold> holds = new ArrayList<>();
        for (int a = 0; a < faces; a++) {
            for (int b = a + 1; b < faces; b++) {
                double ij = cross[a * n + b];
                if (Math.abs(ij) < PARALLEL) {
                    addPair(holds, facing[a], facing[b]);
                    continue;
                }
                for (int c = b + 1; c < faces; c++) {
                    double jk = cross[b * n + c];
                    double ki = -cross[a * n + c];
                    boolean positive = ij > 0 && jk > PARALLEL && ki > PARALLEL;
                    boolean negative = ij < 0 && jk < -PARALLEL && ki < -PARALLEL;
                    if (positive || negative) {
                        double sum = ij + jk + ki;
                        add(holds, facing[a], facing[b], facing[c], jk / sum, ki / sum, ij / sum);
                    }
                }
            }
        }
        return holds;
    }

    private void addPair(List<Hold> holds, int i, int j) {
        if (px[i] * px[j] + py[i] * py[j] < 0) {
            double wi = Math.abs(px[j]) + Math.abs(py[j]);
            double wj = Math.abs(px[i]) + Math.abs(py[i]);
            add(holds, i, j, -1, wi / (wi + wj), wj / (wi + wj), 0);
        }
    }

    private double cross(int i, int j) {
        return px[i] * py[j] - py[i] * px[j];
    }

    private void add(List<Hold> holds, int i, int j, int k, double wi, double wj, double wk) {
        double sum = wi * gap[i] + wj * gap[j] + (k < 0 ? 0 : wk * gap[k]);
        double lost = wi * loss[i] + wj * loss[j] + (k < 0 ? 0 : wk * loss[k]);
        if (lost > PARALLEL) {
            double held = sum / lost;
            if (!(held > lowest + alike(lowest))) {
                lowest = Math.min(lowest, held);
                holds.add(new Hold(i, j, k, wi / lost, wj / lost, wk / lost, held));
            }
        } else if (sum < -KEPT) {
            lowest = Double.NEGATIVE_INFINITY;
        }
    }

    private static double alike(double least) {
        return ALIKE * (1 + Math.abs(least));
    }

    /** The first hold among the least whose place keeps all other gaps open. */
    private Tight tight(List<Hold> holds, double least) {
        double alike = alike(least);
        Tight best = null;
        double mostOpen = Double.NEGATIVE_INFINITY;
        for (Hold hold : holds) {
            if (hold.value <= least + alike) {
                double[] place = place(hold, least);
                double open = open(place, least);
                if (best == null || open > mostOpen) {
                    best = tight(hold, least, place);
                    mostOpen = open;
                }
                if (open > -KEPT * (1 + Math.abs(least))) {
                    break;
                }
            }
        }
        return java.util.Objects.requireNonNull(best, "best");
    }

    private Tight tight(Hold hold, double least, double[] place) {
        double grown = clearance ? 0 : least;
        double[] z = start.clone();
        for (int k = 0; k < 4; k++) {
            z[k] += grown * grow[k] + place[k < 2 ? 0 : 1];
        }
        double slope = hold.wi * contacts.turn(hold.i, z) + hold.wj * contacts.turn(hold.j, z);
        slope += hold.k < 0 ? 0 : hold.wk * contacts.turn(hold.k, z);
        int[] of = hold.k < 0 ? new int[] {hold.i, hold.j} : new int[] {hold.i, hold.j, hold.k};
        double[] weight = hold.k < 0 ? new double[] {hold.wi, hold.wj} : new double[] {hold.wi, hold.wj, hold.wk};
        Curve curve = curve(of, place[0], place[1]);
        return new Tight(contacts.angle(), least, slope, of, weight, place[0], place[1], curve);
    }

    private Curve curve(int[] of, double x, double y) {
        double far = half;
        double lean = 0;
        for (int i : of) {
            lean = Math.max(lean, Math.abs(contacts.lean(i)));
            far = contacts.isLine(i) ? far : Math.max(far, contacts.far(i, x, y));
        }
        return new Curve(far, lean, Normals.of(contacts, of));
    }

    private double rest(int i, double value) {
        return gap[i] - loss[i] * value;
    }

    private double open(double[] place, double value) {
        double open = Double.POSITIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            open = Math.min(open, rest(i, value) + px[i] * place[0] + py[i] * place[1]);
        }
        return open;
    }

    /** Where the holding gaps are all at their least; where two hold, as far from all others as can be. */
    private double[] place(Hold hold, double value) {
        if (hold.k < 0) {
            int i = hold.i;
            double square = px[i] * px[i] + py[i] * py[i];
            double x = -rest(i, value) * px[i] / square;
            double y = -rest(i, value) * py[i] / square;
            double along = along(hold, x, y, -py[i], px[i], value);
            return new double[] {x - along * py[i], y + along * px[i]};
        }
        int a = hold.i;
        int b = hold.j;
        if (Math.abs(cross(a, hold.k)) > Math.abs(cross(a, b))) {
            b = hold.k;
        }
        if (Math.abs(cross(hold.j, hold.k)) > Math.abs(cross(a, b))) {
            a = hold.j;
            b = hold.k;
        }
        double det = cross(a, b);
        double ra = rest(a, value);
        double rb = rest(b, value);
        return new double[] {(rb * py[a] - ra * py[b]) / det, (ra * px[b] - rb * px[a]) / det};
    }

    /** How far to go along a direction so that the least of the gaps that do not hold is largest. */
    private double along(Hold hold, double x, double y, double dx, double dy, double value) {
        double best = 0;
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double up = px[i] * dx + py[i] * dy;
                double down = px[j] * dx + py[j] * dy;
                if (i != hold.i && i != hold.j && j != hold.i && j != hold.j && up > 0.1 && down < -0.1) {
                    double hi = rest(i, value) + px[i] * x + py[i] * y;
                    double hj = rest(j, value) + px[j] * x + py[j] * y;
                    double at = (hj - hi) / (up - down);
                    double height = -(hi + up * at);
                    if (height > highest) {
                        highest = height;
                        best = at;
                    }
                }
            }
        }
        return best;
    }
}
