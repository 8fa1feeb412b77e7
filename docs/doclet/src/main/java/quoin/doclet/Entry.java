package quoin.doclet;

import javax.lang.model.element.Element;

/** One function or type of the catalogue. */
record Entry(Element element, String signature, Comment comment) {}
