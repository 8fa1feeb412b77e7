package quoin.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.DoublePredicate;
import java.util.function.Function;
import java.util.function.Supplier;
import quoin.judge.Args;
import quoin.judge.Problem;
import quoin.measure.Amount;
import quoin.measure.AmountText;
import quoin.measure.Dimension;
import quoin.measure.UnitTable;

/**
 * Takes the fields of one object, one after the other, and reports each that is wrong; {@link #end()} reports those that
 * nobody took. Not safe for use by many threads.
 */
final class Fields {
    private static final int LONGEST_ID = 64;
    private static final int EXPECTED = 16;
    private static final double LARGEST_WHOLE = 1e15;

    private final Node node;
    private final Report report;
    private final List<String> taken = new ArrayList<>(EXPECTED);
    private String units;

    /** The fields of a document, in which a bare number is no quantity. */
    Fields(Node node, Report report) {
        this(node, report, "");
    }

    private Fields(Node node, Report report, String units) {
        this.node = node;
        this.report = report;
        this.units = units;
        if (node.kind() != Node.Kind.OBJECT) {
            report.error("wrong-type", node, node.shown(), "an object");
        }
    }

    /** From here on, and in every object within, a bare number is a length in these units. */
    void bareNumbersIn(String unit) {
        units = unit;
    }

    Node node() {
        return node;
    }

    Report report() {
        return report;
    }

    /** Reports every field that was not asked for, with the nearest name that is known. */
    void end() {
        node.fields().forEach((name, field) -> {
            if (!taken.contains(name) && !report.isFull()) {
                report.add(Problem.error(
                                "unknown-field",
                                node.pointerTo(name),
                                Args.of("field", name)
                                        .with("got", name)
                                        .with("right", String.join(", ", nearest(name))))
                        .at(field.line(), field.column()));
            }
        });
    }

    private List<String> nearest(String name) {
        List<String> close = new ArrayList<>();
        Set<String> sorted = new TreeSet<>(taken);
        for (String known : sorted) {
            int most = Math.max(1, (name.length() + 1) / 3);
            if (Math.abs(known.length() - name.length()) <= most && distance(known, name) <= most) {
                close.add(known);
            }
        }
        return close.isEmpty() ? List.copyOf(sorted) : close;
    }

