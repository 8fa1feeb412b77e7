package quoin.rulebook;

import java.util.List;
import java.util.Objects;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Doubt;
import quoin.measure.Influence;
import quoin.measure.Uncertain;

/**
 * A number that a rule states, with what it rests on. Immutable and safe for use by many threads.
 *
 * @clause number
 * @formula what it stands for = amount + its own influence; u by its doubt: u, limits / &radic;3, or U / k
 * @unit that of the amount
 * @edge without a doubt it counts as exact; two numbers of one id are one and the same influence
 * @source standard: JCGM 100:2008, 4.3.3 and 4.3.7
 * @param id its own name, by which it is one influence wherever it is used; empty where it has none
 * @param amount the number
 * @param doubt its tolerance or uncertainty; none or one
 * @param because why it is that; empty where the clause's reason holds
 * @param source where it comes from; unstated where the clause's source holds
 */
public record Stated(String id, Amount amount, List<Doubt> doubt, String because, Source source) {
    /** What the numbers of a rulebook are called together in a budget. */
    public static final String GROUP = "rulebook number";

    /** Refuses more than one doubt and a doubt of another kind than the number; copies the list. */
    public Stated {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(amount, "amount");
        Checks.atMostOne(doubt.size(), "doubt");
        doubt = List.copyOf(doubt);
        for (Doubt one : doubt) {
            if (one.dimension() != amount.dimension()) {
                throw new IllegalArgumentException(
                        "doubt must be of the kind " + amount.dimension().label() + ", got "
                                + one.dimension().label());
            }
        }
        Objects.requireNonNull(because, "because");
        Objects.requireNonNull(source, "source");
    }

    /**
     * A number without name, doubt, reason and source of its own.
     *
     * @param amount the number
     * @return the number as stated
     */
    public static Stated of(Amount amount) {
        return new Stated("", amount, List.of(), "", Source.UNSTATED);
    }

    /**
     * The same number under a name of its own.
     *
     * @param name its name
     * @return the changed copy
     */
    public Stated withId(String name) {
        return new Stated(name, amount, doubt, because, source);
    }

    /**
     * The same number with a tolerance or uncertainty.
     *
     * @param own its doubt
     * @return the changed copy
     */
    public Stated withDoubt(Doubt own) {
        return new Stated(id, amount, List.of(own), because, source);
    }

    /**
     * The same number with its reason and source.
     *
     * @param why why it is that
     * @param from where it comes from
     * @return the changed copy
     */
    public Stated withBecause(String why, Source from) {
        return new Stated(id, amount, doubt, why, from);
    }

    /** {@return whether there is nothing but the number} */
    public boolean isBare() {
        return id.isEmpty() && doubt.isEmpty() && because.isEmpty() && !source.isStated();
    }

    /** {@return its standard uncertainty, in base units; 0 where it states no doubt} */
    public double standardUncertainty() {
        return doubt.isEmpty() ? 0 : doubt.get(0).standardUncertainty(amount.value());
    }

    /** How far it may be off: zero, with one influence of its own; exact where it has no doubt. */
    Uncertain deviation(String place) {
        double u = standardUncertainty();
        if (!(u > 0)) {
            return Outcome.NO_DEVIATION;
        }
        String name = GROUP + "/" + (id.isEmpty() ? place : id);
        return Uncertain.of(0, new Influence(name, doubt.get(0).shape(), u, Double.POSITIVE_INFINITY, ""));
    }
}
