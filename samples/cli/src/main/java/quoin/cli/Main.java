package quoin.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** {@code quoin assess JOB …} and {@code quoin rulebook …}: see {@link Call#USAGE}. */
public final class Main {
    static final int PASS = 0;
    static final int OUR_FAULT = 1;
    static final int BAD = 2;
    static final int UNDECIDED = 10;
    static final int FAIL = 20;

    private Main() {}

    /**
     * Runs the command and ends the process with its exit code.
     *
     * @param args the words of the command line
     */
    public static void main(String[] args) {
        PrintStream out = utf8(new FileOutputStream(FileDescriptor.out));
        PrintStream err = utf8(new FileOutputStream(FileDescriptor.err));
        int code = run(List.of(args), out, err);
        out.flush();
        err.flush();
        System.exit(code);
    }

    /** A stream in UTF-8 whatever the locale of the machine. */
    static PrintStream utf8(OutputStream stream) {
        return new PrintStream(stream, false, StandardCharsets.UTF_8);
    }

    /**
     * Runs the command.
     *
     * @param args the words of the command line
     * @param out where the answer goes
     * @param err where problems and progress go
     * @return the exit code
     */
    static int run(List<String> args, PrintStream out, PrintStream err) {
        if (args.size() == 1 && (args.get(0).equals("--help") || args.get(0).equals("-h"))) {
            out.print(Call.USAGE);
            return PASS;
        }
        try {
            return run(args.isEmpty() ? "" : args.get(0), args, out, err);
        } catch (BadUse e) {
            err.print("quoin: " + e.getMessage() + "\n");
            return BAD;
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            err.print("quoin: a fault of ours, please report it: " + e + "\n");
            for (StackTraceElement element : e.getStackTrace()) {
                err.print("    at " + element + "\n");
            }
            return OUR_FAULT;
        }
    }

    private static int run(String command, List<String> args, PrintStream out, PrintStream err) throws BadUse {
        return switch (command) {
            case "suits" -> SuitsCall.run(args.subList(1, args.size()), out, err);
            case "replay" -> ReplayOne.run(args, out, err);
            case "rulebook" -> RulebookCall.run(args, out, err);
            case "impact" -> ImpactLines.run(args, out, err);
            default -> {
                Call call = Call.parse(args);
                yield call.lines().isEmpty() ? AssessOne.run(call, out, err) : AssessLines.run(call, out, err);
            }
        };
    }
}
