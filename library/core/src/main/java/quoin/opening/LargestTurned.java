package quoin.opening;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quoin.measure.Uncertain;

/** The search for the rectangle of largest area over place, size and angle. Not safe for use by many threads. */
final class LargestTurned {
    /** In mm: how much larger the side of the square of the true largest area may be. */
    private static final double CLOSE = 1e-6;

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

    /**
     * The largest at one angle.
     *
     * @param angle the angle in rad
     * @param value the side of a square of that area in mm
     * @param slope the change of the value for a turn, per rad
     * @param solution the rectangle
     */
    private record Area(double angle, double value, double slope, LargestRectangle.Solution solution)
            implements AngleSearch.Peak {
        @Override
        public boolean isHeldAs(AngleSearch.Peak other) {
            return false;
        }
    }

    Fit.@Nullable Rectangle rectangle() {
        double within = held.withinRad();
        Area best = held.isFree()
                ? AngleSearch.best(within, contacts.parallels(within), Fit.BEND * contacts.reach(), CLOSE, this::area)
                : area(Fit.angle(opening.front(), held.side()).value());
        if (best == null) {
            return null;
        }
        double[] z = best.solution.z();
        contacts.turnTo(best.angle);
        double[] corner = contacts.inOpening(z[0], z[2]);
        List<SideGap> gaps = opening.gaps(contacts, held, best.angle);
        double[][] follow = follow(best);
        Uncertain[] moved = new Uncertain[gaps.size()];
        for (int i = 0; i < moved.length; i++) {
            moved[i] = gaps.get(i).at(z);
        }
        return new Fit.Rectangle(
                side(z[1] - z[0], follow[1], follow[0], moved),
                side(z[3] - z[2], follow[3], follow[2], moved),
                corner[0],
                corner[1],
                best.angle);
    }

    private @Nullable Area area(double angle) {
        if (!contacts.turnTo(angle)) {
            return null;
        }
        int n = contacts.size();
        double[] constant = new double[n];
        double[][] push = new double[n][];
        for (int i = 0; i < n; i++) {
            constant[i] = contacts.constant(i);
            push[i] = contacts.pushes(i);
        }
        LargestRectangle.Solution solution = LargestRectangle.solve(constant, push, 0, 0, contacts.small());
        if (solution == null) {
            return null;
        }
        double[] z = solution.z();
        double side = Math.sqrt((z[1] - z[0]) * (z[3] - z[2]));
        double slope = 0;
        for (int i = 0; i < n; i++) {
            slope += solution.worth()[i] * contacts.turn(i, z);
        }
        return new Area(angle, side, slope * side / 2, solution);
    }

    /**
     * How the rectangle follows the gaps. One that may turn has a fifth unknown, a small turn in mm at the reach of the
     * opening, and two more gaps: to the ends of the range.
     */
    private double[][] follow(Area best) {
        double before = held.withinRad() + best.angle;
        double after = held.withinRad() - best.angle;
        if (!(Math.min(before, after) > AT_END)) {
            return best.solution.follow();
        }
        int n = contacts.size();
        double reach = contacts.reach();
        double[] constant = new double[n + 2];
        double[][] push = new double[n + 2][5];
        for (int i = 0; i < n; i++) {
            constant[i] = contacts.constant(i);
            System.arraycopy(contacts.pushes(i), 0, push[i], 0, 4);
            push[i][4] = contacts.turn(i, best.solution.z()) / reach;
        }
        constant[n] = before * reach;
        push[n][4] = 1;
        constant[n + 1] = after * reach;
        push[n + 1][4] = -1;
        LargestRectangle.Solution free = LargestRectangle.solve(constant, push, 0, 0, contacts.small());
        return free == null ? best.solution.follow() : free.follow();
    }

    private static Uncertain side(double value, double[] far, double[] near, Uncertain[] gaps) {
        double[] partials = new double[gaps.length];
        for (int i = 0; i < partials.length; i++) {
            partials[i] = far[i] - near[i];
        }
        return Uncertain.combine(value, partials, gaps);
    }
}
