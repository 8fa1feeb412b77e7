package quoin.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import quoin.judge.Source;

/**
 * How one size is decided.
 *
 * <p>A size is a decision: it is computed from estimates and then is a constant. Immutable and safe for use by many
 * threads.
 *
 * @clause size
 * @formula size = round(of + &Sigma; times &middot; more &minus; &Sigma; times &middot; less), rounded once, at the end
 * @unit that of the size: mm for a length; {@code cutWithin} in mm
 * @edge a band's upper edge belongs to it; at or below zero and above the last band there is no amount, and no size is
 *     decided; a value within 1e-6 of a step of a multiple counts as that multiple, just below a half as the half;
 *     halves round away from zero
 * @source assumption: linear in figures, so that a rulebook can be read, compared and inverted
 * @param id the size's name, such as {@code frame.width}
 * @param of what it starts from
 * @param less what is taken off
 * @param more what is added
 * @param round how it is rounded
 * @param cutWithin how exactly it is cut, limits &plusmn; in mm; NaN where not stated
 * @param because why the clause is there
 * @param source where it comes from
 */
public record SizeClause(
        String id,
        Base of,
        List<Item> less,
        List<Item> more,
        Rounding round,
        double cutWithin,
        String because,
        Source source) {
    /** Refuses an empty id and an infinite {@code cutWithin}; copies the lists. */
    public SizeClause {
        Checks.named(id, "size");
        Objects.requireNonNull(of, "of");
        less = List.copyOf(less);
        more = List.copyOf(more);
        Objects.requireNonNull(round, "round");
        if (Double.isInfinite(cutWithin)) {
            throw new IllegalArgumentException("cutWithin must be finite, got " + cutWithin + " mm");
        }
        cutWithin = cutWithin + 0.0;
        Objects.requireNonNull(because, "because");
        Objects.requireNonNull(source, "source");
    }

    /**
     * A size that is just what it starts from.
     *
     * @param id the size's name
     * @param of what it starts from
     * @return the clause
     */
    public static SizeClause of(String id, Base of) {
        return new SizeClause(id, of, List.of(), List.of(), Rounding.NONE, Double.NaN, "", Source.UNSTATED);
    }

    /**
     * The same size less these.
     *
     * @param items what is taken off
     * @return the changed copy
     */
    public SizeClause withLess(Item... items) {
        return new SizeClause(id, of, List.of(items), more, round, cutWithin, because, source);
    }

    /**
     * The same size more these.
     *
     * @param items what is added
     * @return the changed copy
     */
    public SizeClause withMore(Item... items) {
        return new SizeClause(id, of, less, List.of(items), round, cutWithin, because, source);
    }

    /**
     * The same size rounded another way.
     *
     * @param rounding how it is rounded
     * @return the changed copy
     */
    public SizeClause withRound(Rounding rounding) {
        return new SizeClause(id, of, less, more, rounding, cutWithin, because, source);
    }

    /**
     * The same size cut as exactly as this.
     *
     * @param limitsMm limits &plusmn; in mm; NaN where not stated
     * @return the changed copy
     */
    public SizeClause withCutWithin(double limitsMm) {
        return new SizeClause(id, of, less, more, round, limitsMm, because, source);
    }

    /**
     * The same size with its reason and source.
     *
     * @param why why the clause is there
     * @param from where it comes from
     * @return the changed copy
     */
    public SizeClause withBecause(String why, Source from) {
        return new SizeClause(id, of, less, more, round, cutWithin, why, from);
    }

    /** The amounts that it states: its base, then what is added, then what is taken off. */
    List<Quota> quotas() {
        List<Quota> all = new ArrayList<>(1 + more.size() + less.size());
        if (of instanceof Base.OfQuota base) {
            all.add(base.quota());
        }
        for (Item item : more) {
            all.add(item.quota());
        }
        for (Item item : less) {
            all.add(item.quota());
        }
        return all;
    }
}
