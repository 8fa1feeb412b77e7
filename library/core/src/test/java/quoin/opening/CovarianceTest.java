package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;
import quoin.measure.TapeClass;
import quoin.measure.Uncertain;

/** The covariance of the corners against the sums over all influences, which are carried by themselves. */
class CovarianceTest {
    private static final Instrument TAPE = Instrument.of("tape", Instrument.Kind.TAPE)
            .withAccuracyClass(TapeClass.II)
            .withEach(List.of(Doubt.standard(0.2, Dimension.LENGTH)))
            .withStep(1);
    private static final Instrument LASER = Instrument.of("laser", Instrument.Kind.LASER)
            .withEach(List.of(Doubt.standard(0.5, Dimension.LENGTH)))
            .withAll(List.of(Doubt.limits(1, Dimension.LENGTH)));

    private static List<Reading> readings(Instrument first, Instrument second) {
        return List.of(
                Reading.of("width@head", first, 2400, 2401),
                Reading.of("length@right", second, 1503),
                Reading.of("width@foot", first, 2411),
                Reading.of("length@left", second, 1498, 1498),
                Reading.of("diagonal@head-left", first, 2838),
                Reading.of("diagonal@head-right", second, 2833),
                Reading.of("width@1/4", first, 2403));
    }

    /** 1e-7 of the variances: the floor of 1e-8 that keeps readings without doubt apart. */
    @ParameterizedTest
    @CsvSource({"true, true, 0", "true, true, 2", "true, false, 0", "true, false, 3", "false, false, 1"})
    void influencesSayTheSame(boolean firstByTape, boolean secondByTape, double straight) {
        List<Reading> readings = readings(firstByTape ? TAPE : LASER, secondByTape ? TAPE : LASER);
        Adjustment net = Adjustment.of(Survey.finished(readings, straight), Plane.FRONT);
        List<Uncertain> unknowns = net.unknowns();
        double[][] covariance = net.covariance();
        assertThat(covariance).hasNumberOfRows(unknowns.size());
        for (int k = 0; k < covariance.length; k++) {
            assertThat(covariance[k]).hasSize(unknowns.size());
            for (int l = 0; l < covariance.length; l++) {
                double scale =
                        Math.sqrt(unknowns.get(k).variance() * unknowns.get(l).variance());
                assertThat(covariance[k][l])
                        .isCloseTo(unknowns.get(k).covariance(unknowns.get(l)), within(1e-7 * scale));
            }
        }
    }

    /** What an instrument says of a reading in numbers is what it says in influences. */
    @Test
    void anInstrumentSaysTheSameInNumbers() {
        for (Instrument by : List.of(TAPE, LASER, TAPE.withStep(0.1), TAPE.withEach(List.of()))) {
            List<Double> values = List.of(1999.5, 2400.0);
            List<Uncertain> read = by.read("x", 1999.5, 2400);
            for (int i = 0; i < 2; i++) {
                double variance = by.eachVariance(values.get(i)) + by.roundingVariance();
                for (double effect : by.sharedEffects(values.get(i))) {
                    variance += effect * effect;
                }
                assertThat(variance).isCloseTo(read.get(i).variance(), within(1e-12));
            }
            double covariance = by.roundsAlike(values) ? by.roundingVariance() : 0;
            for (int k = 0; k < by.shared().size(); k++) {
                covariance += by.sharedEffects(1999.5)[k] * by.sharedEffects(2400)[k];
            }
            assertThat(covariance).isCloseTo(read.get(0).covariance(read.get(1)), within(1e-12));
        }
        assertThat(TAPE.roundsAlike(List.of(1.0))).isTrue();
        assertThat(TAPE.withStep(0.1).roundsAlike(List.of(1.0))).isFalse();
    }

    @Test
    void withoutAnOutlineThereIsNone() {
        List<Reading> few = new ArrayList<>(readings(TAPE, TAPE)).subList(0, 2);
        assertThat(Adjustment.of(Survey.finished(few, 0), Plane.FRONT).covariance())
                .isEmpty();
    }

    /** A test of a reading that nothing checks has no correlation with any other. */
    @Test
    void nothingCheckedNothingCorrelated() {
        Adjustment net = Adjustment.of(
                Survey.finished(
                        List.of(
                                Reading.of("width@head", TAPE, 2378),
                                Reading.of("length@right", TAPE, 1497),
                                Reading.of("length@left", TAPE, 1525),
                                Reading.of("diagonal@head-left", TAPE, 2801),
                                Reading.of("diagonal@head-right", TAPE, 2811)),
                        0),
                Plane.FRONT);
        assertThat(net.redundancy()).isZero();
        for (int i = 0; i < 5; i++) {
            for (int j = 0; j < 5; j++) {
                assertThat(net.correlation(i, j)).isZero();
            }
        }
    }
}
