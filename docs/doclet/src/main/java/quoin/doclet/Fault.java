package quoin.doclet;

import javax.lang.model.element.Element;

/** What an element lacks, and what would be right. */
record Fault(Element element, String lack, String right) {

    static Fault missing(Element element, CatalogueTag tag) {
        return new Fault(element, "@" + tag.tag() + " is missing or empty", tag.right());
    }

    String message(String file) {
        return file + ": " + Signature.of(element) + ": " + lack + "; right would be: " + right;
    }
}
