package quoin.judge;

import java.util.Objects;

/**
 * What is wrong in a document, where, and what would be right. Immutable and safe for use by many threads.
 *
 * <p>The library works with JSON pointers; who reads a file fills in line and column. Words are made from code and
 * arguments elsewhere.
 *
 * @param code which kind of problem
 * @param severity whether the document is refused for it
 * @param pointer the place as a JSON pointer, such as {@code /sizes/0/of}
 * @param line the line, from 1; 0 where there is no text
 * @param column the column, from 1; 0 where there is no text
 * @param args what was found and what would be right
 */
public record Problem(String code, Severity severity, String pointer, int line, int column, Args args) {
    /** Whether a document is refused. */
    public enum Severity {
        /** The document is refused. */
        ERROR,
        /** The document is taken; somebody should look. */
        WARNING
    }

    /** Checks that nothing is missing. */
    public Problem {
        Args.requireId(code, "problem");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(pointer, "pointer");
        Objects.requireNonNull(args, "args");
    }

    /**
     * An error without line and column.
     *
     * @param code which kind of problem
     * @param pointer the place as a JSON pointer
     * @param args what was found and what would be right
     * @return the problem
     */
    public static Problem error(String code, String pointer, Args args) {
        return new Problem(code, Severity.ERROR, pointer, 0, 0, args);
    }

    /**
     * A warning without line and column.
     *
     * @param code which kind of problem
     * @param pointer the place as a JSON pointer
     * @param args what was found and what would be right
     * @return the problem
     */
    public static Problem warning(String code, String pointer, Args args) {
        return new Problem(code, Severity.WARNING, pointer, 0, 0, args);
    }

    /**
     * The same problem with its place in a text.
     *
     * @param line the line, from 1
     * @param column the column, from 1
     * @return the located problem
     */
    public Problem at(int line, int column) {
        return new Problem(code, severity, pointer, line, column, args);
    }
}
