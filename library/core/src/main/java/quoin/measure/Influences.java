package quoin.measure;

import java.util.ArrayList;
import java.util.List;

/**
 * An ordered set of distinct influences, the basis of the contributions of an {@link Uncertain}.
 *
 * <p>Immutable. Two numbers on the same instance combine fastest.
 */
public final class Influences {
    /** No influence at all: the basis of exact numbers. */
    public static final Influences NONE = new Influences(List.of());

    private final List<Influence> list;
    private final double[] uncertainties;
    private final int block;
    /** Open addressing by the hash of the id: position + 1, or 0 where free. */
    private final int[] slots;

    private Influences(List<Influence> list) {
        this.list = list;
        this.uncertainties = new double[list.size()];
        this.block = Packed.width(list.size());
        int capacity = Integer.highestOneBit(StrictMath.max(1, list.size()) * 2 - 1) * 2;
        this.slots = new int[capacity];
        for (int i = 0; i < list.size(); i++) {
            slots[freeSlot(list.get(i))] = i + 1;
            uncertainties[i] = list.get(i).standardUncertainty();
        }
    }

    /**
     * A basis of these influences, in their order.
     *
     * @param influences the influences, no id twice
     * @return the basis
     * @throws IllegalArgumentException if an id stands twice
     */
    public static Influences of(List<Influence> influences) {
        return influences.isEmpty() ? NONE : new Influences(List.copyOf(influences));
    }

    /**
     * How many influences there are.
     *
     * @return the number
     */
    public int size() {
        return list.size();
    }

    /**
     * The influence at a position.
     *
     * @param i the position, from 0
     * @return the influence
     */
    public Influence get(int i) {
        return list.get(i);
    }

    /**
     * Where an influence stands.
     *
     * @param influence the influence looked for
     * @return its position, or −1 if the basis has none of that id
     * @throws IllegalArgumentException if the basis has one of the same id and other content
     */
    public int indexOf(Influence influence) {
        String id = influence.id();
        int mask = slots.length - 1;
        for (int slot = start(id, mask); slots[slot] != 0; slot = (slot + 1) & mask) {
            Influence there = list.get(slots[slot] - 1);
            if (there.id().equals(id)) {
                requireSame(there, influence);
                return slots[slot] - 1;
            }
        }
        return -1;
    }

    /**
     * The influences in order.
     *
     * @return an immutable list
     */
    public List<Influence> asList() {
        return list;
    }

    /**
     * The influences of both: this order first, then what the other has beyond.
     *
     * @param other the other basis
     * @return this very instance if the other has nothing beyond it, the other if this is the front part of it
     * @throws IllegalArgumentException if the same id stands for different influences
     */
    public Influences union(Influences other) {
        if (isSame(this, other) || other.size() == 0) {
            return this;
        }
        if (size() == 0) {
            return other;
        }
        List<Influence> beyond = new ArrayList<>();
        boolean front = size() <= other.size();
        for (int i = 0; i < other.size(); i++) {
            Influence influence = other.list.get(i);
            int at = indexOf(influence, i);
            if (at < 0) {
                beyond.add(influence);
            }
            front &= i >= size() || at == i;
        }
        if (beyond.isEmpty()) {
            return this;
        }
        if (front) {
            return other;
        }
        List<Influence> all = new ArrayList<>(list);
        all.addAll(beyond);
        return new Influences(List.copyOf(all));
    }

    /** The same where the influence most likely stands at a known position: mostly it does, which spares a look-up. */
    int indexOf(Influence influence, int likely) {
        return likely < list.size() && isSame(list.get(likely), influence) ? likely : indexOf(influence);
    }

    /** How many neighbours make a block of {@link Packed}. */
    int block() {
        return block;
    }

    double uncertainty(int i) {
        return uncertainties[i];
    }

    /** Sensitivity · u, influence by influence. */
    double[] times(double[] sensitivities) {
        double[] r = new double[uncertainties.length];
        for (int i = 0; i < r.length; i++) {
            r[i] = sensitivities[i] * uncertainties[i];
        }
        return r;
    }

    @Override
    public boolean equals(Object other) {
        return this == other || (other instanceof Influences that && list.equals(that.list));
    }

    @Override
    public int hashCode() {
        return list.hashCode();
    }

    @Override
    public String toString() {
        return list.toString();
    }

    private int freeSlot(Influence influence) {
        int mask = slots.length - 1;
        int slot = start(influence.id(), mask);
        while (slots[slot] != 0) {
            if (list.get(slots[slot] - 1).id().equals(influence.id())) {
                throw new IllegalArgumentException("influences must be distinct, got " + influence.id() + " twice");
            }
            slot = (slot + 1) & mask;
        }
        return slot;
    }

    private static int start(String id, int mask) {
        int hash = id.hashCode();
        return (hash ^ (hash >>> 16)) & mask;
    }

    /** The same instance. */
    @SuppressWarnings("ReferenceEquality")
    private static boolean isSame(Object one, Object other) {
        return one == other;
    }

    private static void requireSame(Influence one, Influence other) {
        if (!one.equals(other)) {
            throw new IllegalArgumentException(
                    "influences of the same id must be the same, got " + one + " and " + other);
        }
    }
}
