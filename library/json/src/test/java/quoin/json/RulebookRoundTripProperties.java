package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import quoin.judge.DecisionRule;
import quoin.judge.Problem;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.rulebook.Base;
import quoin.rulebook.BoundClause;
import quoin.rulebook.FixingRule;
import quoin.rulebook.FrameRule;
import quoin.rulebook.Item;
import quoin.rulebook.Quota;
import quoin.rulebook.Rounding;
import quoin.rulebook.Rulebook;
import quoin.rulebook.SizeClause;
import quoin.rulebook.Stated;
import quoin.rulebook.SurveyRule;
import quoin.rulebook.Table;

/** A rulebook that is written reads back equal, bit for bit, with the same digest, whatever the numbers. */
class RulebookRoundTripProperties {
    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void aRulebookReadsBackTheSame(@ForAll("rulebooks") Rulebook book) {
        String written = RulebookDocument.write(book);
        Read<Rulebook> read = RulebookDocument.read(Examples.utf8(written));
        assertThat(read.problems().stream().filter(p -> p.severity() == Problem.Severity.ERROR))
                .as(written)
                .isEmpty();
        assertThat(read.value()).as(written).contains(book);
        assertThat(read.value().orElseThrow().digest()).isEqualTo(book.digest());
        assertThat(RulebookDocument.write(read.value().orElseThrow())).isEqualTo(written);
    }

    private static Arbitrary<Double> mm(double least, double most) {
        return Arbitraries.longs()
                .between(Double.doubleToLongBits(least), Double.doubleToLongBits(most))
                .map(Double::longBitsToDouble);
    }

    private static Arbitrary<Amount> lengths(double least, double most) {
        return Arbitraries.oneOf(
                        mm(least, most),
                        Arbitraries.doubles().between(least, most).ofScale(4))
                .map(value -> new Amount(value, Dimension.LENGTH));
    }

    private static Arbitrary<Source> sources() {
        return Arbitraries.of(
                Source.UNSTATED,
                Source.PRACTICE,
                Source.of(Source.Kind.HANDBOOK, "a book, table 3"),
                new Source(Source.Kind.STANDARD, "", "2026-02-28", "2028-02-29"));
    }

    private static Arbitrary<String> reasons() {
        return Arbitraries.of("", "frame must enter", "\"gap\" \\ €");
    }

    private static Arbitrary<List<Doubt>> doubts() {
        return Arbitraries.oneOf(
                Arbitraries.just(List.of()),
                mm(0.01, 2).map(u -> List.of(Doubt.standard(u, Dimension.LENGTH))),
                mm(0.01, 2).map(a -> List.of(Doubt.limits(a, Dimension.LENGTH))),
                mm(0.01, 2).map(u -> List.of(Doubt.expanded(u, 2, Dimension.LENGTH))),
                mm(0.01, 2).map(u -> List.of(Doubt.standard(u, Dimension.LENGTH).perLength())));
    }

    /** A bare number, or one with all it can have; a name stands for one number only. */
    private static Arbitrary<Stated> numbers(double least, double most) {
        Arbitrary<Stated> full = Combinators.combine(lengths(least, most), doubts(), reasons(), sources())
                .as((amount, doubt, because, source) -> new Stated(
                        "n" + Integer.toUnsignedString(Objects.hash(amount, doubt), 36),
                        amount,
                        doubt,
                        because,
                        source));
        return Arbitraries.oneOf(lengths(least, most).map(Stated::of), full);
    }

    private static Arbitrary<List<Quota.Band>> bandLists() {
        return Combinators.combine(lengths(1, 1000), lengths(1001, 9000), numbers(1, 60), numbers(1, 60))
                .as((upTo, last, a, b) -> List.of(new Quota.Band(upTo, a), new Quota.Band(last, b)));
    }

    private static Arbitrary<Quota> bands(String by) {
        return bandLists().map(bands -> new Quota.Banded(by, bands));
    }

    private static Arbitrary<Table> tables() {
        return Combinators.combine(bandLists(), Arbitraries.of("", "a title"), reasons(), sources())
                .as((bands, title, because, source) -> new Table("a-table", title, bands, because, source));
    }

    private static Arbitrary<Quota> byChoice() {
        return Combinators.combine(numbers(0.1, 50), numbers(0.1, 50)).as((a, b) -> {
            Map<String, Stated> amounts = new LinkedHashMap<>();
            amounts.put("drive-z", a);
            amounts.put("drive-a", b);
            return new Quota.ByChoice("drive", amounts);
        });
    }

    private static Arbitrary<Quota> quotas() {
        return Arbitraries.oneOf(numbers(0.1, 50).map(Quota.Fixed::new), bands("fit.width"), byChoice());
    }

    private static Arbitrary<List<Item>> items() {
        return Combinators.combine(quotas(), Arbitraries.of(1.0, 2.0, 0.5, 3.0), reasons(), sources())
                .as(Item::new)
                .list()
                .ofMaxSize(2);
    }

    private static Arbitrary<Rounding> roundings() {
        return Arbitraries.oneOf(
                Arbitraries.just(Rounding.NONE),
                Combinators.combine(Arbitraries.of(Rounding.Mode.values()), lengths(0.01, 10))
                        .as(Rounding.Step::new),
                lengths(100, 9000).list().ofMinSize(1).ofMaxSize(3).map(Rounding.DownTo::new));
    }

    private static Arbitrary<SizeClause> sizes(String id, Arbitrary<Base> base) {
        Arbitrary<Double> within = Arbitraries.oneOf(mm(0.01, 2), Arbitraries.just(Double.NaN));
        return Combinators.combine(base, items(), items(), roundings(), within, reasons(), sources())
                .as((of, less, more, round, cut, because, source) ->
                        new SizeClause(id, of, less, more, round, cut, because, source));
    }

