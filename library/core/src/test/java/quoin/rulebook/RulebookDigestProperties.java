package quoin.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import quoin.judge.DecisionRule;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;

class RulebookDigestProperties {
    /** The sample with one clause of every sort. */
    private static Rulebook full() {
        List<SizeClause> sizes = new ArrayList<>(Sample.sizes());
        sizes.add(SizeClause.of("short", new Base.OfShortfall("fit.width", 0.01)));
        sizes.add(Sample.size("stock", Sample.fixed(1500)).withRound(list(600, 900)));
        return Sample.rulebook().withSizes(sizes);
    }

    private static Rounding list(double... values) {
        List<Amount> amounts = new ArrayList<>();
        for (double value : values) {
            amounts.add(Sample.mm(value));
        }
        return new Rounding.DownTo(amounts);
    }

    @Property(tries = 100)
    void theOrderOfClausesLeavesNoTrace(@ForAll Random random) {
        Rulebook before = full();
        List<SizeClause> sizes = new ArrayList<>(before.sizes());
        List<BoundClause> bounds = new ArrayList<>(before.bounds());
        Collections.shuffle(sizes, random);
        Collections.shuffle(bounds, random);
        Rulebook after = before.withSizes(sizes).withBounds(bounds);
        assertThat(after.canonicalText()).isEqualTo(before.canonicalText());
        assertThat(after.digest()).isEqualTo(before.digest());
    }

    @Example
    void norDoesThatOfWhatIsASet() {
        Rulebook book = full();
        assertThat(book.withSurvey(new SurveyRule(List.of("width@head", "headTowards")))
                        .digest())
                .isEqualTo(book.digest());
        assertThat(book.withSiteAsks(List.of("glazed", "role")).digest()).isEqualTo(book.digest());
        assertThat(size(Sample.size("stock", Sample.fixed(1500)).withRound(list(900, 600)))
                        .apply(book)
                        .digest())
                .isEqualTo(book.digest());
        Map<String, Amount> one = new LinkedHashMap<>();
        one.put("a", Sample.mm(1));
        one.put("b", Sample.mm(2));
        Map<String, Amount> other = new LinkedHashMap<>();
        other.put("b", Sample.mm(2));
        other.put("a", Sample.mm(1));
        assertThat(size(Sample.size("c", Quota.byChoice("drive", one)))
                        .apply(book)
                        .digest())
                .isEqualTo(size(Sample.size("c", Quota.byChoice("drive", other)))
                        .apply(book)
                        .digest());
    }

    @Example
    void theDigestIsSha256InLowerCaseHexadecimal() {
        assertThat(full().digest()).matches("sha256:[0-9a-f]{64}");
        assertThat(full().canonicalText()).startsWith("quoin-rulebook/1\nid \"heron-frame\"\nversion \"1.2.0\"\n");
    }

    @Property
    void anyChangeChangesTheDigest(@ForAll("changes") UnaryOperator<Rulebook> change) {
        assertThat(change.apply(full()).digest()).isNotEqualTo(full().digest());
    }

    private static double up(double value) {
        return StrictMath.nextUp(value);
    }

    private static UnaryOperator<Rulebook> size(SizeClause changed) {
        return book -> {
            List<SizeClause> sizes = new ArrayList<>(book.sizes());
            sizes.removeIf(clause -> clause.id().equals(changed.id()));
            sizes.add(changed);
            return book.withSizes(sizes);
        };
    }

    private static UnaryOperator<Rulebook> bound(BoundClause changed) {
        return book -> {
            List<BoundClause> bounds = new ArrayList<>(book.bounds());
            bounds.removeIf(clause -> clause.id().equals(changed.id()));
            bounds.add(changed);
            return book.withBounds(bounds);
        };
    }

    private static UnaryOperator<Rulebook> head(String id, String version, String effective, String title) {
        return book -> Rulebook.of(id, version, effective, title, DecisionRule.guarded(0.95))
                .withFrame(book.frame())
                .withSizes(book.sizes())
                .withBounds(book.bounds())
                .withSurvey(book.survey())
                .withFixings(book.fixings().orElseThrow())
                .withSiteAsks(book.siteAsks().orElseThrow());
    }

    private static UnaryOperator<Rulebook> fixing(int field) {
        return book -> book.withFixings(new FixingRule(
                Sample.mm(field == 0 ? up(100) : 100),
                Sample.mm(field == 1 ? up(50) : 50),
                Sample.mm(field == 2 ? up(150) : 150),
                Sample.mm(field == 3 ? up(25) : 25),
                Sample.mm(field == 4 ? up(60) : 60),
                Sample.mm(field == 5 ? up(400) : 400),
                Sample.mm(field == 6 ? up(1) : 1),
                field == 7 ? "face" : "reveal",
                field == 8 ? "screw-10" : "screw-8",
                field == 9 ? Sample.ASSUMED : Source.PRACTICE));
    }

