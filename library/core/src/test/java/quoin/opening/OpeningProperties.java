package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.statistics.Statistics;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Instrument;
import quoin.measure.Uncertain;

/** Laws of an opening, whatever its shape and its readings. Mark: standard (geometry, least squares). */
class OpeningProperties {
    private static final int TRIES = 150;

    /** The places of the six readings once every corner is called like the next one. */
    private static final int[] TURN = {3, 0, 1, 2, 5, 4};

    /** The same once left and right change places. */
    private static final int[] MIRROR = {0, 3, 2, 1, 5, 4};

    @Provide
    Arbitrary<Surveys.Quad> quads() {
        Arbitrary<Double> size = Arbitraries.doubles().between(700, 3000).withoutEdgeCases();
        Arbitrary<Double> crooked = Arbitraries.doubles().between(-60, 60).withoutEdgeCases();
        Arbitrary<Double> off = Arbitraries.frequencyOf(
                        Tuple.of(1, Arbitraries.of(-0.01, 0.0, 0.01)), Tuple.of(5, crooked))
                .withoutEdgeCases();
        return Combinators.combine(size, size, off, off, off, off)
                .as((w, l, a, b, c, d) -> Surveys.Quad.level(w, w + a, l + b, c, l + d));
    }

    /** Six errors of reading, in standard deviations. */
    @Provide
    Arbitrary<List<Double>> errors() {
        return Arbitraries.doubles().between(-2, 2).list().ofSize(6).withoutEdgeCases();
    }

    private static double[] read(Surveys.Quad quad, List<Double> errors) {
        double[] read = quad.exact();
        for (int i = 0; i < 6; i++) {
            read[i] += errors.get(i);
        }
        return read;
    }

    private static double[] renamed(double[] read, int[] map) {
        double[] renamed = new double[6];
        for (int i = 0; i < 6; i++) {
            renamed[i] = read[map[i]];
        }
        return renamed;
    }

    private static Opening opening(double straight, double u, double... read) {
        return Opening.of(Survey.finished(Surveys.six(u, read), straight));
    }

    /** Naming the corners one further round changes no residual, no test and no angle. */
    @Property(tries = TRIES)
    void turningTheNames(
            @ForAll("quads") Surveys.Quad quad, @ForAll("errors") List<Double> errors, @ForAll boolean mayBulge) {
        double straight = mayBulge ? 3 : Double.NaN;
        double[] read = read(quad, errors);
        Opening one = opening(straight, 1, read);
        Opening other = opening(straight, 1, renamed(read, TURN));
        sameTests(one, other, TURN);
        for (Corner corner : Corner.values()) {
            same(OpeningFigures.cornerAngle(one, corner), OpeningFigures.cornerAngle(other, corner.next()), 1e-9);
        }
        same(
                OpeningFigures.diagonalDifference(one),
                OpeningFigures.diagonalDifference(other).negated(),
                1e-6);
        assertThat(OpeningFigures.leastWidth(one).value())
                .isCloseTo(OpeningFigures.leastLength(other).value(), within(1e-6));
    }

    /** Turned by a right angle or by two, every figure is the one of the side or corner it comes from. */
    @Property(tries = TRIES)
    void everyFigureTurnsWithTheNames(
            @ForAll("quads") Surveys.Quad quad,
            @ForAll("errors") List<Double> errors,
            @ForAll @DoubleRange(min = -2, max = 2) double across,
            @ForAll @DoubleRange(min = -2, max = 2) double along,
            @ForAll boolean mayBulge) {
        double straight = mayBulge ? 3 : Double.NaN;
        double[] read = read(quad, errors);
        double width = quad.across(Side.LEFT, 0.25) + across;
        double length = quad.across(Side.HEAD, 0.5) + along;
        Opening one = places(straight, read, "width@1/4", width, "length@1/2", length);
        // the left side becomes the head, so that a quarter from its head is three quarters from the left
        double[] quarter = renamed(read, TURN);
        turned(one, places(straight, quarter, "length@3/4", width, "width@1/2", length), 1);
        double[] half = renamed(quarter, TURN);
        turned(one, places(straight, half, "width@3/4", width, "length@1/2", length), 2);
    }

    private static Opening places(
            double straight, double[] six, String first, double firstMm, String second, double secondMm) {
        List<Reading> readings =
                Surveys.join(Surveys.six(1, six), Surveys.read(first, 1, firstMm), Surveys.read(second, 1, secondMm));
        return Opening.of(Survey.finished(readings, straight));
    }

