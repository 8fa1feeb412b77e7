package quoin.json;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import quoin.judge.Args;
import quoin.judge.Problem;

/** Gathers the problems of one document, 200 at most. Not safe for use by many threads. */
final class Report {
    private static final int MOST = 200;

    private final List<Problem> problems = new ArrayList<>();
    private boolean errors;

    void error(String code, Node node, String got, String right) {
        if (node.kind() != Node.Kind.BROKEN) {
            error(code, node.pointer(), node.line(), node.column(), got, right);
        }
    }

    void error(String code, String pointer, int line, int column, String got, String right) {
        add(Problem.error(code, pointer, Args.of("got", got).with("right", right))
                .at(line, column));
    }

    void add(Problem problem) {
        errors |= problem.severity() == Problem.Severity.ERROR;
        if (!isFull()) {
            problems.add(problem);
        }
    }

    /** The pointers of the errors so far. */
    List<String> errorsAt() {
        return problems.stream()
                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                .map(Problem::pointer)
                .toList();
    }

    boolean isFull() {
        return problems.size() >= MOST;
    }

    boolean hasErrors() {
        return errors;
    }

    List<Problem> sorted() {
        List<Problem> sorted = new ArrayList<>(problems);
        sorted.sort(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
        return sorted;
    }
}
