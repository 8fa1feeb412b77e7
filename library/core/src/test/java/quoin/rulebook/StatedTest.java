package quoin.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import quoin.judge.Bound;
import quoin.judge.Conformity;
import quoin.judge.Constraint;
import quoin.judge.DecisionRule;
import quoin.judge.Finding;
import quoin.judge.Problem;
import quoin.judge.Reason;
import quoin.judge.Source;
import quoin.judge.Step;
import quoin.judge.Verdict;
import quoin.measure.Budget;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Influence;
import quoin.measure.Uncertain;

/** Numbers of a rulebook that have a doubt of their own, and bands whose edge a doubt reaches. */
class StatedTest {
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private static Stated number(double mm, Doubt doubt) {
        return Stated.of(Sample.mm(mm)).withDoubt(doubt);
    }

    private static Uncertain read(double mm, double u) {
        return Uncertain.of(mm, Influence.normal("read", u));
    }

    private static FigureSource figures(Map<String, ? extends Estimate> map) {
        return figure -> Optional.ofNullable((Estimate) map.get(figure));
    }

    private static Sizes decide(Rulebook book, double width, double u) {
        return Sizing.decide(
                book,
                Sample.CATALOGUE,
                figures(Map.of("fit.width", read(width, u), "fit.length", read(2400, u))),
                Sample.CHOICES,
                Map.of());
    }

    /** Rectangular limits a have u = a / √3 (JCGM 100:2008, 4.3.7); twice the same number counts twice, not √2 times. */
    @Test
    void aPlateOfDoubtfulThicknessMakesTheSizeDoubtful() {
        Item plates = new Item(new Quota.Fixed(number(4, Doubt.limits(0.3, Dimension.LENGTH))), 2, "", Source.UNSTATED);
        Sizes sizes = decide(Sample.with(Sample.size("box", "frame.width").withLess(plates)), 1503, 1);
        Size box = sizes.find("box").orElseThrow();
        assertThat(box.value()).isEqualTo(1495 - 8);
        assertThat(box.asUncertain().standardUncertainty()).isCloseTo(2 * 0.3 / Math.sqrt(3), within(1e-12));
        Budget budget = Budget.of(box.asUncertain());
        assertThat(budget.parts()).extracting(Budget.Part::name).containsExactly("rulebook number");
        assertThat(budget.lines().get(0).influence().id()).isEqualTo("rulebook number/box.less.0");
        assertThat(budget.lines().get(0).sensitivity()).isCloseTo(-2, within(1e-12));
        assertThat(sizes.find("frame.width").orElseThrow().asUncertain().standardUncertainty())
                .as("the cut alone: no reading, no number of another clause")
                .isCloseTo(0.5 / Math.sqrt(3), within(1e-12));
    }

    @Test
    void aNumberOfOneNameIsOneInfluence() {
        Stated plate = number(4, Doubt.standard(0.2, Dimension.LENGTH)).withId("plate");
        Item item = new Item(new Quota.Fixed(plate), 1, "", Source.UNSTATED);
        Sizes sizes = decide(
                Sample.with(
                        Sample.size("one", "frame.width").withLess(item),
                        Sample.size("two", "frame.width").withLess(item)),
                1503,
                1);
        Uncertain difference = sizes.find("one")
                .orElseThrow()
                .asUncertain()
                .minus(sizes.find("two").orElseThrow().asUncertain());
        assertThat(difference.standardUncertainty()).isZero();
    }

