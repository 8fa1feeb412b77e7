package quoin.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TemplateTest {
    @Test
    void namesAreFilled() {
        assertThat(Template.fill("{a} of {b}", Map.of("a", 2.0, "b", "mm"))).isEqualTo("2 of mm");
        assertThat(Template.fill("one of {known}", Map.of("known", List.of("mm", "in"))))
                .isEqualTo("one of mm, in");
    }

    @Test
    void aBracketWithoutItsArgumentIsLeftOut() {
        assertThat(Template.fill("wrong[, got {got}], write it", Map.of())).isEqualTo("wrong, write it");
        assertThat(Template.fill("wrong[, got {got}], write it", Map.of("got", "7")))
                .isEqualTo("wrong, got 7, write it");
        assertThat(Template.fill("a[ {x} and {y}]", Map.of("x", "1"))).isEqualTo("a");
    }

    @Test
    void aMissingArgumentNeverFails() {
        assertThat(Template.fill("at {place}", Map.of())).isEqualTo("at …");
        assertThat(Template.fill("an open { or [", Map.of())).isEqualTo("an open { or [");
    }

    @Test
    void anArgumentIsNeverReadAsATemplate() {
        assertThat(Template.fill("got {got}", Map.of("got", "{other} [x]", "other", "no")))
                .isEqualTo("got {other} [x]");
    }
}
