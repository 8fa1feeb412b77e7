package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quoin.judge.Bound;
import quoin.judge.Conformity;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Influence;
import quoin.measure.Instrument;
import quoin.measure.Uncertain;

/**
 * The odds of a frame in a racked opening with touched points, against how often it goes in when the readings are drawn
 * anew. The simulation shares the adjustment and the placing with the library; the odds it is held against do not.
 */
class RackedOddsTest {
    private static final int DRAWS = 2000;

    private static final Instrument TAPE =
            Instrument.of("tape", Instrument.Kind.STATED).withEach(List.of(Doubt.standard(0.85, Dimension.LENGTH)));

    private static final List<Reading> READINGS = List.of(
            Reading.of("width@head", TAPE, 1500, 1501),
            Reading.of("width@1/4", TAPE, 1500),
            Reading.of("width@1/2", TAPE, 1500),
            Reading.of("width@3/4", TAPE, 1500),
            Reading.of("width@foot", TAPE, 1501),
            Reading.of("length@left", TAPE, 2400),
            Reading.of("length@1/2", TAPE, 2400),
            Reading.of("length@right", TAPE, 2401),
            Reading.of("diagonal@head-left", TAPE, 2836, 2837),
            Reading.of("diagonal@head-right", TAPE, 2826, 2827),
            Reading.of("cross@head-left:right:1/2", TAPE, 1925),
            Reading.of("cross@head-right:left:1/2", TAPE, 1918));

    /** Within 0.01, the tolerance of the project for claimed odds; the draws themselves scatter by 0.001 here. */
    @Test
    void gapsThatAreEqualOnlyOutsideTheHoleDoNotSpoilTheOdds() {
        double width = 1486;
        double length = 2394;
        Random random = new Random(20261125);
        int goesIn = 0;
        for (int n = 0; n < DRAWS; n++) {
            Opening opening = Opening.of(Survey.finished(drawn(random), 2));
            Gaps gaps =
                    Gaps.of(opening, cut(width, random), cut(length, random)).orElseThrow();
            goesIn += Gaps.least(gaps).value() >= 1 ? 1 : 0;
        }
        Opening opening = Opening.of(Survey.finished(READINGS, 2));
        Gaps gaps =
                Gaps.of(opening, size("width", width), size("length", length)).orElseThrow();
        double claimed = Conformity.odds(Gaps.least(gaps), Bound.atLeast(1)).value();
        assertThat(claimed).isCloseTo(goesIn / (double) DRAWS, within(0.01));
    }

    private static List<Reading> drawn(Random random) {
        Map<String, Double> draws = new HashMap<>();
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < READINGS.size(); i++) {
            Reading reading = READINGS.get(i);
            double[] read =
                    reading.values().stream().mapToDouble(Double::doubleValue).toArray();
            List<Double> values = new ArrayList<>();
            for (Uncertain value : reading.by().read(i + ":" + reading.name(), read)) {
                double sum = value.value();
                for (int k = 0; k < value.influences().size(); k++) {
                    String id = value.influences().get(k).id();
                    sum += value.contribution(k) * draws.computeIfAbsent(id, name -> random.nextGaussian());
                }
                values.add(sum);
            }
            readings.add(new Reading(reading.id(), reading.of(), reading.in(), values, reading.by()));
        }
        return readings;
    }

    private static Uncertain cut(double size, Random random) {
        return Uncertain.exact(size + random.nextDouble() - 0.5);
    }

    private static Uncertain size(String name, double size) {
        return Uncertain.of(size, Influence.rectangular("cut/" + name, 0.5));
    }
}
