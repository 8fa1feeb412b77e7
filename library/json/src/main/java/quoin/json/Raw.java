package quoin.json;

import java.util.Optional;

/** A node as JSON text again, compact, numbers as they were written. */
final class Raw {
    private Raw() {}

    /**
     * Any JSON text, compact.
     *
     * @throws IllegalArgumentException if it is no JSON
     */
    static String compact(String json) {
        Report report = new Report();
        Optional<Node> node = Tree.of(json, report);
        if (node.isEmpty() || report.hasErrors()) {
            throw new IllegalArgumentException("carry must be JSON, got " + report.sorted());
        }
        return of(node.get());
    }

    static String of(Node node) {
        StringBuilder out = new StringBuilder();
        append(out, node);
        return out.toString();
    }

    private static void append(StringBuilder out, Node node) {
        switch (node.kind()) {
            case OBJECT -> {
                out.append('{');
                String comma = "";
                for (var entry : node.fields().entrySet()) {
                    out.append(comma);
                    quote(out, entry.getKey());
                    out.append(':');
                    append(out, entry.getValue().value());
                    comma = ",";
                }
                out.append('}');
            }
            case ARRAY -> {
                out.append('[');
                String comma = "";
                for (Node item : node.items()) {
                    out.append(comma);
                    append(out, item);
                    comma = ",";
                }
                out.append(']');
            }
            case TEXT -> quote(out, node.text());
            default -> out.append(node.text());
        }
    }

    /** Half of a surrogate pair without the other half: it has no UTF-8. */
    static boolean isAlone(String text, int i) {
        char c = text.charAt(i);
        if (Character.isHighSurrogate(c)) {
            return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
        }
        return Character.isLowSurrogate(c) && (i == 0 || !Character.isHighSurrogate(text.charAt(i - 1)));
    }

    private static void quote(StringBuilder out, String text) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < 0x20) {
                out.append("\\u00").append(c < 0x10 ? "0" : "").append(Integer.toHexString(c));
            } else if (isAlone(text, i)) {
                out.append("\\u").append(Integer.toHexString(c));
            } else {
                out.append(c);
            }
        }
        out.append('"');
    }
}
