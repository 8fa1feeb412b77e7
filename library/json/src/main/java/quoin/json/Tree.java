package quoin.json;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.json.JsonFactory;

/** Reads a JSON text into nodes with their places, within limits: a stranger's file costs a message, not the memory. */
final class Tree {
    static final int MOST_BYTES = 8 * 1024 * 1024;
    static final int MOST_DEPTH = 64;
    private static final int MOST_TEXT = 64 * 1024;
    private static final int MOST_DIGITS = 40;
    private static final int MOST_NODES = 200_000;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(MOST_DEPTH)
                    .maxStringLength(MOST_TEXT)
                    .maxNameLength(1000)
                    .maxNumberLength(MOST_DIGITS)
                    .build())
            .build();

    private final JsonParser parser;
    private final Report report;
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
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), json)) {
            return new Tree(parser, report).document();
        } catch (StreamConstraintsException e) {
            return Optional.empty();
        }
    }

    private Optional<Node> document() {
        try {
            if (parser.nextToken() == null) {
                report.error("empty-document", "", 1, 1, "an empty text", "a JSON object");
                return Optional.empty();
            }
            Node root = value("");
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
            TokenStreamLocation at = parser.currentLocation();
            report.error(
                    "too-large", "", at.getLineNr(), at.getColumnNr(), "too many values", "200000 values or fewer");
        }
        return Optional.empty();
    }

    /** What was wrong in the parser's words, without its advice. */
    private static String gist(JacksonException e) {
        String message = e.getOriginalMessage() == null ? "an unreadable text" : e.getOriginalMessage();
        int end = message.indexOf(" (for ");
        int colon = message.indexOf(": expected");
        int cut = end > 0 ? end : colon > 0 ? colon : message.length();
        String text = message.substring(0, Math.min(cut, 120));
        return text.isEmpty()
                ? "an unreadable text"
                : text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }

    private void constraint(StreamConstraintsException e) {
        TokenStreamLocation at = parser.currentLocation();
        String message = String.valueOf(e.getOriginalMessage());
        if (message.contains("depth")) {
            report.error("too-deep", "", at.getLineNr(), at.getColumnNr(), "more than 64 levels", "64 levels or fewer");
        } else if (message.contains("Number")) {
            report.error(
                    "not-a-number", "", at.getLineNr(), at.getColumnNr(), "a very long number", "40 digits or fewer");
        } else {
            report.error(
                    "too-large", "", at.getLineNr(), at.getColumnNr(), "a very long text", "65536 characters or fewer");
        }
    }

    /** Thrown to leave a text with too many values. */
    private static final class TooManyNodes extends RuntimeException {
        private static final long serialVersionUID = 1L;

        TooManyNodes() {
            super("too many values", null, false, false);
        }
    }

    private Node value(String pointer) {
        if (++nodes > MOST_NODES) {
            throw new TooManyNodes();
        }
        JsonToken token = parser.currentToken();
        TokenStreamLocation at = parser.currentTokenLocation();
        int line = at.getLineNr();
        int column = at.getColumnNr();
        return switch (token) {
            case START_OBJECT -> object(pointer, line, column);
            case START_ARRAY -> array(pointer, line, column);
            case VALUE_STRING -> Node.leaf(Node.Kind.TEXT, parser.getString(), pointer, line, column);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT ->
                Node.leaf(Node.Kind.NUMBER, parser.getString(), pointer, line, column);
            case VALUE_TRUE -> Node.leaf(Node.Kind.TRUE, "true", pointer, line, column);
            case VALUE_FALSE -> Node.leaf(Node.Kind.FALSE, "false", pointer, line, column);
            default -> Node.leaf(Node.Kind.NULL, "null", pointer, line, column);
        };
    }

    private Node object(String pointer, int line, int column) {
        Map<String, Node.Field> fields = new LinkedHashMap<>();
        Node self = Node.leaf(Node.Kind.OBJECT, "", pointer, line, column);
        while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
            TokenStreamLocation at = parser.currentTokenLocation();
            String name = parser.currentName();
            String to = self.pointerTo(name);
            parser.nextToken();
            Node.Field field = new Node.Field(value(to), at.getLineNr(), at.getColumnNr());
            if (fields.putIfAbsent(name, field) != null) {
                report.error("duplicate-key", to, at.getLineNr(), at.getColumnNr(), name, "each field once");
            }
        }
        return Node.object(fields, pointer, line, column);
    }

    private Node array(String pointer, int line, int column) {
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(pointer + "/" + items.size()));
        }
        return Node.array(items, pointer, line, column);
    }
}
