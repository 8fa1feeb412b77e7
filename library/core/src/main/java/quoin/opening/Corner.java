package quoin.opening;

import java.util.Locale;
import java.util.Optional;

/** The four corners, seen standing underneath, facing the head, looking up; in order round the opening. */
public enum Corner {
    /** Where head and left side meet: the origin. */
    HEAD_LEFT,
    /** Where head and right side meet. */
    HEAD_RIGHT,
    /** Where foot and right side meet. */
    FOOT_RIGHT,
    /** Where foot and left side meet. */
    FOOT_LEFT;

    private final String text = name().toLowerCase(Locale.ROOT).replace('_', '-');
    private final String diagonal = "diagonal@".concat(text);

    /** {@return the corner as documents write it} */
    public String text() {
        return text;
    }

    /** {@return the corner at the other end of the diagonal} */
    public Corner opposite() {
        return next().next();
    }

    /** The diagonal that starts here, as documents write it. */
    String diagonal() {
        return diagonal;
    }

    /** The corner after this one, in order round the opening. */
    Corner next() {
        return switch (this) {
            case HEAD_LEFT -> HEAD_RIGHT;
            case HEAD_RIGHT -> FOOT_RIGHT;
            case FOOT_RIGHT -> FOOT_LEFT;
            case FOOT_LEFT -> HEAD_LEFT;
        };
    }

    /** The corner before this one. */
    Corner previous() {
        return opposite().next();
    }

    /** {@return whether it is at the head} */
    public boolean isHead() {
        return this == HEAD_LEFT || this == HEAD_RIGHT;
    }

    /** {@return whether it is on the left} */
    public boolean isLeft() {
        return this == HEAD_LEFT || this == FOOT_LEFT;
    }

    /**
     * The corner of that name.
     *
     * @param text the name as documents write it
     * @return the corner, or empty where there is none of that name
     */
    public static Optional<Corner> find(String text) {
        for (Corner corner : values()) {
            if (corner.text.equals(text)) {
                return Optional.of(corner);
            }
        }
        return Optional.empty();
    }
}
