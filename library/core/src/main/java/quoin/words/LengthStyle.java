package quoin.words;

import quoin.measure.LengthText;

/** How small lengths are said to people: margins, doubts, slips. Immutable and safe for use by many threads. */
public enum LengthStyle {
    /** In millimetres, to the half. */
    MILLIMETRES {
        @Override
        String nearest(double mm) {
            return Numbers.nearestHalf(mm) + " mm";
        }

        @Override
        String up(double mm) {
            return Numbers.halfUp(mm) + " mm";
        }

        @Override
        String down(double mm) {
            return Numbers.tenthDown(mm) + " mm";
        }

        @Override
        String whole(double mm) {
            return Numbers.rounded(mm, 0) + " mm";
        }

        @Override
        String wholeUp(double mm) {
            return Numbers.rounded(StrictMath.ceil(mm), 0) + " mm";
        }
    },
    /** In inches, to the sixteenth; what must not be exceeded, down to the sixty-fourth. */
    INCHES {
        @Override
        String nearest(double mm) {
            return LengthText.inches(mm, SIXTEENTHS);
        }

        @Override
        String up(double mm) {
            return nearest(StrictMath.ceil(mm / SIXTEENTH - 1e-9) * SIXTEENTH);
        }

        @Override
        String down(double mm) {
            double count = StrictMath.floor(mm / SIXTY_FOURTH + 1e-9);
            return count < 1 ? MILLIMETRES.down(mm) : LengthText.inches(count * SIXTY_FOURTH, SIXTY_FOURTHS);
        }

        @Override
        String whole(double mm) {
            return nearest(mm);
        }

        @Override
        String wholeUp(double mm) {
            return up(mm);
        }
    };

    private static final int SIXTEENTHS = 16;
    private static final double SIXTEENTH = 25.4 / SIXTEENTHS;
    private static final int SIXTY_FOURTHS = 64;
    private static final double SIXTY_FOURTH = 25.4 / SIXTY_FOURTHS;

    /** What there is to spare. */
    abstract String nearest(double mm);

    /** A doubt, rounded to the cautious side. */
    abstract String up(double mm);

    /** How good a reading must be, rounded to the cautious side. */
    abstract String down(double mm);

    /** A slip, as coarse as slips are. */
    abstract String whole(double mm);

    /** The least slip that would have shown, rounded to the cautious side. */
    abstract String wholeUp(double mm);
}
