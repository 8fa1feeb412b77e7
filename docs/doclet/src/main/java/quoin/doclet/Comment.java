package quoin.doclet;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.UnknownBlockTagTree;
import com.sun.source.util.DocTrees;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.lang.model.element.Element;

/** What the Javadoc of one element says: its first sentence and the tags of the catalogue. */
record Comment(String sentence, Map<CatalogueTag, List<String>> tags) {

    static Comment of(Element element, DocTrees trees) {
        DocCommentTree tree = trees.getDocCommentTree(element);
        if (tree == null) {
            return new Comment("", Map.of());
        }
        PlainText text = new PlainText(trees);
        Map<CatalogueTag, List<String>> tags = new EnumMap<>(CatalogueTag.class);
        for (CatalogueTag tag : CatalogueTag.values()) {
            tags.put(tag, contents(tree.getBlockTags(), tag, text));
        }
        return new Comment(text.of(tree.getFirstSentence()), tags);
    }

    private static List<String> contents(List<? extends DocTree> blocks, CatalogueTag tag, PlainText text) {
        return blocks.stream()
                .filter(UnknownBlockTagTree.class::isInstance)
                .map(UnknownBlockTagTree.class::cast)
                .filter(block -> block.getTagName().equals(tag.tag()))
                .map(block -> text.of(block.getContent()))
                .toList();
    }

    /** The texts of a tag, in the order of the comment; an empty text is one that was left out. */
    List<String> texts(CatalogueTag tag) {
        return tags.getOrDefault(tag, List.of());
    }

    boolean has(CatalogueTag tag) {
        return !texts(tag).isEmpty();
    }

    /** Whether a tag is there and none of its texts is empty. */
    boolean says(CatalogueTag tag) {
        return has(tag) && texts(tag).stream().noneMatch(String::isBlank);
    }

    boolean hasAny() {
        return tags.values().stream().anyMatch(texts -> !texts.isEmpty());
    }
}
