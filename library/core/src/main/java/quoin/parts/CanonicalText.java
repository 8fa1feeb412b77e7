package quoin.parts;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import quoin.judge.Source;
import quoin.measure.Amount;

/**
 * The canonical text of a document of rules or parts: one line a field, in an order that never changes, and its digest.
 *
 * <p>Numbers stand in base units, written in hexadecimal, so that the text is exact and the same on every machine; texts
 * stand in quotes with quotes, backslashes and control characters escaped. How the document was laid out, and in which
 * units, leaves no trace. A builder for use by one thread.
 */
public final class CanonicalText {
    private final StringBuilder out = new StringBuilder();
    private int depth;

    private CanonicalText() {}

    /**
     * An empty text of a kind of document.
     *
     * @param format the kind, such as {@code quoin-parts/1}
     * @return the builder
     */
    public static CanonicalText of(String format) {
        return new CanonicalText().line(format, "");
    }

    /**
     * Opens a group of fields.
     *
     * @param name what the group is
     * @return this
     */
    public CanonicalText open(String name) {
        line(name, " {");
        depth++;
        return this;
    }

    /**
     * Closes the group that was opened last.
     *
     * @return this
     * @throws IllegalStateException if none is open
     */
    public CanonicalText close() {
        if (depth == 0) {
            throw new IllegalStateException("a group must be open to be closed, got none");
        }
        depth--;
        return line("}", "");
    }

    /**
     * A text.
     *
     * @param name what it is
     * @param text the text
     * @return this
     */
    public CanonicalText text(String name, String text) {
        return line(name, " " + quoted(text));
    }

    /**
     * A number, in base units; NaN is written as {@code none}.
     *
     * @param name what it is
     * @param number the number
     * @return this
     */
    public CanonicalText number(String name, double number) {
        return line(name, " " + hex(number));
    }

    /**
     * An amount with its kind of quantity.
     *
     * @param name what it is
     * @param amount the amount
     * @return this
     */
    public CanonicalText amount(String name, Amount amount) {
        return line(name, " " + hex(amount.value()) + " " + amount.dimension().name());
    }

    /**
     * A declared number with its basis and source.
     *
     * @param name what it is
     * @param declared the number
     * @return this
     */
    public CanonicalText declared(String name, Declared declared) {
        open(name);
        line("value", " " + hex(declared.value()) + " " + declared.dimension().name());
        line("basis", " " + declared.basis().text());
        return source(declared.source()).close();
    }

    /**
     * A source.
     *
     * @param source the source
     * @return this
     */
    public CanonicalText source(Source source) {
        return line(
                "source",
                " " + source.kind().text() + " " + quoted(source.ref()) + " " + quoted(source.verifiedOn()) + " "
                        + quoted(source.reviewBy()));
    }

    /** {@return the digest of the text so far: {@code sha256:} and the SHA-256 of its UTF-8 bytes, lower-case hexadecimal} */
    public String digest() {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(toString().getBytes(StandardCharsets.UTF_8));
            return "sha256:" + HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("SHA-256 must be there: every Java platform has it", e);
        }
    }

    /** {@return the text so far} */
    @Override
    public String toString() {
        return out.toString();
    }

    private CanonicalText line(String name, String rest) {
        out.append("  ".repeat(depth)).append(name).append(rest).append('\n');
        return this;
    }

    private static String hex(double number) {
        return Double.isNaN(number) ? "none" : Double.toHexString(number + 0.0);
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                quoted.append('\\').append(c);
            } else if (Character.isISOControl(c) || Character.isSurrogate(c)) {
                quoted.append("\\u").append(HexFormat.of().toHexDigits(c));
            } else {
                quoted.append(c);
            }
        }
        return quoted.append('"').toString();
    }
}
