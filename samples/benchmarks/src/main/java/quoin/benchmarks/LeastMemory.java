package quoin.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** A million trials by the library in a small heap, and how much memory the whole process took at most. */
public final class LeastMemory {
    private LeastMemory() {}

    /**
     * Prints the peak.
     *
     * @param args none
     * @throws IOException if the system's account of the process cannot be read
     */
    public static void main(String[] args) throws IOException {
        double value = Trials.byLibrary(1).outputs().get(4).value();
        Path status = Path.of("/proc/self/status");
        Optional<String> peak = Files.isReadable(status)
                ? Files.readAllLines(status).stream()
                        .filter(line -> line.startsWith("VmHWM"))
                        .findFirst()
                : Optional.empty();
        String text = peak.map(line -> Long.parseLong(line.replaceAll("\\D", "")) / 1024 + " MB, at most 100 MB")
                .orElse("not known on this system");
        System.out.println(
                "a million trials in a heap of 64 MB, peak of the whole process: " + text + " (" + value + ")");
    }
}
