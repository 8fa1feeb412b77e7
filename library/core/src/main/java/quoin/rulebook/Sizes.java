package quoin.rulebook;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.judge.Finding;
import quoin.measure.Estimate;
import quoin.measure.Uncertain;

/**
 * The sizes of one job, and those that could not be decided.
 *
 * <p>Immutable and safe for use by many threads.
 */
public final class Sizes {
    /** No size. */
    public static final Sizes NONE = new Sizes(List.of(), List.of(), List.of());

    private final Map<String, Size> byId;
    private final List<Finding> refused;
    private final List<Finding> atEdges;

    Sizes(List<Size> sizes, List<Finding> refused, List<Finding> atEdges) {
        Map<String, Size> map = new LinkedHashMap<>();
        sizes.forEach(size -> map.put(size.id(), size));
        this.byId = Collections.unmodifiableMap(map);
        this.refused = List.copyOf(refused);
        this.atEdges = List.copyOf(atEdges);
    }

    /**
     * The size of that name.
     *
     * @param id its name
     * @return the size, or empty where there is none or it could not be decided
     */
    public Optional<Size> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** {@return the sizes that were decided, in the rulebook's order} */
    public List<Size> all() {
        return List.copyOf(byId.values());
    }

    /** {@return one finding, under the size's name, for each size that could not be decided} */
    public List<Finding> refused() {
        return refused;
    }

    /**
     * What was found of sizes that were decided, but whose bands may end below the true value of a figure.
     *
     * @return one finding, under the size's name, for each: passed or undecided by the odds that there is a band
     */
    public List<Finding> atEdges() {
        return atEdges;
    }

    /**
     * These sizes as figures, before others: a bound may name a size.
     *
     * @param others where all other figures come from
     * @return a source that knows both
     */
    public FigureSource before(FigureSource others) {
        return new FigureSource() {
            @Override
            public Optional<Estimate> estimate(String figure) {
                Size size = byId.get(figure);
                return size == null ? others.estimate(figure) : Optional.of(size.asUncertain());
            }

            @Override
            public Optional<Estimate> forBands(String figure) {
                Size size = byId.get(figure);
                return size == null ? others.forBands(figure) : Optional.of(Uncertain.exact(size.value()));
            }
        };
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Sizes that
                && byId.equals(that.byId)
                && refused.equals(that.refused)
                && atEdges.equals(that.atEdges);
    }

    @Override
    public int hashCode() {
        return byId.hashCode() * 31 + refused.hashCode();
    }

    @Override
    public String toString() {
        return byId.keySet().toString();
    }
}
