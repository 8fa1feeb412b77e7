package quoin.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.judge.Problem;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.parts.Parts;

class LintTest {
    private static final Amount KILO = new Amount(1, Dimension.MASS);

    private static List<Problem> lint(Rulebook rulebook) {
        return Lint.problems(rulebook, Sample.CATALOGUE, List.of(Sample.parts()));
    }

    private static List<Problem> lint(SizeClause... more) {
        return lint(Sample.with(more));
    }

    private static List<Problem> bound(BoundClause clause) {
        return lint(Sample.with().withBounds(List.of(clause.withBecause("b", Sample.ASSUMED))));
    }

    private static Problem only(List<Problem> problems) {
        assertThat(problems).hasSize(1);
        return problems.get(0);
    }

    private static void assertError(Problem problem, String code, String pointer) {
        assertThat(problem.code()).isEqualTo(code);
        assertThat(problem.pointer()).isEqualTo(pointer);
        assertThat(problem.severity()).isEqualTo(Problem.Severity.ERROR);
    }

    private static void assertWarning(Problem problem, String code, String pointer) {
        assertThat(problem.code()).isEqualTo(code);
        assertThat(problem.pointer()).isEqualTo(pointer);
        assertThat(problem.severity()).isEqualTo(Problem.Severity.WARNING);
    }

    private static SizeClause banded(double... upToAndAmount) {
        return Sample.size("a", Sample.bands("frame.width", upToAndAmount));
    }

    @Test
    void theDemonstrationIsClean() {
        assertThat(lint(Sample.rulebook())).isEmpty();
        assertThat(Lint.problems(Sample.rulebook(), Sample.CATALOGUE, List.of()))
                .isEmpty();
        assertThat(Lint.problems(Sample.parts())).isEmpty();
    }

    @Test
    void aFrameNeedsItsTwoSizes() {
        List<Problem> problems = lint(Sample.empty());
        assertThat(problems).hasSize(2);
        assertError(problems.get(0), "missing-size", "/sizes");
        assertThat(problems.get(0).args().get("size")).contains("frame.width");
        assertThat(problems.get(1).args().get("size")).contains("frame.length");
    }

    @Test
    void anUnknownFigureComesWithTheNearestKnown() {
        Problem problem = only(lint(Sample.size("a", "fit.widht")));
        assertError(problem, "unknown-figure", "/sizes/2/of");
        assertThat(problem.args().asMap()).isEqualTo(Map.of("figure", "fit.widht", "nearest", List.of("fit.width")));
        assertError(
                only(lint(SizeClause.of("a", new Base.OfShortfall("gone", 0.01)).withBecause("b", Sample.ASSUMED))),
                "unknown-figure",
                "/sizes/2/of/figure");
        assertError(
                only(lint(Sample.size("a", Sample.bands("frame.widht", 1, 1)))),
                "unknown-figure",
                "/sizes/2/of/bands/by");
        Problem gap = only(bound(BoundClause.of("b", "gap.last").withAtLeast(Sample.fixed(1))));
        assertError(gap, "unknown-figure", "/bounds/0/figure");
        assertThat(gap.args().get("nearest")).contains(List.of("gap.least"));
    }

    @Test
    void aDeclaredFigureIsKnown() {
        assertThat(bound(BoundClause.of("b", "site.headroom").withAtLeast(Sample.fixed(2000))))
                .isEmpty();
        assertThat(lint(Sample.size("a", "own.niche"))).isEmpty();
    }

    @Test
    void noSizeIsMadeFromAFigureThatNeedsSizes() {
        assertError(only(lint(Sample.size("a", "gap.least"))), "order-figure-in-size", "/sizes/2/of");
        assertError(
                only(lint(Sample.size("a", "fit.width").withLess(Sample.item(Sample.bands("gap.least", 1, 1))))),
                "order-figure-in-size",
                "/sizes/2/less/0/bands/by");
        assertError(
                only(bound(BoundClause.of("b", "gap.greatest").withAtMost(Sample.bands("gap.least", 1, 1)))),
                "order-figure-in-band",
                "/bounds/0/atMost/bands/by");
    }

