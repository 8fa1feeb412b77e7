package quoin.judge;

import java.util.List;
import java.util.Objects;
import quoin.measure.Dimension;

/**
 * A quantity that the library can name: what it is called, what kind of quantity it is, and where it comes from.
 *
 * <p>Immutable and safe for use by many threads.
 *
 * @param id the name rulebooks use, such as {@code gap.least}
 * @param dimension the kind of quantity
 * @param stage when it can be known
 * @param needs what must be known before it, as names of figures or readings
 * @param formula how it is computed, in one line
 * @param source where the formula comes from
 */
public record Figure(String id, Dimension dimension, Stage stage, List<String> needs, String formula, Source source) {
    /** Copies the list of needs. */
    public Figure {
        Args.requireId(id, "figure");
        Objects.requireNonNull(dimension, "dimension");
        Objects.requireNonNull(stage, "stage");
        needs = List.copyOf(needs);
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(source, "source");
    }

    /**
     * A figure known from the survey.
     *
     * @param id the name rulebooks use
     * @param dimension the kind of quantity
     * @param formula how it is computed, in one line
     * @param source where the formula comes from
     * @param needs what must be known before it
     * @return the figure
     */
    public static Figure survey(String id, Dimension dimension, String formula, Source source, String... needs) {
        return new Figure(id, dimension, Stage.SURVEY, List.of(needs), formula, source);
    }

    /**
     * A figure known once the sizes are decided.
     *
     * @param id the name rulebooks use
     * @param dimension the kind of quantity
     * @param formula how it is computed, in one line
     * @param source where the formula comes from
     * @param needs what must be known before it
     * @return the figure
     */
    public static Figure order(String id, Dimension dimension, String formula, Source source, String... needs) {
        return new Figure(id, dimension, Stage.ORDER, List.of(needs), formula, source);
    }
}
