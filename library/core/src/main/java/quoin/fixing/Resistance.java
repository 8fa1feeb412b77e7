package quoin.fixing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import quoin.judge.Step;

/**
 * What one fixing may carry in one direction, by which way of reckoning, and how that came about.
 *
 * <p>Allowable loads are held against the loads as they are, design resistances against loads times their partial factors;
 * the two never mix. A resistance that nobody established is not 0 but unknown; one that a rule forbids to count on is
 * barred. Immutable and safe for use by many threads.
 *
 * @param standing whether there is a number
 * @param method the way of reckoning
 * @param newtons the load in N; NaN unless it is established
 * @param steps how it came about: edition, factors and defaults, each with its source
 */
public record Resistance(Standing standing, Method method, double newtons, List<Step> steps) {
    /** Whether there is a number. */
    public enum Standing {
        /** There is a number. */
        ESTABLISHED,
        /** Nobody established one, or it is outside the range of its code. */
        UNKNOWN,
        /** A rule forbids to count on it: a check that needs it fails. */
        BARRED
    }

    /** Ways of reckoning, which never mix. */
    public enum Method {
        /** An allowable load, held against the loads as they are. */
        ALLOWABLE_LOAD,
        /** A design resistance, held against loads times partial factors. */
        PARTIAL_FACTORS;

        /** {@return the method as documents write it} */
        public String text() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** Refuses a number where there is none, and none where there is one; copies the steps. */
    public Resistance {
        Objects.requireNonNull(standing, "standing");
        Objects.requireNonNull(method, "method");
        boolean right = standing == Standing.ESTABLISHED
                ? newtons >= 0 && newtons < Double.POSITIVE_INFINITY
                : Double.isNaN(newtons);
        if (!right) {
            throw new IllegalArgumentException(
                    "newtons must be 0 N or more and finite where established and NaN elsewhere, got " + newtons
                            + " N");
        }
        steps = List.copyOf(steps);
    }

    /**
     * An established one.
     *
     * @param method the way of reckoning
     * @param newtons the load in N, 0 or more
     * @param steps how it came about
     * @return the resistance
     */
    public static Resistance of(Method method, double newtons, List<Step> steps) {
        return new Resistance(Standing.ESTABLISHED, method, newtons, steps);
    }

    /**
     * One that nobody established.
     *
     * @param method the way of reckoning
     * @param why what is missing, or which range is left
     * @return the resistance
     */
    public static Resistance unknown(Method method, Step why) {
        return new Resistance(Standing.UNKNOWN, method, Double.NaN, List.of(why));
    }

    /**
     * One that must not be counted on.
     *
     * @param method the way of reckoning
     * @param why which rule forbids it
     * @return the resistance
     */
    public static Resistance barred(Method method, Step why) {
        return new Resistance(Standing.BARRED, method, Double.NaN, List.of(why));
    }

    /**
     * The smaller of two, both ways a fixing can let go.
     *
     * @param other the other way
     * @return barred if either is, else unknown if either is, else the smaller one; the steps of both where none governs
     * @throws IllegalArgumentException if they are reckoned in different ways
     */
    public Resistance and(Resistance other) {
        if (method != other.method) {
            throw new IllegalArgumentException(
                    "resistances must be reckoned in one way, got " + method.text() + " and " + other.method.text());
        }
        if (standing != Standing.ESTABLISHED || other.standing != Standing.ESTABLISHED) {
            Standing worse = standing.compareTo(other.standing) >= 0 ? standing : other.standing;
            List<Step> both = new ArrayList<>();
            both.addAll(standing == worse ? steps : List.of());
            both.addAll(other.standing == worse ? other.steps : List.of());
            return new Resistance(worse, method, Double.NaN, both);
        }
        return newtons <= other.newtons ? this : other;
    }
}
