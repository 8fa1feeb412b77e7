package quoin.rulebook;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quoin.judge.Catalogue;
import quoin.judge.Problem;

/**
 * What changed between two versions of a rulebook: clause by clause, and by effect.
 *
 * <p>By effect means: the exact values of figures where a size or a limit differs, and by how much, found without trying
 * any; and the bounds whose verdict can change. Cuts are those of exact decimals; an estimate nearer to a cut than 1e-6 of
 * a step (or 1e-9 of an edge) counts as on it. What comes from both is how large the step to the new version must be.
 *
 * <p>Immutable and safe for use by many threads.
 *
 * @param changes what is stated differently, rulebook first, then sizes, bounds and tables, by name
 * @param effects where a size or a limit differs
 * @param flips the bounds whose verdict can change, and why
 * @param demands what the step to the new version must at least be, and why; the largest first, empty where nothing
 *     changed
 * @param leastVersion the least version that the new rulebook may have; empty where nothing is demanded, or where the old
 *     version is not three numbers
 * @param isVersionEnough whether the new rulebook's version is that or more
 */
public record Comparison(
        List<Change> changes,
        List<Effect> effects,
        List<Flip> flips,
        List<Demand> demands,
        Optional<String> leastVersion,
        boolean isVersionEnough) {
    /** Copies the lists. */
    public Comparison {
        changes = List.copyOf(changes);
        effects = List.copyOf(effects);
        flips = List.copyOf(flips);
        demands = List.copyOf(demands);
        Objects.requireNonNull(leastVersion, "leastVersion");
    }

    /**
     * One field that is stated differently.
     *
     * @param kind what happened to it
     * @param part {@code rulebook}, {@code size}, {@code bound} or {@code table}
     * @param clause the name of the size, bound or table; empty for the rulebook
     * @param field where in the clause, such as {@code less/1/quota/amount}; empty for a whole clause
     * @param from what it was, in the unit of answers; empty where it was not there
     * @param to what it is; empty where it is no more
     */
    public record Change(Kind kind, String part, String clause, String field, String from, String to) {
        /** What happened to a field or a clause. */
        public enum Kind {
            /** It is there now. */
            ADDED,
            /** It is no more. */
            REMOVED,
            /** It is another. */
            CHANGED
        }

        /** Checks that nothing is missing. */
        public Change {
            Objects.requireNonNull(kind, "kind");
            Objects.requireNonNull(part, "part");
            Objects.requireNonNull(clause, "clause");
            Objects.requireNonNull(field, "field");
            Objects.requireNonNull(from, "from");
            Objects.requireNonNull(to, "to");
        }

        /** {@return whether it is a reason, a source, a title or a day, which no number depends on} */
        public boolean isText() {
            String last = field.substring(field.lastIndexOf('/') + 1);
            return List.of("because", "source", "title", "effective").contains(last);
        }
    }

    /**
     * A bound whose verdict can change.
     *
     * @param bound its name
     * @param because why: {@code added}, {@code removed}, {@code figure}, {@code limit}, {@code doubt}, {@code decide},
     *     {@code frame}, or {@code sizes}
     * @param of the sizes that it comes from; empty for another reason
     */
    public record Flip(String bound, String because, List<String> of) {
        /** Copies the list. */
        public Flip {
            Objects.requireNonNull(bound, "bound");
            Objects.requireNonNull(because, "because");
            of = List.copyOf(of);
        }
    }

    /** How large the step to a new version is. */
    public enum Level {
        /** What people read: reasons, sources, titles; or numbers written in another way. */
        PATCH,
        /** A number that can come out differently, or a verdict that can change. */
        MINOR,
        /** What a job must state, or what an answer holds. */
        MAJOR
    }

    /**
     * What a change demands.
     *
     * @param level how large the step must be
     * @param because why: {@code id}, {@code survey}, {@code site}, {@code choice}, {@code declared}, {@code size-removed},
     *     {@code size-added}, {@code size}, {@code limit}, {@code verdict}, {@code number} or {@code text}
     * @param of the names it is about
     */
    public record Demand(Level level, String because, List<String> of) {
        /** Copies the list. */
        public Demand {
            Objects.requireNonNull(level, "level");
            Objects.requireNonNull(because, "because");
            of = List.copyOf(of);
        }
    }

    /**
     * Compares two versions.
     *
     * @param old the rules so far
     * @param now the rules to come
     * @param catalogue every figure that can be named
     * @return what changed
     * @throws IllegalArgumentException if {@link Lint} finds an error in one of them
     */
    public static Comparison of(Rulebook old, Rulebook now, Catalogue catalogue) {
        return new Comparing(sound(old, catalogue), sound(now, catalogue), catalogue).compare();
    }

    private static Rulebook sound(Rulebook rulebook, Catalogue catalogue) {
        for (Problem problem : Lint.problems(rulebook, catalogue, List.of())) {
            if (problem.severity() == Problem.Severity.ERROR) {
                throw new IllegalArgumentException("rulebook " + rulebook + " must be without errors, got "
                        + problem.code() + " at " + problem.pointer());
            }
        }
        return rulebook;
    }

    /** {@return what the step must at least be; empty where nothing changed} */
    public Optional<Level> level() {
        return demands.stream().map(Demand::level).findFirst();
    }

    /** {@return whether the two state the same, the version aside} */
    public boolean isEmpty() {
        return changes.isEmpty() && effects.isEmpty();
    }
}
