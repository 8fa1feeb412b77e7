package quoin.job;

import java.util.Objects;
import quoin.judge.Step;
import quoin.opening.Plane;

/**
 * The reading to take next. Immutable and safe for use by many threads.
 *
 * @param of what to read, as documents write it
 * @param in the plane to read it in
 * @param by the instrument; empty where any will do
 * @param because why
 */
public record Next(String of, Plane in, String by, Step because) {
    /** Checks that nothing is missing. */
    public Next {
        Objects.requireNonNull(of, "of");
        Objects.requireNonNull(in, "in");
        Objects.requireNonNull(by, "by");
        Objects.requireNonNull(because, "because");
    }

    /** {@return what to read, with {@code /back} where that is the back plane: as the answer names readings} */
    public String name() {
        return in == Plane.BACK ? of + "/" + in.text() : of;
    }
}
