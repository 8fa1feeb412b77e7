package quoin.json;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonReadFeature;

/**
 * Reads a JSON text into nodes with their places, within limits: a stranger's file costs a message, not the memory.
 * Columns count UTF-16 characters from 1. Not safe for use by many threads.
 */
final class Tree {
    static final int MOST_BYTES = 8 * 1024 * 1024;
    static final int MOST_DEPTH = 64;
    private static final int MOST_TEXT = 64 * 1024;
    private static final int MOST_DIGITS = 40;
    private static final int MOST_NAME = 1000;
    private static final int MOST_NODES = 200_000;
    private static final int LONGEST_GIST = 120;
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(MOST_DEPTH)
                    .maxStringLength(MOST_TEXT)
                    .maxNameLength(MOST_NAME)
                    .maxNumberLength(MOST_TEXT)
                    .build())
            .build();

    private final JsonParser parser;
    private final Report report;
    private Path where = Path.ROOT;
    private int nodes;

    private Tree(JsonParser parser, Report report) {
        this.parser = parser;
        this.report = report;
    }

    /** Reads a stream up to the limit and one byte more, so that a larger one is known. */
    static byte[] bytes(InputStream in) throws IOException {
        return in.readNBytes(MOST_BYTES + 1);
    }

    /** The text as nodes, or empty with a problem in the report. */
    static Optional<Node> of(byte[] json, Report report) {
        if (json.length > MOST_BYTES) {
            report.error("too-large", "", 1, 1, "more than 8 MB", "8 MB or less");
            return Optional.empty();
        }
        return decoded(json, report).flatMap(text -> {
            int marked = text.length() > 0 && text.charAt(0) == BYTE_ORDER_MARK ? 1 : 0;
            return of(text.array(), marked, text.length() - marked, report);
        });
    }

    /** The text as nodes, or empty with a problem in the report. */
    static Optional<Node> of(String json, Report report) {
        return of(json.toCharArray(), 0, json.length(), report);
    }

    private static Optional<Node> of(char[] text, int from, int length, Report report) {
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text, from, length)) {
            return new Tree(parser, report).document();
        }
    }

    /** The bytes as UTF-8. */
    private static Optional<CharBuffer> decoded(byte[] json, Report report) {
        CharBuffer text = CharBuffer.allocate(json.length);
        CoderResult result = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(ByteBuffer.wrap(json), text, true);
        text.flip();
        if (result.isError()) {
            int line = 1;
            int column = 1;
            for (int i = 0; i < text.length(); i++) {
                boolean end = text.charAt(i) == '\n';
                line += end ? 1 : 0;
                column = end ? 1 : column + 1;
            }
            report.error("not-json", "", line, column, "bytes that are no UTF-8", "JSON (RFC 8259) in UTF-8");
            return Optional.empty();
        }
        return Optional.of(text);
    }

    private Optional<Node> document() {
        try {
            if (parser.nextToken() == null) {
                report.error("empty-document", "", 1, 1, "an empty text", "a JSON object");
                return Optional.empty();
            }
            Node root = value(Path.ROOT);
            where = Path.ROOT;
            if (parser.nextToken() != null) {
                TokenStreamLocation at = parser.currentTokenLocation();
                report.error("not-json", "", at.getLineNr(), at.getColumnNr(), "more text", "the end of the document");
                return Optional.empty();
            }
            return Optional.of(root);
        } catch (StreamConstraintsException e) {
            constraint(e);
        } catch (JacksonException e) {
            TokenStreamLocation at = e.getLocation() == null ? parser.currentLocation() : e.getLocation();
            report.error("not-json", "", at.getLineNr(), at.getColumnNr(), gist(e), "JSON (RFC 8259)");
        } catch (TooManyNodes e) {
            stopped("too-large", "more than 200000 values", "200000 values or fewer");
        }
        return Optional.empty();
    }

    /** What was wrong in the parser's words, without its advice. */
    private static String gist(JacksonException e) {
        String message = e.getOriginalMessage() == null ? "" : e.getOriginalMessage();
        int cut = Math.min(message.length(), LONGEST_GIST);
        for (String advice : List.of(" (for ", ": expected", ": was expecting", ": enable")) {
            int at = message.indexOf(advice);
            cut = at > 0 ? Math.min(cut, at) : cut;
        }
        return cut == 0
                ? "an unreadable text"
                : message.substring(0, 1).toLowerCase(Locale.ROOT) + message.substring(1, cut);
    }

    private void constraint(StreamConstraintsException e) {
        String message = String.valueOf(e.getOriginalMessage());
        if (message.contains("depth")) {
            stopped("too-deep", "more than 64 levels", "64 levels or fewer");
        } else if (message.contains("Number")) {
            stopped("not-a-number", "a number of more than 65536 digits", "40 digits or fewer");
        } else if (message.contains("Name")) {
            stopped("too-large", "a field's name of more than 1000 characters", "1000 characters or fewer");
        } else {
            stopped("too-large", "a text of more than 65536 characters", "65536 characters or fewer");
        }
    }

    private void stopped(String code, String got, String right) {
        TokenStreamLocation at = parser.currentLocation();
        report.error(code, where.pointer(), at.getLineNr(), at.getColumnNr(), got, right);
    }

    /** Thrown to leave a text with too many values. */
    private static final class TooManyNodes extends RuntimeException {
        private static final long serialVersionUID = 1L;

        TooManyNodes() {
            super("too many values", null, false, false);
        }
    }

    private Node value(Path path) {
        if (++nodes > MOST_NODES) {
            throw new TooManyNodes();
        }
        JsonToken token = parser.currentToken();
        TokenStreamLocation at = parser.currentTokenLocation();
        int line = at.getLineNr();
        int column = at.getColumnNr();
        return switch (token) {
            case START_OBJECT -> object(path, line, column);
            case START_ARRAY -> array(path, line, column);
            case VALUE_STRING -> text(parser.getString(), path, line, column);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(parser.getString(), path, line, column);
            case VALUE_TRUE -> Node.leaf(Node.Kind.TRUE, "true", path, line, column);
            case VALUE_FALSE -> Node.leaf(Node.Kind.FALSE, "false", path, line, column);
            default -> Node.leaf(Node.Kind.NULL, "null", path, line, column);
        };
    }

    private Node text(String text, Path path, int line, int column) {
        return Node.leaf(Node.Kind.TEXT, text, path, line, column);
    }

    /** A number; one that is none, or has too many digits, is reported here and only here. */
    private Node number(String text, Path path, int line, int column) {
        char last = text.charAt(text.length() - 1);
        boolean digits = last >= '0' && last <= '9';
        if (digits && text.length() <= MOST_DIGITS) {
            return Node.leaf(Node.Kind.NUMBER, text, path, line, column);
        }
        String got = digits ? "a number of " + text.length() + " characters" : text;
        report.error(
                "not-a-number", path.pointer(), line, column, got, digits ? "40 digits or fewer" : "a finite number");
        return Node.leaf(Node.Kind.BROKEN, "null", path, line, column);
    }

    private Node object(Path path, int line, int column) {
        Members fields = new Members();
        while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
            TokenStreamLocation at = parser.currentTokenLocation();
            String name = parser.currentName();
            Path to = path.field(name);
            where = to;
            parser.nextToken();
            Node.Field field = new Node.Field(value(to), at.getLineNr(), at.getColumnNr());
            if (!fields.add(name, field)) {
                report.error("duplicate-key", to.pointer(), at.getLineNr(), at.getColumnNr(), name, "each field once");
            }
        }
        return Node.object(fields, path, line, column);
    }

    private Node array(Path path, int line, int column) {
        List<Node> items = new ArrayList<>();
        where = path.item(0);
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(where));
            where = path.item(items.size());
        }
        return Node.array(items, path, line, column);
    }
}