    @Test
    void kindsOfQuantityMustAgree() {
        Problem item = only(lint(Sample.size("a", "fit.width").withMore(Sample.item(Quota.fixed(KILO)))));
        assertError(item, "wrong-dimension", "/sizes/2/more/0/amount");
        assertThat(item.args().asMap()).isEqualTo(Map.of("expected", "length", "got", "mass", "unit", "mm"));
        assertError(
                only(lint(Sample.size("a", "frame.width").withRound(new Rounding.Step(Rounding.Mode.UP, KILO)))),
                "wrong-dimension",
                "/sizes/2/round/up");
        assertError(
                only(lint(Sample.size("a", "frame.width").withRound(new Rounding.DownTo(List.of(KILO))))),
                "wrong-dimension",
                "/sizes/2/round/downTo/0");
        assertError(
                only(lint(Sample.size("a", Quota.fixed(KILO)).withCutWithin(1))),
                "wrong-dimension",
                "/sizes/2/cutWithin");
        Quota byMass = new Quota.Banded("fit.width", List.of(new Quota.Band(KILO, Sample.mm(1))));
        assertError(only(lint(Sample.size("a", byMass))), "wrong-dimension", "/sizes/2/of/bands/amounts/0/upTo");
        Quota mixed = new Quota.Banded(
                "fit.width", List.of(new Quota.Band(Sample.mm(1), Sample.mm(1)), new Quota.Band(Sample.mm(2), KILO)));
        assertError(only(lint(Sample.size("a", mixed))), "wrong-dimension", "/sizes/2/of/bands/amounts/1/amount");
        assertError(
                only(bound(BoundClause.of("b", "frame.width").withAtMost(Quota.fixed(KILO)))),
                "wrong-dimension",
                "/bounds/0/atMost");
        assertError(
                only(bound(BoundClause.of("b", "frame.area").withAtMost(Sample.fixed(1)))),
                "wrong-dimension",
                "/bounds/0/atMost");
    }

    @Test
    void anIdStandsOnce() {
        assertError(only(lint(Sample.size("frame.width", "fit.width"))), "duplicate-id", "/sizes/2/id");
        BoundClause clause = Sample.bounds().get(0);
        assertError(only(lint(Sample.with().withBounds(List.of(clause, clause)))), "duplicate-id", "/bounds/1/id");
        assertError(only(lint(Sample.size("fit.length", "fit.width"))), "size-named-as-figure", "/sizes/2/id");
    }

    @Test
    void aCycleIsShownWhole() {
        List<Problem> problems = lint(
                Sample.size("a", "b"),
                Sample.size("b", Sample.bands("c", 1, 1)),
                Sample.size("c", "fit.width").withLess(Sample.item(Sample.bands("a", 1, 1))),
                Sample.size("after", "a"),
                Sample.size("self", "self"));
        assertThat(problems).extracting(Problem::code).containsOnly("cycle");
        assertThat(problems)
                .extracting(Problem::pointer)
                .containsExactly("/sizes/2/of", "/sizes/3/of", "/sizes/4/of", "/sizes/6/of");
        assertThat(problems.get(0).args().get("sizes")).contains(List.of("a", "b", "c", "a"));
        assertThat(problems.get(1).args().get("sizes")).contains(List.of("b", "c", "a", "b"));
        assertThat(problems.get(3).args().get("sizes")).contains(List.of("self", "self"));
    }

    @Test
    void bandsAscend() {
        Problem order = only(lint(banded(1800, 50, 1200, 63)));
        assertError(order, "band-order", "/sizes/2/of/bands/amounts/1/upTo");
        assertThat(order.args().asMap())
                .isEqualTo(
                        Map.of("by", "frame.width", "above", 0.0, "witness", 1200.0, "before", 1800.0, "unit", "mm"));
        Problem third = lint(banded(900, 50, 1800, 55, 1200, 63)).get(0);
        assertThat(third.args().get("above")).contains(900.0);
        assertThat(third.args().get("witness")).contains(1200.0);
        Problem overlap = only(lint(banded(1800, 50, 1800, 63)));
        assertError(overlap, "band-overlap", "/sizes/2/of/bands/amounts/1/upTo");
        assertThat(overlap.args().get("witness")).contains(1800.0);
        assertError(only(lint(banded())), "band-gap", "/sizes/2/of/bands/amounts");
        assertError(only(lint(banded(0, 50, 1800, 63))), "number-range", "/sizes/2/of/bands/amounts/0/upTo");
    }

