package quoin.cli;

import java.util.ArrayList;
import java.util.List;

/** Plain text in lines of at most 80 columns, wrapped at spaces. Gathers lines; not safe for use by many threads. */
final class Page {
    static final int WIDTH = 80;

    private final StringBuilder out = new StringBuilder();

    /** A heading with an empty line before it. */
    Page heading(String text) {
        return blank().raw(text);
    }

    /** A line across the page. */
    Page rule(char c) {
        return raw(String.valueOf(c).repeat(WIDTH));
    }

    Page blank() {
        return raw("");
    }

    /** One line as it is; for what is laid out already. */
    Page raw(String line) {
        out.append(line.stripTrailing()).append('\n');
        return this;
    }

    /** A text that starts after {@code first} and goes on, where it must, under an indent of the same width. */
    Page hanging(String first, String text) {
        int indent = length(first);
        StringBuilder line = new StringBuilder(first);
        boolean empty = true;
        for (String word : words(text)) {
            if (!empty && length(line) + 1 + length(word) > WIDTH) {
                raw(line.toString());
                line.setLength(0);
                line.append(" ".repeat(indent));
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        return raw(line.toString());
    }

    /** The words of a text; a unit stays with its number. */
    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        for (String word : text.split(" ", 0)) {
            boolean unit = word.startsWith("mm") && !words.isEmpty();
            if (unit) {
                words.set(words.size() - 1, words.get(words.size() - 1) + " " + word);
            } else {
                words.add(word);
            }
        }
        return words;
    }

    /** A text with an indent. */
    Page text(int indent, String text) {
        return hanging(" ".repeat(indent), text);
    }

    /** Two texts at the two ends of one line, or below each other where they do not fit. */
    Page ends(String left, String right) {
        int gap = WIDTH - length(left) - length(right);
        return gap < 2 ? text(0, left).text(0, right) : raw(left + " ".repeat(gap) + right);
    }

    /** A text filled with spaces to a width. */
    static String pad(String text, int width) {
        return text + " ".repeat(Math.max(0, width - length(text)));
    }

    private static int length(CharSequence text) {
        return (int) text.codePoints().count();
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
