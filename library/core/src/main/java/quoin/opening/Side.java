package quoin.opening;

import java.util.Locale;
import java.util.Optional;

/** The four sides, seen standing underneath, facing the head, looking up; in order round the opening. */
public enum Side {
    /** The high edge, or the one that was marked. Runs left to right. */
    HEAD(Corner.HEAD_LEFT, Corner.HEAD_RIGHT),
    /** On the right hand. Runs from head to foot. */
    RIGHT(Corner.HEAD_RIGHT, Corner.FOOT_RIGHT),
    /** Opposite the head. Runs left to right. */
    FOOT(Corner.FOOT_LEFT, Corner.FOOT_RIGHT),
    /** On the left hand. Runs from head to foot. */
    LEFT(Corner.HEAD_LEFT, Corner.FOOT_LEFT);

    private final String text = name().toLowerCase(Locale.ROOT);
    private final String edge;
    private final String gapFrom;
    private final String gapTo;
    private final Corner from;
    private final Corner to;

    Side(Corner from, Corner to) {
        this.from = from;
        this.to = to;
        this.edge = (from.isLeft() == to.isLeft() ? "length@" : "width@").concat(text);
        this.gapFrom = "gap." + text + "@" + from.text();
        this.gapTo = "gap." + text + "@" + to.text();
    }

    /** {@return the side as documents write it} */
    public String text() {
        return text;
    }

    /** Its whole length, as documents write it. */
    String edge() {
        return edge;
    }

    /** The figure that is the gap between the frame and one of its ends. */
    String gapAt(Corner corner) {
        return corner == from ? gapFrom : gapTo;
    }

    /** {@return the corner that distances along it start from} */
    public Corner from() {
        return from;
    }

    /** {@return the corner at its other end} */
    public Corner to() {
        return to;
    }

    /**
     * Whether the side ends in that corner.
     *
     * @param corner the corner
     * @return whether they touch
     */
    public boolean touches(Corner corner) {
        return from == corner || to == corner;
    }

    /**
     * The side of that name.
     *
     * @param text the name as documents write it
     * @return the side, or empty where there is none of that name
     */
    public static Optional<Side> find(String text) {
        for (Side side : values()) {
            if (side.text.equals(text)) {
                return Optional.of(side);
            }
        }
        return Optional.empty();
    }
}
