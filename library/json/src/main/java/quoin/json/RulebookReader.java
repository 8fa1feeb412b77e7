package quoin.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.clearance.SiteFacts;
import quoin.judge.DecisionRule;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.opening.Survey;
import quoin.rulebook.Base;
import quoin.rulebook.BoundClause;
import quoin.rulebook.FixingRule;
import quoin.rulebook.FrameRule;
import quoin.rulebook.Item;
import quoin.rulebook.Quota;
import quoin.rulebook.Rounding;
import quoin.rulebook.Rulebook;
import quoin.rulebook.SizeClause;
import quoin.rulebook.SurveyRule;
import quoin.rulebook.Table;

/** Reads a rulebook from the fields of its document. Not safe for use by many threads. */
final class RulebookReader {
    /** What a survey may need beside readings. */
    private static final List<String> STATED =
            List.of("headTowards", "straightWithin", "slope", "finish", "markedOnSite");

    private static final String SOME = "unreadable";
    private static final String SOME_DAY = "2000-01-01";
    private static final String SOME_FIGURE = "gap.least";
    private static final Base SOME_BASE = new Base.OfQuota(Quota.fixed(new Amount(1, Dimension.LENGTH)));

    /** The dates that a rulebook may ask of every source. */
    private static final List<String> DATES = List.of("verifiedOn", "reviewBy");

    private final Fields in;
    private final QuotaReader quotas = new QuotaReader();

    RulebookReader(Fields in) {
        this.in = in;
    }

    Optional<Rulebook> rulebook() {
        in.format(RulebookDocument.FORMAT);
        String id = in.id("id");
        String version = in.words("version", "a version such as 1.2.0");
        String effective = in.require("effective", "a day such as 2026-01-01")
                .map(v -> Common.date(in, v))
                .orElse("");
        String title = in.text("title", "");
        in.require("decide", "a decision rule such as { \"rule\": \"simple\" }");
        Optional<DecisionRule> decide = in.object("decide", Common::rule);
        FrameRule frame = in.object("frame", RulebookReader::frame).orElse(FrameRule.DEFAULT);
        List<Table> tables = quotas.tables(in);
        in.require("sizes", "a list of sizes");
        List<SizeClause> sizes = in.each("sizes", this::size, RulebookReader::someSize);
        in.require("bounds", "a list of bounds");
        List<BoundClause> bounds = in.each("bounds", this::bound, RulebookReader::someBound);
        SurveyRule survey = in.object("survey", RulebookReader::survey).orElse(SurveyRule.NONE);
        Optional<FixingRule> fixings = in.object("fixings", RulebookReader::fixings);
        Optional<List<String>> asks = in.object("site", RulebookReader::asks);
        List<String> dates = in.object("sources", RulebookReader::dates).orElse(List.of());
        return in.build(() -> {
            Rulebook book = Rulebook.of(
                            stated(id, SOME),
                            stated(version, SOME),
                            stated(effective, SOME_DAY),
                            title,
                            decide.orElse(DecisionRule.simple()))
                    .withFrame(frame)
                    .withSizes(sizes)
                    .withBounds(bounds)
                    .withSurvey(survey)
                    .withTables(tables)
                    .withSourceAsks(dates);
            Rulebook fixed = fixings.map(book::withFixings).orElse(book);
            return asks.map(fixed::withSiteAsks).orElse(fixed);
        });
    }

    /** What stands for something that was reported: the rest can then be checked in the same run. */
    private static String stated(String text, String otherwise) {
        return text.isEmpty() ? otherwise : text;
    }

    /** A name for a clause whose own cannot be read; no document can hold it. */
    private static String nameOf(Node clause) {
        return SOME + clause.pointer();
    }

    private static SizeClause someSize(Node clause) {
        return new SizeClause(
                nameOf(clause), SOME_BASE, List.of(), List.of(), Rounding.NONE, Double.NaN, "", Source.PRACTICE);
    }

    private static BoundClause someBound(Node clause) {
        List<Quota> limit = List.of(Quota.fixed(new Amount(1, Dimension.LENGTH)));
        return new BoundClause(
                nameOf(clause), SOME_FIGURE, limit, List.of(), List.of(), List.of(), "", Source.PRACTICE);
    }

