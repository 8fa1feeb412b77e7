package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import quoin.job.Job;
import quoin.judge.Problem;
import quoin.parts.Parts;
import quoin.rulebook.Rulebook;

/** The documents that the tests read: the example of the format's description, and the demo. */
final class Examples {
    static final String JOB = resource("reading-room-2.json");
    static final String RULEBOOK = resource("heron-frame.json");
    static final String PARTS = resource("heron-parts.json");

    private static final Path DEMO = Path.of("..", "..", "samples", "cli", "demo");

    private Examples() {}

    private static String resource(String name) {
        try (InputStream in = Objects.requireNonNull(Examples.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** The demo documents of one format. */
    static List<String> demo(String format) {
        try (Stream<Path> files = Files.list(DEMO)) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .map(Examples::text)
                    .filter(text -> text.contains("\"" + format + "\""))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Job job(String text) {
        return value(JobDocument.read(utf8(text)));
    }

    static Rulebook rulebook(String text) {
        return value(RulebookDocument.read(utf8(text)));
    }

    static Parts parts(String text) {
        return value(PartsDocument.read(utf8(text)));
    }

    private static <T> T value(Read<T> read) {
        assertThat(read.problems()).isEmpty();
        return read.value().orElseThrow();
    }

    /** The text with one passage replaced, which must be there exactly once. */
    static String changed(String text, String passage, String by) {
        assertThat(text.indexOf(passage)).as(passage).isNotNegative().isEqualTo(text.lastIndexOf(passage));
        return text.replace(passage, by);
    }

    /** {@code LINE:COLUMN} of the first occurrence of a passage, both from 1. */
    static String placeOf(String text, String passage) {
        int at = text.indexOf(passage);
        assertThat(at).as(passage).isNotNegative();
        int line =
                1 + (int) text.substring(0, at).chars().filter(c -> c == '\n').count();
        return line + ":" + (at - text.lastIndexOf('\n', at - 1));
    }

    static String placeOf(Problem problem) {
        return problem.line() + ":" + problem.column();
    }
}
