package quoin.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Files as bytes; what cannot be read is a bad use. */
final class Files {
    /** More than the readers of documents take, so that they see that a file is too large. */
    private static final int MOST = 9 * 1024 * 1024;

    private Files() {}

    static Path path(String file) throws BadUse {
        try {
            return Path.of(file);
        } catch (InvalidPathException e) {
            throw new BadUse(file + " cannot be a file name: " + e.getReason());
        }
    }

    /** The bytes of a file, or as many of them as show that it is too large. */
    static byte[] bytes(String file) throws BadUse {
        Path path = readable(file);
        try (InputStream in = java.nio.file.Files.newInputStream(path)) {
            return in.readNBytes(MOST);
        } catch (IOException e) {
            throw new BadUse(file + " cannot be read: " + e.getMessage());
        }
    }

    static Path readable(String file) throws BadUse {
        Path path = path(file);
        if (!java.nio.file.Files.exists(path)) {
            throw new BadUse(file + " is not there, name a file that is");
        }
        if (java.nio.file.Files.isDirectory(path)) {
            throw new BadUse(file + " is a folder, name a file in it");
        }
        return path;
    }

    /** The JSON files beside a file, by name, without that file itself; none where the folder cannot be listed. */
    static List<String> beside(String file) throws BadUse {
        Path path = path(file).toAbsolutePath();
        Path given = path(file).getParent();
        List<String> found = new ArrayList<>();
        try (Stream<Path> entries = java.nio.file.Files.list(path.getParent())) {
            entries.map(entry -> entry.getFileName().toString())
                    .filter(name -> name.endsWith(".json")
                            && !name.equals(path.getFileName().toString()))
                    .sorted(Comparator.naturalOrder())
                    .map(name -> given == null ? name : given.resolve(name).toString())
                    .forEach(found::add);
        } catch (IOException e) {
            return List.of();
        }
        return found;
    }

    /** The JSON files in a folder, by name; none where there is no such folder. */
    static List<String> in(String folder) throws BadUse {
        Path path = path(folder);
        return java.nio.file.Files.isDirectory(path) ? beside(path.resolve("-").toString()) : List.of();
    }

    /** A file that is named in another one, from where that lies. */
    static String beside(String file, String name) throws BadUse {
        Path given = path(file).getParent();
        return given == null
                ? path(name).toString()
                : given.resolve(path(name)).normalize().toString();
    }
}
