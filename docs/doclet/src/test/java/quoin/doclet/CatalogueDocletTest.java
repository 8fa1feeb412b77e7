package quoin.doclet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CatalogueDocletTest {
    private static final String COMPLETE = """
            package area;

            /** Areas. */
            public final class Areas {
                private Areas() {}

                /**
                 * The area of a rectangle. It has a second sentence.
                 *
                 * @figure area.rectangle
                 * @formula {@code w * l}
                 * @unit mm&sup2;
                 * @edge zero: zero
                 * @source standard: plane geometry
                 * @param w the width
                 * @param l the length
                 * @return the area
                 */
                public static double rectangle(double w, double l) {
                    return w * l;
                }
            }
            """;

    @TempDir
    Path folder;

    @Test
    void completePasses() throws IOException {
        Sources.Result result = areas(COMPLETE);

        assertThat(result.messages()).isEmpty();
        assertThat(result.passed()).isTrue();
        assertThat(result.text()).contains("""
                        ## Figures

                        ### area.rectangle

                        The area of a rectangle.

                        `area.Areas.rectangle(double w, double l) → double`

                        - Formula: `w * l`
                        - Unit: mm²
                        - Edge results: zero: zero
                        - Source (standard): plane geometry
                        """).doesNotContain("\r");
    }

    @ParameterizedTest
    @ValueSource(strings = {"formula", "unit", "edge", "source"})
    void eachMissingTagFails(String tag) throws IOException {
        Sources.Result result = areas(COMPLETE.replaceAll(" +\\* @" + tag + " .*\n", ""));

        assertThat(result.passed()).isFalse();
        assertThat(result.messages())
                .contains("Areas.java:")
                .contains("area.Areas.rectangle(double w, double l) → double: @" + tag + " is missing or empty")
                .contains("right would be: @" + tag + " ");
        assertThat(result.catalogue()).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(strings = {"figure", "formula", "unit", "edge", "source"})
    void eachEmptyTagFails(String tag) throws IOException {
        Sources.Result result = areas(COMPLETE.replaceAll("\\* @" + tag + " .*\n", "* @" + tag + "\n"));

        assertThat(result.passed()).isFalse();
        assertThat(result.messages()).contains("@" + tag + " is missing or empty");
    }

    @ParameterizedTest
    @ValueSource(strings = {"rumour: a friend", "Standard: plane geometry", "plane geometry", "standard:", "standard"})
    void anUnknownMarkFails(String source) throws IOException {
        Sources.Result result = areas(COMPLETE.replace("standard: plane geometry", source));

        assertThat(result.passed()).isFalse();
        assertThat(result.messages())
                .contains("@source has no known mark or no text: " + source)
                .contains("standard, handbook, practice, memory, assumption");
    }

    @Test
    void aFigureUsedTwiceFails() throws IOException {
        Sources.Result result = new Sources(folder)
                .with("area/Areas.java", COMPLETE)
                .with("area/Others.java", COMPLETE.replace("Areas", "Others"))
                .run();

        assertThat(result.passed()).isFalse();
        assertThat(result.messages())
                .contains("area.Others.rectangle")
                .contains("@figure area.rectangle is used twice, also by area.Areas.rectangle");
    }

    @Test
    void aFunctionWithoutAnyCommentFails() throws IOException {
        Sources.Result result = areas("""
                package area;

                public final class Areas {
                    private Areas() {}

                    public static double square(double side) {
                        return side * side;
                    }
                }
                """);

        assertThat(result.passed()).isFalse();
        assertThat(result.messages()).contains("@formula", "@unit", "@edge", "@source", "area.Areas.square");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "public class Areas { private Areas() {} ONE }",
                "public final class Areas { /** New. */ public Areas() {} ONE }",
                "public final class Areas { private Areas() {} ONE /** Two. */ public void two() {} }",
                "final class Areas { private Areas() {} ONE }",
                "public final class Areas { private Areas() {} static double one() { return 1; } }",
                "public final class Areas { private Areas() {} /** {@return 1} */ public static int one() { return 1; } }",
                "public interface Areas { ONE }"
            })
    void whatDoesNotComputeNeedsNoTag(String type) throws IOException {
        String one = "/** {@return one} */ public static double one() { return 1; }";
        Sources.Result result = areas("package area;\n/** Areas. */\n" + type.replace("ONE", one));

        assertThat(result.messages()).isEmpty();
        assertThat(result.passed()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Uncertain", "Extreme", "Estimate", "Measured<String>", "Finding"})
    void theAnswersOfTheLibraryNeedTheTags(String answer) throws IOException {
        String name = answer.replaceAll("<.*", "");
        String declared = answer.replace("<String>", "<Q>");
        Sources.Result result = new Sources(folder)
                .with("area/" + name + ".java", "package area;\npublic interface " + declared + " {}\n")
                .with(
                        "area/Areas.java",
                        "package area;\npublic final class Areas { private Areas() {}\n public static " + answer
                                + " one(" + answer + " a) { return a; } }")
                .run();

        assertThat(result.passed()).isFalse();
        assertThat(result.messages())
                .contains("area.Areas.one(" + answer + " a) → " + answer + ": @unit is missing or empty");
    }

    @Test
    void aClauseTypeNeedsAllTagsAndHasItsOwnSection() throws IOException {
        String clause = """
                package area;

                /**
                 * A rule of area.
                 *
                 * @clause area
                 * @formula area at most the bound
                 * @unit mm2
                 * @edge no bound: nothing is asked
                 * @source practice: workshops
                 * @param bound the bound
                 */
                public record Areas(double bound) {}
                """;

        assertThat(areas(clause).text()).contains("## Clauses\n\n### area\n\nA rule of area.\n\n`area.Areas`\n");
        assertThat(areas(clause.replaceAll(" \\* @edge .*\n", "")).passed()).isFalse();
    }

    @Test
    void onlyExportedPackagesCount() throws IOException {
        Sources sources = new Sources(folder)
                .with("module-info.java", "/** Areas. */ module areas { exports area; }")
                .with("area/Areas.java", COMPLETE)
                .with(
                        "area/inside/Hidden.java",
                        "package area.inside;\n/** Hidden. */\npublic final class Hidden { private Hidden() {}\n /** {@return 1} */"
                                + " public static double one() { return 1; } }");

        assertThat(sources.run().passed()).isTrue();

        sources.with("module-info.java", "/** Areas. */ module areas { exports area; exports area.inside; }");
        assertThat(sources.run().passed()).isFalse();
    }

    @Test
    void theSameSourcesGiveTheSameBytes() throws IOException {
        byte[] first = Files.readAllBytes(areas(COMPLETE).catalogue());
        byte[] second = Files.readAllBytes(areas(COMPLETE).catalogue());

        assertThat(second).isEqualTo(first);
    }

    @Test
    void figuresAreSorted() throws IOException {
        String two = COMPLETE.replace("@figure area.rectangle", "@figure b.two\n     * @figure a.one");

        assertThat(areas(two).text()).containsSubsequence("### a.one", "### b.two", "## Checks");
    }

    private Sources.Result areas(String text) throws IOException {
        return new Sources(folder).with("area/Areas.java", text).run();
    }
}