    private static void turned(Opening one, Opening other, int quarters) {
        Map<String, Estimate> before = OpeningFigures.survey(one, Side.HEAD);
        Map<String, Estimate> after = OpeningFigures.survey(other, Side.HEAD);
        assertThat(after).hasSameSizeAs(before);
        for (Map.Entry<String, Estimate> figure : before.entrySet()) {
            String name = figure.getKey();
            // the rectangle that goes in is held to the head, which is another side now; the freely turned one has no
            // place of its own where the area is flat
            if (!name.startsWith("fit.") || name.startsWith("fit.rule.")) {
                Turned now = new Turned(name, 1);
                for (int i = 0; i < quarters; i++) {
                    now = now.once();
                }
                Estimate moved = java.util.Objects.requireNonNull(after.get(now.name));
                same(figure.getValue(), moved, now.sign, name);
            }
        }
    }

    private static void same(Estimate one, Estimate other, int sign, String name) {
        assertThat(sign * other.value()).as(name).isCloseTo(one.value(), within(1e-5));
        if (one instanceof Uncertain number && other instanceof Uncertain moved) {
            assertThat(moved.standardUncertainty()).as(name).isCloseTo(number.standardUncertainty(), within(1e-5));
        }
    }

    /**
     * A rectangle that may turn is as large whatever the corners are called, if its angle is allowed under either name: 2
     * degrees either way are counted from another head. Which of two that are exactly as large is taken may change with
     * the head, so it is the area that is compared; a rectangle sits on the mean of gaps within 1e-5 mm of each other.
     */
    @Property(tries = TRIES)
    void whatTurnsFreelyIsAsLargeUnderAnyName(
            @ForAll("quads") Surveys.Quad quad, @ForAll @IntRange(min = 1, max = 3) int quarters) {
        double[] read = quad.exact();
        double ahead = 0;
        for (int i = 0; i < quarters; i++) {
            read = renamed(read, TURN);
        }
        Opening one = quad.opening(1);
        Opening other = opening(Double.NaN, 1, read);
        Corner corner = Corner.HEAD_LEFT;
        for (int i = 0; i < quarters; i++) {
            corner = corner.previous();
            ahead += OpeningFigures.departure(one, corner.next()).value();
        }
        Fit.Rectangle a = Fit.largest(one, Held.FREELY).orElseThrow();
        Fit.Rectangle b = Fit.largest(other, Held.FREELY).orElseThrow();
        double most = Math.toRadians(2);
        boolean bothMay = Math.abs(a.turnedRad() - ahead) < most && Math.abs(b.turnedRad() + ahead) < most;
        Statistics.label("comparable").collect(bothMay);
        if (bothMay) {
            double around = a.width().value() + a.length().value();
            assertThat(area(b)).isCloseTo(area(a), within(1e-5 * around));
        }
    }

    private static double area(Fit.Rectangle rectangle) {
        return rectangle.width().value() * rectangle.length().value();
    }

    /** What a figure is called once every corner is called like the next one, and whether its sign changes. */
    private record Turned(String name, int sign) {
        Turned once() {
            boolean changes = name.equals("opening.taper.width") || name.equals("opening.diagonal.difference");
            return new Turned(OpeningProperties.name(name), changes ? -sign : sign);
        }
    }

    /** Where the new head is parallel or square to the old one, the frame that is held to it sits as it sat. */
    @Property(tries = TRIES)
    void theFrameTurnsWithAHeadThatIsSquare(
            @ForAll("quads") Surveys.Quad quad,
            @ForAll @DoubleRange(min = 0, max = 5) double play,
            @ForAll @DoubleRange(min = 0, max = 5) double more) {
        double[] c = quad.c();
        Surveys.Quad square = Surveys.Quad.level(quad.b()[0], c[0], c[1], 0, quad.d()[1]);
        Surveys.Quad parallel = Surveys.Quad.level(quad.b()[0], c[0], c[1], quad.d()[0], c[1]);
        double[] quarter = renamed(square.exact(), TURN);
        double[] half = renamed(renamed(parallel.exact(), TURN), TURN);
        Opening upright = square.opening(1);
        Fit.Rectangle room = Fit.largest(upright).orElseThrow();
        Fit.Rectangle lying = Fit.largest(opening(Double.NaN, 1, quarter)).orElseThrow();
        assertThat(lying.width().value()).isCloseTo(room.length().value(), within(1e-3));
        assertThat(lying.length().value()).isCloseTo(room.width().value(), within(1e-3));
        double w = room.width().value() - play;
        double l = room.length().value() - more;
        assertThat(gap(opening(Double.NaN, 1, quarter), l, w)).isCloseTo(gap(upright, w, l), within(1e-5));
        assertThat(gap(opening(Double.NaN, 1, half), w, l)).isCloseTo(gap(parallel.opening(1), w, l), within(1e-5));
    }

