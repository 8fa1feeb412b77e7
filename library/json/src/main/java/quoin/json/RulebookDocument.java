package quoin.json;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.clearance.SiteFacts;
import quoin.job.Figures;
import quoin.judge.Catalogue;
import quoin.judge.DecisionRule;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.opening.Survey;
import quoin.parts.Parts;
import quoin.rulebook.Base;
import quoin.rulebook.BoundClause;
import quoin.rulebook.FixingRule;
import quoin.rulebook.FrameRule;
import quoin.rulebook.Item;
import quoin.rulebook.Lint;
import quoin.rulebook.Quota;
import quoin.rulebook.Rounding;
import quoin.rulebook.Rulebook;
import quoin.rulebook.SizeClause;
import quoin.rulebook.SurveyRule;

/** A rulebook as a document: {@code quoin-rulebook/1}. */
public final class RulebookDocument {
    /** The name of the format. */
    public static final String FORMAT = "quoin-rulebook/1";

    private static final String SOME_AMOUNT = "a text with a unit, such as \"3 mm\"";

    /** What a survey may need beside readings. */
    private static final List<String> STATED =
            List.of("headTowards", "straightWithin", "slope", "finish", "markedOnSite");

    private static final String SOME = "unreadable";
    private static final String SOME_DAY = "2000-01-01";

    private RulebookDocument() {}

    /**
     * Reads a rulebook and holds it against the library's own figures.
     *
     * @param json the text in UTF-8
     * @return the rulebook with its warnings, or every problem of the text
     */
    public static Read<Rulebook> read(byte[] json) {
        return read(json, Figures.CATALOGUE, List.of());
    }

    /**
     * Reads a rulebook, 8 MB at most, and holds it against the library's own figures.
     *
     * @param json the text in UTF-8
     * @return the rulebook with its warnings, or every problem of the text
     * @throws IOException if the stream cannot be read
     */
    public static Read<Rulebook> read(InputStream json) throws IOException {
        return read(Tree.bytes(json));
    }

    /**
     * Reads a rulebook and holds it against figures and parts.
     *
     * @param json the text in UTF-8
     * @param catalogue the figures it may name
     * @param parts the parts lists it is used with; none to leave choices unchecked
     * @return the rulebook with its warnings, or every problem of the text
     */
    public static Read<Rulebook> read(byte[] json, Catalogue catalogue, List<Parts> parts) {
        return Documents.read(json, RulebookDocument::rulebook, book -> Lint.problems(book, catalogue, parts));
    }

    private static Optional<Rulebook> rulebook(Fields in) {
        in.format(FORMAT);
        String id = in.id("id");
        String version = in.words("version", "a version such as 1.2.0");
        String effective = in.require("effective", "a day such as 2026-01-01")
                .map(v -> Common.date(in, v))
                .orElse("");
        String title = in.text("title", "");
        in.require("decide", "a decision rule such as { \"rule\": \"simple\" }");
        Optional<DecisionRule> decide = in.object("decide", Common::rule);
        FrameRule frame = in.object("frame", RulebookDocument::frame).orElse(FrameRule.DEFAULT);
        in.require("sizes", "a list of sizes");
        List<SizeClause> sizes = in.each("sizes", RulebookDocument::size, RulebookDocument::someSize);
        in.require("bounds", "a list of bounds");
        List<BoundClause> bounds = in.each("bounds", RulebookDocument::bound, RulebookDocument::someBound);
        SurveyRule survey = in.object("survey", RulebookDocument::survey).orElse(SurveyRule.NONE);
        Optional<FixingRule> fixings = in.object("fixings", RulebookDocument::fixings);
        Optional<List<String>> asks = in.object("site", RulebookDocument::asks);
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
                    .withSurvey(survey);
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
        Base of = new Base.OfQuota(Quota.fixed(new Amount(1, Dimension.LENGTH)));
        return new SizeClause(nameOf(clause), of, List.of(), List.of(), Rounding.NONE, Double.NaN, "", Source.PRACTICE);
    }

