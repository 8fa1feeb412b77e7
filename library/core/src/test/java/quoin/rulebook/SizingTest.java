package quoin.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Source;
import quoin.judge.Step;
import quoin.judge.Verdict;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Influence;
import quoin.measure.Influences;
import quoin.measure.Uncertain;

class SizingTest {
    private static final FigureSource SURVEY = Sample.survey(1502.3, 2398.6);

    private static Sizes decide(SizeClause... more) {
        return Sample.decide(Sample.with(more), SURVEY);
    }

    private static Finding refused(Sizes sizes, String id) {
        assertThat(sizes.find(id)).isEmpty();
        return sizes.refused().stream()
                .filter(finding -> finding.clause().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> codes(List<Step> steps) {
        return steps.stream().map(Step::code).toList();
    }

    @Test
    void theDemonstrationDecidesEverySize() {
        Sizes sizes = Sample.decide(Sample.rulebook(), SURVEY);
        assertThat(sizes.refused()).isEmpty();
        assertThat(sizes.all().stream().map(Size::id))
                .containsExactly("frame.width", "frame.length", "headbox.length", "tube.diameter", "fabric.length");
        assertThat(Sample.mm(sizes, "frame.width")).isEqualTo(1494);
        assertThat(Sample.mm(sizes, "frame.length")).isEqualTo(2390);
        assertThat(Sample.mm(sizes, "headbox.length")).isEqualTo(1490);
        assertThat(Sample.mm(sizes, "tube.diameter")).isEqualTo(50);
        assertThat(Sample.mm(sizes, "fabric.length")).isEqualTo(2740);
        assertThat(sizes.find("frame.width").orElseThrow().within()).isEqualTo(0.5);
        assertThat(sizes.find("tube.diameter").orElseThrow().within()).isZero();
        assertThat(sizes.find("tube.diameter").orElseThrow().dimension()).isEqualTo(Dimension.LENGTH);
    }

    @Test
    void theStepsShowBaseItemsAndRoundingWithWhatItTookAway() {
        Size width = decide().find("frame.width").orElseThrow();
        assertThat(codes(width.steps())).containsExactly("base-figure", "less", "round");
        assertThat(width.steps().get(0).args().asMap())
                .isEqualTo(Map.of("figure", "fit.width", "value", 1502.3, "unit", "mm"));
        assertThat(width.steps().get(0).source()).isEqualTo(Sample.ASSUMED);
        assertThat(width.steps().get(1).args().asMap()).isEqualTo(Map.of("amount", 4.0, "unit", "mm", "times", 2.0));
        Map<String, Object> round = width.steps().get(2).args().asMap();
        assertThat(round)
                .containsEntry("mode", "down")
                .containsEntry("step", 1.0)
                .containsEntry("to", 1494.0);
        assertThat((double) round.get("residual")).isEqualTo(0.3, within(1e-9));
    }

    @Test
    void aSourceOfAnItemComesBeforeThatOfItsClause() {
        Source table = Source.of(Source.Kind.HANDBOOK, "table 3");
        Source declared = Source.of(Source.Kind.DECLARED, "sheet 7");
        Size size = decide(Sample.size("a", "fit.width")
                        .withMore(
                                new Item(Sample.fixed(1), 1, "hem", table),
                                new Item(new Quota.Fixed(Sample.mm(1), declared), 1, "", Source.UNSTATED)))
                .find("a")
                .orElseThrow();
        assertThat(size.steps().get(1).source()).isEqualTo(table);
        assertThat(size.steps().get(1).args().get("because")).contains("hem");
        assertThat(size.steps().get(2).source()).isEqualTo(declared);
    }

    /** A size is a decision (design, 3.5): the gap keeps all the doubt of the opening, and gains that of the cut. */
    @Test
    void theDoubtOfAGapIsNeverZero() {
        Size size = decide().find("frame.width").orElseThrow();
        Uncertain fit = Sample.width(1502.3);
        Uncertain gap = fit.minus(size.asUncertain());
        assertThat(gap.value()).isEqualTo(8.3, within(1e-9));
        // 0.8 of the width and 0.5/sqrt(3) of the cut, independent; handbook: GUM 4.3.7 and 5.1.2; tolerance: rounding
        assertThat(gap.standardUncertainty()).isEqualTo(StrictMath.sqrt(0.64 + 0.25 / 3), within(1e-12));
        Uncertain uncut = fit.minus(Uncertain.exact(size.value()));
        assertThat(uncut.standardUncertainty()).isEqualTo(0.8);
    }

    @Test
    void theCutJoinsAsAFreshInfluence() {
        Sizes sizes = decide(Sample.size("a", "frame.width").withCutWithin(0.3));
        Uncertain width = sizes.find("frame.width").orElseThrow().asUncertain();
        Uncertain a = sizes.find("a").orElseThrow().asUncertain();
        assertThat(width.influences().asList()).extracting(Influence::id).containsExactly("cut/frame.width");
        assertThat(a.influences().asList()).extracting(Influence::id).containsExactly("cut/a");
        assertThat(width.covariance(a)).isZero();
        assertThat(Sample.decide(Sample.rulebook(), SURVEY)
                        .find("headbox.length")
                        .orElseThrow()
                        .asUncertain()
                        .influences())
                .isEqualTo(Influences.NONE);
    }

    /**
     * The trap of rounding inside: half of 199 is 99.5 and twice that is 199; rounded in between it would be 200 (or
     * 198). A size is rounded once, at its end. Practice.
     */
    @Test
    void nothingIsRoundedInside() {
        Rounding nearest = new Rounding.Step(Rounding.Mode.NEAREST, Sample.mm(1));
        Sizes sizes = decide(
                Sample.size("whole", "half")
                        .withMore(new Item(Sample.fixed(199), 0.5, "", Source.UNSTATED))
                        .withRound(nearest),
                Sample.size("half", Sample.fixed(1)).withLess(Sample.item(1, 1)).withMore(Sample.item(199, 0.5)),
                Sample.size("twice", Sample.fixed(1))
                        .withLess(Sample.item(1, 1))
                        .withMore(Sample.item(199, 0.5), Sample.item(199, 0.5))
                        .withRound(nearest));
        assertThat(Sample.mm(sizes, "half")).isEqualTo(99.5);
        assertThat(Sample.mm(sizes, "whole")).isEqualTo(199);
        assertThat(Sample.mm(sizes, "twice")).isEqualTo(199);
    }

    @Test
    void roundingGoesTheStatedWay() {
        assertThat(rounded(Rounding.Mode.DOWN, 1494.9999999997)).isEqualTo(1495);
        assertThat(rounded(Rounding.Mode.DOWN, 1494.99)).isEqualTo(1494.5);
        assertThat(rounded(Rounding.Mode.UP, 1494.01)).isEqualTo(1494.5);
        assertThat(rounded(Rounding.Mode.UP, 1494.0000000003)).isEqualTo(1494);
        assertThat(rounded(Rounding.Mode.NEAREST, 1494.25)).isEqualTo(1494.5);
        assertThat(rounded(Rounding.Mode.NEAREST, 1494.24)).isEqualTo(1494);
    }

    private static double rounded(Rounding.Mode mode, double value) {
        SizeClause clause = Sample.size("a", Sample.fixed(value)).withRound(new Rounding.Step(mode, Sample.mm(0.5)));
        return Sample.mm(decide(clause), "a");
    }

    @Test
    void aListIsRoundedDownTo() {
        Rounding list = new Rounding.DownTo(List.of(Sample.mm(600), Sample.mm(1500), Sample.mm(900)));
        Sizes sizes = decide(
                Sample.size("a", Sample.fixed(1499.9999999997)).withRound(list),
                Sample.size("b", Sample.fixed(1499)).withRound(list),
                Sample.size("c", Sample.fixed(599.9)).withRound(list));
        assertThat(Sample.mm(sizes, "a")).isEqualTo(1500);
        assertThat(Sample.mm(sizes, "b")).isEqualTo(900);
        Finding refused = refused(sizes, "c");
        assertThat(refused.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(codes(refused.steps())).containsExactly("below-list", "no-size-fits");
    }

    @Test
    void aSizeAtOrBelowZeroDoesNotFit() {
        Finding refused = refused(decide(Sample.size("a", Sample.fixed(3)).withLess(Sample.item(3, 1))), "a");
        assertThat(refused.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(codes(refused.steps())).containsExactly("not-positive", "no-size-fits");
    }

    @Test
    void aFigureThatIsNotDeterminedLeavesTheSizeOpen() {
        Sizes sizes = Sample.decide(Sample.rulebook(), Sample.only("fit.length", Sample.width(2398)));
        Finding refused = refused(sizes, "frame.width");
        assertThat(refused.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(refused.reason()).contains(Reason.NOT_DETERMINED);
        assertThat(refused.steps().get(0).args().get("figure")).contains("fit.width");
        assertThat(codes(refused(sizes, "headbox.length").steps())).containsExactly("size-refused");
        assertThat(codes(refused(sizes, "tube.diameter").steps())).containsExactly("figure-not-determined");
        assertThat(refused(sizes, "tube.diameter").reason()).contains(Reason.NOT_DETERMINED);
        assertThat(Sample.mm(sizes, "fabric.length")).isEqualTo(2740);
    }

    @Test
    void aChoiceMustBeMadeAndCovered() {
        Rulebook rulebook = Sample.rulebook();
        Finding open = refused(Sizing.decide(rulebook, Sample.CATALOGUE, SURVEY, Map.of(), Map.of()), "headbox.length");
        assertThat(open.reason()).contains(Reason.NOT_VERIFIED);
        assertThat(codes(open.steps())).containsExactly("choice-not-made");
        Finding other = refused(
                Sizing.decide(rulebook, Sample.CATALOGUE, SURVEY, Map.of("drive", "drive-x"), Map.of()),
                "headbox.length");
        assertThat(other.reason()).contains(Reason.NOT_VERIFIED);
        assertThat(other.steps().get(0).args().asMap()).isEqualTo(Map.of("choice", "drive", "part", "drive-x"));
        Size made = Sample.decide(rulebook, SURVEY).find("headbox.length").orElseThrow();
        assertThat(codes(made.steps())).containsExactly("base-figure", "choice", "less");
        assertThat(made.steps().get(1).args().asMap())
                .isEqualTo(Map.of("choice", "drive", "part", "drive-m", "amount", 4.0, "amountUnit", "mm"));
    }

    @Test
    void anOrderedSizeReplacesTheClauseAndShowsBoth() {
        Sizes sizes = Sizing.decide(
                Sample.rulebook(), Sample.CATALOGUE, SURVEY, Sample.CHOICES, Map.of("frame.width", Sample.mm(1490)));
        Size width = sizes.find("frame.width").orElseThrow();
        assertThat(width.value()).isEqualTo(1490);
        assertThat(width.within()).isEqualTo(0.5);
        assertThat(codes(width.steps())).containsExactly("base-figure", "less", "round", "ordered");
        assertThat(width.steps().get(3).args().asMap())
                .isEqualTo(Map.of("value", 1490.0, "unit", "mm", "decided", 1494.0));
        assertThat(Sample.mm(sizes, "headbox.length")).isEqualTo(1486);
    }

    @Test
    void anOrderedSizeStandsEvenWhereTheClauseGivesNone() {
        Sizes sizes = Sizing.decide(
                Sample.rulebook(),
                Sample.CATALOGUE,
                figure -> Optional.empty(),
                Sample.CHOICES,
                Map.of("frame.width", Sample.mm(1490)));
        Size width = sizes.find("frame.width").orElseThrow();
        assertThat(codes(width.steps())).containsExactly("figure-not-determined", "ordered");
        assertThat(width.steps().get(1).args().get("decided")).isEmpty();
    }

    @Test
    void anOrderedSizeMustMakeSense() {
        Map<String, Amount> ordered = Map.of(
                "frame.width", new Amount(1, Dimension.MASS),
                "frame.length", Sample.mm(0),
                "no.such", Sample.mm(1));
        Sizes sizes = Sizing.decide(Sample.rulebook(), Sample.CATALOGUE, SURVEY, Sample.CHOICES, ordered);
        assertThat(codes(refused(sizes, "frame.width").steps())).containsExactly("wrong-dimension");
        assertThat(codes(refused(sizes, "frame.length").steps())).containsExactly("number-range");
        assertThat(codes(refused(sizes, "no.such").steps())).containsExactly("unknown-size");
    }

    /** Handbook: the 1 % and 5 % points of the normal distribution, -2.3263 and -1.6449 in every table; to its digits. */
    @Test
    void aShortfallIsTheQuantile() {
        assertThat(shortfall(0.01)).isEqualTo(1502.3 - 0.8 * 2.3263, within(0.8 * 5e-5));
        assertThat(shortfall(0.05)).isEqualTo(1502.3 - 0.8 * 1.6449, within(0.8 * 5e-5));
        assertThat(shortfall(0.5)).isEqualTo(1502.3, within(1e-9));
    }

    private static SizeClause shortfallOf(String figure, double probability) {
        return SizeClause.of("a", new Base.OfShortfall(figure, probability)).withBecause("b", Sample.ASSUMED);
    }

    private static double shortfall(double probability) {
        Sizes sizes = decide(shortfallOf("fit.width", probability));
        assertThat(codes(sizes.find("a").orElseThrow().steps())).containsExactly("base-shortfall");
        return Sample.mm(sizes, "a");
    }

    @Test
    void aShortfallOfWhatHasNoDoubtIsTheValue() {
        Rulebook rulebook = Sample.with(shortfallOf("fit.width", 0.01));
        Sizes sizes = Sample.decide(rulebook, Sample.only("fit.width", Uncertain.exact(1500)));
        assertThat(Sample.mm(sizes, "a")).isEqualTo(1500);
    }

    @Test
    void aShortfallOfAnImprobableProbabilityIsRefused() {
        for (double probability : new double[] {0, -0.1, 0.51, 1}) {
            assertThat(codes(refused(decide(shortfallOf("fit.width", probability)), "a")
                            .steps()))
                    .containsExactly("number-range");
        }
    }

    /** Closed form: of two independent parts that are alike, one falls short of their common quantile with 1 - (1 - p)². */
    @Test
    void aLeastOfSeveralFallsShortByTheJointOddsOfItsParts() {
        Extreme.Part left = new Extreme.Part(List.of("left"), Uncertain.of(1502.3, Influence.normal("l", 0.8)));
        Extreme.Part right = new Extreme.Part(List.of("right"), Uncertain.of(1502.3, Influence.normal("r", 0.8)));
        Rulebook rulebook = Sample.with(shortfallOf("fit.width", 0.01));
        Estimate one = Extreme.least(List.of(left));
        assertThat(Sample.mm(Sample.decide(rulebook, Sample.only("fit.width", one)), "a"))
                .isEqualTo(1502.3 - 0.8 * 2.3263, within(0.8 * 5e-5));
        Estimate two = Extreme.least(List.of(left, right));
        Size size =
                Sample.decide(rulebook, Sample.only("fit.width", two)).find("a").orElseThrow();
        // z at 1 - sqrt(0.99) = 0.0050126: -2.5749; the odds are good to 1e-4 of a density of 0.0289
        assertThat(size.value()).isEqualTo(1502.3 - 0.8 * 2.5749, within(0.8 * 1e-4 / 0.0289));
        assertThat(codes(size.steps())).containsExactly("base-shortfall");
        assertThat(size.steps().get(0).args().toString()).contains("error");
    }

    @Test
    void aLargestInSizeHasNoShortfall() {
        Extreme.Part left = new Extreme.Part(List.of("left"), Sample.width(1502.3));
        Estimate largest = Extreme.largestInSize(List.of(left, left));
        Rulebook rulebook = Sample.with(shortfallOf("fit.width", 0.01));
        Finding refused = refused(Sample.decide(rulebook, Sample.only("fit.width", largest)), "a");
        assertThat(refused.reason()).contains(Reason.NOT_VERIFIED);
        assertThat(codes(refused.steps())).containsExactly("no-shortfall");
        Sizes plain = Sample.decide(Sample.with(Sample.size("a", "fit.width")), Sample.only("fit.width", largest));
        assertThat(Sample.mm(plain, "a")).isEqualTo(1502.3);
    }

    @Test
    void faultsOfTheRulebookAreFindingsAndNeverASize() {
        Amount kilo = new Amount(1, Dimension.MASS);
        Sizes sizes = decide(
                Sample.size("unknown", "fit.widht"),
                Sample.size("order", "gap.least"),
                Sample.size("item", "fit.width").withLess(Sample.item(Quota.fixed(kilo))),
                Sample.size("step", "fit.width").withRound(new Rounding.Step(Rounding.Mode.UP, kilo)),
                Sample.size("list", "fit.width").withRound(new Rounding.DownTo(List.of(kilo))),
                Sample.size("zero", "fit.width").withRound(Sample.down(0)),
                Sample.size("fine", "fit.width").withRound(Sample.down(1e-300)),
                Sample.size("cut", "fit.width").withCutWithin(-1),
                Sample.size("mass", Quota.fixed(kilo)).withCutWithin(1),
                Sample.size("huge", "fit.width").withMore(Sample.item(1e300, 1e300)),
                Sample.size("sum", "fit.width").withMore(Sample.item(1e308, 1), Sample.item(1e308, 1)),
                Sample.size("none", new Quota.Banded("fit.width", List.of())),
                Sample.size("x", "y"),
                Sample.size("y", "x"),
                Sample.size("twin", "fit.width"),
                Sample.size("twin", "fit.length"));
        Map<String, String> expected = Map.ofEntries(
                Map.entry("unknown", "unknown-figure"),
                Map.entry("order", "order-figure-in-size"),
                Map.entry("item", "wrong-dimension"),
                Map.entry("step", "wrong-dimension"),
                Map.entry("list", "wrong-dimension"),
                Map.entry("zero", "number-range"),
                Map.entry("fine", "out-of-range"),
                Map.entry("cut", "number-range"),
                Map.entry("mass", "wrong-dimension"),
                Map.entry("huge", "out-of-range"),
                Map.entry("sum", "out-of-range"),
                Map.entry("none", "no-band"),
                Map.entry("x", "cycle"),
                Map.entry("y", "cycle"),
                Map.entry("twin", "duplicate-id"));
        expected.forEach((id, code) -> {
            Finding finding = refused(sizes, id);
            assertThat(finding.reason()).as(id).contains(Reason.NOT_VERIFIED);
            assertThat(codes(finding.steps())).as(id).containsExactly(code);
        });
        assertThat(sizes.refused()).hasSize(expected.size());
    }

    @Test
    void sizesStandBeforeFigures() {
        Sizes sizes = decide();
        FigureSource both = sizes.before(SURVEY);
        assertThat(both.estimate("frame.width").orElseThrow().value()).isEqualTo(1494);
        assertThat(both.estimate("fit.width").orElseThrow().value()).isEqualTo(1502.3);
        assertThat(both.estimate("nothing")).isEmpty();
        assertThat(Sizes.NONE.all()).isEmpty();
        assertThat(decide()).isEqualTo(sizes).hasSameHashCodeAs(sizes).isNotEqualTo(Sizes.NONE);
        assertThat(sizes).hasToString("[frame.width, frame.length]");
    }

    @Test
    void aTemperatureOrAnglesRoundingShowsAnswerUnits() {
        Quota right = Quota.fixed(new Amount(StrictMath.PI / 2, Dimension.ANGLE));
        Rounding degree = new Rounding.Step(Rounding.Mode.NEAREST, new Amount(StrictMath.PI / 180, Dimension.ANGLE));
        Size size = decide(Sample.size("a", right).withRound(degree)).find("a").orElseThrow();
        Map<String, Object> args = size.steps().get(1).args().asMap();
        assertThat((double) args.get("to")).isEqualTo(90, within(1e-12));
        assertThat((double) args.get("step")).isEqualTo(1, within(1e-12));
        assertThat(args).containsEntry("unit", "deg");
    }
}
