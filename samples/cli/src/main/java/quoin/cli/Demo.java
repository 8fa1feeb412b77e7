package quoin.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;

/** Assesses the demo job and prints its sheet; succeeds whatever the verdict. */
public final class Demo {
    private Demo() {}

    /**
     * Runs {@code assess} on the given words.
     *
     * @param args the job document, and options as for {@code quoin assess}
     */
    public static void main(String[] args) {
        PrintStream out = Main.utf8(new FileOutputStream(FileDescriptor.out));
        PrintStream err = Main.utf8(new FileOutputStream(FileDescriptor.err));
        int code = run(List.of(args), out, err);
        out.flush();
        err.flush();
        if (code != Main.PASS) {
            System.exit(code);
        }
    }

    static int run(List<String> args, PrintStream out, PrintStream err) {
        List<String> words = new ArrayList<>(List.of("assess"));
        words.addAll(args);
        int code = Main.run(words, out, err);
        return code == Main.UNDECIDED || code == Main.FAIL ? Main.PASS : code;
    }
}
