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

    /** Whether any of them means that a document is refused. */
    boolean refuse() {
        return errors;
    }

    void print(PrintStream err) {
        lines.forEach(line -> err.print(line + "\n"));
    }
}
