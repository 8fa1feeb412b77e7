package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;

/** Laws of what goes in, whatever the opening. Mark: standard (geometry). Searches end within 1e-9 mm. */
class FitProperties {
    private static final int TRIES = 200;

    @Provide
    Arbitrary<Surveys.Quad> quads() {
        Arbitrary<Double> size = Arbitraries.doubles().between(700, 3000).withoutEdgeCases();
        Arbitrary<Double> off = Arbitraries.oneOf(
                        Arbitraries.doubles().between(-60, 60).withoutEdgeCases(), Arbitraries.of(0.0, 0.0, 1e-6))
                .withoutEdgeCases();
        return Combinators.combine(size, size, off, off, off, off)
                .as((w, l, a, b, c, d) -> Surveys.Quad.level(w, w + a, l + b, c, l + d));
    }

    private static double clearance(Opening opening, Held held, double w, double l) {
        return Fit.place(opening, held, w, l).orElseThrow().clearanceMm();
    }

    private static Held held(boolean free) {
        return free ? Held.FREELY : Held.TO_HEAD;
    }

    private static Opening opening(Surveys.Quad quad) {
        return quad.opening(0.5);
    }

    /** With every side moved out, nothing has less room. */
    @Property(tries = TRIES)
    void aLargerOpeningNeverFitsLess(
            @ForAll("quads") Surveys.Quad quad,
            @ForAll boolean free,
            @ForAll @DoubleRange(min = 0, max = 20) double left,
            @ForAll @DoubleRange(min = 0, max = 20) double foot) {
        Surveys.Quad larger = movedOut(quad, left, foot);
        double w = quad.b()[0] - 10;
        double l = quad.c()[1] - 8;
        assertThat(clearance(opening(larger), held(free), w, l))
                .isGreaterThanOrEqualTo(clearance(opening(quad), held(free), w, l) - 1e-6);
        Fit.Rectangle one = Fit.largest(opening(quad), held(free)).orElseThrow();
        Fit.Rectangle other = Fit.largest(opening(larger), held(free)).orElseThrow();
        // Each sits within 1e-5 mm of what holds it.
        assertThat(other.width().value() * other.length().value())
                .isGreaterThan(one.width().value() * one.length().value() - 1e-4 * (w + l));
    }

    /** The left side moved to the left, the foot down: their corners move along the sides that stay. */
    private static Surveys.Quad movedOut(Surveys.Quad quad, double left, double foot) {
        double slope = (quad.c()[1] - quad.d()[1]) / (quad.c()[0] - quad.d()[0]);
        double leanLeft = quad.d()[0] / quad.d()[1];
        double leanRight = (quad.c()[0] - quad.b()[0]) / quad.c()[1];
        double low = quad.d()[1] - slope * quad.d()[0] + foot;
        double yd = (low - slope * left) / (1 - slope * leanLeft);
        double yc = (low + slope * quad.b()[0]) / (1 - slope * leanRight);
        return new Surveys.Quad(
                new double[] {-left, 0}, quad.b(), new double[] {quad.b()[0] + leanRight * yc, yc}, new double[] {
                    -left + leanLeft * yd, yd
                });
    }

    @Property(tries = TRIES)
    void everythingScales(
            @ForAll("quads") Surveys.Quad quad,
            @ForAll boolean free,
            @ForAll @DoubleRange(min = 0.2, max = 5) double k) {
        double w = quad.b()[0] - 10;
        double l = quad.c()[1] - 8;
        double one = clearance(opening(quad), held(free), w, l);
        assertThat(clearance(opening(quad.times(k)), held(free), k * w, k * l))
                .isCloseTo(k * one, within(1e-6 * (1 + k)));
        Fit.Rectangle a = Fit.widest(opening(quad), held(free), l - 60).orElseThrow();
        Fit.Rectangle b =
                Fit.widest(opening(quad.times(k)), held(free), k * (l - 60)).orElseThrow();
        assertThat(b.width().value()).isCloseTo(k * a.width().value(), within(1e-6 * (1 + k)));
    }

