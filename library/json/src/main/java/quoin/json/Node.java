package quoin.json;

import java.util.List;
import java.util.Map;

/**
 * A piece of a JSON text with its place.
 *
 * @param kind what it is
 * @param text a text's content, or a number as it was written
 * @param fields an object's fields
 * @param items an array's items
 * @param path the way to it
 * @param line its line, from 1
 * @param column its column, from 1
 */
record Node(Kind kind, String text, Map<String, Field> fields, List<Node> items, Path path, int line, int column) {
    enum Kind {
        OBJECT("an object"),
        ARRAY("a list"),
        TEXT("a text"),
        NUMBER("a number"),
        TRUE("true"),
        FALSE("false"),
        NULL("null"),

        /** Something that was reported where it was read; nothing more is said about it. */
        BROKEN("unreadable");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /** A field's value with the place of its name. */
    record Field(Node value, int line, int column) {}

    /** The fields are taken as they are, not copied: nobody else may hold them. */
    static Node object(Map<String, Field> fields, Path path, int line, int column) {
        return new Node(Kind.OBJECT, "", fields, List.of(), path, line, column);
    }

    static Node array(List<Node> items, Path path, int line, int column) {
        return new Node(Kind.ARRAY, "", Map.of(), List.copyOf(items), path, line, column);
    }

    /** The name of a field as a piece of the text. */
    Node key(String name) {
        Field field = fields.get(name);
        return field == null ? this : leaf(Kind.TEXT, name, path.field(name), field.line(), field.column());
    }

    static Node leaf(Kind kind, String text, Path path, int line, int column) {
        return new Node(kind, text, Map.of(), List.of(), path, line, column);
    }

    /** A short form of it for a message. */
    String shown() {
        return switch (kind) {
            case TEXT -> "\"" + shortened(text) + "\"";
            case NUMBER -> shortened(text);
            default -> kind.words();
        };
    }

    static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, 57) + "...";
    }

    /** Its JSON pointer. */
    String pointer() {
        return path.pointer();
    }

    /** The JSON pointer of a part of it. */
    String pointerTo(String name) {
        return path.field(name).pointer();
    }
}
