package quoin.doclet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** The catalogue as Markdown: the same entries give the same bytes. */
final class CatalogueText {
    private static final Comparator<Entry> BY_SIGNATURE = Comparator.comparing(Entry::signature);

    private CatalogueText() {}

    static String of(List<Entry> entries) {
        StringBuilder out = new StringBuilder()
                .append("# Catalogue\n\n")
                .append("Written by the build from the Javadoc of the library; do not edit it by hand.\n")
                .append("The mark of a source says how well it is founded: ")
                .append(String.join(", ", Mark.names()))
                .append(".\n");
        named(out, "Figures", CatalogueTag.FIGURE, entries);
        named(out, "Checks", CatalogueTag.CHECK, entries);
        named(out, "Clauses", CatalogueTag.CLAUSE, entries);
        others(out, entries);
        return out.toString();
    }

    private record Named(String id, Entry entry) {}

    private static void named(StringBuilder out, String heading, CatalogueTag tag, List<Entry> entries) {
        List<Named> found = new ArrayList<>();
        for (Entry entry : entries) {
            entry.comment().texts(tag).forEach(id -> found.add(new Named(id, entry)));
        }
        found.sort(Comparator.comparing(Named::id).thenComparing(Named::entry, BY_SIGNATURE));
        out.append("\n## ").append(heading).append('\n');
        if (found.isEmpty()) {
            out.append("\nNone.\n");
        }
        found.forEach(one -> section(out, one.id(), one.entry()));
    }

    private static void others(StringBuilder out, List<Entry> entries) {
        out.append("\n## Other functions\n");
        entries.stream()
                .filter(entry -> !entry.comment().has(CatalogueTag.FIGURE)
                        && !entry.comment().has(CatalogueTag.CHECK)
                        && !entry.comment().has(CatalogueTag.CLAUSE))
                .sorted(BY_SIGNATURE)
                .forEach(entry -> section(out, shortName(entry), entry));
    }

    private static String shortName(Entry entry) {
        String owner = entry.element().getEnclosingElement().getSimpleName().toString();
        String name = entry.element().getSimpleName().toString();
        return entry.element().getKind().isClass() || entry.element().getKind().isInterface()
                ? name
                : owner + "." + name;
    }

    private static void section(StringBuilder out, String title, Entry entry) {
        out.append("\n### ").append(title).append("\n\n");
        if (!entry.comment().sentence().isEmpty()) {
            out.append(entry.comment().sentence()).append("\n\n");
        }
        out.append(PlainText.code(entry.signature())).append("\n\n");
        for (CatalogueTag tag : CatalogueTag.WANTED) {
            entry.comment().texts(tag).forEach(text -> line(out, tag, text));
        }
    }

    private static void line(StringBuilder out, CatalogueTag tag, String text) {
        out.append("- ").append(tag.heading());
        if (tag == CatalogueTag.SOURCE) {
            int colon = text.indexOf(':');
            String mark = text.substring(0, colon).toLowerCase(Locale.ROOT);
            out.append(" (")
                    .append(mark)
                    .append("): ")
                    .append(text.substring(colon + 1).strip());
        } else {
            out.append(": ").append(text);
        }
        out.append('\n');
    }
}
