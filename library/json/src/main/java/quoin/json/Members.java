package quoin.json;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Set;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/**
 * The fields of an object, in the order of the text. A few are looked through one by one, which takes less than a hash table;
 * more are found by one. Filled while it is read, then left alone.
 */
final class Members extends AbstractMap<String, Node.Field> {
    private static final int FEW = 12;

    private String[] names = new String[4];
    private Node.Field[] fields = new Node.Field[4];
    private int size;
    private @Nullable Map<String, Integer> places;

    /** Adds a field, if there is none of that name; whether it was added. */
    boolean add(String name, Node.Field field) {
        if (place(name) >= 0) {
            return false;
        }
        if (size == names.length) {
            names = Arrays.copyOf(names, 2 * size);
            fields = Arrays.copyOf(fields, 2 * size);
        }
        names[size] = name;
        fields[size++] = field;
        if (places != null) {
            places.put(name, size - 1);
        } else if (size > FEW) {
            places = new HashMap<>();
            for (int i = 0; i < size; i++) {
                places.put(names[i], i);
            }
        }
        return true;
    }

    private int place(@Nullable Object name) {
        if (places != null) {
            Integer place = places.get(name);
            return place == null ? -1 : place;
        }
        for (int i = 0; i < size; i++) {
            if (names[i].equals(name)) {
                return i;
            }
        }
        return -1;
    }

    @Override
    public Node.@Nullable Field get(@Nullable Object name) {
        int place = place(name);
        return place < 0 ? null : fields[place];
    }

    @Override
    public boolean containsKey(@Nullable Object name) {
        return place(name) >= 0;
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public void forEach(BiConsumer<? super String, ? super Node.Field> action) {
        for (int i = 0; i < size; i++) {
            action.accept(names[i], fields[i]);
        }
    }

    @Override
    public Set<Entry<String, Node.Field>> entrySet() {
        return new Entries();
    }

    private final class Entries extends AbstractSet<Entry<String, Node.Field>> {
        @Override
        public int size() {
            return size;
        }

        @Override
        public Iterator<Entry<String, Node.Field>> iterator() {
            return new Iterator<>() {
                private int next;

                @Override
                public boolean hasNext() {
                    return next < size;
                }

                @Override
                public Entry<String, Node.Field> next() {
                    if (next >= size) {
                        throw new NoSuchElementException();
                    }
                    return Map.entry(names[next], fields[next++]);
                }
            };
        }
    }
}
