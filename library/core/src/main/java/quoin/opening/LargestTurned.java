package quoin.opening;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quoin.measure.Uncertain;

/** The search for the rectangle of largest area over place, size and angle. Not safe for use by many threads. */
final class LargestTurned {
    /** In mm: how much larger the side of the square of the true largest area may be. */
    private static final double CLOSE = 1e-9;

    /** In rad: nearer to the end of the range than this it cannot follow the readings beyond. */
    private static final double AT_END = 1e-9;

    private final Opening opening;
    private final Held held;
    private final Contacts contacts;

    LargestTurned(Opening opening, Held held) {
        this.opening = opening;
        this.held = held;
        this.contacts = Contacts.of(opening.outlines());
    }

    Fit.@Nullable Rectangle rectangle() {
        double angle = angle();
        if (!contacts.turnTo(angle)) {
            return null;
        }
        LargestRectangle.Solution best = solve();
        if (best == null) {
            return null;
        }
        double[] z = best.z();
        double[] corner = contacts.inOpening(z[0], z[2]);
        List<SideGap> gaps = opening.gaps(contacts, held, angle);
        double[][] follow = follow(best, angle);
        Uncertain[] moved = new Uncertain[gaps.size()];
        for (int i = 0; i < moved.length; i++) {
            moved[i] = gaps.get(i).at(z);
        }
        return new Fit.Rectangle(
                side(z[1] - z[0], follow[1], follow[0], moved),
                side(z[3] - z[2], follow[3], follow[2], moved),
                corner[0],
                corner[1],
                angle);
    }

    /** The angle it is held at, or the best one. */
    private double angle() {
        if (!held.isFree()) {
            return Fit.angle(opening.front(), held.side()).value();
        }
        double within = held.withinRad();
        LargestAtAngle aim = new LargestAtAngle(contacts);
        LargestAtAngle.@Nullable Area best = AngleSearch.best(within, contacts.parallels(within), CLOSE, aim::at);
        return best == null ? 0 : best.angle();
    }

    private LargestRectangle.@Nullable Solution solve() {
        int n = contacts.size();
        double[] constant = new double[n];
        double[][] push = new double[n][];
        for (int i = 0; i < n; i++) {
            constant[i] = contacts.constant(i);
            push[i] = contacts.pushes(i);
        }
        return LargestRectangle.solve(constant, push, 0, 0, contacts.small());
    }

    /**
     * How the rectangle follows the gaps. One that may turn has a fifth unknown, a small turn in mm at the reach of the
     * opening, and two more gaps: to the ends of the range.
     */
    private double[][] follow(LargestRectangle.Solution best, double angle) {
        double before = held.withinRad() + angle;
        double after = held.withinRad() - angle;
        if (!(Math.min(before, after) > AT_END)) {
            return best.follow();
        }
        int n = contacts.size();
        double reach = contacts.reach();
        double[] constant = new double[n + 2];
        double[][] push = new double[n + 2][5];
        for (int i = 0; i < n; i++) {
            constant[i] = contacts.constant(i);
            System.arraycopy(contacts.pushes(i), 0, push[i], 0, 4);
            push[i][4] = contacts.turn(i, best.z()) / reach;
        }
        constant[n] = before * reach;
        push[n][4] = 1;
        constant[n + 1] = after * reach;
        push[n + 1][4] = -1;
        LargestRectangle.Solution free = LargestRectangle.solve(constant, push, 0, 0, contacts.small());
        return free == null ? best.follow() : free.follow();
    }

    private static Uncertain side(double value, double[] far, double[] near, Uncertain[] gaps) {
        double[] partials = new double[gaps.length];
        for (int i = 0; i < partials.length; i++) {
            partials[i] = far[i] - near[i];
        }
        return Uncertain.combine(value, partials, gaps);
    }
}
