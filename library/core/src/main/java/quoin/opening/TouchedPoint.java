package quoin.opening;

/**
 * A point of a side away from its corners that a reading touches, or the middle of a side that no reading touches.
 *
 * @param side the side
 * @param at the place along it
 * @param fromEnd whether the distance runs from the far end of the side, as a corner check there does
 * @param read whether a reading touches it
 */
record TouchedPoint(Side side, At at, boolean fromEnd, boolean read) {
    boolean samePlaceAs(TouchedPoint other) {
        return side == other.side && at.equals(other.at) && fromEnd == other.fromEnd;
    }

    double on(double sideMm) {
        double t = at.on(sideMm);
        return fromEnd ? 1 - t : t;
    }

    String text() {
        return side.text() + "@" + at.text() + (fromEnd ? "-from-end" : "");
    }
}
