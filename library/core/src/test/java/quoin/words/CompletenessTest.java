package quoin.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quoin.clearance.SiteFacts;
import quoin.job.Figures;

/**
 * Every code that the sources of the library can put into an answer has a sentence. The codes are found in the sources:
 * the first text given to what makes a step, a caution or a problem.
 */
class CompletenessTest {
    private static final Words WORDS = Words.in(Locale.ENGLISH);
    private static final List<Path> SOURCES =
            List.of(Path.of("src/main/java"), Path.of("..", "json", "src", "main", "java"));

    private static final String CODE = "\\(\\s*\"([a-z0-9][a-z0-9.-]*)\"";
    private static final Pattern STEP = Pattern.compile("(?:Step\\.of|new Step)" + CODE);
    private static final Pattern HELPER =
            Pattern.compile("\\b(?:lost|unknown|cannot)\\([^\";(]*\"([a-z0-9][a-z0-9.-]*)\"");
    private static final Pattern CAUTION = Pattern.compile("(?:Caution\\.of|new Caution)" + CODE);
    private static final Pattern PROBLEM =
            Pattern.compile("(?:Problem\\.(?:error|warning)|new Problem|\\bproblem|\\berror|\\bwarning)" + CODE);

    private final String sources = readSources();

    @Test
    void everyStepHasWords() {
        assertThat(without("step.", STEP)).isEmpty();
        assertThat(codes(STEP)).as("the scan must find something").contains("bound", "band", "no-size-fits");
    }

    /** Steps and problems are also made by helpers, which take the code among other arguments. */
    @Test
    void everyCodeOfAHelperHasWords() {
        assertThat(codes(HELPER)).as("the scan must find something").contains("below-list", "limits-cross", "cycle");
        Set<String> missing = without("step.", HELPER);
        missing.removeIf(code -> WORDS.has("problem." + code));
        assertThat(missing).isEmpty();
    }

    @Test
    void everySlipHasWords() throws IOException {
        String source = Files.readString(Path.of("src/main/java/quoin/opening/CommonSlip.java"));
        Set<String> slips = new TreeSet<>();
        Pattern.compile("(?m)^ {4}([A-Z0-9_]+)[,;]")
                .matcher(source)
                .results()
                .forEach(match -> slips.add(match.group(1)));
        assertThat(slips).as("the scan must find something").contains("WHOLE_10_MM");
        assertThat(slips)
                .allSatisfy(slip -> assertThat(WORDS.keys())
                        .contains("slip." + slip.toLowerCase(Locale.ROOT).replace('_', '-')));
    }

    @Test
    void everyRoomHasWords() throws IOException {
        String source = Files.readString(Path.of("src/main/java/quoin/job/Rooms.java"));
        String list = source.substring(source.indexOf("LATER"), source.indexOf(");"));
        List<String> rooms = Pattern.compile("\"([a-z-]+)\"")
                .matcher(list)
                .results()
                .map(m -> m.group(1))
                .toList();
        assertThat(rooms).as("the scan must find something").contains("fixings", "heat");
        assertThat(rooms).allSatisfy(room -> assertThat(WORDS.keys()).contains("room." + room));
    }

    @Test
    void everyCautionHasWords() {
        assertThat(without("caution.", CAUTION)).isEmpty();
    }

    @Test
    void everyProblemHasWords() {
        assertThat(without("problem.", PROBLEM)).isEmpty();
    }

    @Test
    void everySiteFactHasWords() {
        for (String fact : SiteFacts.ANSWERS.keySet()) {
            assertThat(WORDS.has("step.site-fact." + fact)).as(fact).isTrue();
            assertThat(WORDS.has("clause.site." + fact)).as(fact).isTrue();
        }
    }

    @Test
    void everyFigureHasWords() {
        assertThat(Figures.CATALOGUE.figures())
                .allSatisfy(figure -> assertThat(WORDS.figure(figure.id())).isNotEqualTo(figure.id()));
    }

    private Set<String> without(String kind, Pattern pattern) {
        Set<String> missing = codes(pattern);
        missing.removeIf(code -> WORDS.has(kind + code));
        return missing;
    }

    private Set<String> codes(Pattern pattern) {
        Set<String> codes = new TreeSet<>();
        Matcher matcher = pattern.matcher(sources);
        while (matcher.find()) {
            codes.add(matcher.group(1));
        }
        return codes;
    }

    private static String readSources() {
        StringBuilder all = new StringBuilder();
        for (Path root : SOURCES) {
            if (!Files.isDirectory(root)) {
                continue;
            }
            try (Stream<Path> files = Files.walk(root)) {
                files.filter(file -> file.toString().endsWith(".java"))
                        .sorted()
                        .forEach(file -> all.append(read(file)));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return all.toString();
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
