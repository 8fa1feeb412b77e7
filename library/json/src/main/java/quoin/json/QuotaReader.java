package quoin.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.parts.Parts;
import quoin.rulebook.Item;
import quoin.rulebook.Quota;
import quoin.rulebook.Stated;
import quoin.rulebook.Table;

/** Reads what a rule states: a number, bands, a named table, amounts by choice. Not safe for use by many threads. */
final class QuotaReader {
    static final String SOME_AMOUNT = "a text with a unit, such as \"3 mm\"";

    private final Map<String, Table> tables = new LinkedHashMap<>();

    /** The named tables of a document, which clauses may then name. */
    List<Table> tables(Fields in) {
        List<Table> all = in.each(
                "tables",
                this::table,
                node -> new Table("unreadable" + node.pointer(), "", List.of(), "", Source.PRACTICE));
        all.forEach(table -> tables.putIfAbsent(table.id(), table));
        return all;
    }

    private Optional<Table> table(Fields in) {
        String id = in.id("id");
        String title = in.text("title", "");
        List<Quota.Band> bands = bandList(in);
        String because = in.text("because", "");
        Source source = Common.source(in);
        return id.isEmpty() ? Optional.empty() : in.build(() -> new Table(id, title, bands, because, source));
    }

    Optional<Item> item(Fields in) {
        Optional<Quota> quota = quota(in);
        double times = in.find("times").isPresent() ? in.number("times", 0, 1000) : 1;
        String because = in.text("because", "");
        Source source = Common.source(in);
        return quota.isEmpty() || Double.isNaN(times)
                ? Optional.empty()
                : in.build(() -> new Item(quota.get(), times, because, source));
    }

    /** A limit: a number, or an object with a number, bands, a table or amounts by choice; one or none. */
    List<Quota> limit(Fields in, String name) {
        Optional<Quota> quota = in.find(name).flatMap(value -> limit(in, value));
        return quota.map(List::of).orElse(List.of());
    }

    private Optional<Quota> limit(Fields in, Node value) {
        return value.kind() == Node.Kind.OBJECT && !value.fields().containsKey("value")
                ? in.object(value, this::quota)
                : number(in, value).map(Quota.Fixed::new);
    }

    /** An amount, bands, a named table, or amounts by choice, as fields of an object. */
    Optional<Quota> quota(Fields in) {
        boolean fixed = in.find("amount").isPresent();
        boolean banded = in.find("bands").isPresent();
        boolean named = in.find("table").isPresent();
        boolean chosen = in.find("choice").isPresent();
        if ((fixed ? 1 : 0) + (banded ? 1 : 0) + (named ? 1 : 0) + (chosen ? 1 : 0) != 1) {
            in.report()
                    .error(
                            "missing-field",
                            in.node(),
                            "these fields",
                            "one of amount, bands, table with by, or choice with amounts");
            in.find("amounts");
            in.find("by");
            return Optional.empty();
        }
        if (fixed) {
            return in.find("amount").flatMap(v -> number(in, v)).map(Quota.Fixed::new);
        }
        return banded ? in.object("bands", QuotaReader::bands) : named ? byTable(in) : byChoice(in);
    }

    /** A text with a unit, or an object with value and what it rests on. */
    private static Optional<Stated> number(Fields in, Node value) {
        return value.kind() == Node.Kind.OBJECT
                ? in.object(value, QuotaReader::stated)
                : any(in, value).map(Stated::of);
    }

    private static Optional<Stated> stated(Fields in) {
        Optional<Amount> amount = in.require("value", SOME_AMOUNT).flatMap(v -> any(in, v));
        String id = in.optionalId("id");
        Dimension dimension = amount.map(Amount::dimension).orElse(Dimension.LENGTH);
        boolean doubtful = in.find("u").isPresent()
                || in.find("limits").isPresent()
                || in.find("U").isPresent()
                || in.find("k").isPresent()
                || in.find("grows").isPresent();
        Optional<Doubt> doubt = doubtful ? Common.doubt(in, dimension) : Optional.empty();
        String because = in.text("because", "");
        Source source = Common.source(in);
        return amount.flatMap(a ->
                in.build(() -> new Stated(id, a, doubt.map(List::of).orElse(List.of()), because, source)));
    }

    static Optional<Amount> any(Fields in, Node value) {
        return in.anyAmount(value, Dimension.LENGTH);
    }

    private static Optional<Quota> bands(Fields in) {
        String by = in.words("by", "a figure or a size");
        List<Quota.Band> bands = bandList(in);
        return by.isEmpty() ? Optional.empty() : in.build(() -> new Quota.Banded(by, bands));
    }

    private static List<Quota.Band> bandList(Fields in) {
        in.require("amounts", "a list of { \"upTo\": …, \"amount\": … }");
        return in.each("amounts", inner -> {
            Optional<Amount> upTo = inner.require("upTo", SOME_AMOUNT).flatMap(v -> any(inner, v));
            Optional<Stated> amount = inner.require("amount", SOME_AMOUNT).flatMap(v -> number(inner, v));
            return upTo.isEmpty() || amount.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Quota.Band(upTo.get(), amount.get()));
        });
    }

    private Optional<Quota> byTable(Fields in) {
        String by = in.words("by", "a figure or a size");
        return in.find("table").flatMap(value -> {
            String known = tables.isEmpty() ? "a table of this rulebook" : String.join(", ", tables.keySet());
            String id = in.words(value, known);
            Table table = tables.get(id);
            if (table == null) {
                if (!id.isEmpty()) {
                    in.report().error("unknown-value", value, value.shown(), known);
                }
                return Optional.empty();
            }
            return by.isEmpty() ? Optional.empty() : Optional.of(table.by(by));
        });
    }

    private static Optional<Quota> byChoice(Fields in) {
        String choice = in.words("choice", String.join(", ", Parts.CHOICES));
        Map<String, Stated> amounts = new LinkedHashMap<>();
        in.require("amounts", "an object of amounts by part").ifPresent(value -> {
            if (value.kind() == Node.Kind.OBJECT) {
                value.fields().forEach((part, field) -> {
                    String id = in.id(part, value.key(part));
                    number(in, field.value()).ifPresent(amount -> amounts.put(id, amount));
                });
            } else {
                in.report().error("wrong-type", value, value.shown(), "an object of amounts by part");
            }
        });
        return choice.isEmpty() ? Optional.empty() : in.build(() -> new Quota.ByChoice(choice, amounts));
    }
}
