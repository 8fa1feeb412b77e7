package quoin.judge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A set of figures, in a fixed order, no name twice.
 *
 * <p>A catalogue is a value: rooms publish theirs, the job joins them, and a host may add figures of its own. Immutable
 * and safe for use by many threads.
 */
public final class Catalogue {
    /** The catalogue without a figure. */
    public static final Catalogue EMPTY = new Catalogue(List.of());

    private final List<Figure> figures;
    private final Map<String, Figure> byId;

    private Catalogue(List<Figure> figures) {
        Map<String, Figure> map = new LinkedHashMap<>();
        for (Figure figure : figures) {
            Figure earlier = map.put(figure.id(), figure);
            if (earlier != null && !earlier.equals(figure)) {
                throw new IllegalArgumentException(
                        "figure " + figure.id() + " must be defined once, got two definitions");
            }
        }
        this.byId = Collections.unmodifiableMap(map);
        this.figures = List.copyOf(map.values());
    }

    /**
     * A catalogue of the given figures.
     *
     * @param figures the figures
     * @return the catalogue
     * @throws IllegalArgumentException if one name is defined in two ways
     */
    public static Catalogue of(List<Figure> figures) {
        return new Catalogue(figures);
    }

    /**
     * Both catalogues as one, this one's figures first.
     *
     * @param other the figures to add
     * @return the joint catalogue
     * @throws IllegalArgumentException if one name is defined in two ways
     */
    public Catalogue union(Catalogue other) {
        List<Figure> all = new ArrayList<>(figures);
        all.addAll(other.figures);
        return new Catalogue(all);
    }

    /**
     * The figure of that name.
     *
     * @param id the name
     * @return the figure, or empty where no room knows it
     */
    public Optional<Figure> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** {@return all figures, in their order} */
    public List<Figure> figures() {
        return figures;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Catalogue that && figures.equals(that.figures);
    }

    @Override
    public int hashCode() {
        return figures.hashCode();
    }

    @Override
    public String toString() {
        return byId.keySet().toString();
    }
}