    private static BoundClause someBound(Node clause) {
        List<Quota> limit = List.of(Quota.fixed(new Amount(1, Dimension.LENGTH)));
        return new BoundClause(
                nameOf(clause), "gap.least", limit, List.of(), List.of(), List.of(), "", Source.PRACTICE);
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
        for (Node item : in.list("needs")) {
            needs.add(need(in, item));
        }
        double detects = in.amount("detects", Dimension.LENGTH, new Range(0, true, OpeningReader.LONGEST))
                .map(Amount::value)
                .orElse(Double.NaN);
        return Optional.of(new SurveyRule(needs, detects));
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
                source));
    }

    private static Amount of(Map<String, Amount> amounts, String name) {
        return amounts.getOrDefault(name, new Amount(0, Dimension.LENGTH));
    }

    private static Optional<Amount> needed(Fields in, String name) {
        in.require(name, SOME_AMOUNT);
        return in.amount(name, Dimension.LENGTH, Range.fromZero(Dimension.LENGTH));
    }

    private static Optional<SizeClause> size(Fields in) {
        String id = in.id("id");
        Optional<Base> of = in.require("of", "a figure, a size or an amount").flatMap(v -> base(in, v));
        List<Item> less = in.each("less", RulebookDocument::item);
        List<Item> more = in.each("more", RulebookDocument::item);
        Rounding round = in.object("round", RulebookDocument::rounding).orElse(Rounding.NONE);
        double within = in.amount("cutWithin", Dimension.LENGTH, Range.fromZero(Dimension.LENGTH))
                .map(Amount::value)
                .orElse(Double.NaN);
        String because = in.text("because", "");
        Source source = Common.source(in);
        SizeClause some = someSize(in.node());
        return in.build(() -> new SizeClause(
                stated(id, some.id()), of.orElse(some.of()), less, more, round, within, because, source));
    }

    private static Optional<Base> base(Fields in, Node value) {
        if (value.kind() == Node.Kind.TEXT) {
            String text = in.words(value, "a figure, a size or an amount");
            if (text.isEmpty()) {
                return Optional.empty();
            }
            boolean isAmount = Fields.isNumberFirst(text);
            return isAmount
                    ? any(in, value).map(a -> new Base.OfQuota(Quota.fixed(a)))
                    : Optional.of(new Base.OfFigure(text));
        }
        if (value.kind() == Node.Kind.NUMBER) {
            return any(in, value).map(a -> new Base.OfQuota(Quota.fixed(a)));
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
            return quota(inner).map(Base.OfQuota::new);
        });
    }

    private static Optional<Item> item(Fields in) {
        Optional<Quota> quota = quota(in);
        double times = in.find("times").isPresent() ? in.number("times", 0, 1000) : 1;
        String because = in.text("because", "");
        Source source = Common.source(in);
        return quota.isEmpty() || Double.isNaN(times)
                ? Optional.empty()
                : in.build(() -> new Item(quota.get(), times, because, source));
    }

    /** An amount, bands, or amounts by choice, as fields of an object. */
    private static Optional<Quota> quota(Fields in) {
        boolean fixed = in.find("amount").isPresent();
        boolean banded = in.find("bands").isPresent();
        boolean chosen = in.find("choice").isPresent();
        if ((fixed ? 1 : 0) + (banded ? 1 : 0) + (chosen ? 1 : 0) != 1) {
            in.report()
                    .error("missing-field", in.node(), "these fields", "one of amount, bands, or choice with amounts");
            in.find("amounts");
            return Optional.empty();
        }
        if (fixed) {
            return in.find("amount").flatMap(v -> any(in, v)).map(Quota::fixed);
        }
        return banded ? in.object("bands", RulebookDocument::bands) : byChoice(in);
    }

    private static Optional<Amount> any(Fields in, Node value) {
        return in.anyAmount(value, Dimension.LENGTH);
    }

    private static Optional<Quota> bands(Fields in) {
        String by = in.words("by", "a figure or a size");
        in.require("amounts", "a list of { \"upTo\": …, \"amount\": … }");
        List<Quota.Band> bands = in.each("amounts", inner -> {
            Optional<Amount> upTo = inner.require("upTo", SOME_AMOUNT).flatMap(v -> any(inner, v));
            Optional<Amount> amount = inner.require("amount", SOME_AMOUNT).flatMap(v -> any(inner, v));
            return upTo.isEmpty() || amount.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Quota.Band(upTo.get(), amount.get()));
        });
        return by.isEmpty() ? Optional.empty() : in.build(() -> new Quota.Banded(by, bands));
    }

    private static Optional<Quota> byChoice(Fields in) {
        String choice = in.words("choice", String.join(", ", Parts.CHOICES));
        Map<String, Amount> amounts = new LinkedHashMap<>();
        in.require("amounts", "an object of amounts by part").ifPresent(value -> {
            if (value.kind() == Node.Kind.OBJECT) {
                value.fields().forEach((part, field) -> {
                    String id = in.id(part, value.key(part));
                    any(in, field.value()).ifPresent(amount -> amounts.put(id, amount));
                });
            } else {
                in.report().error("wrong-type", value, value.shown(), "an object of amounts by part");
            }
        });
        return choice.isEmpty() ? Optional.empty() : in.build(() -> new Quota.ByChoice(choice, amounts));
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
            Optional<Amount> step = in.find(mode.text()).flatMap(v -> any(in, v));
            if (step.isPresent()) {
                return in.build(() -> new Rounding.Step(mode, step.get()));
            }
        }
        return Optional.empty();
    }

    private static Optional<BoundClause> bound(Fields in) {
        String id = in.id("id");
        String figure = in.words("figure", "a figure or a size");
        List<Quota> atLeast = limit(in, "atLeast");
        List<Quota> atMost = limit(in, "atMost");
        List<Quota> within = limit(in, "within");
        List<DecisionRule> decide =
                in.object("decide", Common::rule).map(List::of).orElse(List.of());
        String because = in.text("because", "");
        Source source = Common.source(in);
        BoundClause some = someBound(in.node());
        return in.build(() -> new BoundClause(
                stated(id, some.id()),
                stated(figure, some.figure()),
                atLeast,
                atMost,
                within,
                decide,
                because,
                source));
    }

    private static List<Quota> limit(Fields in, String name) {
        Optional<Quota> quota = in.find(name)
                .flatMap(value -> value.kind() == Node.Kind.OBJECT
                        ? in.object(value, RulebookDocument::quota)
                        : any(in, value).map(Quota::fixed));
        return quota.map(List::of).orElse(List.of());
    }

    /**
     * Writes a rulebook.
     *
     * @param rulebook the rulebook
     * @return the text, keys in a fixed order, ending with a line feed
     */
    public static String write(Rulebook rulebook) {
        return new RulebookWriter().write(rulebook);
    }
}