    @Test
    void aGapBetweenTheLastBandAndTheLimitOfASizeIsShown() {
        SizeClause hem = Sample.size("hem", "fit.width").withMore(Sample.item(Sample.bands("frame.width", 3000, 1)));
        SizeClause tuck = Sample.size("tuck", "fit.width").withLess(Sample.item(Sample.bands("frame.width", 3100, 1)));
        BoundClause limit = BoundClause.of("limit", "frame.width")
                .withAtMost(Sample.fixed(3200))
                .withBecause("b", Sample.ASSUMED);
        List<Problem> problems = lint(Sample.with(banded(3200, 50), hem, tuck).withBounds(List.of(limit)));
        assertThat(problems).hasSize(2);
        assertWarning(problems.get(0), "band-gap", "/sizes/3/more/0/bands/amounts");
        assertThat(problems.get(0).args().asMap())
                .isEqualTo(Map.of("by", "frame.width", "witness", 3200.0, "above", 3000.0, "unit", "mm"));
        assertWarning(problems.get(1), "band-gap", "/sizes/4/less/0/bands/amounts");
    }

    @Test
    void everyPartThatCanBeChosenIsCovered() {
        Quota.ByChoice other = Quota.byChoice("drive", Map.of("drive-x", Sample.mm(4)));
        List<Problem> problems = lint(Sample.size("a", "frame.width").withLess(Sample.item(other)));
        assertThat(problems).hasSize(2);
        assertError(problems.get(0), "choice-not-covered", "/sizes/2/less/0/amounts");
        assertThat(problems.get(0).args().get("missing")).contains(List.of("drive-m"));
        assertWarning(problems.get(1), "unknown-part", "/sizes/2/less/0/amounts/drive-x");
        Rulebook rulebook = Sample.with(Sample.size("a", "frame.width").withLess(Sample.item(other)));
        assertThat(Lint.problems(rulebook, Sample.CATALOGUE, List.of())).isEmpty();
        Quota.ByChoice none = Quota.byChoice("drive", Map.of());
        assertThat(Lint.problems(
                        Sample.with(Sample.size("a", "frame.width").withLess(Sample.item(none))),
                        Sample.CATALOGUE,
                        List.of()))
                .extracting(Problem::code)
                .containsExactly("choice-not-covered");
        Quota.ByChoice colour = Quota.byChoice("colour", Map.of("red", Sample.mm(1)));
        Problem unknown = only(lint(Sample.size("a", "frame.width").withLess(Sample.item(colour))));
        assertError(unknown, "unknown-choice", "/sizes/2/less/0/choice");
        assertThat(unknown.args().get("known")).contains(Parts.CHOICES);
        Quota.ByChoice heavy = Quota.byChoice("drive", Map.of("drive-m", KILO));
        assertError(
                only(lint(Sample.size("a", "frame.width").withLess(Sample.item(heavy)))),
                "wrong-dimension",
                "/sizes/2/less/0/amounts/drive-m");
    }

