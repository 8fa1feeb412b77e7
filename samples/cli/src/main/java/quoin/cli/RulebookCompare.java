package quoin.cli;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import quoin.job.Figures;
import quoin.json.Read;
import quoin.json.RulebookDocument;
import quoin.judge.Args;
import quoin.judge.Problem;
import quoin.rulebook.Comparison;
import quoin.rulebook.Rulebook;
import quoin.words.RuleWords;

/** What changed between two versions of a rulebook, as a page to read. */
final class RulebookCompare {
    private static final RuleWords WORDS = RuleWords.in(Locale.ENGLISH);

    private RulebookCompare() {}

    static int run(List<String> files, PrintStream out, PrintStream err) throws BadUse {
        for (String file : files) {
            if (file.startsWith("-")) {
                throw new BadUse(file + " is not an option here, write rulebook compare OLD NEW");
            }
        }
        if (files.size() != 2) {
            throw new BadUse(
                    "rulebook compare takes two rulebooks, got " + files.size() + ", write rulebook compare OLD NEW");
        }
        Problems problems = new Problems();
        Optional<Rulebook> old = read(files.get(0), problems);
        Optional<Rulebook> now = read(files.get(1), problems);
        if (problems.refuse() || old.isEmpty() || now.isEmpty()) {
            problems.print(err);
            return Main.BAD;
        }
        Comparison comparison = Comparison.of(old.get(), now.get(), Figures.CATALOGUE);
        if (!comparison.isVersionEnough()) {
            problems.add(files.get(1), List.of(tooSmall(files.get(1), now.get(), comparison)));
        }
        problems.print(err);
        out.print(page(old.get(), now.get(), comparison));
        return comparison.isVersionEnough() ? Main.PASS : Main.BAD;
    }

    private static Optional<Rulebook> read(String file, Problems problems) throws BadUse {
        Read<Rulebook> read = RulebookDocument.read(Files.bytes(file));
        problems.add(file, read.problems());
        return read.value();
    }

    private static Problem tooSmall(String file, Rulebook now, Comparison comparison) throws BadUse {
        Args args = Args.of("got", now.version());
        args = comparison.leastVersion().isPresent()
                ? args.with("right", comparison.leastVersion().get())
                : args;
        return Spot.locate(Files.bytes(file), Problem.error("version-too-small", "/version", args));
    }

    private static Page page(Rulebook old, Rulebook now, Comparison comparison) {
        Page page = new Page();
        page.text(0, WORDS.text("compare.title", Map.of("id", now.id(), "old", old.version(), "now", now.version())));
        list(page, "compare.changes", comparison.changes(), WORDS::of);
        list(page, "compare.effects", comparison.effects(), WORDS::of);
        list(page, "compare.flips", comparison.flips(), WORDS::of);
        list(page, "compare.version", comparison.demands(), WORDS::of);
        Map<String, String> versions =
                Map.of("now", now.version(), "least", comparison.leastVersion().orElse(""));
        page.text(2, WORDS.text(comparison.isVersionEnough() ? "compare.enough" : "compare.too-small", versions));
        return page;
    }

    private static <T> void list(Page page, String heading, List<T> items, Function<T, String> sentence) {
        page.heading(WORDS.text(heading, Map.of()));
        if (items.isEmpty()) {
            page.text(2, WORDS.text("compare.none", Map.of()));
        }
        items.forEach(item -> page.hanging("  - ", sentence.apply(item)));
    }
}