    private static Optional<FrameRule> frame(Fields in) {
        List<String> sides = List.of("head", "right", "foot", "left");
        String hold = in.oneOf("hold", sides, "head");
        String keep = in.oneOf("keep", List.of("area"), "area");
        List<Amount> depth = amounts(in, "depth");
        return in.build(() -> new FrameRule(FrameRule.Hold.find(hold).orElse(FrameRule.Hold.HEAD), keep, depth));
    }

    private static List<Amount> amounts(Fields in, String name) {
        List<Amount> amounts = new ArrayList<>();
        for (Node item : in.list(name)) {
            in.amount(item, Dimension.LENGTH, Range.fromZero(Dimension.LENGTH)).ifPresent(amounts::add);
        }
        return amounts;
    }

    private static Optional<SurveyRule> survey(Fields in) {
        List<String> needs = new ArrayList<>();
        Map<String, Amount> goodTo = new LinkedHashMap<>();
        for (Node item : in.list("needs")) {
            if (item.kind() == Node.Kind.OBJECT) {
                in.object(item, inner -> good(inner, goodTo)).ifPresent(needs::add);
            } else {
                needs.add(need(in, item));
            }
        }
        double detects = in.amount("detects", Dimension.LENGTH, new Range(0, true, OpeningReader.LONGEST))
                .map(Amount::value)
                .orElse(Double.NaN);
        return in.build(() -> new SurveyRule(needs, detects, goodTo));
    }

    /** A place, and how good its reading must be. */
    private static Optional<String> good(Fields in, Map<String, Amount> goodTo) {
        Optional<Node> of = in.require("of", "a place such as width@head");
        in.require("u", "a standard uncertainty such as \"1 mm\"");
        String need = of.map(value -> need(in, value)).orElse("");
        if (of.isPresent() && STATED.contains(need)) {
            in.report().error("unknown-value", of.get(), of.get().shown(), "a place such as width@head");
            return Optional.empty();
        }
        Optional<Amount> u = !isSpan(need)
                ? Optional.empty()
                : in.amount(
                        "u",
                        Survey.Place.parse(need).of().dimension(),
                        Range.aboveZero(Survey.Place.parse(need).of().dimension()));
        u.ifPresent(amount -> goodTo.put(need, amount));
        return u.map(amount -> need);
    }

    private static String need(Fields in, Node item) {
        String need = in.text(item, "");
        if (item.kind() == Node.Kind.TEXT && !STATED.contains(need) && !isSpan(need)) {
            String right = String.join(", ", STATED) + ", or a place such as width@head, with /back for the back plane";
            in.report().error("unknown-value", item, item.shown(), right);
        }
        return need;
    }

