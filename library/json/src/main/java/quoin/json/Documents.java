package quoin.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import quoin.judge.Problem;

/** The way that every document is read: text, nodes, value, then what the library itself finds wrong with the value. */
final class Documents {
    private static final int CLAUSE_FIELD = 3;

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
        List<String> reported = report.errorsAt();
        value.stream()
                .flatMap(v -> lint.apply(v).stream())
                .filter(problem -> isNews(problem, reported))
                .forEach(problem -> report.add(located(root, problem)));
        boolean refused = report.hasErrors();
        return new Read<>(refused ? null : value.orElse(null), report.sorted(), id(root));
    }

    /** Whether a problem of the value is no mere consequence of one of the text. */
    private static boolean isNews(Problem problem, List<String> reported) {
        String pointer = problem.pointer();
        String part = firstTokens(pointer);
        return reported.stream()
                .noneMatch(at -> at.equals(pointer)
                        || (!at.isEmpty() && pointer.startsWith(at + "/"))
                        || (at.startsWith(pointer + "/") && !problem.code().equals("missing-size"))
                        || firstTokens(at).equals(part));
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

    /** A field of a clause, such as {@code /sizes/0/less}; the whole pointer where it is shorter. */
    private static String firstTokens(String pointer) {
        int end = 0;
        for (int i = 0; i < CLAUSE_FIELD && end >= 0; i++) {
            end = pointer.indexOf('/', end + 1);
        }
        return end < 0 ? pointer : pointer.substring(0, end);
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