    private static double gap(Opening opening, double width, double length) {
        return Gaps.least(Gaps.of(opening, Uncertain.exact(width), Uncertain.exact(length))
                        .orElseThrow())
                .value();
    }

    /** What a figure is called once every corner is called like the next one. */
    private static String name(String figure) {
        for (Side side : Side.values()) {
            if (figure.endsWith("." + side.text())) {
                Corner from = side.from().next();
                Corner to = side.to().next();
                for (Side next : Side.values()) {
                    if (next.touches(from) && next.touches(to)) {
                        return figure.replace("." + side.text(), "." + next.text());
                    }
                }
            }
        }
        for (Corner corner : Corner.values()) {
            if (figure.contains("." + corner.text() + ".")) {
                return figure.replace(corner.text(), corner.next().text());
            }
        }
        return figure.contains("width") ? figure.replace("width", "length") : figure.replace("length", "width");
    }

    /** Seen in a mirror, left and right change places, and nothing else does. */
    @Property(tries = TRIES)
    void mirrored(@ForAll("quads") Surveys.Quad quad, @ForAll("errors") List<Double> errors, @ForAll boolean mayBulge) {
        double straight = mayBulge ? 3 : Double.NaN;
        double[] read = read(quad, errors);
        Opening one = opening(straight, 1, read);
        Opening other = opening(straight, 1, renamed(read, MIRROR));
        sameTests(one, other, MIRROR);
        same(
                OpeningFigures.cornerAngle(one, Corner.HEAD_LEFT),
                OpeningFigures.cornerAngle(other, Corner.HEAD_RIGHT),
                1e-9);
        Fit.Rectangle a = Fit.largest(one).orElseThrow();
        Fit.Rectangle b = Fit.largest(other).orElseThrow();
        // The rectangle sits within 1e-5 mm; area is what is largest.
        assertThat(a.width().value()).isCloseTo(b.width().value(), within(1e-4));
        assertThat(a.length().value()).isCloseTo(b.length().value(), within(1e-4));
        double turned = area(Fit.largest(one, Held.FREELY).orElseThrow());
        assertThat(area(Fit.largest(other, Held.FREELY).orElseThrow())).isCloseTo(turned, within(0.1));
        Uncertain w = Uncertain.exact(a.width().value() - 6);
        Uncertain l = Uncertain.exact(a.length().value() - 4);
        Extreme gap = Gaps.least(Gaps.of(one, w, l).orElseThrow());
        Extreme mirror = Gaps.least(Gaps.of(other, w, l).orElseThrow());
        assertThat(mirror.value()).isCloseTo(gap.value(), within(1e-6));
        assertThat(doubts(mirror)).containsExactly(doubts(gap), within(1e-5));
    }

    /** The doubts of what may become the least: beyond that the list ends where it cannot matter. */
    private static double[] doubts(Extreme extreme) {
        return extreme.parts().stream()
                .filter(part -> part.value().value() < extreme.value() + 4.0123)
                .mapToDouble(part -> part.value().standardUncertainty())
                .sorted()
                .toArray();
    }

    private static void sameTests(Opening one, Opening other, int[] map) {
        assertThat(other.adjustment().statistic()).isCloseTo(one.adjustment().statistic(), within(1e-6));
        for (int i = 0; i < 6; i++) {
            AdjustedReading a = one.adjustment().readings().get(map[i]);
            AdjustedReading b = other.adjustment().readings().get(i);
            assertThat(b.residual()).isCloseTo(a.residual(), within(1e-6));
            assertThat(Math.abs(b.w())).isCloseTo(Math.abs(a.w()), within(1e-5));
            assertThat(b.detectable()).isCloseTo(a.detectable(), within(1e-4 * a.detectable()));
        }
    }