    /** The least change a double can show in every number, and a change of every name, reason and source. */
    @Provide
    Arbitrary<UnaryOperator<Rulebook>> changes() {
        SizeClause width = Sample.frame("frame.width", "fit.width");
        SizeClause stock = Sample.size("stock", Sample.fixed(1500)).withRound(list(600, 900));
        BoundClause goesIn = Sample.bounds().get(0);
        BoundClause strip = Sample.bounds().get(1);
        BoundClause square = Sample.bounds().get(2);
        List<UnaryOperator<Rulebook>> all = new ArrayList<>(List.of(
                head("heron-framf", "1.2.0", "2026-01-01", "Invented rules"),
                head("heron-frame", "1.2.1", "2026-01-01", "Invented rules"),
                head("heron-frame", "1.2.0", "2026-01-02", "Invented rules"),
                head("heron-frame", "1.2.0", "2026-01-01", "Invented rule"),
                book -> book.withFrame(FrameRule.DEFAULT),
                book -> book.withFrame(
                        new FrameRule(FrameRule.Hold.FOOT, "area", book.frame().depth())),
                book -> book.withFrame(
                        new FrameRule(FrameRule.Hold.HEAD, "area", List.of(Sample.mm(20), Sample.mm(up(110))))),
                book -> book.withSurvey(SurveyRule.NONE),
                book -> book.withSiteAsks(List.of()),
                size(Sample.frame("frame.width", "fit.length")),
                size(width.withLess(Sample.item(up(4), 2))),
                size(width.withLess(Sample.item(4, up(2)))),
                size(width.withLess().withMore(Sample.item(4, 2))),
                size(width.withLess(new Item(Sample.fixed(4), 2, "gap", Source.UNSTATED))),
                size(width.withLess(new Item(Sample.fixed(4), 2, "", Source.PRACTICE))),
                size(width.withLess(new Item(new Quota.Fixed(Sample.mm(4), Source.PRACTICE), 2, "", Source.UNSTATED))),
                size(width.withRound(Sample.down(up(1)))),
                size(width.withRound(new Rounding.Step(Rounding.Mode.UP, Sample.mm(1)))),
                size(width.withRound(Rounding.NONE)),
                size(width.withCutWithin(up(0.5))),
                size(width.withCutWithin(Double.NaN)),
                size(width.withBecause("why", Sample.ASSUMED)),
                size(width.withBecause("because", Source.of(Source.Kind.ASSUMPTION, "p. 1"))),
                size(SizeClause.of("short", new Base.OfShortfall("fit.width", up(0.01)))),
                size(SizeClause.of("short", new Base.OfShortfall("fit.length", 0.01))),
                size(Sample.size("stock", Sample.fixed(up(1500))).withRound(stock.round())),
                size(stock.withRound(list(600, up(900)))),
                size(Sample.size("stock", Quota.fixed(new Amount(1500, Dimension.MASS)))
                        .withRound(stock.round())),
                size(Sample.size("tube.diameter", Sample.bands("frame.width", up(1800), 50, 3000, 63))),
                size(Sample.size("tube.diameter", Sample.bands("frame.width", 1800, 50, 3000, up(63)))),
                size(Sample.size("tube.diameter", Sample.bands("frame.length", 1800, 50, 3000, 63))),
                size(Sample.size("headbox.length", "frame.width")
                        .withLess(Sample.item(Quota.byChoice("drive", Map.of("drive-m", Sample.mm(up(4))))))),
                size(Sample.size("headbox.length", "frame.width")
                        .withLess(Sample.item(Quota.byChoice("drive", Map.of("drive-n", Sample.mm(4)))))),
                size(Sample.size("headbox.length", "frame.width")
                        .withLess(Sample.item(Quota.byChoice("fabric", Map.of("drive-m", Sample.mm(4)))))),
                bound(goesIn.withAtLeast(Sample.fixed(up(1)))),
                bound(goesIn.withAtMost(Sample.fixed(9))),
                bound(goesIn.withDecide(DecisionRule.guarded(up(0.99)))),
                bound(goesIn.withDecide(DecisionRule.simple())),
                bound(strip.withAtMost(Sample.fixed(up(10)))),
                bound(strip.withDecide(DecisionRule.guarded(0.95))),
                bound(square.withWithin(Sample.fixed(up(6)))),
                bound(square.withBecause("why", Source.PRACTICE)),
                bound(BoundClause.of("goes-in", "gap.greatest"))));
        for (int field = 0; field < 10; field++) {
            all.add(fixing(field));
        }
        return Arbitraries.of(all);
    }
}
