package quoin.opening;

import java.util.Objects;

/**
 * A reading that cannot be taken here, and why. Immutable and safe for use by many threads.
 *
 * @param of what cannot be read
 * @param because why
 */
public record Cannot(Span of, String because) {
    /** Checks that nothing is missing. */
    public Cannot {
        Objects.requireNonNull(of, "of");
        Objects.requireNonNull(because, "because");
    }
}
