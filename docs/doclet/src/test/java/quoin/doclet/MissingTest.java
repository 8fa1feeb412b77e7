package quoin.doclet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MissingTest {
    private static final String COMPLETE = """
            package area;

            /**
             * A pair.
             *
             * @param <T> what it holds
             * @param first the first
             * @param size the size
             */
            public record Pair<T>(T first, int size) {
                /** A size. */
                public static final int ONE = 1;

                /** Checks the size. */
                public Pair {
                    if (size < 0) {
                        throw new IllegalArgumentException();
                    }
                }

                /**
                 * Another constructor.
                 *
                 * @param only the one
                 */
                public Pair(T only) {
                    this(only, ONE);
                }

                /**
                 * A larger pair.
                 *
                 * @param by how much
                 * @return the pair
                 */
                public Pair<T> larger(int by) {
                    return new Pair<>(first, size + by);
                }

                /** {@return twice the size} */
                public int twice() {
                    return 2 * size;
                }

                /** The sorts. */
                public enum Sort {
                    /** The plain one. */
                    PLAIN
                }

                @Override
                public String toString() {
                    return "pair";
                }

                int hidden() {
                    return size;
                }
            }
            """;

    @TempDir
    Path folder;

    @Test
    void completePasses() throws IOException {
        Sources.Result result = run(COMPLETE);

        assertThat(result.messages()).isEmpty();
        assertThat(result.passed()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "     * A larger pair.; area.Pair.larger(int by) → Pair<T>: the comment is missing",
                "/** A size. */; area.Pair.ONE: the comment is missing",
                "/** Checks the size. */; area.Pair(T first, int size): the comment is missing",
                "/** The sorts. */; area.Pair.Sort: the comment is missing",
                "/** The plain one. */; area.Pair.Sort.PLAIN: the comment is missing",
                "@param by how much; area.Pair.larger(int by) → Pair<T>: @param by is missing",
                "@param only the one; area.Pair(T only): @param only is missing",
                "@param size the size; area.Pair: @param size is missing",
                "@param <T> what it holds; area.Pair: @param T is missing",
                "@return the pair; area.Pair.larger(int by) → Pair<T>: @return is missing"
            })
    void eachMissingPieceFails(String piece, String message) throws IOException {
        assertThat(COMPLETE).contains(piece);
        Sources.Result result = run(COMPLETE.replace(piece, piece.startsWith("     *") ? "     *" : ""));

        assertThat(result.passed()).isFalse();
        assertThat(result.messages()).contains("Pair.java:").contains(message);
    }

    private Sources.Result run(String text) throws IOException {
        return new Sources(folder).with("area/Pair.java", text).run();
    }
}
