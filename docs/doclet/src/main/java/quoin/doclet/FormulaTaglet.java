package quoin.doclet;

/** Shows {@code @formula} in the HTML of the API. */
public final class FormulaTaglet extends BlockTaglet {
    /** The taglet that the Javadoc tool starts. */
    public FormulaTaglet() {
        super(CatalogueTag.FORMULA);
    }
}
