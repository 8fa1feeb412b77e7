package quoin.doclet;

/** Shows {@code @figure} in the HTML of the API. */
public final class FigureTaglet extends BlockTaglet {
    /** The taglet that the Javadoc tool starts. */
    public FigureTaglet() {
        super(CatalogueTag.FIGURE);
    }
}
