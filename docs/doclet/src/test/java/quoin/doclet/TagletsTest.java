package quoin.doclet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.tools.DocumentationTool;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TagletsTest {
    private static final String SOURCE = """
            /**
             * A rule.
             *
             * @clause area
             * @formula {@code a < b}
             * @unit mm
             * @edge none: <b>
             * @source practice: workshops
             */
            public interface Rule {}
            """;

    @TempDir
    Path folder;

    @Test
    void theHtmlShowsTheTags() throws IOException {
        Path source = Files.writeString(folder.resolve("Rule.java"), SOURCE);
        DocumentationTool tool = ToolProvider.getSystemDocumentationTool();
        StringWriter out = new StringWriter();
        List<String> options = new ArrayList<>(List.of("-quiet", "-Xdoclint:none", "-d", folder.toString()));
        options.addAll(List.of("-tagletpath", System.getProperty("java.class.path")));
        for (CatalogueTag tag : CatalogueTag.values()) {
            String name = tag.tag().substring(0, 1).toUpperCase(Locale.ROOT)
                    + tag.tag().substring(1);
            options.addAll(List.of("-taglet", "quoin.doclet." + name + "Taglet"));
        }
        try (StandardJavaFileManager files = tool.getStandardFileManager(null, Locale.ROOT, null)) {
            assertThat(tool.getTask(out, files, null, null, options, files.getJavaFileObjects(source))
                            .call())
                    .as(out.toString())
                    .isTrue();
        }

        assertThat(Files.readString(folder.resolve("Rule.html")))
                .contains("<dt>Clause:</dt>\n<dd>area</dd>")
                .contains("<dt>Formula:</dt>\n<dd><code>a &lt; b</code></dd>")
                .contains("<dt>Source:</dt>\n<dd>practice: workshops</dd>");
    }
}
