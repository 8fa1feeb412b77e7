package quoin.cli;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/**
 * What a command line asks for.
 *
 * @param jobs the job documents; one, or none where lines are read
 * @param lines the files with one job a line; one or none
 * @param rulebooks the rulebooks named
 * @param parts the parts lists named
 * @param json whether the answer is JSON
 */
record Call(List<String> jobs, List<String> lines, List<String> rulebooks, List<String> parts, boolean json) {
    static final String USAGE = """
            quoin assess JOB [--rulebook FILE]... [--parts FILE]... [--json]
            quoin assess --lines FILE.ndjson [--rulebook FILE]... [--parts FILE]...
            quoin suits RULEBOOK --width WIDTH --length LENGTH [--choose KIND=PART]...
            quoin replay ANSWER JOB [--rulebook FILE]... [--parts FILE]...
            quoin impact OLD NEW JOBS.ndjson [--parts FILE]... [--json]
            quoin rulebook check FOLDER
            quoin rulebook check FILE [--parts FILE]...
            quoin rulebook compare OLD NEW

              JOB               a job document (quoin-job/1)
              --rulebook FILE   a rulebook (quoin-rulebook/1); may be given several times
              --parts FILE      a parts list (quoin-parts/1); may be given several times
              --json            write the answer as JSON (quoin-assessment/1)
              --lines FILE      one job a line in, one answer a line out, in order
              --width, --length a finished frame: which openings it suits; 20 where there is none
              --choose          a part that the rulebook's amounts go by, such as drive=drive-m
              replay            whether the answer can be made again, byte by byte, or what differs
              rulebook check    whether the cases in a folder of rulebooks hold, and what none touches;
                                of one rulebook what is wrong with it, each with a witness
              rulebook compare  what two versions state, and what comes out, differently
              impact            what two rulebooks make of each job, one a line, then the totals
            Options may stand in any order. Without --rulebook, or without --parts, those
            that lie in the folder of the job are taken.
            Exit: 0 pass (--lines, impact: every line answered; replay: the same bytes),
            10 undecided, 20 fail (replay: not the same; check: a case does not hold),
            2 bad use, a text that is not a valid document, or (compare) a version too
            small for what changed, 1 a fault of ours.
            """;

    private static final List<String> OPTIONS = List.of("--rulebook", "--parts", "--json", "--lines");

    /** Reads the words after {@code quoin}. */
    static Call parse(List<String> words) throws BadUse {
        if (words.isEmpty()) {
            throw new BadUse("no command was given, write assess JOB or rulebook check FILE");
        }
        if (!words.get(0).equals("assess")) {
            throw new BadUse(words.get(0) + " is not a command, write assess JOB or rulebook check FILE");
        }
        Call call = gather(words);
        call.check();
        return call;
    }

    /** The files and options after a command, whichever it is; nothing is checked. */
    static Call gather(List<String> words) throws BadUse {
        Call call = new Call(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), false);
        boolean json = false;
        Iterator<String> rest = words.subList(1, words.size()).iterator();
        while (rest.hasNext()) {
            json |= call.take(rest.next(), rest);
        }
        return new Call(call.jobs, call.lines, call.rulebooks, call.parts, json);
    }

    private boolean take(String word, Iterator<String> rest) throws BadUse {
        int equals = word.indexOf('=');
        String name = word.startsWith("--") && equals > 0 ? word.substring(0, equals) : word;
        switch (name) {
            case "--json" -> {
                if (equals > 0) {
                    throw new BadUse("--json takes no value, write --json alone");
                }
                return true;
            }
            case "--rulebook" -> rulebooks.add(value(word, name, equals, rest));
            case "--parts" -> parts.add(value(word, name, equals, rest));
            case "--lines" -> lines.add(value(word, name, equals, rest));
            default -> {
                if (word.startsWith("-")) {
                    throw new BadUse(name + " is not an option, use one of " + String.join(", ", OPTIONS));
                }
                jobs.add(word);
            }
        }
        return false;
    }

    private static String value(String word, String name, int equals, Iterator<String> rest) throws BadUse {
        String value = equals > 0 ? word.substring(equals + 1) : rest.hasNext() ? rest.next() : "";
        if (value.isEmpty() || value.startsWith("--")) {
            throw new BadUse(name + " lacks its file, write " + name + " FILE");
        }
        return value;
    }

    private void check() throws BadUse {
        if (lines.size() > 1) {
            throw new BadUse("--lines is given " + lines.size() + " times, give it once");
        }
        if (!lines.isEmpty() && !jobs.isEmpty()) {
            throw new BadUse("--lines and a job are both given (" + jobs.get(0) + "), give one of them");
        }
        if (lines.isEmpty() && jobs.isEmpty()) {
            throw new BadUse("no job is given, write assess JOB or assess --lines FILE");
        }
        if (jobs.size() > 1) {
            throw new BadUse("more than one job is given (" + String.join(", ", jobs)
                    + "), give one, or put them in one file and use --lines FILE");
        }
    }
}
