package quoin.doclet;

/** Shows {@code @clause} in the HTML of the API. */
public final class ClauseTaglet extends BlockTaglet {
    /** The taglet that the Javadoc tool starts. */
    public ClauseTaglet() {
        super(CatalogueTag.CLAUSE);
    }
}