    @Test
    void numbersKeepTheirRange() {
        Problem less = only(lint(Sample.size("a", "frame.width").withLess(Sample.item(-3, 1))));
        assertError(less, "number-range", "/sizes/2/less/0/amount");
        assertThat(less.args().asMap()).isEqualTo(Map.of("atLeast", 0.0, "got", -3.0, "unit", "mm"));
        assertError(
                only(lint(Sample.size("a", "frame.width").withMore(Sample.item(3, 0)))),
                "number-range",
                "/sizes/2/more/0/times");
        assertError(only(lint(Sample.size("a", Sample.fixed(0)))), "number-range", "/sizes/2/of");
        assertError(
                only(lint(Sample.size("a", "frame.width").withRound(Sample.down(0)))),
                "number-range",
                "/sizes/2/round/down");
        assertError(
                only(lint(Sample.size("a", "frame.width").withCutWithin(-1))), "number-range", "/sizes/2/cutWithin");
        assertError(only(lint(Sample.size("a", Sample.fixed(1e300)))), "number-range", "/sizes/2/of");
        assertError(
                only(lint(Sample.size("a", "frame.width").withRound(new Rounding.DownTo(List.of())))),
                "empty-list",
                "/sizes/2/round/downTo");
        for (double probability : new double[] {0, 0.6}) {
            assertError(
                    only(lint(SizeClause.of("a", new Base.OfShortfall("fit.width", probability))
                            .withBecause("b", Sample.ASSUMED))),
                    "number-range",
                    "/sizes/2/of/shortfall");
        }
        Amount hot = new Amount(Double.MAX_VALUE, Dimension.ANGLE);
        assertError(only(lint(Sample.size("a", Quota.fixed(hot)))), "number-range", "/sizes/2/of");
    }

    @Test
    void aBoundHasLimitsThatCanBeKept() {
        BoundClause gap = BoundClause.of("b", "gap.least");
        assertError(only(bound(gap)), "no-limit", "/bounds/0");
        assertError(
                only(bound(gap.withAtLeast(Sample.fixed(2)).withAtMost(Sample.fixed(1)))),
                "limits-cross",
                "/bounds/0/atLeast");
        assertError(
                only(bound(gap.withAtLeast(Sample.fixed(2)).withWithin(Sample.fixed(5)))),
                "within-and-limit",
                "/bounds/0/within");
        assertError(only(bound(gap.withWithin(Sample.fixed(-5)))), "number-range", "/bounds/0/within");
        assertThat(bound(gap.withAtLeast(Sample.fixed(-5)))).isEmpty();
    }

    @Test
    void aMissingSourceIsShown() {
        SizeClause clause = SizeClause.of("a", new Base.OfFigure("fit.width"));
        assertWarning(only(lint(clause)), "missing-source", "/sizes/2");
        BoundClause gap = BoundClause.of("b", "gap.least").withAtLeast(Sample.fixed(1));
        assertWarning(only(lint(Sample.with().withBounds(List.of(gap)))), "missing-source", "/bounds/0");
        FixingRule fixings = new FixingRule(
                Sample.mm(100),
                Sample.mm(50),
                Sample.mm(150),
                Sample.mm(25),
                Sample.mm(60),
                Sample.mm(400),
                Sample.mm(1),
                "reveal",
                "screw-8",
                Source.UNSTATED);
        assertWarning(only(lint(Sample.with().withFixings(fixings))), "missing-source", "/fixings");
    }

    @Test
    void aSizeThatStepsDownAsTheOpeningGrowsIsShown() {
        Quota more = Sample.bands("fit.width", 1000, 3, 2000, 5);
        Problem down = only(lint(Sample.size("a", "fit.width").withLess(new Item(more, 2, "", Source.UNSTATED))));
        assertWarning(down, "steps-down", "/sizes/2");
        assertThat(down.args().asMap())
                .containsEntry("size", "a")
                .containsEntry("by", "fit.width")
                .containsEntry("at", 1000.0)
                .containsEntry("unit", "mm")
                .containsEntry("down", 4.0)
                .containsEntry("before", 994.0)
                .containsEntry("after", 990.0);
        assertThat(lint(Sample.size("a", "fit.width").withMore(Sample.item(more))))
                .isEmpty();
        assertThat(lint(Sample.size("a", "fit.width")
                        .withMore(Sample.item(more))
                        .withLess(Sample.item(more))))
                .isEmpty();
        assertWarning(only(lint(banded(1000, 63, 2000, 50))), "steps-down", "/sizes/2");
        Quota bySkew = Sample.bands("opening.diagonal.difference", 3, 1, 6, 2);
        assertThat(lint(Sample.size("a", "fit.width").withLess(Sample.item(bySkew))))
                .isEmpty();
    }

