package quoin.words;

/** Texts of strangers on one line. */
final class Lines {
    private static final int LONGEST = 600;

    private Lines() {}

    /** Without line ends and other control signs, and not endless. */
    static String clean(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().limit(LONGEST).forEach(c -> out.appendCodePoint(isShown(c) ? c : '\uFFFD'));
        return text.codePointCount(0, text.length()) > LONGEST ? out.append('…').toString() : out.toString();
    }

    private static boolean isShown(int c) {
        int type = Character.getType(c);
        return type != Character.CONTROL
                && type != Character.FORMAT
                && type != Character.LINE_SEPARATOR
                && type != Character.PARAGRAPH_SEPARATOR
                && type != Character.SURROGATE;
    }
}
