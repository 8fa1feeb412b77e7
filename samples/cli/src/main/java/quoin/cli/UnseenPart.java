package quoin.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import quoin.job.Assessment;
import quoin.judge.Args;
import quoin.opening.AdjustedReading;
import quoin.words.Words;

/** The slips that nothing would have shown: how large in which reading, what they do, and what no reading ever shows. */
final class UnseenPart {
    private final Assessment assessment;
    private final Words words;

    UnseenPart(Assessment assessment, Words words) {
        this.assessment = assessment;
        this.words = words;
    }

    void on(Page page) {
        List<AdjustedReading> readings = assessment.adjustment().readings().stream()
                .filter(reading -> !reading.of().startsWith("angle@"))
                .toList();
        if (readings.isEmpty()) {
            return;
        }
        page.heading("WHAT NOTHING HERE WOULD HAVE SHOWN");
        AdjustedReading worst = readings.get(0);
        for (AdjustedReading reading : readings) {
            worst = reading.detectable() > worst.detectable() ? reading : worst;
        }
        page.text(2, sentence(words.unseen(worst.name(), worst.detectable())));
        others(page, readings, worst);
        effect(page, readings);
        page.text(2, sentence(words.text("unseen.common", Args.NONE)));
    }

    /** The largest first; of readings of one name the one that hides most. */
    private void others(Page page, List<AdjustedReading> readings, AdjustedReading worst) {
        Map<String, Double> largest = new LinkedHashMap<>();
        readings.forEach(reading -> largest.merge(reading.name(), reading.detectable(), Math::max));
        largest.remove(worst.name());
        Map<String, List<String>> bySize = new LinkedHashMap<>();
        largest.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .forEach(entry -> bySize.computeIfAbsent(words.slip(entry.getValue()), size -> new ArrayList<>())
                        .add(words.place(entry.getKey())));
        if (!bySize.isEmpty()) {
            page.text(2, capital(words.text("unseen.others", Args.NONE)) + ":");
        }
        bySize.forEach((size, places) -> page.hanging("  - ", size + ": " + String.join("; ", places) + "."));
    }

    /** What the worst of them does, where every one of them has a bound. */
    private void effect(Page page, List<AdjustedReading> readings) {
        double width = 0;
        double length = 0;
        double angle = 0;
        for (AdjustedReading reading : readings) {
            width = Math.max(width, reading.effect().widthMm());
            length = Math.max(length, reading.effect().lengthMm());
            angle = Math.max(angle, reading.effect().angleRad());
        }
        if (Double.isFinite(width + length + angle)) {
            page.text(2, sentence(words.unseenEffect(width, length, angle)));
        }
    }

    private static String sentence(String text) {
        return capital(text) + ".";
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
