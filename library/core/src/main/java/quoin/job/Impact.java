package quoin.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Verdict;
import quoin.measure.Amount;
import quoin.parts.Parts;
import quoin.rulebook.Rulebook;
import quoin.rulebook.Size;

/**
 * What becomes of one job when its rulebook gives way to another: the same readings, choices and parts, assessed by both.
 *
 * <p>Odds, margins and cautions are not compared; what to read again is not worked out. Immutable and safe for use by many
 * threads.
 *
 * @param job the job's name
 * @param change the gravest of what changed
 * @param verdict its verdict by the one and by the other rulebook
 * @param sizes the sizes that are not the same, by name
 * @param findings why it does not pass, where that is not the same: by clause, before and after; empty where the clause
 *     passes, or is not there
 */
public record Impact(
        String job,
        Change change,
        Pair<Verdict> verdict,
        Map<String, Pair<Optional<Amount>>> sizes,
        Map<String, Pair<Optional<Ground>>> findings) {
    /** What became of a job, mildest first. */
    public enum Change {
        /** The verdict, every size and every reason not to pass are the same. */
        UNCHANGED,
        /** The verdict and every size are the same, the reasons not to pass are others. */
        REASON_CHANGED,
        /** A size is another one; the verdict is the same. */
        SIZE_CHANGED,
        /** The verdict is another one; sizes may have changed too. */
        VERDICT_FLIPPED,
        /** A size that was decided before can no longer be decided; the verdict may have changed too. */
        NEWLY_REFUSED;

        private final String text = name().toLowerCase(Locale.ROOT).replace('_', '-');

        /** {@return the change as documents write it} */
        public String text() {
            return text;
        }
    }

    /**
     * A thing before and after.
     *
     * @param from by the old rulebook
     * @param to by the new one
     * @param <T> what it is
     */
    public record Pair<T>(T from, T to) {
        /** Checks that nothing is missing. */
        public Pair {
            Objects.requireNonNull(from, "from");
            Objects.requireNonNull(to, "to");
        }

        /** {@return whether nothing changed} */
        public boolean isSame() {
            return from.equals(to);
        }
    }

    /**
     * Why a clause keeps a job from passing.
     *
     * @param verdict fail or undecided
     * @param reason the reason of undecided; empty for fail
     */
    public record Ground(Verdict verdict, Optional<Reason> reason) {
        /** Checks that nothing is missing. */
        public Ground {
            Objects.requireNonNull(verdict, "verdict");
            Objects.requireNonNull(reason, "reason");
        }
    }

    /** Checks that nothing is missing; copies the maps. */
    public Impact {
        Objects.requireNonNull(job, "job");
        Objects.requireNonNull(change, "change");
        Objects.requireNonNull(verdict, "verdict");
        sizes = Collections.unmodifiableMap(new LinkedHashMap<>(sizes));
        findings = Collections.unmodifiableMap(new LinkedHashMap<>(findings));
    }

    /**
     * Assesses a job by two rulebooks, whichever it chose itself, and compares.
     *
     * @param job the job
     * @param before the old rules
     * @param after the new rules
     * @param parts the parts; {@link Parts#NONE} where none are chosen
     * @return what changed
     * @throws IllegalArgumentException if one of the rulebooks has errors
     */
    public static Impact of(Job job, Rulebook before, Rulebook after, Parts parts) {
        Surveyed surveyed = Surveyed.of(job, before);
        Assessment old = Assessment.brief(job, before, parts, surveyed);
        Assessment now = Assessment.brief(job, after, parts, surveyed.by(after));
        Pair<Verdict> verdict = new Pair<>(old.verdict(), now.verdict());
        Map<String, Pair<Optional<Amount>>> sizes = changed(sizes(old), sizes(now));
        Map<String, Pair<Optional<Ground>>> findings = changed(grounds(old), grounds(now));
        boolean refused = now.sizes().refused().stream()
                .anyMatch(finding -> old.sizes().find(finding.clause()).isPresent());
        return new Impact(job.id(), gravest(refused, verdict, sizes, findings), verdict, sizes, findings);
    }

    private static Change gravest(boolean refused, Pair<Verdict> verdict, Map<?, ?> sizes, Map<?, ?> findings) {
        if (refused) {
            return Change.NEWLY_REFUSED;
        }
        if (!verdict.isSame()) {
            return Change.VERDICT_FLIPPED;
        }
        if (!sizes.isEmpty()) {
            return Change.SIZE_CHANGED;
        }
        return findings.isEmpty() ? Change.UNCHANGED : Change.REASON_CHANGED;
    }

    private static Map<String, Amount> sizes(Assessment assessment) {
        Map<String, Amount> sizes = new TreeMap<>();
        for (Size size : assessment.sizes().all()) {
            sizes.put(size.id(), new Amount(size.value(), size.dimension()));
        }
        return sizes;
    }

    /** Of two findings of one clause the worse one counts. */
    private static Map<String, Ground> grounds(Assessment assessment) {
        Map<String, Ground> grounds = new TreeMap<>();
        for (Finding finding : assessment.findings()) {
            if (finding.verdict() != Verdict.PASS) {
                Ground ground = new Ground(finding.verdict(), finding.reason());
                grounds.merge(finding.clause(), ground, Impact::worse);
            }
        }
        return grounds;
    }

    private static Ground worse(Ground one, Ground other) {
        return one.verdict().compareTo(other.verdict()) >= 0 ? one : other;
    }

    private static <T> Map<String, Pair<Optional<T>>> changed(Map<String, T> before, Map<String, T> after) {
        Map<String, Pair<Optional<T>>> changed = new TreeMap<>();
        before.forEach(
                (id, value) -> changed.put(id, new Pair<>(Optional.of(value), Optional.ofNullable(after.get(id)))));
        after.forEach((id, value) -> changed.putIfAbsent(id, new Pair<>(Optional.empty(), Optional.of(value))));
        changed.values().removeIf(Pair::isSame);
        return changed;
    }
}
