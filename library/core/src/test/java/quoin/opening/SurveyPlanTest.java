package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;
import quoin.measure.TapeClass;

/** The fewest readings against trying every set, each by a full adjustment. Mark: standard (what is claimed is tried). */
class SurveyPlanTest {
    private static final double A = 2400;
    private static final double B = 1500;

    private static Instrument tape() {
        return Surveys.fresh("tape", 1);
    }

    private static SurveyPlan plan(double straight) {
        return SurveyPlan.of(A, B, straight, tape());
    }

    private static List<Span> spans(String... of) {
        return List.of(of).stream().map(Span::parse).toList();
    }

    private static List<String> texts(List<Span> spans) {
        return spans.stream().map(Span::text).toList();
    }

    /** The largest slip that those readings of the rectangle may hide, by an adjustment. */
    private static double hidden(List<Span> spans, double straight, Instrument by) {
        Model model = Model.of(List.of(), false);
        List<Reading> readings = new ArrayList<>();
        for (Span span : spans) {
            double read = model.observe(span, model.rectangle(A, B), new double[5]);
            readings.add(new Reading("", span, Plane.FRONT, List.of(read), by));
        }
        Adjustment net = Adjustment.of(Survey.finished(readings, straight), Plane.FRONT);
        return net.isSolved()
                ? net.readings().stream()
                        .mapToDouble(AdjustedReading::detectable)
                        .max()
                        .orElseThrow()
                : Double.POSITIVE_INFINITY;
    }

    private static final List<Span> TEN = spans(
            "width@head",
            "width@foot",
            "length@left",
            "length@right",
            "diagonal@head-left",
            "diagonal@head-right",
            "width@1/4",
            "length@3/4",
            "cross@head-left:right:1/2",
            "diagonal@head-left");

    /** The size of the smallest set that does, of all parts; 0 where none does. */
    private static int smallest(List<Span> easy, double wanted, double straight) {
        int best = 0;
        for (int mask = 1; mask < 1 << easy.size(); mask++) {
            int size = Integer.bitCount(mask);
            if (size > 5 && (best == 0 || size < best)) {
                List<Span> chosen = new ArrayList<>();
                for (int i = 0; i < easy.size(); i++) {
                    if ((mask >> i & 1) == 1) {
                        chosen.add(easy.get(i));
                    }
                }
                best = hidden(chosen, straight, tape()) <= wanted ? size : best;
            }
        }
        return best;
    }

    @ParameterizedTest
    @CsvSource({
        "6.5, NaN",
        "7.5, NaN",
        "9, NaN",
        "12, NaN",
        "16, NaN",
        "8, 1",
        "9.5, 1",
        "12, 1",
        "14, 2",
        "25, 2",
        "2, NaN"
    })
    void noSmallerSetDoes(double wanted, double straight) {
        SurveyPlan.Chosen chosen = plan(straight).withEasy(TEN).smallest(wanted);
        int best = smallest(TEN, wanted, straight);
        assertThat(chosen.isReached()).isEqualTo(best > 0);
        assertThat(chosen.isSmallest()).isEqualTo(best > 0);
        assertThat(chosen.readings()).hasSize(best > 0 ? best : TEN.size());
        assertThat(chosen.detectableMm()).isCloseTo(hidden(chosen.readings(), straight, tape()), within(1e-6));
        assertThat(chosen.detectableMm() <= wanted).isEqualTo(best > 0);
    }

    /** Here leaving out one after the other ends at eight, and exchanging finds the seven that every part tried shows. */
    @Test
    void leavingOutAloneIsNotEnough() {
        List<Span> eleven = spans(
                "length@1/2",
                "width@head",
                "cross@foot-left:right:1/2",
                "cross@head-left:right:1/2",
                "diagonal@head-left",
                "diagonal@head-right",
                "length@left",
                "cross@head-left:foot:1/2",
                "cross@foot-right:head:1/2",
                "width@3/4",
                "width@foot");
        SurveyPlan.Chosen chosen = plan(1).withEasy(eleven).smallest(13);
        assertThat(chosen.readings()).hasSize(smallest(eleven, 13, 1)).hasSize(7);
        assertThat(chosen.isSmallest()).isTrue();
    }

    /** All six twice: 5.38, 5.65 and 5.22 mm; one fewer leaves one that is checked less. */
    @Test
    void everythingTwice() {
        List<Span> twelve = new ArrayList<>();
        Surveys.SIX.forEach(of -> twelve.add(Span.parse(of)));
        Surveys.SIX.forEach(of -> twelve.add(Span.parse(of)));
        SurveyPlan.Chosen chosen = plan(Double.NaN).withEasy(twelve).smallest(5.66);
        assertThat(chosen.readings()).hasSize(12);
        assertThat(chosen.isReached()).isTrue();
        assertThat(chosen.detectableMm()).isCloseTo(5.65, within(0.006)); // printed to two digits
        SurveyPlan.Chosen beyond = plan(Double.NaN).withEasy(twelve).smallest(5.6);
        assertThat(beyond.isReached()).isFalse();
        assertThat(beyond.isSmallest()).isFalse();
        assertThat(beyond.readings()).hasSize(12);
    }

    /** With the usual readings at hand: reached, and by what is said. */
    @ParameterizedTest
    @ValueSource(doubles = {6, 8, 12})
    void ofTheUsualReadings(double wanted) {
        for (double straight : new double[] {Double.NaN, 2}) {
            SurveyPlan.Chosen chosen = plan(straight).smallest(wanted);
            assertThat(chosen.isReached()).isTrue();
            assertThat(chosen.detectableMm()).isLessThanOrEqualTo(wanted);
            assertThat(hidden(chosen.readings(), straight, tape())).isCloseTo(chosen.detectableMm(), within(1e-6));
        }
    }

