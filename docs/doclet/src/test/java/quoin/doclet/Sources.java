package quoin.doclet;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.DiagnosticCollector;
import javax.tools.DocumentationTool;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Sources in a folder, and what the doclet says of them. */
final class Sources {
    /** What came of one run. */
    record Result(boolean passed, String messages, Path catalogue) {
        String text() throws IOException {
            return Files.readString(catalogue);
        }
    }

    private final Path folder;

    Sources(Path folder) {
        this.folder = folder;
    }

    Sources with(String file, String text) throws IOException {
        Path path = folder.resolve("src").resolve(file);
        Files.createDirectories(path.getParent());
        Files.writeString(path, text);
        return this;
    }

    Result run() throws IOException {
        Path catalogue = folder.resolve("catalogue.md");
        DocumentationTool tool = ToolProvider.getSystemDocumentationTool();
        DiagnosticCollector<JavaFileObject> diagnostics = new DiagnosticCollector<>();
        List<String> options = new ArrayList<>(List.of("-quiet", "-catalogue", catalogue.toString(), "--no-fonts"));
        StringWriter out = new StringWriter();
        try (StandardJavaFileManager files = tool.getStandardFileManager(null, Locale.ROOT, null);
                Stream<Path> all = Files.walk(folder.resolve("src"))) {
            List<Path> units = all.filter(path -> path.toString().endsWith(".java"))
                    .sorted()
                    .toList();
            boolean passed = tool.getTask(
                            out,
                            files,
                            diagnostics,
                            CatalogueDoclet.class,
                            options,
                            files.getJavaFileObjectsFromPaths(units))
                    .call();
            String messages = diagnostics.getDiagnostics().stream()
                    .map(one -> one.getMessage(Locale.ROOT))
                    .collect(Collectors.joining("\n"));
            return new Result(passed, out + messages, catalogue);
        }
    }
}
