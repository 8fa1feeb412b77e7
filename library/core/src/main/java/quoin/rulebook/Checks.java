package quoin.rulebook;

/** What every clause refuses at the door. */
final class Checks {
    private Checks() {}

    static void named(String id, String what) {
        if (id.isEmpty()) {
            throw new IllegalArgumentException(what + " must have a name, got an empty text");
        }
    }

    static double finite(double number, String what) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException(what + " must be a finite number, got " + number);
        }
        return number + 0.0;
    }

    static void atMostOne(int count, String what) {
        if (count > 1) {
            throw new IllegalArgumentException(what + " must be stated once or not at all, got " + count);
        }
    }
}
