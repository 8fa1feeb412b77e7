package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import quoin.judge.Problem;

/** Documents that are too much: they cost a message and a moment. */
class BigInputTest {
    /** Far more than any of these takes, on a machine that does other things as well. */
    private static final Duration MOMENT = Duration.ofSeconds(20);

    /** Endless blanks, and a count of those that were taken. */
    private static final class Blanks extends InputStream {
        private final long length;
        private long taken;

        Blanks(long length) {
            this.length = length;
        }

        @Override
        public int read() {
            return taken++ < length ? ' ' : -1;
        }

        @Override
        public int read(byte[] to, int from, int count) {
            int now = (int) Math.min(count, length - taken);
            if (now <= 0 && count > 0) {
                return -1;
            }
            java.util.Arrays.fill(to, from, from + now, (byte) ' ');
            taken += now;
            return now;
        }
    }

    private static Problem only(Read<?> read) {
        assertThat(read.value()).isEmpty();
        assertThat(read.problems()).hasSize(1);
        return read.problems().get(0);
    }

    private static Problem job(String text) {
        return Assertions.assertTimeout(MOMENT, () -> only(JobDocument.read(Examples.utf8(text))));
    }

    @Test
    void ofAHundredMegabytesNoMoreThanEightAreRead() throws IOException {
        Blanks job = new Blanks(100L << 20);
        assertThat(only(JobDocument.read(job)).code()).isEqualTo("too-large");
        assertThat(job.taken).isEqualTo((8L << 20) + 1);
        Blanks rulebook = new Blanks(100L << 20);
        assertThat(only(RulebookDocument.read(rulebook)).code()).isEqualTo("too-large");
        Blanks parts = new Blanks(100L << 20);
        assertThat(only(PartsDocument.read(parts)).code()).isEqualTo("too-large");
        assertThat(parts.taken).isEqualTo(rulebook.taken).isEqualTo((8L << 20) + 1);
    }

    @Test
    void eightMegabytesAreNotTooLarge() throws IOException {
        assertThat(only(JobDocument.read(new Blanks(8L << 20))).code()).isEqualTo("empty-document");
    }

    @Test
    void aStreamIsReadLikeItsBytes() throws IOException {
        byte[] job = Examples.utf8(Examples.JOB);
        assertThat(JobDocument.read(new ByteArrayInputStream(job)).value())
                .isEqualTo(JobDocument.read(job).value());
        byte[] book = Examples.utf8(Examples.RULEBOOK);
        assertThat(RulebookDocument.read(new ByteArrayInputStream(book)).value())
                .isEqualTo(RulebookDocument.read(book).value())
                .isPresent();
        byte[] parts = Examples.utf8(Examples.PARTS);
        assertThat(PartsDocument.read(new ByteArrayInputStream(parts)).value())
                .isEqualTo(PartsDocument.read(parts).value())
                .isPresent();
    }

    @Test
    void tenThousandLevelsAreTooDeep() {
        Problem lists = job("[".repeat(10_000));
        assertThat(lists.code()).isEqualTo("too-deep");
        assertThat(Examples.placeOf(lists)).isEqualTo("1:66");
        assertThat(job("{\"a\":".repeat(10_000)).code()).isEqualTo("too-deep");
        assertThat(job("[".repeat(10_000) + "]".repeat(10_000)).code()).isEqualTo("too-deep");
        assertThat(job("{ \"carry\": " + "[".repeat(10_000) + "]".repeat(10_000) + " }")
                        .pointer())
                .startsWith("/carry/0/0");
    }

    @Test
    void sixtyFourLevelsAreNotTooDeep() {
        assertThat(job("[".repeat(64) + "]".repeat(64)).code()).isEqualTo("wrong-type");
        assertThat(job("[".repeat(65) + "]".repeat(65)).code()).isEqualTo("too-deep");
    }

    @Test
    void aNumberHasFortyDigitsAtMost() {
        assertThat(job("1".repeat(40)).code()).isEqualTo("wrong-type");
        assertThat(job("1".repeat(41)).code()).isEqualTo("not-a-number");
        assertThat(job("0." + "1".repeat(60_000)).code()).isEqualTo("not-a-number");
        assertThat(job("1".repeat(1_000_000)).code()).isEqualTo("too-large");
        assertThat(job("1e999999999").code()).isEqualTo("wrong-type");
    }

