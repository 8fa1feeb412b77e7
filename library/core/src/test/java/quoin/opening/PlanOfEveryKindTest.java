package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;

/**
 * Plans over all kinds of readings, against trying every set, each by a full adjustment and a full test of the depths; and
 * against closed forms. Mark: standard (what is claimed is tried).
 */
class PlanOfEveryKindTest {
    private static final double A = 2400;
    private static final double B = 1500;
    private static final double DELTA = 4.1321480; // 3.2905 + 0.8416, reference of the critical values
    private static final Instrument TAPE = Surveys.fresh("tape", 1);
    private static final Instrument RULE = Surveys.fresh("rule", 0.4);
    private static final Instrument SQUARE =
            Instrument.of("square", Instrument.Kind.STATED).withEach(List.of(Doubt.standard(0.0005, Dimension.ANGLE)));

    private static SurveyPlan plan(double straight) {
        return SurveyPlan.of(A, B, straight, TAPE).withRule(RULE).withSquare(SQUARE);
    }

    private static List<Span> spans(String... of) {
        return List.of(of).stream().map(Span::parse).toList();
    }

    private static Instrument by(Span span) {
        boolean offset = span instanceof Span.Bow || span instanceof Span.Depth || span instanceof Span.Fall;
        return span instanceof Span.Angle ? SQUARE : offset ? RULE : TAPE;
    }

    private static Survey survey(List<Span> spans, double straight) {
        Model model = Model.of(List.of(), false);
        List<Reading> readings = new ArrayList<>();
        for (Span span : spans) {
            double read = span instanceof Span.Depth || span instanceof Span.Fall
                    ? 150
                    : model.observe(span, model.rectangle(A, B), new double[5]);
            readings.add(new Reading("", span, Plane.FRONT, List.of(read), by(span)));
        }
        return Survey.finished(readings, straight);
    }

    /** The largest slip that those readings of the rectangle may hide, an angle's over the longer side. */
    private static double hidden(List<Span> spans, double straight) {
        Survey survey = survey(spans, straight);
        Adjustment net = Adjustment.of(survey, Plane.FRONT);
        if (!net.isSolved()) {
            return Double.POSITIVE_INFINITY;
        }
        double worst = 0;
        for (AdjustedReading reading : net.readings()) {
            worst = Math.max(worst, reading.detectable() * (reading.of().startsWith("angle") ? A : 1));
        }
        for (AdjustedReading reading :
                DepthPlane.of(survey).map(PlaneTest::readings).orElse(List.of())) {
            worst = Math.max(worst, reading.detectable());
        }
        return worst;
    }

    private static int smallest(List<Span> needs, List<Span> easy, double wanted, double straight) {
        int best = 0;
        for (int mask = 0; mask < 1 << easy.size(); mask++) {
            int size = needs.size() + Integer.bitCount(mask);
            if (best == 0 || size < best) {
                List<Span> chosen = new ArrayList<>(needs);
                for (int i = 0; i < easy.size(); i++) {
                    if ((mask >> i & 1) == 1) {
                        chosen.add(easy.get(i));
                    }
                }
                best = hidden(chosen, straight) <= wanted ? size : best;
            }
        }
        return best;
    }

    private static final List<Span> MIXED = spans(
            "width@head",
            "width@foot",
            "length@left",
            "length@right",
            "diagonal@head-left",
            "check@head-right:600 mm:800 mm",
            "angle@foot-left",
            "angle@head-right",
            "bow@left:1/2",
            "width@1/2",
            "cross@head-left:right:1/2");

    @ParameterizedTest
    @CsvSource({"8, NaN", "10, NaN", "14, NaN", "20, NaN", "10, 1", "14, 1", "16, 2", "3, 1"})
    void noSmallerSetOfMixedReadingsDoes(double wanted, double straight) {
        SurveyPlan.Chosen chosen = plan(straight).withEasy(MIXED).smallest(wanted);
        int best = smallest(List.of(), MIXED, wanted, straight);
        assertThat(chosen.isReached()).isEqualTo(best > 0);
        if (best > 0) {
            assertThat(chosen.readings()).hasSize(best);
            assertThat(chosen.isSmallest()).isTrue();
            assertThat(chosen.detectableMm()).isCloseTo(hidden(chosen.readings(), straight), within(1e-6));
        }
    }

    /** Where the rules need depths, each of them must be checked, too: by a second reading, or by the middle. */
    @ParameterizedTest
    @CsvSource({"9.8, 0.1", "9.8, 0.5", "9.8, 2", "16, 2", "16, NaN", "25, 4"})
    void noSmallerSetWithDepthsDoes(double wanted, double straight) {
        List<Span> needs = spans(
                "width@head",
                "width@foot",
                "length@left",
                "length@right",
                "diagonal@head-left",
                "diagonal@head-right",
                "depth@head-left",
                "depth@head-right",
                "depth@foot-right",
                "depth@foot-left");
        List<Span> easy = spans(
                "depth@head-left",
                "depth@head-right",
                "depth@foot-right",
                "depth@foot-left",
                "depth@middle",
                "depth@middle",
                "width@1/2",
                "length@1/2");
        SurveyPlan.Chosen chosen =
                plan(straight).withNeeds(needs).withEasy(join(needs, easy)).smallest(wanted);
        int best = smallest(needs, easy, wanted, straight);
        assertThat(chosen.isReached()).isEqualTo(best > 0);
        if (best > 0) {
            assertThat(chosen.readings()).hasSize(best);
            assertThat(chosen.detectableMm()).isCloseTo(hidden(chosen.readings(), straight), within(1e-6));
        }
    }

