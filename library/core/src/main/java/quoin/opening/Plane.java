package quoin.opening;

import java.util.Locale;
import java.util.Optional;

/** The plane a reading was taken in. */
public enum Plane {
    /** Flush with the finished room face. */
    FRONT,
    /** At the back of the recess. */
    BACK;

    /** {@return the plane as documents write it} */
    public String text() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The plane of that name.
     *
     * @param text the name as documents write it
     * @return the plane, or empty where there is none of that name
     */
    public static Optional<Plane> find(String text) {
        for (Plane plane : values()) {
            if (plane.text().equals(text)) {
                return Optional.of(plane);
            }
        }
        return Optional.empty();
    }
}
