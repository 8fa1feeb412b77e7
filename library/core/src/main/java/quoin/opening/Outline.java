package quoin.opening;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.measure.Influences;
import quoin.measure.Uncertain;

/**
 * The outline of one plane: each side as a chain of points from its first corner to its last, all with their doubt.
 * Immutable and safe for use by many threads.
 */
final class Outline {
    private final Map<Side, List<Vertex>> sides;

    /** A point of a side: where along it (0 to 1, as estimated), its name, and its place. */
    record Vertex(double along, String at, Uncertain x, Uncertain y) {
        Vertex moved(Uncertain dx, Uncertain dy) {
            return new Vertex(along, at, x.plus(dx), y.plus(dy));
        }

        Uncertain distanceTo(Vertex other) {
            return Uncertain.hypot(other.x.minus(x), other.y.minus(y));
        }
    }

    Outline(Map<Side, List<Vertex>> sides) {
        Map<Side, List<Vertex>> copy = new EnumMap<>(Side.class);
        sides.forEach((side, points) -> copy.put(side, List.copyOf(points)));
        this.sides = Collections.unmodifiableMap(copy);
    }

    /** The outline that an adjustment found. */
    static Outline of(Adjustment adjustment) {
        Model model = adjustment.model();
        double[] values = adjustment.values();
        List<Uncertain> unknowns = adjustment.unknowns();
        Map<Side, List<Vertex>> sides = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            Model.Point from = model.corner(side.from(), values);
            Model.Point to = model.corner(side.to(), values);
            double length = StrictMath.hypot(to.x - from.x, to.y - from.y);
            List<Vertex> chain = new ArrayList<>();
            chain.add(vertex(0, side.from().text(), from, unknowns));
            for (TouchedPoint point : model.touched()) {
                if (point.side() == side) {
                    Model.Point p = model.point(point, values);
                    chain.add(vertex(point.on(length), point.at().text(), p, unknowns));
                }
            }
            chain.sort(Comparator.comparingDouble(Vertex::along));
            chain.add(vertex(1, side.to().text(), to, unknowns));
            sides.put(side, chain);
        }
        return new Outline(sides);
    }

    private static Vertex vertex(double along, String at, Model.Point p, List<Uncertain> unknowns) {
        return new Vertex(along, at, Uncertain.combine(p.x, p.dx, unknowns), Uncertain.combine(p.y, p.dy, unknowns));
    }

    List<Vertex> side(Side side) {
        return sides.getOrDefault(side, List.of());
    }

    Vertex corner(Corner corner) {
        Side side = corner.isHead() ? Side.HEAD : Side.FOOT;
        List<Vertex> chain = side(side);
        return corner.isLeft() ? chain.get(0) : chain.get(chain.size() - 1);
    }

    /** How long the chord of a side is, as estimated, in mm. */
    double length(Side side) {
        Vertex a = corner(side.from());
        Vertex b = corner(side.to());
        return StrictMath.hypot(b.x().value() - a.x().value(), b.y().value() - a.y().value());
    }

    /** The place on a side that far along it, on the chain of its points. */
    Vertex on(Side side, double along, String at) {
        List<Vertex> chain = side(side);
        for (int i = 1; i < chain.size(); i++) {
            Vertex a = chain.get(i - 1);
            Vertex b = chain.get(i);
            if (along <= b.along() || i == chain.size() - 1) {
                double span = b.along() - a.along();
                double t = span > 0 ? (along - a.along()) / span : 0;
                return new Vertex(along, at, between(a.x(), b.x(), t), between(a.y(), b.y(), t));
            }
        }
        return chain.get(0);
    }

    private static Uncertain between(Uncertain a, Uncertain b, double t) {
        double value = a.value() + t * (b.value() - a.value());
        return Uncertain.combine(value, new double[] {1 - t, t}, a, b);
    }

    /** The unit normal of a side that points into the opening. */
    Uncertain[] inward(Side side) {
        Vertex a = corner(side.from());
        Vertex b = corner(side.to());
        Uncertain ex = b.x().minus(a.x());
        Uncertain ey = b.y().minus(a.y());
        Uncertain length = Uncertain.hypot(ex, ey);
        Uncertain ux = ex.dividedBy(length);
        Uncertain uy = ey.dividedBy(length);
        boolean turnLeft = side == Side.HEAD || side == Side.RIGHT;
        return turnLeft ? new Uncertain[] {uy.negated(), ux} : new Uncertain[] {uy, ux.negated()};
    }

    /** The outline with every side moved inwards by what is still to come, where it is: its origin moves too. */
    Outline inset(Map<Side, Uncertain> still) {
        Influences basis = influences();
        for (Uncertain value : still.values()) {
            basis = basis.union(value.influences());
        }
        Outline wide = onto(basis);
        Map<Side, Uncertain[]> shift = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            Uncertain by = still.getOrDefault(side, Uncertain.exact(0)).onto(basis);
            Uncertain[] normal = wide.inward(side);
            shift.put(side, new Uncertain[] {normal[0].times(by), normal[1].times(by)});
        }
        Map<Side, List<Vertex>> moved = new EnumMap<>(Side.class);
        shift.forEach((side, by) -> {
            List<Vertex> chain = new ArrayList<>();
            for (Vertex old : wide.side(side)) {
                chain.add(wide.meeting(side, old, shift).orElseGet(() -> old.moved(by[0], by[1])));
            }
            moved.put(side, chain);
        });
        return new Outline(moved);
    }

    /** Where the end of a side goes once both sides there are moved; empty unless its two sides meet in that end. */
    private Optional<Vertex> meeting(Side side, Vertex end, Map<Side, Uncertain[]> shift) {
        for (Corner corner : List.of(side.from(), side.to())) {
            boolean shared = true;
            for (Side other : Side.values()) {
                shared &= !other.touches(corner) || endsIn(other, corner, end);
            }
            if (shared && end.along() == (corner == side.from() ? 0 : 1)) {
                Vertex place = meet(corner, shift);
                return Optional.of(new Vertex(end.along(), end.at(), place.x(), place.y()));
            }
        }
        return Optional.empty();
    }

    private boolean endsIn(Side side, Corner corner, Vertex place) {
        List<Vertex> chain = side(side);
        Vertex end = chain.get(corner == side.from() ? 0 : chain.size() - 1);
        return end.x().equals(place.x()) && end.y().equals(place.y());
    }

    /** The outline moved as it is. */
    Outline moved(Uncertain dx, Uncertain dy) {
        Map<Side, List<Vertex>> moved = new EnumMap<>(Side.class);
        sides.forEach((side, chain) ->
                moved.put(side, chain.stream().map(v -> v.moved(dx, dy)).toList()));
        return new Outline(moved);
    }

    /** Where the two sides of a corner meet once each is shifted. */
    private Vertex meet(Corner corner, Map<Side, Uncertain[]> shift) {
        Side first = corner.isHead() ? Side.HEAD : Side.FOOT;
        Side second = corner.isLeft() ? Side.LEFT : Side.RIGHT;
        Vertex at = corner(corner);
        Uncertain[] e = chord(first);
        Uncertain[] f = chord(second);
        Uncertain[] a = shift.getOrDefault(first, e);
        Uncertain[] b = shift.getOrDefault(second, f);
        Uncertain dx = b[0].minus(a[0]);
        Uncertain dy = b[1].minus(a[1]);
        Uncertain turn = e[0].times(f[1]).minus(e[1].times(f[0]));
        Uncertain t = dx.times(f[1]).minus(dy.times(f[0])).dividedBy(turn);
        return new Vertex(
                at.along(),
                at.at(),
                at.x().plus(a[0]).plus(t.times(e[0])),
                at.y().plus(a[1]).plus(t.times(e[1])));
    }

    private Uncertain[] chord(Side side) {
        Vertex a = corner(side.from());
        Vertex b = corner(side.to());
        return new Uncertain[] {b.x().minus(a.x()), b.y().minus(a.y())};
    }

    /** The outline as a frame sees it that is turned by an angle: about a fixed point, which is its origin, the other way. */
    Outline turned(Uncertain angle, double pivotX, double pivotY) {
        double c = StrictMath.cos(angle.value());
        double s = StrictMath.sin(angle.value());
        Map<Side, List<Vertex>> turned = new EnumMap<>(Side.class);
        double[] cs = {c, s};
        sides.forEach((side, chain) -> {
            List<Vertex> turnedChain = new ArrayList<>(chain.size());
            for (Vertex v : chain) {
                turnedChain.add(turned(v, angle, cs, pivotX, pivotY));
            }
            turned.put(side, turnedChain);
        });
        return new Outline(turned);
    }

    private static Vertex turned(Vertex v, Uncertain angle, double[] cs, double pivotX, double pivotY) {
        double dx = v.x().value() - pivotX;
        double dy = v.y().value() - pivotY;
        double x = cs[0] * dx + cs[1] * dy;
        double y = cs[0] * dy - cs[1] * dx;
        if (angle.influences().size() == 0) {
            return new Vertex(
                    v.along(),
                    v.at(),
                    Uncertain.combine(x, new double[] {cs[0], cs[1]}, v.x(), v.y()),
                    Uncertain.combine(y, new double[] {-cs[1], cs[0]}, v.x(), v.y()));
        }
        return new Vertex(
                v.along(),
                v.at(),
                Uncertain.combine(x, new double[] {cs[0], cs[1], y}, v.x(), v.y(), angle),
                Uncertain.combine(y, new double[] {-cs[1], cs[0], -x}, v.x(), v.y(), angle));
    }

    Outline onto(Influences basis) {
        Map<Side, List<Vertex>> wide = new EnumMap<>(Side.class);
        sides.forEach((side, chain) -> {
            List<Vertex> copy = new ArrayList<>();
            for (Vertex v : chain) {
                copy.add(new Vertex(v.along(), v.at(), v.x().onto(basis), v.y().onto(basis)));
            }
            wide.put(side, copy);
        });
        return new Outline(wide);
    }

    Influences influences() {
        Influences basis = Influences.NONE;
        for (Side side : Side.values()) {
            for (Vertex v : side(side)) {
                basis = basis.union(v.x().influences()).union(v.y().influences());
            }
        }
        return basis;
    }

    /** The outline moved as it is, so that the mean of its corners comes to the mean of another's. */
    Outline centredOn(Outline other) {
        Uncertain dx = Uncertain.exact(0);
        Uncertain dy = Uncertain.exact(0);
        for (Corner corner : Corner.values()) {
            dx = dx.plus(other.corner(corner).x()).minus(corner(corner).x());
            dy = dy.plus(other.corner(corner).y()).minus(corner(corner).y());
        }
        return moved(dx.dividedBy(4), dy.dividedBy(4));
    }
}
