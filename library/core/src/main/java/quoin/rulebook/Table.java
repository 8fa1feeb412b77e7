package quoin.rulebook;

import java.util.List;
import java.util.Objects;
import quoin.judge.Source;

/**
 * A named table of tolerances, stated once and used by any number of clauses, each by a figure of its own. Immutable and
 * safe for use by many threads.
 *
 * @clause table
 * @formula the amount of the first band whose upper edge is not below the figure
 * @unit that of its amounts and edges
 * @edge as bands: an upper edge belongs to its band; at or below zero and above the last edge there is no amount
 * @source practice: tolerance tables of standards are banded by nominal size
 * @param id its name
 * @param title what people call it; may be empty
 * @param bands the bands, in ascending order
 * @param because why it is there; may be empty
 * @param source where it comes from, with its dates
 */
public record Table(String id, String title, List<Quota.Band> bands, String because, Source source) {
    /** Refuses an empty name; copies the list. */
    public Table {
        Checks.named(id, "table");
        Objects.requireNonNull(title, "title");
        bands = List.copyOf(bands);
        Objects.requireNonNull(because, "because");
        Objects.requireNonNull(source, "source");
    }

    /**
     * The table, entered by a figure.
     *
     * @param figure the figure or size that picks the band
     * @return its bands; a number without a source of its own has the table's
     */
    public Quota.Banded by(String figure) {
        return new Quota.Banded(figure, bands.stream().map(this::sourced).toList(), id);
    }

    private Quota.Band sourced(Quota.Band band) {
        Stated number = band.number();
        return number.source().isStated() || !source.isStated()
                ? band
                : new Quota.Band(band.upTo(), number.withBecause(number.because(), source));
    }
}
