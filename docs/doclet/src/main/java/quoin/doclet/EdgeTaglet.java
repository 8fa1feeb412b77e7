package quoin.doclet;

/** Shows {@code @edge} in the HTML of the API. */
public final class EdgeTaglet extends BlockTaglet {
    /** The taglet that the Javadoc tool starts. */
    public EdgeTaglet() {
        super(CatalogueTag.EDGE);
    }
}
