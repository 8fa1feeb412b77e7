package quoin.doclet;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.TreePath;
import java.nio.file.Path;
import javax.lang.model.element.Element;

/** Where an element stands: file and line. */
final class SourcePlace {
    private SourcePlace() {}

    static String of(Element element, DocTrees trees) {
        TreePath path = trees.getPath(element);
        if (path == null) {
            return "?";
        }
        CompilationUnitTree unit = path.getCompilationUnit();
        long start = trees.getSourcePositions().getStartPosition(unit, path.getLeaf());
        String file = Path.of(unit.getSourceFile().getName()).getFileName().toString();
        return start < 0 ? file : file + ":" + unit.getLineMap().getLineNumber(start);
    }
}
