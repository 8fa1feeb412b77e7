package quoin.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import quoin.judge.Args;
import quoin.judge.Problem;

class LinesTest {
    @Test
    void aStrangersTextStaysOnOneLine() {
        assertThat(Lines.clean("a\nb\u001b[31m\u202ec")).isEqualTo("a\uFFFDb\uFFFD[31m\uFFFDc");
        assertThat(Lines.clean("59¾ in, naïve")).isEqualTo("59¾ in, naïve");
    }

    @Test
    void aStrangersTextIsNotEndless() {
        assertThat(Lines.clean("x".repeat(5000))).hasSize(601).endsWith("…");
    }

    @Test
    void aProblemIsCleaned() {
        Problem problem =
                Problem.error("wrong-type", "/a", Args.of("got", "x\ny").with("right", "a text"));
        assertThat(Words.in(Locale.ROOT).line("f\n", problem)).isEqualTo("f\uFFFD:0:0: /a is x\uFFFDy, write a text");
    }
}
