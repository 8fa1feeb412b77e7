package quoin.judge;

import java.util.List;
import java.util.Objects;
import quoin.measure.Influence;

/**
 * A reading as a retake sees it: which of its influences would be drawn anew. Immutable and safe for use by many threads.
 *
 * @param reading the place, as documents write it
 * @param by the instrument that was used
 * @param values how many values were read there, 1 or more
 * @param fresh the influences that another value by the same instrument would draw anew, those of all values
 * @param shared the influences that stay with the instrument; reading again with it does not help
 */
public record ReadingDoubt(String reading, String by, int values, List<Influence> fresh, List<Influence> shared) {
    /** Copies the lists. */
    public ReadingDoubt {
        Args.requireId(reading, "reading");
        Objects.requireNonNull(by, "by");
        if (values < 1) {
            throw new IllegalArgumentException("values must be 1 or more, got " + values);
        }
        fresh = List.copyOf(fresh);
        shared = List.copyOf(shared);
    }
}
