package quoin.words;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A sentence with places to fill: <code>{name}</code> is the argument of that name, and <code>[…]</code> is left out as a
 * whole where an argument in it is missing or empty.
 *
 * <p>A bracket cannot stand inside another. A missing argument outside brackets becomes an ellipsis, so that a sentence
 * never fails.
 */
final class Template {
    private static final String MISSING = "…";

    private Template() {}

    static String fill(String pattern, Map<String, Object> args) {
        StringBuilder out = new StringBuilder();
        int at = 0;
        while (at < pattern.length()) {
            char c = pattern.charAt(at);
            int end = c == '[' ? pattern.indexOf(']', at) : -1;
            if (end > 0) {
                appendOptional(out, pattern.substring(at + 1, end), args);
                at = end + 1;
            } else if (c == '{' && pattern.indexOf('}', at) > 0) {
                end = pattern.indexOf('}', at);
                String text = text(args, pattern.substring(at + 1, end));
                out.append(text.isEmpty() ? MISSING : text);
                at = end + 1;
            } else {
                out.append(c);
                at++;
            }
        }
        return out.toString();
    }

    private static void appendOptional(StringBuilder out, String segment, Map<String, Object> args) {
        for (int open = segment.indexOf('{'); open >= 0; open = segment.indexOf('{', open + 1)) {
            int close = segment.indexOf('}', open);
            if (close > 0 && text(args, segment.substring(open + 1, close)).isEmpty()) {
                return;
            }
        }
        out.append(fill(segment, args));
    }

    private static String text(Map<String, Object> args, String name) {
        Object value = args.get(name);
        if (value == null) {
            return "";
        }
        if (value instanceof Double number) {
            return Numbers.plain(number);
        }
        if (value instanceof List<?> list) {
            return list.stream().map(Object::toString).collect(Collectors.joining(", "));
        }
        return value.toString();
    }
}
