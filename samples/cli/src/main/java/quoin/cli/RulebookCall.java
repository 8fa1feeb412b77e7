package quoin.cli;

import java.io.PrintStream;
import java.util.List;

/** {@code quoin rulebook …}: what is asked of rules alone. */
final class RulebookCall {
    private RulebookCall() {}

    static int run(List<String> words, PrintStream out, PrintStream err) throws BadUse {
        if (words.size() != 3 || !words.get(1).equals("check")) {
            throw new BadUse("rulebook takes a command and a folder, write rulebook check FOLDER");
        }
        String folder = words.get(2);
        if (!java.nio.file.Files.isDirectory(Files.path(folder))) {
            throw new BadUse(folder + " is no folder, name one with rulebooks and cases");
        }
        return CheckFolder.run(folder, out, err);
    }
}