    private static List<Span> join(List<Span> a, List<Span> b) {
        List<Span> all = new ArrayList<>(a);
        all.addAll(b);
        return all;
    }

    private static double[] detectable(double straight, List<Span> spans) {
        List<PlanPool.Candidate> pool =
                spans.stream().map(s -> new PlanPool.Candidate(s, by(s))).toList();
        int[] all = new int[spans.size()];
        java.util.Arrays.setAll(all, i -> i);
        return new PlanPool(pool, A, B, straight).detectable(all);
    }

    /**
     * Two depths of one place differ by a slip with sd u√2: δ₀u√2. Four corners and the middle: the middle less the mean of the
     * corners has the variance 1.25u² + s²/3, and a corner enters it by a quarter.
     */
    @Test
    void depthsByClosedForms() {
        double u = 0.4;
        double[] twice = detectable(2, spans("depth@head-left", "depth@head-left", "fall@head"));
        assertThat(twice[0]).isCloseTo(DELTA * u * Math.sqrt(2), within(1e-6));
        assertThat(twice[2]).isInfinite();
        double[] five = detectable(
                2, spans("depth@head-left", "depth@head-right", "depth@foot-right", "depth@foot-left", "depth@middle"));
        double sd = Math.sqrt(1.25 * u * u + 4.0 / 3);
        assertThat(five[0]).isCloseTo(4 * DELTA * sd, within(1e-6));
        assertThat(five[4]).isCloseTo(DELTA * sd, within(1e-6));
    }

    /** A bow is checked by the stated straightness alone: the sum of both variances. */
    @Test
    void aBowByItsClosedForm() {
        List<Span> seven = join(spans(Surveys.SIX.toArray(String[]::new)), spans("bow@left:1/2"));
        double[] detectable = detectable(2, seven);
        assertThat(detectable[6]).isCloseTo(DELTA * Math.sqrt(0.16 + 4.0 / 3), within(1e-6));
        assertThat(detectable(Double.NaN, seven)[6]).isInfinite();
    }

    /** Four sides and two opposite angles of a rectangle: only by the angles' sum with the sides; three angles more. */
    @Test
    void anAngleCountsOverTheLongerSide() {
        List<Span> spans = join(spans(Surveys.SIX.toArray(String[]::new)), spans("angle@head-left", "angle@head-left"));
        double[] detectable = detectable(Double.NaN, spans);
        // Each is checked by the other and, better, by the six: a corner angle after six readings has sd σd/(ab) rad.
        double six = Math.hypot(A, B) / (A * B);
        double u = 0.0005;
        double other = 1 / (1 / (u * u) + 1 / (six * six));
        assertThat(detectable[6]).isCloseTo(A * DELTA * Math.sqrt(u * u + other), within(1e-4));
    }

