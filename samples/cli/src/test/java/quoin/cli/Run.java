package quoin.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** One run of the command line with its streams caught. */
record Run(int code, String out, String err) {
    static final Path DEMO = Path.of("demo");

    static Run of(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream outStream = Main.utf8(out);
        PrintStream errStream = Main.utf8(err);
        int code = Main.run(List.of(args), outStream, errStream);
        outStream.flush();
        errStream.flush();
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    static String demo(String name) {
        return DEMO.resolve(name).toString();
    }
}
