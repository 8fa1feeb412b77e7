package quoin.json;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import quoin.judge.DecisionRule;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.parts.Declared;
import quoin.parts.Pull;
import quoin.parts.Substrate;

/** Pieces that several documents share. */
final class Common {
    private static final int DAY = 10;
    private static final double HALF = 0.5;

    private static final List<String> KINDS = Arrays.stream(Source.Kind.values())
            .filter(kind -> kind != Source.Kind.UNSTATED && kind != Source.Kind.MEMORY)
            .map(Source.Kind::text)
            .toList();

    private static final String KINDS_TEXT = String.join(", ", KINDS);

    private Common() {}

    static Source source(Fields in) {
        return in.object("source", Common::sourceOf).orElse(Source.UNSTATED);
    }

    private static Optional<Source> sourceOf(Fields in) {
        in.require("kind", KINDS_TEXT);
        String kind = in.oneOf("kind", KINDS, "");
        String ref = in.text("ref", "");
        String verifiedOn = date(in, "verifiedOn");
        String reviewBy = date(in, "reviewBy");
        return kind.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Source(Source.Kind.valueOf(kind.toUpperCase(Locale.ROOT)), ref, verifiedOn, reviewBy));
    }

    /** A day such as 2026-11-02; empty where missing or wrong. */
    static String date(Fields in, String name) {
        return in.find(name).map(value -> date(in, value)).orElse("");
    }

    static String date(Fields in, Node value) {
        String text = in.text(value, "");
        if (value.kind() == Node.Kind.TEXT && !isDay(text)) {
            in.report().error("wrong-format", value, value.shown(), "a day such as 2026-11-02");
            return "";
        }
        return text;
    }

    private static boolean isDay(String text) {
        try {
            return text.length() == DAY && LocalDate.parse(text).getYear() >= 0;
        } catch (DateTimeParseException e) {
            return false;
        }
    }

    static Optional<DecisionRule> rule(Fields in) {
        in.require("rule", "simple, guarded");
        String rule = in.oneOf("rule", List.of("simple", "guarded"), "");
        if (rule.equals("guarded")) {
            in.require("probability", "a probability above 0.5 and below 1, such as 0.95");
            return in.find("probability").flatMap(value -> guarded(in, value));
        }
        return rule.isEmpty() ? Optional.empty() : Optional.of(DecisionRule.simple());
    }

    private static Optional<DecisionRule> guarded(Fields in, Node value) {
        double p = in.number(value, n -> n > HALF && n < 1, "above 0.5 and below 1");
        return Double.isNaN(p) ? Optional.empty() : Optional.of(DecisionRule.guarded(p));
    }

    /** A declared number: a text with a unit, or an object with value, basis and source. */
    static Declared declared(Fields in, String name, Dimension dimension) {
        return in.find(name).flatMap(value -> declared(in, value, dimension)).orElse(Declared.unknown(dimension));
    }

    static Optional<Declared> declared(Fields in, Node value, Dimension dimension) {
        if (value.kind() == Node.Kind.OBJECT) {
            return in.object(value, inner -> declaredOf(inner, dimension));
        }
        if (dimension == Dimension.RATIO && value.kind() == Node.Kind.NUMBER) {
            double number = in.number(value, 0, 1e9);
            return Double.isNaN(number)
                    ? Optional.empty()
                    : Optional.of(Declared.of(new Amount(number, Dimension.RATIO)));
        }
        return in.amount(value, dimension, Range.fromZero(dimension)).map(Declared::of);
    }

    private static Optional<Declared> declaredOf(Fields in, Dimension dimension) {
        Optional<Declared> plain =
                in.require("value", Fields.sample(dimension)).flatMap(v -> declared(in, v, dimension));
        Declared.Basis basis = basis(in);
        Source source = source(in);
        return plain.map(declared -> declared.withBasis(basis).withSource(source));
    }

    private static Declared.Basis basis(Fields in) {
        List<String> names = new ArrayList<>();
        for (Declared.Basis basis : Declared.Basis.values()) {
            names.add(basis.text());
        }
        return Declared.Basis.find(in.oneOf("basis", names, "declared")).orElse(Declared.Basis.DECLARED);
    }

    static Optional<Pull> pull(Fields in) {
        Optional<Declared> value = declaredPull(in);
        String kind = in.oneOf("in", substrates(), "unknown");
        Declared depth = declared(in, "depth", Dimension.LENGTH);
        return value.flatMap(v ->
                in.build(() -> new Pull(v, Substrate.Kind.find(kind).orElse(Substrate.Kind.UNKNOWN), depth)));
    }

    private static Optional<Declared> declaredPull(Fields in) {
        Optional<Declared> plain =
                in.require("value", Fields.sample(Dimension.FORCE)).flatMap(v -> declared(in, v, Dimension.FORCE));
        Declared.Basis basis = basis(in);
        Source source = source(in);
        String ref = in.text("ref", "");
        Source named = ref.isEmpty() || source.isStated() ? source : Source.of(Source.Kind.TESTED, ref);
        return plain.map(declared -> declared.withBasis(basis).withSource(named));
    }

    static List<String> substrates() {
        List<String> names = new ArrayList<>();
        for (Substrate.Kind kind : Substrate.Kind.values()) {
            names.add(kind.text());
        }
        return names;
    }

    /** One stated doubt: u, limits, or U with k. */
    static Optional<Doubt> doubt(Fields in, Dimension dimension) {
        Optional<Amount> u = in.amount("u", spread(dimension), Range.fromZero(spread(dimension)));
        Optional<Amount> limits = in.amount("limits", spread(dimension), Range.fromZero(spread(dimension)));
        Optional<Amount> expanded = in.amount("U", spread(dimension), Range.fromZero(spread(dimension)));
        double k = in.number("k", 0.001, 1000);
        String grows = in.oneOf("grows", List.of("fixed", "per-length"), "fixed");
        int stated = (in.find("u").isPresent() ? 1 : 0)
                + (in.find("limits").isPresent() ? 1 : 0)
                + (in.find("U").isPresent() ? 1 : 0);
        boolean kFits = in.find("U").isPresent() == in.find("k").isPresent();
        if (stated != 1 || !kFits) {
            in.report().error("missing-field", in.node(), "these fields", "one of u, limits, or U with k");
            return Optional.empty();
        }
        Optional<Doubt> doubt = u.flatMap(a -> in.build(() -> Doubt.standard(a.value(), dimension)))
                .or(() -> limits.flatMap(a -> in.build(() -> Doubt.limits(a.value(), dimension))))
                .or(() -> Double.isNaN(k)
                        ? Optional.empty()
                        : expanded.flatMap(a -> in.build(() -> Doubt.expanded(a.value(), k, dimension))));
        return grows.equals("fixed") ? doubt : doubt.map(Doubt::perLength);
    }

    /** A doubt of a temperature is a difference. */
    static Dimension spread(Dimension dimension) {
        return dimension == Dimension.TEMPERATURE ? Dimension.TEMPERATURE_DIFFERENCE : dimension;
    }
}
