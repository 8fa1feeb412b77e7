package quoin.json;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quoin.job.Assessment;
import quoin.job.Job;
import quoin.job.Receipt;
import quoin.parts.Parts;
import quoin.rulebook.Rulebook;

/**
 * Whether an answer can be made again from its job, rulebook and parts, byte by byte; or what is no longer the same.
 *
 * <p>The differences come in this order: digests of {@code job}, {@code rulebook} and {@code parts}, versions of
 * {@code library} and {@code semantics}. Only where none of them differs is the first {@code field} named whose value
 * differs, or {@code layout} where the values are the same and the bytes are not. Immutable and safe for use by many threads.
 *
 * @param differences what differs; empty exactly where the bytes are the same
 */
public record Replay(List<Difference> differences) {
    /**
     * One thing that is not the same.
     *
     * @param code {@code job}, {@code rulebook}, {@code parts}, {@code library}, {@code semantics}, {@code field} or
     *     {@code layout}
     * @param pointer where it stands in the answer, as a JSON pointer
     * @param recorded what the answer says; {@code none} where it says nothing
     * @param now what it would say now; {@code none} where it would say nothing
     */
    public record Difference(String code, String pointer, String recorded, String now) {}

    private static final String NONE = "none";

    /** Copies the list. */
    public Replay {
        differences = List.copyOf(differences);
    }

    /** {@return whether the bytes are the same} */
    public boolean isSame() {
        return differences.isEmpty();
    }

    /**
     * Makes an answer again.
     *
     * @param answer the answer in UTF-8, as it was written; one line end after it is no part of it
     * @param job the job
     * @param rulebook the rules
     * @param parts the parts; {@link Parts#NONE} where none are chosen
     * @return what differs, or the problems of a text that is no answer
     * @throws IllegalArgumentException if the rulebook has errors
     */
    public static Read<Replay> of(byte[] answer, Job job, Rulebook rulebook, Parts parts) {
        Report report = new Report();
        @Nullable Node recorded = Tree.of(answer, report).orElse(null);
        if (recorded != null) {
            new Fields(recorded, report).format(AssessmentDocument.FORMAT);
        }
        if (recorded == null || report.hasErrors()) {
            return new Read<>(null, report.sorted(), "");
        }
        Receipt receipt = Receipt.of(job, rulebook, parts);
        List<Difference> differences = new ArrayList<>();
        compare(recorded, "job", receipt.job(), differences, "jobDigest");
        compare(recorded, "rulebook", receipt.rulebook(), differences, "rulebook", "digest");
        compare(recorded, "parts", receipt.parts(), differences, "parts", "digest");
        compare(recorded, "library", receipt.library(), differences, "library");
        compare(recorded, "semantics", Integer.toString(receipt.semantics()), differences, "semantics");
        if (differences.isEmpty()) {
            again(answer, recorded, AssessmentDocument.write(Assessment.of(job, rulebook, parts)))
                    .ifPresent(differences::add);
        }
        return new Read<>(new Replay(differences), List.of(), job.id());
    }

    private static void compare(Node recorded, String code, String now, List<Difference> differences, String... path) {
        @Nullable Node at = recorded;
        StringBuilder pointer = new StringBuilder();
        for (String name : path) {
            pointer.append('/').append(name);
            Node.Field field = at == null ? null : at.fields().get(name);
            at = field == null ? null : field.value();
        }
        String said = at == null ? "" : at.text();
        if (!said.equals(now)) {
            differences.add(new Difference(code, pointer.toString(), orNone(said), orNone(now)));
        }
    }

    private static String orNone(String text) {
        return text.isEmpty() ? NONE : text;
    }

    private static Optional<Difference> again(byte[] answer, Node recorded, String again) {
        String text = new String(answer, StandardCharsets.UTF_8);
        int end = text.endsWith("\r\n") ? text.length() - 2 : text.endsWith("\n") ? text.length() - 1 : text.length();
        if (text.substring(0, end).equals(again)) {
            return Optional.empty();
        }
        Node now = Tree.of(again.getBytes(StandardCharsets.UTF_8), new Report()).orElseThrow();
        return first(recorded, now)
                .or(() -> Optional.of(new Difference("layout", "", shownSize(end), shownSize(again.length()))));
    }

    private static String shownSize(int characters) {
        return characters + " characters";
    }

    /** The first field that differs, in the order of the answer of now. */
    private static Optional<Difference> first(Node recorded, Node now) {
        if (recorded.kind() != now.kind() || !recorded.text().equals(now.text())) {
            return Optional.of(new Difference("field", now.pointer(), recorded.shown(), now.shown()));
        }
        for (Map.Entry<String, Node.Field> entry : now.fields().entrySet()) {
            Node.Field said = recorded.fields().get(entry.getKey());
            Node value = entry.getValue().value();
            Optional<Difference> found = said == null
                    ? Optional.of(new Difference("field", value.pointer(), NONE, value.shown()))
                    : first(said.value(), value);
            if (found.isPresent()) {
                return found;
            }
        }
        for (Map.Entry<String, Node.Field> entry : recorded.fields().entrySet()) {
            if (!now.fields().containsKey(entry.getKey())) {
                Node value = entry.getValue().value();
                return Optional.of(new Difference("field", value.pointer(), value.shown(), NONE));
            }
        }
        return items(recorded, now);
    }

    private static Optional<Difference> items(Node recorded, Node now) {
        Iterator<Node> said = recorded.items().iterator();
        Iterator<Node> made = now.items().iterator();
        while (said.hasNext() && made.hasNext()) {
            Optional<Difference> found = first(said.next(), made.next());
            if (found.isPresent()) {
                return found;
            }
        }
        if (said.hasNext()) {
            Node more = said.next();
            return Optional.of(new Difference("field", more.pointer(), more.shown(), NONE));
        }
        if (made.hasNext()) {
            Node more = made.next();
            return Optional.of(new Difference("field", more.pointer(), NONE, more.shown()));
        }
        return Optional.empty();
    }
}
