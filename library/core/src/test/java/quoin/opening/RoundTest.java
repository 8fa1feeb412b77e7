package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The order in which places are read, against what is said of it. */
class RoundTest {
    private static final List<String> ALL = List.of(
            "depth@head-left",
            "fall@head",
            "width@head",
            "width@head/back",
            "depth@head-right",
            "length@right",
            "depth@foot-right",
            "width@foot",
            "bow@foot:3/4",
            "bow@foot:1/4",
            "depth@foot-left",
            "bow@left:1/2",
            "length@left",
            "width@1/4",
            "width@1/2",
            "width@1/2/back",
            "width@3/4",
            "depth@middle",
            "length@1/4",
            "length@3/4",
            "cross@head-left:right:1/2",
            "diagonal@head-left",
            "diagonal@head-right");

    private static List<Survey.Place> places(List<String> names) {
        return names.stream().map(Survey.Place::parse).toList();
    }

    private static List<String> walk(List<String> taken, List<String> places) {
        List<Reading> readings = taken.stream()
                .map(Survey.Place::parse)
                .map(place -> new Reading("", place.of(), place.in(), List.of(1.0), Surveys.fresh("tape", 1)))
                .toList();
        return Surveys.straight(readings).walk(places(places)).stream()
                .map(Survey.Place::text)
                .toList();
    }

    /** Head, right, foot (walked right to left), left; then across; whatever the order asked in. */
    @Test
    void oneRoundWhateverTheOrder() {
        List<Integer> stations = walk(List.of(), ALL).stream()
                .map(name -> Round.station(Survey.Place.parse(name).of()))
                .toList();
        assertThat(stations).isSorted();
        List<String> round = walk(List.of(), ALL);
        assertThat(round).containsExactlyInAnyOrderElementsOf(ALL);
        assertThat(round.indexOf("bow@foot:3/4")).isLessThan(round.indexOf("bow@foot:1/4"));
        assertThat(round.indexOf("width@1/2/back")).isEqualTo(round.indexOf("width@1/2") + 1);
        Random random = new Random(7);
        for (int i = 0; i < 50; i++) {
            List<String> shuffled = new ArrayList<>(ALL);
            Collections.shuffle(shuffled, random);
            assertThat(walk(List.of(), shuffled)).isEqualTo(round);
        }
    }

    /** It goes on from where the last reading was taken: the stations run up, jump back once, and run up again. */
    @Test
    void itGoesOnFromTheLastReading() {
        for (String last : ALL) {
            List<String> rest = new ArrayList<>(ALL);
            rest.remove(last);
            List<String> walk = walk(List.of(last), rest);
            List<String> round = walk(List.of(), ALL);
            int at = round.indexOf(last);
            List<String> turned = new ArrayList<>(round.subList(at + 1, round.size()));
            turned.addAll(round.subList(0, at));
            assertThat(walk).isEqualTo(turned);
        }
    }

    /** A repeat at once repeats the slip: it waits for the second round. */
    @Test
    void repeatsWaitForASecondRound() {
        assertThat(walk(List.of("width@head"), List.of("width@head", "length@left", "length@left", "width@foot")))
                .containsExactly("width@foot", "length@left", "width@head", "length@left");
    }

    @Test
    void placesAreReadAndWritten() {
        for (String name : ALL) {
            assertThat(Survey.Place.parse(name).text()).isEqualTo(name);
        }
        Survey back = Surveys.straight(List.of(Surveys.behind("width@1/2", 1, 1500)));
        assertThat(back.has(Survey.Place.parse("width@1/2/back"))).isTrue();
        assertThat(back.has(Survey.Place.parse("width@1/2"))).isFalse();
        assertThat(back.has(Span.parse("width@1/2"))).isTrue();
    }
}
