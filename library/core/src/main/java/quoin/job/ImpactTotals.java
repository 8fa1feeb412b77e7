package quoin.job;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import quoin.judge.Verdict;

/**
 * How many jobs a change of rules touches, counted as they come: as large for a million jobs as for one. Immutable and safe for
 * use by many threads; {@code plus…} gives the counts with one more.
 */
public final class ImpactTotals {
    /** No job yet. */
    public static final ImpactTotals NONE = new ImpactTotals(0, 0, Map.of(), Map.of());

    private final long jobs;
    private final long refused;
    private final Map<Impact.Change, Long> changes;
    private final Map<String, Long> flips;

    private ImpactTotals(long jobs, long refused, Map<Impact.Change, Long> changes, Map<String, Long> flips) {
        this.jobs = jobs;
        this.refused = refused;
        this.changes = changes;
        this.flips = flips;
    }

    /**
     * The counts with one more job.
     *
     * @param impact what became of it
     * @return the changed copy
     */
    public ImpactTotals plus(Impact impact) {
        Map<Impact.Change, Long> counted = new EnumMap<>(Impact.Change.class);
        counted.putAll(changes);
        counted.merge(impact.change(), 1L, Long::sum);
        Map<String, Long> flipped = new TreeMap<>(flips);
        if (!impact.verdict().isSame()) {
            flipped.merge(flip(impact.verdict().from(), impact.verdict().to()), 1L, Long::sum);
        }
        return new ImpactTotals(jobs + 1, refused, counted, flipped);
    }

    /**
     * The counts with one more job that could not be read, or whose parts are not at hand.
     *
     * @return the changed copy
     */
    public ImpactTotals plusRefused() {
        return new ImpactTotals(jobs + 1, refused + 1, changes, flips);
    }

    private static String flip(Verdict from, Verdict to) {
        return from.text() + "-" + to.text();
    }

    /** {@return how many jobs there were, those refused included} */
    public long jobs() {
        return jobs;
    }

    /** {@return how many of them were refused, and assessed by neither rulebook} */
    public long refused() {
        return refused;
    }

    /**
     * How many jobs a kind of change is the gravest of.
     *
     * @param change the kind of change
     * @return the number of jobs
     */
    public long count(Impact.Change change) {
        return changes.getOrDefault(change, 0L);
    }

    /** {@return how many verdicts went which way, such as {@code pass-fail}; ways that none went are left out} */
    public Map<String, Long> flips() {
        return Collections.unmodifiableMap(flips);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ImpactTotals that
                && jobs == that.jobs
                && refused == that.refused
                && changes.equals(that.changes)
                && flips.equals(that.flips);
    }

    @Override
    public int hashCode() {
        return Long.hashCode(jobs) * 31 + changes.hashCode();
    }

    @Override
    public String toString() {
        return jobs + " jobs, " + changes;
    }
}
