package quoin.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import quoin.json.PartsDocument;
import quoin.json.Read;
import quoin.json.RulebookDocument;
import quoin.parts.Parts;
import quoin.rulebook.Rulebook;

/** The rulebooks and parts lists at hand: those named, or those that lie beside the job. */
final class Shelf {
    private static final int HEAD = 4096;
    private static final int LARGEST_NEIGHBOUR = 4 * 1024 * 1024;

    private final List<Rulebook> rulebooks = new ArrayList<>();
    private final List<Parts> parts = new ArrayList<>();
    private final Problems problems;

    private Shelf(Problems problems) {
        this.problems = problems;
    }

    /** Fills the shelf; what is wrong with a document goes to {@code problems}. */
    static Shelf fill(Call call, String beside, Problems problems) throws BadUse {
        Shelf shelf = new Shelf(problems);
        for (String file : call.rulebooks()) {
            shelf.rulebook(file, Files.bytes(file));
        }
        for (String file : call.parts()) {
            shelf.parts(file, Files.bytes(file));
        }
        if (call.rulebooks().isEmpty() || call.parts().isEmpty()) {
            shelf.neighbours(call, beside);
        }
        return shelf;
    }

    private void neighbours(Call call, String beside) throws BadUse {
        for (String file : Files.beside(beside)) {
            Path path = Files.path(file);
            if (!java.nio.file.Files.isRegularFile(path) || path.toFile().length() > LARGEST_NEIGHBOUR) {
                continue;
            }
            byte[] bytes = Files.bytes(file);
            if (call.rulebooks().isEmpty() && says(bytes, "\"quoin-rulebook/1\"")) {
                rulebook(file, bytes);
            } else if (call.parts().isEmpty() && says(bytes, "\"quoin-parts/1\"")) {
                parts(file, bytes);
            }
        }
    }

    /** Whether a document names that format near its start; a file beside the job that does not is not for us. */
    private static boolean says(byte[] bytes, String format) {
        return new String(bytes, 0, Math.min(bytes.length, HEAD), StandardCharsets.UTF_8).contains(format);
    }

    private void rulebook(String file, byte[] bytes) {
        Read<Rulebook> read = RulebookDocument.read(bytes);
        problems.add(file, read.problems());
        read.value().ifPresent(rulebooks::add);
    }

    private void parts(String file, byte[] bytes) {
        Read<Parts> read = PartsDocument.read(bytes);
        problems.add(file, read.problems());
        read.value().ifPresent(parts::add);
    }

    List<Rulebook> rulebooks() {
        return rulebooks;
    }

    List<Parts> parts() {
        return parts;
    }
}
