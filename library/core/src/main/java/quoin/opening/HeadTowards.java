package quoin.opening;

import java.util.Locale;
import java.util.Optional;

/** Which way the head lies, so that left and right mean the same to everybody. */
public enum HeadTowards {
    /** Towards the ridge of the roof. */
    RIDGE,
    /** Towards the eaves. */
    EAVES,
    /** The edge that was marked on site. */
    MARKED,
    /** Nobody said. */
    UNKNOWN;

    /** {@return the direction as documents write it} */
    public String text() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The direction of that name.
     *
     * @param text the name as documents write it
     * @return the direction, or empty where there is none of that name
     */
    public static Optional<HeadTowards> find(String text) {
        for (HeadTowards value : values()) {
            if (value.text().equals(text)) {
                return Optional.of(value);
            }
        }
        return Optional.empty();
    }
}
