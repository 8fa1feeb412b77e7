package quoin.rulebook;

import java.util.Optional;

/** Versions of three numbers. */
final class Versions {
    private static final int PARTS = 3;
    private static final int LONGEST = 9;

    private Versions() {}

    /** The least version that is so much newer; empty where the old one is not three numbers. */
    static Optional<String> after(String old, Comparison.Level level) {
        return parse(old).map(parts -> switch (level) {
            case MAJOR -> (parts[0] + 1) + ".0.0";
            case MINOR -> parts[0] + "." + (parts[1] + 1) + ".0";
            case PATCH -> parts[0] + "." + parts[1] + "." + (parts[2] + 1);
        });
    }

    /** Whether a version is at least another; false where one of them is not three numbers. */
    static boolean isAtLeast(String version, String least) {
        Optional<long[]> a = parse(version);
        Optional<long[]> b = parse(least);
        return a.isPresent() && b.isPresent() && java.util.Arrays.compare(a.get(), b.get()) >= 0;
    }

    private static Optional<long[]> parse(String version) {
        String[] texts = version.split("\\.", -1);
        long[] parts = new long[PARTS];
        if (texts.length != PARTS) {
            return Optional.empty();
        }
        for (int i = 0; i < PARTS; i++) {
            boolean number = !texts[i].isEmpty()
                    && texts[i].length() <= LONGEST
                    && texts[i].chars().allMatch(c -> c >= '0' && c <= '9');
            if (!number) {
                return Optional.empty();
            }
            parts[i] = Long.parseLong(texts[i]);
        }
        return Optional.of(parts);
    }
}
