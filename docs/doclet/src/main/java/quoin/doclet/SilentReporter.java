package quoin.doclet;

import com.sun.source.util.DocTreePath;
import javax.lang.model.element.Element;
import javax.tools.Diagnostic;
import jdk.javadoc.doclet.Reporter;

/** Stands in until the tool has given its own reporter. */
final class SilentReporter implements Reporter {
    @Override
    public void print(Diagnostic.Kind kind, String message) {}

    @Override
    public void print(Diagnostic.Kind kind, DocTreePath path, String message) {}

    @Override
    public void print(Diagnostic.Kind kind, Element element, String message) {}
}
