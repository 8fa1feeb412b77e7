package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import quoin.job.Assessment;
import quoin.job.Job;
import quoin.parts.Parts;
import quoin.rulebook.Rulebook;

/** The digest sees every number and no layout. */
class ReceiptProperties {
    private static final Job JOB = Examples.job(Examples.JOB);
    private static final Rulebook RULEBOOK = Examples.rulebook(Examples.RULEBOOK);
    private static final Parts PARTS = Examples.parts(Examples.PARTS);
    private static final byte[] ANSWER = Examples.utf8(AssessmentDocument.write(Assessment.of(JOB, RULEBOOK, PARTS)));

    /** The last digits of the numbers of a text, those of its format left out. */
    private static List<Integer> lastDigits(String text) {
        List<Integer> at = new ArrayList<>();
        for (int i = text.indexOf("/1\"") + 2; i + 1 < text.length(); i++) {
            if (Character.isDigit(text.charAt(i)) && !Character.isDigit(text.charAt(i + 1))) {
                at.add(i);
            }
        }
        return at;
    }

    /** The text with another last digit of one number: the number is another one in every case. */
    private static String oneChanged(String text, Random random) {
        List<Integer> digits = lastDigits(text);
        int at = digits.get(random.nextInt(digits.size()));
        int digit = (text.charAt(at) - '0' + 1 + random.nextInt(9)) % 10;
        return text.substring(0, at) + digit + text.substring(at + 1);
    }

    @Property(tries = 400)
    void aSingleNumberOfTheJobIsNoticed(@ForAll Random random) {
        Read<Job> other = JobDocument.read(Examples.utf8(oneChanged(Examples.JOB, random)));
        Assume.that(other.value().isPresent());
        Replay replay = Replay.of(ANSWER, other.value().orElseThrow(), RULEBOOK, PARTS)
                .value()
                .orElseThrow();
        assertThat(replay.differences()).extracting(Replay.Difference::code).containsExactly("job");
    }

    @Property(tries = 400)
    void aSingleNumberOfTheRulebookIsNoticed(@ForAll Random random) {
        Read<Rulebook> other = RulebookDocument.read(Examples.utf8(oneChanged(Examples.RULEBOOK, random)));
        Assume.that(other.value().isPresent());
        Replay replay = Replay.of(ANSWER, JOB, other.value().orElseThrow(), PARTS)
                .value()
                .orElseThrow();
        assertThat(replay.differences()).extracting(Replay.Difference::code).containsExactly("rulebook");
    }

    @Property(tries = 200)
    void theOrderOfNamesAndTheLayoutLeaveNoTrace(@ForAll Random random) {
        Job job = Examples.job(shuffled(Examples.JOB, random));
        assertThat(job.canonicalText()).isEqualTo(JOB.canonicalText());
        assertThat(JobDocument.write(job)).isEqualTo(JobDocument.write(JOB));
        Rulebook rulebook = Examples.rulebook(shuffled(Examples.RULEBOOK, random));
        assertThat(rulebook.digest()).isEqualTo(RULEBOOK.digest());
        assertThat(RulebookDocument.write(rulebook)).isEqualTo(RulebookDocument.write(RULEBOOK));
        Parts parts = Examples.parts(shuffled(Examples.PARTS, random));
        assertThat(parts.digest()).isEqualTo(PARTS.digest());
        assertThat(PartsDocument.write(parts)).isEqualTo(PartsDocument.write(PARTS));
    }

    /** Names of instruments, sizes and figures, given in another order, neither. */
    @Property(tries = 5)
    void theAnswerDoesNotHangOnTheOrderOfNames(@ForAll Random random) {
        String more = Examples.JOB.replace(
                "\"declared\": {",
                "\"declared\": { \"own.b\": { \"value\": \"1 mm\" }, \"own.a\": { \"value\": \"2 mm\" },");
        Job job = Examples.job(more);
        Job again = Examples.job(shuffled(more, random));
        assertThat(AssessmentDocument.write(Assessment.of(again, RULEBOOK, PARTS)))
                .isEqualTo(AssessmentDocument.write(Assessment.of(job, RULEBOOK, PARTS)));
    }

    @Example
    void theUnitsItWasWrittenInLeaveNoTrace() {
        String texts = Examples.JOB
                .replaceAll("\"read\": (\\d+)", "\"read\": \"$1 mm\"")
                .replaceAll("\\[1503, 1504\\]", "[\"150.3 cm\", \"1.504 m\"]")
                .replace("\"units\": \"mm\"", "\"units\": \"in\"");
        assertThat(texts).contains("\"142 mm\"", "1.504 m", "\"in\"");
        assertThat(Examples.job(texts).digest()).isEqualTo(JOB.digest());
        assertThat(JOB.digest()).matches("sha256:[0-9a-f]{64}");
    }

    @Example
    void theOrderOfReadingsIsPartOfTheJob() {
        List<quoin.opening.Reading> turned = new ArrayList<>(JOB.opening().readings());
        Collections.swap(turned, 0, 1);
        assertThat(Examples.job(Examples.JOB).canonicalText()).isEqualTo(JOB.canonicalText());
        String text = Examples.JOB;
        int first = text.indexOf("{ \"of\": \"width@head\"");
        int second = text.indexOf("{ \"of\": \"width@1/4\"");
        int third = text.indexOf("{ \"of\": \"width@3/4\"");
        String swapped = text.substring(0, first)
                + text.substring(second, third)
                + text.substring(first, second)
                + text.substring(third);
        assertThat(Examples.job(swapped).opening().readings()).isEqualTo(turned);
        assertThat(Examples.job(swapped).digest()).isNotEqualTo(JOB.digest());
    }

    private static String shuffled(String text, Random random) {
        return Raw.of(shuffled(Tree.of(Examples.utf8(text), new Report()).orElseThrow(), random));
    }

    /** What is carried is handed through as it is, the order of its names too. */
    private static Node shuffled(Node node, Random random) {
        if (node.pointer().equals("/carry")) {
            return node;
        }
        if (node.kind() == Node.Kind.ARRAY) {
            return Node.array(
                    node.items().stream().map(item -> shuffled(item, random)).toList(), Path.ROOT, 1, 1);
        }
        if (node.kind() != Node.Kind.OBJECT) {
            return node;
        }
        List<Map.Entry<String, Node.Field>> fields =
                new ArrayList<>(node.fields().entrySet());
        Collections.shuffle(fields, random);
        Map<String, Node.Field> turned = new LinkedHashMap<>();
        fields.forEach(field -> turned.put(
                field.getKey(), new Node.Field(shuffled(field.getValue().value(), random), 1, 1)));
        return Node.object(turned, Path.ROOT, 1, 1);
    }
}