    @Test
    void aBoundThatCanNeverFailOrPassIsShown() {
        SizeClause tube = banded(1800, 50, 3000, 63);
        assertWarning(never(tube, BoundClause.of("b", "a").withAtMost(Sample.fixed(63))), "never-fails", "/bounds/0");
        assertWarning(never(tube, BoundClause.of("b", "a").withWithin(Sample.fixed(70))), "never-fails", "/bounds/0");
        assertWarning(never(tube, BoundClause.of("b", "a").withAtLeast(Sample.fixed(64))), "never-passes", "/bounds/0");
        SizeClause list =
                Sample.size("a", "fit.width").withRound(new Rounding.DownTo(List.of(Sample.mm(600), Sample.mm(900))));
        assertWarning(never(list, BoundClause.of("b", "a").withAtMost(Sample.fixed(900))), "never-fails", "/bounds/0");
        SizeClause more = Sample.size("a", Sample.fixed(10))
                .withMore(Sample.item(5, 2))
                .withLess(Sample.item(1, 1))
                .withRound(Sample.down(1));
        assertWarning(never(more, BoundClause.of("b", "a").withAtLeast(Sample.fixed(18))), "never-fails", "/bounds/0");
        assertWarning(never(more, BoundClause.of("b", "a").withAtMost(Sample.fixed(17))), "never-passes", "/bounds/0");
        SizeClause rounded = Sample.size("a", Sample.fixed(10.2)).withRound(Sample.down(1));
        assertWarning(
                never(rounded, BoundClause.of("b", "a").withAtMost(Sample.fixed(10))), "never-fails", "/bounds/0");
    }

    private static Problem never(SizeClause size, BoundClause clause) {
        return only(lint(Sample.with(size).withBounds(List.of(clause.withBecause("b", Sample.ASSUMED)))));
    }

    @Test
    void nothingIsClaimedThatTheLimitsDoNotProve() {
        SizeClause cut = Sample.size("a", Sample.fixed(10)).withCutWithin(0.5);
        SizeClause shortfall =
                SizeClause.of("d", new Base.OfShortfall("fit.width", 0.01)).withBecause("b", Sample.ASSUMED);
        BoundClause tight =
                BoundClause.of("b", "a").withAtLeast(Sample.fixed(9.6)).withAtMost(Sample.fixed(10.6));
        BoundClause below = BoundClause.of("d", "d").withAtMost(Sample.fixed(1e6));
        BoundClause banded = BoundClause.of("e", "a").withAtMost(Sample.bands("fit.width", 3000, 99));
        BoundClause gap = BoundClause.of("f", "gap.least").withAtLeast(Sample.fixed(0));
        List<BoundClause> bounds = List.of(tight, below, banded, gap).stream()
                .map(clause -> clause.withBecause("b", Sample.ASSUMED))
                .toList();
        assertThat(lint(Sample.with(cut, shortfall).withBounds(bounds))).isEmpty();
    }

    @Test
    void aBoundInsideTheLimitOfAnotherSizeIsShown() {
        SizeClause box = Sample.size("box", "frame.width").withLess(Sample.item(Sample.endPlates()));
        BoundClause frame = BoundClause.of("frame", "frame.width")
                .withAtLeast(Sample.fixed(400))
                .withAtMost(Sample.fixed(3000))
                .withBecause("b", Sample.ASSUMED);
        BoundClause wide =
                BoundClause.of("wide", "box").withAtMost(Sample.fixed(2996)).withBecause("b", Sample.ASSUMED);
        BoundClause tight = wide.withAtMost(Sample.fixed(2995));
        BoundClause never = wide.withAtMost(Sample.fixed(395));
        Rulebook rulebook = Sample.with(box);
        assertWarning(only(lint(rulebook.withBounds(List.of(frame, wide)))), "never-fails", "/bounds/1");
        assertThat(lint(rulebook.withBounds(List.of(frame, tight)))).isEmpty();
        assertWarning(only(lint(rulebook.withBounds(List.of(never, frame)))), "never-passes", "/bounds/0");
    }

