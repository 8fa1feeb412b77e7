package quoin.opening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Where outlines and a frame face each other, in plain numbers: every gap as a function of the frame and of the angle it
 * is turned by.
 *
 * <p>The frame's own axes stay and the outlines turn about the middle of the opening, the other way. The gaps are those of
 * {@link SideGap}, in the same order. Not safe for use by many threads.
 */
final class Contacts {
    private static final int X0 = 0;
    private static final int X1 = 1;
    private static final int Y0 = 2;
    private static final int Y1 = 3;

    /** A side that leans further from the frame than this (tangent) does not face it. */
    private static final double STEEPEST = 20;

    /** One gap: a line through two points, met at one end of the frame's side, or a single point. */
    private record Contact(Side side, boolean line, int along, double px, double py, double dx, double dy) {
        boolean isUpright() {
            return side == Side.LEFT || side == Side.RIGHT;
        }
    }

    private final Contact[] contacts;
    private final double pivotX;
    private final double pivotY;
    private final double reach;
    private final double small;
    private final int[] own;
    private final boolean[] upright;
    private final double[] sign;
    private final double[] constant;
    private final double[] lean;
    private final double[] turnedX;
    private final double[] turnedY;
    private double angle;

    private Contacts(List<Contact> list, double pivotX, double pivotY, double reach, double small) {
        this.contacts = list.toArray(Contact[]::new);
        this.pivotX = pivotX;
        this.pivotY = pivotY;
        this.reach = reach;
        this.small = small;
        int n = contacts.length;
        this.own = new int[n];
        this.upright = new boolean[n];
        this.sign = new double[n];
        this.constant = new double[n];
        this.lean = new double[n];
        this.turnedX = new double[n];
        this.turnedY = new double[n];
        for (int i = 0; i < n; i++) {
            own[i] = switch (contacts[i].side) {
                case LEFT -> X0;
                case RIGHT -> X1;
                case HEAD -> Y0;
                case FOOT -> Y1;
            };
            upright[i] = contacts[i].isUpright();
            sign[i] = own[i] == X0 || own[i] == Y0 ? 1 : -1;
        }
        turnTo(0);
    }

    static Contacts of(List<Outline> outlines) {
        Outline front = outlines.get(0);
        double[] x = new double[4];
        double[] y = new double[4];
        Corner[] corners = Corner.values();
        for (int i = 0; i < 4; i++) {
            x[i] = front.corner(corners[i]).x().value();
            y[i] = front.corner(corners[i]).y().value();
        }
        double middleX = (x[0] + x[1] + x[2] + x[3]) / 4;
        double middleY = (y[0] + y[1] + y[2] + y[3]) / 4;
        double reach = 0;
        for (int i = 0; i < 4; i++) {
            reach = Math.max(reach, StrictMath.hypot(x[i] - middleX, y[i] - middleY));
        }
        List<Contact> list = new ArrayList<>();
        for (Outline outline : outlines) {
            for (Side side : Side.values()) {
                add(outline.side(side), side, middleX, middleY, list);
            }
        }
        return new Contacts(list, middleX, middleY, reach, 0.2 * Math.min(extent(x), extent(y)));
    }