    /** One more reading of any kind never raises what another hides. 400 random sets. */
    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0.5, 3})
    void oneMoreNeverHidesMore(double straight) {
        List<Span> pool = join(
                join(MIXED, spans("depth@head-left", "depth@head-right", "depth@foot-right", "depth@foot-left")),
                spans("depth@middle", "depth@middle", "depth@head-left", "fall@head", "fall@head", "width@head"));
        List<PlanPool.Candidate> candidates =
                pool.stream().map(s -> new PlanPool.Candidate(s, by(s))).toList();
        PlanPool plan = new PlanPool(candidates, A, B, straight);
        Random random = new Random(11);
        for (int trial = 0; trial < 400; trial++) {
            int[] order =
                    random.ints(0, pool.size()).distinct().limit(pool.size()).toArray();
            int size = 1 + random.nextInt(pool.size() - 1);
            int[] some = java.util.Arrays.stream(order).limit(size).sorted().toArray();
            int more = order[size];
            int[] with = java.util.stream.IntStream.concat(
                            java.util.Arrays.stream(some), java.util.stream.IntStream.of(more))
                    .toArray();
            double[] before = plan.detectable(some);
            double[] after = plan.detectable(with);
            for (int i = 0; i < size; i++) {
                assertThat(after[i]).isLessThanOrEqualTo(before[i] * (1 + 1e-9));
            }
        }
    }

    // --- what is missing ---------------------------------------------------------------------------------------

    private static final List<Span> NEEDS = spans(
            "width@head", "width@foot", "length@left", "length@right", "diagonal@head-left", "diagonal@head-right");

    @Test
    void whatIsNeededAndNotTakenIsMissing() {
        assertThat(plan(2).missing()).hasSize(5);
        assertThat(plan(2).withNeeds(NEEDS).missing()).isEqualTo(NEEDS);
        assertThat(plan(2).withNeeds(NEEDS).withTaken(NEEDS).missing()).isEmpty();
        assertThat(plan(2).withTaken(NEEDS.subList(0, 4)).missing()).containsExactly(NEEDS.get(4));
    }

    /** A diagonal that cannot be read: one other reading in its place, and the checks are as many as with it. */
    @Test
    void whatCannotBeReadIsReplaced() {
        for (List<Span> cannot : List.of(NEEDS.subList(4, 5), NEEDS.subList(4, 6), NEEDS.subList(0, 1))) {
            List<Span> missing = plan(2).withNeeds(NEEDS).withCannot(cannot).missing();
            assertThat(missing).hasSize(6).doesNotContainAnyElementsOf(cannot);
            Adjustment net = Adjustment.of(survey(missing, 2), Plane.FRONT);
            Adjustment six = Adjustment.of(survey(NEEDS, 2), Plane.FRONT);
            assertThat(net.isSolved()).isTrue();
            assertThat(net.redundancy()).isEqualTo(six.redundancy());
            // Once those are taken, nothing is missing.
            assertThat(plan(2).withNeeds(NEEDS)
                            .withCannot(cannot)
                            .withTaken(missing)
                            .missing())
                    .isEmpty();
        }
    }

    /** Of all that could come in place of a diagonal, none tells more of it: tried by full adjustments. */
    @Test
    void inItsPlaceComesWhatTellsMostOfIt() {
        Span diagonal = NEEDS.get(4);
        List<Span> missing =
                plan(2).withNeeds(NEEDS).withCannot(List.of(diagonal)).missing();
        List<Span> five = missing.subList(0, 5);
        double chosen = doubt(missing, diagonal);
        for (Span other : plan(2).withNeeds(List.of()).usual()) {
            if (!five.contains(other) && !other.equals(diagonal)) {
                assertThat(chosen)
                        .as(other.text())
                        .isLessThanOrEqualTo(doubt(join(five, List.of(other)), diagonal) + 1e-6);
            }
        }
    }

    private static double doubt(List<Span> spans, Span of) {
        Adjustment net = Adjustment.of(survey(spans, 2), Plane.FRONT);
        double[] row = new double[net.model().size()];
        double value = net.model().observe(of, net.values(), row);
        return quoin.measure.Uncertain.combine(value, row, net.unknowns()).standardUncertainty();
    }

    /** Where nothing at all can be read across, the diagonals stay missing: nobody is told that all is there. */
    @Test
    void whatNothingReplacesStaysMissing() {
        List<Span> cannot = new ArrayList<>(NEEDS.subList(4, 6));
        for (Corner corner : Corner.values()) {
            for (Side side : Side.values()) {
                if (!side.touches(corner)) {
                    cannot.add(new Span.Cross(corner, side, At.parse("1/2")));
                }
            }
            cannot.add(Span.parse("check@" + corner.text() + ":600 mm:800 mm"));
            cannot.add(new Span.Angle(corner));
        }
        List<Span> missing = plan(2).withNeeds(NEEDS)
                .withCannot(cannot)
                .withTaken(NEEDS.subList(0, 4))
                .missing();
        assertThat(missing).contains(NEEDS.get(4), NEEDS.get(5));
        List<Span> depth = spans("depth@head-left");
        assertThat(plan(2).withNeeds(depth).withCannot(depth).withTaken(NEEDS).missing())
                .isEqualTo(depth);
    }

    @Test
    void anAngleNeedsASquare() {
        List<Span> angle = spans("angle@head-left");
        SurveyPlan bare = SurveyPlan.of(A, B, 2, TAPE);
        assertThatThrownBy(() -> bare.withNeeds(angle))
                .hasMessage("readings must have no angle where there is no square, got angle@head-left");
        assertThatThrownBy(() -> bare.withSquare(TAPE)).hasMessageStartingWith("instrument must read angles");
        assertThatThrownBy(() -> bare.withRule(SQUARE)).hasMessageStartingWith("instrument must read lengths");
        assertThat(plan(2).withNeeds(angle).missing()).contains(angle.get(0));
    }

    /** A survey under way: as large as it was read, by the instruments that were used. */
    @Test
    void aSurveyUnderWay() {
        Survey survey = survey(NEEDS.subList(0, 4), 2);
        SurveyPlan plan = SurveyPlan.of(survey, TAPE);
        assertThat(plan).hasToString("plan for 2400.0 by 1500.0 mm by tape");
        assertThat(plan.missing()).containsExactly(NEEDS.get(4));
        assertThat(plan.small(10).isReached()).isTrue();
        assertThat(SurveyPlan.of(Surveys.straight(List.of()), TAPE))
                .hasToString("plan for 1500.0 by 2400.0 mm by tape");
        assertThat(SurveyPlan.of(Surveys.straight(List.of()), TAPE).missing()).hasSize(5);
    }
}