    private static void same(Uncertain a, Uncertain b, double close) {
        assertThat(a.value()).isCloseTo(b.value(), within(close));
        assertThat(a.standardUncertainty()).isCloseTo(b.standardUncertainty(), within(close));
    }

    private static Extreme least(Opening opening, double share) {
        double w = opening.corner(Corner.HEAD_RIGHT).get(0).value() * share;
        double l = opening.corner(Corner.FOOT_LEFT).get(1).value() * share;
        return Gaps.least(
                Gaps.of(opening, Uncertain.exact(w), Uncertain.exact(l)).orElseThrow());
    }

    /** In inches or in millimetres: tests and angles as they are, lengths and their doubts by the scale. */
    @Property(tries = TRIES)
    void anotherUnit(
            @ForAll("quads") Surveys.Quad quad,
            @ForAll("errors") List<Double> errors,
            @ForAll @DoubleRange(min = 0.04, max = 25.4) double k) {
        double[] read = read(quad, errors);
        double[] scaled = new double[6];
        for (int i = 0; i < 6; i++) {
            scaled[i] = k * read[i];
        }
        Opening one = opening(2, 1, read);
        Opening other = opening(2 * k, k, scaled);
        // The ridge of 1e-12 mm² is 1e-9 of the least variance here.
        assertThat(other.adjustment().statistic()).isCloseTo(one.adjustment().statistic(), within(1e-6));
        for (Corner corner : Corner.values()) {
            same(OpeningFigures.cornerAngle(one, corner), OpeningFigures.cornerAngle(other, corner), 1e-9);
        }
        Fit.Rectangle a = Fit.largest(one).orElseThrow();
        Fit.Rectangle b = Fit.largest(other).orElseThrow();
        assertThat(b.width().value() / k).isCloseTo(a.width().value(), within(3e-4));
        assertThat(b.length().value() / k).isCloseTo(a.length().value(), within(3e-4));
        assertThat(least(other, 0.98).value() / k).isCloseTo(least(one, 0.98).value(), within(1e-6));
    }

    /** Moving one side outwards never makes the largest rectangle smaller, nor the least gap less. */
    @Property(tries = TRIES)
    void aWiderOpeningIsNeverWorse(
            @ForAll("quads") Surveys.Quad quad, @ForAll @DoubleRange(min = 0, max = 50) double by) {
        double slope = (quad.c()[1] - quad.d()[1]) / (quad.c()[0] - quad.d()[0]);
        double lean = (quad.c()[0] - quad.b()[0]) / quad.c()[1];
        // The foot runs on as it is, and the right side moves beside itself until it meets it.
        double run = by / (1 - slope * lean);
        Surveys.Quad wider = Surveys.Quad.level(
                quad.b()[0] + by, quad.c()[0] + run, quad.c()[1] + slope * run, quad.d()[0], quad.d()[1]);
        Fit.Rectangle before = Fit.largest(quad.opening(0.1)).orElseThrow();
        Fit.Rectangle after = Fit.largest(wider.opening(0.1)).orElseThrow();
        double area = before.width().value() * before.length().value();
        assertThat(after.width().value() * after.length().value()).isGreaterThan(area - 0.1);
        assertThat(after.width().value()).isGreaterThan(before.width().value() - 1e-4);
        Uncertain w = Uncertain.exact(before.width().value() - 4);
        Uncertain l = Uncertain.exact(before.length().value() - 6);
        double gap = Gaps.least(Gaps.of(quad.opening(0.1), w, l).orElseThrow()).value();
        double wide =
                Gaps.least(Gaps.of(wider.opening(0.1), w, l).orElseThrow()).value();
        assertThat(wide).isGreaterThan(gap - 1e-6);
    }

