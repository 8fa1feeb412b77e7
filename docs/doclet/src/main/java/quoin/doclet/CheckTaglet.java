package quoin.doclet;

/** Shows {@code @check} in the HTML of the API. */
public final class CheckTaglet extends BlockTaglet {
    /** The taglet that the Javadoc tool starts. */
    public CheckTaglet() {
        super(CatalogueTag.CHECK);
    }
}
