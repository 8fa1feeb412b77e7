package quoin.rulebook;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import quoin.measure.Amount;
import quoin.measure.Dimension;

/**
 * A canonical text as a tree of fields. What the digest sees, a comparison of fields sees.
 *
 * @param name the name of the field
 * @param value the value as the text has it; empty for a group
 * @param fields the fields of a group
 */
record TextTree(String name, String value, List<TextTree> fields) {
    /** The fields of a whole document. */
    static TextTree of(String canonical) {
        Deque<TextTree> open = new ArrayDeque<>();
        TextTree root = new TextTree("", "", new ArrayList<>());
        TextTree group = root;
        for (String line : canonical.lines().skip(1).toList()) {
            String field = line.strip();
            int space = field.indexOf(' ');
            if (field.equals("}")) {
                group = open.isEmpty() ? root : open.pop();
            } else if (field.endsWith(" {") && space == field.length() - 2) {
                TextTree inner = new TextTree(field.substring(0, space), "", new ArrayList<>());
                group.fields.add(inner);
                open.push(group);
                group = inner;
            } else {
                String name = space < 0 ? field : field.substring(0, space);
                group.fields.add(new TextTree(name, space < 0 ? "" : field.substring(space + 1), List.of()));
            }
        }
        return root;
    }

    boolean isGroup() {
        return value.isEmpty() && !fields.isEmpty();
    }

    List<TextTree> all(String field) {
        return fields.stream().filter(inner -> inner.name.equals(field)).toList();
    }

    /** What names it among its like. */
    Optional<String> id() {
        return fields.stream()
                .filter(inner -> inner.name.equals("id"))
                .map(TextTree::said)
                .findFirst();
    }

    /** The value as people write it; a group field by field, without what is not stated. */
    String said() {
        if (!isGroup()) {
            return named(this);
        }
        StringBuilder said = new StringBuilder();
        Deque<TextTree> rest = new ArrayDeque<>(fields);
        while (!rest.isEmpty()) {
            TextTree next = rest.pop();
            String text = next.isGroup() ? "" : named(next);
            boolean silent = !next.isGroup() && (text.isEmpty() || text.equals("unstated") || text.equals("none"));
            if (!silent) {
                boolean plain = next.name.equals("quota") || next.name.equals("amount");
                said.append(said.length() == 0 ? "" : " ")
                        .append(plain ? "" : next.name)
                        .append(plain || text.isEmpty() ? "" : " ")
                        .append(text);
            }
            for (int i = next.fields.size() - 1; i >= 0; i--) {
                rest.push(next.fields.get(i));
            }
        }
        return said.toString();
    }

    /** The one number that the text has without its kind of quantity. */
    private static String named(TextTree field) {
        String text = said(field.value);
        return field.name.equals("cutWithin") && !text.equals("none") ? text + " mm" : text;
    }

    private static String said(String value) {
        if (value.startsWith("\"")) {
            return value.substring(1, value.length() - 1).replace("\\\"", "\"");
        }
        int space = value.indexOf(' ');
        if (value.startsWith("0x") || value.startsWith("-0x")) {
            double number = Double.parseDouble(space < 0 ? value : value.substring(0, space));
            return space < 0 ? plain(number) : said(new Amount(number, Dimension.valueOf(value.substring(space + 1))));
        }
        return value.replace(" \"\"", "").replace("\"", "");
    }

    private static String said(Amount amount) {
        String unit = amount.dimension().answerUnit();
        return plain(amount.toAnswer()) + (unit.equals("1") ? "" : " " + unit);
    }

    static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