    @Test
    void theFrameAndItsFixingsAreChecked() {
        Rulebook deep = Sample.with()
                .withFrame(new FrameRule(FrameRule.Hold.HEAD, "area", List.of(Sample.mm(110), Sample.mm(20))));
        assertError(only(lint(deep)), "number-range", "/frame/depth/1");
        Rulebook heavy =
                Sample.with().withFrame(new FrameRule(FrameRule.Hold.HEAD, "area", List.of(Sample.mm(0), KILO)));
        assertError(only(lint(heavy)), "wrong-dimension", "/frame/depth/1");
        FixingRule wrong = new FixingRule(
                Sample.mm(40),
                Sample.mm(50),
                Sample.mm(30),
                Sample.mm(0),
                Sample.mm(400),
                Sample.mm(60),
                Sample.mm(-1),
                "reveal",
                "screw-9",
                Source.PRACTICE);
        List<Problem> problems = lint(Sample.with().withFixings(wrong));
        assertThat(problems)
                .extracting(Problem::pointer)
                .containsExactly(
                        "/fixings/fromEdge",
                        "/fixings/mark",
                        "/fixings/fromEnd/aim",
                        "/fixings/fromEnd/atMost",
                        "/fixings/pitch/atMost",
                        "/fixings/fastener");
        assertWarning(problems.get(5), "unknown-part", "/fixings/fastener");
    }

    @Test
    void onlyFactsThatExistCanBeAskedFor() {
        Problem problem = only(lint(Sample.with().withSiteAsks(List.of("role", "weather"))));
        assertError(problem, "unknown-site-fact", "/site/asks/1");
    }

    @Test
    void theHoleIsLargerThanTheThread() {
        Parts tight = Parts.of("p", "1", List.of(), List.of(), List.of(), List.of(Sample.fastener(4)));
        Problem problem = only(Lint.problems(tight));
        assertWarning(problem, "hole-not-larger-than-thread", "/fasteners/screw-8/hole");
        assertThat(problem.args().asMap())
                .isEqualTo(Map.of("fastener", "screw-8", "hole", 4.0, "thread", 4.0, "unit", "mm"));
    }

    @Test
    void numbersOfPartsKeepTheirRange() {
        Parts parts = Parts.of(
                "p",
                "1",
                List.of(new quoin.parts.Fabric(
                        "f/x",
                        Sample.declared(-1, Dimension.AREA_MASS),
                        Sample.declared(0, Dimension.LENGTH),
                        quoin.parts.Declared.unknown(Dimension.LENGTH),
                        true)),
                List.of(),
                List.of(new quoin.parts.Profile(
                        "p",
                        Sample.declared(1e-3, Dimension.LINE_MASS),
                        List.of(Sample.declared(6000, Dimension.LENGTH), Sample.declared(-1, Dimension.LENGTH)),
                        Sample.declared(1e12, Dimension.PER_KELVIN))),
                List.of());
        List<Problem> problems = Lint.problems(parts);
        assertThat(problems).extracting(Problem::code).containsOnly("number-range");
        assertThat(problems)
                .extracting(Problem::pointer)
                .containsExactly(
                        "/fabrics/f~1x/areaMass",
                        "/fabrics/f~1x/thickness",
                        "/profiles/p/stock/1",
                        "/profiles/p/expansion");
    }

    @Test
    void distancesBetweenNames() {
        // memory: the standard example of the edit distance, three changes
        assertThat(Names.distance("kitten", "sitting")).isEqualTo(3);
        assertThat(Names.distance("", "abc")).isEqualTo(3);
        assertThat(Names.distance("same", "same")).isZero();
    }

    /** A stranger's document with thousands of faults costs a message each and no more. */
    @Test
    void aDocumentFullOfFaultsIsAnsweredInTime() {
        SizeClause[] wrong = new SizeClause[4000];
        for (int i = 0; i < wrong.length; i++) {
            wrong[i] = Sample.size("s" + i, i % 2 == 0 ? "fit.width." + i : "s" + (i + 2) % wrong.length);
        }
        List<Problem> problems = assertTimeout(Duration.ofSeconds(20), () -> lint(wrong));
        assertThat(problems).hasSize(4000);
        assertThat(problems.get(1).args().get("sizes").map(List.class::cast).orElseThrow())
                .hasSize(20);
        assertThat(problems.get(0).args().get("nearest").map(List.class::cast).orElseThrow())
                .contains("fit.width");
        assertThat(problems.get(3998).args().get("nearest")).contains(List.of());
    }
}
