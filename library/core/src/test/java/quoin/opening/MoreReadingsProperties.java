package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;

/**
 * Laws of one more reading: what it does to the others. Readings that close, so that the outline stays where it is. Mark:
 * standard (information of independent observations adds up).
 */
class MoreReadingsProperties {
    private static final int TRIES = 150;

    @Provide
    Arbitrary<Surveys.Quad> quads() {
        Arbitrary<Double> size = Arbitraries.doubles().between(700, 3000).withoutEdgeCases();
        Arbitrary<Double> off = Arbitraries.doubles().between(-60, 60).withoutEdgeCases();
        return Combinators.combine(size, size, off, off, off, off)
                .as((w, l, a, b, c, d) -> Surveys.Quad.level(w, w + a, l + b, c, l + d));
    }

    @Provide
    Arbitrary<String> places() {
        return Arbitraries.of(
                "width@head",
                "width@foot",
                "length@left",
                "length@right",
                "diagonal@head-left",
                "diagonal@head-right",
                "width@1/4",
                "width@1/2",
                "length@1/3",
                "length@300 mm",
                "cross@head-left:right:1/2",
                "cross@foot-right:head:1/3",
                "check@foot-left:300 mm:400 mm",
                "bow@left:1/2");
    }

    private static double read(Surveys.Quad quad, String of) {
        Model model = Model.of(List.of(), false);
        double[] x = {quad.b()[0], quad.c()[0], quad.c()[1], quad.d()[0], quad.d()[1]};
        return model.observe(Span.parse(of), x, new double[5]);
    }

    private static Instrument tape(double each, double all, double perMetre) {
        List<Doubt> common = new ArrayList<>();
        if (all > 0) {
            common.add(Doubt.standard(all, Dimension.LENGTH));
        }
        if (perMetre > 0) {
            common.add(Doubt.standard(perMetre, Dimension.LENGTH).perLength());
        }
        return Instrument.of("tape", Instrument.Kind.STATED)
                .withEach(List.of(Doubt.standard(each, Dimension.LENGTH)))
                .withAll(common);
    }

    private static List<Reading> six(Surveys.Quad quad, Instrument by) {
        List<Reading> readings = new ArrayList<>();
        Surveys.SIX.forEach(of -> readings.add(Reading.of(of, by, read(quad, of))));
        return readings;
    }

    private static List<Reading> more(Surveys.Quad quad, Instrument by, List<String> places) {
        List<Reading> readings = six(quad, by);
        places.forEach(of -> readings.add(Reading.of(of, by, read(quad, of))));
        return readings;
    }

    private static Adjustment adjust(List<Reading> readings, double straight) {
        return Adjustment.of(Survey.finished(readings, straight), Plane.FRONT);
    }

    /** One more reading never raises the smallest detectable slip of another; shared errors or not, bulging sides or not. */
    @Property(tries = TRIES)
    void aSlipIsNeverHarderToSee(
            @ForAll("quads") Surveys.Quad quad,
            @ForAll @Size(max = 4) List<@From("places") String> had,
            @ForAll("places") String next,
            @ForAll @DoubleRange(min = 0.3, max = 2) double each,
            @ForAll @DoubleRange(min = 0, max = 3) double all,
            @ForAll boolean mayBulge) {
        Instrument by = tape(each, all, all / 2);
        double straight = mayBulge ? 3 : Double.NaN;
        Adjustment before = adjust(more(quad, by, had), straight);
        List<String> then = new ArrayList<>(had);
        then.add(next);
        Adjustment after = adjust(more(quad, by, then), straight);
        for (int i = 0; i < before.readings().size(); i++) {
            double was = before.readings().get(i).detectable();
            assertThat(after.readings().get(i).detectable())
                    .as(before.readings().get(i).of())
                    .isLessThanOrEqualTo(was * (1 + 1e-6));
        }
    }

    /** Nor a standard deviation of any unknown, with one instrument and nothing shared. */
    @Property(tries = TRIES)
    void aPlaceIsNeverKnownWorse(
            @ForAll("quads") Surveys.Quad quad,
            @ForAll @Size(max = 4) List<@From("places") String> had,
            @ForAll("places") String next,
            @ForAll @DoubleRange(min = 0.3, max = 2) double each,
            @ForAll boolean mayBulge) {
        Instrument by = tape(each, 0, 0);
        double straight = mayBulge ? 3 : Double.NaN;
        Adjustment before = adjust(more(quad, by, had), straight);
        List<String> then = new ArrayList<>(had);
        then.add(next);
        Adjustment after = adjust(more(quad, by, then), straight);
        for (int k = 0; k < 5; k++) {
            double was = before.unknowns().get(k).standardUncertainty();
            assertThat(after.unknowns().get(k).standardUncertainty()).isLessThanOrEqualTo(was * (1 + 1e-6));
        }
        assertThat(after.redundancy()).isGreaterThanOrEqualTo(before.redundancy());
    }

    /** The numbers of redundancy of readings and of the sides' straightness add up to what there is. */
    @Property(tries = TRIES)
    void redundancyNumbersAddUp(
            @ForAll("quads") Surveys.Quad quad,
            @ForAll @Size(max = 6) List<@From("places") String> had,
            @ForAll @DoubleRange(min = 0.3, max = 2) double each) {
        Adjustment net = adjust(more(quad, tape(each, 0, 0), had), Double.NaN);
        double sum = 0;
        for (AdjustedReading reading : net.readings()) {
            sum += Double.isInfinite(reading.slipU()) ? 0 : each * each / (reading.slipU() * reading.slipU());
        }
        assertThat(sum).isBetween(net.redundancy() - 1e-4, net.redundancy() + 1e-4);
    }
}
