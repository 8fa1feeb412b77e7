package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import quoin.judge.Problem;

/** Whatever is done to a document, reading it gives a value or problems with their places, and never an exception. */
class MutationProperties {
    private static final List<String> PIECES = List.of(
            "{",
            "}",
            "[",
            "]",
            ",",
            ":",
            "\"",
            "null",
            "NaN",
            "-",
            "0",
            "1e308",
            "-1e999",
            "1e-400",
            "true",
            "\\ud800",
            "\\u0000",
            "\"0 mm\"",
            "\"-1 mm\"",
            "\"1e300 mm\"",
            "\"12 deg\"",
            "\"1/0 in\"",
            "\"5 %\"",
            "\"\"",
            "{}",
            "[]",
            "[[]]",
            "\uFEFF",
            "é",
            "\n",
            "\"width@head\"",
            "\"frame.width\"",
            "\"gap.least\"",
            "\"fit.width\"",
            "\"unknown\"",
            "\"atLeast\":",
            "\"of\":",
            "99999999999999999999");

    @Property(tries = 600)
    void aChangedJobIsReadOrRefused(@ForAll("changes") List<Change> changes) {
        check(mutated(Examples.JOB, changes), JobDocument::read, JobDocument::write);
    }

    @Property(tries = 600)
    void aChangedRulebookIsReadOrRefused(@ForAll("changes") List<Change> changes) {
        check(mutated(Examples.RULEBOOK, changes), RulebookDocument::read, RulebookDocument::write);
    }

    @Property(tries = 600)
    void aChangedPartsListIsReadOrRefused(@ForAll("changes") List<Change> changes) {
        check(mutated(Examples.PARTS, changes), PartsDocument::read, PartsDocument::write);
    }

    /** Values are exchanged for one another, so that the text stays JSON and the readers see what they do not expect. */
    @Property(tries = 600)
    void exchangedValuesAreReadOrRefused(@ForAll long seed) {
        Random random = new Random(seed);
        check(exchanged(Examples.JOB, random), JobDocument::read, JobDocument::write);
        check(exchanged(Examples.RULEBOOK, random), RulebookDocument::read, RulebookDocument::write);
        check(exchanged(Examples.PARTS, random), PartsDocument::read, PartsDocument::write);
    }

    @Property(tries = 300)
    void anyBytesAreReadOrRefused(@ForAll byte[] bytes) {
        check(bytes, JobDocument::read, JobDocument::write);
        check(bytes, RulebookDocument::read, RulebookDocument::write);
        check(bytes, PartsDocument::read, PartsDocument::write);
    }

    private static <T> void check(byte[] json, Function<byte[], Read<T>> reader, Function<T, String> writer) {
        Read<T> read = reader.apply(json);
        boolean errors = read.problems().stream().anyMatch(p -> p.severity() == Problem.Severity.ERROR);
        assertThat(read.value().isPresent()).as("%s", read.problems()).isNotEqualTo(errors);
        assertThat(read.problems()).allSatisfy(problem -> {
            assertThat(problem.line()).isPositive();
            assertThat(problem.column()).isPositive();
        });
        read.value().ifPresent(value -> {
            String written = writer.apply(value);
            Read<T> again = reader.apply(written.getBytes(StandardCharsets.UTF_8));
            assertThat(again.value()).as(written).contains(value);
            assertThat(writer.apply(again.value().orElseThrow())).isEqualTo(written);
        });
    }

    /** What is done to a text: a piece of it gives way to another text. */
    private record Change(double where, int length, String piece) {}

    @Provide
    Arbitrary<List<Change>> changes() {
        Arbitrary<String> pieces = Arbitraries.oneOf(
                Arbitraries.just(""),
                Arbitraries.of(PIECES),
                Arbitraries.strings().ofLength(1));
        return net.jqwik.api.Combinators.combine(
                        Arbitraries.doubles().between(0, 1),
                        Arbitraries.integers().between(0, 12),
                        pieces)
                .as(Change::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(3);
    }

    private static byte[] mutated(String text, List<Change> changes) {
        StringBuilder changed = new StringBuilder(text);
        for (Change change : changes) {
            int at = (int) (change.where() * changed.length());
            int end = Math.min(changed.length(), at + change.length());
            changed.replace(at, end, change.piece());
        }
        return changed.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] exchanged(String text, Random random) {
        Report report = new Report();
        Node root = Tree.of(text, report).orElseThrow();
        List<Node> all = new java.util.ArrayList<>();
        gather(root, all);
        String json = Raw.of(root);
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            String from = Raw.of(all.get(1 + random.nextInt(all.size() - 1)));
            String to = random.nextInt(3) == 0
                    ? List.of(
                                    "null",
                                    "0",
                                    "-1",
                                    "\"\"",
                                    "\"-1 mm\"",
                                    "\"0 mm\"",
                                    "{}",
                                    "[]",
                                    "true",
                                    "1e999",
                                    "\"1e9 mm\"",
                                    "\"1e300 N\"")
                            .get(random.nextInt(12))
                    : Raw.of(all.get(random.nextInt(all.size())));
            int at = json.indexOf(from, random.nextInt(json.length()));
            json = at < 0 ? json : json.substring(0, at) + to + json.substring(at + from.length());
        }
        return json.getBytes(StandardCharsets.UTF_8);
    }

    private static void gather(Node node, List<Node> all) {
        all.add(node);
        node.items().forEach(item -> gather(item, all));
        node.fields().values().forEach(field -> gather(field.value(), all));
    }
}
