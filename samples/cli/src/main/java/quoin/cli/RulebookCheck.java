package quoin.cli;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import quoin.job.Figures;
import quoin.json.PartsDocument;
import quoin.json.Read;
import quoin.json.RulebookDocument;
import quoin.judge.Problem;
import quoin.parts.Parts;
import quoin.rulebook.Rulebook;

/** What is wrong with a rulebook: its problems on standard error, a summary on standard output. */
final class RulebookCheck {
    private RulebookCheck() {}

    static int run(List<String> words, PrintStream out, PrintStream err) throws BadUse {
        List<String> files = new ArrayList<>();
        List<String> partsFiles = new ArrayList<>();
        Iterator<String> rest = words.iterator();
        while (rest.hasNext()) {
            String word = rest.next();
            if (word.equals("--parts") && rest.hasNext()) {
                partsFiles.add(rest.next());
            } else if (word.startsWith("-")) {
                throw new BadUse(word + " is not an option here, write rulebook check FILE [--parts FILE]...");
            } else {
                files.add(word);
            }
        }
        if (files.size() != 1) {
            throw new BadUse("rulebook check takes one rulebook, got " + files.size() + ", write rulebook check FILE");
        }
        return check(files.get(0), partsFiles, out, err);
    }

    private static int check(String file, List<String> partsFiles, PrintStream out, PrintStream err) throws BadUse {
        Problems problems = new Problems();
        List<Parts> parts = new ArrayList<>();
        for (String partsFile : partsFiles) {
            Read<Parts> read = PartsDocument.read(Files.bytes(partsFile));
            problems.add(partsFile, read.problems());
            read.value().ifPresent(parts::add);
        }
        Read<Rulebook> read = RulebookDocument.read(Files.bytes(file), Figures.CATALOGUE, parts);
        problems.add(file, read.problems());
        problems.print(err);
        read.value().filter(rulebook -> !problems.refuse()).ifPresent(rulebook -> say(rulebook, read.problems(), out));
        return problems.refuse() || read.value().isEmpty() ? Main.BAD : Main.PASS;
    }

    private static void say(Rulebook rulebook, List<Problem> problems, PrintStream out) {
        Page page = new Page();
        page.text(
                0,
                rulebook + ", in force from " + rulebook.effective() + ": "
                        + count(rulebook.sizes().size(), "size") + ", "
                        + count(rulebook.bounds().size(), "bound") + ".");
        page.text(
                0,
                problems.isEmpty()
                        ? "Nothing is wrong: no size steps down as the opening grows, every bound can fail and can"
                                + " pass, and every clause and band can matter, as far as the limits on sizes tell."
                        : count(problems.size(), "warning") + ", said above; the rulebook can be used.");
        out.print(page);
    }

    private static String count(int n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
    }
}
