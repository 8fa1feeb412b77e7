package quoin.cli;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import quoin.judge.Problem;
import quoin.words.Words;

/** What is wrong in documents, gathered so that all of it is said at once. Not safe for use by many threads. */
final class Problems {
    private final Words words = Words.in(Locale.ENGLISH);
    private final List<String> lines = new ArrayList<>();
    private boolean errors;

    void add(String file, List<Problem> problems) {
        for (Problem problem : problems) {
            lines.add(words.line(file, problem));
            errors |= problem.severity() == Problem.Severity.ERROR;
        }
    }

    /** The line of a problem is that of the file, not of the one document in it. */
    static List<Problem> inLine(int line, List<Problem> problems) {
        return problems.stream()
                .map(problem -> problem.at(line, Math.max(1, problem.column())))
                .toList();
    }

    /** Whether any of them means that a document is refused. */
    boolean refuse() {
        return errors;
    }

    void print(PrintStream err) {
        lines.forEach(line -> err.print(line + "\n"));
    }
}
