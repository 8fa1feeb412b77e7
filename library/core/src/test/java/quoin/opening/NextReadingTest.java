package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Adjust, suspect, ask, supply, named: rectangles of 2400 by 1500 with one reading misread. Mark: standard (what is asked
 * for is checked by taking it), our own reading sets.
 */
class NextReadingTest {
    private static final double A = 2400;
    private static final double B = 1500;

    /** What is right at that place. */
    private static double right(String of) {
        Span span = Span.parse(of);
        Model model = Model.of(List.of(), false);
        return model.observe(span, model.rectangle(A, B), new double[5]);
    }

    private static List<Reading> set(String name, String wrong, double by) {
        List<Reading> readings = new ArrayList<>();
        for (String of : Surveys.SIX) {
            readings.add(Surveys.read(of, 1, right(of) + (of.equals(wrong) ? by : 0)));
        }
        List<String> more = switch (name) {
            case "middles" -> List.of("width@1/2", "length@1/2");
            case "quarters" -> List.of("width@1/4", "width@3/4", "length@1/4", "length@3/4");
            case "cross" -> List.of("cross@head-left:right:1/2");
            case "check" -> List.of("check@head-left:800 mm:600 mm");
            default -> List.of();
        };
        more.forEach(of -> readings.add(Surveys.read(of, 1, right(of))));
        return readings;
    }

    /** As many readings as are asked for, each true, until one name is left. */
    private static List<String> asked(List<Reading> start, List<Span> cannot) {
        List<Reading> readings = new ArrayList<>(start);
        List<String> asked = new ArrayList<>();
        while (asked.size() < 5) {
            List<Suspect> suspects = Surveys.adjust(readings).suspects(cannot);
            if (suspects.size() == 1 && suspects.get(0).readings().size() == 1) {
                asked.add("named " + suspects.get(0).readings().get(0));
                return asked;
            }
            String next = suspects.get(0).askFor();
            asked.add(next);
            readings.add(Surveys.read(next, 1, right(next)));
        }
        return asked;
    }

    /** Where two are bound to each other, one more reading names the one: whichever it is. */
    @ParameterizedTest
    @CsvSource({
        "middles, width@head, 16",
        "middles, width@foot, 16",
        "middles, diagonal@head-left, 16",
        "middles, diagonal@head-right, 16",
        "quarters, diagonal@head-left, 12",
        "quarters, diagonal@head-right, -12",
        "middles, length@left, 25",
        "middles, length@right, -25",
        "cross, width@foot, 60",
        "cross, length@left, 60",
        "cross, diagonal@head-right, -60",
        "check, width@head, 60",
        "check, length@right, 60",
        "check, diagonal@head-left, 60"
    })
    void oneMoreReadingNamesTheOne(String set, String wrong, double by) {
        List<Reading> readings = set(set, wrong, by);
        assertThat(Surveys.adjust(readings).suspects()).isNotEmpty();
        List<String> asked = asked(readings, List.of());
        assertThat(asked.get(asked.size() - 1)).isEqualTo("named " + wrong);
        assertThat(asked.size()).isLessThanOrEqualTo(2);
    }

    /** Six readings, one redundancy, all six suspected: two more readings at most. */
    @Test
    void ofSixTwoMoreAtMost() {
        for (String wrong : Surveys.SIX) {
            for (double by : new double[] {-60, 60}) {
                List<Reading> readings = set("six", wrong, by);
                assertThat(Surveys.adjust(readings).suspects().get(0).readings())
                        .containsExactlyInAnyOrderElementsOf(Surveys.SIX);
                List<String> asked = asked(readings, List.of());
                assertThat(asked.get(asked.size() - 1)).isEqualTo("named " + wrong);
                assertThat(asked.size()).isBetween(2, 3);
            }
        }
    }

    /**
     * It is the best by actually taking every candidate, for every member of the group as the culprit with the slip it
     * would have, and counting who is named: no candidate leaves fewer by more than what counts as alike.
     */
    @ParameterizedTest
    @ValueSource(strings = {"six", "middles", "quarters", "cross", "check"})
    void noOtherReadingWouldTellMore(String set) {
        for (String wrong : List.of("width@foot", "diagonal@head-right", "length@left")) {
            Adjustment net = Surveys.adjust(set(set, wrong, 60));
            Suspect suspect = net.suspects().get(0);
            Map<String, Double> left = new HashMap<>();
            for (String candidate : candidates(set)) {
                left.put(candidate, leftOver(set, suspect, candidate));
            }
            double least = left.values().stream().min(Double::compare).orElseThrow();
            if (suspect.readings().size() > 1) {
                assertThat(left.getOrDefault(suspect.askFor(), Double.NaN))
                        .as(set + " " + wrong + " " + suspect.askFor())
                        .isLessThanOrEqualTo(least + 0.5 / suspect.readings().size());
            }
        }
    }

