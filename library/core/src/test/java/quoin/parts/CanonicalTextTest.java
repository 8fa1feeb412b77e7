package quoin.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;

class CanonicalTextTest {
    /** Standard: FIPS 180-4 (SHA-256); the value is what coreutils' sha256sum prints for the bytes "abc\n". Exact. */
    @Test
    void theDigestIsTheSha256OfTheText() {
        assertThat(CanonicalText.of("abc").digest())
                .isEqualTo("sha256:edeaaff3f1774ad2888673770c6d64097e391bc362d7d6fb34982ddf0efd18cb");
    }

    @Test
    void theTextIsReadable() {
        String text = CanonicalText.of("quoin-parts/1")
                .text("id", "heron-parts")
                .open("part")
                .number("times", 2)
                .number("nothing", Double.NaN)
                .amount("amount", new Amount(3, Dimension.LENGTH))
                .declared("pull", Sample.of(450, Dimension.FORCE))
                .source(new Source(Source.Kind.STANDARD, "EN 1", "2026-01-01", ""))
                .close()
                .toString();
        assertThat(text).isEqualTo("""
            quoin-parts/1
            id "heron-parts"
            part {
              times 0x1.0p1
              nothing none
              amount 0x1.8p1 LENGTH
              pull {
                value 0x1.c2p8 FORCE
                basis declared
                source unstated "" "" ""
              }
              source standard "EN 1" "2026-01-01" ""
            }
            """);
    }

    @Test
    void aTextCannotPassItselfOffAsAnotherField() {
        String text = CanonicalText.of("f").text("title", "a\"\nversion \"2\\").toString();
        assertThat(text).isEqualTo("f\ntitle \"a\\\"\\u000aversion \\\"2\\\\\"\n");
        assertThat(text.lines()).hasSize(2);
    }

    @Test
    void halfAPairOfCharactersLeavesATrace() {
        assertThat(CanonicalText.of("f").text("t", "\ud800").digest())
                .isNotEqualTo(CanonicalText.of("f").text("t", "?").digest());
    }

    @Test
    void onlyAnOpenGroupCanBeClosed() {
        CanonicalText text = CanonicalText.of("f");
        assertThatThrownBy(text::close)
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("a group must be open to be closed, got none");
    }

    @Test
    void minusZeroIsZero() {
        assertThat(CanonicalText.of("f").number("n", -0.0).digest())
                .isEqualTo(CanonicalText.of("f").number("n", 0.0).digest());
    }
}
