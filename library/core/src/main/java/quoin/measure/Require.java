package quoin.measure;

/** Checks of arguments; each returns its argument, with {@code -0.0} turned into {@code 0.0}. */
final class Require {
    private static final double WHOLE_BELOW = 1e15;

    private Require() {}

    static double finite(String name, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw refused(name, "finite", value, unit);
        }
        return value + 0.0;
    }

    static double atLeastZero(String name, double value, String unit) {
        if (!(value >= 0 && value <= Double.MAX_VALUE)) {
            throw refused(name, with("0", unit) + " or more and finite", value, unit);
        }
        return value + 0.0;
    }

    static double aboveZero(String name, double value, String unit) {
        if (!(value > 0 && value <= Double.MAX_VALUE)) {
            throw refused(name, "more than " + with("0", unit) + " and finite", value, unit);
        }
        return value;
    }

    static double degreesOfFreedom(String name, double value) {
        if (!(value > 0)) {
            throw refused(name, "more than 0", value, "");
        }
        return value;
    }

    static double between(String name, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw refused(name, "from " + with(show(low), unit) + " to " + with(show(high), unit), value, unit);
        }
        return value + 0.0;
    }

    /** A probability, both ends left out. */
    static double probability(String name, double value) {
        if (!(value > 0 && value < 1)) {
            throw refused(name, "more than 0 and less than 1", value, "");
        }
        return value;
    }

    static int atLeast(String name, int value, int least) {
        if (value < least) {
            throw refused(name, least + " or more", value, "");
        }
        return value;
    }

    static String id(String name, String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException(name + " must not be blank, got \"" + text + "\"");
        }
        return text;
    }

    static IllegalArgumentException refused(String name, String bound, double value, String unit) {
        return new IllegalArgumentException(name + " must be " + bound + ", got " + with(show(value), unit));
    }

    /** The shortest text of a number, without ".0" behind whole ones. */
    static String show(double value) {
        if (value == StrictMath.rint(value) && StrictMath.abs(value) < WHOLE_BELOW) {
            return Long.toString((long) value);
        }
        return Double.toString(value);
    }

    private static String with(String number, String unit) {
        return unit.isEmpty() ? number : number + " " + unit;
    }
}
