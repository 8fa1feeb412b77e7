package quoin.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import quoin.judge.Problem;

/** The way that every document is read: text, nodes, value, then what the library itself finds wrong with the value. */
final class Documents {
    private Documents() {}

    static <T> Read<T> read(byte[] json, Function<Fields, Optional<T>> reader, Function<T, List<Problem>> lint) {
        Report report = new Report();
        @Nullable Node root = Tree.of(json, report).orElse(null);
        if (root == null) {
            return new Read<>(null, report.sorted(), "");
        }
        Fields fields = new Fields(root, report);
        Optional<T> value = root.kind() == Node.Kind.OBJECT ? reader.apply(fields) : Optional.empty();
        if (root.kind() == Node.Kind.OBJECT) {
            fields.end();
        }
        value.ifPresent(v -> lint.apply(v).forEach(problem -> report.add(located(root, problem))));
        boolean refused = report.hasErrors();
        return new Read<>(refused ? null : value.orElse(null), report.sorted(), id(root));
    }

    private static String id(Node root) {
        Node.Field id = root.fields().get("id");
        return id == null || id.value().kind() != Node.Kind.TEXT
                ? ""
                : id.value().text();
    }

    /** Gives a problem the place of the deepest node on its pointer that is there. */
    static Problem located(Node root, Problem problem) {
        Node at = root;
        for (String token : tokens(problem.pointer())) {
            @Nullable Node next = step(at, token);
            if (next == null) {
                break;
            }
            at = next;
        }
        return problem.at(at.line(), at.column());
    }

    private static @Nullable Node step(Node at, String token) {
        if (at.kind() == Node.Kind.OBJECT) {
            Node.Field field = at.fields().get(token);
            return field == null ? null : field.value();
        }
        boolean index = !token.isEmpty() && token.length() < 7 && token.chars().allMatch(c -> c >= '0' && c <= '9');
        if (at.kind() == Node.Kind.ARRAY && index) {
            int i = Integer.parseInt(token);
            return i < at.items().size() ? at.items().get(i) : null;
        }
        return null;
    }

    private static List<String> tokens(String pointer) {
        List<String> tokens = new ArrayList<>();
        int from = 1;
        while (from <= pointer.length() && !pointer.isEmpty()) {
            int slash = pointer.indexOf('/', from);
            int end = slash < 0 ? pointer.length() : slash;
            tokens.add(pointer.substring(from, end).replace("~1", "/").replace("~0", "~"));
            from = end + 1;
        }
        return tokens;
    }
}
