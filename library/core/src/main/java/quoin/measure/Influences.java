package quoin.measure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The influences that a set of values rests on, in a fixed order, each once. Immutable and safe for use by many threads.
 */
public final class Influences {
    /** No influence. */
    public static final Influences NONE = new Influences(new Influence[0]);

    private final Influence[] all;

    private Influences(Influence[] all) {
        this.all = all;
    }

    /**
     * A list of influences.
     *
     * @param influences the influences
     * @return the list, each once
     * @throws IllegalArgumentException if one name stands for two different influences
     */
    public static Influences of(List<Influence> influences) {
        List<Influence> distinct = new ArrayList<>();
        Map<String, Influence> known = new HashMap<>();
        for (Influence influence : influences) {
            if (isNew(known, influence)) {
                distinct.add(influence);
            }
        }
        return new Influences(distinct.toArray(new Influence[0]));
    }

    static Influences single(Influence influence) {
        return new Influences(new Influence[] {influence});
    }

    private static boolean isNew(Map<String, Influence> known, Influence influence) {
        Influence earlier = known.putIfAbsent(influence.id(), influence);
        if (earlier != null && !earlier.equals(influence)) {
            throw new IllegalArgumentException("influence " + influence.id() + " must mean one thing, got " + earlier
                    + " and " + influence);
        }
        return earlier == null;
    }

    /** {@return how many there are} */
    public int size() {
        return all.length;
    }

    /**
     * One of them.
     *
     * @param index its index
     * @return the influence
     */
    public Influence get(int index) {
        return all[index];
    }

    /**
     * Where an influence stands.
     *
     * @param influence the influence
     * @return its index, or -1
     */
    public int indexOf(Influence influence) {
        for (int i = 0; i < all.length; i++) {
            if (all[i] == influence || all[i].equals(influence)) {
                return i;
            }
        }
        return -1;
    }

    /** {@return all of them, in order} */
    public List<Influence> asList() {
        return List.of(all);
    }

    /**
     * These and the others, these first; this very list where the others are all in it at the front.
     *
     * @param other the other influences
     * @return the joint list
     * @throws IllegalArgumentException if one name stands for two different influences
     */
    public Influences union(Influences other) {
        if (other == this || startsWith(other)) {
            return this;
        }
        if (other.startsWith(this)) {
            return other;
        }
        Map<String, Influence> known = new HashMap<>();
        for (Influence influence : all) {
            known.put(influence.id(), influence);
        }
        List<Influence> joint = new ArrayList<>(List.of(all));
        for (Influence influence : other.all) {
            if (isNew(known, influence)) {
                joint.add(influence);
            }
        }
        return joint.size() == all.length ? this : new Influences(joint.toArray(new Influence[0]));
    }

    private boolean startsWith(Influences other) {
        if (other.all.length > all.length) {
            return false;
        }
        for (int i = 0; i < other.all.length; i++) {
            if (all[i] != other.all[i] && !all[i].equals(other.all[i])) {
                return false;
            }
        }
        return true;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Influences that && that.all.length == all.length && startsWith(that);
    }

    @Override
    public int hashCode() {
        return asList().hashCode();
    }

    @Override
    public String toString() {
        return asList().stream().map(Influence::id).toList().toString();
    }
}
