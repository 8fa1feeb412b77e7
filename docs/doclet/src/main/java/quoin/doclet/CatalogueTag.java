package quoin.doclet;

import java.util.List;
import java.util.Locale;

/** The block tags of the catalogue, in the order in which they stand in a comment. */
enum CatalogueTag {
    FIGURE("Figure", "@figure ID, the name of the figure in the catalogue"),
    CHECK("Check", "@check ID, the name of the check"),
    CLAUSE("Clause", "@clause NAME, the name of the clause in a rulebook"),
    FORMULA("Formula", "@formula TEXT, such as: w * l"),
    UNIT("Unit", "@unit TEXT, such as: mm (or 1 for a pure number)"),
    EDGE("Edge results", "@edge TEXT, what comes out at the edges: nothing, zero, not a number"),
    SOURCE("Source", "@source MARK: TEXT, where MARK is one of " + String.join(", ", Mark.names()));

    /** What a function that computes has to say. */
    static final List<CatalogueTag> WANTED = List.of(FORMULA, UNIT, EDGE, SOURCE);

    private final String heading;
    private final String right;

    CatalogueTag(String heading, String right) {
        this.heading = heading;
        this.right = right;
    }

    /** The name without the at sign. */
    String tag() {
        return name().toLowerCase(Locale.ROOT);
    }

    String heading() {
        return heading;
    }

    /** What would be right. */
    String right() {
        return right;
    }
}
