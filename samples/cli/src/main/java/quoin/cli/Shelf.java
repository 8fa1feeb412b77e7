package quoin.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quoin.job.Figures;
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
    private final Map<String, Rulebook> files = new LinkedHashMap<>();
    private final List<Parts> parts = new ArrayList<>();
    private final Problems problems;

    private Shelf(Problems problems) {
        this.problems = problems;
    }

    /** Fills the shelf; what is wrong with a document goes to {@code problems}. */
    static Shelf fill(Call call, String beside, Problems problems) throws BadUse {
        Shelf shelf = new Shelf(problems);
        List<String> neighbours =
                call.rulebooks().isEmpty() || call.parts().isEmpty() ? Files.beside(beside) : List.of();
        List<String> parts = call.parts().isEmpty() ? naming(neighbours, PartsDocument.FORMAT) : call.parts();
        for (String file : parts) {
            shelf.parts(file, Files.bytes(file));
        }
        List<String> rulebooks =
                call.rulebooks().isEmpty() ? naming(neighbours, RulebookDocument.FORMAT) : call.rulebooks();
        for (String file : rulebooks) {
            shelf.rulebook(file, Files.bytes(file));
        }
        return shelf;
    }

    /** The rulebooks and parts lists among files. */
    static Shelf of(List<String> files, Problems problems) throws BadUse {
        Shelf shelf = new Shelf(problems);
        for (String file : naming(files, PartsDocument.FORMAT)) {
            shelf.parts(file, Files.bytes(file));
        }
        for (String file : naming(files, RulebookDocument.FORMAT)) {
            shelf.rulebook(file, Files.bytes(file));
        }
        return shelf;
    }

    /** Those of the files that name the format near their start; a file that does not is not for us. */
    static List<String> naming(List<String> files, String format) throws BadUse {
        List<String> found = new ArrayList<>();
        for (String file : files) {
            Path path = Files.path(file);
            if (java.nio.file.Files.isRegularFile(path) && path.toFile().length() <= LARGEST_NEIGHBOUR) {
                byte[] bytes = Files.bytes(file);
                String start = new String(bytes, 0, Math.min(bytes.length, HEAD), StandardCharsets.UTF_8);
                if (start.contains('"' + format + '"')) {
                    found.add(file);
                }
            }
        }
        return found;
    }

    private void rulebook(String file, byte[] bytes) {
        Read<Rulebook> read = RulebookDocument.read(bytes, Figures.CATALOGUE, parts);
        problems.add(file, read.problems());
        read.value().ifPresent(rulebook -> {
            rulebooks.add(rulebook);
            files.put(file, rulebook);
        });
    }

    private void parts(String file, byte[] bytes) {
        Read<Parts> read = PartsDocument.read(bytes);
        problems.add(file, read.problems());
        read.value().ifPresent(parts::add);
    }

    List<Rulebook> rulebooks() {
        return rulebooks;
    }

    /** The rulebooks by the file that each was read from. */
    Map<String, Rulebook> files() {
        return files;
    }

    /** The parts lists of that id, each once. */
    List<Parts> parts(String id) {
        return parts.stream().filter(list -> list.id().equals(id)).distinct().toList();
    }

    List<String> partsIds() {
        return parts.stream().map(Parts::id).toList();
    }
}
