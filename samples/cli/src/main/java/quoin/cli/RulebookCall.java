package quoin.cli;

import java.io.PrintStream;
import java.util.List;

/** {@code quoin rulebook …}: what is asked of rules alone. */
final class RulebookCall {
    private static final String COMMANDS = "rulebook check FOLDER, rulebook check FILE or rulebook compare OLD NEW";

    private RulebookCall() {}

    static int run(List<String> words, PrintStream out, PrintStream err) throws BadUse {
        if (words.size() < 2) {
            throw new BadUse("rulebook lacks its command, write " + COMMANDS);
        }
        List<String> rest = words.subList(2, words.size());
        return switch (words.get(1)) {
            case "check" -> check(rest, out, err);
            case "compare" -> RulebookCompare.run(rest, out, err);
            default -> throw new BadUse(words.get(1) + " is not a command for rulebooks, write " + COMMANDS);
        };
    }

    private static int check(List<String> words, PrintStream out, PrintStream err) throws BadUse {
        boolean folder = words.size() == 1 && java.nio.file.Files.isDirectory(Files.path(words.get(0)));
        return folder ? CheckFolder.run(words.get(0), out, err) : RulebookCheck.run(words, out, err);
    }
}
