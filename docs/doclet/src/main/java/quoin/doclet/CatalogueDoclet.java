package quoin.doclet;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.lang.model.SourceVersion;
import javax.tools.Diagnostic;
import jdk.javadoc.doclet.Doclet;
import jdk.javadoc.doclet.DocletEnvironment;
import jdk.javadoc.doclet.Reporter;

/**
 * Writes the catalogue from the Javadoc, and fails when a public function that computes does not say its formula, unit,
 * edge results and source, or when
 * anything public has no comment.
 *
 * <p>Options: {@code -catalogue FILE} is where the catalogue goes; without it the comments are only checked.
 */
public final class CatalogueDoclet implements Doclet {
    private final CatalogueOption target =
            new CatalogueOption("-catalogue", 1, "the file that the catalogue is written to");
    private final CatalogueOption noFonts = new CatalogueOption("--no-fonts", 0, "accepted and ignored");
    private Reporter reporter = new SilentReporter();

    /** A doclet without a target yet; the tool sets it by the options. */
    public CatalogueDoclet() {}

    @Override
    public void init(Locale locale, Reporter toolReporter) {
        reporter = toolReporter;
    }

    @Override
    public String getName() {
        return "Catalogue";
    }

    @Override
    public Set<? extends Option> getSupportedOptions() {
        return Set.of(target, noFonts);
    }

    @Override
    public SourceVersion getSupportedSourceVersion() {
        return SourceVersion.latest();
    }

    @Override
    public boolean run(DocletEnvironment environment) {
        List<Entry> entries = Gathering.of(environment);
        List<Fault> faults = new ArrayList<>(Audit.of(entries));
        faults.addAll(
                Missing.of(Gathering.types(environment), environment.getDocTrees(), environment.getElementUtils()));
        faults.forEach(fault -> report(environment, fault));
        return faults.isEmpty() && (target.value().isEmpty() || write(Path.of(target.value()), entries));
    }

    /** Without the element, since the tool prints one error a place only and would hide all but the first. */
    private void report(DocletEnvironment environment, Fault fault) {
        String file = SourcePlace.of(fault.element(), environment.getDocTrees());
        reporter.print(Diagnostic.Kind.ERROR, fault.message(file));
    }

    private boolean write(Path file, List<Entry> entries) {
        try {
            Files.write(file, CatalogueText.of(entries).getBytes(StandardCharsets.UTF_8));
            return true;
        } catch (IOException e) {
            reporter.print(Diagnostic.Kind.ERROR, "cannot write " + file + ": " + e);
            return false;
        }
    }
}