    private static Set<String> candidates(String set) {
        Set<String> all = new LinkedHashSet<>();
        set(set, "", 0).forEach(reading -> all.add(reading.of().text()));
        for (String at : List.of("1/4", "1/3", "1/2", "3/4")) {
            all.add("width@" + at);
            all.add("length@" + at);
        }
        for (Corner corner : Corner.values()) {
            for (Side side : Side.values()) {
                if (!side.touches(corner)) {
                    all.add("cross@" + corner.text() + ":" + side.text() + ":1/2");
                }
            }
            all.add("check@" + corner.text() + ":600 mm:800 mm");
        }
        return all;
    }

    /** How many of the others are named beside the culprit, on average over the culprits; by full adjustments. */
    private static double leftOver(String set, Suspect suspect, String candidate) {
        double sum = 0;
        for (Suspect.Slip slip : suspect.slips()) {
            List<Reading> readings = new ArrayList<>(set(set, slip.reading(), slip.by()));
            readings.add(Surveys.read(candidate, 1, right(candidate)));
            Set<String> named = new LinkedHashSet<>();
            Surveys.adjust(readings).suspects().forEach(s -> named.addAll(s.readings()));
            named.remove(slip.reading());
            sum += named.size();
        }
        return sum / suspect.slips().size();
    }

    /** What cannot be taken is not asked for, and what is asked for instead still names the one. */
    @Test
    void whatCannotBeTakenIsNotAskedFor() {
        List<Reading> readings = set("quarters", "diagonal@head-left", 40);
        List<Span> diagonals = List.of(Span.parse("diagonal@head-left"), Span.parse("diagonal@head-right"));
        Suspect suspect = Surveys.adjust(readings).suspects(diagonals).get(0);
        assertThat(suspect.readings()).contains("diagonal@head-left", "diagonal@head-right");
        assertThat(suspect.askFor()).startsWith("cross@");
        assertThat(asked(readings, diagonals)).containsExactly(suspect.askFor(), "named diagonal@head-left");
        // One reading alone that cannot be repeated: another that sees the same.
        List<Span> more = List.of(Span.parse("width@head"));
        Suspect alone =
                Surveys.adjust(set("quarters", "width@head", 40)).suspects(more).get(0);
        assertThat(alone.readings()).containsExactly("width@head");
        assertThat(alone.askFor()).isNotEqualTo("width@head");
    }

    /** A middle width says which pair, and no more: it is never asked for to part a pair. */
    @Test
    void aMiddleWidthNeverPartsAPair() {
        for (String wrong : Surveys.SIX) {
            Suspect suspect =
                    Surveys.adjust(set("middles", wrong, 60)).suspects().get(0);
            assertThat(suspect.readings()).hasSize(2).contains(wrong);
            assertThat(suspect.askFor()).isNotIn("width@1/2", "length@1/2");
        }
    }

    /** The same survey gives the same question, whatever the order in which its readings were taken. */
    @Test
    void theOrderOfReadingsIsNoMatterButForTies() {
        List<Reading> readings = set("quarters", "diagonal@head-left", 10);
        List<Reading> turned = new ArrayList<>(readings);
        Collections.reverse(turned);
        assertThat(Surveys.adjust(turned).suspects().get(0).askFor())
                .isEqualTo(Surveys.adjust(readings).suspects().get(0).askFor());
    }

    /** What a slip looks like, and what should have been read. */
    @Test
    void theCorrectedValue() {
        List<Reading> readings = set("quarters", "width@head", 10);
        Suspect.Slip slip = Surveys.adjust(readings).suspects().get(0).slips().get(0);
        assertThat(slip.looksLike()).isEqualTo("whole-10-mm");
        assertThat(slip.corrected()).isEqualTo(A);
        List<Reading> odd = set("quarters", "width@head", 47.3);
        Suspect.Slip other = Surveys.adjust(odd).suspects().get(0).slips().get(0);
        assertThat(other.looksLike()).isEmpty();
        assertThat(other.corrected()).isCloseTo(A, within(0.1));
    }
}