    @Test
    void aTextHasItsLimit() {
        assertThat(job("\"" + "a".repeat(100_000) + "\"").code()).isEqualTo("too-large");
        assertThat(job("{\"" + "a".repeat(2_000) + "\":1}").code()).isEqualTo("too-large");
    }

    @Test
    void aDocumentHasTwoHundredThousandValuesAtMost() {
        assertThat(job("[" + "1,".repeat(250_000) + "1]").code()).isEqualTo("too-large");
    }

    @Test
    void manyLongUnknownNamesTakeAMoment() {
        StringBuilder text = new StringBuilder("{\"a\":1");
        for (int i = 0; i < 7000; i++) {
            text.append(",\"").append("b".repeat(990)).append(i).append("\":1");
        }
        Assertions.assertTimeout(
                MOMENT,
                () -> assertThat(JobDocument.read(Examples.utf8(text.append('}').toString()))
                                .problems())
                        .hasSize(200));
    }

    @Test
    void aReadingOfManyValuesIsRead() {
        String many = "[" + "1503, ".repeat(5000) + "1504]";
        String text = Examples.changed(Examples.JOB, "[1503, 1504]", many);
        assertThat(Examples.job(text).opening().readings().get(3).values()).hasSize(5001);
    }

    @Test
    void carryHasFourKilobytesOfUtf8AtMost() {
        assertThat(carry("\"" + "a".repeat(4094) + "\"").problems()).isEmpty();
        Problem problem = only(carry("\"" + "a".repeat(4095) + "\""));
        assertThat(problem.code()).isEqualTo("carry-too-large");
        assertThat(problem.pointer()).isEqualTo("/carry");
        assertThat(only(carry("\"" + "ä".repeat(2048) + "\"")).code()).isEqualTo("carry-too-large");
        assertThat(carry("\"" + "ä".repeat(2047) + "\"").problems()).isEmpty();
    }

    private static Read<?> carry(String json) {
        String from = "{ \"order\": \"any JSON up to 4 kB, handed through unread\" }";
        return JobDocument.read(Examples.utf8(Examples.changed(Examples.JOB, from, json)));
    }

    @Test
    void bytesThatAreNoUtf8AreRefusedAtTheirPlace() {
        byte[] text = "{\n  \"id\": \"é\" }".getBytes(StandardCharsets.ISO_8859_1);
        Problem problem = only(JobDocument.read(text));
        assertThat(problem.code()).isEqualTo("not-json");
        assertThat(Examples.placeOf(problem)).isEqualTo("2:10");
        byte[] cut = {'"', (byte) 0xe2, (byte) 0x82};
        assertThat(Examples.placeOf(only(JobDocument.read(cut)))).isEqualTo("1:2");
        for (var charset : List.of(StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE, StandardCharsets.UTF_16)) {
            assertThat(only(JobDocument.read(Examples.JOB.getBytes(charset))).code())
                    .isEqualTo("not-json");
        }
    }

    @Test
    void aByteOrderMarkIsPassedOver() {
        assertThat(JobDocument.read(Examples.utf8("\uFEFF" + Examples.JOB)).value())
                .contains(Examples.job(Examples.JOB));
    }

    @Test
    void aByteOrderMarkIsNoColumn() {
        Problem with = JobDocument.read(Examples.utf8("\uFEFF{ \"x\": 2 }")).problems().stream()
                .filter(p -> p.pointer().equals("/x"))
                .findFirst()
                .orElseThrow();
        assertThat(with.line() + ":" + with.column()).isEqualTo("1:3");
    }

    /** RFC 6901, 3: a tilde is ~0 and a slash is ~1 in a pointer. */
    @Test
    void aPointerEscapesTildesAndSlashes() {
        assertThat(JobDocument.read(Examples.utf8("{ \"a~b/c\": [ 1 ] }")).problems())
                .anyMatch(p -> p.code().equals("unknown-field") && p.pointer().equals("/a~0b~1c"));
    }

    @Test
    void columnsCountCharacters() {
        Read<?> read = JobDocument.read(Examples.utf8("{ \"öäü€\": 1, \"x\": 2 }"));
        assertThat(read.problems().stream()
                        .filter(p -> p.pointer().equals("/x"))
                        .map(Examples::placeOf))
                .containsExactly("1:14");
    }
}
