package quoin.rulebook;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import quoin.measure.Amount;

/** How a size is rounded, once, at its end. Values of it are immutable. */
public sealed interface Rounding {
    /** Which way to round. */
    enum Mode {
        /** To the greatest multiple that is not above. */
        DOWN,
        /** To the least multiple that is not below. */
        UP,
        /** To the nearest multiple, halves away from zero. */
        NEAREST;

        private final String text = name().toLowerCase(Locale.ROOT);

        /** {@return the way as documents write it} */
        public String text() {
            return text;
        }

        /**
         * The way of that name.
         *
         * @param text the name as documents write it
         * @return the way, or empty where there is none of that name
         */
        public static Optional<Mode> find(String text) {
            for (Mode mode : values()) {
                if (mode.text.equals(text)) {
                    return Optional.of(mode);
                }
            }
            return Optional.empty();
        }
    }

    /** Not at all. */
    record None() implements Rounding {}

    /**
     * To a multiple of a step.
     *
     * @param mode which way
     * @param amount the step
     */
    record Step(Mode mode, Amount amount) implements Rounding {
        /** Checks that nothing is missing. */
        public Step {
            Objects.requireNonNull(mode, "mode");
            Objects.requireNonNull(amount, "amount");
        }
    }

    /**
     * To the greatest of a list that is not above.
     *
     * @param list what there is, in any order
     */
    record DownTo(List<Amount> list) implements Rounding {
        /** Copies the list. */
        public DownTo {
            list = List.copyOf(list);
        }
    }

    /** No rounding. */
    Rounding NONE = new None();
}