    /** What a shared error hides is not lost: with a tape of class II the plan is checked as the adjustment would. */
    @Test
    void aTapeWithAClass() {
        Instrument class2 = Instrument.of("tape", Instrument.Kind.TAPE)
                .withAccuracyClass(TapeClass.II)
                .withStep(1)
                .withEach(List.of(Doubt.standard(0.8, Dimension.LENGTH)));
        SurveyPlan.Chosen chosen = SurveyPlan.of(A, B, 1, class2).smallest(8);
        assertThat(chosen.isReached()).isTrue();
        assertThat(hidden(chosen.readings(), 1, class2)).isCloseTo(chosen.detectableMm(), within(1e-4));
    }

    @Test
    void whatCannotBeReadIsNotInIt() {
        List<Span> diagonals = spans("diagonal@head-left", "diagonal@head-right");
        SurveyPlan.Chosen chosen = plan(1).withCannot(diagonals).smallest(10);
        assertThat(chosen.isReached()).isTrue();
        assertThat(chosen.readings()).doesNotContainAnyElementsOf(diagonals);
        assertThat(texts(chosen.readings())).anyMatch(of -> of.startsWith("cross@"));
    }

    @Test
    void whatTheRulesNeedIsInIt() {
        List<Span> needs = spans(
                "width@head",
                "width@foot",
                "length@left",
                "length@right",
                "diagonal@head-left",
                "diagonal@head-right",
                "depth@middle",
                "width@1/4");
        SurveyPlan.Chosen chosen = plan(1).withNeeds(needs).smallest(12);
        assertThat(chosen.readings())
                .containsAll(needs.stream()
                        .filter(span -> !(span instanceof Span.Depth))
                        .toList());
        assertThat(chosen.readings())
                .filteredOn(Span.parse("depth@middle")::equals)
                .hasSize(2);
        // A need that cannot be read is left out, not waited for.
        Span no = Span.parse("width@1/4");
        assertThat(plan(1).withNeeds(needs).withCannot(List.of(no)).smallest(12).readings())
                .doesNotContain(no);
    }

    /** First what determines the outline: after five readings nothing but checks. */
    @Test
    void theOrderDeterminesFirst() {
        SurveyPlan.Chosen chosen = plan(Double.NaN)
                .withNeeds(spans(Surveys.SIX.toArray(String[]::new)))
                .smallest(9);
        List<Span> first = chosen.readings().subList(0, 5);
        Model model = Model.of(List.of(), false);
        List<Reading> readings = new ArrayList<>();
        for (Span span : first) {
            double read = model.observe(span, model.rectangle(A, B), new double[5]);
            readings.add(new Reading("", span, Plane.FRONT, List.of(read), tape()));
        }
        assertThat(Surveys.adjust(readings).isSolved()).isTrue();
    }

    /** Taking what comes next, one after the other, comes to the same end. */
    @Test
    void oneAfterTheOther() {
        List<Span> taken = new ArrayList<>(spans("width@head", "length@left"));
        SurveyPlan.Chosen start = plan(1).withTaken(taken).smallest(9);
        while (taken.size() < 20) {
            List<Span> next = plan(1).withTaken(taken).next(9).map(List::of).orElse(List.of());
            if (next.isEmpty()) {
                break;
            }
            taken.addAll(next);
        }
        assertThat(hidden(taken, 1, tape())).isLessThanOrEqualTo(9);
        assertThat(taken.size()).isLessThanOrEqualTo(2 + start.readings().size());
        // Enough was taken: nothing comes next.
        assertThat(plan(1).withTaken(taken).next(9)).isEmpty();
    }

    /** The same question has the same answer. */
    @Test
    void theSameQuestionHasTheSameAnswer() {
        assertThat(plan(2).smallest(10)).isEqualTo(plan(2).smallest(10));
        assertThat(plan(2)).hasToString("plan for 2400.0 by 1500.0 mm by tape");
    }

    @Test
    void badArguments() {
        assertThatThrownBy(() -> SurveyPlan.of(99, B, 1, tape()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("width must be 100 mm to 50000 mm, got 99.0 mm");
        assertThatThrownBy(() -> SurveyPlan.of(A, Double.NaN, 1, tape()))
                .hasMessage("length must be 100 mm to 50000 mm, got NaN mm");
        assertThatThrownBy(() -> SurveyPlan.of(A, B, -1, tape()))
                .hasMessage("straightWithin must be 0 mm or more and finite, got -1.0 mm");
        Instrument square = Instrument.of("square", Instrument.Kind.STATED)
                .withEach(List.of(Doubt.standard(0.001, Dimension.ANGLE)));
        assertThatThrownBy(() -> SurveyPlan.of(A, B, 1, square)).hasMessageStartingWith("instrument must read lengths");
        assertThatThrownBy(() -> plan(1).smallest(Double.NaN)).hasMessage("slip must be above 0 mm, got NaN mm");
        assertThatThrownBy(() -> plan(1).withEasy(spans("angle@head-left")))
                .hasMessage("readings must have no angle where there is no square, got angle@head-left");
        List<Span> many = new ArrayList<>();
        for (int i = 1; i <= 41; i++) {
            many.add(Span.parse("width@" + i + "/50"));
        }
        assertThatThrownBy(() -> plan(1).withEasy(many)).hasMessage("easy must have 40 readings or fewer, got 41");
    }
}