    /** y ≥ a + δ: P = Φ((y − a) / √(u² + u_δ²)), the sum of two independent normal numbers. */
    @Test
    void theDoubtOfALimitStandsInTheMargin() {
        BoundClause clause = BoundClause.of("goes-in", "fit.width")
                .withAtLeast(new Quota.Fixed(number(1500, Doubt.standard(1.2, Dimension.LENGTH))));
        Finding finding = check(clause, read(1502, 0.9));
        double u = Math.hypot(0.9, 1.2);
        assertThat(finding.odds().orElseThrow().value()).isCloseTo(NORMAL.cumulativeProbability(2 / u), within(1e-12));
        assertThat(finding.margin().orElseThrow().u()).isCloseTo(u, within(1e-12));
        assertThat(finding.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(check(BoundClause.of("goes-in", "fit.width").withAtLeast(Sample.fixed(1500)), read(1502, 0.9))
                        .verdict())
                .as("an exact limit is kept")
                .isEqualTo(Verdict.PASS);
    }

    /** −t − δ ≤ y ≤ t + δ with t doubtful and y sure: P(|y| ≤ t + δ) = Φ((t − |y|) / u_δ), but for the other side. */
    @Test
    void withinADoubtfulLimitBothSidesMoveTogether() {
        BoundClause clause = BoundClause.of("square", "opening.diagonal.difference")
                .withWithin(new Quota.Fixed(number(6, Doubt.standard(0.5, Dimension.LENGTH))));
        Finding finding = check(clause, Uncertain.exact(-5.5));
        assertThat(finding.odds().orElseThrow().value()).isCloseTo(NORMAL.cumulativeProbability(1), within(1e-4));
        // in the middle both sides hang on the one δ: 0.3 + δ ≥ 0
        BoundClause narrow = BoundClause.of("square", "opening.diagonal.difference")
                .withWithin(new Quota.Fixed(number(0.3, Doubt.standard(0.5, Dimension.LENGTH))));
        assertThat(check(narrow, Uncertain.exact(0)).odds().orElseThrow().value())
                .isCloseTo(NORMAL.cumulativeProbability(0.6), within(1e-4));
        assertThat(finding.margin().orElseThrow().against()).isEqualTo("atLeast");
        assertThat(finding.margin().orElseThrow().value()).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void aLeastKeepsItsPartsAgainstADoubtfulLimit() {
        Estimate least = Extreme.least(List.of(
                new Extreme.Part(List.of("a"), Uncertain.of(3, Influence.normal("a", 1))),
                new Extreme.Part(List.of("b"), Uncertain.of(3, Influence.normal("b", 1)))));
        BoundClause clause = BoundClause.of("gap", "gap.least")
                .withAtLeast(new Quota.Fixed(number(1, Doubt.standard(1, Dimension.LENGTH))));
        Limits.Stated stated = (Limits.Stated) clause.bound(figures(Map.of()), Map.of());
        List<Constraint> sides = stated.on(least);
        // brute force over δ on a fine grid: both parts hold given δ, independent
        double sum = 0;
        double weight = 0;
        for (double d = -8; d <= 8; d += 0.001) {
            double both = Math.pow(NORMAL.cumulativeProbability(2 - d), 2);
            sum += both * NORMAL.density(d);
            weight += NORMAL.density(d);
        }
        assertThat(Conformity.jointOdds(sides).value()).isCloseTo(sum / weight, within(1e-4));
    }

    private static Finding check(BoundClause clause, Estimate estimate) {
        Limits.Stated stated = (Limits.Stated) clause.bound(figures(Map.of()), Map.of());
        return Conformity.check(
                clause.id(), stated.on(estimate), Dimension.LENGTH, DecisionRule.guarded(0.95), Source.UNSTATED);
    }

    @Test
    void aBandWhoseEdgeTheDoubtReachesShowsBothAmountsWithTheirOdds() {
        SizeClause tube = Sample.size("tube", Sample.bands("fit.width", 1800, 50, 3000, 63));
        Sizes sizes = decide(Sample.with(tube), 1799.5, 1);
        Size size = sizes.find("tube").orElseThrow();
        assertThat(size.value()).as("decided at the estimate").isEqualTo(50);
        List<Step> odds = size.steps().stream()
                .filter(step -> step.code().equals("band-odds"))
                .toList();
        assertThat(odds)
                .extracting(step -> step.args().get("amount").orElseThrow())
                .containsExactly(50.0, 63.0);
        double below = NORMAL.cumulativeProbability(0.5);
        assertThat((double) odds.get(0).args().get("odds").orElseThrow()).isCloseTo(below, within(1e-12));
        assertThat((double) odds.get(1).args().get("odds").orElseThrow()).isCloseTo(1 - below, within(1e-12));
        assertThat(decide(Sample.with(tube), 1700, 1).find("tube").orElseThrow().steps())
                .extracting(Step::code)
                .doesNotContain("band-odds");
    }

    @Test
    void aSizePicksItsBandAtItsNominalValue() {
        SizeClause tube = Sample.size("tube", Sample.bands("frame.width", 1495, 50, 3000, 63));
        Size size = decide(Sample.with(tube), 1503, 1).find("tube").orElseThrow();
        assertThat(size.value()).isEqualTo(50);
        assertThat(size.steps()).extracting(Step::code).doesNotContain("band-odds");
    }

    @Test
    void aSizeThatMayHaveNoBandIsFoundUndecided() {
        SizeClause tube = Sample.size("tube", Sample.bands("fit.width", 1800, 50));
        Sizes inside = decide(Sample.with(tube), 1799, 1);
        Finding finding = inside.atEdges().get(0);
        assertThat(finding.clause()).isEqualTo("tube");
        assertThat(finding.reason()).contains(Reason.DOUBT);
        assertThat(finding.odds().orElseThrow().value()).isCloseTo(NORMAL.cumulativeProbability(1), within(1e-12));
        assertThat(finding.steps()).extracting(Step::code).contains("band-odds", "outside-odds");
        Sizes surely = decide(Sample.with(tube), 1798, 1);
        assertThat(surely.atEdges().get(0).verdict()).isEqualTo(Verdict.PASS);
        Sizes outside = decide(Sample.with(tube), 1801, 1);
        assertThat(outside.find("tube")).isEmpty();
        assertThat(outside.refused().get(0).reason()).contains(Reason.DOUBT);
        assertThat(decide(Sample.with(tube), 1802, 1).refused().get(0).verdict())
                .isEqualTo(Verdict.FAIL);
    }

    @Test
    void aLimitByATableHasTheTablesSourceAndItsOwnCases() {
        Source din = new Source(Source.Kind.STANDARD, "a table", "2026-01-02", "2027-01-01");
        Table table = new Table(
                "widths",
                "",
                List.of(new Quota.Band(Sample.mm(1000), Sample.mm(8)), new Quota.Band(Sample.mm(3000), Sample.mm(10))),
                "",
                din);
        BoundClause clause =
                BoundClause.of("width", "opening.diagonal.difference").withWithin(table.by("fit.width"));
        Limits.Stated sure = (Limits.Stated) clause.bound(figures(Map.of("fit.width", read(900, 1))), Map.of());
        assertThat(sure.bound()).isEqualTo(Bound.within(8));
        assertThat(sure.source()).isEqualTo(din);
        assertThat(sure.cases()).isEmpty();
        Limits.Stated open = (Limits.Stated) clause.bound(figures(Map.of("fit.width", read(1000, 1))), Map.of());
        assertThat(open.cases()).hasSize(2);
        assertThat(open.cases())
                .extracting(one -> ((Limits.Stated) one.limits()).bound())
                .containsExactly(Bound.within(8), Bound.within(10));
        Rulebook book = Sample.with()
                .withBounds(List.of(clause.withBecause("because", Sample.ASSUMED)))
                .withTables(List.of(table));
        assertThat(Lint.problems(book, Sample.CATALOGUE, List.of())).isEmpty();
    }

    @Test
    void tablesAndNamesAreLinted() {
        Table table = new Table("t", "", List.of(new Quota.Band(Sample.mm(1000), Sample.mm(8))), "", Source.UNSTATED);
        Rulebook unused = Sample.with().withTables(List.of(table, table));
        Map<String, String> found = codes(unused);
        assertThat(found)
                .containsEntry("missing-source", "/tables/1")
                .containsEntry("duplicate-id", "/tables/1/id")
                .containsEntry("unused-table", "/tables/1/id");
        BoundClause other = BoundClause.of("b", "fit.width")
                .withWithin(new Quota.Banded("fit.width", List.of(new Quota.Band(Sample.mm(1), Sample.mm(2))), "t"));
        assertThat(codes(Sample.with().withTables(List.of(table)).withBounds(List.of(other))))
                .containsEntry("unknown-table", "/bounds/0/within/table");
        Quota two = new Quota.Fixed(Stated.of(Sample.mm(2)).withId("n"));
        Quota three = new Quota.Fixed(Stated.of(Sample.mm(3)).withId("n"));
        assertThat(codes(Sample.with()
                        .withBounds(List.of(BoundClause.of("b", "fit.width")
                                .withAtLeast(two)
                                .withAtMost(three)))))
                .containsEntry("duplicate-number", "/bounds/0/atMost");
        assertThatThrownBy(() -> number(1, Doubt.standard(1, Dimension.ANGLE)))
                .hasMessage("doubt must be of the kind length, got angle");
    }

    private static Map<String, String> codes(Rulebook book) {
        Map<String, String> codes = new LinkedHashMap<>();
        for (Problem problem : Lint.problems(book, Sample.CATALOGUE, List.of())) {
            codes.put(problem.code(), problem.pointer());
        }
        return codes;
    }

    @Test
    void whatANumberRestsOnIsInTheDigest() {
        Stated bare = Stated.of(Sample.mm(4));
        List<Stated> changed = List.of(
                bare.withId("n"),
                bare.withDoubt(Doubt.standard(1, Dimension.LENGTH)),
                bare.withDoubt(Doubt.limits(1, Dimension.LENGTH)),
                bare.withDoubt(Doubt.standard(2, Dimension.LENGTH)),
                bare.withBecause("why", Source.UNSTATED),
                bare.withBecause("", Source.PRACTICE));
        List<String> digests = new java.util.ArrayList<>();
        for (Stated number : changed) {
            digests.add(Sample.with(Sample.size(
                            "x", new Quota.Banded("fit.width", List.of(new Quota.Band(Sample.mm(9), number)))))
                    .digest());
        }
        digests.add(
                Sample.with(Sample.size("x", Sample.bands("fit.width", 9, 4))).digest());
        digests.add(Sample.with().withSourceAsks(List.of("reviewBy")).digest());
        digests.add(Sample.with().digest());
        assertThat(digests).doesNotHaveDuplicates();
    }
}
