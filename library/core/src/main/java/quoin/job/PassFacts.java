package quoin.job;

import java.util.Objects;

/**
 * What a box has to pass on its way into the recess. Immutable and safe for use by many threads.
 *
 * @param box the size of the rulebook that is the length of the box, such as {@code headbox.length}
 * @param thicknessMm how thick the box is, in mm; NaN where not stated
 * @param depthMm from the face of the lips to the back of the recess, in mm; NaN where not stated
 * @param leftLipMm how far a lip stands out at the left end, in mm, 0 for none; NaN where not stated
 * @param rightLipMm how far a lip stands out at the right end, in mm, 0 for none; NaN where not stated
 * @param uMm the standard uncertainty of each of these, in mm; NaN where not stated
 * @param playMm how much longer than the box the place must be to fix it, in mm
 */
public record PassFacts(
        String box,
        double thicknessMm,
        double depthMm,
        double leftLipMm,
        double rightLipMm,
        double uMm,
        double playMm) {
    /** Nothing was said about a way in. */
    public static final PassFacts UNSTATED =
            new PassFacts("", Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, 0);

    /** Refuses measures below 0 and infinities. */
    public PassFacts {
        Objects.requireNonNull(box, "box");
        requireMm("thickness", thicknessMm);
        requireMm("depth", depthMm);
        requireMm("left lip", leftLipMm);
        requireMm("right lip", rightLipMm);
        requireMm("u", uMm);
        requireMm("play", playMm);
        if (Double.isNaN(playMm)) {
            throw new IllegalArgumentException("play must be 0 mm or more and finite, got NaN mm");
        }
    }

    /** {@return whether anything was said} */
    public boolean isStated() {
        return !box.isEmpty();
    }

    /** {@return whether everything that is needed was said} */
    public boolean isComplete() {
        return isStated() && !Double.isNaN(thicknessMm + depthMm + leftLipMm + rightLipMm + uMm) && thicknessMm > 0;
    }

    private static void requireMm(String name, double mm) {
        if (mm < 0 || Double.isInfinite(mm)) {
            throw new IllegalArgumentException(name + " must be 0 mm or more and finite, got " + mm + " mm");
        }
    }
}