    private static boolean isSpan(String text) {
        try {
            return !Survey.Place.parse(text).text().isEmpty();
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private static Optional<List<String>> asks(Fields in) {
        List<String> facts = List.copyOf(SiteFacts.ANSWERS.keySet());
        List<String> asks = new ArrayList<>();
        for (Node item : in.list("asks")) {
            asks.add(in.oneOf(item, facts, ""));
        }
        return in.find("asks").map(list -> asks);
    }

    private static Optional<List<String>> dates(Fields in) {
        in.require("asks", "a list of " + String.join(", ", DATES));
        List<String> asks = new ArrayList<>();
        for (Node item : in.list("asks")) {
            asks.add(in.oneOf(item, DATES, DATES.get(0)));
        }
        return Optional.of(asks);
    }

    private static Optional<FixingRule> fixings(Fields in) {
        Map<String, Amount> range = new LinkedHashMap<>();
        in.object("fromEnd", inner -> {
            for (String name : List.of("aim", "atLeast", "atMost")) {
                needed(inner, name).ifPresent(a -> range.put(name, a));
            }
            return Optional.of(range);
        });
        Optional<Amount> edge = needed(in, "fromEdge");
        Map<String, Amount> pitch = new LinkedHashMap<>();
        in.object("pitch", inner -> {
            for (String name : List.of("atLeast", "atMost")) {
                needed(inner, name).ifPresent(a -> pitch.put(name, a));
            }
            return Optional.of(pitch);
        });
        Optional<Amount> mark = needed(in, "mark");
        String into = in.oneOf("into", List.of("reveal", "face"), "reveal");
        String fastener = in.optionalId("fastener");
        Source source = Common.source(in);
        in.require("fromEnd", "an object with aim, atLeast, atMost");
        in.require("pitch", "an object with atLeast, atMost");
        if (range.size() < 3 || pitch.size() < 2 || edge.isEmpty() || mark.isEmpty()) {
            return Optional.empty();
        }
        List<Amount> packers = amounts(in, "packers");
        return in.build(() -> new FixingRule(
                of(range, "aim"),
                of(range, "atLeast"),
                of(range, "atMost"),
                edge.get(),
                of(pitch, "atLeast"),
                of(pitch, "atMost"),
                mark.get(),
                into,
                fastener,
                source,
                packers));
    }

    private static Amount of(Map<String, Amount> amounts, String name) {
        return amounts.getOrDefault(name, new Amount(0, Dimension.LENGTH));
    }

    private static Optional<Amount> needed(Fields in, String name) {
        in.require(name, QuotaReader.SOME_AMOUNT);
        return in.amount(name, Dimension.LENGTH, Range.fromZero(Dimension.LENGTH));
    }

    private Optional<SizeClause> size(Fields in) {
        String id = in.id("id");
        Optional<Base> of = in.require("of", "a figure, a size or an amount").flatMap(v -> base(in, v));
        List<Item> less = in.each("less", quotas::item);
        List<Item> more = in.each("more", quotas::item);
        Rounding round = in.object("round", RulebookReader::rounding).orElse(Rounding.NONE);
        double within = in.amount("cutWithin", Dimension.LENGTH, Range.fromZero(Dimension.LENGTH))
                .map(Amount::value)
                .orElse(Double.NaN);
        String because = in.text("because", "");
        Source source = Common.source(in);
        return in.build(() -> new SizeClause(
                id.isEmpty() ? nameOf(in.node()) : id,
                of.orElse(SOME_BASE),
                less,
                more,
                round,
                within,
                because,
                source));
    }

    private Optional<Base> base(Fields in, Node value) {
        if (value.kind() == Node.Kind.TEXT) {
            String text = in.words(value, "a figure, a size or an amount");
            if (text.isEmpty()) {
                return Optional.empty();
            }
            boolean isAmount = Fields.isNumberFirst(text);
            return isAmount
                    ? QuotaReader.any(in, value).map(a -> new Base.OfQuota(Quota.fixed(a)))
                    : Optional.of(new Base.OfFigure(text));
        }
        if (value.kind() == Node.Kind.NUMBER) {
            return QuotaReader.any(in, value).map(a -> new Base.OfQuota(Quota.fixed(a)));
        }
        return in.object(value, inner -> {
            if (inner.find("figure").isPresent()) {
                String figure = inner.words("figure", "a figure or a size");
                inner.require("shortfall", "a probability such as 0.01");
                double p = inner.number("shortfall", 0, 1);
                return Double.isNaN(p) || figure.isEmpty()
                        ? Optional.<Base>empty()
                        : inner.build(() -> new Base.OfShortfall(figure, p));
            }
            return quotas.quota(inner).map(Base.OfQuota::new);
        });
    }

    private static Optional<Rounding> rounding(Fields in) {
        for (Rounding.Mode mode : Rounding.Mode.values()) {
            in.find(mode.text());
        }
        in.find("downTo");
        if (in.node().fields().size() != 1) {
            in.report().error("missing-field", in.node(), "these fields", "one of down, up, nearest, downTo");
            return Optional.empty();
        }
        if (in.find("downTo").isPresent()) {
            return in.build(() -> new Rounding.DownTo(amounts(in, "downTo")));
        }
        for (Rounding.Mode mode : Rounding.Mode.values()) {
            Optional<Amount> step = in.find(mode.text()).flatMap(v -> QuotaReader.any(in, v));
            if (step.isPresent()) {
                return in.build(() -> new Rounding.Step(mode, step.get()));
            }
        }
        return Optional.empty();
    }

    private Optional<BoundClause> bound(Fields in) {
        String id = in.id("id");
        String figure = in.words("figure", "a figure or a size");
        List<Quota> atLeast = quotas.limit(in, "atLeast");
        List<Quota> atMost = quotas.limit(in, "atMost");
        List<Quota> within = quotas.limit(in, "within");
        List<DecisionRule> decide =
                in.object("decide", Common::rule).map(List::of).orElse(List.of());
        String because = in.text("because", "");
        Source source = Common.source(in);
        return in.build(() -> new BoundClause(
                id.isEmpty() ? nameOf(in.node()) : id,
                stated(figure, SOME_FIGURE),
                atLeast,
                atMost,
                within,
                decide,
                because,
                source));
    }
}
