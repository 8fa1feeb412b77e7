package quoin.doclet;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** How well a source is founded. */
enum Mark {
    STANDARD,
    HANDBOOK,
    PRACTICE,
    MEMORY,
    ASSUMPTION;

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static List<String> names() {
        return Arrays.stream(values()).map(Mark::word).toList();
    }

    /** Whether the text of a source is {@code MARK: text} with a known mark and a text. */
    static boolean leads(String source) {
        int colon = source.indexOf(':');
        return colon > 0
                && names().contains(source.substring(0, colon))
                && !source.substring(colon + 1).isBlank();
    }
}
