package quoin.rulebook;

import java.util.List;
import java.util.Objects;
import quoin.judge.Source;
import quoin.judge.Step;
import quoin.measure.Dimension;
import quoin.measure.Influence;
import quoin.measure.Uncertain;

/**
 * A size that was decided: a constant, with how it came about.
 *
 * <p>It carries no sensitivity to any reading; else a gap computed from the opening and the size would have no doubt.
 * Immutable and safe for use by many threads.
 *
 * @param id its name, such as {@code frame.width}
 * @param value its value, in base units
 * @param dimension the kind of quantity
 * @param within how exactly it is cut, limits &plusmn; in mm; 0 where not stated
 * @param deviation how far the rule's own numbers may be off: zero, with their influences
 * @param steps how it came about
 * @param source where its clause comes from
 */
public record Size(
        String id,
        double value,
        Dimension dimension,
        double within,
        Uncertain deviation,
        List<Step> steps,
        Source source) {
    /** Refuses a value that is not finite and a negative {@code within}; copies the list. */
    public Size {
        Checks.named(id, "size");
        value = Checks.finite(value, "size " + id);
        Objects.requireNonNull(dimension, "dimension");
        if (!(within >= 0) || Double.isInfinite(within)) {
            throw new IllegalArgumentException("within must be 0 mm or more and finite, got " + within + " mm");
        }
        within = within + 0.0;
        steps = List.copyOf(steps);
        Objects.requireNonNull(deviation, "deviation");
        Objects.requireNonNull(source, "source");
    }

    /**
     * A size whose rule has exact numbers only.
     *
     * @param id its name, such as {@code frame.width}
     * @param value its value, in base units
     * @param dimension the kind of quantity
     * @param within how exactly it is cut, limits &plusmn; in mm; 0 where not stated
     * @param steps how it came about
     * @param source where its clause comes from
     */
    public Size(String id, double value, Dimension dimension, double within, List<Step> steps, Source source) {
        this(id, value, dimension, within, Uncertain.exact(0), steps, source);
    }

    /**
     * The made size: this constant, one fresh rectangular influence {@code cut/id} where the cut has limits, and those of the
     * rule's own numbers that have a doubt.
     *
     * @return the made size, in base units
     */
    public Uncertain asUncertain() {
        Uncertain cut =
                within > 0 ? Uncertain.of(value, Influence.rectangular("cut/" + id, within)) : Uncertain.exact(value);
        return deviation.influences().size() == 0 ? cut : cut.plus(deviation);
    }
}
