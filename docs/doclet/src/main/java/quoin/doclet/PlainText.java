package quoin.doclet;

import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.EndElementTree;
import com.sun.source.doctree.EntityTree;
import com.sun.source.doctree.LinkTree;
import com.sun.source.doctree.LiteralTree;
import com.sun.source.doctree.StartElementTree;
import com.sun.source.doctree.TextTree;
import com.sun.source.util.DocTrees;
import java.util.List;

/** The text of a piece of Javadoc as Markdown in one line. */
final class PlainText {
    private static final String SPECIAL = "\\`*_[]<>|";

    private final DocTrees trees;

    PlainText(DocTrees trees) {
        this.trees = trees;
    }

    String of(List<? extends DocTree> content) {
        StringBuilder out = new StringBuilder();
        content.forEach(tree -> add(tree, out));
        return oneLine(out.toString());
    }

    private void add(DocTree tree, StringBuilder out) {
        if (tree instanceof TextTree text) {
            out.append(escaped(text.getBody()));
        } else if (tree instanceof LiteralTree literal) {
            out.append(literal(literal));
        } else if (tree instanceof EntityTree entity) {
            String characters = trees.getCharacters(entity);
            out.append(escaped(characters == null ? entity.toString() : characters));
        } else if (tree instanceof LinkTree link) {
            out.append(link(link));
        } else if (!(tree instanceof StartElementTree) && !(tree instanceof EndElementTree)) {
            out.append(escaped(tree.toString()));
        }
    }

    private static String literal(LiteralTree literal) {
        String body = literal.getBody().getBody();
        return literal.getKind() == DocTree.Kind.CODE ? code(oneLine(body)) : escaped(body);
    }

    private String link(LinkTree link) {
        if (!link.getLabel().isEmpty()) {
            return of(link.getLabel());
        }
        String signature = link.getReference().getSignature();
        String dotted = signature.startsWith("#") ? signature.substring(1) : signature.replace('#', '.');
        return code(dotted);
    }

    /** A code span. */
    static String code(String text) {
        return text.indexOf('`') < 0 ? "`" + text + "`" : "`` " + text + " ``";
    }

    private static String oneLine(String text) {
        return text.strip().replaceAll("\\s+", " ");
    }

    private static String escaped(String text) {
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (SPECIAL.indexOf(c) >= 0) {
                out.append('\\');
            }
            out.append(c);
        }
        return out.toString();
    }
}