    @Property(tries = TRIES)
    void inAMirrorTheSameGoesIn(@ForAll("quads") Surveys.Quad quad, @ForAll boolean free) {
        double w = quad.b()[0] - 10;
        double l = quad.c()[1] - 8;
        Surveys.Quad mirror = new Surveys.Quad(
                flip(quad, quad.b()), flip(quad, quad.a()), flip(quad, quad.d()), flip(quad, quad.c()));
        assertThat(clearance(opening(mirror), held(free), w, l))
                .isCloseTo(clearance(opening(quad), held(free), w, l), within(1e-6));
    }

    private static double[] flip(Surveys.Quad quad, double[] p) {
        return new double[] {quad.b()[0] - p[0], p[1]};
    }

    @Property(tries = TRIES)
    void turningFreelyIsNeverWorse(@ForAll("quads") Surveys.Quad quad) {
        Opening opening = opening(quad);
        double w = quad.b()[0] - 10;
        double l = quad.c()[1] - 8;
        double free = clearance(opening, Held.FREELY, w, l);
        for (Side side : Side.values()) {
            Fit.Placement held = Fit.place(opening, Held.to(side), w, l).orElseThrow();
            if (Math.abs(held.turnedRad()) <= Held.FREELY.withinRad()) {
                assertThat(free).isGreaterThanOrEqualTo(held.clearanceMm() - 1e-8);
            }
        }
        Fit.Rectangle level = Fit.largest(opening).orElseThrow();
        Fit.Rectangle turned = Fit.largest(opening, Held.FREELY).orElseThrow();
        assertThat(turned.width().value() * turned.length().value())
                .isGreaterThan(level.width().value() * level.length().value() - 1e-5 * (w + l));
    }

    @Property(tries = TRIES)
    void smallerOnesGoInToo(
            @ForAll("quads") Surveys.Quad quad,
            @ForAll boolean free,
            @ForAll @DoubleRange(min = 0, max = 300) double narrower,
            @ForAll @DoubleRange(min = 0, max = 300) double shorter) {
        Opening opening = opening(quad);
        double w = quad.b()[0] - 10;
        double l = quad.c()[1] - 8;
        assertThat(clearance(opening, held(free), w - narrower, l - shorter))
                .isGreaterThanOrEqualTo(clearance(opening, held(free), w, l) - 1e-8);
    }

    /** Once every corner is called like the next one, what was the left side is the head. */
    @Property(tries = TRIES)
    void heldToASideIsHeldToTheHeadByOtherNames(@ForAll("quads") Surveys.Quad quad) {
        double w = quad.b()[0] - 10;
        double l = quad.c()[1] - 8;
        double[] read = quad.exact();
        Opening one = opening(quad);
        Opening other =
                Opening.of(Surveys.straight(Surveys.six(0.5, read[3], read[0], read[1], read[2], read[5], read[4])));
        assertThat(clearance(one, Held.to(Side.LEFT), w, l))
                .isCloseTo(clearance(other, Held.TO_HEAD, l, w), within(1e-6));
        Fit.Rectangle a = Fit.widest(one, Held.to(Side.LEFT), l - 60).orElseThrow();
        Fit.Rectangle b = Fit.ofProportion(
                        other, Held.TO_HEAD, (l - 60) / a.width().value())
                .orElseThrow();
        assertThat(a.width().value()).isCloseTo(b.length().value(), within(1e-6));
        Extreme left = Gaps.least(Gaps.of(one, Held.to(Side.LEFT), Uncertain.exact(w), Uncertain.exact(l))
                .orElseThrow());
        Extreme head = Gaps.least(
                Gaps.of(other, Uncertain.exact(l), Uncertain.exact(w)).orElseThrow());
        assertThat(doubts(left)).containsExactly(doubts(head), within(1e-5));
    }

    private static double[] doubts(Extreme extreme) {
        return extreme.parts().stream()
                .filter(part -> part.value().value() < extreme.value() + 2.0123)
                .mapToDouble(part -> part.value().standardUncertainty())
                .sorted()
                .toArray();
    }
}
