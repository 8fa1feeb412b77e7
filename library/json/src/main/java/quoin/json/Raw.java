package quoin.json;

/** A node as JSON text again, compact, numbers as they were written. */
final class Raw {
    private Raw() {}

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

    private static void quote(StringBuilder out, String text) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < 0x20) {
                out.append("\\u00").append(c < 0x10 ? "0" : "").append(Integer.toHexString(c));
            } else {
                out.append(c);
            }
        }
        out.append('"');
    }
}
