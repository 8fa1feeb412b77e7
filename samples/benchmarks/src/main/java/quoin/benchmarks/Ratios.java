package quoin.benchmarks;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;
import org.openjdk.jmh.util.Statistics;

/** Runs every candidate against its yardstick and prints the medians of the ratios. */
public final class Ratios {
    private static final int STARTS = 9;

    private Ratios() {}

    /**
     * Prints the table.
     *
     * @param args the jar of this program
     * @throws RunnerException if a benchmark fails
     * @throws IOException if another process cannot be run
     */
    public static void main(String[] args) throws RunnerException, IOException {
        System.out.println(
                "candidate              ratio to code by hand (5 % to 95 %)     promised    bytes an evaluation");
        for (Candidates.Line line : Candidates.LINES) {
            Options options = new OptionsBuilder()
                    .include(RoomBenchmark.class.getName())
                    .param("name", line.name())
                    .verbosity(VerboseMode.SILENT)
                    .build();
            RunResult result = new Runner(options).runSingle();
            Statistics ratio = statistics(result, "ratio");
            Statistics bytes = statistics(result, "bytes");
            System.out.println(String.format(
                    Locale.ROOT,
                    "%-22s %6.2f (%.2f to %.2f) %28s %12.0f%s",
                    line.name(),
                    ratio.getPercentile(50),
                    ratio.getPercentile(5),
                    ratio.getPercentile(95),
                    promise(line.most()),
                    bytes.getPercentile(50),
                    promise(line.bytes())));
        }
        System.out.println(String.format(
                Locale.ROOT,
                "first evaluation in a fresh JVM, the program loaded and the library not: median %.2f ms of %d, at most 5",
                first(args[0]),
                STARTS));
        Trials.print();
    }

    private static Statistics statistics(RunResult result, String name) {
        return Objects.requireNonNull(result.getSecondaryResults().get(name), name)
                .getStatistics();
    }

    private static String promise(double most) {
        return Double.isNaN(most) ? "" : String.format(Locale.ROOT, " (at most %.4g)", most);
    }

    /** From jars, as programs come: opening the first jar of all costs the JVM 3 ms more, whatever is in it. */
    private static double first(String jar) {
        String path = jar + File.pathSeparator + System.getProperty("java.class.path");
        double[] times = new double[STARTS];
        for (int i = 0; i < STARTS; i++) {
            times[i] = Double.parseDouble(freshOn(path, FirstUse.class).split(" ", 2)[0]);
        }
        Arrays.sort(times);
        return times[STARTS / 2];
    }

    /** What the main method of a class prints in a JVM of its own. */
    static String fresh(Class<?> main, String... options) {
        return freshOn(System.getProperty("java.class.path"), main, options);
    }

    private static String freshOn(String path, Class<?> main, String... options) {
        try {
            List<String> command = new ArrayList<>();
            command.add(ProcessHandle.current().info().command().orElse("java"));
            command.addAll(Arrays.asList(options));
            command.addAll(Arrays.asList("-cp", path, main.getName()));
            Process process = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
