package quoin.benchmarks;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/** The same million trials in Python, numpy and its partition, where they are installed. */
final class Numpy {
    private static final int RUNS = 3;

    private Numpy() {}

    /** The library's time by numpy's, the best of a few runs each. */
    static String compared() throws IOException {
        double theirs = best();
        if (Double.isNaN(theirs)) {
            return "a million trials: no python3 with numpy here to compare with";
        }
        double ours = Double.parseDouble(Ratios.fresh(Alone.class, "-XX:+UseSerialGC"));
        return String.format(
                Locale.ROOT, "a million trials: ratio to numpy, partition %.2f, at most 0.5", ours / theirs);
    }

    private static double best() throws IOException {
        try (InputStream script = Numpy.class.getResourceAsStream("trials.py")) {
            if (script == null) {
                throw new IOException("resource trials.py must be there");
            }
            Process python = new ProcessBuilder(List.of("python3", "-"))
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            try (var in = python.getOutputStream()) {
                script.transferTo(in);
            }
            String seconds = new String(python.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
            return seconds.isEmpty() ? Double.NaN : Double.parseDouble(seconds);
        } catch (IOException absent) {
            return Double.NaN;
        }
    }

    /** The library alone in a JVM. */
    static final class Alone {
        private Alone() {}

        public static void main(String[] args) {
            double best = Double.POSITIVE_INFINITY;
            for (int seed = 1; seed <= 2 * RUNS; seed++) {
                long start = System.nanoTime();
                Trials.byLibrary(seed);
                best = Math.min(best, (System.nanoTime() - start) / 1e9);
            }
            System.out.println(best);
        }
    }
}