    /** Levenshtein's distance. */
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int next = Math.min(
                        Math.min(row[j], row[j - 1]) + 1, diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1));
                diagonal = row[j];
                row[j] = next;
            }
        }
        return row[b.length()];
    }

    Optional<Node> find(String name) {
        taken.add(name);
        Node.Field field = node.fields().get(name);
        return field == null ? Optional.empty() : Optional.of(field.value());
    }

    Optional<Node> require(String name, String right) {
        Optional<Node> found = find(name);
        if (found.isEmpty() && node.kind() == Node.Kind.OBJECT) {
            report.add(Problem.error(
                            "missing-field",
                            node.pointerTo(name),
                            Args.of("field", name).with("right", right))
                    .at(node.line(), node.column()));
        }
        return found;
    }

    private boolean is(Node value, Node.Kind kind, String right) {
        if (value.kind() != kind) {
            report.error("wrong-type", value, value.shown(), right);
            return false;
        }
        if (isHalved(value.text())) {
            report.error("not-json", value, "half of a surrogate pair", "whole characters");
            return false;
        }
        return true;
    }

    private static boolean isHalved(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (Raw.isAlone(text, i)) {
                return true;
            }
        }
        return false;
    }

    /** A text, or what stands for a missing one. */
    String text(String name, String otherwise) {
        return find(name).map(value -> text(value, otherwise)).orElse(otherwise);
    }

    String text(Node value, String otherwise) {
        return is(value, Node.Kind.TEXT, "a text") ? value.text() : otherwise;
    }

    /** A text that must be there and say something; empty where it does not. */
    String words(String name, String right) {
        return require(name, right).map(value -> words(value, right)).orElse("");
    }

    String words(Node value, String right) {
        String words = text(value, "");
        if (value.kind() == Node.Kind.TEXT && value.text().isBlank()) {
            report.error("unknown-value", value, value.shown(), right);
            return "";
        }
        return words;
    }

    void format(String format) {
        require("format", format).ifPresent(value -> {
            if (is(value, Node.Kind.TEXT, format) && !value.text().equals(format)) {
                report.error("wrong-format", value, value.text(), format);
            }
        });
    }

    String id(String name) {
        return require(name, "an id such as reading-room-2").map(this::id).orElse("");
    }

    String optionalId(String name) {
        return find(name).map(this::id).orElse("");
    }

    private String id(Node value) {
        return is(value, Node.Kind.TEXT, "an id") ? id(value.text(), value) : "";
    }

    /** An id, wherever it stands. */
    String id(String text, Node place) {
        boolean ok = !text.isEmpty() && text.length() <= LONGEST_ID && isFirst(text.charAt(0));
        for (int i = 1; i < text.length() && ok; i++) {
            char c = text.charAt(i);
            ok = isFirst(c) || c == '.' || c == '-';
        }
        if (!ok) {
            report.error(
                    "bad-id",
                    place,
                    Node.shortened(text),
                    "a small letter or digit, then small letters, digits, points, dashes (64 at most)");
            return "";
        }
        return text;
    }

    private static boolean isFirst(char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    }

    boolean flag(String name) {
        return find(name)
                .map(value -> {
                    boolean known = value.kind() == Node.Kind.TRUE || value.kind() == Node.Kind.FALSE;
                    if (!known) {
                        report.error("wrong-type", value, value.shown(), "true or false");
                    }
                    return value.kind() == Node.Kind.TRUE;
                })
                .orElse(false);
    }

    /** One of a closed list of texts. */
    String oneOf(String name, List<String> allowed, String otherwise) {
        return find(name).map(value -> oneOf(value, allowed, otherwise)).orElse(otherwise);
    }

    String oneOf(Node value, List<String> allowed, String otherwise) {
        if (value.kind() == Node.Kind.TEXT && allowed.contains(value.text())) {
            return value.text();
        }
        if (is(value, Node.Kind.TEXT, String.join(", ", allowed))) {
            report.error("unknown-value", value, value.text(), String.join(", ", allowed));
        }
        return otherwise;
    }

    /** A plain number within limits; NaN where it is missing or wrong. */
    double number(String name, double least, double most) {
        return find(name).map(value -> number(value, least, most)).orElse(Double.NaN);
    }

    double number(Node value, double least, double most) {
        return number(value, n -> n >= least && n <= most, plain(least) + " to " + plain(most));
    }

    /** A plain number that passes a check; NaN where it does not. */
    double number(Node value, DoublePredicate check, String right) {
        if (!is(value, Node.Kind.NUMBER, "a number")) {
            return Double.NaN;
        }
        double number = Double.parseDouble(value.text());
        if (!check.test(number)) {
            report.error("out-of-range", value, value.text(), right);
            return Double.NaN;
        }
        return number + 0.0;
    }

    static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < LARGEST_WHOLE
                ? Long.toString((long) value)
                : Double.toString(value);
    }

    /** A text with a unit of that kind; or, in a job, a bare number for a length. */
    Optional<Amount> amount(String name, Dimension dimension) {
        return find(name).flatMap(value -> amount(value, dimension));
    }

    Optional<Amount> amount(Node value, Dimension dimension) {
        return amount(value, dimension, Range.any(dimension));
    }

    /** A quantity within a range. */
    Optional<Amount> amount(String name, Dimension dimension, Range range) {
        return find(name).flatMap(value -> amount(value, dimension, range));
    }

    Optional<Amount> amount(Node value, Dimension dimension, Range range) {
        if (value.kind() == Node.Kind.NUMBER) {
            return bare(value, dimension).flatMap(amount -> within(value, amount, range));
        }
        if (!is(value, Node.Kind.TEXT, "a text with a unit, such as \"" + sample(dimension) + "\"")) {
            return Optional.empty();
        }
        Optional<Amount> amount = parsed(value, dimension);
        if (amount.isPresent() && amount.get().dimension() != dimension) {
            report.error("wrong-dimension", value, value.text(), sample(dimension));
            return Optional.empty();
        }
        return amount.flatMap(a -> within(value, a, range));
    }

    /** A quantity of any kind; its unit says which. A bare number in a job is a length. */
    Optional<Amount> anyAmount(Node value, Dimension likely) {
        boolean text = value.kind() == Node.Kind.TEXT;
        Optional<Amount> amount = text ? parsed(value, likely) : amount(value, likely);
        return amount.flatMap(a -> within(value, a, Range.any(a.dimension())));
    }

    private Optional<Amount> within(Node value, Amount amount, Range range) {
        if (!range.has(amount)) {
            report.error("out-of-range", value, value.shown(), range.words(amount.dimension()));
            return Optional.empty();
        }
        return Optional.of(amount);
    }

    private Optional<Amount> bare(Node value, Dimension dimension) {
        if (dimension != Dimension.LENGTH || units.isEmpty()) {
            report.error("missing-unit", value, value.text(), "\"" + value.text() + " " + unitOf(dimension) + "\"");
            return Optional.empty();
        }
        try {
            return Optional.of(AmountText.parse(value.text() + " " + units));
        } catch (IllegalArgumentException e) {
            report.error(
                    "out-of-range", value, value.shown(), Range.any(dimension).words(dimension));
            return Optional.empty();
        }
    }

    private Optional<Amount> parsed(Node value, Dimension likely) {
        try {
            return is(value, Node.Kind.TEXT, sample(likely))
                    ? Optional.of(AmountText.parse(value.text()))
                    : Optional.empty();
        } catch (IllegalArgumentException e) {
            String unit = unitIn(value.text());
            boolean number = isNumberFirst(value.text());
            if (number && unit.isEmpty() && isAmount(value.text().strip() + " " + unitOf(likely))) {
                String right = "\"" + value.text().strip() + " " + unitOf(likely) + "\"";
                report.error("missing-unit", value, value.shown(), right);
            } else if (number && !unit.isEmpty() && UnitTable.find(unit).isEmpty()) {
                report.error("wrong-unit", value, value.shown(), units(likely));
            } else {
                report.error("not-a-number", value, value.shown(), "\"" + sample(likely) + "\"");
            }
            return Optional.empty();
        }
    }

    private static boolean isAmount(String text) {
        try {
            return Double.isFinite(AmountText.parse(text).value());
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    /** What follows the number in a text. */
    private static String unitIn(String text) {
        int at = 0;
        while (at < text.length() && isOfNumber(text, at)) {
            at++;
        }
        return text.substring(at).strip();
    }

    private static boolean isOfNumber(String text, int at) {
        char c = text.charAt(at);
        boolean more = at + 1 < text.length();
        if (c == '/') {
            return more && isDigit(text.charAt(at + 1));
        }
        if (c == 'e' || c == 'E') {
            return more && (isDigit(text.charAt(at + 1)) || text.charAt(at + 1) == '-' || text.charAt(at + 1) == '+');
        }
        return isDigit(c) || " +-.,'\"".indexOf(c) >= 0;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    static boolean isNumberFirst(String text) {
        String number = text.strip();
        return !number.isEmpty() && (isDigit(number.charAt(0)) || "+-.".indexOf(number.charAt(0)) >= 0);
    }

    /** The unit that a document writes for a dimension. */
    static String unitOf(Dimension dimension) {
        return dimension == Dimension.RATIO ? "%" : dimension.answerUnit();
    }

    /** Every unit of a dimension. */
    private static String units(Dimension dimension) {
        List<String> texts = new ArrayList<>();
        for (UnitTable.Entry entry : UnitTable.all()) {
            if (entry.dimension() == dimension) {
                texts.add(entry.text());
            }
        }
        return texts.isEmpty() ? unitOf(dimension) : String.join(", ", texts);
    }

    static String sample(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> "1503 mm";
            case ANGLE -> "12 deg";
            case RATIO -> "5 %";
            default -> "20 " + dimension.answerUnit();
        };
    }

    /** The items of a list; none where it is missing. */
    List<Node> list(String name) {
        return find(name).map(value -> list(value, "a list")).orElse(List.of());
    }

    List<Node> list(Node value, String right) {
        return is(value, Node.Kind.ARRAY, right) ? value.items() : List.of();
    }

    /** Each item of a list of objects. */
    <T> List<T> each(String name, Function<Fields, Optional<T>> reader) {
        List<T> all = new ArrayList<>();
        for (Node item : list(name)) {
            object(item, reader).ifPresent(all::add);
        }
        return all;
    }

    /** Each item of a list of objects, in its place: one that cannot be read has a stand-in. */
    <T> List<T> each(String name, Function<Fields, Optional<T>> reader, Function<Node, T> standIn) {
        List<T> all = new ArrayList<>();
        for (Node item : list(name)) {
            all.add(object(item, reader).orElseGet(() -> standIn.apply(item)));
        }
        return all;
    }

    /** Each field of an object of objects, by id. */
    <T> Map<String, T> named(String name, BiFunction<String, Fields, Optional<T>> reader) {
        Map<String, T> all = new LinkedHashMap<>();
        find(name).ifPresent(value -> {
            if (is(value, Node.Kind.OBJECT, "an object")) {
                value.fields().forEach((key, field) -> {
                    String id = id(key, value.key(key));
                    object(field.value(), fields -> reader.apply(id, fields))
                            .filter(item -> !id.isEmpty())
                            .ifPresent(item -> all.put(key, item));
                });
            }
        });
        return all;
    }

    <T> Optional<T> object(String name, Function<Fields, Optional<T>> reader) {
        return find(name).flatMap(value -> object(value, reader));
    }

    <T> Optional<T> object(Node value, Function<Fields, Optional<T>> reader) {
        Fields fields = new Fields(value, report, units);
        if (value.kind() != Node.Kind.OBJECT) {
            return Optional.empty();
        }
        Optional<T> result = reader.apply(fields);
        fields.end();
        return result;
    }

    /** Builds a value; what its type refuses is a problem of this object. */
    <T> Optional<T> build(Supplier<T> maker) {
        try {
            return Optional.of(maker.get());
        } catch (IllegalArgumentException e) {
            report.error("out-of-range", node, String.valueOf(e.getMessage()), "a value within the bounds named");
            return Optional.empty();
        }
    }
}
