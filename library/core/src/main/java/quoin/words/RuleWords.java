package quoin.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import quoin.judge.Args;
import quoin.rulebook.Comparison.Change;
import quoin.rulebook.Comparison.Demand;
import quoin.rulebook.Comparison.Flip;
import quoin.rulebook.Effect;

/**
 * Sentences for what changed between two versions of a rulebook.
 *
 * <p>Figures and clauses stand under the names that rulebooks use. Immutable and safe for use by many threads.
 */
public final class RuleWords {
    /** So many stretches are said one by one. */
    private static final int SAID = 6;

    private final Words words;

    private RuleWords(Words words) {
        this.words = words;
    }

    /**
     * The sentences for a locale; English where there are none of its own.
     *
     * @param locale whom the words are for
     * @return the sentences
     */
    public static RuleWords in(Locale locale) {
        return new RuleWords(Words.in(Objects.requireNonNull(locale, "locale")));
    }

    /**
     * A field or clause that is stated differently.
     *
     * @param change the change
     * @return the sentence, such as {@code frame.width, cutWithin: was 0.5 mm, is 0.3 mm}
     */
    public String of(Change change) {
        String key = "change." + change.kind().name().toLowerCase(Locale.ROOT)
                + (change.field().isEmpty() ? "-clause" : "");
        Args args = Args.of("part", words.text("change.part." + change.part(), Args.NONE))
                .with("clause", change.clause())
                .with("field", change.field())
                .with("from", shown(change.from()))
                .with("to", shown(change.to()));
        return Lines.clean(words.text(key, args));
    }

    private String shown(String value) {
        return value.isEmpty() ? words.text("change.nothing", Args.NONE) : value;
    }

    /**
     * Where a size or a limit differs, and by how much.
     *
     * @param effect the effect
     * @return the sentence, such as {@code tube.diameter is 13 mm larger where fit.width is 1757 mm or more and below 1807 mm}
     */
    public String of(Effect effect) {
        boolean several = effect.stretches().size() > 1;
        StringBuilder said = new StringBuilder(
                several ? range(effect) : how(effect, effect.stretches().get(0)));
        List<String> where = new ArrayList<>();
        effect.where().forEach((figure, interval) -> where.add(interval(figure, interval)));
        if (!effect.along().isEmpty() && !several) {
            where.addAll(stretch(effect, effect.stretches().get(0)));
        }
        effect.choices()
                .forEach((kind, part) -> where.add(
                        words.text("effect.choice", Args.of("choice", kind).with("part", part))));
        said.append(" ")
                .append(words.text(
                        where.isEmpty() ? "effect.everywhere" : "effect.where",
                        Args.of("where", String.join("," + and(), where))));
        if (several) {
            said.append(stretches(effect));
        }
        return Lines.clean(said.toString());
    }

    private String and() {
        return " " + words.text("effect.and", Args.NONE) + " ";
    }

    private String range(Effect effect) {
        return words.text(
                "effect.range",
                Args.of("what", what(effect)).with("by", between(effect.least(), effect.most(), effect.unit())));
    }

    /** A stretch alone, with its period. */
    private List<String> stretch(Effect effect, Effect.Stretch stretch) {
        if (stretch.at().isEverything()) {
            return List.of();
        }
        String at = interval(effect.along(), stretch.at());
        return List.of(
                effect.period() == 0
                        ? at
                        : words.text("effect.period-one", period(effect).with("at", ends(stretch.at()))));
    }

    private Args period(Effect effect) {
        String unit = effect.stretches().get(0).at().unit();
        return Args.of("along", effect.along()).with("period", effect.period()).with("unit", unit);
    }

    private String stretches(Effect effect) {
        StringBuilder said = new StringBuilder(
                words.text(effect.period() == 0 ? "effect.these" : "effect.period", period(effect)) + " ");
        List<String> parts = new ArrayList<>();
        for (Effect.Stretch stretch :
                effect.stretches().subList(0, Math.min(SAID, effect.stretches().size()))) {
            parts.add(words.text(
                    "effect.stretch",
                    Args.of("at", ends(stretch.at()))
                            .with("by", between(stretch.least(), stretch.most(), effect.unit()))));
        }
        said.append(String.join("; ", parts));
        double more = effect.stretches().size() - parts.size();
        return more > 0 ? said + words.text("effect.more", Args.of("n", more)) : said.toString();
    }

    private String what(Effect effect) {
        boolean size = effect.field().equals("size");
        return words.text(
                size ? "effect.size" : "effect.limit",
                Args.of("clause", effect.clause()).with("field", effect.field()));
    }

    private String how(Effect effect, Effect.Stretch stretch) {
        Args args = Args.of("what", what(effect));
        return switch (effect.kind()) {
            case DECIDED -> words.text("effect.decided", args);
            case REFUSED -> words.text("effect.refused", args);
            case OPEN -> words.text("effect.open", args);
            case CHANGED ->
                stretch.least() == stretch.most()
                        ? words.text(
                                stretch.least() < 0 ? "effect.smaller" : "effect.larger",
                                args.with("by", StrictMath.abs(stretch.least())).with("unit", effect.unit()))
                        : range(effect);
        };
    }

    /** A difference with its sign, or two. */
    private String between(double least, double most, String unit) {
        if (Double.isInfinite(least) || Double.isInfinite(most) || Double.isNaN(least)) {
            return words.text("effect.any", Args.NONE);
        }
        String from = signed(least);
        String to = signed(most);
        return from.equals(to)
                ? from + " " + unit
                : words.text(
                        "effect.between",
                        Args.of("least", from).with("most", to).with("unit", unit));
    }

    private String signed(double number) {
        return (number > 0 ? "+" : "") + words.number(number);
    }

    private String interval(String figure, Effect.Range interval) {
        return words.text("effect.interval", Args.of("figure", figure).with("ends", ends(interval)));
    }

    private String ends(Effect.Range interval) {
        List<String> ends = new ArrayList<>();
        if (!Double.isInfinite(interval.from())) {
            ends.add(end(interval.fromIncluded() ? "or-more" : "above", interval.from(), interval.unit()));
        }
        if (!Double.isInfinite(interval.to())) {
            ends.add(end(interval.toIncluded() ? "or-less" : "below", interval.to(), interval.unit()));
        }
        return String.join(and(), ends);
    }

    private String end(String key, double value, String unit) {
        return words.text("effect." + key, Args.of("value", value).with("unit", unit));
    }

    /**
     * A bound whose verdict can change.
     *
     * @param flip the bound and the reason
     * @return the sentence
     */
    public String of(Flip flip) {
        return Lines.clean(words.text(
                "flip." + flip.because(), Args.of("bound", flip.bound()).with("of", flip.of())));
    }

    /**
     * What the step to the new version must be, and why.
     *
     * @param demand the demand
     * @return the sentence
     */
    public String of(Demand demand) {
        String level = words.text("level." + demand.level().name().toLowerCase(Locale.ROOT), Args.NONE);
        return Lines.clean(
                words.text("demand." + demand.because(), Args.of("level", level).with("of", demand.of())));
    }

    /**
     * A sentence of the catalogue that stands between those above.
     *
     * @param key its key, such as {@code compare.effects}
     * @param args what fills it
     * @return the sentence
     */
    public String text(String key, Map<String, String> args) {
        Args all = Args.NONE;
        for (Map.Entry<String, String> arg : args.entrySet()) {
            all = all.with(arg.getKey(), arg.getValue());
        }
        return words.text(key, all);
    }
}
