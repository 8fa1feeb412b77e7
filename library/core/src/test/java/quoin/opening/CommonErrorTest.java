package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;

/** A bent hook: one error in all lengths of a tape. Mark: standard (least squares, one more unknown). */
class CommonErrorTest {
    private static final double A = 2400;
    private static final double B = 1500;
    private static final double D = Math.hypot(A, B);

    private static Instrument tape(double u) {
        return Surveys.fresh("tape", u);
    }

    /** Six readings twice by the tape, and the six once by something else. */
    private static List<Reading> readings(double hook, double u) {
        double[] size = {A, B, A, B, D, D};
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            readings.add(Reading.of(Surveys.SIX.get(i), tape(u), size[i] + hook, size[i] + hook));
            readings.add(new Reading(
                    "laser-" + i,
                    Span.parse(Surveys.SIX.get(i)),
                    Plane.FRONT,
                    List.of(size[i]),
                    Surveys.fresh("laser", u)));
        }
        return readings;
    }

    /**
     * The tape's means against the laser's readings, and what the closure adds: u² of a mean difference with the same u
     * is u²(1/2 + 1), six of them. A hook moves closure, too, by 2(a + b − d) of 2d.
     */
    @Test
    void aHookIsFoundAgainstAnotherInstrument() {
        CommonError error =
                CommonError.in(Surveys.adjust(readings(2, 0.5)), "tape").orElseThrow();
        assertThat(error.mm()).isCloseTo(2, within(1e-3)); // second order: 2 mm over 1500
        assertThat(error.w()).isCloseTo(error.mm() / error.u(), within(1e-9));
        assertThat(error.isSeen()).isTrue();
        double plain = 0.5 * Math.sqrt(1.5 / 6);
        assertThat(error.u()).isLessThan(plain);
        assertThat(error.u()).isGreaterThan(plain * 0.97);
        CommonError other =
                CommonError.in(Surveys.adjust(readings(2, 0.5)), "laser").orElseThrow();
        // Blaming the laser leaves what the hook does to the tape's own closure unexplained.
        assertThat(other.mm()).isBetween(-2.0, -1.9);
        assertThat(Math.abs(other.w())).isLessThan(error.w());
        assertThat(CommonError.in(Surveys.adjust(readings(0.1, 0.5)), "tape")
                        .orElseThrow()
                        .isSeen())
                .isFalse();
    }

    /**
     * By one tape alone only the closure shows it: 1ᵀG1 = (2(a + b − d))² / (4d² u²/2) for readings taken twice, so
     * u = d u / (√2 (a + b − d)), 2.65 / √2 = 1.87 u here.
     */
    @Test
    void byOneTapeAloneItIsHardlySeen() {
        List<Reading> twice = readings(2, 1).stream()
                .filter(reading -> reading.id().isEmpty())
                .toList();
        CommonError error = CommonError.in(Surveys.adjust(twice), "tape").orElseThrow();
        double u = D / (Math.sqrt(2) * (A + B - D));
        assertThat(error.u()).isCloseTo(u, within(1e-3 * u));
        assertThat(error.mm()).isCloseTo(2, within(2e-3));
        assertThat(error.isSeen()).isFalse();
    }

    /** What the instrument owns up to is no error beyond that: a declared common doubt adds to the uncertainty. */
    @Test
    void aDeclaredCommonDoubtIsAllowedFor() {
        List<Reading> owned = new ArrayList<>();
        for (Reading reading : readings(2, 0.5)) {
            Instrument by = reading.by().id().equals("tape")
                    ? reading.by().withAll(List.of(Doubt.standard(3, Dimension.LENGTH)))
                    : reading.by();
            owned.add(new Reading(reading.id(), reading.of(), reading.in(), reading.values(), by));
        }
        CommonError plain =
                CommonError.in(Surveys.adjust(readings(2, 0.5)), "tape").orElseThrow();
        CommonError error = CommonError.in(Surveys.adjust(owned), "tape").orElseThrow();
        assertThat(error.mm()).isCloseTo(2, within(2e-3));
        assertThat(error.u() * error.u()).isCloseTo(plain.u() * plain.u() + 9, within(1e-4));
        assertThat(error.isSeen()).isFalse();
    }

    @Test
    void whereItCannotBeTold() {
        double[] size = {A, B, A, B, D, D};
        assertThat(CommonError.in(Surveys.adjust(Surveys.six(1, size)), "u1.0")).isEmpty();
        assertThat(CommonError.in(Surveys.adjust(readings(2, 1)), "level")).isEmpty();
        assertThat(CommonError.in(Surveys.adjust(List.of()), "tape")).isEmpty();
        // An angle is no length.
        Instrument square = Instrument.of("square", Instrument.Kind.STATED)
                .withEach(List.of(Doubt.standard(0.001, Dimension.ANGLE)));
        List<Reading> angles = new ArrayList<>(readings(2, 1));
        angles.add(Reading.of("angle@head-left", square, Math.PI / 2));
        assertThat(CommonError.in(Surveys.adjust(angles), "square")).isEmpty();
    }
}
