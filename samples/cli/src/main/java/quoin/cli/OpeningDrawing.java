package quoin.cli;

import java.util.Map;
import quoin.job.Shape;
import quoin.opening.Corner;

/** The opening as it was measured, in signs: corners, sides and diagonals with their lengths. */
final class OpeningDrawing {
    private static final int INNER = 34;
    private static final int LEFT = 20;

    private final Map<Corner, Shape.Point> corners;
    private final Lengths lengths;

    OpeningDrawing(Map<Corner, Shape.Point> corners, Lengths lengths) {
        this.corners = corners;
        this.lengths = lengths;
    }

    void on(Page page) {
        String bar = "+" + "-".repeat(INNER) + "+";
        String wall = "|" + " ".repeat(INNER) + "|";
        String left = length(Corner.HEAD_LEFT, Corner.FOOT_LEFT);
        String right = length(Corner.HEAD_RIGHT, Corner.FOOT_RIGHT);
        page.raw(between("head-left", "head " + length(Corner.HEAD_LEFT, Corner.HEAD_RIGHT), "head-right"));
        page.raw(" ".repeat(LEFT) + bar);
        page.raw(" ".repeat(LEFT) + wall);
        page.raw(" ".repeat(Math.max(2, LEFT - 6 - left.length())) + "left " + left + " " + wall + " right " + right);
        page.raw(" ".repeat(LEFT) + wall);
        page.raw(" ".repeat(LEFT) + bar);
        page.raw(between("foot-left", "foot " + length(Corner.FOOT_LEFT, Corner.FOOT_RIGHT), "foot-right"));
        page.text(
                2,
                "Diagonals: head-left to foot-right " + length(Corner.HEAD_LEFT, Corner.FOOT_RIGHT)
                        + ", head-right to foot-left " + length(Corner.HEAD_RIGHT, Corner.FOOT_LEFT) + ".");
    }

    private static String between(String left, String middle, String right) {
        int room = INNER - middle.length();
        return Page.pad(" ".repeat(LEFT - left.length()) + left, LEFT + 1 + room / 2)
                + middle
                + " ".repeat(room - room / 2 + 1)
                + right;
    }

    private String length(Corner from, Corner to) {
        Shape.Point a = corners.get(from);
        Shape.Point b = corners.get(to);
        return a == null || b == null ? "?" : lengths.say(StrictMath.hypot(b.x() - a.x(), b.y() - a.y()));
    }
}
