package quoin.doclet;

import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.EntityTree;
import com.sun.source.doctree.LiteralTree;
import com.sun.source.doctree.TextTree;
import com.sun.source.doctree.UnknownBlockTagTree;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javax.lang.model.element.Element;
import jdk.javadoc.doclet.Taglet;

/** Shows one block tag of the catalogue in the HTML of the API. */
abstract class BlockTaglet implements Taglet {
    private final CatalogueTag tag;

    BlockTaglet(CatalogueTag tag) {
        this.tag = tag;
    }

    @Override
    public final Set<Location> getAllowedLocations() {
        return EnumSet.of(Location.TYPE, Location.METHOD, Location.CONSTRUCTOR);
    }

    @Override
    public final boolean isInlineTag() {
        return false;
    }

    @Override
    public final String getName() {
        return tag.tag();
    }

    @Override
    public final String toString(List<? extends DocTree> tags, Element element) {
        return tags.stream()
                .filter(UnknownBlockTagTree.class::isInstance)
                .map(one -> html(((UnknownBlockTagTree) one).getContent()))
                .collect(Collectors.joining("</dd>\n<dd>", "<dt>" + tag.heading() + ":</dt>\n<dd>", "</dd>\n"));
    }

    private static String html(List<? extends DocTree> content) {
        return content.stream()
                .map(BlockTaglet::html)
                .collect(Collectors.joining())
                .strip();
    }

    private static String html(DocTree tree) {
        if (tree instanceof TextTree text) {
            return escaped(text.getBody());
        }
        if (tree instanceof LiteralTree literal) {
            String body = escaped(literal.getBody().getBody());
            return literal.getKind() == DocTree.Kind.CODE ? "<code>" + body + "</code>" : body;
        }
        return tree instanceof EntityTree ? tree.toString() : escaped(tree.toString());
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
