package quoin.rulebook;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import quoin.rulebook.Comparison.Change;

/** What two rulebooks state differently, clause by clause and field by field. */
final class Changes {
    private static final List<String> CLAUSES = List.of("size", "bound", "table");

    private final List<Change> changes = new ArrayList<>();
    private final Deque<Pair> rest = new ArrayDeque<>();

    private Changes() {}

    /** Two groups that stand for the same thing, and where they stand. */
    private record Pair(String part, String clause, String path, TextTree old, TextTree now) {}

    static List<Change> of(Rulebook old, Rulebook now) {
        Changes all = new Changes();
        TextTree before = TextTree.of(old.canonicalText());
        TextTree after = TextTree.of(now.canonicalText());
        all.rest.add(new Pair("rulebook", "", "", withoutClauses(before), withoutClauses(after)));
        for (String part : CLAUSES) {
            all.clauses(part, byId(before.all(part)), byId(after.all(part)));
        }
        while (!all.rest.isEmpty()) {
            all.fields(all.rest.removeFirst());
        }
        all.changes.sort(Comparator.<Change>comparingInt(change -> 1 + CLAUSES.indexOf(change.part())));
        return List.copyOf(all.changes);
    }

    private static TextTree withoutClauses(TextTree document) {
        return new TextTree(
                "",
                "",
                document.fields().stream()
                        .filter(field ->
                                !CLAUSES.contains(field.name()) && !field.name().equals("version"))
                        .toList());
    }

    private static Map<String, TextTree> byId(List<TextTree> clauses) {
        Map<String, TextTree> map = new TreeMap<>();
        clauses.forEach(clause -> map.put(clause.id().orElse(""), clause));
        return map;
    }

    private void clauses(String part, Map<String, TextTree> old, Map<String, TextTree> now) {
        Set<String> ids = new LinkedHashSet<>(old.keySet());
        ids.addAll(now.keySet());
        ids.stream().sorted().forEach(id -> {
            TextTree before = old.get(id);
            TextTree after = now.get(id);
            if (before != null && after != null) {
                rest.add(new Pair(part, id, "", before, after));
            } else if (before != null) {
                changes.add(new Change(Change.Kind.REMOVED, part, id, "", before.said(), ""));
            } else if (after != null) {
                changes.add(new Change(Change.Kind.ADDED, part, id, "", "", after.said()));
            }
        });
    }

    private void fields(Pair pair) {
        Set<String> names = new LinkedHashSet<>();
        pair.old().fields().forEach(field -> names.add(field.name()));
        pair.now().fields().forEach(field -> names.add(field.name()));
        for (String name : names) {
            fields(pair, name);
        }
    }

    /** Fields of one name: the same ones first, then those with the same id, then the others in their order. */
    private void fields(Pair pair, String name) {
        List<TextTree> all = pair.now().all(name);
        List<TextTree> old = new ArrayList<>(pair.old().all(name));
        List<TextTree> now = new ArrayList<>(all);
        boolean many = old.size() > 1 || now.size() > 1;
        for (TextTree same : pair.old().all(name)) {
            if (now.remove(same)) {
                old.remove(same);
            }
        }
        Map<String, TextTree> named = new LinkedHashMap<>();
        now.forEach(field -> field.id().ifPresent(id -> named.put(id, field)));
        for (TextTree before : List.copyOf(old)) {
            TextTree after = before.id().map(named::get).orElse(null);
            if (after != null) {
                old.remove(before);
                now.remove(after);
                pair(pair, path(pair, name, before.id().orElse("")), before, after);
            }
        }
        while (!old.isEmpty() || !now.isEmpty()) {
            TextTree before = old.isEmpty() ? null : old.remove(0);
            TextTree after = now.isEmpty() ? null : now.remove(0);
            String number = after == null
                    ? String.valueOf(1 + pair.old().all(name).indexOf(before))
                    : String.valueOf(1 + all.indexOf(after));
            String id = (after == null ? Optional.ofNullable(before) : Optional.of(after))
                    .flatMap(TextTree::id)
                    .orElse(number);
            String place = many ? id : "";
            one(pair, path(pair, name, place), before, after);
        }
    }

    private void one(Pair pair, String path, @Nullable TextTree before, @Nullable TextTree after) {
        if (before != null && after != null) {
            pair(pair, path, before, after);
        } else if (before != null) {
            changes.add(new Change(Change.Kind.REMOVED, pair.part(), pair.clause(), path, before.said(), ""));
        } else if (after != null) {
            changes.add(new Change(Change.Kind.ADDED, pair.part(), pair.clause(), path, "", after.said()));
        }
    }

    private void pair(Pair pair, String path, TextTree before, TextTree after) {
        if (before.isGroup() && after.isGroup()) {
            rest.add(new Pair(pair.part(), pair.clause(), path, before, after));
        } else {
            changes.add(new Change(Change.Kind.CHANGED, pair.part(), pair.clause(), path, before.said(), after.said()));
        }
    }

    private static String path(Pair pair, String name, String place) {
        String field = place.isEmpty() ? name : name + "/" + place;
        return pair.path().isEmpty() ? field : pair.path() + "/" + field;
    }
}