    private static Arbitrary<Base> bases(String figure) {
        return Arbitraries.oneOf(
                Arbitraries.just(new Base.OfFigure(figure)),
                Arbitraries.doubles().between(0.001, 0.4).ofScale(4).map(p -> new Base.OfShortfall(figure, p)),
                lengths(500, 3000).map(amount -> new Base.OfQuota(Quota.fixed(amount))),
                bands(figure).map(Base.OfQuota::new));
    }

    private static Arbitrary<DecisionRule> rules() {
        return Arbitraries.oneOf(
                Arbitraries.just(DecisionRule.simple()),
                Arbitraries.doubles().between(0.51, 0.999).ofScale(4).map(DecisionRule::guarded));
    }

    private static Arbitrary<BoundClause> bounds(String id) {
        Arbitrary<BoundClause> limits = Arbitraries.oneOf(
                lengths(0.1, 50).map(a -> BoundClause.of(id, "gap.least").withAtLeast(Quota.fixed(a))),
                bands("frame.width").map(q -> BoundClause.of(id, "gap.greatest").withAtMost(q)),
                Combinators.combine(lengths(0.1, 5), lengths(6, 90))
                        .as((a, b) -> BoundClause.of(id, "gap.least")
                                .withAtLeast(Quota.fixed(a))
                                .withAtMost(Quota.fixed(b))),
                mm(0.0001, 0.1)
                        .map(rad -> BoundClause.of(id, "opening.square.worst")
                                .withWithin(Quota.fixed(new Amount(rad, Dimension.ANGLE)))));
        return Combinators.combine(limits, rules().list().ofMaxSize(1), reasons(), sources())
                .as((clause, decide, because, source) -> decide.stream()
                        .reduce(clause.withBecause(because, source), BoundClause::withDecide, (a, b) -> b));
    }

    private static Arbitrary<FixingRule> fixings() {
        return Combinators.combine(
                        lengths(50, 60),
                        lengths(1, 49),
                        lengths(61, 900),
                        lengths(1, 50),
                        lengths(10, 90),
                        lengths(91, 900),
                        lengths(0.1, 5))
                .as((aim, least, most, edge, pitchLeast, pitchMost, mark) -> new FixingRule(
                        aim, least, most, edge, pitchLeast, pitchMost, mark, "reveal", "screw-8", Source.PRACTICE));
    }

    @Provide
    Arbitrary<Rulebook> rulebooks() {
        Arbitrary<FrameRule> frames = Combinators.combine(
                        Arbitraries.of(FrameRule.Hold.values()),
                        lengths(0.5, 20),
                        lengths(21, 400),
                        Arbitraries.of(0, 2))
                .as((hold, from, to, count) ->
                        new FrameRule(hold, "area", List.of(from, to).subList(0, count)));
        Arbitrary<List<String>> needs = Arbitraries.of(
                        "headTowards",
                        "width@head",
                        "width@1/2/back",
                        "length@1/2",
                        "straightWithin",
                        "check@head-left:600 mm:800 mm")
                .set()
                .ofMaxSize(4)
                .map(List::copyOf);
        Arbitrary<SurveyRule> surveys = Combinators.combine(needs, Arbitraries.of(Double.NaN, 8.0, 6.5))
                .as(RulebookRoundTripProperties::survey);
        Arbitrary<Rulebook> heads = Combinators.combine(
                        rules(),
                        Arbitraries.of("", "Invented rules, «quoted»"),
                        frames,
                        surveys,
                        fixings().list().ofMaxSize(1))
                .as((decide, title, frame, survey, fixing) -> fixing.stream()
                        .reduce(
                                Rulebook.of("a-book", "1.2.0", "2026-01-01", title, decide)
                                        .withFrame(frame)
                                        .withSurvey(survey),
                                Rulebook::withFixings,
                                (a, b) -> b));
        Arbitrary<List<String>> asks =
                Arbitraries.of("role", "glazed", "platform").set().ofMaxSize(3).map(List::copyOf);
        return Combinators.combine(
                        heads,
                        sizes("frame.width", bases("fit.width")),
                        sizes("frame.length", bases("fit.length")),
                        sizes("bar.length", bases("frame.length")),
                        bounds("b-1"),
                        bounds("a-2"),
                        asks.list().ofMaxSize(1),
                        tables().list().ofMaxSize(1))
                .as((head, width, length, bar, one, two, ask, tables) -> {
                    List<BoundClause> all = new ArrayList<>(List.of(one, two));
                    for (Table table : tables) {
                        all.add(BoundClause.of("by-table", "fit.width").withWithin(table.by("fit.length")));
                    }
                    Rulebook book = head.withSizes(List.of(width, length, bar))
                            .withBounds(all)
                            .withTables(tables)
                            .withSourceAsks(tables.isEmpty() ? List.of() : List.of("reviewBy", "verifiedOn"));
                    return ask.isEmpty() ? book : book.withSiteAsks(ask.get(0));
                });
    }

    /** The first place that is needed must be good, too. */
    private static SurveyRule survey(List<String> needs, double detects) {
        Map<String, Amount> goodTo = new LinkedHashMap<>();
        needs.stream()
                .filter(need -> need.contains("@"))
                .findFirst()
                .ifPresent(need -> goodTo.put(need, new Amount(1.5, Dimension.LENGTH)));
        return new SurveyRule(needs, detects, goodTo);
    }
}
