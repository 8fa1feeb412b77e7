package quoin.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import quoin.measure.Uncertain;
import quoin.opening.LineFit.Station;

/** The lines against brute force over slopes, which shares no code with them. */
class PackingLineProperties {
    private static List<Station> stations(List<Integer> places, List<Integer> out) {
        List<Station> stations = new ArrayList<>();
        int i = 0;
        for (int place : new TreeSet<>(places)) {
            stations.add(new Station(place, Uncertain.exact(out.get(i++ % out.size()) / 4.0)));
        }
        return stations;
    }

    /** The largest gap and the sum of gaps of the line of one slope. */
    private static double[] bySlope(List<Station> stations, double slope) {
        double top = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double sum = 0;
        for (Station station : stations) {
            double above = station.offset().value() - slope * station.alongMm();
            top = Math.max(top, above);
            low = Math.min(low, above);
            sum += above;
        }
        return new double[] {top - low, top * stations.size() - sum};
    }

    private static double total(PackingLine line) {
        return line.gaps().stream().mapToDouble(gap -> gap.offset().value()).sum();
    }

    @Property
    void noOtherSlopeDoesBetter(
            @ForAll @Size(min = 2, max = 8) List<@IntRange(min = 0, max = 2400) Integer> places,
            @ForAll @Size(min = 2, max = 8) List<@IntRange(min = -40, max = 40) Integer> out) {
        List<Station> stations = stations(places, out);
        if (stations.size() < 2) {
            return;
        }
        PackingLine largest = PackingLine.leastLargest(stations);
        PackingLine sum = PackingLine.leastTotal(stations);
        double nearestPlaces = 2400;
        for (int i = 1; i < stations.size(); i++) {
            nearestPlaces = Math.min(
                    nearestPlaces,
                    stations.get(i).alongMm() - stations.get(i - 1).alongMm());
        }
        double steepest = 20 / nearestPlaces;
        for (int k = -500; k <= 500; k++) {
            double[] other = bySlope(stations, steepest * k / 500);
            assertThat(largest.largestMm()).isLessThanOrEqualTo(other[0] + 1e-9);
            assertThat(total(sum)).isLessThanOrEqualTo(other[1] + 1e-9);
        }
        assertThat(largest.largestMm())
                .isCloseTo(bySlope(stations, largest.slope().value())[0], within(1e-9));
        assertThat(total(sum)).isCloseTo(bySlope(stations, sum.slope().value())[1], within(1e-9));
    }

    @Property
    void theLineNeverCutsIntoTheSideAndTouchesIt(
            @ForAll @Size(min = 2, max = 8) List<@IntRange(min = 0, max = 2400) Integer> places,
            @ForAll @Size(min = 2, max = 8) List<@IntRange(min = -40, max = 40) Integer> out,
            @ForAll @IntRange(min = -50, max = 50) int fall) {
        List<Station> stations = stations(places, out);
        if (stations.size() < 2) {
            return;
        }
        List<PackingLine> lines = List.of(
                PackingLine.inFall(stations, fall / 1000.0),
                PackingLine.leastLargest(stations),
                PackingLine.leastTotal(stations));
        for (PackingLine line : lines) {
            double least = Double.POSITIVE_INFINITY;
            for (Station gap : line.gaps()) {
                least = Math.min(least, gap.offset().value());
            }
            assertThat(least).isBetween(0.0, 1e-9);
        }
    }

    /** Another level or another tilt of the straight edge changes nothing. */
    @Property
    void theStraightEdgeMayLieAnyhow(
            @ForAll @Size(min = 2, max = 8) List<@IntRange(min = 0, max = 2400) Integer> places,
            @ForAll @Size(min = 2, max = 8) List<@IntRange(min = -40, max = 40) Integer> out,
            @ForAll @IntRange(min = -20, max = 20) int shift,
            @ForAll @IntRange(min = -20, max = 20) int tilt) {
        List<Station> stations = stations(places, out);
        if (stations.size() < 2) {
            return;
        }
        List<Station> moved = new ArrayList<>();
        for (Station station : stations) {
            moved.add(new Station(station.alongMm(), station.offset().plus(shift + tilt / 1000.0 * station.alongMm())));
        }
        assertThat(PackingLine.leastLargest(moved).largestMm())
                .isCloseTo(PackingLine.leastLargest(stations).largestMm(), within(1e-9));
        assertThat(total(PackingLine.leastTotal(moved)))
                .isCloseTo(total(PackingLine.leastTotal(stations)), within(1e-8));
    }
}