    private static double extent(double[] values) {
        double least = values[0];
        double most = values[0];
        for (double value : values) {
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        return most - least;
    }

    private static void add(List<Outline.Vertex> chain, Side side, double x, double y, List<Contact> list) {
        int last = chain.size() - 1;
        if (last < 1) {
            return;
        }
        boolean upright = side == Side.LEFT || side == Side.RIGHT;
        list.add(contact(side, upright ? Y0 : X0, chain.get(0), chain.get(1), x, y));
        for (int i = 1; i < last; i++) {
            Outline.Vertex v = chain.get(i);
            list.add(new Contact(side, false, -1, v.x().value() - x, v.y().value() - y, 0, 0));
        }
        list.add(contact(side, upright ? Y1 : X1, chain.get(last), chain.get(last - 1), x, y));
    }

    private static Contact contact(Side side, int along, Outline.Vertex a, Outline.Vertex b, double x, double y) {
        double ax = a.x().value();
        double ay = a.y().value();
        return new Contact(side, true, along, ax - x, ay - y, b.x().value() - ax, b.y().value() - ay);
    }

    int size() {
        return contacts.length;
    }

    double pivotX() {
        return pivotX;
    }

    double pivotY() {
        return pivotY;
    }

    /** Where along the frame's side a gap is, from the left or head end of that side: at an end, or at a touched point. */
    double along(int i, double[] z) {
        Contact at = contacts[i];
        double start = upright[i] ? z[Y0] : z[X0];
        double place = at.line ? z[at.along] : upright[i] ? turnedY[i] : turnedX[i];
        return place - start;
    }

    /** How far the farthest corner is from the middle. */
    double reach() {
        return reach;
    }

    /** Half the side of a square that is small in the opening. */
    double small() {
        return small;
    }

    /** The angle the frame is turned by. */
    double angle() {
        return angle;
    }

    /** Turns the frame; false where a side no longer faces it. */
    boolean turnTo(double rad) {
        angle = rad;
        double s = StrictMath.sin(rad);
        double c = Math.abs(rad) < 1 ? StrictMath.sqrt((1 - s) * (1 + s)) : StrictMath.cos(rad);
        boolean faces = true;
        for (int i = 0; i < contacts.length; i++) {
            Contact at = contacts[i];
            double x = c * at.px + s * at.py;
            double y = c * at.py - s * at.px;
            turnedX[i] = x;
            turnedY[i] = y;
            double m = 0;
            if (at.line) {
                double dx = c * at.dx + s * at.dy;
                double dy = c * at.dy - s * at.dx;
                m = upright[i] ? dx / dy : dy / dx;
                faces &= Math.abs(m) < STEEPEST;
            }
            lean[i] = m;
            constant[i] = upright[i] ? sign[i] * (m * y - x) : sign[i] * (m * x - y);
        }
        return faces;
    }

    /** The gap for a frame z = (left x, right x, head y, foot y) in its own axes, from the middle of the opening. */
    double gap(int i, double[] z) {
        Contact at = contacts[i];
        double across = constant[i] + sign[i] * z[own[i]];
        return at.line ? across - sign[i] * lean[i] * z[at.along] : across;
    }

    /** The change of a gap for a move of one side of the frame. */
    double push(int i, int of) {
        double push = own[i] == of ? sign[i] : 0;
        return contacts[i].along == of ? push - sign[i] * lean[i] : push;
    }

    /** The gap where all of z is 0. */
    double constant(int i) {
        return constant[i];
    }

    /** The change of a gap for a move of each side of the frame. */
    double[] pushes(int i) {
        return new double[] {push(i, X0), push(i, X1), push(i, Y0), push(i, Y1)};
    }

    /** The change of a gap for a move of the frame along its own head. */
    double pushX(int i) {
        return upright[i] ? sign[i] : -sign[i] * lean[i];
    }

    /** The change of a gap for a move of the frame along its own left side. */
    double pushY(int i) {
        return upright[i] ? -sign[i] * lean[i] : sign[i];
    }

    /** The change of a gap for a turn of the frame about the middle of the opening, per rad. */
    double turn(int i, double[] z) {
        Contact at = contacts[i];
        double x = turnedX[i];
        double y = turnedY[i];
        if (!at.line) {
            return upright[i] ? -sign[i] * y : sign[i] * x;
        }
        double m = lean[i];
        double steep = 1 + m * m;
        return upright[i]
                ? -sign[i] * (y + steep * (z[at.along] - y) + m * x)
                : sign[i] * (x + steep * (z[at.along] - x) + m * y);
    }

    /** Whether a gap is to a line; else it is to a point. */
    boolean isLine(int i) {
        return contacts[i].line;
    }

    /** The tangent of the angle by which the line of a gap leans from the frame; 0 for a point. */
    double lean(int i) {
        return lean[i];
    }

    /** How far the point of a gap is from a place in the frame's axes. */
    double far(int i, double x, double y) {
        return StrictMath.hypot(turnedX[i] - x, turnedY[i] - y);
    }

    /** The angles within a range at which the frame is parallel to a side, in no order, perhaps one twice. */
    double[] parallels(double within) {
        double[] angles = new double[contacts.length];
        int count = 0;
        for (Contact at : contacts) {
            if (at.line) {
                double tilt = at.isUpright()
                        ? StrictMath.atan2(-at.dx * Math.signum(at.dy), Math.abs(at.dy))
                        : StrictMath.atan2(at.dy * Math.signum(at.dx), Math.abs(at.dx));
                if (Math.abs(tilt) < within) {
                    angles[count++] = tilt + 0.0;
                }
            }
        }
        return Arrays.copyOf(angles, count);
    }

    /** Where a point in the frame's axes lies in the opening: along the head and towards the foot from head-left. */
    double[] inOpening(double x, double y) {
        double c = StrictMath.cos(angle);
        double s = StrictMath.sin(angle);
        return new double[] {pivotX + c * x - s * y, pivotY + s * x + c * y};
    }
}
