package quoin.job;

import java.util.Objects;

/**
 * What goes to the workshop: made sizes, from which nothing more is taken off. Immutable and safe for use by many threads.
 *
 * @param widthMm the made width in mm
 * @param lengthMm the made length in mm
 * @param roller the side the roller is at; empty where not chosen
 * @param drive the side of the drive; empty where not chosen
 * @param cable the side where the cable leaves; empty where not chosen
 */
public record Order(double widthMm, double lengthMm, String roller, String drive, String cable) {
    /** Checks that nothing is missing. */
    public Order {
        Objects.requireNonNull(roller, "roller");
        Objects.requireNonNull(drive, "drive");
        Objects.requireNonNull(cable, "cable");
    }
}
