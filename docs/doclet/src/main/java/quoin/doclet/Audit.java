package quoin.doclet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Finds what is wrong with the entries of the catalogue. */
final class Audit {
    private Audit() {}

    static List<Fault> of(List<Entry> entries) {
        List<Fault> faults = new ArrayList<>();
        for (Entry entry : entries) {
            faults.addAll(missing(entry));
            faults.addAll(marks(entry));
        }
        faults.addAll(twice(entries, CatalogueTag.FIGURE));
        return faults;
    }

    private static List<Fault> missing(Entry entry) {
        List<Fault> faults = new ArrayList<>();
        for (CatalogueTag tag : CatalogueTag.values()) {
            boolean wanted =
                    CatalogueTag.WANTED.contains(tag) || entry.comment().has(tag);
            if (wanted && !entry.comment().says(tag)) {
                faults.add(Fault.missing(entry.element(), tag));
            }
        }
        return faults;
    }

    private static List<Fault> marks(Entry entry) {
        return entry.comment().texts(CatalogueTag.SOURCE).stream()
                .filter(text -> !text.isBlank() && !Mark.leads(text))
                .map(text -> new Fault(
                        entry.element(), "@source has no known mark or no text: " + text, CatalogueTag.SOURCE.right()))
                .toList();
    }

    private static List<Fault> twice(List<Entry> entries, CatalogueTag tag) {
        Map<String, Entry> first = new LinkedHashMap<>();
        List<Fault> faults = new ArrayList<>();
        for (Entry entry : entries) {
            for (String id : entry.comment().texts(tag)) {
                Entry other = first.putIfAbsent(id, entry);
                if (other != null) {
                    faults.add(new Fault(
                            entry.element(),
                            "@" + tag.tag() + " " + id + " is used twice, also by " + other.signature(),
                            "one function for each " + tag.tag()));
                }
            }
        }
        return faults;
    }
}
