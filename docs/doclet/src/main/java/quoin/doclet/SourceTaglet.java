package quoin.doclet;

/** Shows {@code @source} in the HTML of the API. */
public final class SourceTaglet extends BlockTaglet {
    /** The taglet that the Javadoc tool starts. */
    public SourceTaglet() {
        super(CatalogueTag.SOURCE);
    }
}