    /**
     * An error common to all readings teaches nothing: no figure gets better by it. Readings that close, so that the
     * outline stays where it is, each with a doubt of its own.
     */
    @Property(tries = TRIES)
    void aCommonErrorNeverHelps(
            @ForAll("quads") Surveys.Quad quad,
            @ForAll @Size(6) List<@DoubleRange(min = 0.2, max = 3) Double> doubts,
            @ForAll @DoubleRange(min = 0, max = 4) double fixed,
            @ForAll @DoubleRange(min = 0, max = 4) double perMetre,
            @ForAll boolean mayBulge) {
        List<Doubt> all = List.of(
                Doubt.limits(fixed, Dimension.LENGTH),
                Doubt.limits(perMetre, Dimension.LENGTH).perLength());
        Map<String, Estimate> alone = figures(quad, doubts, List.of(), mayBulge);
        Map<String, Estimate> common = figures(quad, doubts, all, mayBulge);
        assertThat(common.keySet()).isEqualTo(alone.keySet());
        alone.forEach((name, estimate) -> {
            if (estimate instanceof Uncertain one) {
                double before = one.standardUncertainty();
                assertThat(Surveys.u(common, name)).as(name).isGreaterThan(before * (1 - 1e-6));
            }
        });
    }

    private static Map<String, Estimate> figures(
            Surveys.Quad quad, List<Double> doubts, List<Doubt> all, boolean mayBulge) {
        List<Reading> readings = new ArrayList<>();
        Instrument tape = Instrument.of("tape", Instrument.Kind.STATED).withAll(all);
        for (int i = 0; i < 6; i++) {
            Instrument own = tape.withEach(List.of(Doubt.standard(doubts.get(i), Dimension.LENGTH)));
            readings.add(Reading.of(Surveys.SIX.get(i), own, quad.exact()[i]));
        }
        return OpeningFigures.survey(Opening.of(Survey.finished(readings, mayBulge ? 2 : Double.NaN)), Side.HEAD);
    }

    /** A tape that is only too long or too short says every angle right. */
    @Property(tries = TRIES)
    void aWrongScaleDoesNotTurnACorner(@ForAll("quads") Surveys.Quad quad, @ForAll("errors") List<Double> errors) {
        Instrument tape = Instrument.of("tape", Instrument.Kind.STATED)
                .withEach(List.of(Doubt.standard(1, Dimension.LENGTH)))
                .withAll(List.of(Doubt.limits(3, Dimension.LENGTH).perLength()));
        List<Reading> readings = new ArrayList<>();
        double[] read = read(quad, errors);
        for (int i = 0; i < 6; i++) {
            readings.add(Reading.of(Surveys.SIX.get(i), tape, read[i]));
        }
        Opening opening = Opening.of(Surveys.straight(readings));
        Uncertain head = opening.corner(Corner.HEAD_RIGHT).get(0);
        int scale = head.influences().indexOf(tape.shared().get(0));
        // The width carries it in full: 3 mm in a metre, ± that.
        assertThat(head.contribution(scale)).isCloseTo(head.value() * 3e-3 / Math.sqrt(3), within(1e-5));
        for (Corner corner : Corner.values()) {
            Uncertain angle = OpeningFigures.cornerAngle(opening, corner);
            int at = angle.influences().indexOf(tape.shared().get(0));
            // What remains is where Gauss-Newton stops.
            assertThat(at < 0 ? 0 : angle.contribution(at)).isCloseTo(0, within(1e-10));
        }
    }

    /** Whatever was read, and however a frame is cut: there is doubt in the gap. */
    @Property(tries = TRIES)
    void aGapIsNeverSure(
            @ForAll("quads") Surveys.Quad quad,
            @ForAll @DoubleRange(min = 0.9, max = 1.1) double share,
            @ForAll boolean mayBulge) {
        Opening opening = Opening.of(Survey.finished(quad.six(0.5), mayBulge ? 2 : 0));
        Extreme least = least(opening, share);
        for (Extreme.Part part : least.parts()) {
            assertThat(part.value().standardUncertainty()).isPositive();
            assertThat(part.names().size()).isBetween(2, 3);
        }
    }

    /** Reading everything n times is reading it once with u / √n. */
    @Property(tries = 30)
    void repeatsAverage(@ForAll("quads") Surveys.Quad quad, @ForAll @IntRange(min = 2, max = 5) int times) {
        List<Reading> many = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            double[] values = new double[times];
            java.util.Arrays.fill(values, quad.exact()[i]);
            many.add(Surveys.read(Surveys.SIX.get(i), 1, values));
        }
        Opening often = Opening.of(Surveys.straight(many));
        Opening once = quad.opening(1 / Math.sqrt(times));
        for (Corner corner : Corner.values()) {
            same(OpeningFigures.cornerAngle(often, corner), OpeningFigures.cornerAngle(once, corner), 1e-9);
        }
        assertThat(often.adjustment().redundancy()).isEqualTo(6 * times - 5);
    }
}
