package quoin.doclet;

/** Shows {@code @unit} in the HTML of the API. */
public final class UnitTaglet extends BlockTaglet {
    /** The taglet that the Javadoc tool starts. */
    public UnitTaglet() {
        super(CatalogueTag.UNIT);
    }
}
