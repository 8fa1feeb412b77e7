package quoin.rulebook;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import quoin.measure.Amount;

/**
 * How the frame lies in the opening.
 *
 * <p>Immutable and safe for use by many threads.
 *
 * @clause frame
 * @formula the frame's side {@code hold} lies parallel to that side of the opening; among the rectangles that go in, the
 *     one with the most {@code keep} counts; the frame fills {@code depth} from the face
 * @unit mm
 * @edge without a depth the frame counts as a flat outline
 * @source practice: a frame turned in its hole is seen from below at once, so it is held to the head
 * @param hold the side the frame is held parallel to
 * @param keep what is kept largest: {@code area}
 * @param depth from and to what depth the frame fills the recess; two amounts, or none
 */
public record FrameRule(Hold hold, String keep, List<Amount> depth) {
    /** The side a frame is held to. */
    public enum Hold {
        /** The head. */
        HEAD,
        /** The right side. */
        RIGHT,
        /** The foot. */
        FOOT,
        /** The left side. */
        LEFT;

        private final String text = name().toLowerCase(Locale.ROOT);

        /** {@return the side as documents write it} */
        public String text() {
            return text;
        }

        /**
         * The side of that name.
         *
         * @param text the name as documents write it
         * @return the side, or empty where there is none of that name
         */
        public static Optional<Hold> find(String text) {
            for (Hold hold : values()) {
                if (hold.text.equals(text)) {
                    return Optional.of(hold);
                }
            }
            return Optional.empty();
        }
    }

    /** Held to the head, the largest area, no depth stated. */
    public static final FrameRule DEFAULT = new FrameRule(Hold.HEAD, "area", List.of());

    /** Refuses a depth that is not a pair; copies the list. */
    public FrameRule {
        Objects.requireNonNull(hold, "hold");
        if (!keep.equals("area")) {
            throw new IllegalArgumentException("keep must be area, got " + keep);
        }
        depth = List.copyOf(depth);
        if (depth.size() != 0 && depth.size() != 2) {
            throw new IllegalArgumentException("depth must be two amounts or none, got " + depth.size());
        }
    }
}
