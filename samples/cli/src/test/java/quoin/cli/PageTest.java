package quoin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PageTest {
    @Test
    void aLongTextIsWrappedUnderItsStart() {
        String page = new Page().hanging("  - ", "word ".repeat(30).strip()).toString();
        assertThat(page.lines()).hasSize(2).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        assertThat(page.lines().toList().get(1)).startsWith("    word");
    }

    @Test
    void aUnitStaysWithItsNumber() {
        String page = new Page().text(0, "x".repeat(77) + " 12 mm, and").toString();
        assertThat(page.lines()).containsExactly("x".repeat(77), "12 mm, and");
    }

    @Test
    void twoEndsShareALineWhereTheyFit() {
        assertThat(new Page().ends("a", "b").toString()).isEqualTo("a" + " ".repeat(78) + "b\n");
        assertThat(new Page().ends("a".repeat(50), "b".repeat(40)).toString().lines())
                .hasSize(2);
    }
}
